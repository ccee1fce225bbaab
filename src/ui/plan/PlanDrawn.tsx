/** What is being drawn: points so far, the line to the pointer with its length and angle, what is caught, and faults in red. */

import { shapeFaults } from '../../edit/validity.ts';
import type { PointM } from '../../model/scene-file.ts';
import { isDrawing, type PlanBox, type Surface } from '../../store/plan-draw.ts';
import { toLocal } from '../facts/place.ts';
import { lineLengthM, ringAreaM2 } from '../facts/plan-hit.ts';
import { type SizePx, toPixel } from '../facts/plan-surface.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { usePlan } from './plan-context.ts';
import { formOf, rectangleOf } from './use-plan-drawing.ts';

interface Props {
  readonly originM: PointM;
  readonly surface: Surface;
  readonly size: SizePx;
}

export const pixelPath = (points: readonly PointM[], on: (point: PointM) => PointM): string =>
  points.length === 0
    ? ''
    : `M${points
        .map((point) =>
          on(point)
            .map((px) => px.toFixed(1))
            .join(' '),
        )
        .join('L')}`;

export function PlanDrawn({ originM, surface, size }: Props) {
  const { tool, kind, points, aim, box, rectangle, problem } = usePlan((state) => state);
  const on = (point: PointM) => toPixel(toLocal(point, originM), surface);
  const draws = isDrawing(tool);
  const form = formOf(tool, kind);
  const sides = draws && form === 'area' && rectangle && points[0] !== undefined && aim !== null;
  const shown = sides
    ? rectangleOf(points[0] as PointM, aim.at)
    : aim !== null && draws && points.length > 0
      ? [...points, aim.at]
      : points;
  return (
    <g className="pe-drawn">
      {problem?.ghost && <path className="pe-ghost" data-note={problem.note === true} d={`${pixelPath(problem.ghost, on)}Z`} />}
      {problem?.at && (problem.note ? <PlaceMark at={on(problem.at)} /> : <FaultMark at={on(problem.at)} />)}
      {draws && (
        <>
          {form === 'area' && shown.length > 2 && <path className="pe-drawn-area" d={`${pixelPath(shown, on)}Z`} />}
          <path className="pe-drawn-line" d={sides ? `${pixelPath(shown, on)}Z` : pixelPath(shown, on)} />
          {points.map((point, i) => {
            const [x, y] = on(point);
            // biome-ignore lint/suspicious/noArrayIndexKey: two points may be at one place
            return <circle key={i} className="pe-drawn-point" data-first={i === 0} cx={x} cy={y} r={i === 0 ? 5.5 : 4} />;
          })}
          {form === 'area' && !sides && <LiveFaults points={shown} on={on} />}
        </>
      )}
      {box !== null && <ChoosingBox box={box} on={on} />}
      <Aim on={on} size={size} isDrawing={draws} />
      {draws && aim !== null && (
        <LiveSizes points={points} at={aim.at} on={on} area={form === 'area' ? shown : null} sides={sides} size={size} />
      )}
    </g>
  );
}

/** Round what is to be chosen, with how many parts lie wholly in it. */
function ChoosingBox({ box: { from, to, inside }, on }: { readonly box: PlanBox; readonly on: AimProps['on'] }) {
  const [[x1, y1], [x2, y2]] = [on(from), on(to)];
  const [left, top] = [Math.min(x1, x2), Math.min(y1, y2)];
  return (
    <g className="pe-box">
      <rect x={left} y={top} width={Math.abs(x2 - x1)} height={Math.abs(y2 - y1)} />
      <text className="pe-live" x={left + 6} y={Math.max(18, top - 7)}>
        {t.draw.box.inside(inside.length)}
      </text>
    </g>
  );
}

function FaultMark({ at: [x, y] }: { readonly at: PointM }) {
  return (
    <g className="pe-fault" transform={`translate(${x} ${y})`}>
      <circle r="13" />
      <path d="M-5-5L5 5M5-5L-5 5" />
    </g>
  );
}

/** Around a place that is meant, be it ever so small. */
function PlaceMark({ at: [x, y] }: { readonly at: PointM }) {
  return <circle className="pe-place" cx={x} cy={y} r="15" />;
}

/** Crossings of what is drawn already, found by the same check as files. */
function LiveFaults({ points, on }: { readonly points: readonly PointM[]; readonly on: (point: PointM) => PointM }) {
  const language = useView((state) => state.language);
  const faults = points.length < 3 ? [] : shapeFaults({ form: 'area', points, open: true }, language);
  return faults.map(({ at }) => at && <FaultMark key={at.join(' ')} at={on(at)} />);
}

interface AimProps {
  readonly on: (point: PointM) => PointM;
  readonly size: SizePx;
  readonly isDrawing: boolean;
}

/** A cross through the whole sheet, so that fingers do not hide it, and the word for what is caught. */
function Aim({ on, size, isDrawing }: AimProps) {
  const aim = usePlan((state) => state.aim);
  if (aim === null || (!isDrawing && aim.caught === null)) return null;
  const [x, y] = on(aim.at);
  return (
    <g className="pe-aim" data-caught={aim.caught ?? 'nothing'}>
      {isDrawing && <path className="pe-cross" d={`M${x} 0V${size.height}M0 ${y}H${size.width}`} />}
      {aim.guide && <path className="pe-guide" d={pixelPath(aim.guide, on)} />}
      {aim.caught !== null && aim.caught !== 'grid' && (
        <>
          <rect x={x - 6} y={y - 6} width="12" height="12" />
          <text x={x + 11} y={y + 20}>
            {t.draw.caught(aim.caught)}
          </text>
        </>
      )}
    </g>
  );
}

interface SizesProps {
  readonly points: readonly PointM[];
  readonly at: PointM;
  readonly on: (point: PointM) => PointM;
  readonly area: readonly PointM[] | null;
  readonly sides: boolean;
  readonly size: SizePx;
}

/** Counter-clockwise from the right, 0 … 360. */
export const directionDeg = (from: PointM, to: PointM): number =>
  ((Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI + 360) % 360;

function LiveSizes({ points, at, on, area, sides, size }: SizesProps) {
  const from = points.at(-1);
  if (from === undefined) return null;
  const lines = sides
    ? [t.draw.live.sides(Math.abs(at[0] - from[0]), Math.abs(at[1] - from[1]))]
    : [t.draw.live.length(lineLengthM([from, at]), directionDeg(from, at))];
  if (area !== null && area.length > 2) lines.push(t.draw.live.area(ringAreaM2(area)));
  const [x, y] = on(at);
  // To the left of the pointer where there is no room on its right.
  const isRight = x < size.width - 130;
  return (
    <text
      className="pe-live"
      x={isRight ? x + 14 : x - 14}
      y={Math.max(18, y - 14 - 15 * (lines.length - 1))}
      textAnchor={isRight ? 'start' : 'end'}
    >
      {lines.map((line, i) => (
        <tspan key={line} x={isRight ? x + 14 : x - 14} dy={i === 0 ? 0 : '1.2em'}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
