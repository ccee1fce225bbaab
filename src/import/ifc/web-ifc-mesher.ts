/** Surfaces made by the web-ifc library, of the parts of a model that this reader does not lay out itself. */

import type { Mesher } from './mesher.ts';

interface Placed {
  readonly geometryExpressID: number;
  /** Columns of a 4 × 4 matrix. */
  readonly flatTransformation: readonly number[];
}

interface Listed<T> {
  size(): number;
  get(index: number): T;
}

interface Geometry {
  GetVertexData(): number;
  GetVertexDataSize(): number;
  GetIndexData(): number;
  GetIndexDataSize(): number;
  delete?(): void;
}

/** What is used of the compiled library. */
interface WebIfcModule {
  readonly HEAPU8: Uint8Array;
  readonly HEAPF32: Float32Array;
  readonly HEAPU32: Uint32Array;
  OpenModel(settings: object, read: (at: number, offset: number, size: number) => number): number;
  GetFlatMesh(model: number, id: number, toMetres: boolean): { readonly geometries: Listed<Placed>; delete?(): void };
  GetGeometry(model: number, id: number): Geometry;
  CloseModel(model: number): void;
  SetLogLevel(level: number): void;
}

/** All that the library asks for. With 180 chords to a circle, none lies further than 5 mm from an arc of up to 30 m: 30 000 · (1 − cos 1°) = 4.6 mm. */
const SETTINGS = {
  ALLOW_INCOMPATIBLE_SCHEMA_ALIASES: true,
  COORDINATE_TO_ORIGIN: false,
  CIRCLE_SEGMENTS: 180,
  TAPE_SIZE: 67_108_864,
  MEMORY_LIMIT: 1_073_741_824,
  LINEWRITER_BUFFER: 10_000,
  TOLERANCE_PLANE_INTERSECTION: 1e-4,
  TOLERANCE_PLANE_DEVIATION: 1e-4,
  TOLERANCE_BACK_DEVIATION_DISTANCE: 1e-4,
  TOLERANCE_INSIDE_OUTSIDE_PERIMETER: 1e-10,
  TOLERANCE_SCALAR_EQUALITY: 1e-4,
  PLANE_REFIT_ITERATIONS: 1,
  BOOLEAN_UNION_THRESHOLD: 150,
};
const LOG_OFF = 6;
/** A vertex has a place and a normal. */
const PER_VERTEX = 6;

/**
 * Loads the library.
 * @param wasmUrl - where its compiled part lies; left out, beside the library itself
 * @returns a mesher
 */
export async function loadMesher(wasmUrl?: string): Promise<Mesher> {
  const { IfcAPI } = await import('web-ifc');
  const library = new IfcAPI();
  await library.Init(wasmUrl === undefined ? undefined : () => wasmUrl, true);
  return createMesher(library.wasmModule as WebIfcModule);
}

function createMesher(module: WebIfcModule): Mesher {
  module.SetLogLevel(LOG_OFF);
  return {
    trianglesOf(text, ids) {
      const bytes = new TextEncoder().encode(text);
      const model = module.OpenModel(SETTINGS, (at, offset, size) => {
        const part = bytes.subarray(offset, offset + size);
        module.HEAPU8.set(part, at);
        return part.length;
      });
      if (model < 0) return ids.map(() => null);
      try {
        return ids.map((id) => meshOf(module, model, id));
      } finally {
        module.CloseModel(model);
      }
    },
  };
}

/** One that fails leaves the others as they are. */
function meshOf(module: WebIfcModule, model: number, id: number): Float64Array | null {
  try {
    const numbers: number[] = [];
    const mesh = module.GetFlatMesh(model, id, false);
    for (let i = 0; i < mesh.geometries.size(); i++) {
      const { geometryExpressID, flatTransformation } = mesh.geometries.get(i);
      const geometry = module.GetGeometry(model, geometryExpressID);
      const from = geometry.GetVertexData() / 4;
      const vertices = module.HEAPF32.subarray(from, from + geometry.GetVertexDataSize());
      const first = geometry.GetIndexData() / 4;
      const corners = module.HEAPU32.subarray(first, first + geometry.GetIndexDataSize());
      for (const corner of corners) numbers.push(...placed(vertices, corner * PER_VERTEX, flatTransformation));
      geometry.delete?.();
    }
    mesh.delete?.();
    return numbers.length >= 9 && numbers.every(Number.isFinite) ? Float64Array.from(numbers) : null;
  } catch {
    return null;
  }
}

/** The library's y is up and its z runs south. */
function placed(vertices: Float32Array, at: number, m: readonly number[]): readonly [number, number, number] {
  const [x, y, z] = [vertices[at], vertices[at + 1], vertices[at + 2]];
  const row = (i: number) => m[i] * x + m[4 + i] * y + m[8 + i] * z + m[12 + i];
  return [row(0), -row(2), row(1)];
}
