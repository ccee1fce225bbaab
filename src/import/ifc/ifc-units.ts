/** Units of a model: of length, and of angles on curves. */

import { type LengthUnit, UNITS } from '../length-unit.ts';
import { type Entity, type IfcModel, numberOf, readOr, typedOf, Unreadable, wordOf } from './ifc-model.ts';

export interface IfcUnits {
  /** Null where the file gives none, or one that is not known here. */
  readonly length: LengthUnit | null;
  /** Length of a unit that the file gives and that is not known here, 0 where it cannot be read; else null [m]. */
  readonly otherM: number | null;
  /** Radians per unit of angle. */
  readonly radians: number;
}

const PREFIXES: Readonly<Record<string, number>> = {
  '': 1,
  MILLI: 1e-3,
  CENTI: 1e-2,
  DECI: 0.1,
  KILO: 1e3,
  DECA: 10,
  HECTO: 100,
  MICRO: 1e-6,
};
const MOST_STEPS = 8;

export function unitsOf(model: IfcModel): IfcUnits {
  let [metres, radians]: [number | null, number] = [null, 1];
  let given = false;
  for (const unit of assigned(model)) {
    const kind = wordOf(unit.values[1]);
    if (kind === 'LENGTHUNIT') [metres, given] = [readOr(() => sizeOf(unit, model, 0), null), true];
    else if (kind === 'PLANEANGLEUNIT') radians = readOr(() => sizeOf(unit, model, 0), 1);
  }
  const known = (Object.keys(UNITS) as LengthUnit[]).find((name) => metres !== null && Math.abs(metres / UNITS[name].metres - 1) < 1e-7);
  return { length: known ?? null, otherM: given && known === undefined ? (metres ?? 0) : null, radians: radians > 0 ? radians : 1 };
}

/** Units of the project; where it names none, those of the first list. */
function assigned(model: IfcModel): readonly Entity[] {
  for (const id of [...model.idsOf('IFCPROJECT'), ...model.idsOf('IFCUNITASSIGNMENT')]) {
    const list = readOr(() => {
      const entity = model.entity(id);
      const assignment = entity.type === 'IFCPROJECT' ? model.maybe(entity.values[8]) : entity;
      return assignment === null ? null : model.toAll(assignment.values[0]);
    }, null);
    if (list !== null) return list;
  }
  return [];
}

/** In metres or radians. */
function sizeOf({ type, values }: Entity, model: IfcModel, steps: number): number {
  if (type === 'IFCSIUNIT') {
    const prefix = PREFIXES[wordOf(values[2])];
    if (prefix === undefined || !/^(METRE|RADIAN)$/.test(wordOf(values[3]))) throw new Unreadable('a unit');
    return prefix;
  }
  if (!type.startsWith('IFCCONVERSIONBASEDUNIT') || steps > MOST_STEPS) throw new Unreadable(type);
  const factor = model.to(values[3]);
  const value = typedOf(factor.values[0])?.values[0] ?? factor.values[0];
  return numberOf(value) * sizeOf(model.to(factor.values[1]), model, steps + 1);
}

/** Length of the unit of a map, or null where it has none of its own [m]. */
export function mapMetres(unit: Entity | null, model: IfcModel): number | null {
  return unit === null ? null : sizeOf(unit, model, 0);
}
