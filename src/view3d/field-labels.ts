/** Short labels that stand at places of the model: access points, and the classes of a map. Those that would cover another are left out. */

import { type PerspectiveCamera, Vector3 } from 'three';
import type { PictureSize } from './bay-labels.ts';

export interface FieldLabel {
  readonly text: string;
  /** Local [m], lift of the exploded view not counted. */
  readonly at: readonly [number, number, number];
  /** Lift by the exploded view [m]. */
  readonly liftM: number;
  readonly kind: 'post' | 'class';
}

interface Shown {
  readonly label: FieldLabel;
  readonly element: HTMLElement;
  readonly width: number;
  readonly height: number;
}

/** Between two labels [CSS px]. */
const GAP_PX = 2;

export class FieldLabels {
  private readonly root: HTMLElement;
  private shown: readonly Shown[] = [];
  private labels: readonly FieldLabel[] = [];

  constructor(overlay: HTMLElement) {
    this.root = document.createElement('div');
    overlay.append(this.root);
  }

  /** The same array means the same labels. */
  setLabels(labels: readonly FieldLabel[]): void {
    if (labels === this.labels) return;
    this.labels = labels;
    this.root.replaceChildren();
    this.shown = labels.map((label) => {
      const element = document.createElement('div');
      element.className = `field-label field-label-${label.kind}`;
      element.textContent = label.text;
      this.root.append(element);
      return { label, element, width: element.offsetWidth, height: element.offsetHeight };
    });
  }

  /** Places the labels for the camera as it stands. */
  update(camera: PerspectiveCamera, size: PictureSize): void {
    const taken: { x: number; y: number; width: number; height: number }[] = [];
    for (const { label, element, width, height } of this.shown) {
      const [x, y, z] = label.at;
      const at = new Vector3(x, y, z + label.liftM).project(camera);
      const left = ((at.x + 1) / 2) * size.width - width / 2;
      const foot = ((1 - at.y) / 2) * size.height;
      const middle = label.kind === 'post' ? foot - height : foot - height / 2;
      // On a post there is room above for a few.
      const tops = label.kind === 'post' ? [0, 1, 2].map((k) => middle - k * (height + GAP_PX)) : [middle];
      const top = tops.find((y) => !taken.some((other) => overlap({ x: left, y, width, height }, other))) ?? Number.NaN;
      const free = at.z < 1 && left >= 0 && top >= 0 && left + width <= size.width && top + height <= size.height;
      if (free) taken.push({ x: left, y: top, width, height });
      element.style.visibility = free ? 'visible' : 'hidden';
      if (free) element.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
    }
  }

  dispose(): void {
    this.root.remove();
    this.labels = [];
    this.shown = [];
  }
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width + GAP_PX && b.x < a.x + a.width + GAP_PX && a.y < b.y + b.height + GAP_PX && b.y < a.y + a.height + GAP_PX;
}
