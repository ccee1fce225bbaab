/** Sun, sky and shadow on any surface: shared by layers, life and the ground. Colours are display values. */

export const SUN_GLSL = /* glsl */ `
precision highp sampler2DShadow;
uniform vec3 sunTowards;
uniform vec3 sunColour;
uniform vec3 skyColour;
uniform vec3 belowColour;
uniform bool shadowOn;
uniform mat4 shadowMatrix;
uniform sampler2DShadow shadowMap;
/** Size of a texel of the map [m], and of the map in texels. */
uniform vec2 shadowTexel;

// Share of the sun that reaches a place: five looks, each already a mean of four texels.
float sunReach(vec3 at, vec3 n) {
  if (!shadowOn) return 1.0;
  vec3 p = (shadowMatrix * vec4(at + n * 1.6 * shadowTexel.x, 1.0)).xyz;
  if (any(lessThan(p, vec3(0.0))) || any(greaterThan(p, vec3(1.0)))) return 1.0;
  float near = 1.1 / shadowTexel.y;
  float far = 0.6 / shadowTexel.y;
  p.z -= 0.0006;
  float sum = texture(shadowMap, p);
  sum += texture(shadowMap, p + vec3(near, far, 0.0));
  sum += texture(shadowMap, p + vec3(-far, near, 0.0));
  sum += texture(shadowMap, p + vec3(-near, -far, 0.0));
  sum += texture(shadowMap, p + vec3(far, -near, 0.0));
  return sum * 0.2;
}

vec3 inTheSun(vec3 base, vec3 n, vec3 at) {
  float faces = dot(n, sunTowards);
  float sun = faces > 0.0 ? faces * sunReach(at, n) : 0.0;
  return min(base * (mix(belowColour, skyColour, 0.5 + 0.5 * n.z) + sunColour * sun), vec3(1.0));
}
`;

/** What stands on the garden besides the layers: coloured faces without outlines. */
export const LIFE_VERTEX = /* glsl */ `
precision highp float;
uniform mat4 modelViewMatrix;
uniform mat4 projectionMatrix;
in vec3 position;
in vec3 tint;
out vec3 vAt;
flat out vec3 vTint;

void main() {
  vAt = position;
  vTint = tint;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

export const LIFE_FRAGMENT = /* glsl */ `
precision highp float;
uniform bool cutOn;
uniform vec3 cutPlane;
in vec3 vAt;
flat in vec3 vTint;
out vec4 colour;
${SUN_GLSL}

void main() {
  vec3 n = normalize(cross(dFdx(vAt), dFdy(vAt)));
  if (cutOn && dot(vAt.xy, cutPlane.xy) < cutPlane.z) discard;
  colour = vec4(inTheSun(vTint, n, vAt), 1.0);
}
`;

/** Depth only, as the sun sees it. */
export const DEPTH_FRAGMENT = /* glsl */ `
precision highp float;
out vec4 colour;

void main() {
  colour = vec4(1.0);
}
`;

/** Sky above, a table of paper below. */
export const BACKDROP_VERTEX = /* glsl */ `
precision highp float;
uniform mat4 toWorld;
in vec3 position;
out vec3 vFar;

void main() {
  vec4 at = toWorld * vec4(position.xy, 1.0, 1.0);
  vFar = at.xyz / at.w;
  gl_Position = vec4(position.xy, 1.0, 1.0);
}
`;

export const BACKDROP_FRAGMENT = /* glsl */ `
precision highp float;
uniform vec3 eye;
uniform vec3 paper;
uniform vec3 ink;
uniform vec3 skyHigh;
uniform vec3 skyLow;
/** Level of the ground, and the radius of the model [m]. */
uniform vec2 ground;
in vec3 vFar;
out vec4 colour;
${SUN_GLSL}

float lines(vec2 at, float every) {
  vec2 cells = at / every;
  vec2 foot = max(fwidth(cells), vec2(1e-6));
  vec2 off = abs(fract(cells - 0.5) - 0.5) / foot;
  float seen = 1.0 - smoothstep(0.15, 0.4, max(foot.x, foot.y));
  return seen * (1.0 - clamp(min(off.x, off.y), 0.0, 1.0));
}

void main() {
  vec3 ray = normalize(vFar - eye);
  float up = max(ray.z, 0.0);
  vec3 sky = mix(skyLow, skyHigh, 1.0 - exp(-3.2 * up));
  float below = eye.z - ground.x;
  vec2 at = eye.xy + ray.xy * (below / max(-ray.z, 1e-4));
  float away = length(at - eye.xy);
  float drawn = lines(at, 5.0);
  colour = vec4(sky, 1.0);
  if (ray.z < -1e-4 && below > 0.0) {
    vec3 lit = inTheSun(paper * 0.97, vec3(0.0, 0.0, 1.0), vec3(at, ground.x));
    lit = mix(lit, ink, 0.09 * drawn);
    float fade = smoothstep(2.0 * ground.y, 9.0 * ground.y + 40.0, away);
    colour = vec4(mix(lit, skyLow, fade), 1.0);
  }
}
`;
