/** Collects the triangles and ink lines of many parts into two merged meshes. */

import type { EdgeLines, SolidMesh } from '../model/picture.ts';

/** Writes one part after the other. */
export interface SolidWriter {
  /** All that follows belongs to this part (index into `Picture.parts`). */
  begin(part: number): void;
  /** Normal of the vertices that follow; need not be of unit length, straight up if it has none. */
  normal(x: number, y: number, z: number): void;
  /** Returns the vertex's index; `upper` is 1 on the upper surface. */
  vertex(x: number, y: number, z: number, upper: number): number;
  triangle(a: number, b: number, c: number): void;
  /** One end of an ink line; two make a line. */
  lineEnd(x: number, y: number, z: number, upper: number): void;
  finish(): { readonly solids: SolidMesh; readonly edges: EdgeLines };
}

/** Typed array that grows by doubling. */
interface Growing<T extends Float32Array | Int8Array | Uint8Array | Uint16Array | Uint32Array> {
  data: T;
  used: number;
}

/**
 * A writer with empty meshes.
 * @returns writer; positions in metres [m]
 * @source none: geometry
 */
export function createSolidWriter(): SolidWriter {
  const positions: Growing<Float32Array> = { data: new Float32Array(3 * 4096), used: 0 };
  const normals: Growing<Int8Array> = { data: new Int8Array(4 * 4096), used: 0 };
  const parts: Growing<Uint16Array> = { data: new Uint16Array(4096), used: 0 };
  const uppers: Growing<Uint8Array> = { data: new Uint8Array(4096), used: 0 };
  const triangles: Growing<Uint32Array> = { data: new Uint32Array(3 * 4096), used: 0 };
  const ends: Growing<Float32Array> = { data: new Float32Array(3 * 4096), used: 0 };
  const endParts: Growing<Uint16Array> = { data: new Uint16Array(4096), used: 0 };
  const endUppers: Growing<Uint8Array> = { data: new Uint8Array(4096), used: 0 };
  let current = 0;
  let [nx, ny, nz] = [0, 0, 127];
  return {
    begin(part) {
      if (part > 0xffff) throw new RangeError(`createSolidWriter: part must be at most 65535, got ${part}`);
      current = part;
    },
    normal(x, y, z) {
      const length = Math.sqrt(x * x + y * y + z * z);
      nx = length > 0 ? Math.round((127 * x) / length) : 0;
      ny = length > 0 ? Math.round((127 * y) / length) : 0;
      nz = length > 0 ? Math.round((127 * z) / length) : 127;
    },
    vertex(x, y, z, upper) {
      push3(positions, x, y, z);
      const at = reserve(normals, 4);
      normals.data[at] = nx;
      normals.data[at + 1] = ny;
      normals.data[at + 2] = nz;
      parts.data[reserve(parts, 1)] = current;
      uppers.data[reserve(uppers, 1)] = upper;
      return parts.used - 1;
    },
    triangle: (a, b, c) => push3(triangles, a, b, c),
    lineEnd(x, y, z, upper) {
      push3(ends, x, y, z);
      endParts.data[reserve(endParts, 1)] = current;
      endUppers.data[reserve(endUppers, 1)] = upper;
    },
    finish: () => ({
      solids: {
        positions: positions.data.slice(0, positions.used),
        normals: normals.data.slice(0, normals.used),
        parts: parts.data.slice(0, parts.used),
        upper: uppers.data.slice(0, uppers.used),
        triangles: triangles.data.slice(0, triangles.used),
      },
      edges: {
        positions: ends.data.slice(0, ends.used),
        parts: endParts.data.slice(0, endParts.used),
        upper: endUppers.data.slice(0, endUppers.used),
      },
    }),
  };
}

/** Index of the first of `count` new places. */
function reserve<T extends Float32Array | Int8Array | Uint8Array | Uint16Array | Uint32Array>(array: Growing<T>, count: number): number {
  const at = array.used;
  array.used += count;
  if (array.used > array.data.length) {
    const grown = new (array.data.constructor as new (length: number) => T)(2 * array.data.length);
    grown.set(array.data);
    array.data = grown;
  }
  return at;
}

function push3(array: Growing<Float32Array> | Growing<Uint32Array>, x: number, y: number, z: number): void {
  const at = reserve(array as Growing<Float32Array | Uint32Array>, 3);
  array.data[at] = x;
  array.data[at + 1] = y;
  array.data[at + 2] = z;
}
