/** What keys do while the 3D view has the focus. */

import type { CameraWish } from '../store/view-store.ts';

export type KeyAction =
  | { readonly kind: 'orbit'; readonly azimuthDeg: number; readonly tiltDeg: number }
  /** The model goes so many CSS pixels to the right and down. */
  | { readonly kind: 'drag'; readonly rightPx: number; readonly downPx: number }
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'go'; readonly to: Extract<CameraWish['to'], string> }
  | { readonly kind: 'drop' };

export interface KeyPress {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

const ORBIT_DEG = 7.5;
const DRAG_PX = 48;
const ZOOM = 0.85;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Action of a key, or null for a key that is not ours. */
export function keyAction(press: KeyPress): KeyAction | null {
  if (press.ctrlKey || press.altKey || press.metaKey) return null;
  const arrow = ARROWS[press.key];
  if (arrow !== undefined) {
    // The eye goes where the arrow points: the model then moves or turns the other way.
    if (press.shiftKey) return { kind: 'drag', rightPx: -arrow[0] * DRAG_PX, downPx: -arrow[1] * DRAG_PX };
    return { kind: 'orbit', azimuthDeg: -arrow[0] * ORBIT_DEG, tiltDeg: -arrow[1] * ORBIT_DEG };
  }
  switch (press.key) {
    case '+':
    case '=':
    case 'PageUp':
      return { kind: 'zoom', factor: ZOOM };
    case '-':
    case '_':
    case 'PageDown':
      return { kind: 'zoom', factor: 1 / ZOOM };
    case 'Home':
      return { kind: 'go', to: 'home' };
    case 'p':
    case 'P':
      return { kind: 'go', to: 'plan' };
    case 's':
    case 'S':
      return { kind: 'go', to: 'side' };
    case 'Escape':
      return { kind: 'drop' };
    default:
      return null;
  }
}
