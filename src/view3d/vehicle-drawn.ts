/** A vehicle in the picture: one mesh whose body and axles are moved by matrices, so that driving changes no geometry. */

import { BufferAttribute, BufferGeometry, DoubleSide, GLSL3, Matrix4, Mesh, RawShaderMaterial, Vector3 } from 'three';
import { INK, PAPER } from '../model/palette.ts';
import { rgbOf } from './cell-colour.ts';
import type { DeckUniforms } from './deck-uniforms.ts';
import { CUT_GLSL } from './layer-shader.ts';
import { TONES, type Tone, type VehicleShape } from './vehicle-shape.ts';

/** Body and up to so many axles. */
export const JOINTS = 12;

const COLOURS: Readonly<Record<Tone, string>> = { body: '#4A5560', frame: '#333B40', glass: '#A9B7BC', tyre: '#23282B', load: '#8C7458' };
const colourOf = (hex: string) => new Vector3(...rgbOf(hex)).divideScalar(255);

const VERTEX = /* glsl */ `
precision highp float;
uniform mat4 modelViewMatrix;
uniform mat4 projectionMatrix;
uniform mat4 joints[${JOINTS}];
uniform vec3 tones[${TONES.length}];
in vec3 position;
in vec3 normal;
in vec4 rim;
in float joint;
in float tone;
out vec2 vPlace;
out vec3 vNormal;
out vec4 vRim;
flat out vec3 vTone;

void main() {
  mat4 own = joints[int(joint + 0.5)];
  vec4 at = own * vec4(position, 1.0);
  vPlace = at.xy;
  vNormal = mat3(own) * normal;
  vRim = rim;
  vTone = tones[int(tone + 0.5)];
  gl_Position = projectionMatrix * modelViewMatrix * at;
}
`;

const FRAGMENT = /* glsl */ `
precision highp float;
uniform vec3 edge;
in vec2 vPlace;
in vec3 vNormal;
in vec4 vRim;
flat in vec3 vTone;
out vec4 colour;
${CUT_GLSL}

const vec3 SUN = vec3(-0.482, 0.289, 0.827);

void main() {
  vec4 foot = fwidth(vRim);
  if (isCutAway(vPlace)) discard;
  vec3 n = normalize(vNormal);
  float shade = 0.62 + 0.11 * (1.0 + n.z) + 0.193 * max(0.0, dot(n, SUN));
  vec4 px = vRim / max(foot, vec4(1e-6));
  float line = 1.0 - smoothstep(0.6, 1.6, min(min(px.x, px.y), min(px.z, px.w)));
  colour = vec4(gl_FrontFacing ? mix(vTone * shade, edge, 0.55 * line) : vTone * 0.5, 1.0);
}
`;

export class VehicleDrawn {
  readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;
  private readonly joints: readonly Matrix4[] = Array.from({ length: JOINTS }, () => new Matrix4());

  constructor(uniforms: DeckUniforms, shape: VehicleShape) {
    const geometry = new BufferGeometry().setIndex(new BufferAttribute(shape.triangles, 1));
    geometry.setAttribute('position', new BufferAttribute(shape.positions, 3));
    geometry.setAttribute('normal', new BufferAttribute(shape.normals, 3));
    geometry.setAttribute('rim', new BufferAttribute(shape.rims, 4));
    geometry.setAttribute('joint', new BufferAttribute(shape.joints, 1));
    geometry.setAttribute('tone', new BufferAttribute(shape.tones, 1));
    const material = new RawShaderMaterial({
      glslVersion: GLSL3,
      uniforms: {
        cutOn: uniforms.cutOn,
        cutPlane: uniforms.cutPlane,
        joints: { value: this.joints },
        tones: { value: TONES.map((tone) => colourOf(COLOURS[tone])) },
        edge: { value: colourOf(PAPER).lerp(colourOf(INK), 0.5) },
      },
      vertexShader: VERTEX,
      fragmentShader: FRAGMENT,
      side: DoubleSide,
      // After the patches, so that it stands before them.
      transparent: true,
    });
    this.mesh = new Mesh(geometry, material);
    this.mesh.renderOrder = 10;
    this.mesh.frustumCulled = false;
  }

  /** Puts the body (first) and every axle where they stand. */
  place(frames: readonly Frame[]): void {
    frames.forEach(({ origin, ahead, left, up }, i) => {
      this.joints[i]?.makeBasis(ahead, left, up).setPosition(origin);
    });
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
  }
}

/** A place with three directions at right angles. */
export interface Frame {
  readonly origin: Vector3;
  readonly ahead: Vector3;
  readonly left: Vector3;
  readonly up: Vector3;
}
