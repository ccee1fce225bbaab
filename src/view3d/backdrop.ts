/** Sky and ground behind the model in the walkthrough: a table of paper under a light sky, one triangle over the whole picture. */

import { BufferAttribute, BufferGeometry, GLSL3, Matrix4, Mesh, type PerspectiveCamera, RawShaderMaterial, Vector2, Vector3 } from 'three';
import type { DeckUniforms } from './deck-uniforms.ts';
import { BACKDROP_FRAGMENT, BACKDROP_VERTEX } from './sun-shader.ts';

export class Backdrop {
  readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;
  private readonly toWorld = new Matrix4();
  private readonly eye = new Vector3();
  private readonly ground = new Vector2();
  private readonly skyHigh = new Vector3();
  private readonly skyLow = new Vector3();

  constructor(uniforms: DeckUniforms) {
    const geometry = new BufferGeometry().setAttribute(
      'position',
      new BufferAttribute(new Float32Array([-1, -1, 0, 3, -1, 0, -1, 3, 0]), 3),
    );
    this.mesh = new Mesh(
      geometry,
      new RawShaderMaterial({
        glslVersion: GLSL3,
        uniforms: {
          ...uniforms,
          toWorld: { value: this.toWorld },
          eye: { value: this.eye },
          ground: { value: this.ground },
          skyHigh: { value: this.skyHigh },
          skyLow: { value: this.skyLow },
        },
        vertexShader: BACKDROP_VERTEX,
        fragmentShader: BACKDROP_FRAGMENT,
        depthTest: false,
        depthWrite: false,
      }),
    );
    this.mesh.frustumCulled = false;
    this.mesh.renderOrder = -10;
    this.mesh.visible = false;
  }

  /**
   * Level of the ground, and the radius of the model [m].
   * @param warm - 0 at noon, 1 with a low sun
   */
  setGround(levelM: number, radiusM: number, warm: number): void {
    this.ground.set(levelM, radiusM);
    this.skyHigh.set(0.72, 0.81, 0.87).lerp(new Vector3(0.73, 0.76, 0.83), warm);
    this.skyLow.set(0.965, 0.955, 0.925).lerp(new Vector3(0.975, 0.915, 0.84), warm);
  }

  follow(camera: PerspectiveCamera): void {
    this.toWorld.multiplyMatrices(camera.matrixWorld, camera.projectionMatrixInverse);
    this.eye.setFromMatrixPosition(camera.matrixWorld);
  }

  dispose(): void {
    this.mesh.geometry.dispose();
    this.mesh.material.dispose();
  }
}
