/** Surfaces of bodies that this reader does not lay out itself: cut by others, bent, swept along curves. */

import type { Face } from './ifc-faces.ts';
import type { IfcModel, Xyz } from './ifc-model.ts';
import { type Frame, moved } from './ifc-places.ts';
import { placeOfId } from './step-file.ts';
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

/**
 * A model of some products alone: they, what cuts them, and all they refer to.
 * @param model - the whole model
 * @param ids - products and their openings
 * @param more - relations that must come along
 * @returns its text; null where it would be too large
 */
export function partOfModel({ file }: IfcModel, ids: readonly number[], more: readonly number[]): string | null {
  const wanted = [...ids, ...more, ...(file.byType.get('IFCPROJECT') ?? []).slice(0, 1)];
  const seen = new Set<number>();
  const lines: string[] = [];
  while (wanted.length > 0) {
    const id = wanted.pop() as number;
    if (seen.has(id)) continue;
    seen.add(id);
    if (seen.size > MOST_ENTITIES) return null;
    const place = placeOfId(file, id);
    if (place < 0) continue;
    const start = file.starts[place];
    const span = readable(file.text, start);
    if (span === null) continue;
    const type = /([A-Za-z_]\w*)\s*$/.exec(file.text.slice(Math.max(0, start - 80), start))?.[1] ?? '';
    lines.push(`#${id}=${type.toUpperCase()}${file.text.slice(start, span.end)};`);
    visitRefs(span.values, (ref) => wanted.push(ref));
  }
  const schema = /FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'/i.exec(file.text.slice(0, 20_000))?.[1] ?? 'IFC4';
  const head = `ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('','',(''),(''),'','','');\nFILE_SCHEMA(('${schema}'));\nENDSEC;\nDATA;\n`;
  return `${head}${lines.join('\n')}\nENDSEC;\nEND-ISO-10303-21;\n`;
}

function readable(text: string, start: number): ReturnType<typeof spanAt> | null {
  try {
    return spanAt(text, start);
  } catch (error) {
    if (error instanceof BadStep) return null;
    throw error;
  }
}

function visitRefs(values: readonly StepValue[], visit: (ref: number) => void): void {
  for (const value of values) {
    if (typeof value !== 'object' || value === null) continue;
    if ('ref' in value) visit(value.ref);
    else if ('type' in value) visitRefs(value.values, visit);
    else if (!('word' in value)) visitRefs(value, visit);
  }
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
