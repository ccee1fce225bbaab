/** Every template on a plain deck: no finding of order, depth or pressure, with the traffic it is for. */

import { describe, expect, it } from 'vitest';
import { BUILD_UP_TEMPLATES, fromTemplate, TEMPLATE_IDS, type TemplateId } from '../../src/edit/build-ups-templates.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { bay, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** What drives where; footpaths, gardens and play surfaces bear nobody but people. */
const VEHICLE: Partial<Record<TemplateId, string>> = { 'drive lane': 'van-g', 'fire lane': 'fire-16t' };

/** A deck of 20 m × 6 m with the template all over it, level, crossed lengthwise. */
function deckWith(id: TemplateId, rootResistant?: boolean): SceneFile {
  const template = BUILD_UP_TEMPLATES.find((one) => one.id === id);
  if (!template) throw new Error(`no template ${id}`);
  const outline = rect(0, 0, 20, 6);
  const vehicle = VEHICLE[id];
  return sceneOf({
    deck: {
      outline,
      bays: [bay('A1', outline, { permanentKNm2: 30, imposedKNm2: 20, vehicles: vehicle ? [vehicle] : [] })],
      ...(rootResistant === undefined ? {} : { rootResistant }),
    },
    materials: [],
    buildups: [{ id: 'T', name: id, ...fromTemplate(template, rootResistant) }],
    zones: [zone('Z1', outline, 'T')],
    ...(vehicle
      ? {
          traffic: [
            {
              id: 'F1',
              vehicle,
              widthM: 3.5,
              route: [
                [0, 3],
                [20, 3],
              ],
            },
          ],
        }
      : {}),
  });
}

const broken = (scene: SceneFile) =>
  read(scene, 0.5)
    .report.findings.filter(({ rule }) => /^(order|depth|stress)\./.test(rule))
    .map(({ rule, says }) => `${rule}: ${says}`);

describe('a template keeps the rules of order, depth and pressure', () => {
  it('for every use there is one', () => {
    expect(BUILD_UP_TEMPLATES.map(({ id }) => id)).toEqual([...TEMPLATE_IDS]);
  });

  it.each(TEMPLATE_IDS)('%s', (id) => {
    expect(broken(deckWith(id, true))).toEqual([]);
  });

  it.each(TEMPLATE_IDS)('%s on a membrane that roots go through', (id) => {
    expect(broken(deckWith(id, false))).toEqual([]);
  });

  it('and this test sees what is wrong: the drive lane without its base course', () => {
    const scene = deckWith('drive lane', true);
    const [lane] = scene.buildups;
    const without = { ...scene, buildups: [{ ...lane, layers: lane.layers.filter(({ material }) => material !== 'base-0-32') }] };
    expect(broken(without).map((line) => line.slice(0, 10))).toContain('depth.base');
  });
});

describe('depths of planting', () => {
  const depthMm = (id: TemplateId, role: RegExp) =>
    BUILD_UP_TEMPLATES.find((one) => one.id === id)!
      .layers.filter(({ material }) => role.test(material))
      .reduce((sum, { thicknessMm }) => sum + (typeof thicknessMm === 'number' ? thicknessMm : 0), 0);

  // Guide ranges of the FLL green-roof guideline, from memory: lawn 15 to 35 cm, perennials 15 to 50, shrubs 20 to 60, sedum with herbs
  // 6 to 10; small trees 60 to 125 cm.
  it.each([
    ['lawn', 150, 350],
    ['perennials', 150, 500],
    ['shrubs', 200, 600],
    ['sedum', 60, 100],
    ['tree pit', 600, 1250],
  ] as const)('%s lies within its guide range', (id, least, greatest) => {
    const depth = depthMm(id, /^substrate/);
    expect(depth).toBeGreaterThanOrEqual(least);
    expect(depth).toBeLessThanOrEqual(greatest);
  });
});
