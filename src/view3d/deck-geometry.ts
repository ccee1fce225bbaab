/** GPU geometry of faces and lines, and its renewal in place when only heights changed. */

import { BufferAttribute, BufferGeometry } from 'three';
import type { EdgeLines, SolidMesh } from '../model/picture.ts';

type Arrays = Readonly<Record<string, { readonly array: Float32Array | Int8Array | Uint8Array | Uint16Array; readonly size: number }>>;

/** An empty geometry, until there is a picture. */
export function emptyGeometry(): BufferGeometry {
  return new BufferGeometry().setIndex(new BufferAttribute(new Uint32Array(0), 1));
}

/** Faces of merged solids. */
export function solidArrays(mesh: SolidMesh): Arrays {
  return {
    position: { array: mesh.positions, size: 3 },
    normal: { array: mesh.normals, size: 4 },
    part: { array: mesh.parts, size: 1 },
    upper: { array: mesh.upper, size: 1 },
  };
}

/** Each segment as a ribbon of four vertices that know both ends; the shader gives it its width. */
export function lineArrays(lines: EdgeLines): Arrays {
  const segments = lines.parts.length / 2;
  const position = new Float32Array(segments * 12);
  const other = new Float32Array(segments * 12);
  const part = new Uint16Array(segments * 4);
  const upper = new Uint8Array(segments * 4);
  const otherUpper = new Uint8Array(segments * 4);
  const side = new Int8Array(segments * 4);
  for (let corner = 0; corner < segments * 4; corner++) {
    const first = (corner >> 2) * 2;
    const own = first + ((corner >> 1) & 1);
    const far = first + 1 - ((corner >> 1) & 1);
    for (let axis = 0; axis < 3; axis++) {
      position[corner * 3 + axis] = lines.positions[own * 3 + axis];
      other[corner * 3 + axis] = lines.positions[far * 3 + axis];
    }
    part[corner] = lines.parts[own];
    upper[corner] = lines.upper[own];
    otherUpper[corner] = lines.upper[far];
    // Sign: which side of the line; 2 marks the far end.
    side[corner] = ((corner & 1) === 0 ? 1 : -1) * ((corner >> 1) & 1 ? 2 : 1);
  }
  return {
    position: { array: position, size: 3 },
    other: { array: other, size: 3 },
    part: { array: part, size: 1 },
    upper: { array: upper, size: 1 },
    otherUpper: { array: otherUpper, size: 1 },
    side: { array: side, size: 1 },
  };
}

/** Triangles of the ribbons. */
export function lineTriangles(segments: number): Uint32Array {
  const triangles = new Uint32Array(segments * 6);
  for (let segment = 0; segment < segments; segment++) {
    const v = segment * 4;
    triangles.set([v, v + 1, v + 2, v + 2, v + 1, v + 3], segment * 6);
  }
  return triangles;
}

/**
 * Puts new arrays into a geometry, or into a new one where the sizes differ; the old one is then given back to the GPU.
 * @param old - geometry in use
 * @param arrays - attributes by name
 * @param triangles - indices
 * @returns geometry to use from now on
 */
export function renewed(old: BufferGeometry, arrays: Arrays, triangles: Uint32Array): BufferGeometry {
  const index = old.index;
  const fits =
    index?.array.length === triangles.length &&
    triangles.length > 0 &&
    Object.entries(arrays).every(([name, { array }]) => old.getAttribute(name)?.array.length === array.length);
  if (fits && index) {
    for (const [name, { array }] of Object.entries(arrays)) copyInto(old.getAttribute(name) as BufferAttribute, array);
    copyInto(index, triangles);
    return old;
  }
  old.dispose();
  const geometry = new BufferGeometry().setIndex(new BufferAttribute(triangles.slice(), 1));
  for (const [name, { array, size }] of Object.entries(arrays)) {
    // A copy: renewing in place must not write into the picture it came from.
    geometry.setAttribute(name, new BufferAttribute(array.slice(), size, name === 'normal'));
  }
  return geometry;
}

/** Sends an attribute to the GPU again only where it changed. */
function copyInto(attribute: BufferAttribute, array: ArrayLike<number>): void {
  const held = attribute.array;
  let same = true;
  for (let i = 0; i < array.length && same; i++) same = held[i] === array[i];
  if (same) return;
  (held as Float32Array).set(array);
  attribute.needsUpdate = true;
}
