/** The deck as a plan in SVG, for devices without WebGL: zones, bays, outlets and the map; a click picks the cell. */

import { type MouseEvent, useMemo } from 'react';
import { type NamedStyle, namedStyles } from '../../model/class-style.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { CellMap } from '../../model/maps.ts';
import { classStyle } from '../facts/map-classes.ts';
import { boxOf, cellAt, cellCentre } from '../facts/place.ts';
import { type PlanFrame, planFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { planRuns, type Run, shortRuns } from '../facts/plan-runs.ts';
import { classFill, NamedHatches, NO_DATA_FILL, namedFill, SHORT_FILL, UNCONFIRMED_FILL } from '../parts/Hatches.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

/** Longer side of the plan in its own units: about the pixels it gets, so that hatches, lines and letters keep their size on any deck. */
const PLAN_SIZE = 420;
const MARGIN = 12;
const BAY_LETTERS = 14;

interface PlanProps {
  readonly snapshot: Snapshot;
  readonly frame: PlanFrame;
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
  const { grid, bayAt } = snapshot;
  const pickBay = useView((state) => state.pickBay);
  const frame = useMemo(() => planFrame(snapshot, PLAN_SIZE, MARGIN), [snapshot]);
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM();
    if (matrix === null) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const cell = cellAt(grid, [at.x / frame.scale, -at.y / frame.scale]);
    if (cell === null) return;
    pickCell(cell);
    pickBay(snapshot.report.bays[bayAt[cell] ?? -1]?.id ?? null);
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: every place can be picked by keyboard in the tables, as the label says
    <svg className="plan-drawing" role="img" aria-label={t.plan.label} viewBox={frame.viewBox} onClick={onClick}>
      <PlanGround snapshot={snapshot} frame={frame} />
      <PlanMap snapshot={snapshot} frame={frame} />
      <PlanLines snapshot={snapshot} frame={frame} />
      <PlanSite snapshot={snapshot} frame={frame} />
      <PickedCell snapshot={snapshot} frame={frame} />
    </svg>
  );
}

function PlanGround(props: PlanProps) {
  const { scene } = props.snapshot;
  return (
    <>
      <path className="plan-deck" d={planPath(scene.deck.outline, props.frame)} />
      {scene.zones.map((zone) => (
        <path
          key={zone.id}
          className="plan-zone"
          fillRule="evenodd"
          d={[zone.outline, ...(zone.holes ?? [])].map((ring) => planPath(ring, props.frame)).join('')}
        />
      ))}
      {scene.deck.openings?.map((ring) => (
        <path key={ring.join(' ')} className="plan-opening" d={planPath(ring, props.frame)} />
      ))}
    </>
  );
}

function runFill(of: Run['of'], map: CellMap, styles: readonly NamedStyle[]): string {
  if (of === 'unconfirmed') return UNCONFIRMED_FILL;
  if (of === 'no data') return NO_DATA_FILL;
  if (map.names !== null) return namedFill(styles[of] as NamedStyle);
  const { colour, hatched } = classStyle(map, of);
  return hatched ? classFill(of, colour) : colour;
}

export function PlanMap({ snapshot: { grid }, frame: { scale } }: PlanProps) {
  const map = useScene((state) => state.cellMap);
  const runs = useMemo(() => (map === null ? [] : planRuns(map, grid)), [map, grid]);
  if (map === null) return null;
  const styles = namedStyles(map);
  const side = grid.cellM * scale;
  const boxOfRun = ({ row, firstColumn, columns }: Run) => ({
    x: grid.x0M * scale + firstColumn * side,
    y: -(grid.y0M * scale + (row + 1) * side),
    width: columns * side,
    height: side,
  });
  return (
    <g className="plan-map">
      <NamedHatches styles={styles} />
      {runs.map((run) => (
        <rect key={`${run.row} ${run.firstColumn}`} {...boxOfRun(run)} fill={runFill(run.of, map, styles)} />
      ))}
      {shortRuns(map, grid).map((run) => (
        <rect key={`short ${run.row} ${run.firstColumn}`} {...boxOfRun(run)} fill={SHORT_FILL} />
      ))}
    </g>
  );
}

function PlanLines(props: PlanProps) {
  const { snapshot, frame } = props;
  const { scene } = snapshot;
  const bay = useView((state) => state.bay);
  return (
    <>
      {scene.deck.bays.map(({ id, outline }) => {
        const { min, max } = boxOf(outline.map((point) => planPoint(point, frame)));
        return (
          <g key={id} className="plan-bay" data-picked={id === bay}>
            <path d={planPath(outline, props.frame)} />
            <text
              x={(min[0] + max[0]) / 2}
              y={(min[1] + max[1]) / 2}
              fontSize={Math.min(BAY_LETTERS, (1.8 * (max[0] - min[0])) / id.length)}
            >
              {id}
            </text>
          </g>
        );
      })}
      {scene.deck.outlets?.map(({ id, at }) => {
        const [x, y] = planPoint(at, frame);
        return <circle key={id} className="plan-outlet" cx={x} cy={y} r={4} />;
      })}
    </>
  );
}

/** The band along open edges and the access points, while a stage is shown. */
function PlanSite({ snapshot, frame }: PlanProps) {
  const shown = useView((state) => state.sitePlan && state.stage !== null);
  if (!shown) return null;
  const { edgeBand } = snapshot.picture;
  const at = (i: number) => `${(edgeBand[i] ?? 0) * frame.scale} ${-(edgeBand[i + 1] ?? 0) * frame.scale}`;
  const band = Array.from({ length: edgeBand.length / 4 }, (_, k) => `M${at(4 * k)}L${at(4 * k + 2)}`).join('');
  return (
    <g className="plan-site">
      <path className="plan-band" d={band} />
      {snapshot.scene.accessPoints?.map(({ id, at: point }) => {
        const [x, y] = planPoint(point, frame);
        return (
          <text key={id} x={x} y={y}>
            {id}
          </text>
        );
      })}
    </g>
  );
}

function PickedCell({ snapshot: { grid }, frame: { scale } }: PlanProps) {
  const cell = useView((state) => state.cell);
  if (cell === null) return null;
  const [x, y] = cellCentre(grid, cell);
  return <path className="plan-picked" d={`M${x * scale} ${-y * scale}m-8 0h16m-8-8v16`} />;
}
