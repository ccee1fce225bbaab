/** The scene as the plan draws it, in pixels of one zoom: areas below, lines above them, points on top. Panning moves all of it. */

import { memo, type ReactNode, useMemo } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { PointM, PolygonM, SceneFinish, SceneObject, SceneRetaining, SceneStage } from '../../model/scene-file.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import { flatPoint } from '../facts/plan-drag.ts';
import { type PlanFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { partFill } from '../parts/Hatches.tsx';
import { PlanNames } from './PlanNames.tsx';

export interface DrawnScene {
  readonly snapshot: Snapshot;
  /** Index of the stage shown; null for the finished garden. */
  readonly stage: number | null;
  readonly hidden: ReadonlySet<PlanLayer>;
  readonly scalePx: number;
}

/** Points, columns and strips are never drawn smaller [px]. */
const LEAST_PX = 5;

export const openPath = (line: readonly PointM[], frame: PlanFrame): string => planPath(line, frame).slice(0, -1);
export const ringsPath = (rings: readonly PolygonM[], frame: PlanFrame): string => rings.map((ring) => planPath(ring, frame)).join('');

export const PlanScene = memo(function PlanScene({ snapshot, stage, hidden, scalePx }: DrawnScene) {
  const { scene, originM } = snapshot;
  const frame = useMemo<PlanFrame>(() => ({ scale: scalePx, originM, viewBox: '' }), [scalePx, originM]);
  const shown = (layer: PlanLayer, drawn: () => ReactNode) => (hidden.has(layer) ? null : <g>{drawn()}</g>);
  const now = stage === null ? undefined : scene.stages?.[stage];
  const { deck, objects = [] } = scene;
  return (
    <>
      {shown('outline', () => (
        <path className="pe-deck" d={planPath(deck.outline, frame)} />
      ))}
      {shown('zone', () => (
        <Zones snapshot={snapshot} frame={frame} />
      ))}
      {shown('opening', () => deck.openings?.map((ring) => <Opening key={ring.join(' ')} ring={ring} frame={frame} />))}
      {shown('bay', () => deck.bays.map(({ id, outline }) => <path key={id} className="pe-bay" d={planPath(outline, frame)} />))}
      {shown('set-up area', () =>
        scene.setUpAreas?.map(({ id, kind, outline }) => (
          <path key={id} className="pe-set-up" data-kind={kind} d={planPath(outline, frame)} />
        )),
      )}
      {shown('route', () =>
        scene.traffic?.map(({ id, route, widthM }) => <Route key={id} route={route} widthM={widthM ?? 0} frame={frame} kind="traffic" />),
      )}
      {shown('object', () => objects.map((one) => <PlanObject key={one.id} object={one} frame={frame} />))}
      {shown('column', () => deck.columns?.map((one) => <Column key={one.id} {...one} frame={frame} />))}
      {shown('outline', () => (
        <path className="pe-outline" d={planPath(deck.outline, frame)} />
      ))}
      {shown('edge', () =>
        deck.edges?.map(({ id, kind, line }) => (
          <path key={id} className="pe-edge" data-kind={kind} strokeWidth={5 * markScale(frame)} d={openPath(line, frame)} />
        )),
      )}
      {now && <StageThings stage={now} frame={frame} shown={shown} />}
      {shown(
        'levels',
        () =>
          deck.levels && (
            <>
              {deck.levels.breaklines?.map((line) => (
                <path key={line.join(' ')} className="pe-breakline" d={openPath(line.map(flatPoint), frame)} />
              ))}
              {deck.levels.spots.map((spot) => (
                <path key={spot.join(' ')} className="pe-spot" d={`M${planPoint([spot[0], spot[1]], frame).join(' ')}m-4 0h8m-4-4v8`} />
              ))}
            </>
          ),
      )}
      {shown('finish', () => scene.zones.map(({ id, finish }) => <FinishNet key={id} finish={finish} frame={frame} />))}
      {shown('outlet', () => deck.outlets?.map(({ id, at, kind }) => <Outlet key={id} at={at} kind={kind} frame={frame} />))}
      {shown('access point', () =>
        scene.accessPoints?.map(({ id, at, kind }) => {
          const [x, y] = planPoint(at, frame);
          const half = 9 * markScale(frame);
          return (
            <path
              key={id}
              className="pe-access"
              data-kind={kind}
              d={`M${x} ${y - half}l${half} ${half}l${-half} ${half}l${-half} ${-half}z`}
            />
          );
        }),
      )}
      <PlanNames snapshot={snapshot} stage={now} hidden={hidden} frame={frame} />
    </>
  );
});

interface Framed {
  readonly frame: PlanFrame;
}

/** Each by what one sees of it from above. */
function Zones({ snapshot, frame }: Framed & { readonly snapshot: Snapshot }) {
  const { picture, scene } = snapshot;
  const tops = useMemo(() => new Map(picture.parts.filter(({ top }) => top).map(({ owner, kind }) => [owner, kind])), [picture]);
  return scene.zones.map(({ id, outline, holes = [] }) => (
    <path key={id} className="pe-zone" fill={partFill(tops.get(id) ?? '')} fillRule="evenodd" d={ringsPath([outline, ...holes], frame)} />
  ));
}

/** Levels that a finish is given by, each on the tip of a level mark. */
function FinishNet({ finish, frame }: Framed & { readonly finish: SceneFinish | undefined }) {
  if (finish?.kind !== 'spots') return null;
  const half = 6 * markScale(frame);
  return (
    <>
      {finish.breaklines?.map((line) => (
        <path key={line.join(' ')} className="pe-breakline" data-of="finish" d={openPath(line.map(flatPoint), frame)} />
      ))}
      {finish.spots.map((spot) => (
        <path
          key={spot.join(' ')}
          className="pe-finish-spot"
          d={`M${planPoint(flatPoint(spot), frame).join(' ')}l${-half} ${-1.4 * half}h${2 * half}z`}
        />
      ))}
    </>
  );
}

/** Crossed through, as openings are drawn. */
function Opening({ ring, frame }: Framed & { readonly ring: PolygonM }) {
  const corners = ring.map((point) => planPoint(point, frame));
  const [a, b, c, d] = corners;
  return (
    <g className="pe-opening">
      <path d={planPath(ring, frame)} />
      {corners.length === 4 && <path className="pe-thin" d={`M${a}L${c}M${b}L${d}`} />}
    </g>
  );
}

function Column({ at, sizeM, frame }: Framed & { readonly at: PointM; readonly sizeM: PointM }) {
  const [x, y] = planPoint(at, frame);
  const [width, height] = sizeM.map((side) => Math.max(LEAST_PX, side * frame.scale)) as [number, number];
  return <rect className="pe-column" x={x - width / 2} y={y - height / 2} width={width} height={height} />;
}

/** Marks of points shrink with the plan, but never so far that they cannot be told apart. */
const markScale = ({ scale }: PlanFrame): number => Math.min(1, Math.max(0.5, scale / 14));

function Outlet({ at, kind, frame }: Framed & { readonly at: PointM; readonly kind: 'outlet' | 'overflow' }) {
  const [x, y] = planPoint(at, frame);
  return (
    <g className="pe-outlet" transform={`translate(${x} ${y}) scale(${markScale(frame)})`}>
      {kind === 'outlet' ? <circle r="6" /> : <rect x="-6" y="-6" width="12" height="12" />}
      <path d={kind === 'outlet' ? 'M-6 0h12M0-6v12' : 'M-3 1l3-4l3 4M0-3v6'} />
    </g>
  );
}

interface RouteProps extends Framed {
  readonly route: readonly PointM[];
  readonly widthM: number;
  readonly kind: 'traffic' | 'plant';
}

function Route({ route, widthM, frame, kind }: RouteProps) {
  const d = openPath(route, frame);
  return (
    <g className="pe-route" data-kind={kind}>
      {widthM > 0 && <path className="pe-lane" d={d} strokeWidth={widthM * frame.scale} />}
      <path className="pe-course" d={d} />
    </g>
  );
}

function PlanObject({ object, frame }: Framed & { readonly object: SceneObject }) {
  switch (object.kind) {
    case 'tree': {
      const [x, y] = planPoint(object.at, frame);
      return (
        <g className="pe-tree">
          <circle cx={x} cy={y} r={Math.max(LEAST_PX, (object.spreadM / 2) * frame.scale)} />
          <path d={`M${x} ${y}m-3 0h6m-3-3v6`} />
        </g>
      );
    }
    case 'line':
      return <path className="pe-line" d={openPath(object.line, frame)} strokeWidth={Math.max(2, object.widthM * frame.scale)} />;
    case 'block':
      return <path className="pe-block" fill={partFill('block')} d={planPath(object.outline, frame)} />;
    case 'retaining':
      return <Retaining wall={object} frame={frame} />;
  }
}

/** Free face of the stem as a heavy line, short strokes to where the soil lies. */
function Retaining({ wall: { line, side, baseM }, frame }: Framed & { readonly wall: SceneRetaining }) {
  const points = line.map((point) => planPoint(point, frame));
  const depth = Math.max(LEAST_PX, baseM * frame.scale);
  const ticks = points.slice(1).map(([x, y], i) => {
    const [fromX, fromY] = points[i] as PointM;
    const length = Math.hypot(x - fromX, y - fromY) || 1;
    // Left of the way it runs, on a page where y runs down.
    const turn = side === 'left' ? 1 : -1;
    const [acrossX, acrossY] = [(turn * (y - fromY)) / length, (-turn * (x - fromX)) / length];
    return `M${fromX} ${fromY}l${acrossX * depth} ${acrossY * depth}L${x + acrossX * depth} ${y + acrossY * depth}L${x} ${y}`;
  });
  return (
    <g className="pe-retaining">
      <path className="pe-thin" d={ticks.join('')} />
      <path d={openPath(line, frame)} />
    </g>
  );
}

interface StageProps extends Framed {
  readonly stage: SceneStage;
  readonly shown: (layer: PlanLayer, drawn: () => ReactNode) => ReactNode;
}

function StageThings({ stage, frame, shown }: StageProps) {
  return (
    <>
      {shown('stockpile', () =>
        stage.stockpiles?.map(({ id, outline }) => (
          <path key={id} className="pe-pile" fill={partFill('stockpile')} d={planPath(outline, frame)} />
        )),
      )}
      {shown('plant', () =>
        stage.plant?.map(({ route }) => <Route key={route.join(' ')} route={route} widthM={0} frame={frame} kind="plant" />),
      )}
    </>
  );
}
