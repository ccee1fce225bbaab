/** Reach from gates, cranes and hoses, counted by hand on a deck of square cells. */

import { describe, expect, it } from 'vitest';
import { prepareDeck } from '../../../src/core/prepare.ts';
import { planStages } from '../../../src/core/stages/plan.ts';
import { bearingCells, farToNear, type ReachSite, travelM, zoneReaches } from '../../../src/core/stages/reach.ts';
import { reachCells } from '../../../src/core/stages/reach-cells.ts';
import { smoothWayM } from '../../../src/core/stages/smooth-way.ts';
import type { StageInput } from '../../../src/model/deck-input.ts';
import { REACH_CLASSES } from '../../../src/model/maps.ts';
import type { Role } from '../../../src/model/roles.ts';
import type { AccessInput } from '../../../src/model/route-input.ts';
import { box, buildUp, deck, gridOf, layer, place, stage, zone } from '../../helpers/deck-builder.ts';

const made = (...roles: readonly Role[]) =>
  buildUp(
    roles.join(),
    roles.map((role) => layer(role, 0.1)),
  );
const gate: AccessInput = { id: 'G', kind: 'gate', x: 0, y: 2, reachM: null };

/** 12 m × 4 m in cells of 1 m: a lane, a bed that never bears before its substrate lies, and a court behind it, 4 m × 4 m each. */
function site(stages: readonly StageInput[]): ReachSite {
  const zones = [
    zone('lane', box(0, 0, 4, 4), made('protection', 'base course', 'surfacing')),
    zone('bed', box(4, 0, 8, 4), made('protection', 'substrate')),
    zone('court', box(8, 0, 12, 4), made('protection', 'base course', 'surfacing')),
  ];
  const input = deck({ deck: box(0, 0, 12, 4), bays: [], zones, stages });
  const prepared = prepareDeck(input);
  return { ground: prepared.ground, zones, laid: prepared.zones, owners: prepared.zoneCells, plan: planStages(input) };
}

const protect = stage('S1', [place(['protection'])]);
const bases = stage('S2', [place(['base course'])]);
const surfaces = stage('S3', [place(['surfacing'])]);
const substrate = stage('S4', [place(['substrate'])]);
const told = (of: ReachSite, ...access: AccessInput[]) =>
  zoneReaches(of, access).map(({ stage: at, zone: z, unreachedM2 }) => [of.plan.stages[at].id, of.zones[z].id, unreachedM2]);

describe('over the ground', () => {
  it('sheets are carried; a base course on fleece cannot be brought by wheels; then the bed still lies between', () => {
    expect(told(site([protect, bases, surfaces, substrate]), gate)).toEqual([
      ['S2', 'lane', 16],
      ['S2', 'court', 16],
      ['S3', 'lane', 0],
      ['S3', 'court', 16],
      // One column beside the lane counts as reached, 4 m² of 16.
      ['S4', 'bed', 12],
    ]);
  });

  it('once the substrate lies the way through the bed is open', () => {
    const late = told(site([protect, bases, substrate, surfaces]), gate).filter(([id]) => id === 'S3' || id === 'S4');
    expect(late).toEqual([
      ['S4', 'bed', 12],
      ['S3', 'lane', 0],
      ['S3', 'court', 0],
    ]);
  });

  it('a gate more than 1.5 m from the deck opens onto nothing', () => {
    const away = told(site([protect, bases, surfaces]), { ...gate, x: -2 });
    expect(away.filter(([id]) => id === 'S3')).toEqual([
      ['S3', 'lane', 16],
      ['S3', 'court', 16],
    ]);
  });
});

describe('by crane and hose', () => {
  it('a crane in the corner with 6 m reaches the centres no farther than that', () => {
    // Rows at y = 0.5, 1.5, 2.5, 3.5; x ≤ √(36 − y²) = 5.98, 5.81, 5.45, 4.87: of columns 4.5, 5.5, 6.5, 7.5 reached are 2, 2, 1 and 1.
    const crane: AccessInput = { id: 'C', kind: 'crane', x: 0, y: 0, reachM: 6 };
    expect(told(site([protect, bases, surfaces, substrate]), crane).at(-1)).toEqual(['S4', 'bed', 16 - 6]);
  });

  it('a hose brings substrate but no base course', () => {
    const hose: AccessInput = { id: 'B', kind: 'blower', x: 0, y: 0, reachM: 50 };
    const found = told(site([protect, bases, substrate]), hose);
    expect(found).toEqual([
      ['S2', 'lane', 16],
      ['S2', 'court', 16],
      ['S4', 'bed', 0],
    ]);
  });

  it('a crane without a reach reaches nothing', () => {
    const crane: AccessInput = { id: 'C', kind: 'crane', x: 0, y: 0, reachM: null };
    expect(told(site([protect, bases]), crane)).toEqual([
      ['S2', 'lane', 16],
      ['S2', 'court', 16],
    ]);
  });
});

it('asks nothing where no access point is given, or the stages are derived', () => {
  const given = site([protect, bases]);
  expect(zoneReaches(given, [])).toEqual([]);
  const derived = { ...given, plan: { ...given.plan, stages: given.plan.stages.map((one) => ({ ...one, derived: true })) } };
  expect(zoneReaches(derived, [gate])).toEqual([]);
});

