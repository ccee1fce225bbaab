/** The report in the contract's names, numbers by hand: 4 m × 3 m with 0.1 m of soil, 0.981 dry and 1.4715 saturated. */

import { describe, expect, it } from 'vitest';
import { bay, buildUp, MAKE_UP, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const close = (value: number) => expect.closeTo(value, 9);
const even = (value: number) => ({ min: close(value), mean: close(value), max: close(value) });

describe('a plain deck', () => {
  const { report } = read(sceneOf());

  it('has the whole report, key by key', () => {
    expect(report).toEqual({
      format: 'loamdeck-report',
      version: 1,
      scene: 'Test deck',
      cellM: 0.25,
      // 16 × 12
      cells: 192,
      deck: {
        areaM2: close(12),
        zonedM2: close(12),
        unzonedM2: 0,
        overlapM2: 0,
        // 12 · 0.981 and 12 · 1.4715
        dryKN: close(11.772),
        saturatedKN: close(17.658),
        objectsKN: 0,
      },
      zones: [
        {
          id: 'Z1',
          areaM2: close(12),
          depthMm: even(100),
          makeUpMm: null,
          dryKNm2: even(0.981),
          saturatedKNm2: even(1.4715),
          // 40 % of 100 l/m²
          heldLm2: even(40),
          finishedM: even(0.1),
          shortM2: 0,
          overM2: 0,
        },
      ],
      bays: [
        {
          id: 'A1',
          areaM2: close(12),
          permanent: {
            meanKNm2: close(1.4715),
            peakKNm2: close(1.4715),
            patchKNm2: close(1.4715),
            patchAt: [expect.any(Number), expect.any(Number)],
            permittedKNm2: 12,
            // 1.4715/12
            utilisation: close(0.122625),
          },
          imposed: { maxKNm2: 0, permittedKNm2: 5, utilisation: 0 },
          stages: [
            { stage: 'substrate', patchKNm2: close(1.4715), patchAt: expect.any(Array), permittedKNm2: 12, utilisation: close(0.122625) },
          ],
          worstStage: 'substrate',
          confirmed: true,
          // (12 − 1.4715)/(1500/1.2 · 9.81/1000) = 10.5285/12.2625 = 0.858
          heapM: [{ stage: 'substrate', material: 'soil', heightM: 0.85, overKNm2: 0 }],
        },
      ],
      stages: [{ id: 'substrate', name: 'Substrate', placedKN: close(17.658), worstBay: 'A1', utilisation: close(0.122625) }],
      // 12 m² · 0.1 m, loose · 1.2; 1000 and 1500 kg/m³
      takeoff: [
        {
          material: 'soil',
          areaM2: close(12),
          placedM3: close(1.2),
          orderM3: close(1.44),
          massKg: close(1800),
          dryKg: close(1200),
          deliveries: null,
          deliveryBy: null,
          deliveriesDry: null,
          price: null,
          zones: [{ id: 'Z1', areaM2: close(12), placedM3: close(1.2) }],
          stages: [{ id: 'substrate', areaM2: close(12), placedM3: close(1.2) }],
        },
      ],
      // Bare soil on the membrane: no protection, no drainage
      notChecked: [],
      findings: [expect.objectContaining({ rule: 'order.protection' }), expect.objectContaining({ rule: 'order.drainage' })],
    });
  });

  it('is the same after a trip through JSON: no NaN, no undefined', () => {
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });
});

describe('parts', () => {
  it('make-up: 50 mm held back to 80 where 30 are left', () => {
    // Sheet 10 + soil 100; finish at 0.14 leaves 30 mm for a fill of at least 50: 20 mm short everywhere
    const { report } = read(
      sceneOf({ buildups: [MAKE_UP], zones: [zone('Z1', rect(0, 0, 4, 3), 'make-up', { finish: { kind: 'level', levelM: 0.14 } })] }),
    );
    expect(report.zones[0]).toMatchObject({ makeUpMm: even(50), depthMm: even(160), finishedM: even(0.16), shortM2: close(12), overM2: 0 });
    expect(report.findings[0]).toMatchObject({ rule: 'depth.short', severity: 'stop', value: close(12), unit: 'm²' });
  });

  it('a bay with a limit in all has it besides, and says so for its stages', () => {
    const { report } = read(
      sceneOf({
        deck: { bays: [bay('A1', rect(0, 0, 4, 3), { totalKNm2: 8 })] },
        zones: [zone('Z1', rect(0, 0, 4, 3), 'soil-100', { imposedKNm2: 4 })],
      }),
    );
    const [only] = report.bays;
    expect([only.permanent.permittedKNm2, only.permanent.utilisation, only.imposed.utilisation]).toEqual([null, null, null]);
    // 1.4715 + 4
    expect(only.total).toMatchObject({ patchKNm2: close(5.4715), permittedKNm2: 8, utilisation: close(5.4715 / 8) });
    expect(only.stages[0].permittedKNm2).toBe(8);
  });

  it('coverage: zoned + unzoned = deck', () => {
    const { deck } = read(sceneOf({ zones: [zone('A', rect(0, 0, 2.1, 3), 'soil-100'), zone('B', rect(2, 0, 3, 3), 'soil-100')] })).report;
    // Overlap 0.1 · 3, bare 1 · 3
    expect([deck.zonedM2, deck.unzonedM2, deck.overlapM2]).toEqual([close(9), close(3), close(0.3)]);
    // Both build-ups count in the overlap: (6.3 + 3) · 1.4715
    expect(deck.saturatedKN).toBeCloseTo(13.68495, 9);
  });

  it('places are in the file’s coordinates', () => {
    const at = (x: number, y: number) => rect(512_345 + x, 5_812_345 + y, 512_346 + x, 5_812_346 + y);
    const outline = rect(512_345, 5_812_345, 512_349, 5_812_348);
    const { report } = read(sceneOf({ deck: { outline }, objects: [{ kind: 'block', id: 'P', outline: at(2, 1), kNm2: 5 }] }));
    // The window fits the block only with its centre at the block's, between cells of 0.25 m: one of the four beside it
    const [x, y] = report.bays[0].permanent.patchAt;
    expect(Math.abs(x - 512_347.5)).toBeCloseTo(0.125, 9);
    expect(Math.abs(y - 5_812_346.5)).toBeCloseTo(0.125, 9);
    // 7/8 · 7/8 of the block in it: 1.4715 + 5 · 0.765625
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(5.299625, 9);
    expect(report.deck.objectsKN).toBeCloseTo(5, 9);
  });

  it('findings stand by severity: stop, check, note', () => {
    const { report } = read(
      sceneOf({
        deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 1 })] },
        // A gap of 0.01 m · 3 m = 0.03 m²: a note
        zones: [zone('A', rect(0, 0, 2, 3), 'soil-100'), zone('B', rect(2.01, 0, 4, 3), 'soil-100')],
        stages: [
          { id: 'S1', name: 'One', place: [{ zones: ['A'], roles: ['substrate'] }] },
          { id: 'S2', name: 'Two' },
        ],
      }),
    );
    // Both zones are bare soil: without protection (stop) and drainage (check)
    expect(report.findings.map((f) => `${f.severity} ${f.rule}`)).toEqual([
      'stop load.permanent',
      'stop load.stage',
      'stop load.stage',
      'stop order.protection',
      'stop order.protection',
      'check stage.left',
      'check order.drainage',
      'check order.drainage',
      'note zone.gap',
    ]);
  });

  it('the worst bay of a stage is the one with the greatest utilisation, not load', () => {
    const { report } = read(
      sceneOf({
        deck: { bays: [bay('A', rect(0, 0, 2, 3), { permanentKNm2: 12 }), bay('B', rect(2, 0, 4, 3), { permanentKNm2: 4 })] },
        buildups: [SOIL_100, buildUp('thick', [{ material: 'soil', thicknessMm: 200 }])],
        zones: [zone('Z1', rect(0, 0, 2, 3), 'thick'), zone('Z2', rect(2, 0, 4, 3), 'soil-100')],
      }),
    );
    // A 2.943/12 = 0.245; B at its border 1.4715 + 3/8 · 1.4715 = 2.0233, of 4: 0.506
    expect(report.stages[0]).toMatchObject({ worstBay: 'B', utilisation: close((1.4715 * 1.375) / 4) });
  });
});
