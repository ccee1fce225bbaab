/** What is chosen, with the corners and sides one can take hold of; what a drag would make of it; what the pointer is over. */

import { type PlanShape, planShapes, shapesOf } from '../../edit/plan-shapes.ts';
import { type PlanPoint, pointLists } from '../../edit/point-lists.ts';
import { shapeFaults } from '../../edit/validity.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { isDrawing, type Surface } from '../../store/plan-draw.ts';
import { boxOf, toLocal } from '../facts/place.ts';
import { changedShapes, flatPoint } from '../facts/plan-drag.ts';
import { lineLengthM, ringAreaM2 } from '../facts/plan-hit.ts';
import { toPixel } from '../facts/plan-surface.ts';
import { quantityText } from '../format.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { pixelPath } from './PlanDrawn.tsx';
import { usePlan } from './plan-context.ts';
import { HANDLE_SIDE_PX, isIn } from './plan-grabs.ts';
import type { PlanActs, PlanDragging } from './use-plan-acts.ts';

/** Around a chosen point; smaller where many are, so that they do not hide one another [px]. */
const RING_PX = 11;
const SMALL_RING_PX = 6;
const FEW_PARTS = 6;

type On = (point: PlanPoint) => PointM;

interface Props {
  readonly snapshot: Snapshot;
  readonly surface: Surface;
  readonly acts: PlanActs;
}

const keyOf = ({ part, id, piece }: Pick<PlanShape, 'part' | 'id' | 'piece'>) => `${part} ${id} ${piece ?? ''}`;

export function PlanChosen({ snapshot, surface, acts: { dragging, hovered } }: Props) {
  const selected = useView((state) => state.selected);
  const tool = usePlan((state) => state.tool);
  const box = usePlan((state) => state.box);
  const on: On = (point) => toPixel(toLocal(flatPoint(point), snapshot.originM), surface);
  const { scene } = snapshot;
  const [one] = selected;
  return (
    <g className="pe-chosen-layer">
      {!isDrawing(tool) && !dragging && hovered && !isIn(selected, hovered) && (
        <Outlined scene={scene} parts={[hovered]} on={on} name="pe-hovered" />
      )}
      <Outlined scene={scene} parts={selected} on={on} name="pe-chosen" />
      {box !== null && <Outlined scene={scene} parts={box.inside} on={on} name="pe-hovered" />}
      {dragging ? (
        <Preview dragging={dragging} on={on} />
      ) : (
        tool === 'choose' && selected.length === 1 && one !== undefined && <Handles scene={scene} one={one} on={on} />
      )}
    </g>
  );
}

interface OutlinedProps {
  readonly scene: Snapshot['scene'];
  readonly parts: readonly Selected[];
  readonly on: On;
  readonly name: string;
}

function Outlined({ scene, parts, on, name }: OutlinedProps) {
  const radiusPx = parts.length > FEW_PARTS ? SMALL_RING_PX : RING_PX;
  return shapesOf(scene, parts).map((shape) => <ShapePath key={keyOf(shape)} shape={shape} on={on} name={name} radiusPx={radiusPx} />);
}

function ShapePath({
  shape: { form, points, holes = [] },
  on,
  name,
  radiusPx = RING_PX,
}: {
  readonly shape: PlanShape;
  readonly on: On;
  readonly name: string;
  readonly radiusPx?: number;
}) {
  if (form === 'point') {
    const [x, y] = on(points[0] as PlanPoint);
    return <circle className={name} cx={x} cy={y} r={radiusPx} />;
  }
  const flat = (ring: readonly PlanPoint[]) => pixelPath(ring.map(flatPoint), on);
  const d = form === 'line' ? flat(points) : [points, ...holes].map((ring) => `${flat(ring)}Z`).join('');
  return <path className={name} data-form={form} fillRule="evenodd" d={d} />;
}

/** Corners, and in the middle of long sides where a new one can be drawn out. */
function Handles({ scene, one, on }: { readonly scene: Snapshot['scene']; readonly one: Selected; readonly on: On }) {
  const vertex = usePlan((state) => state.vertex);
  const locked = usePlan((state) => state.locked);
  const lists = pointLists(scene).filter(({ part, id, form }) => part === one.part && id === one.id && form !== 'point');
  if (lists.some(({ part }) => part !== 'probe' && locked.has(part))) return null;
  return lists.map((list) => {
    const pixels = list.points.map(on);
    const sides = list.form === 'area' ? pixels.length : pixels.length - 1;
    return (
      <g key={keyOf(list)} className="pe-handles">
        {pixels.slice(0, sides).map(([x, y], i) => {
          const [toX, toY] = pixels[(i + 1) % pixels.length] as PointM;
          if (Math.hypot(toX - x, toY - y) < HANDLE_SIDE_PX) return null;
          return <path key={`${x} ${y}`} className="pe-middle" d={`M${(x + toX) / 2 - 4} ${(y + toY) / 2}h8m-4-4v8`} />;
        })}
        {pixels.map(([x, y], i) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: two corners may be at one place
            key={i}
            className="pe-corner"
            data-chosen={vertex?.index === i && vertex.piece === list.piece}
            x={x - 4}
            y={y - 4}
            width="8"
            height="8"
          />
        ))}
      </g>
    );
  });
}

/** Every shape that would change, with its new size; red where it could not stand. */
function Preview({ dragging, on }: { readonly dragging: PlanDragging; readonly on: On }) {
  const language = useView((state) => state.language);
  const changed = changedShapes(planShapes(dragging.from), planShapes(dragging.scene));
  return changed.map((shape) => {
    const wrong = shapeFaults(shape, language).length > 0;
    return (
      <g key={keyOf(shape)} className="pe-preview" data-wrong={wrong}>
        <ShapePath shape={shape} on={on} name="pe-preview-line" />
        <ShapeSize shape={shape} on={on} />
      </g>
    );
  });
}

function ShapeSize({ shape: { form, points, holes = [] }, on }: { readonly shape: PlanShape; readonly on: On }) {
  if (form === 'point') return null;
  const { min, max } = boxOf(points.map((point) => on(point)));
  const says =
    form === 'area'
      ? t.draw.live.area(ringAreaM2(points) - holes.reduce((sum, hole) => sum + ringAreaM2(hole), 0))
      : quantityText(lineLengthM(points), 'm');
  return (
    <text className="pe-live" x={(min[0] + max[0]) / 2} y={(min[1] + max[1]) / 2 + 32} textAnchor="middle">
      {says}
    </text>
  );
}
