/** Draws what is seen into a picture of its own: the canvas on the page is neither read nor resized. */

import { Color, type PerspectiveCamera, WebGLRenderTarget } from 'three';
import { PAPER } from '../model/palette.ts';
import type { ViewPicture } from '../model/view-picture.ts';
import { rgbOf } from './cell-colour.ts';
import type { DeckDirector, Easel } from './deck-director.ts';

const SAMPLES = 4;

/**
 * One picture. All that is seen on the page is in it, whatever its shape.
 * @param director - what is drawn
 * @param easel - renderer and camera of the page
 * @param widthPx - width in its own dots
 * @param heightPx - height in its own dots
 * @returns null where the device cannot draw one so large, or has lost its graphics
 */
export function takePicture(director: DeckDirector, easel: Easel, widthPx: number, heightPx: number): ViewPicture | null {
  const { gl, sheet } = easel;
  if (Math.max(widthPx, heightPx) > gl.capabilities.maxTextureSize || gl.getContext().isContextLost()) return null;
  const camera = cameraFor(easel.camera, widthPx / heightPx);
  const target = new WebGLRenderTarget(widthPx, heightPx, { samples: SAMPLES });
  const back = [setUniforms(director, camera, heightPx), setPaper(easel), director.site.hidePosts()];
  const rows = new Uint8Array(4 * widthPx * heightPx);
  try {
    gl.setRenderTarget(target);
    gl.clear();
    gl.render(sheet, camera);
    gl.readRenderTargetPixels(target, 0, 0, widthPx, heightPx, rows);
  } finally {
    gl.setRenderTarget(null);
    for (const undo of back) undo();
    target.dispose();
  }
  return { widthPx, heightPx, rgba: upright(rows, widthPx, heightPx) };
}

/** The same eye; where the picture is narrower than the page it sees more above and below instead of less at the sides. */
function cameraFor(seen: PerspectiveCamera, aspect: number): PerspectiveCamera {
  const camera = seen.clone();
  const half = Math.tan((seen.fov * Math.PI) / 360);
  if (aspect < seen.aspect) camera.fov = (Math.atan((half * seen.aspect) / aspect) * 360) / Math.PI;
  camera.aspect = aspect;
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
  return camera;
}

/** Lines and hatches as wide, against the model, as on the page. */
function setUniforms(director: DeckDirector, camera: PerspectiveCamera, heightPx: number): () => void {
  const { pixelPerDepth, dotsPerPixel, pictureSize } = director.model.uniforms;
  const before = { depth: pixelPerDepth.value, dots: dotsPerPixel.value, width: pictureSize.value.x, height: pictureSize.value.y };
  const { height } = director.size;
  dotsPerPixel.value = heightPx / height;
  pixelPerDepth.value = (2 * Math.tan((camera.fov * Math.PI) / 360)) / height;
  pictureSize.value.set(height * camera.aspect, height);
  return () => {
    pixelPerDepth.value = before.depth;
    dotsPerPixel.value = before.dots;
    pictureSize.value.set(before.width, before.height);
  };
}

/** Colours of the shaders go to a target as they are; the paper has to as well. */
function setPaper({ gl, sheet }: Easel): () => void {
  const before = { background: sheet.background, colour: gl.getClearColor(new Color()), alpha: gl.getClearAlpha() };
  const [red, green, blue] = rgbOf(PAPER);
  sheet.background = null;
  gl.setClearColor(new Color(red / 255, green / 255, blue / 255), 1);
  return () => {
    sheet.background = before.background;
    gl.setClearColor(before.colour, before.alpha);
  };
}

/** Graphics count rows from below, pictures from above; the picture has no see-through dots. */
function upright(rows: Uint8Array, widthPx: number, heightPx: number): Uint8ClampedArray<ArrayBuffer> {
  const rgba = new Uint8ClampedArray(rows.length);
  const bytes = 4 * widthPx;
  for (let row = 0; row < heightPx; row++) rgba.set(rows.subarray((heightPx - 1 - row) * bytes, (heightPx - row) * bytes), row * bytes);
  for (let at = 3; at < rgba.length; at += 4) rgba[at] = 255;
  return rgba;
}
