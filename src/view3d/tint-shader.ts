/** Shaders of an even tint on faces that move with their part. */

import { PART_GLSL } from './layer-shader.ts';

export const TINT_VERTEX = /* glsl */ `
precision highp float;
precision highp int;
${PART_GLSL}
in vec3 position;
in float part;
in float upper;

void main() {
  PartNow p = partNow(part);
  gl_Position = projectionMatrix * modelViewMatrix * vec4(lifted(p, position, upper), 1.0);
  if (!isDrawn(p)) gl_Position = NOWHERE;
}
`;

export const TINT_FRAGMENT = /* glsl */ `
precision highp float;
uniform vec4 tone;
out vec4 colour;

void main() {
  colour = tone;
}
`;
