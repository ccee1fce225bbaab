/** People, benches and plants on the GPU: one mesh. */

import { BufferAttribute, BufferGeometry, DoubleSide, GLSL3, Mesh, RawShaderMaterial } from 'three';
import type { DeckUniforms } from './deck-uniforms.ts';
import type { LifeMesh } from './life-builder.ts';
import { LIFE_FRAGMENT, LIFE_VERTEX } from './sun-shader.ts';

export class LifeDrawn {
  readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;

  constructor(uniforms: DeckUniforms) {
    const material = new RawShaderMaterial({
      glslVersion: GLSL3,
      uniforms: { ...uniforms },
      vertexShader: LIFE_VERTEX,
      fragmentShader: LIFE_FRAGMENT,
      side: DoubleSide,
    });
    this.mesh = new Mesh(new BufferGeometry(), material);
    this.mesh.frustumCulled = false;
    this.mesh.visible = false;
  }

  set({ positions, tints, triangles }: LifeMesh): void {
    const geometry = new BufferGeometry().setIndex(new BufferAttribute(triangles, 1));
    geometry.setAttribute('position', new BufferAttribute(positions, 3));
    geometry.setAttribute('tint', new BufferAttribute(tints, 3, true));
    this.mesh.geometry.dispose();
    this.mesh.geometry = geometry;
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
  }
}
