/** The layers under a spot, lifted out as a square column, one above the other with room between them. */

import { BufferAttribute, BufferGeometry, GLSL3, Mesh, RawShaderMaterial } from 'three';
import type { CoreLog } from '../model/maps.ts';
import { drawnAs } from '../model/palette.ts';
import type { DeckUniforms } from './deck-uniforms.ts';
import { HATCH_GLSL } from './hatch-shader.ts';
import { STYLE_KINDS } from './part-texture.ts';

/** Side of the column [m]. */
export const COLUMN_M = 0.8;
/** Thinner layers are drawn this thick, so that they can be seen [m]. */
const LEAST_M = 0.03;
const GAP_M = 0.13;
/** From the ground to the lowest layer lifted [m]. */
const CLEAR_M = 0.35;

export interface LiftedLayer {
  readonly name: string;
  readonly role: CoreLog['layers'][number]['role'];
  readonly thicknessMm: number;
  readonly style: number;
  /** As lifted, local [m]. */
  readonly bottomM: number;
  readonly topM: number;
  /** Where it comes from: its bottom in place. */
  readonly fromM: number;
}

export interface Column {
  readonly at: readonly [number, number];
  readonly groundM: number;
  readonly topM: number;
  readonly layers: readonly LiftedLayer[];
}

/**
 * Column of a core log: layers of the zone that has the most of the cell, those that are there at the stage shown.
 * @param log - core log
 * @param from - origin [m] and datum [m] of the picture
 */
export function columnOf(log: CoreLog, from: { readonly originM: readonly [number, number]; readonly datumM: number }): Column | null {
  const zone = log.layers[0]?.zone;
  const own = log.layers.filter((layer) => layer.zone === zone && layer.placed && layer.thicknessMm > 0);
  const last = own.at(-1);
  if (last === undefined) return null;
  const groundM = last.topM - from.datumM;
  let next = groundM + CLEAR_M;
  const layers = own.map((layer): LiftedLayer => {
    const bottomM = next;
    const topM = bottomM + Math.max(LEAST_M, layer.topM - layer.bottomM);
    next = topM + GAP_M;
    const style = STYLE_KINDS.indexOf(drawnAs(layer.role, layer.loose));
    return { name: layer.name, role: layer.role, thicknessMm: layer.thicknessMm, style, bottomM, topM, fromM: layer.bottomM - from.datumM };
  });
  return { at: [log.at[0] - from.originM[0], log.at[1] - from.originM[1]], groundM, topM: next - GAP_M, layers };
}

const VERTEX = /* glsl */ `
precision highp float;
precision highp int;
uniform mat4 modelViewMatrix;
uniform mat4 projectionMatrix;
uniform float rise;
uniform vec4 fills[STYLE_COUNT];
uniform vec3 inks[STYLE_COUNT];
in vec3 position;
in vec3 normal;
in float style;
in float fromM;
out vec3 vAt;
out vec3 vNormal;
out float vDepth;
flat out vec4 vFill;
flat out vec3 vInk;

void main() {
  vAt = position - vec3(0.0, 0.0, (1.0 - rise) * fromM);
  vNormal = normal;
  int k = int(style + 0.5);
  vFill = style < -0.5 ? vec4(0.13, 0.11, 0.1, 0.0) : fills[k];
  vInk = style < -0.5 ? vec3(0.1) : inks[k];
  gl_Position = projectionMatrix * modelViewMatrix * vec4(vAt, 1.0);
  vDepth = gl_Position.w;
}
`;

