/** The points of a part as a table: coordinates and lengths typed, points put in and removed. */

import { goesWith, limitedTo } from '../../edit/goes-with.ts';
import { withoutPiece } from '../../edit/new-part.ts';
import { withPoints } from '../../edit/plan-shapes.ts';
import { isSameList, type ListRef, type PlanPoint, type PointList, pointLists } from '../../edit/point-lists.ts';
import { isRefused, type Refused } from '../../edit/refusal.ts';
import { insertedVertex } from '../../edit/shared-vertices.ts';
import { angleDeg, withAngle, withEdgeLength } from '../../edit/typed-shape.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { dropped, flatPoint } from '../facts/plan-drag.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { dragRules } from './drag-rules.ts';
import { usePlan, usePlanStore } from './plan-context.ts';
import { QuantityField, type QuantityProps } from './QuantityField.tsx';
import { removeCorner } from './remove-corner.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

/** More rows than anyone types: then the one chosen in the plan. */
const MOST_ROWS = 60;
const PLACE = { unit: 'm', decimals: 3, min: -1e7, max: 1e7 };
const LENGTH = { unit: 'm', decimals: 3, min: 0.001, max: 5000 };
const ANGLE = { unit: '°', decimals: 1, min: 0.1, max: 359.9 };

export function PointsTable({ scene, one }: { readonly scene: SceneFile; readonly one: Selected }) {
  const edits = usePlanEdits();
  const lists = pointLists(scene).filter(({ part, id }) => part === one.part && id === one.id);
  const removePiece = (piece: number | 'building') => () =>
    void edits.run((now) => ({ patch: withoutPiece(now, one, piece) }), stepOf('change', one.part, [one.id]));
  return lists.map((list) => (
    <section key={list.piece ?? ''}>
      <h4 className="block-title">
        {list.piece === undefined
          ? t.draw.chosen.points
          : list.piece === 'building'
            ? t.draw.chosen.building
            : t.draw.chosen.hole(list.piece + 1)}
        {list.piece !== undefined && (
          <button type="button" className="button" onClick={removePiece(list.piece)}>
            {t.draw.chosen.removeHole}
          </button>
        )}
      </h4>
      <ListTable list={list} one={one} />
    </section>
  ));
}

