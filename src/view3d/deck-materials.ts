/** The few materials of the deck; all read the same uniforms. */

import { DoubleSide, FrontSide, GLSL3, NoBlending, NormalBlending, RawShaderMaterial, Vector4 } from 'three';
import type { DeckUniforms } from './deck-uniforms.ts';
import { LAYER_FRAGMENT, LAYER_VERTEX } from './layer-shader.ts';
import { LINE_FRAGMENT, LINE_VERTEX } from './line-shader.ts';
import { STYLE_KINDS } from './part-texture.ts';
import { PICK_FRAGMENT, PICK_VERTEX } from './pick-shader.ts';
import { TINT_FRAGMENT, TINT_VERTEX } from './tint-shader.ts';

const DEFINES = { STYLE_COUNT: STYLE_KINDS.length };
/** Pushes faces back a little, so that the lines on their edges are whole; lines that lie on a face go with it. */
const PUSHED = { polygonOffset: true, polygonOffsetFactor: 0.4, polygonOffsetUnits: 1 } as const;
const SHARED = { glslVersion: GLSL3, defines: DEFINES } as const;

/** A cut face lies in the cut plane itself and is never cut. */
const UNCUT = { cutOn: { value: false } };

export interface FaceLook {
  /** Faces of the cut. */
  readonly ofCut: boolean;
  /** Can show map cells and the picked bay; costs more time per pixel. */
  readonly withCells: boolean;
  /** Light of the sun with shadows, for the walkthrough. */
  readonly withSun?: boolean;
}

/** Faces of solids, or of the cut. */
export function faceMaterial(uniforms: DeckUniforms, look: FaceLook): RawShaderMaterial {
  return new RawShaderMaterial({
    ...SHARED,
    defines: { ...DEFINES, ...(look.withCells ? { WITH_CELLS: '' } : {}), ...(look.withSun === true ? { WITH_SUN: '' } : {}) },
    uniforms: look.ofCut ? { ...uniforms, ...UNCUT } : { ...uniforms },
    vertexShader: LAYER_VERTEX,
    fragmentShader: LAYER_FRAGMENT,
    side: FrontSide,
    ...PUSHED,
  });
}

/** Places of what is drawn, for picking. */
export function pickMaterial(uniforms: DeckUniforms, ofCut: boolean): RawShaderMaterial {
  return new RawShaderMaterial({
    ...SHARED,
    uniforms: ofCut ? { ...uniforms, ...UNCUT } : { ...uniforms },
    vertexShader: PICK_VERTEX,
    fragmentShader: PICK_FRAGMENT,
    side: DoubleSide,
    blending: NoBlending,
  });
}

/** Even tint on a level face, over everything that hides it, and never cut. */
export function tintMaterial(uniforms: DeckUniforms, tone: Vector4): RawShaderMaterial {
  return new RawShaderMaterial({
    ...SHARED,
    uniforms: { ...uniforms, ...UNCUT, tone: { value: tone } },
    vertexShader: TINT_VERTEX,
    fragmentShader: TINT_FRAGMENT,
    side: DoubleSide,
    transparent: true,
    depthWrite: false,
    depthTest: false,
  });
}

/** Standing water, or its upright faces in the cut, which are never cut. */
export function waterMaterial(uniforms: DeckUniforms, tone: Vector4, ofCut: boolean): RawShaderMaterial {
  const own = { tone: { value: tone } };
  return new RawShaderMaterial({
    ...SHARED,
    uniforms: ofCut ? { ...uniforms, ...UNCUT, ...own } : { ...uniforms, ...own },
    vertexShader: TINT_VERTEX,
    fragmentShader: TINT_FRAGMENT,
    side: DoubleSide,
    transparent: true,
    depthWrite: false,
    // Faces in the cut lie in those of the layers.
    ...(ofCut ? { polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -2 } : {}),
  });
}

export interface LineLook {
  readonly widthPx: number;
  /** Colour and opacity; null for the ink of its part. */
  readonly tone: Vector4 | null;
  /** Fainter where lines crowd on the screen. */
  readonly crowds?: boolean;
  /** Lines in the cut plane, and marks, are never cut. */
  readonly uncut?: boolean;
  /** Drawn over everything. */
  readonly inFront?: boolean;
  /** Drawn on a level face, not standing up to the eye. */
  readonly lying?: boolean;
}

/** Drawn lines. */
export function lineMaterial(uniforms: DeckUniforms, look: LineLook): RawShaderMaterial {
  const own = {
    widthPx: { value: look.widthPx },
    tone: { value: look.tone ?? new Vector4(0, 0, 0, 0) },
    crowds: { value: look.crowds === true },
    lying: { value: look.lying === true },
  };
  return new RawShaderMaterial({
    ...SHARED,
    uniforms: look.uncut ? { ...uniforms, ...UNCUT, ...own } : { ...uniforms, ...own },
    vertexShader: LINE_VERTEX,
    fragmentShader: LINE_FRAGMENT,
    side: DoubleSide,
    transparent: true,
    blending: NormalBlending,
    depthWrite: false,
    depthTest: look.inFront !== true,
    ...(look.lying === true ? PUSHED : {}),
  });
}
