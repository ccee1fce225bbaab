/** Where the model says it stands: its map, true north and the level of its site. Told, and on wish taken over. */

import { choiceOf, type Gathering } from '../gathering.ts';
import { type Entity, type IfcModel, maybeNumber, numberOf, readOr, tripleOf, Unreadable } from './ifc-model.ts';
import { type Frame, WORLD } from './ifc-places.ts';
import { mapMetres } from './ifc-units.ts';

interface MapPlace {
  readonly frame: Frame;
  /** In metres and degrees, to be told. */
  readonly told: { readonly eastM: number; readonly northM: number; readonly levelM: number; readonly turnDeg: number };
}

/** The frame of the plan; `metres` is the length of the model's unit. */
export function settleOrigin(gather: Gathering, model: IfcModel, metres: number): Frame {
  tellNorth(gather, model);
  tellSite(gather, model, metres);
  const map = firstOf(model, 'IFCMAPCONVERSION', (entity) => mapPlace(entity, model, metres));
  if (map === null) return WORLD;
  const { told } = map;
  const choices = [choiceOf('project', 'ORIGIN_PROJECT', {}), choiceOf('map', 'ORIGIN_MAP', told)];
  const taken = gather.ask({ id: 'origin', code: 'ORIGIN', values: told, choices, guess: 'project', certain: true });
  gather.mend(taken === 'map' ? 'MAP_TAKEN' : 'MAP_LEFT', told);
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
  const perUnit = (own ?? metres) / metres;
  const [east, north, level] = [2, 3, 4].map((i) => numberOf(values[i]) * perUnit);
  const [along, across] = [maybeNumber(values[5]) ?? 1, maybeNumber(values[6]) ?? 0];
  const length = Math.hypot(along, across);
  if (!(length > 0)) throw new Unreadable('a direction of no length');
  const [cos, sin] = [along / length, across / length];
  return {
    frame: { x: [cos, sin, 0], y: [-sin, cos, 0], z: [0, 0, 1], at: [east, north, level] },
    told: {
      eastM: east * metres,
      northM: north * metres,
      levelM: level * metres,
      turnDeg: (Math.atan2(sin, cos) * 180) / Math.PI,
    },
  };
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
