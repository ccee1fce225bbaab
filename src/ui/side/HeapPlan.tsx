/** Plan of the bays with the height in each that a heap may have. */

import { type MouseEvent, useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { PolygonM } from '../../model/scene-file.ts';
import type { HeapEntry } from '../facts/heap-board.ts';
import { boxOf, innerPoint } from '../facts/place.ts';
import { fittingLetters, LINE_EM, type PlanFrame, planFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { OVER_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useView } from '../use-stores.ts';

/** Plan units: about the pixels of the small plan. */
const SIZE = 310;
const MARGIN = 4;
const MOST_LETTERS = 15;
/** Smaller letters cannot be read; such bays have their number in the table and on the large plan. */
const LEAST_LETTERS = { small: 8.5, large: 3.5 } as const;

interface Props {
  readonly snapshot: Snapshot;
  readonly entries: readonly HeapEntry[];
  readonly label: string;
  readonly large: boolean;
}

export function HeapPlan({ snapshot, entries, label, large }: Props) {
  const frame = useMemo(() => planFrame(snapshot, SIZE, MARGIN), [snapshot]);
  const { deck } = snapshot.scene;
  const least = LEAST_LETTERS[large ? 'large' : 'small'];
  const go = useGo();
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const bay = (event.target as Element).closest('[data-bay]')?.getAttribute('data-bay');
    if (bay) go.toBay(bay, null);
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the table below does the same by keyboard
    <svg className="heap-plan" role="img" aria-label={t.heaps.plan(label)} viewBox={frame.viewBox} onClick={onClick}>
      <path className="plan-deck" d={planPath(deck.outline, frame)} />
      {entries.map((entry) => (
        <HeapBay key={entry.bay} entry={entry} snapshot={snapshot} frame={frame} />
      ))}
      {deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={planPath(ring, frame)} />
      ))}
      {entries.map((entry) => (
        <HeapWords key={entry.bay} entry={entry} snapshot={snapshot} frame={frame} least={least} />
      ))}
    </svg>
  );
}

interface HeapBayProps {
  readonly entry: HeapEntry;
  readonly snapshot: Snapshot;
  readonly frame: PlanFrame;
}

const fillOf = ({ state, confirmed }: HeapEntry): string => {
  if (state === 'over') return OVER_FILL;
  return confirmed && state === 'free' ? 'var(--sheet)' : UNCONFIRMED_FILL;
};

function outlineOf(snapshot: Snapshot, bay: string): PolygonM {
  return snapshot.scene.deck.bays.find(({ id }) => id === bay)?.outline ?? [];
}

function HeapBay({ entry, snapshot, frame }: HeapBayProps) {
  const picked = useView((state) => state.bay === entry.bay);
  const path = planPath(outlineOf(snapshot, entry.bay), frame);
  return <path className="heap-bay" data-bay={entry.bay} data-picked={picked} d={path} fill={fillOf(entry)} />;
}

function HeapWords({ entry, snapshot, frame, least }: HeapBayProps & { readonly least: number }) {
  const outline = outlineOf(snapshot, entry.bay);
  const at = innerPoint(outline, snapshot.scene.deck.openings);
  if (at === null) return null;
  const { min, max } = boxOf(outline.map((point) => planPoint(point, frame)));
  const lines = [entry.bay, ...t.heaps.lines(entry)];
  const letters = fittingLetters(lines, { width: max[0] - min[0], height: max[1] - min[1] }, MOST_LETTERS);
  if (letters < least) return null;
  const [x, y] = planPoint(at, frame);
  return (
    <text className="heap-words" data-heap={entry.state} x={x} y={y - (letters * LINE_EM * (lines.length - 1)) / 2} fontSize={letters}>
      {lines.map((line, i) => (
        <tspan key={line} className={i === 0 ? 'heap-name' : 'heap-number'} x={x} dy={i === 0 ? '0.35em' : `${LINE_EM}em`}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