const FRAGMENT = /* glsl */ `
precision highp float;
precision highp int;
precision highp sampler2D;
uniform float pixelPerDepth;
uniform float dotsPerPixel;
in vec3 vAt;
in vec3 vNormal;
in float vDepth;
flat in vec4 vFill;
flat in vec3 vInk;
out vec4 colour;
${HATCH_GLSL}

void main() {
  vec3 n = normalize(vNormal);
  vec2 p = abs(n.z) > 0.5 ? vAt.xy : vec2(abs(n.x) > 0.5 ? vAt.y : vAt.x, vAt.z);
  vec2 dx = dFdx(p);
  vec2 dy = dFdy(p);
  vec2 foot = vec2(length(vec2(dx.x, dy.x)), length(vec2(dx.y, dy.y)));
  float drawn = hatch(int(vFill.a + 0.5), p, vDepth * pixelPerDepth, foot);
  vec3 base = mix(vFill.rgb, vInk, 0.55 * drawn);
  // Its own light without shadow: what is shown must be seen.
  colour = vec4(base * (0.78 + 0.1 * n.z + 0.16 * max(0.0, dot(n, normalize(vec3(-0.5, -0.4, 0.7))))), 1.0);
}
`;

/** Faces of a box: normal, then its corners as signs, counter-clockwise from outside. */
const FACES: readonly (readonly [readonly [number, number, number], readonly (readonly [number, number, number])[]])[] = [
  [
    [0, 0, 1],
    [
      [-1, -1, 1],
      [1, -1, 1],
      [1, 1, 1],
      [-1, 1, 1],
    ],
  ],
  [
    [0, 0, -1],
    [
      [-1, 1, 0],
      [1, 1, 0],
      [1, -1, 0],
      [-1, -1, 0],
    ],
  ],
  [
    [1, 0, 0],
    [
      [1, -1, 0],
      [1, 1, 0],
      [1, 1, 1],
      [1, -1, 1],
    ],
  ],
  [
    [-1, 0, 0],
    [
      [-1, 1, 0],
      [-1, -1, 0],
      [-1, -1, 1],
      [-1, 1, 1],
    ],
  ],
  [
    [0, 1, 0],
    [
      [1, 1, 0],
      [-1, 1, 0],
      [-1, 1, 1],
      [1, 1, 1],
    ],
  ],
  [
    [0, -1, 0],
    [
      [-1, -1, 0],
      [1, -1, 0],
      [1, -1, 1],
      [-1, -1, 1],
    ],
  ],
];

export class CoreColumn {
  readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;
  readonly rise = { value: 1 };

  constructor(uniforms: DeckUniforms) {
    const material = new RawShaderMaterial({
      glslVersion: GLSL3,
      defines: { STYLE_COUNT: STYLE_KINDS.length },
      uniforms: { ...uniforms, rise: this.rise },
      vertexShader: VERTEX,
      fragmentShader: FRAGMENT,
    });
    this.mesh = new Mesh(new BufferGeometry(), material);
    this.mesh.frustumCulled = false;
    this.mesh.visible = false;
  }

  set(column: Column | null): void {
    this.mesh.visible = column !== null;
    if (column === null) return;
    const positions: number[] = [];
    const normals: number[] = [];
    const styles: number[] = [];
    const from: number[] = [];
    const triangles: number[] = [];
    const box = (bottomM: number, topM: number, style: number, fromM: number) => {
      const half = COLUMN_M / 2;
      for (const [normal, corners] of FACES) {
        const first = positions.length / 3;
        for (const [sx, sy, up] of corners) {
          positions.push(column.at[0] + sx * half, column.at[1] + sy * half, up === 1 ? topM : bottomM);
          normals.push(...normal);
          styles.push(style);
          from.push(fromM);
        }
        triangles.push(first, first + 1, first + 2, first, first + 2, first + 3);
      }
    };
    // The dark square it came out of.
    box(column.groundM - 0.02, column.groundM + 0.015, -1, 0);
    for (const layer of column.layers) box(layer.bottomM, layer.topM, layer.style, layer.bottomM - layer.fromM);
    const geometry = new BufferGeometry().setIndex(triangles);
    geometry.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3));
    geometry.setAttribute('normal', new BufferAttribute(Float32Array.from(normals), 3));
    geometry.setAttribute('style', new BufferAttribute(Float32Array.from(styles), 1));
    geometry.setAttribute('fromM', new BufferAttribute(Float32Array.from(from), 1));
    this.mesh.geometry.dispose();
    this.mesh.geometry = geometry;
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
  }
}
