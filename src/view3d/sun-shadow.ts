/** One shadow map: what the sun sees, drawn anew only when something changed that casts or moves a shadow. */

import {
  type BufferGeometry,
  DepthTexture,
  DoubleSide,
  GLSL3,
  LessEqualCompare,
  LinearFilter,
  Mesh,
  OrthographicCamera,
  RawShaderMaterial,
  Scene,
  UnsignedIntType,
  Vector3,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import type { DeckModel } from './deck-model.ts';
import { STYLE_KINDS } from './part-texture.ts';
import { DEPTH_FRAGMENT, LIFE_VERTEX } from './sun-shader.ts';
import { TINT_VERTEX } from './tint-shader.ts';

/** Texels along a side. */
const SIDE = 2048;

/** What all shadows lie in. */
export interface ShadowRoom {
  readonly centre: readonly [number, number, number];
  readonly radiusM: number;
}

export class SunShadow {
  private readonly model: DeckModel;
  private readonly scene = new Scene();
  private readonly camera = new OrthographicCamera();
  private readonly solids: Mesh<BufferGeometry, RawShaderMaterial>;
  private readonly life: Mesh<BufferGeometry, RawShaderMaterial>;
  private target: WebGLRenderTarget | null = null;
  private drawn = '';
  /** How often the map was drawn, for tests. */
  drawings = 0;

  constructor(model: DeckModel, lifeGeometry: BufferGeometry) {
    this.model = model;
    const material = (vertexShader: string) =>
      new RawShaderMaterial({
        glslVersion: GLSL3,
        defines: { STYLE_COUNT: STYLE_KINDS.length },
        uniforms: { ...model.uniforms },
        vertexShader,
        fragmentShader: DEPTH_FRAGMENT,
        side: DoubleSide,
      });
    this.solids = new Mesh(model.solidGeometry, material(TINT_VERTEX));
    this.life = new Mesh(lifeGeometry, material(LIFE_VERTEX));
    for (const one of [this.solids, this.life]) {
      one.frustumCulled = false;
      this.scene.add(one);
    }
  }

  /**
   * Draws the map where `state` is another than last time.
   * @param gl - renderer
   * @param room - round everything that casts a shadow
   * @param state - names what is drawn and how the sun stands
   * @param life - the mesh of what lives in the garden; null for none
   */
  update(gl: WebGLRenderer, room: ShadowRoom, state: string, life: BufferGeometry | null): void {
    if (state === this.drawn) return;
    this.drawn = state;
    this.drawings++;
    this.target ??= shadowTarget();
    this.aim(room);
    this.solids.geometry = this.model.solidGeometry;
    this.life.visible = life !== null;
    if (life !== null) this.life.geometry = life;
    const before = gl.getRenderTarget();
    gl.setRenderTarget(this.target);
    gl.clear();
    gl.render(this.scene, this.camera);
    gl.setRenderTarget(before);
    const { uniforms } = this.model;
    uniforms.shadowMap.value = this.target.depthTexture;
    uniforms.shadowTexel.value.set((2 * room.radiusM) / SIDE, SIDE);
  }

  private aim({ centre, radiusM }: ShadowRoom): void {
    const { uniforms } = this.model;
    const { camera } = this;
    const middle = new Vector3(...centre);
    camera.left = camera.bottom = -radiusM;
    camera.right = camera.top = radiusM;
    camera.near = 0;
    camera.far = 2 * radiusM;
    camera.up.set(0, 1, 0);
    camera.position.copy(middle).addScaledVector(uniforms.sunTowards.value, radiusM);
    camera.lookAt(middle);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    uniforms.shadowMatrix.value
      .makeScale(0.5, 0.5, 0.5)
      .setPosition(0.5, 0.5, 0.5)
      .multiply(camera.projectionMatrix)
      .multiply(camera.matrixWorldInverse);
  }

  /** Gives the map's memory back until it is wanted again. */
  drop(): void {
    this.model.uniforms.shadowMap.value = null;
    this.target?.dispose();
    this.target = null;
    this.drawn = '';
  }

  dispose(): void {
    this.drop();
    this.solids.material.dispose();
    this.life.material.dispose();
  }
}

function shadowTarget(): WebGLRenderTarget {
  const depthTexture = new DepthTexture(SIDE, SIDE, UnsignedIntType);
  depthTexture.compareFunction = LessEqualCompare;
  depthTexture.magFilter = LinearFilter;
  depthTexture.minFilter = LinearFilter;
  return new WebGLRenderTarget(SIDE, SIDE, { depthTexture, generateMipmaps: false });
}
