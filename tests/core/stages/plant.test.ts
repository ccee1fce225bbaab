/** Machines on what lies there when their stage begins. */

import { describe, expect, it } from 'vitest';
import { planStages } from '../../../src/core/stages/plan.ts';
import { bearsPlant, standingLayer, weakGround } from '../../../src/core/stages/plant.ts';
import type { StageInput } from '../../../src/model/deck-input.ts';
import type { Role } from '../../../src/model/roles.ts';
import { box, buildUp, deck, layer, place, ring, stage, zone } from '../../helpers/deck-builder.ts';

const ROLES: readonly Role[] = ['protection', 'slip', 'drainage element', 'drainage fill', 'filter', 'base course', 'surfacing'];
const layers = ROLES.map((role) => layer(role, 0.01));

describe('what a machine stands on', () => {
  // Every layer in a stage of its own: layer i in stage i.
  const stages = Int16Array.from(layers.keys());
  const standing = (at: number) => standingLayer(layers, stages, at);
  it('is what earlier stages laid; the filter passes on what lies below it', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7].map(standing)).toEqual([-1, 0, 1, 2, 3, 3, 5, 6]);
  });

  it('never membrane, protection, slip sheet or open element; fill, base course and surfacing may', () => {
    expect([-1, 0, 1, 2, 3, 5, 6].map((at) => bearsPlant(layers, at))).toEqual([false, false, false, false, true, true, true]);
    expect(bearsPlant([layer('root barrier', 0.001)], 0)).toBe(false);
  });

  it('a filter over an open element stands for the element', () => {
    const open = layers.filter(({ role }) => role !== 'drainage fill');
    expect(standingLayer(open, Int16Array.of(0, 0, 0, 0, 1, 1), 1)).toBe(2);
  });
});

describe('routes', () => {
  const zones = [zone('west', box(0, 0, 10, 10), buildUp('full', layers)), zone('east', box(10, 0, 18, 10), buildUp('full', layers))];
  const stages: StageInput[] = [
    stage('S1', [place(['protection', 'slip', 'drainage element'])]),
    stage('S2', [place(['drainage fill', 'filter'], [0])]),
    stage('S3', [place(['base course'])]),
  ];
  const input = deck({ deck: box(0, 0, 20, 10), bays: [], zones, stages });
  const plan = planStages(input);
  const weak = (at: number, from: readonly [number, number], to: readonly [number, number]) =>
    weakGround(input.deck, zones, plan, [{ stage: at, vehicle: 'loader', line: ring(from, to), widthM: 2 }]);

  it('the filled west bears from S3 on, the open east does not', () => {
    expect(weak(2, [1, 5], [9, 5])).toEqual([]);
    // From x = 5 to 15, 2 m wide: 10 m² lie in the east, on its element.
    expect(weak(2, [5, 5], [15, 5])).toMatchObject([{ zone: 1, layer: 2, areaM2: expect.closeTo(10, 9), x: expect.closeTo(12.5, 9) }]);
  });

  it('what the stage itself lays does not count: S2 fills the west', () => {
    expect(weak(1, [1, 5], [9, 5])).toMatchObject([{ zone: 0, layer: 2, areaM2: expect.closeTo(16, 9) }]);
  });

  it('in the first stage it is the membrane', () => {
    expect(weak(0, [1, 5], [9, 5])).toMatchObject([{ zone: 0, layer: -1 }]);
  });

  it('its width counts: 0.9 m beside the border of the east it reaches 0.1 m over, 8 m long', () => {
    expect(weak(2, [9.1, 1], [9.1, 9])).toMatchObject([{ zone: 1, areaM2: expect.closeTo(0.8, 9) }]);
    expect(weak(2, [9, 1], [9, 9])).toEqual([]);
  });

  it('where no zone is drawn it is the membrane: 1 m of the last 2 m of deck, 2 m wide', () => {
    expect(weak(2, [18, 5], [19, 5])).toMatchObject([{ zone: -1, layer: -1, areaM2: expect.closeTo(2, 9) }]);
  });
});
