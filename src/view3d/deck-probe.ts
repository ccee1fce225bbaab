/** Answers what tests ask about the view in use. */

import { Vector3 } from 'three';
import { cellCentre } from './cell-mark.ts';
import type { DeckDirector, Easel } from './deck-director.ts';
import { liftM } from './lift.ts';
import { PART_SHOWN, TEXELS_PER_PART } from './part-texture.ts';
import type { DrawnHeights, ProbeSource } from './probe.ts';
import { drawnTopM } from './top-at.ts';

/** Figures of the last frame; the renderer forgets them when it picks. */
export interface LastFrame {
  calls: number;
  triangles: number;
}

export function probeSource(director: DeckDirector, easel: Easel, last: LastFrame): ProbeSource {
  const { gl, camera, sheet } = easel;
  const onScreen = (place: readonly [number, number, number]): readonly [number, number] => {
    const at = new Vector3(...place).project(camera);
    const { width, height } = director.size;
    return [((at.x + 1) / 2) * width, ((1 - at.y) / 2) * height];
  };
  return {
    drawing: () => ({ ...last }),
    memory: () => ({ geometries: gl.info.memory.geometries, textures: gl.info.memory.textures }),
    cameraPosition: () => camera.position.toArray(),
    parts: () => drawnParts(director),
    projectCell(cell) {
      const { snapshot, states } = director.follower;
      if (snapshot === null) return null;
      const [x, y] = cellCentre(snapshot.grid, cell);
      const z = drawnTopM(snapshot.picture, states, [x, y], director.model.uniforms.explode.value);
      if (z === null) return null;
      return onScreen([x, y, z]);
    },
    vehicles: () => director.runs.standing.map(({ run, origin }) => ({ run, atM: [origin.x, origin.y, origin.z] })),
    patches() {
      const picture = director.follower.snapshot?.picture;
      if (picture === undefined) return [];
      const explode = director.model.uniforms.explode.value;
      return director.runs.feet.map(({ ring, zM, part }) => {
        const z = zM + liftM(picture, part, true, explode);
        return [0, 2, 4, 6].map((i) => onScreen([ring[i] as number, ring[i + 1] as number, z]));
      });
    },
    waterM: () => director.water.drawnM,
    readPixels(points) {
      gl.render(sheet, camera);
      const context = gl.getContext();
      const ratio = gl.getPixelRatio();
      const { drawingBufferWidth: width, drawingBufferHeight: height } = context;
      const all = new Uint8Array(4 * width * height);
      context.readPixels(0, 0, width, height, context.RGBA, context.UNSIGNED_BYTE, all);
      return points.map(([x, y]) => {
        const at = 4 * ((height - 1 - Math.floor(y * ratio)) * width + Math.floor(x * ratio));
        return [all[at], all[at + 1], all[at + 2]];
      });
    },
  };
}

/** Heights from the very numbers that the shader reads. */
function drawnParts(director: DeckDirector): DrawnHeights[] {
  const picture = director.follower.snapshot?.picture;
  if (picture === undefined) return [];
  const texels = director.model.uniforms.partTexels.value.image.data as Float32Array;
  const explode = director.model.uniforms.explode.value;
  const lowest = new Float64Array(picture.parts.length).fill(Number.POSITIVE_INFINITY);
  const highest = new Float64Array(picture.parts.length).fill(Number.NEGATIVE_INFINITY);
  const lift = (part: number, upper: number) => {
    const at = part * TEXELS_PER_PART * 4;
    return explode * (texels[at] + texels[at + 1 + upper]);
  };
  const { positions, parts, upper } = picture.solids;
  for (let v = 0; v < parts.length; v++) {
    const z = positions[v * 3 + 2] + lift(parts[v], upper[v]);
    lowest[parts[v]] = Math.min(lowest[parts[v]], z);
    highest[parts[v]] = Math.max(highest[parts[v]], z);
  }
  return picture.parts.map((part, i) => ({
    owner: part.owner,
    layer: part.layer,
    name: part.name,
    shown: (texels[i * TEXELS_PER_PART * 4 + 4] & PART_SHOWN) !== 0,
    lowerLiftM: lift(i, 0),
    upperLiftM: lift(i, 1),
    lowestM: lowest[i],
    highestM: highest[i],
  }));
}
