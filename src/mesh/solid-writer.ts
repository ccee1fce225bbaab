/** Collects the triangles and ink lines of many parts into two merged meshes. */

import type { EdgeLines, SolidMesh } from '../model/picture.ts';

/** Both meshes as they were finished. */
export interface WrittenMeshes {
  readonly solids: SolidMesh;
  readonly edges: EdgeLines;
}

/** How much is written: vertices, entries of triangles, ends of lines. */
export interface WrittenCounts {
  readonly vertices: number;
  readonly corners: number;
  readonly ends: number;
}

/** A stretch of meshes that holds parts which follow one another. */
export interface WrittenStretch {
  readonly from: WrittenCounts;
  readonly to: WrittenCounts;
  readonly firstPart: number;
}

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
  written(): WrittenCounts;
  /** Writes once more what other meshes hold in a stretch, its parts counted from `firstPart`. */
  copy(meshes: WrittenMeshes, stretch: WrittenStretch, firstPart: number): void;
  finish(): WrittenMeshes;
}

/** Vertices of one mesh; the arrays double together, and every store sees one array type only. */
class Vertices {
  positions: Float32Array<ArrayBuffer>;
  parts: Uint16Array<ArrayBuffer>;
  uppers: Uint8Array<ArrayBuffer>;
  count = 0;

  constructor(room: number) {
    this.positions = new Float32Array(3 * room);
    this.parts = new Uint16Array(room);
    this.uppers = new Uint8Array(room);
  }

  /** Returns true if the arrays grew. */
  add(x: number, y: number, z: number): boolean {
    const grew = this.count === this.parts.length;
    if (grew) {
      this.positions = doubled(this.positions);
      this.parts = doubled(this.parts);
      this.uppers = doubled(this.uppers);
    }
    const at = 3 * this.count++;
    this.positions[at] = x;
    this.positions[at + 1] = y;
    this.positions[at + 2] = z;
    return grew;
  }

  /** Returns how often the arrays doubled. */
  append({ positions, parts, upper }: EdgeLines, [from, to]: readonly [number, number], partsBy: number): number {
    const start = this.count;
    this.count += to - from;
    let doublings = 0;
    for (; this.parts.length < this.count; doublings++) {
      this.positions = doubled(this.positions);
      this.parts = doubled(this.parts);
      this.uppers = doubled(this.uppers);
    }
    this.positions.set(positions.subarray(3 * from, 3 * to), 3 * start);
    this.uppers.set(upper.subarray(from, to), start);
    for (let i = from; i < to; i++) this.parts[start + i - from] = parts[i] + partsBy;
    return doublings;
  }

  trimmed(): EdgeLines {
    return {
      positions: this.positions.slice(0, 3 * this.count),
      parts: this.parts.slice(0, this.count),
      upper: this.uppers.slice(0, this.count),
    };
  }
}

function doubled<T extends Float32Array | Int8Array | Uint8Array | Uint16Array | Uint32Array>(old: T): T {
  const grown = new (old.constructor as new (length: number) => T)(2 * old.length);
  grown.set(old);
  return grown;
}

function allowedPart(part: number): number {
  if (part > 0xffff) throw new RangeError(`createSolidWriter: part must be at most 65535, got ${part}`);
  return part;
}

/** Room for what is a little more than before, or for a small model [-]. */
function roomFor(before: number | undefined): number {
  return Math.max(4096, Math.ceil(1.05 * (before ?? 0)));
}

/**
 * A writer with empty meshes.
 * @param like - meshes of about the same size, if there are any: room for them is taken at once [-]
 * @returns writer; positions in metres [m]
 * @throws RangeError if a part above 65535 is begun or copied
 * @source none: geometry
 */
export function createSolidWriter(like?: WrittenMeshes): SolidWriter {
  const corners = new Vertices(roomFor(like?.solids.parts.length));
  const ends = new Vertices(roomFor(like?.edges.parts.length));
  let normals = new Int8Array(4 * corners.parts.length);
  let triangles = new Uint32Array(roomFor(like?.solids.triangles.length));
  let used = 0;
  let current = 0;
  let [nx, ny, nz] = [0, 0, 127];
  return {
    begin(part) {
      current = allowedPart(part);
    },
    normal(x, y, z) {
      const length = Math.sqrt(x * x + y * y + z * z);
      nx = length > 0 ? Math.round((127 * x) / length) : 0;
      ny = length > 0 ? Math.round((127 * y) / length) : 0;
      nz = length > 0 ? Math.round((127 * z) / length) : 127;
    },
    vertex(x, y, z, upper) {
      const index = corners.count;
      if (corners.add(x, y, z)) normals = doubled(normals);
      normals[4 * index] = nx;
      normals[4 * index + 1] = ny;
      normals[4 * index + 2] = nz;
      corners.parts[index] = current;
      corners.uppers[index] = upper;
      return index;
    },
    triangle(a, b, c) {
      if (used + 3 > triangles.length) triangles = doubled(triangles);
      triangles[used++] = a;
      triangles[used++] = b;
      triangles[used++] = c;
    },
    lineEnd(x, y, z, upper) {
      const index = ends.count;
      ends.add(x, y, z);
      ends.parts[index] = current;
      ends.uppers[index] = upper;
    },
    written: () => ({ vertices: corners.count, corners: used, ends: ends.count }),
    copy({ solids, edges }, { from, to, firstPart }, first) {
      if (to.vertices > from.vertices) allowedPart(solids.parts[to.vertices - 1] + first - firstPart);
      const start = corners.count;
      const doublings = corners.append(solids, [from.vertices, to.vertices], first - firstPart);
      for (let i = 0; i < doublings; i++) normals = doubled(normals);
      normals.set(solids.normals.subarray(4 * from.vertices, 4 * to.vertices), 4 * start);
      while (triangles.length < used + to.corners - from.corners) triangles = doubled(triangles);
      for (let i = from.corners; i < to.corners; i++) triangles[used++] = solids.triangles[i] + start - from.vertices;
      ends.append(edges, [from.ends, to.ends], first - firstPart);
    },
    finish() {
      const solids = { ...corners.trimmed(), normals: normals.slice(0, 4 * corners.count), triangles: triangles.slice(0, used) };
      return { solids, edges: ends.trimmed() };
    },
  };
}
