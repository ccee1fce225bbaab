/** Surfaces of bodies that this reader does not lay out itself: cut by others, bent, swept along curves. */

import type { Face } from './ifc-faces.ts';
import type { IfcModel, Xyz } from './ifc-model.ts';
import { type Frame, moved } from './ifc-places.ts';
import { placeOfId, type StepFile } from './step-file.ts';
import type { StepValue } from './step-values.ts';
import { BadStep, spanAt } from './step-values.ts';

/** A loaded library that makes triangles of bodies. */
export interface Mesher {
  /**
   * Opens a model and makes triangles of products.
   * @param model - text of a model
   * @param ids - products
   * @returns nine numbers per triangle, in the unit of the model and z up, by product; null where none could be made
   */
  trianglesOf(model: string, ids: readonly number[]): readonly (Float64Array | null)[];
}

/** Entities of one part; more than this is no slab. */
const MOST_ENTITIES = 400_000;
const MOST_DEPTH = 200;

/**
 * A model of some products alone: they, what cuts them, and all they refer to.
 * @param model - the whole model
 * @param parts - ids of each product and of the relations that cut it
 * @returns its text, and which parts are in it: what refers to nothing, or to itself, would keep a library busy without end
 */
function partOfModel(
  { file }: IfcModel,
  parts: readonly (readonly number[])[],
): { readonly text: string; readonly sound: readonly boolean[] } {
  const lines = new Map<number, string>();
  const project = (file.byType.get('IFCPROJECT') ?? []).slice(0, 1);
  collect(file, project, lines);
  const sound = parts.map((ids) => collect(file, ids, lines));
  const schema = /FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'/i.exec(file.text.slice(0, 20_000))?.[1] ?? 'IFC4';
  const head = `ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('${schema}'));\nENDSEC;\nDATA;\n`;
  return { text: `${head}${[...lines.values()].join('\n')}\nENDSEC;\nEND-ISO-10303-21;\n`, sound };
}

/** Adds entities with all they refer to; false, and nothing added, where something is missing, out of form or goes round. */
function collect(file: StepFile, ids: readonly number[], into: Map<number, string>): boolean {
  const added = new Map<number, string>();
  const open = new Set<number>();
  const visit = (id: number): boolean => {
    if (added.has(id) || into.has(id)) return true;
    if (open.has(id) || open.size > MOST_DEPTH || added.size > MOST_ENTITIES) return false;
    const place = placeOfId(file, id);
    const start = place < 0 ? -1 : file.starts[place];
    const span = start < 0 ? null : readable(file.text, start);
    if (span === null) return false;
    open.add(id);
    const whole = refsIn(span.values).every(visit);
    open.delete(id);
    const type = /([A-Za-z_]\w*)\s*$/.exec(file.text.slice(Math.max(0, start - 80), start))?.[1] ?? '';
    added.set(id, `#${id}=${type.toUpperCase()}${file.text.slice(start, span.end)};`);
    return whole;
  };
  if (!ids.every(visit)) return false;
  for (const [id, line] of added) into.set(id, line);
  return true;
}

function readable(text: string, start: number): ReturnType<typeof spanAt> | null {
  try {
    return spanAt(text, start);
  } catch (error) {
    if (error instanceof BadStep) return null;
    throw error;
  }
}

function refsIn(values: readonly StepValue[]): readonly number[] {
  return values.flatMap((value): readonly number[] => {
    if (typeof value !== 'object' || value === null || 'word' in value) return [];
    if ('ref' in value) return [value.ref];
    return refsIn('type' in value ? value.values : value);
  });
}

/** Surfaces of products, each with the relations that cut it; null where none can be made. */
export function surfacesOf(mesher: Mesher, model: IfcModel, products: readonly Cutting[]): readonly (Float64Array | null)[] {
  const { text, sound } = partOfModel(
    model,
    products.map(({ id, relations }) => [id, ...relations]),
  );
  const wanted = products.filter((_, i) => sound[i]).map(({ id }) => id);
  const made = wanted.length === 0 ? [] : mesher.trianglesOf(text, wanted);
  return products.map(({ id }) => made[wanted.indexOf(id)] ?? null);
}

interface Cutting {
  readonly id: number;
  readonly relations: readonly number[];
}

/** Triangles as faces, moved to the plan; rounded to hundredths of a millimetre, as single precision has no more to give. */
export function facesOfTriangles(numbers: Float64Array, root: Frame, metres: number): Face[] {
  const scale = 10 ** Math.max(0, Math.round(5 + Math.log10(metres)));
  const at = (i: number): Xyz => {
    const [x, y, z] = moved(root, [numbers[i], numbers[i + 1], numbers[i + 2]]);
    return [Math.round(x * scale) / scale, Math.round(y * scale) / scale, Math.round(z * scale) / scale];
  };
  return Array.from({ length: Math.floor(numbers.length / 9) }, (_, k) => ({
    outer: [at(9 * k), at(9 * k + 3), at(9 * k + 6)],
    holes: [],
  }));
}
