/** Plan of the bays on paper, in millimetres at a scale, with the height of every loose material in each bay. */

import type { Snapshot } from '../../model/engine.ts';
import type { PolygonM } from '../../model/scene-file.ts';
import { type FittedText, fitText } from '../facts/fit-label.ts';
import type { HeapEntry } from '../facts/heap-board.ts';
import { boxOf, toLocal } from '../facts/place.ts';
import type { SheetContext } from './sheet-context.ts';

/** Height of letters on paper [mm]. */
const MOST_MM = 5.5;
const LEAST_MM = 1.9;
const LINE = 1.15;
/** Of letters as wide as those of figures in the narrow type. */
const WIDTH = 0.46;

/** Round scales of drawings. */
export const SCALES = [20, 25, 50, 100, 200, 250, 500, 1000, 2000] as const;

export function deckSizeM({ scene, originM }: Pick<Snapshot, 'scene' | 'originM'>): readonly [number, number] {
  const { min, max } = boxOf(scene.deck.outline.map((point) => toLocal(point, originM)));
  return [max[0] - min[0], max[1] - min[1]];
}

/** Scales at which the deck has room, the largest drawing first. */
export function fittingScales(snapshot: Pick<Snapshot, 'scene' | 'originM'>, widthMm: number, heightMm: number): number[] {
  const [width, height] = deckSizeM(snapshot);
  return SCALES.filter((scale) => (width * 1000) / scale <= widthMm && (height * 1000) / scale <= heightMm);
}

export interface HeapColumn {
  readonly material: string;
  readonly entries: readonly HeapEntry[];
}

export interface HeapLabel extends FittedText {
  readonly bay: string;
  readonly lines: readonly string[];
}

interface Drawn {
  readonly snapshot: Snapshot;
  readonly scale: number;
}

/** To millimetres on paper, y downwards. */
function onPaper(ring: PolygonM, { snapshot: { originM }, scale }: Drawn): PolygonM {
  return ring.map((point) => {
    const [x, y] = toLocal(point, originM);
    return [(x * 1000) / scale, (-y * 1000) / scale];
  });
}

/** Where the numbers of each bay have room; bays without are missing. */
export function heapLabels(drawn: Drawn, columns: readonly HeapColumn[], words: SheetContext['words']): HeapLabel[] {
  const { deck } = drawn.snapshot.scene;
  const openings = (deck.openings ?? []).map((ring) => onPaper(ring, drawn));
  return deck.bays.flatMap(({ id, outline }): HeapLabel[] => {
    const entries = columns.map(({ entries: of }) => of.find(({ bay }) => bay === id));
    const over = entries.find((entry) => entry?.state === 'over');
    const heights = over
      ? [words.heaps.entry(over)]
      : entries.map((entry, i) => {
          const text = entry === undefined ? '–' : words.heaps.entry(entry);
          return columns.length === 1 ? text : `${i + 1}: ${text}`;
        });
    const open = entries.some((entry) => entry?.confirmed === false) ? [words.heaps.unconfirmedBay] : [];
    const lines = [id, ...heights, ...open];
    const width = WIDTH * Math.max(...lines.map((line) => line.length)) + 0.6;
    const fitted = fitText(
      onPaper(outline, drawn),
      openings,
      { width, height: lines.length * LINE + 0.3 },
      { most: MOST_MM, least: LEAST_MM },
    );
    return fitted === null ? [] : [{ ...fitted, bay: id, lines }];
  });
}

/** Addresses in a style sheet would be looked up beside that sheet. */
export const BAY_FILLS = { free: '#ffffff', unconfirmed: 'url(#paper-unconfirmed)', over: 'url(#paper-over)', opening: '#6b7478' } as const;

interface Props extends Drawn {
  readonly columns: readonly HeapColumn[];
  readonly labels: readonly HeapLabel[];
  readonly title: string;
}

const EDGE_MM = 1;

export function HeapPlanPaper({ snapshot, scale, columns, labels, title }: Props) {
  const { deck } = snapshot.scene;
  const drawn = { snapshot, scale };
  const outline = onPaper(deck.outline, drawn);
  const { min, max } = boxOf(outline);
  const size = [max[0] - min[0] + 2 * EDGE_MM, max[1] - min[1] + 2 * EDGE_MM] as const;
  const path = (ring: PolygonM) =>
    `M${onPaper(ring, drawn)
      .map((point) => point.join(' '))
      .join('L')}Z`;
  const stateOf = (id: string) => {
    const entries = columns.flatMap(({ entries: of }) => of.filter(({ bay }) => bay === id));
    if (entries.some(({ state }) => state === 'over')) return 'over';
    return entries.some(({ confirmed, state }) => !confirmed || state === 'no limit') ? 'unconfirmed' : 'free';
  };
  return (
    <svg
      className="paper-plan"
      role="img"
      aria-label={title}
      width={`${size[0]}mm`}
      height={`${size[1]}mm`}
      viewBox={`${min[0] - EDGE_MM} ${min[1] - EDGE_MM} ${size[0]} ${size[1]}`}
    >
      <PaperHatches />
      <path className="paper-deck" d={path(deck.outline)} />
      {deck.bays.map(({ id, outline: ring }) => (
        <path key={id} className="paper-bay" data-bay={id} fill={BAY_FILLS[stateOf(id)]} d={path(ring)} />
      ))}
      {deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="paper-opening" d={path(ring)} />
      ))}
      {labels.map(({ bay, at, letters, lines }) => (
        <text key={bay} data-bay={bay} fontSize={letters} x={at[0]} y={at[1] - (letters * LINE * (lines.length - 1)) / 2}>
          {lines.map((line, i) => (
            <tspan key={line} x={at[0]} dy={i === 0 ? '0.35em' : `${LINE}em`} className={i === 0 ? 'paper-bay-name' : undefined}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </svg>
  );
}

/** In millimetres: hatches of the page are in pixels of the screen. */
export function PaperHatches() {
  return (
    <defs>
      <pattern id="paper-unconfirmed" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V2.4" stroke="#8a8f91" strokeWidth="0.6" />
      </pattern>
      <pattern id="paper-over" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="1.6" height="1.6" fill="#f8e6dc" />
        <path d="M0 0V1.6" stroke="#93451f" strokeWidth="0.35" />
      </pattern>
    </defs>
  );
}
