/** Shaders of everything solid: where a vertex of a part stands now, and the colour of a face. */

import { HATCH_GLSL } from './hatch-shader.ts';
import { MAP_GLSL } from './map-shader.ts';
import { PART_OVERHEAD, PART_PROUD, PART_SHOWN, PART_SLAB, PART_TOP, PARTS_PER_ROW, TEXELS_PER_PART } from './part-texture.ts';
import { SUN_GLSL } from './sun-shader.ts';

/** Moves and hides the vertices of a part; used by faces, lines and picking alike, so that all agree. */
export const PART_GLSL = /* glsl */ `
uniform mat4 modelViewMatrix;
uniform mat4 projectionMatrix;
uniform sampler2D partTexels;
uniform float explode;
uniform float arrival;
uniform float dropM;
uniform int mapMode;

struct PartNow {
  float floorLift;
  float extraBottom;
  float extraTop;
  int style;
  int bits;
  float arriving;
  float heightM;
  float green;
};

PartNow partNow(float part) {
  int index = int(part + 0.5);
  ivec2 at = ivec2((index % ${PARTS_PER_ROW}) * ${TEXELS_PER_PART}, index / ${PARTS_PER_ROW});
  vec4 a = texelFetch(partTexels, at, 0);
  vec4 b = texelFetch(partTexels, at + ivec2(1, 0), 0);
  return PartNow(a.x, a.y, a.z, int(a.w + 0.5), int(b.x + 0.5), b.y, b.z, b.w);
}

bool isDrawn(PartNow p) {
  return (p.bits & ${PART_SHOWN}) != 0;
}

bool isOverhead(PartNow p) {
  return mapMode == 1 && (p.bits & ${PART_OVERHEAD}) != 0;
}

// A layer that arrives comes down from above; higher floors from higher up, so that their order can be seen.
float dropOf(PartNow p) {
  float left = 1.0 - arrival;
  return p.arriving > 0.5 ? dropM * (1.0 + 0.6 * (p.arriving - 1.0)) * left * left * left : 0.0;
}

float grown(PartNow p, float upper) {
  return explode * mix(p.extraBottom, p.extraTop, upper);
}

vec3 lifted(PartNow p, vec3 at, float upper) {
  return at + vec3(0.0, 0.0, explode * p.floorLift + grown(p, upper) + dropOf(p));
}

// Outside the clip volume: hidden without a change to the geometry.
const vec4 NOWHERE = vec4(2.0, 2.0, 2.0, 1.0);
`;

/** Everything before the cut plane is taken away. */
export const CUT_GLSL = /* glsl */ `
uniform vec3 cutPlane;
uniform bool cutOn;

bool isCutAway(vec2 at) {
  return cutOn && dot(at, cutPlane.xy) < cutPlane.z;
}
`;

export const LAYER_VERTEX = /* glsl */ `
precision highp float;
precision highp int;
${PART_GLSL}
uniform vec4 fills[STYLE_COUNT];
uniform vec3 inks[STYLE_COUNT];
in vec3 position;
in vec4 normal;
in float part;
in float upper;
out vec3 vAt;
out vec3 vNormal;
out float vGrown;
out float vDepth;
flat out vec4 vFill;
flat out vec3 vInk;
flat out int vBits;
flat out float vArriving;
#ifdef WITH_SUN
out vec3 vStands;
flat out float vGreen;
#endif

void main() {
  PartNow p = partNow(part);
  vAt = position;
  vNormal = normal.xyz;
  vGrown = position.z + grown(p, upper);
  vFill = fills[p.style];
  vInk = inks[p.style];
  vBits = p.bits;
  vArriving = p.arriving;
#ifdef WITH_SUN
  vStands = lifted(p, position, upper);
  vGreen = p.green;
#endif
  gl_Position = projectionMatrix * modelViewMatrix * vec4(lifted(p, position, upper), 1.0);
  vDepth = gl_Position.w;
  if ((p.bits & ${PART_PROUD}) != 0) gl_Position.z -= 1e-4 * gl_Position.w;
  if (!isDrawn(p) || isOverhead(p)) gl_Position = NOWHERE;
}
`;

