/** Shader that draws places instead of colours: what stands at a pixel, exact under explode, hide and cut. */

import { CUT_GLSL, PART_GLSL } from './layer-shader.ts';

export const PICK_VERTEX = /* glsl */ `
precision highp float;
precision highp int;
${PART_GLSL}
in vec3 position;
in vec4 normal;
in float part;
in float upper;
out vec2 vAt;
out vec2 vOut;

void main() {
  PartNow p = partNow(part);
  vAt = position.xy;
  vOut = normal.xy;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(lifted(p, position, upper), 1.0);
  if (!isDrawn(p) || isOverhead(p)) gl_Position = NOWHERE;
}
`;

export const PICK_FRAGMENT = /* glsl */ `
precision highp float;
uniform vec4 pickBounds;
in vec2 vAt;
in vec2 vOut;
out vec4 place;
${CUT_GLSL}

vec2 bytes(float share) {
  float whole = floor(clamp(share, 0.0, 1.0) * 65534.0 + 0.5);
  float high = floor(whole / 256.0);
  return vec2(high, whole - high * 256.0) / 255.0;
}

void main() {
  if (isCutAway(vAt)) discard;
  // A side wall stands on the border of its cell: a place just inside is meant.
  vec2 at = vAt - 0.01 * vOut;
  vec2 share = (at - pickBounds.xy) / (pickBounds.zw - pickBounds.xy);
  place = vec4(bytes(share.x), bytes(share.y));
}
`;
