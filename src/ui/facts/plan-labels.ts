/** Names on the plan: what is written where, in the order of how much it is missed, and only where it hides no other. */

import type { PointM, PolygonM, SceneBay, SceneFile, SceneStage } from '../../model/scene-file.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import { boxOf, innerPoint } from './place.ts';
import { type PlanFrame, planPoint } from './plan-frame.ts';

export interface PlanLabel {
  readonly key: string;
  readonly kind: 'zone' | 'bay' | 'point' | 'faint';
  readonly lines: readonly string[];
  /** Of the first line [px]. */
  readonly at: PointM;
  readonly anchor: 'start' | 'middle';
  /** Something is not said that should be. */
  readonly missing?: boolean;
}

/** Width of a letter and height of a line at the size of the names [px]. */
const LETTER_PX = 6.2;
export const LINE_PX = 15;
const BESIDE_PX = 9;
/** Below these zooms only areas, and only points without numbers, have names [px/m]. */
const POINTS_NAMED_PX = 9;
const SPOTS_NAMED_PX = 14;

export interface LabelWords {
  /** What a bay carries. */
  readonly carries: (bay: SceneBay) => string;
  readonly level: (levelM: number) => string;
}

export interface LabelAsk {
  readonly scene: SceneFile;
  readonly stage: SceneStage | undefined;
  readonly hidden: ReadonlySet<PlanLayer>;
  readonly frame: PlanFrame;
  readonly words: LabelWords;
}

/** All names there is room for. */
export function planLabels(ask: LabelAsk): readonly PlanLabel[] {
  const taken: Rect[] = [];
  return wantedLabels(ask).filter((label) => {
    const rect = rectOf(label);
    if (taken.some((other) => overlap(rect, other))) return false;
    taken.push(rect);
    return true;
  });
}

interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function rectOf({ lines, at: [x, y], anchor }: PlanLabel): Rect {
  const width = LETTER_PX * Math.max(...lines.map((line) => line.length));
  const left = anchor === 'middle' ? x - width / 2 : x;
  return { left, right: left + width, top: y - LINE_PX * 0.75, bottom: y + LINE_PX * (lines.length - 0.7) };
}

const overlap = (one: Rect, other: Rect): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

function wantedLabels({ scene, stage, hidden, frame, words }: LabelAsk): PlanLabel[] {
  const { deck } = scene;
  const shown = <T>(layer: PlanLayer, list: readonly T[] | undefined, label: (one: T) => PlanLabel | null): PlanLabel[] =>
    hidden.has(layer) ? [] : (list ?? []).flatMap((one) => label(one) ?? []);
  const near = frame.scale >= POINTS_NAMED_PX;
  const beside = (id: string, at: PointM, kind: PlanLabel['kind'], text = id): PlanLabel | null => {
    if (!near) return null;
    const [x, y] = planPoint(at, frame);
    return { key: `${kind} ${id}`, kind, lines: [text], at: [x + BESIDE_PX, y - BESIDE_PX + 3], anchor: 'start' };
  };
  return [
    ...shown('zone', scene.zones, ({ id, name, outline, holes }) => areaLabel({ id, text: name ?? id, ring: outline, holes }, frame)),
    ...shown('bay', deck.bays, (bay) => bayLabel(bay, frame, words)),
    ...shown('stockpile', stage?.stockpiles, ({ id, outline }) => areaLabel({ id, text: id, ring: outline }, frame)),
    ...shown('set-up area', scene.setUpAreas, ({ id, name, outline }) => areaLabel({ id, text: name ?? id, ring: outline }, frame)),
    ...shown('outlet', deck.outlets, ({ id, at }) => beside(id, at, 'point')),
    ...shown('access point', scene.accessPoints, ({ id, at }) => beside(id, at, 'point')),
    ...shown('route', scene.traffic, ({ id, route }) => beside(id, middleOf(route), 'point')),
    ...shown('object', scene.objects, (one) => {
      const at = one.kind === 'tree' ? one.at : one.kind === 'block' ? innerPoint(one.outline) : middleOf(one.line);
      return at && beside(one.id, at, 'faint');
    }),
    ...shown('edge', deck.edges, ({ id, line }) => beside(id, middleOf(line), 'faint')),
    ...shown('column', deck.columns, ({ id, at }) => beside(id, at, 'faint')),
    ...(frame.scale < SPOTS_NAMED_PX
      ? []
      : [
          ...shown('finish', finishSpots(scene), ([x, y, z]) => beside(`finish ${x} ${y}`, [x, y], 'point', words.level(z))),
          ...shown('levels', deck.levels?.spots, ([x, y, z]) => beside(`${x} ${y}`, [x, y], 'faint', words.level(z))),
        ]),
  ];
}

const finishSpots = ({ zones }: SceneFile) => zones.flatMap(({ finish }) => (finish?.kind === 'spots' ? finish.spots : []));

interface NamedArea {
  readonly id: string;
  readonly text: string;
  readonly ring: PolygonM;
  readonly holes?: readonly PolygonM[] | undefined;
}

/** The name where it has room, else the id, else nothing. */
function areaLabel({ id, text, ring, holes }: NamedArea, frame: PlanFrame): PlanLabel | null {
  const [width, height] = extent(ring, frame);
  if (height < LINE_PX) return null;
  const fits = [text, id].find((one) => one.length * LETTER_PX <= width);
  const at = fits === undefined ? null : innerPoint(ring, holes);
  if (fits === undefined || at === null) return null;
  const [x, y] = planPoint(at, frame);
  return { key: `area ${id}`, kind: 'zone', lines: [fits], at: [x, y + 4], anchor: 'middle' };
}

/** In the upper left corner, so that zones keep the middle. */
function bayLabel(bay: SceneBay, frame: PlanFrame, { carries }: LabelWords): PlanLabel | null {
  const [width, height] = extent(bay.outline, frame);
  if (width < bay.id.length * LETTER_PX + 6 || height < LINE_PX) return null;
  const at = cornerOf(bay.outline, 10 / frame.scale);
  if (at === null) return null;
  const [x, y] = planPoint(at, frame);
  const says = carries(bay);
  const roomy = height > 2.6 * LINE_PX && width > says.length * LETTER_PX + 10;
  const missing = bay.permanentKNm2 === undefined && bay.totalKNm2 === undefined;
  return { key: `bay ${bay.id}`, kind: 'bay', lines: roomy ? [bay.id, says] : [bay.id], at: [x - 5, y + 6], anchor: 'start', missing };
}

function extent(ring: PolygonM, { scale }: PlanFrame): readonly [number, number] {
  const { min, max } = boxOf(ring);
  return [(max[0] - min[0]) * scale, (max[1] - min[1]) * scale];
}

/** Rectangles and what is like them have a highest point on the left; anything else has a middle. */
function cornerOf(outline: PolygonM, inM: number): PointM | null {
  const { min, max } = boxOf(outline);
  const corner = outline.find(([x, y]) => x - min[0] < inM && max[1] - y < inM);
  return corner === undefined ? innerPoint(outline) : [corner[0] + inM, corner[1] - inM];
}

function middleOf(line: readonly PointM[]): PointM {
  const i = Math.floor((line.length - 1) / 2);
  const [a, b] = [line[i] ?? [0, 0], line[i + 1] ?? line[i] ?? [0, 0]];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
