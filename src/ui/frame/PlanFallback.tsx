/** The deck as a plan in SVG, for devices without WebGL: zones, bays, outlets and the map; a click picks the cell. */

import { type MouseEvent, useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { CellMap } from '../../model/maps.ts';
import type { PolygonM } from '../../model/scene-file.ts';
import { classStyle } from '../facts/map-classes.ts';
import { boxOf, boxSizeM, cellAt, cellCentre, toLocal } from '../facts/place.ts';
import { planRuns, type Run } from '../facts/plan-runs.ts';
import { classFill, NO_DATA_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { en as t } from '../text/en.ts';
import { useScene, useView } from '../use-stores.ts';

/** Longer side of the plan in its own units: about the pixels it gets, so that hatches, lines and letters keep their size on any deck. */
const PLAN_SIZE = 420;
const MARGIN = 12;
const BAY_LETTERS = 14;

/** Snapshot and plan units per metre; y runs down. */
interface PlanProps {
  readonly snapshot: Snapshot;
  readonly scale: number;
}

function ringPath(ring: PolygonM, { snapshot, scale }: PlanProps): string {
  const points = ring.map((point) => toLocal(point, snapshot.originM)).map(([x, y]) => `${x * scale} ${-y * scale}`);
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
  const scale = PLAN_SIZE / boxSizeM(box);
  const [x, y] = [box.min[0] * scale - MARGIN, -box.max[1] * scale - MARGIN];
  const [width, height] = [(box.max[0] - box.min[0]) * scale + 2 * MARGIN, (box.max[1] - box.min[1]) * scale + 2 * MARGIN];
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM();
    if (matrix === null) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const cell = cellAt(grid, [at.x / scale, -at.y / scale]);
    if (cell === null) return;
    pickCell(cell);
    pickBay(snapshot.report.bays[bayAt[cell] ?? -1]?.id ?? null);
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: every place can be picked by keyboard in the tables, as the label says
    <svg className="plan-drawing" role="img" aria-label={t.plan.label} viewBox={`${x} ${y} ${width} ${height}`} onClick={onClick}>
      <PlanGround snapshot={snapshot} scale={scale} />
      <PlanMap snapshot={snapshot} scale={scale} />
      <PlanLines snapshot={snapshot} scale={scale} />
      <PickedCell snapshot={snapshot} scale={scale} />
    </svg>
  );
}

function PlanGround(props: PlanProps) {
  const { scene } = props.snapshot;
  return (
    <>
      <path className="plan-deck" d={ringPath(scene.deck.outline, props)} />
      {scene.zones.map((zone) => (
        <path
          key={zone.id}
          className="plan-zone"
          fillRule="evenodd"
          d={[zone.outline, ...(zone.holes ?? [])].map((ring) => ringPath(ring, props)).join('')}
        />
      ))}
      {scene.deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={ringPath(ring, props)} />
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

function PlanMap({ snapshot: { grid }, scale }: PlanProps) {
  const map = useScene((state) => state.cellMap);
  const runs = useMemo(() => (map === null ? [] : planRuns(map, grid)), [map, grid]);
  if (map === null) return null;
  const side = grid.cellM * scale;
  return (
    <g className="plan-map">
      {runs.map(({ row, firstColumn, columns, of }) => (
        <rect
          key={`${row} ${firstColumn}`}
          x={grid.x0M * scale + firstColumn * side}
          y={-(grid.y0M * scale + (row + 1) * side)}
          width={columns * side}
          height={side}
          fill={runFill(of, map)}
        />
      ))}
    </g>
  );
}

function PlanLines(props: PlanProps) {
  const { snapshot, scale } = props;
  const { scene, originM } = snapshot;
  const bay = useView((state) => state.bay);
  return (
    <>
      {scene.deck.bays.map(({ id, outline }) => {
        const { min, max } = boxOf(outline.map((point) => toLocal(point, originM)));
        return (
          <g key={id} className="plan-bay" data-picked={id === bay}>
            <path d={ringPath(outline, props)} />
            <text
              x={((min[0] + max[0]) / 2) * scale}
              y={(-(min[1] + max[1]) / 2) * scale}
              fontSize={Math.min(BAY_LETTERS, (1.8 * (max[0] - min[0]) * scale) / id.length)}
            >
              {id}
            </text>
          </g>
        );
      })}
      {scene.deck.outlets?.map(({ id, at }) => {
        const [x, y] = toLocal(at, originM);
        return <circle key={id} className="plan-outlet" cx={x * scale} cy={-y * scale} r={4} />;
      })}
    </>
  );
}

function PickedCell({ snapshot: { grid }, scale }: PlanProps) {
  const cell = useView((state) => state.cell);
  if (cell === null) return null;
  const [x, y] = cellCentre(grid, cell);
  return <path className="plan-picked" d={`M${x * scale} ${-y * scale}m-8 0h16m-8-8v16`} />;
}