export const LAYER_FRAGMENT = /* glsl */ `
precision highp float;
precision highp int;
precision highp sampler2D;
precision highp isampler2D;
uniform float pixelPerDepth;
uniform float dotsPerPixel;
uniform int mapMode;
uniform vec3 accent;
uniform vec3 ink;
uniform vec3 paper;
in vec3 vAt;
in vec3 vNormal;
in float vGrown;
in float vDepth;
flat in vec4 vFill;
flat in vec3 vInk;
flat in int vBits;
flat in float vArriving;
out vec4 colour;
${CUT_GLSL}
${HATCH_GLSL}
#ifdef WITH_CELLS
${MAP_GLSL}
#endif
#ifdef WITH_SUN
in vec3 vStands;
flat in float vGreen;
${SUN_GLSL}

// Ground cover between the plants, in soft patches.
const vec3 COVER = vec3(0.412, 0.475, 0.282);

vec3 sunny(float drawn, vec3 n) {
  vec3 base = vFill.rgb;
  if (vGreen > 0.5 && n.z > 0.3) base = mix(base, COVER, 0.72 + 0.12 * sin(vAt.x * 0.9) * sin(vAt.y * 1.1));
  return inTheSun(mix(base, vInk, 0.3 * drawn), n, vStands);
}
#endif

const vec3 SUN = vec3(-0.482, 0.289, 0.827);

// Colours are display values throughout: what the palette says is what stands on the screen.
vec3 lit(vec3 base, vec3 n) {
  float sky = 0.5 + 0.5 * n.z;
  float sun = max(0.0, dot(n, SUN));
  return base * (0.62 + 0.22 * sky + 0.193 * sun);
}

void main() {
  vec3 n = normalize(vNormal);
  bool lies = abs(n.z) > 0.5;
  vec2 along = normalize(lies ? vec2(1.0, 0.0) : vec2(-n.y, n.x));
  vec2 p = lies ? vAt.xy : vec2(dot(vAt.xy, along), vGrown);
  vec2 dx = dFdx(p);
  vec2 dy = dFdy(p);
  // Footprint of one device pixel on the face, along each of its axes [m].
  vec2 foot = vec2(length(vec2(dx.x, dy.x)), length(vec2(dx.y, dy.y)));
  if (isCutAway(vAt.xy)) discard;
  if (!gl_FrontFacing) {
    // Solids are closed: an inner face shows only where a cut opened something that has no cut face of its own.
    colour = vec4(mix(vFill.rgb, vInk, 0.6), 1.0);
    return;
  }
  float pixelM = vDepth * pixelPerDepth;
  float drawn = hatch(int(vFill.a + 0.5), p, pixelM, foot);
  colour = vec4(lit(mix(vFill.rgb, vInk, 0.62 * drawn), n), 1.0);
#ifdef WITH_SUN
  colour.rgb = sunny(drawn, n);
#endif
  if (vArriving > 0.5) colour.rgb = mix(colour.rgb, accent, 0.14);
#ifdef WITH_CELLS
  vec2 cellAt = (vAt.xy - gridAt.xy) / gridAt.z;
  vec2 cellFoot = foot / gridAt.z;
  if (n.z > 0.5 && (vBits & ${PART_TOP}) != 0) {
    vec3 face;
    bool mapHere = mapMode == 1 || (mapMode == 2 && (vBits & ${PART_SLAB}) != 0);
    if (mapHere && cellColour(cellAt, cellFoot, vAt.xy, pixelM, foot, face)) colour.rgb = face;
    colour.rgb = bayMark(cellAt, cellFoot, colour.rgb, mapHere);
  }
#endif
}
`;
