/** The deck as a plan in SVG, for devices without WebGL: zones, bays, outlets and the map; a click picks the cell. */

import { type MouseEvent, useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { CellMap } from '../../model/maps.ts';
import type { PolygonM } from '../../model/scene-file.ts';
import { classStyle } from '../facts/map-classes.ts';
import { boxOf, cellAt, cellCentre, toLocal } from '../facts/place.ts';
import { planRuns, type Run } from '../facts/plan-runs.ts';
import { classFill, NO_DATA_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { en as t } from '../text/en.ts';
import { useScene, useView } from '../use-stores.ts';

/** Plan units: local metres times this, y down, so that hatches made in pixels keep a fair size. */
const SCALE = 20;
const MARGIN_M = 1;

function ringPath(ring: PolygonM, origin: readonly [number, number]): string {
  const points = ring.map((point) => toLocal(point, origin)).map(([x, y]) => `${x * SCALE} ${-y * SCALE}`);
  return `M${points.join('L')}Z`;
}

export function PlanFallback() {
  const snapshot = useScene((state) => state.snapshot);
  return (
    <div className="plan">
      <p className="plan-note">{t.tools.unavailable}</p>
      {snapshot && <Plan snapshot={snapshot} />}
    </div>
  );
}

function Plan({ snapshot }: { readonly snapshot: Snapshot }) {
  const pickCell = useView((state) => state.pickCell);
  const { scene, grid, originM, bayAt } = snapshot;
  const pickBay = useView((state) => state.pickBay);
  const box = boxOf(scene.deck.outline.map((point) => toLocal(point, originM)));
  const [x, y] = [(box.min[0] - MARGIN_M) * SCALE, -(box.max[1] + MARGIN_M) * SCALE];
  const [width, height] = [0, 1].map((axis) => ((box.max[axis] ?? 0) - (box.min[axis] ?? 0) + 2 * MARGIN_M) * SCALE);
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM();
    if (matrix === null) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const cell = cellAt(grid, [at.x / SCALE, -at.y / SCALE]);
    if (cell === null) return;
    pickCell(cell);
    pickBay(snapshot.report.bays[bayAt[cell] ?? -1]?.id ?? null);
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: every place can be picked by keyboard in the tables, as the label says
    <svg className="plan-drawing" role="img" aria-label={t.plan.label} viewBox={`${x} ${y} ${width} ${height}`} onClick={onClick}>
      <PlanGround snapshot={snapshot} />
      <PlanMap snapshot={snapshot} />
      <PlanLines snapshot={snapshot} />
      <PickedCell snapshot={snapshot} />
    </svg>
  );
}

function PlanGround({ snapshot: { scene, originM } }: { readonly snapshot: Snapshot }) {
  return (
    <>
      <path className="plan-deck" d={ringPath(scene.deck.outline, originM)} />
      {scene.zones.map((zone) => (
        <path
          key={zone.id}
          className="plan-zone"
          fillRule="evenodd"
          d={[zone.outline, ...(zone.holes ?? [])].map((ring) => ringPath(ring, originM)).join('')}
        />
      ))}
      {scene.deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={ringPath(ring, originM)} />
      ))}
    </>
  );
}

function runFill(of: Run['of'], map: CellMap): string {
  if (of === 'unconfirmed') return UNCONFIRMED_FILL;
  if (of === 'no data') return NO_DATA_FILL;
  const { colour, hatched } = classStyle(map, of);
  return hatched ? classFill(of, colour) : colour;
}

function PlanMap({ snapshot: { grid } }: { readonly snapshot: Snapshot }) {
  const map = useScene((state) => state.cellMap);
  const runs = useMemo(() => (map === null ? [] : planRuns(map, grid)), [map, grid]);
  if (map === null) return null;
  const side = grid.cellM * SCALE;
  return (
    <g className="plan-map">
      {runs.map(({ row, firstColumn, columns, of }) => (
        <rect
          key={`${row} ${firstColumn}`}
          x={grid.x0M * SCALE + firstColumn * side}
          y={-(grid.y0M * SCALE + (row + 1) * side)}
          width={columns * side}
          height={side}
          fill={runFill(of, map)}
        />
      ))}
    </g>
  );
}

function PlanLines({ snapshot: { scene, originM } }: { readonly snapshot: Snapshot }) {
  const bay = useView((state) => state.bay);
  return (
    <>
      {scene.deck.bays.map(({ id, outline }) => {
        const { min, max } = boxOf(outline.map((point) => toLocal(point, originM)));
        return (
          <g key={id} className="plan-bay" data-picked={id === bay}>
            <path d={ringPath(outline, originM)} />
            <text x={((min[0] + max[0]) / 2) * SCALE} y={(-(min[1] + max[1]) / 2) * SCALE}>
              {id}
            </text>
          </g>
        );
      })}
      {scene.deck.outlets?.map(({ id, at }) => {
        const [x, y] = toLocal(at, originM);
        return <circle key={id} className="plan-outlet" cx={x * SCALE} cy={-y * SCALE} r={0.3 * SCALE} />;
      })}
    </>
  );
}

function PickedCell({ snapshot: { grid } }: { readonly snapshot: Snapshot }) {
  const cell = useView((state) => state.cell);
  if (cell === null) return null;
  const [x, y] = cellCentre(grid, cell);
  return <path className="plan-picked" d={`M${x * SCALE} ${-y * SCALE}m-10 0h20m-10-10v20`} />;
}
