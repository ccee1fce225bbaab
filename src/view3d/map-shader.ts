/** Maps on the model: flat cells read from the data texture, their patterns, and the bays the cells belong to. */

import { CELL_PATTERN, EDGE_BAND, OFF_DECK } from './cell-colour.ts';

export const MAP_GLSL = /* glsl */ `
uniform sampler2D mapCells;
uniform isampler2D bayCells;
uniform vec3 gridAt;
uniform ivec2 gridSize;
uniform int pickedBay;
uniform vec3 unconfirmedInk;
uniform bool bayLinesOn;

// Two straight hatches at 45°, rising and falling, of a stroke width; spacing in CSS pixels, give or take the doubling.
vec2 diagonals(vec2 at, float pixelM, vec2 foot, float widthPx) {
  float spacingM = exp2(floor(log2(pixelM * 8.0) + 0.5));
  float pixel = max(1e-6, 0.70710678 * length(foot) / spacingM);
  vec2 across = vec2(at.x - at.y, at.x + at.y) * (0.70710678 / spacingM);
  vec2 off = abs(fract(across + 0.5) - 0.5);
  vec2 drawn = clamp(0.5 * widthPx * dotsPerPixel + 0.5 - off / pixel, 0.0, 1.0);
  return mix(drawn, vec2(0.2), smoothstep(0.2, 0.45, pixel));
}

// Lines along y for the band at open edges: no class has them.
float uprights(vec2 at, float pixelM, vec2 foot) {
  float spacingM = exp2(floor(log2(pixelM * 6.0) + 0.5));
  float pixel = max(1e-6, foot.x / spacingM);
  float off = abs(fract(at.x / spacingM + 0.5) - 0.5);
  return mix(clamp(0.55 * dotsPerPixel + 0.5 - off / pixel, 0.0, 1.0), 0.2, smoothstep(0.2, 0.45, pixel));
}

bool inGrid(ivec2 cell) {
  return all(greaterThanEqual(cell, ivec2(0))) && all(lessThan(cell, gridSize));
}

int bayOf(ivec2 cell) {
  return inGrid(cell) ? texelFetch(bayCells, cell, 0).r : -1;
}

// Colour of a map at a point; false outside the deck, where the face keeps its own.
bool cellColour(vec2 cellAt, vec2 cellFoot, vec2 at, float pixelM, vec2 foot, out vec3 result) {
  ivec2 cell = ivec2(floor(cellAt));
  if (!inGrid(cell)) return false;
  vec4 texel = texelFetch(mapCells, cell, 0);
  int pattern = int(texel.a * 255.0 + 0.5);
  if (pattern == ${OFF_DECK}) return false;
  bool inBand = pattern >= ${EDGE_BAND};
  if (inBand) pattern -= ${EDGE_BAND};
  result = texel.rgb;
  vec2 inCell = fract(cellAt);
  vec2 lines = diagonals(at, pixelM, foot, pattern == ${CELL_PATTERN.unconfirmed} ? 2.2 : 1.2);
  if (pattern == ${CELL_PATTERN.over}) {
    result = mix(result, ink, 0.75 * lines.x);
  } else if (pattern == ${CELL_PATTERN.farOver}) {
    result = mix(result, paper, 0.6 * max(lines.x, lines.y));
  } else if (pattern == ${CELL_PATTERN.unconfirmed}) {
    result = mix(result, unconfirmedInk, lines.y);
  } else if (pattern == ${CELL_PATTERN.rising}) {
    result = mix(result, ink, 0.45 * lines.x);
  } else if (pattern == ${CELL_PATTERN.falling}) {
    result = mix(result, ink, 0.45 * lines.y);
  } else if (pattern == ${CELL_PATTERN.crossed}) {
    result = mix(result, ink, 0.55 * max(lines.x, lines.y));
  } else if (pattern == ${CELL_PATTERN.noData}) {
    vec2 off = (inCell - 0.5) / cellFoot;
    float room = 1.0 - smoothstep(0.15, 0.3, max(cellFoot.x, cellFoot.y));
    result = mix(result, unconfirmedInk, room * clamp(1.3 * dotsPerPixel + 0.5 - length(off), 0.0, 1.0));
  }
  if (inBand) result = mix(result, ink, 0.6 * uprights(at, pixelM, foot));
  // Cell lines only where a cell is wide enough to be told apart.
  float room = 1.0 - smoothstep(0.06, 0.16, max(cellFoot.x, cellFoot.y) * dotsPerPixel);
  vec2 toEdge = 0.5 - abs(inCell - 0.5);
  vec2 edge = clamp(0.5 * dotsPerPixel + 0.5 - toEdge / cellFoot, 0.0, 1.0);
  result = mix(result, ink, 0.16 * room * max(edge.x, edge.y));
  return true;
}

// Borders of bays as the map judges cells, and a strong border round the picked bay.
vec3 bayMark(vec2 cellAt, vec2 cellFoot, vec3 under, bool onMap) {
  if (!(onMap && bayLinesOn) && pickedBay < 0) return under;
  ivec2 cell = ivec2(floor(cellAt));
  int own = bayOf(cell);
  vec2 inCell = fract(cellAt);
  ivec2 side = ivec2(inCell.x < 0.5 ? -1 : 1, inCell.y < 0.5 ? -1 : 1);
  int besideX = bayOf(cell + ivec2(side.x, 0));
  int besideY = bayOf(cell + ivec2(0, side.y));
  vec2 away = (0.5 - abs(inCell - 0.5)) / (cellFoot * dotsPerPixel);
  vec3 result = under;
  if (onMap && bayLinesOn) {
    float px = min(besideX == own ? 99.0 : away.x, besideY == own ? 99.0 : away.y);
    float line = clamp(1.2 - px, 0.0, 1.0);
    // Cells too narrow to hold the line: the bay beside is then looked for across the width of the line.
    vec2 wide = 0.55 * cellFoot * dotsPerPixel;
    bool crosses = bayOf(ivec2(floor(cellAt + vec2(wide.x, 0.0)))) != own || bayOf(ivec2(floor(cellAt + vec2(0.0, wide.y)))) != own
      || bayOf(ivec2(floor(cellAt - vec2(wide.x, 0.0)))) != own || bayOf(ivec2(floor(cellAt - vec2(0.0, wide.y)))) != own;
    if (max(wide.x, wide.y) > 0.25) line = crosses ? 0.85 : 0.0;
    result = mix(result, ink, 0.9 * line);
  }
  if (own == pickedBay && own >= 0) {
    // Cells narrower than the border: it then takes in as many of them as it needs.
    ivec2 reach = ivec2(clamp(ceil(3.0 * cellFoot * dotsPerPixel), 1.0, 8.0)) - 1;
    bool border = bayOf(cell + ivec2(reach.x, 0)) != own || bayOf(cell - ivec2(reach.x, 0)) != own
      || bayOf(cell + ivec2(0, reach.y)) != own || bayOf(cell - ivec2(0, reach.y)) != own;
    float px = min(besideX == own ? 99.0 : away.x, besideY == own ? 99.0 : away.y);
    result = mix(result, accent, border ? 1.0 : clamp(3.6 - px, 0.0, 1.0));
  }
  return result;
}
`;
