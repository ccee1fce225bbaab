/** Finds the place on the deck that stands at a point of the picture, by drawing places instead of colours. */

import { Color, type PerspectiveCamera, type WebGLRenderer, WebGLRenderTarget } from 'three';
import type { DeckModel } from './deck-model.ts';

/** Nothing is drawn here. */
const NOWHERE = 65535;
const STEPS = 65534;

/** The hit nearest to the middle of a square of pixels: its two 16-bit numbers, or null. */
export function nearestHit(pixels: Uint8Array, side: number): readonly [number, number] | null {
  const middle = (side - 1) / 2;
  let best = Number.POSITIVE_INFINITY;
  let hit: readonly [number, number] | null = null;
  for (let i = 0; i < side * side; i++) {
    const a = pixels[i * 4] * 256 + pixels[i * 4 + 1];
    const b = pixels[i * 4 + 2] * 256 + pixels[i * 4 + 3];
    const off = ((i % side) - middle) ** 2 + (Math.floor(i / side) - middle) ** 2;
    // A round reach: the corners of the square are too far off.
    if (a === NOWHERE || off >= best || off > (middle + 0.5) ** 2) continue;
    best = off;
    hit = [a, b];
  }
  return hit;
}

export class DeckPicker {
  private target: WebGLRenderTarget | null = null;
  private readonly model: DeckModel;

  constructor(model: DeckModel) {
    this.model = model;
  }

  /**
   * Place under a point of the picture, or the nearest within reach.
   * @param gl - renderer
   * @param camera - camera of the picture
   * @param at - point and size of the picture [CSS px]
   * @param reachPx - reach round the point
   * @returns local x and y [m], or null
   */
  placeAt(gl: WebGLRenderer, camera: PerspectiveCamera, at: PicturePoint, reachPx: number): readonly [number, number] | null {
    const side = 2 * reachPx + 1;
    if (this.target?.width !== side) {
      this.target?.dispose();
      this.target = new WebGLRenderTarget(side, side);
    }
    camera.setViewOffset(at.width, at.height, at.x - side / 2, at.y - side / 2, side, side);
    const pixels = this.draw(gl, camera, this.target);
    camera.clearViewOffset();
    const hit = nearestHit(pixels, side);
    if (hit === null) return null;
    const { x, y, z, w } = this.model.uniforms.pickBounds.value;
    return [x + (hit[0] / STEPS) * (z - x), y + (hit[1] / STEPS) * (w - y)];
  }

  private draw(gl: WebGLRenderer, camera: PerspectiveCamera, target: WebGLRenderTarget): Uint8Array {
    const before = gl.getClearColor(new Color());
    const alpha = gl.getClearAlpha();
    gl.setClearColor('#ffffff', 1);
    gl.setRenderTarget(target);
    gl.clear();
    gl.render(this.model.pickScene, camera);
    const pixels = new Uint8Array(target.width * target.height * 4);
    gl.readRenderTargetPixels(target, 0, 0, target.width, target.height, pixels);
    gl.setRenderTarget(null);
    gl.setClearColor(before, alpha);
    return pixels;
  }

  dispose(): void {
    this.target?.dispose();
    this.target = null;
  }
}

/** A point of the picture, from its upper left corner, and the picture's size [CSS px]. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
