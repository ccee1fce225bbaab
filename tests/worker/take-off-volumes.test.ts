/** What is ordered is what is drawn: take-off against the volumes of the solids in the picture, material by material. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { materialById } from '../../src/catalogue/catalogue.ts';
import { createEngine } from '../../src/worker/engine.ts';
import { trianglesOf, volumeM3 } from '../mesh/solid-checks.ts';

async function snapshotOf(name: string) {
  const answer = await createEngine().open(readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8'));
  if (!answer.ok) throw new Error(answer.issues.map((issue) => issue.got).join());
  return answer.snapshot;
}

describe.each(['terrace', 'courtyard'])('%s', (name) => {
  it('every material within 0.1 %', async () => {
    const { scene, report, picture, buildUps } = await snapshotOf(name);
    const drawnM3 = new Map<string, number>();
    const hiddenM3 = new Map<string, number>();
    for (const zone of scene.zones) {
      const { layers } = buildUps.find((buildUp) => buildUp.id === zone.buildup)!;
      const { areaM2 } = report.zones.find((entry) => entry.id === zone.id)!;
      layers.forEach(({ materialId }, layer) => {
        const part = picture.parts.findIndex((entry) => entry.owner === zone.id && entry.layer === layer);
        const triangles = part < 0 ? [] : trianglesOf(picture.solids, part);
        // A fill flush with its element has no thickness of its own to draw.
        const volume = triangles.length === 0 ? 0 : volumeM3(triangles);
        drawnM3.set(materialId, (drawnM3.get(materialId) ?? 0) + volume);
        // What an infill puts into the voids of its element is not drawn a second time.
        const isInfill = scene.buildups.find((buildUp) => buildUp.id === zone.buildup)!.layers[layer].infill;
        if (isInfill) hiddenM3.set(materialId, (hiddenM3.get(materialId) ?? 0) + areaM2 * voidM(layers[layer - 1].materialId));
      });
    }
    expect(report.takeoff!.length).toBeGreaterThan(9);
    for (const { material, placedM3 } of report.takeoff!) {
      const drawn = (drawnM3.get(material) ?? 0) + (hiddenM3.get(material) ?? 0);
      expect(Math.abs(drawn / placedM3 - 1), material).toBeLessThan(0.001);
    }
  });
});

/** Voids of an element [m³/m²]. */
const voidM = (element: string) => materialById.get(element)!.voidLm2! / 1000;
