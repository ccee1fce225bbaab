/** Names on the plan, where they have room: zones in their middle, bays with what they carry in their upper left corner, points beside their mark. */

import { useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { PointM, PolygonM, SceneBay, SceneStage } from '../../model/scene-file.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import { boxOf, innerPoint } from '../facts/place.ts';
import { type PlanFrame, planPoint } from '../facts/plan-frame.ts';
import { levelText, loadNumber } from '../format.ts';
import { t } from '../text/text.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly stage: SceneStage | undefined;
  readonly hidden: ReadonlySet<PlanLayer>;
  readonly frame: PlanFrame;
}

/** Width of a letter and height of a line at the size of the names [px]. */
const LETTER_PX = 6.2;
const LINE_PX = 15;
const BESIDE_PX = 9;
/** Below this zoom only areas have names [px/m]. */
const POINTS_NAMED_PX = 9;
const SPOTS_NAMED_PX = 14;

export function PlanNames({ snapshot, stage, hidden, frame }: Props) {
  const { scene } = snapshot;
  const { deck } = scene;
  const areas = useMemo(
    () =>
      scene.zones.map(({ id, name, outline, holes }) => ({ id, text: name ?? id, at: innerPoint(outline, holes), box: boxOf(outline) })),
    [scene.zones],
  );
  const named = (layer: PlanLayer) => !hidden.has(layer) && frame.scale >= POINTS_NAMED_PX;
  return (
    <g className="pe-names">
      {!hidden.has('zone') &&
        areas.map(({ id, text, at, box }) => at && <AreaName key={id} text={fitting(text, id, box, frame)} at={planPoint(at, frame)} />)}
      {!hidden.has('bay') && deck.bays.map((bay) => <BayName key={bay.id} bay={bay} frame={frame} />)}
      {named('outlet') && deck.outlets?.map(({ id, at }) => <PointName key={id} text={id} at={at} frame={frame} />)}
      {named('column') && deck.columns?.map(({ id, at }) => <PointName key={id} text={id} at={at} frame={frame} faint />)}
      {named('access point') && scene.accessPoints?.map(({ id, at }) => <PointName key={id} text={id} at={at} frame={frame} />)}
      {named('edge') && deck.edges?.map(({ id, line }) => <PointName key={id} text={id} at={middleOf(line)} frame={frame} faint />)}
      {named('route') && scene.traffic?.map(({ id, route }) => <PointName key={id} text={id} at={middleOf(route)} frame={frame} />)}
      {named('object') &&
        scene.objects?.map((one) => {
          const at = one.kind === 'tree' ? one.at : one.kind === 'block' ? innerPoint(one.outline) : middleOf(one.line);
          return at && <PointName key={one.id} text={one.id} at={at} frame={frame} faint />;
        })}
      {named('set-up area') && scene.setUpAreas?.map(({ id, outline }) => <RingName key={id} text={id} ring={outline} frame={frame} />)}
      {named('stockpile') && stage?.stockpiles?.map(({ id, outline }) => <RingName key={id} text={id} ring={outline} frame={frame} />)}
      {!hidden.has('levels') &&
        frame.scale >= SPOTS_NAMED_PX &&
        deck.levels?.spots.map(([x, y, z]) => <PointName key={`${x} ${y}`} text={levelText(z)} at={[x, y]} frame={frame} faint />)}
    </g>
  );
}

/** The name where it has room, else the id, else nothing. */
function fitting(name: string, id: string, { min, max }: { readonly min: PointM; readonly max: PointM }, { scale }: PlanFrame): string {
  const [width, height] = [(max[0] - min[0]) * scale, (max[1] - min[1]) * scale];
  if (height < LINE_PX) return '';
  return [name, id].find((text) => text.length * LETTER_PX <= width) ?? '';
}

function AreaName({ text, at: [x, y] }: { readonly text: string; readonly at: PointM }) {
  if (text === '') return null;
  return (
    <text className="pe-zone-name" x={x} y={y} dy="0.35em">
      {text}
    </text>
  );
}

/** What a bay carries, in as few figures as there are. */
function carries({ permanentKNm2, imposedKNm2, totalKNm2 }: SceneBay): string {
  if (totalKNm2 !== undefined) return t.draw.total(loadNumber(totalKNm2));
  if (permanentKNm2 === undefined && imposedKNm2 === undefined) return t.draw.noLoad;
  return [permanentKNm2, imposedKNm2].map((load) => (load === undefined ? '–' : loadNumber(load))).join(' / ');
}

function BayName({ bay, frame }: { readonly bay: SceneBay; readonly frame: PlanFrame }) {
  const { min, max } = boxOf(bay.outline);
  const [width, height] = [(max[0] - min[0]) * frame.scale, (max[1] - min[1]) * frame.scale];
  if (width < bay.id.length * LETTER_PX + 6 || height < LINE_PX) return null;
  const at = cornerOf(bay.outline, 10 / frame.scale);
  if (at === null) return null;
  const [x, y] = planPoint(at, frame);
  const says = carries(bay);
  const roomy = height > 2.6 * LINE_PX && width > says.length * LETTER_PX + 10;
  return (
    <text className="pe-bay-name" x={x - 5} y={y + 6}>
      <tspan>{bay.id}</tspan>
      {roomy && (
        <tspan x={x - 5} dy="1.15em" className="pe-bay-load" data-missing={bay.permanentKNm2 === undefined && bay.totalKNm2 === undefined}>
          {says}
        </tspan>
      )}
    </text>
  );
}

/** The highest point on the left of an outline, a little inwards. */
function cornerOf(outline: PolygonM, inM: number): PointM | null {
  const { min, max } = boxOf(outline);
  // Rectangles and what is like them; anything else in its middle.
  const corner = outline.find(([x, y]) => x - min[0] < inM && max[1] - y < inM);
  return corner === undefined ? innerPoint(outline) : [corner[0] + inM, corner[1] - inM];
}

const middleOf = (line: readonly PointM[]): PointM => {
  const i = Math.floor((line.length - 1) / 2);
  const [a, b] = [line[i] ?? [0, 0], line[i + 1] ?? line[i] ?? [0, 0]];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
};

interface PointNameProps {
  readonly text: string;
  readonly at: PointM;
  readonly frame: PlanFrame;
  readonly faint?: boolean;
}

function PointName({ text, at, frame, faint = false }: PointNameProps) {
  const [x, y] = planPoint(at, frame);
  return (
    <text className="pe-point-name" data-faint={faint} x={x + BESIDE_PX} y={y - BESIDE_PX + 3}>
      {text}
    </text>
  );
}

function RingName({ text, ring, frame }: { readonly text: string; readonly ring: PolygonM; readonly frame: PlanFrame }) {
  const at = innerPoint(ring);
  if (at === null) return null;
  const [x, y] = planPoint(at, frame);
  return (
    <text className="pe-zone-name" x={x} y={y} dy="0.35em">
      {text}
    </text>
  );
}
