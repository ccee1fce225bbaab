/** One mesh of the deck, with the geometry that is renewed as the picture changes. */

import { type BufferGeometry, Mesh, type RawShaderMaterial } from 'three';
import type { EdgeLines, SolidMesh } from '../model/picture.ts';
import { emptyGeometry, lineArrays, lineTriangles, renewed, solidArrays } from './deck-geometry.ts';

export class Drawn {
  readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;
  /** Drawn in its stead when picking. */
  readonly twin: Mesh<BufferGeometry, RawShaderMaterial> | null;

  constructor(material: RawShaderMaterial, twin: RawShaderMaterial | null, order: number) {
    const geometry = emptyGeometry();
    this.mesh = new Mesh(geometry, material);
    this.twin = twin && new Mesh(geometry, twin);
    this.mesh.renderOrder = order;
    // Vertices move in the shader, so the bounds of the arrays say nothing about what is in sight.
    for (const one of [this.mesh, this.twin]) if (one) one.frustumCulled = false;
  }

  setSolid(solid: SolidMesh): void {
    this.take(renewed(this.mesh.geometry, solidArrays(solid), solid.triangles));
  }

  setLines(lines: EdgeLines): void {
    this.take(renewed(this.mesh.geometry, lineArrays(lines), lineTriangles(lines.parts.length / 2)));
  }

  private take(geometry: BufferGeometry): void {
    this.mesh.geometry = geometry;
    if (this.twin) this.twin.geometry = geometry;
  }

  setVisible(visible: boolean): void {
    this.mesh.visible = visible;
    if (this.twin) this.twin.visible = visible;
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
    this.twin?.material.dispose();
  }
}
