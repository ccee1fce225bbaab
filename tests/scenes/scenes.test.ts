/**
 * Every demo scene opens without a message, and chosen totals are what a hand finds: areas by the shoelace rule from the
 * file's coordinates, loads layer by layer from the catalogue's densities (kg/m² · 9.81/1000), findings by the faults
 * that the scene was drawn with. One file per scene beside this one.
 */

import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/project/evaluate-project.ts';
import { byId } from '../helpers/scene-builder.ts';
import { FILES, open, TEXTS, zoneAreaM2 } from './demo-scenes.ts';

describe('every scene', () => {
  it('is there', () => {
    expect(FILES.sort()).toEqual(['courtyard.scene.json', 'district.scene.json', 'problem-deck.scene.json', 'terrace.scene.json']);
  });

  it.each(FILES)('%s opens without a message, says it is invented, and carries what lies on it', (name) => {
    const { project, issues } = readProject(TEXTS.get(name) ?? '');
    expect(issues).toEqual([]);
    expect(project?.scene.about).toMatch(/invented/);
    const report = project!.report;
    for (const zone of project!.scene.zones) {
      // What lies beyond the deck is left out; only one zone does, by 0.3 m · 2.8 m.
      const beyondM2 = zone.id === 'zone-outside' ? 0.84 : 0;
      expect(byId(report.zones, zone.id).areaM2, zone.id).toBeCloseTo(zoneAreaM2(zone) - beyondM2, 6);
    }
  });

  it.each(['terrace', 'courtyard', 'district'])('%s: bays tile the deck, so that their means make the whole weight', (name) => {
    const { report } = open(name);
    const baysKN = report.bays.reduce((sum, bay) => sum + bay.permanent.meanKNm2 * bay.areaM2, 0);
    expect(baysKN / report.deck.saturatedKN).toBeCloseTo(1, 9);
    expect(report.deck.unzonedM2).toBeCloseTo(0, 6);
  });

  it.each(FILES)('%s: all its rain finds an outlet, none twice', (name) => {
    const { report, scene } = open(name.replace('.scene.json', ''));
    const drained = (report.outlets ?? []).reduce((sum, { catchmentM2 }) => sum + catchmentM2, 0);
    expect(drained + (report.water?.undrainedM2 ?? Number.NaN)).toBeCloseTo(report.deck.areaM2, 6);
    expect(report.water?.undrainedM2).toBe(0);
    // Design flow of all outlets and duty of all overflows are together the extreme rain on the deck.
    const flow = (report.outlets ?? []).reduce((sum, { designLps }) => sum + (designLps ?? 0), 0);
    const duty = report.water?.overflows.reduce((sum, { dutyLps }) => sum + (dutyLps ?? 0), 0) ?? 0;
    expect(flow + duty).toBeCloseTo(((scene.rain?.extremeLpsHa ?? 0) * report.deck.areaM2) / 10_000, 6);
  });
});
