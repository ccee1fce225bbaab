/** Shaders of drawn lines: each a ribbon of constant width on the screen that follows its part. */

import { CUT_GLSL, PART_GLSL } from './layer-shader.ts';
import { PART_TOP } from './part-texture.ts';

export const LINE_VERTEX = /* glsl */ `
precision highp float;
precision highp int;
${PART_GLSL}
uniform vec3 inks[STYLE_COUNT];
uniform vec3 ink;
uniform vec3 accent;
uniform vec2 pictureSize;
uniform float widthPx;
uniform float lineScale;
uniform float pixelPerDepth;
uniform vec4 tone;
uniform bool crowds;
uniform bool lying;
in vec3 position;
in vec3 other;
in float part;
in float upper;
in float otherUpper;
in float side;
out vec2 vPlace;
out float vAcross;
flat out float vHalfPx;
out vec4 vColour;

// The part of a line behind the eye has no place on the screen.
vec4 beforeEye(vec4 here, vec4 there) {
  float least = 1e-3;
  return here.w >= least ? here : mix(here, there, (least - here.w) / max(1e-6, there.w - here.w));
}

// Lines closer together on the screen than this would only blacken what they outline.
float roomFor(float heightM, float depth) {
  return smoothstep(2.2, 6.0, heightM / (depth * pixelPerDepth));
}

void main() {
  PartNow p = partNow(part);
  vec4 a = modelViewMatrix * vec4(lifted(p, position, upper), 1.0);
  vec4 b = modelViewMatrix * vec4(lifted(p, other, otherUpper), 1.0);
  vec4 here = projectionMatrix * a;
  vec4 there = projectionMatrix * b;
  vec4 from = beforeEye(here, there);
  vec4 to = beforeEye(there, here);
  vec2 direction = (to.xy / to.w - from.xy / from.w) * pictureSize;
  float long_ = length(direction);
  // Both ends offset to the same side: the far end (2) looks the other way along the line.
  direction = (long_ > 1e-6 ? direction / long_ : vec2(1.0, 0.0)) * (abs(side) > 1.5 ? -1.0 : 1.0);
  // On a map the cells come first.
  float thin = mapMode == 1 && tone.a == 0.0 ? 0.75 : 1.0;
  float halfPx = 0.5 * widthPx * lineScale * thin + (p.arriving > 0.5 && tone.a == 0.0 ? 0.35 : 0.0);
  vHalfPx = halfPx;
  vAcross = sign(side) * (halfPx + 0.75);
  vec2 offset = vec2(-direction.y, direction.x) * vAcross * 2.0 / pictureSize;
  gl_Position = from;
  if (lying) {
    // A ribbon in the plane it lies on: what covers that plane covers all of it.
    vec2 along = (other.xy - position.xy) * (abs(side) > 1.5 ? -1.0 : 1.0);
    vec2 across = vec2(-along.y, along.x) / max(1e-6, length(along)) * vAcross * pixelPerDepth * max(here.w, 0.0);
    gl_Position = here + projectionMatrix * modelViewMatrix * vec4(across, 0.0, 0.0);
  } else {
    gl_Position.xy += offset * from.w;
    gl_Position.z -= 2e-5 * from.w;
  }
  vPlace = position.xy;
  float own = max(p.heightM + explode * (p.extraTop - p.extraBottom), 0.0);
  float open = upper * max((p.bits & ${PART_TOP}) != 0 ? 1.0 : 0.0, smoothstep(0.02, 0.12, explode));
  float news = p.arriving > 0.5 ? 1.0 : 0.0;
  vec4 ofPart = vec4(mix(mix(inks[p.style], ink, 0.35), accent, news), max(max(open, news), roomFor(own, from.w)));
  vColour = tone.a > 0.0 ? vec4(tone.rgb, tone.a * (crowds ? max(0.3, ofPart.a) : 1.0)) : ofPart;
  if (!isDrawn(p) || isOverhead(p)) gl_Position = NOWHERE;
}
`;

export const LINE_FRAGMENT = /* glsl */ `
precision highp float;
in vec2 vPlace;
in float vAcross;
flat in float vHalfPx;
in vec4 vColour;
out vec4 colour;
${CUT_GLSL}

void main() {
  if (isCutAway(vPlace)) discard;
  float cover = clamp(vHalfPx + 0.5 - abs(vAcross), 0.0, 1.0);
  colour = vec4(vColour.rgb, vColour.a * cover);
}
`;