function ListTable({ list, one }: { readonly list: PointList; readonly one: Selected }) {
  const vertex = usePlan((state) => state.vertex);
  const { points, form } = list;
  const chosen = vertex !== null && vertex.piece === list.piece ? vertex.index : null;
  const many = points.length > MOST_ROWS;
  const rows = points.flatMap((point, index) => (!many || (chosen !== null && Math.abs(index - chosen) < 2) ? [{ point, index }] : []));
  return (
    <>
      {many && <p className="small">{t.draw.chosen.manyPoints(points.length)}</p>}
      <table className="numbers pe-points">
        <thead>
          <tr>
            <th scope="col">{t.draw.chosen.point}</th>
            <th scope="col">x [m]</th>
            <th scope="col">y [m]</th>
            {hasLevels(list) && <th scope="col">{t.draw.field('levelM')} [m]</th>}
            {form !== 'point' && <th scope="col">{t.draw.chosen.toNext}</th>}
            {form !== 'point' && <th scope="col">{t.draw.chosen.angle} [°]</th>}
            {form !== 'point' && <td />}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ point, index }) => (
            <PointRow key={index} list={list} one={one} index={index} point={point} chosen={chosen === index} />
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Points of breaklines have levels of their own; that of a spot stands with its properties. */
const hasLevels = ({ part, form }: PointList) => (part === 'levels' || part === 'finish') && form === 'line';

interface RowProps {
  readonly list: PointList;
  readonly one: Selected;
  readonly index: number;
  readonly point: PlanPoint;
  readonly chosen: boolean;
}

/** Edits of one point of a list. */
function usePointEdits({ list, one, index }: Pick<RowProps, 'list' | 'one' | 'index'>) {
  const plan = usePlanStore();
  const { view } = useStores();
  const edits = usePlanEdits();
  const { part, id, piece, form, points } = list;
  const of: ListRef = { part, id, ...(piece === undefined ? {} : { piece }) };
  const rules = () => dragRules(plan);
  const step = stepOf('change', one.part, [one.id]);
  const pointOf = (scene: SceneFile, at: number) => {
    const point = pointLists(scene).find((other) => isSameList(other, of))?.points[at];
    return point === undefined ? null : flatPoint(point);
  };
  const closed = form === 'area';
  /** The list as it then stands, made into another. */
  const reshape = (make: (points: readonly PlanPoint[]) => readonly PlanPoint[] | Refused) =>
    void edits.run((scene) => {
      const now = pointLists(scene).find((other) => isSameList(other, of));
      const next = now === undefined ? ({ refused: 'no such part' } as const) : make(now.points);
      return isRefused(next) ? next : { patch: withPoints(scene, one, next, piece) };
    }, step);
  return {
    put(axis: 0 | 1, to: number) {
      void edits.run(
        (scene) => {
          const from = pointOf(scene, index);
          if (from === null) return { refused: 'no such part' };
          const at: PointM = axis === 0 ? [to, from[1]] : [from[0], to];
          if (form === 'point') return { patch: withPoints(scene, one, [at], piece) };
          return { patch: dropped(scene, { kind: 'vertex', of, from, before: null }, at, rules()) };
        },
        stepOf('move', one.part, [one.id]),
      );
    },
    raise: (levelM: number) => reshape((now) => now.map((each, i): PlanPoint => (i === index ? [each[0], each[1], levelM] : each))),
    turnTo: (angle: number) => reshape((now) => withAngle({ points: now, closed }, index, angle, 'after')),
    lengthTo: (lengthM: number) =>
      reshape((now) => withEdgeLength({ points: now, closed }, index, lengthM, { fixedEnd: 'first', carry: 'corner' })),
    insert() {
      void edits.run((scene) => {
        const [a, b] = [pointOf(scene, index), pointOf(scene, (index + 1) % points.length)];
        if (a === null || b === null) return { refused: 'no such part' };
        const patch = insertedVertex(scene, { a, b }, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
        const { shared, isLocked } = rules();
        return {
          patch: limitedTo(
            scene,
            patch,
            (other) => isSameList(other, of) || (shared && goesWith(part).includes(other.part) && !isLocked(other)),
          ),
        };
      }, step);
    },
    remove: () => removeCorner(plan, view, edits, { piece, index }),
  };
}

interface CellProps {
  readonly label: string;
  /** Null for a cell that stays empty. */
  readonly value: number | null | undefined;
  readonly field: Pick<QuantityProps, 'unit' | 'decimals' | 'min' | 'max'>;
  readonly onCommit: (to: number) => void;
}

function Cell({ label, value, field, onCommit }: CellProps) {
  return (
    <td>
      {value !== null && <QuantityField label={label} value={value} {...field} onCommit={(to) => to !== undefined && onCommit(to)} />}
    </td>
  );
}

function PointRow({ list, one, index, point, chosen }: RowProps) {
  const setVertex = usePlan((state) => state.setVertex);
  const language = useView((state) => state.language);
  const point_ = usePointEdits({ list, one, index });
  const words = t.draw.chosen;
  const { points, form, piece } = list;
  const isLast = form === 'line' && index === points.length - 1;
  const next = points[(index + 1) % points.length] ?? point;
  const lengthM = Math.hypot(next[0] - point[0], next[1] - point[1]);
  const number = index + 1;
  const angle = form === 'point' ? null : angleDeg({ points, closed: form === 'area' }, index);
  return (
    <tr data-picked={chosen} lang={language}>
      <th scope="row">
        <button type="button" className="row-button" aria-pressed={chosen} onClick={() => setVertex({ piece, index })}>
          {number}
        </button>
      </th>
      <Cell label={words.x(number)} value={point[0]} field={PLACE} onCommit={(to) => point_.put(0, to)} />
      <Cell label={words.y(number)} value={point[1]} field={PLACE} onCommit={(to) => point_.put(1, to)} />
      {hasLevels(list) && <Cell label={words.level(number)} value={point[2]} field={PLACE} onCommit={point_.raise} />}
      {form !== 'point' && (
        <Cell label={words.lengthOf(number)} value={isLast ? null : lengthM} field={LENGTH} onCommit={point_.lengthTo} />
      )}
      {form !== 'point' && <Cell label={words.angleAt(number)} value={angle} field={ANGLE} onCommit={point_.turnTo} />}
      {form !== 'point' && (
        <td className="pe-point-buttons">
          {!isLast && (
            <button
              type="button"
              className="icon-button"
              aria-label={words.insertAfter(number)}
              title={words.insertAfter(number)}
              onClick={point_.insert}
            >
              <Icon name="plus" />
            </button>
          )}
          <button
            type="button"
            className="icon-button"
            aria-label={words.removePoint(number)}
            title={words.removePoint(number)}
            onClick={point_.remove}
          >
            <Icon name="close" />
          </button>
        </td>
      )}
    </tr>
  );
}
