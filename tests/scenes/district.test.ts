/** Demo scene district: areas, loads and bays by hand. */

import { describe, expect, it } from 'vitest';
import { byId } from '../helpers/scene-builder.ts';
import { kN, laidM2, open, told } from './demo-scenes.ts';

describe('district', () => {
  const { scene, report } = open('district');

  it('deck: 160 · 105 less three corners and six openings of 8 · 5 m', () => {
    // 16800 − 14 · 12/2 − 12 · 15/2 − 12 · 10/2 − 240
    expect(report.deck.areaM2).toBeCloseTo(16326, 6);
    expect(scene.zones.length).toBeGreaterThanOrEqual(120);
  });

  it('trees: 14 of 1800 kg and 53 of 900 kg, 72.9 t', () => {
    expect(report.deck.objectsKN).toBeCloseTo(kN(72_900), 6);
    expect(byId(report.stages, 'S11').placedKN).toBeCloseTo(kN(72_900), 6);
  });

  it('sheets: 3.684 kg/m², on the lane 5.968', () => {
    const lane = laidM2(scene, 'fire-lane');
    expect(byId(report.stages, 'S3').placedKN).toBeCloseTo(kN(3.684 * (16326 - lane) + 5.968 * lane), 4);
  });

  it('drainage fill: 75.4 kg/m² under planting, 18.2 under the lane', () => {
    const planted = laidM2(scene, 'lawn', 'meadow', 'perennials', 'shrubs', 'mound');
    expect(byId(report.stages, 'S5').placedKN).toBeCloseTo(kN(75.4 * planted + 18.2 * laidM2(scene, 'fire-lane')), 4);
  });

  it('lawns: 531.684 kg/m², 0.05 kN/m², and foam glass as thick as the falls ask', () => {
    // 3.5 + 0.184 + 2.5 + 23 + 75.4 + 0.9 + 1.2 + 0.25 · 1600 + 25
    for (const zone of scene.zones.filter((entry) => entry.buildup === 'lawn')) {
      const { saturatedKNm2, makeUpMm } = byId(report.zones, zone.id);
      expect(saturatedKNm2.mean, zone.id).toBeCloseTo(kN(531.684 + ((makeUpMm?.mean ?? 0) / 1000) * 250) + 0.05, 9);
    }
  });

  it('flood: 80 mm are 0.7848 kN/m² everywhere', () => {
    for (const bay of report.bays) {
      expect(bay.stages.find((stage) => stage.stage === 'S2')?.patchKNm2, bay.id).toBeCloseTo(0.7848, 9);
    }
  });

  it('gives places on its own grid, each in its bay', () => {
    for (const bay of report.bays) {
      const outline = scene.deck.bays.find((entry) => entry.id === bay.id)?.outline ?? [];
      const [x, y] = bay.permanent.patchAt;
      expect(x).toBeGreaterThan(Math.min(...outline.map((p) => p[0])));
      expect(x).toBeLessThan(Math.max(...outline.map((p) => p[0])));
      expect(y).toBeGreaterThan(Math.min(...outline.map((p) => p[1])));
      expect(y).toBeLessThan(Math.max(...outline.map((p) => p[1])));
    }
  });

  it('water: an inner outlet drains 24 m of valley between ridges 15 m apart, an overflow half a valley', () => {
    // Contract: shares right within 0.3 % of the deck. Third valley from the south, fourth outlet: no opening, no corner.
    const inner = (report.outlets ?? []).filter(({ id, kind }) => {
      const [x, y] = scene.deck.outlets?.find((outlet) => outlet.id === id)?.at ?? [0, 0];
      return kind === 'outlet' && Math.abs(x - 412380) < 30 && Math.abs(y - 5731837.5) < 1;
    });
    expect(inner.length).toBeGreaterThan(1);
    for (const { catchmentM2 } of inner) expect(Math.abs(catchmentM2 - 360) / 16326).toBeLessThan(0.003);
    // 80 · 15 m in the sixth valley; 5 mm over crests that lie 60 mm over the outlets
    const overflow = report.water?.overflows.find(({ id }) => id === 'V12');
    expect(Math.abs((overflow?.areaM2 ?? 0) - 1200) / 16326).toBeLessThan(0.003);
    expect(overflow?.depthMm).toBeGreaterThan(60);
    expect(overflow?.depthMm).toBeLessThan(65);
  });

  it('has only the bay without a basis to find, wheels for a look, 300 mm of base course to lay in lifts, and level paving', () => {
    expect(told(report)).toEqual([
      'check load.basis J4',
      // Fire appliance on a grass grid of 50 mm: the spread patch passes on the bedding, the elastic second opinion does not
      'check stress.layer lane-1',
      // The loader that lays the base course must not come onto bare foam glass: 187 kPa of tyre on 150
      'check stress.layer lane-1 S7',
      'note depth.lift lane-1',
      'note level.fall lane-1',
    ]);
  });
});
