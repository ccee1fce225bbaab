/** Layers of a build-up as the column draws them. */

import type { BuildUpView } from '../../model/engine.ts';
import type { Role } from '../../model/roles.ts';
import type { ColumnLayer } from '../log/column-parts.tsx';

/** `at`: a layer that is being dragged, as thick as it is shown. */
export function drawnLayers({ layers }: Pick<BuildUpView, 'layers'>, at?: { readonly index: number; readonly mm: number }): ColumnLayer[] {
  return layers.map((layer, i): ColumnLayer => {
    return {
      // Materials can lie twice in a build-up.
      key: `${i} ${layer.materialId}`,
      role: layer.role as Role,
      loose: layer.adjustable,
      thicknessMm: at?.index === i ? at.mm : layer.thicknessMm,
      placed: true,
    };
  });
}

/** Names a layer by its material, and which of its layers: it stays the same row, with the focus in it, when it is moved. */
export function layerKey(layers: BuildUpView['layers'], index: number): string {
  const material = layers[index]?.materialId;
  return `${material} ${layers.slice(0, index).filter(({ materialId }) => materialId === material).length}`;
}
