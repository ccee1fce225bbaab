/** A fill under substrate where there was none: the stages are told to lay it, and everything else is kept. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { SceneFile, SceneMaterial, SceneStage } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const OUTLINE = rect(0, 0, 4, 3);
const ADDED: readonly SceneMaterial[] = [
  { id: 'foam', name: 'Foam fill', role: 'light fill', density: { dry: 20, saturated: 50 } },
  { id: 'part', name: 'Parting sheet', role: 'separation', areal: { dry: 1, saturated: 1 }, thicknessMm: 10 },
];
const STAGES: readonly SceneStage[] = [
  { id: 'below', name: 'Below', place: [{ roles: ['protection', 'filter'] }] },
  { id: 'soil', name: 'Soil', place: [{ zones: ['Z1'], roles: ['substrate'] }] },
];

function heavy(stages: readonly SceneStage[]) {
  const layers = [{ material: 'sheet' }, { material: 'cloth' }, { material: 'soil', thicknessMm: 600 }];
  return read(
    sceneOf({
      materials: [...MATERIALS.filter(({ id }) => id !== 'light'), ...ADDED],
      deck: { bays: [bay('A1', OUTLINE, { permanentKNm2: 6 })], rootResistant: true },
      buildups: [buildUp('bed', layers, { vegetation: { form: 'lawn', kNm2: 0 } })],
      zones: [zone('Z1', OUTLINE, 'bed')],
      stages,
    }),
  );
}

describe('a fill where there was none', () => {
  const answer = lighten(heavy(STAGES), { fills: ['foam'], aims: ['change'] });
  const [variant] = answer.variants;

  it('is as thin as the limit lets it be', () => {
    // Sheet 2, cloth 1 and parting sheet 1 kg/m²; of 600 mm soil at 1500 kg/m³ 10 go to the sheet and 10 n to foam at 50:
    // 9.81e-3 · (4 + 885 - 14.5 n) <= 6, so n >= 19.13: 200 mm foam, 390 mm soil.
    const layers = variant.zones[0].layers.map(({ material, afterMm }) => [material, afterMm?.mean]);
    expect(layers).toEqual([
      ['soil', expect.closeTo(390, 6)],
      ['foam', expect.closeTo(200, 6)],
      ['part', expect.closeTo(10, 6)],
    ]);
    // 200 mm on 12 m².
    expect(variant.exchangedM3).toBeCloseTo(2.4, 9);
  });

  it('is laid by the stage that lays what it carries, and says so', () => {
    expect(variant.zones[0].laidIn).toBe('soil');
    const stage = variant.scene.stages?.[1];
    expect(stage?.place?.[0]?.zones).toEqual(['Z1']);
    expect(stage?.place?.[0]?.roles).toEqual(expect.arrayContaining(['light fill', 'separation']));
    expect(stage?.place?.at(-1)).toEqual(STAGES[1].place?.[0]);
    const { project } = readProject(JSON.stringify(variant.scene));
    const rules = project?.report.findings.map(({ rule }) => rule) ?? [];
    // The small deck has no drainage, before and after.
    expect(rules.filter((rule) => rule.startsWith('stage.') || rule.startsWith('order.'))).toEqual(['order.drainage']);
    expect(project?.report.stages.at(-1)?.placedKN).toBeCloseTo(9.81e-3 * (4 + 885 - 14.5 * 20) * 12 - 9.81e-3 * 3 * 12, 6);
    expect(project?.report.zones[0].depthMm.mean).toBeCloseTo(615, 6);
  });

  it('needs no word to stages that are derived', () => {
    const [derived] = lighten(heavy([]), { fills: ['foam'], aims: ['change'] }).variants;
    expect(derived.zones[0].laidIn).toBeNull();
    expect(derived.scene.stages).toEqual([]);
  });
});

describe('water of a blocked outlet', () => {
  const stopsOf = (scene: unknown) => {
    const { project, issues } = readProject(JSON.stringify(scene));
    if (!project) throw new Error(JSON.stringify(issues));
    return project.report.findings.filter(({ severity }) => severity === 'stop').map(({ rule }) => rule);
  };

  it('finds room under the limit, and one step less would leave it none', () => {
    const terrace = JSON.parse(readFileSync('scenes/terrace.scene.json', 'utf8')) as SceneFile;
    const buildups = terrace.buildups.map((one) =>
      one.id === 'bed' ? { ...one, layers: one.layers.map((layer, i) => (i === 5 ? { ...layer, thicknessMm: 650 } : layer)) } : one,
    );
    const { project } = readProject(JSON.stringify({ ...terrace, buildups }));
    if (!project) throw new Error('the terrace did not open');
    const [variant] = lighten(project, { aims: ['change'] }).variants;
    expect(stopsOf(variant.scene)).toEqual([]);
    const bed = variant.scene.buildups.find(({ id }) => id === 'bed');
    const layers = bed?.layers.map((layer) => {
      if (layer.material === 'xps-board') return { ...layer, thicknessMm: Number(layer.thicknessMm) - 10 };
      return layer.material === 'substrate-intensive' ? { ...layer, thicknessMm: Number(layer.thicknessMm) + 10 } : layer;
    });
    const less = { ...variant.scene, buildups: variant.scene.buildups.map((one) => (one === bed ? { ...one, layers } : one)) };
    expect(stopsOf(less)).toContain('water.pond');
  });
});
