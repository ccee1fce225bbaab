/** Names and thicknesses beside the lifted column, each on a thin leader, none over another. */

import { type PerspectiveCamera, Vector3 } from 'three';
import type { PictureSize } from './bay-labels.ts';
import { COLUMN_M, type Column, type LiftedLayer } from './core-column.ts';

/** What is written beside a layer. */
export type LayerWords = (layer: Pick<LiftedLayer, 'name' | 'role' | 'thicknessMm'>) => { readonly name: string; readonly size: string };

/** Between the column and its labels, and to the edge of the picture [CSS px]. */
const LEADER_PX = 22;
const EDGE_PX = 8;
/** In a wide picture this much on the right belongs to the sentences [CSS px]. */
const PANEL_PX = 420;
const WIDE_PX = 760;

export class LiftLabels {
  private readonly root: HTMLElement;
  private elements: readonly HTMLElement[] = [];

  constructor(overlay: HTMLElement) {
    this.root = document.createElement('div');
    this.root.className = 'lift-labels';
    overlay.append(this.root);
  }

  set(column: Column | null, words: LayerWords): void {
    this.root.replaceChildren();
    this.elements = (column?.layers ?? []).map((layer) => {
      const { name, size } = words(layer);
      const element = document.createElement('div');
      element.className = 'lift-label';
      const strong = document.createElement('strong');
      strong.textContent = size;
      element.append(strong, ` ${name}`);
      this.root.append(element);
      return element;
    });
  }

  place(column: Column | null, camera: PerspectiveCamera, size: PictureSize): void {
    if (column === null) return;
    // From the top down, so that none slides over the one above it.
    let free = EDGE_PX;
    const endPx = size.width > WIDE_PX ? size.width - PANEL_PX : size.width;
    const right = new Vector3().setFromMatrixColumn(camera.matrixWorld, 0);
    const reach = 0.5 * COLUMN_M * (Math.abs(right.x) + Math.abs(right.y));
    for (let k = column.layers.length - 1; k >= 0; k--) {
      const [layer, element] = [column.layers[k], this.elements[k]];
      if (layer === undefined || element === undefined) continue;
      const at = new Vector3(column.at[0], column.at[1], (layer.bottomM + layer.topM) / 2).addScaledVector(right, reach).project(camera);
      const x = ((at.x + 1) / 2) * size.width;
      const y = ((1 - at.y) / 2) * size.height;
      // Before its height is read: a narrow label has more lines.
      element.style.maxWidth = `${Math.max(60, endPx - x - LEADER_PX - EDGE_PX)}px`;
      const height = element.offsetHeight;
      const top = Math.max(free, y - height / 2);
      const seen = at.z < 1 && x > 0 && x < endPx - 90 && top + height < size.height;
      element.style.visibility = seen ? 'visible' : 'hidden';
      element.style.transform = `translate(${Math.round(x + LEADER_PX)}px, ${Math.round(top)}px)`;
      if (seen) free = top + height + 2;
    }
  }

  dispose(): void {
    this.root.remove();
  }
}