it('a cell shared by zones bears if half of its deck does', () => {
  // Border between lane and bed in the midst of a column of cells, then at a quarter.
  const at = (x: number) => {
    const zones = [
      zone('lane', box(0, 0, x, 1), made('protection', 'surfacing')),
      zone('bed', box(x, 0, 4, 1), made('protection', 'substrate')),
    ];
    const input = deck({ deck: box(0, 0, 4, 1), bays: [], zones, stages: [protect, surfaces, substrate] });
    const prepared = prepareDeck(input);
    const of = { ground: prepared.ground, zones, laid: prepared.zones, owners: prepared.zoneCells, plan: planStages(input) };
    return [...bearingCells(of, 2)];
  };
  expect(at(2.5)).toEqual([1, 1, 1, 0]);
  expect(at(2.25)).toEqual([1, 1, 0, 0]);
});

it('lengths of ways go round what does not bear, and material is laid from far to near', () => {
  // 3 × 2 cells; the middle one below does not bear: the way to the last one below leads over the upper row.
  const way = travelM(gridOf(3, 2), Uint8Array.of(1, 0, 1, 1, 1, 1), [{ ...gate, x: 0, y: -0.5 }]);
  // The gate opens within 1.5 m: cell 0 at (0.5, 0.5) is 1.12 m away, cell 3 at (0.5, 1.5) 2.06 m.
  expect([...way]).toEqual([0, Infinity, 4, 1, 2, 3]);
  expect([...farToNear(Int32Array.of(0, 1, 2, 3, 4, 5), way)]).toEqual([1, 2, 5, 4, 3, 0]);
});

describe('cell by cell', () => {
  const all = [protect, bases, surfaces, substrate];

  it('tells what is driven to, lifted, not reached, and where nothing is brought; areas add up to the deck', () => {
    // Surfaces: the lane, 4 m × 4 m, from the gate; not the court behind the bed; nothing goes into the bed.
    const { classes, classM2 } = reachCells(site(all), [gate], 2);
    expect(classM2).toEqual([16, 0, 16, 16]);
    expect([classes[0], classes[5], classes[9]].map((of) => REACH_CLASSES[of])).toEqual(['driven', 'idle', 'unreached']);
    // The crane of above reaches six cells of the bed, the lane beside it four more by wheels, of which it lifts two too: column 4.5.
    const crane: AccessInput = { id: 'C', kind: 'crane', x: 0, y: 0, reachM: 6 };
    expect(reachCells(site(all), [crane], 3).classM2).toEqual([0, 6, 10, 32]);
    expect(reachCells(site(all), [crane, gate], 3).classM2).toEqual([4, 2, 10, 32]);
  });

  it('areas are exact where zones meet in a cell', () => {
    // Cells of 1 m; the zones meet at x = 1.5, so column 1 is half of each.
    const zones = [
      zone('lane', box(0, 0, 1.5, 4), made('base course', 'surfacing')),
      zone('far', box(1.5, 0, 3, 4), made('protection', 'surfacing')),
    ];
    const input = deck({ deck: box(0, 0, 3, 4), bays: [], zones, stages: [bases, surfaces] });
    const prepared = prepareDeck(input);
    const of = { ground: prepared.ground, zones, laid: prepared.zones, owners: prepared.zoneCells, plan: planStages(input) };
    const { classes, classM2 } = reachCells(of, [gate], 1);
    // Column 1 bears over half of it, so that column 2 beside it counts as reached: nothing of the far zone is left.
    expect(classM2.map((m2) => Math.round(1e9 * m2) / 1e9)).toEqual([12, 0, 0, 0]);
    expect(classes[1]).toBe(0);
  });

  it('lays from far to near: towards the gate', () => {
    const { towardsDeg } = reachCells(site(all), [gate], 2);
    // The gate opens on rows 1 and 2 in the west; both rows are alike, seen from the middle.
    const [lower, upper] = [towardsDeg[12 + 3], towardsDeg[24 + 3]];
    expect(lower).toBeGreaterThan(225);
    expect(lower).toBeLessThan(315);
    expect(lower + upper).toBeCloseTo(540, 3);
    // Nothing is driven in the court.
    expect(towardsDeg[9]).toBeNaN();
  });

  it('points at the gate from any side, round what does not bear', () => {
    // 20 m × 20 m in cells of 0.5 m, the gate in the middle of the west side; from afar the bearing is that of the straight way.
    const grid = { columns: 40, rows: 40, cellM: 0.5, x0M: 0, y0M: 0 };
    const open = smoothWayM(grid, travelM(grid, new Uint8Array(1600).fill(1), [{ ...gate, y: 10 }]));
    const at = (x: number, y: number) => open[Math.floor(y / 0.5) * 40 + Math.floor(x / 0.5)];
    // The gate opens as a half circle of 1.5 m: straight lengths less that, from cell centres; first order in the cell's side.
    for (const [x, y] of [
      [18.25, 10.25],
      [18.25, 2.25],
      [9.25, 18.25],
    ])
      expect(Math.abs(at(x, y) - (Math.hypot(x, y - 10) - 1.5))).toBeLessThan(0.6);
    // A wall of cells from the south up to y = 15 at x = 10 … 10.5: the way leads round its end at (10, 15).
    const bears = new Uint8Array(1600).fill(1);
    for (let row = 0; row < 30; row++) bears[row * 40 + 20] = 0;
    const round = smoothWayM(grid, travelM(grid, bears, [{ ...gate, y: 10 }]));
    const behind = round[5 * 40 + 36];
    // Cell centre (18.25, 2.75): to the far corner (10.5, 15), along 0.5 m, to the near corner (10, 15), to the gate.
    // Half a cell farther out at each corner, and first order: within 1.5 m, where steps from side to side would be 10 m longer.
    expect(Math.abs(behind - (Math.hypot(7.75, 12.25) + 0.5 + Math.hypot(10, 5) - 1.5))).toBeLessThan(1.5);
  });
});
