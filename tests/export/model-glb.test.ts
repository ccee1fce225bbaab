/** GLB read again: sizes to the millimetre, Y up, names, what the extras say, and nothing a validator objects to. */

import { readFileSync } from 'node:fs';
import { type Node, NodeIO } from '@gltf-transform/core';
import { validateBytes } from 'gltf-validator';
import { describe, expect, it } from 'vitest';
import { exportDrawn } from '../../src/export/drawn-file.ts';
import { sectionSource } from '../../src/export/picture-source.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { drawnBytes, drawnScene } from './drawn-scenes.ts';

async function opened(bytes: Uint8Array) {
  const document = await new NodeIO().readBinary(bytes);
  const nodes = new Map(
    document
      .getRoot()
      .listNodes()
      .map((node) => [node.getName(), node]),
  );
  return { document, nodes, node: (name: string) => nodes.get(name) ?? expect.fail(`no node ${name}: ${[...nodes.keys()].join('; ')}`) };
}

/** Least and greatest X, Y, Z of a node's mesh. */
function boxOf(node: Node): { min: number[]; max: number[] } {
  const positions = node.getMesh()!.listPrimitives()[0]!.getAttribute('POSITION')!;
  return { min: positions.getMin([]), max: positions.getMax([]) };
}

const within1mm = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 3));

describe('a model', async () => {
  const bytes = await drawnBytes(drawnScene(4_500_000, 5_400_000), 'model glb');
  const { document, node } = await opened(bytes);

  it('has one node per layer and zone, in metres, Y up, north towards -Z', () => {
    // local origin is the corner of the deck, so that x 0 … 4 and y 0 … 3 become X 0 … 4 and Z 0 … -3
    const soil = boxOf(node('Größe Ä & <b> / Soil'));
    expect(soil.min).toEqual(within1mm([0, 0.1, -3]));
    expect(soil.max).toEqual(within1mm([4, 0.5, 0]));
    const fill = boxOf(node('Größe Ä & <b> / Light fill'));
    expect([fill.min[1], fill.max[1]]).toEqual(within1mm([0, 0.1]));
    const slab = boxOf(node('slab'));
    expect([slab.min[1], slab.max[1]]).toEqual(within1mm([-0.2, 0]));
    const block = boxOf(node('P / block'));
    expect([block.min, block.max]).toEqual([within1mm([1, 0.5, -2]), within1mm([2, 1.1, -1])]);
  });

  it('says where it lies', () => {
    const root = document.getRoot().getDefaultScene()!.listChildren()[0]!;
    expect(root.getName()).toBe('Hof “Süd” & <Garten>');
    expect(root.getExtras()).toMatchObject({ unit: 'm', originM: [4_500_000, 5_400_000], datumM: 0 });
  });

  it('says material, thickness and load of each layer', () => {
    // 0.40 m of soil of 1000 kg/m³ dry and 1500 saturated: 400 and 600 kg/m² · 9.81
    expect(node('Größe Ä & <b> / Soil').getExtras()).toMatchObject({
      zone: 'Z',
      layer: 1,
      materialId: 'soil',
      material: 'Soil',
      role: 'substrate',
      thicknessMm: { min: expect.closeTo(400, 6), mean: expect.closeTo(400, 6), max: expect.closeTo(400, 6) },
      areaM2: expect.closeTo(12, 9),
      placedM3: expect.closeTo(4.8, 9),
      dryKNm2: expect.closeTo(3.924, 9),
      saturatedKNm2: expect.closeTo(5.886, 9),
    });
    expect(node('T / tree trunk').getExtras()).toMatchObject({ object: 'T', massKg: 500, spreadM: 2 });
    expect(node('E1 / edge').getExtras()).toMatchObject({ edge: 'E1', membraneTopM: 0.65 });
  });

  it('winds its triangles so that they face outwards', () => {
    // volume of a closed mesh by the divergence theorem: 4 m × 3 m × 0.40 m, positive only if all face outwards
    const primitive = node('Größe Ä & <b> / Soil').getMesh()!.listPrimitives()[0]!;
    const [positions, indices] = [primitive.getAttribute('POSITION')!.getArray()!, primitive.getIndices()!.getArray()!];
    let six = 0;
    for (let t = 0; t < indices.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => positions.slice(3 * indices[t + k]!, 3 * indices[t + k]! + 3)) as unknown as number[][];
      six +=
        a![0]! * (b![1]! * c![2]! - b![2]! * c![1]!) -
        a![1]! * (b![0]! * c![2]! - b![2]! * c![0]!) +
        a![2]! * (b![0]! * c![1]! - b![1]! * c![0]!);
    }
    expect(six / 6).toBeCloseTo(4.8, 5);
  });

  it('takes its colours from the palette, made linear', () => {
    // #7A5638: 0x7A = 122/255 = 0.4784, ((0.4784 + 0.055) / 1.055)^2.4 = 0.1946
    const colour = node('Größe Ä & <b> / Soil').getMesh()!.listPrimitives()[0]!.getMaterial()!.getBaseColorFactor();
    expect(colour[0]).toBeCloseTo(0.1946, 3);
    expect(colour[3]).toBe(1);
  });
});

describe('the demo scenes', () => {
  it.each(['terrace', 'courtyard', 'problem-deck'])('%s: nothing for a validator to object to, loads add up', async (name) => {
    const { project } = readProject(readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8'));
    const { bytes } = await exportDrawn('model glb', { project: project!, source: sectionSource(project!) }, { language: 'en' });
    const report = await validateBytes(bytes, { maxIssues: 20 });
    expect(report.issues.messages.filter(({ severity }) => severity <= 1)).toEqual([]);
    // Layers and vegetation of all zones, by their areas, are the weight of the deck without objects.
    const { document, nodes } = await opened(bytes);
    let kN = 0;
    for (const node of nodes.values()) {
      const extras = node.getExtras() as { areaM2?: number; saturatedKNm2?: number; vegetationKNm2?: number };
      if (extras.areaM2 !== undefined) kN += extras.areaM2 * ((extras.saturatedKNm2 ?? 0) + (extras.vegetationKNm2 ?? 0));
    }
    const { saturatedKN, objectsKN } = project!.report.deck;
    expect(kN / (saturatedKN - objectsKN)).toBeCloseTo(1, 6);
    expect(nodes.size).toBe(document.getRoot().listNodes().length);
  });
});
