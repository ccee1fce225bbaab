/** Where the model says it stands: its map, true north and the level of its site. Told, and on wish taken over. */

import { choiceOf, type Gathering } from '../gathering.ts';
import { type Entity, type IfcModel, maybeNumber, numberOf, readOr, tripleOf, Unreadable } from './ifc-model.ts';
import { type Frame, placed, WORLD } from './ifc-places.ts';
import { mapMetres } from './ifc-units.ts';

interface MapPlace {
  readonly frame: Frame;
  /** Length on the map of a length in the model. */
  readonly scale: number;
  /** In metres and degrees, to be told. */
  readonly told: { readonly eastM: number; readonly northM: number; readonly levelM: number; readonly turnDeg: number };
}

/** The frame of the plan; `metres` is the length of the model's unit. */
export function settleOrigin(gather: Gathering, model: IfcModel, metres: number): Frame {
  tellWorld(gather, model, metres);
  tellSite(gather, model, metres);
  const map = firstOf(model, 'IFCMAPCONVERSION', (entity) => mapPlace(entity, model, metres));
  if (map === null) {
    tellNorth(gather, model);
    return WORLD;
  }
  const { told, scale } = map;
  const choices = [choiceOf('project', 'ORIGIN_PROJECT', {}), choiceOf('map', 'ORIGIN_MAP', told)];
  const taken = gather.ask({ id: 'origin', code: 'ORIGIN', values: told, choices, guess: 'project', certain: true });
  gather.mend(taken === 'map' ? 'MAP_TAKEN' : 'MAP_LEFT', told);
  if (Math.abs(scale - 1) > LEAST_SCALE) gather.mend('MAP_SCALE', { scale });
  // On the map, up is grid north, and the plan was turned.
  if (taken !== 'map') tellNorth(gather, model);
  return taken === 'map' ? map.frame : WORLD;
}

/** What the first entity of a type that can be read gives. */
function firstOf<T>(model: IfcModel, type: string, read: (entity: Entity) => T | null): T | null {
  for (const id of model.idsOf(type).slice(0, 20)) {
    const found = readOr(() => read(model.entity(id)), null);
    if (found !== null) return found;
  }
  return null;
}

function mapPlace({ values }: Entity, model: IfcModel, metres: number): MapPlace {
  const target = model.maybe(values[1]);
  const own = target === null ? null : mapMetres(model.maybe(target.values[6]), model);
  const scale = maybeNumber(values[7]);
  const unit = own ?? unitByScale(scale ?? 1, metres);
  const perUnit = unit / metres;
  const [east, north, level] = [2, 3, 4].map((i) => numberOf(values[i]) * perUnit);
  const [along, across] = [maybeNumber(values[5]) ?? 1, maybeNumber(values[6]) ?? 0];
  const length = Math.hypot(along, across);
  if (!(length > 0)) throw new Unreadable('a direction of no length');
  const [cos, sin] = [along / length, across / length];
  return {
    scale: scale === null ? 1 : scale * perUnit,
    frame: { x: [cos, sin, 0], y: [-sin, cos, 0], z: [0, 0, 1], at: [east, north, level] },
    told: {
      eastM: east * metres,
      northM: north * metres,
      levelM: level * metres,
      turnDeg: (Math.atan2(sin, cos) * 180) / Math.PI,
    },
  };
}

/** Grids differ less from the ground. */
const MOST_GRID = 0.01;
/** 1 mm on 1 km. */
const LEAST_SCALE = 1e-6;

/** The unit of a map that names none: the model's own, or metres where the scale leads to them [m]. */
function unitByScale(scale: number, metres: number): number {
  return Math.abs(scale - 1) > MOST_GRID && Math.abs(scale / metres - 1) <= MOST_GRID ? 1 : metres;
}

/** A system of coordinates of the whole model that is not the origin: programs differ in whether they use it, so it is told. */
function tellWorld(gather: Gathering, model: IfcModel, metres: number): void {
  const frame = firstOf(model, 'IFCGEOMETRICREPRESENTATIONCONTEXT', ({ values }) => {
    const found = placed(model, model.maybe(values[4]));
    const far = Math.hypot(...found.at) * metres;
    return values[2] === 3 && (far > 1e-6 || found.x[0] < 1 - 1e-12 || found.z[2] < 1 - 1e-12) ? found : null;
  });
  if (frame === null) return;
  const { x, z, at } = frame;
  const degrees = (angle: number) => (angle * 180) / Math.PI;
  const [xM, yM, zM] = at.map((value) => value * metres);
  gather.mend('WORLD_LEFT', {
    xM,
    yM,
    zM,
    turnDeg: degrees(Math.atan2(x[1], x[0])),
    tiltDeg: degrees(Math.atan2(Math.hypot(z[0], z[1]), z[2])),
  });
}

/** Less than this is no turn [°]. */
const LEAST_TURN = 0.005;

function tellNorth(gather: Gathering, model: IfcModel): void {
  const turnDeg = firstOf(model, 'IFCGEOMETRICREPRESENTATIONCONTEXT', ({ values }) => {
    const north = model.maybe(values[5]);
    if (north === null) return null;
    const [x, y] = tripleOf(north.values[0]);
    return (Math.atan2(x, y) * 180) / Math.PI;
  });
  if (turnDeg !== null && Math.abs(turnDeg) > LEAST_TURN) gather.mend('TRUE_NORTH', { turnDeg });
}

function tellSite(gather: Gathering, model: IfcModel, metres: number): void {
  const level = firstOf(model, 'IFCSITE', ({ values }) => maybeNumber(values[11]));
  if (level !== null && level !== 0) gather.mend('SITE_LEVEL', { levelM: level * metres });
}
