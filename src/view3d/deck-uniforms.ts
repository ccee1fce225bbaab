/** The values that all shaders of the deck share: changed once, seen by faces, lines and picking alike. */

import {
  DataArrayTexture,
  DataTexture,
  FloatType,
  LinearFilter,
  Matrix4,
  NearestFilter,
  RedFormat,
  RedIntegerFormat,
  RepeatWrapping,
  RGBAFormat,
  ShortType,
  type Texture,
  UnsignedByteType,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import { ACCENT, INK, PAPER, PATTERNS, ROLE_STYLE, UNCONFIRMED } from '../model/palette.ts';
import { rgbOf } from './cell-colour.ts';
import { FIELD_SIZE, hatchFields } from './hatch-field.ts';
import { PART_TEXTURE_WIDTH, STYLE_KINDS } from './part-texture.ts';

/** `mapMode` of the shaders. */
export const MAP_MODE = { none: 0, top: 1, slab: 2 } as const;

const colour = (hex: string): Vector3 => new Vector3(...rgbOf(hex)).divideScalar(255);

/** Texture of part data, four floats per texel. */
export function partTexture(rows: number): DataTexture {
  const texels = new Float32Array(PART_TEXTURE_WIDTH * rows * 4);
  return plain(new DataTexture(texels, PART_TEXTURE_WIDTH, rows, RGBAFormat, FloatType));
}

/** Texture of map cells, colour and pattern in bytes. */
export function cellTexture(pixels: Uint8Array, columns: number, rows: number): DataTexture {
  return plain(new DataTexture(pixels, columns, rows, RGBAFormat, UnsignedByteType));
}

/** Texture of the bay of each cell, -1 for none. */
export function bayTexture(bayAt: Int16Array, columns: number, rows: number): DataTexture {
  const texture = plain(new DataTexture(bayAt, columns, rows, RedIntegerFormat, ShortType));
  texture.internalFormat = 'R16I';
  return texture;
}

/** Texture of the hatches, one layer per pattern. */
function hatchTexture(): DataArrayTexture {
  const texture = new DataArrayTexture(hatchFields(), FIELD_SIZE, FIELD_SIZE, PATTERNS.length);
  texture.format = RedFormat;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

function plain(texture: DataTexture): DataTexture {
  texture.magFilter = NearestFilter;
  texture.minFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}

/** Fresh uniforms; three takes an object with a `value` for each. */
export function deckUniforms() {
  return {
    partTexels: { value: partTexture(1) },
    hatchFields: { value: hatchTexture() },
    mapCells: { value: cellTexture(new Uint8Array([0, 0, 0, 255]), 1, 1) },
    bayCells: { value: bayTexture(new Int16Array([-1]), 1, 1) },
    gridAt: { value: new Vector3(0, 0, 1) },
    gridSize: { value: new Vector2(1, 1) },
    explode: { value: 0 },
    arrival: { value: 1 },
    dropM: { value: 3 },
    mapMode: { value: MAP_MODE.none as number },
    bayLinesOn: { value: false },
    pickedBay: { value: -1 },
    cutOn: { value: false },
    cutPlane: { value: new Vector3(0, 1, 0) },
    pickBounds: { value: new Vector4(0, 0, 1, 1) },
    pixelPerDepth: { value: 0.001 },
    targetPixelM: { value: 0.1 },
    dotsPerPixel: { value: 1 },
    pictureSize: { value: new Vector2(1, 1) },
    fills: {
      value: STYLE_KINDS.map((kind) => new Vector4(...colour(ROLE_STYLE[kind].fill).toArray(), PATTERNS.indexOf(ROLE_STYLE[kind].pattern))),
    },
    inks: { value: STYLE_KINDS.map((kind) => colour(ROLE_STYLE[kind].line)) },
    ink: { value: colour(INK) },
    accent: { value: colour(ACCENT) },
    paper: { value: colour(PAPER) },
    unconfirmedInk: { value: colour(UNCONFIRMED) },
    /** Factor on the width of drawn lines. */
    lineScale: { value: 1 },
    sunTowards: { value: new Vector3(0, 0, 1) },
    sunColour: { value: new Vector3(0.4, 0.4, 0.4) },
    skyColour: { value: new Vector3(0.6, 0.6, 0.6) },
    belowColour: { value: new Vector3(0.4, 0.4, 0.4) },
    shadowOn: { value: false },
    shadowMatrix: { value: new Matrix4() },
    shadowMap: { value: null as Texture | null },
    shadowTexel: { value: new Vector2(0.05, 1) },
  };
}

export type DeckUniforms = ReturnType<typeof deckUniforms>;
