/** Shaders of an even tint on faces that move with their part: footprints of wheels, standing water. */

import { CUT_GLSL, PART_GLSL } from './layer-shader.ts';

export const TINT_VERTEX = /* glsl */ `
precision highp float;
precision highp int;
${PART_GLSL}
in vec3 position;
in float part;
in float upper;
out vec2 vPlace;

void main() {
  PartNow p = partNow(part);
  vPlace = position.xy;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(lifted(p, position, upper), 1.0);
  if (!isDrawn(p)) gl_Position = NOWHERE;
}
`;

export const TINT_FRAGMENT = /* glsl */ `
precision highp float;
uniform vec4 tone;
in vec2 vPlace;
out vec4 colour;
${CUT_GLSL}

void main() {
  if (isCutAway(vPlace)) discard;
  colour = tone;
}
`;
