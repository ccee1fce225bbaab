/** Which stage places what: given and derived stages. */

import { describe, expect, it } from 'vitest';
import { planStages } from '../../../src/core/stages/plan.ts';
import type { ObjectInput, StageInput, ZoneInput } from '../../../src/model/deck-input.ts';
import type { Role } from '../../../src/model/roles.ts';
import { block, box, boxRing, buildUp, deck, layer, place, stage, zone } from '../../helpers/deck-builder.ts';

const HERE = box(0, 0, 4, 2);

function stack(id: string, roles: readonly Role[], vegetationKNm2 = 0): ZoneInput {
  return zone(
    id,
    HERE,
    buildUp(
      id,
      roles.map((role) => layer(role, 0.1)),
      vegetationKNm2,
    ),
  );
}

function plan(zones: readonly ZoneInput[], stages: readonly StageInput[] | null, objects: readonly ObjectInput[] = []) {
  const made = planStages(deck({ zones, stages, objects }));
  return {
    ...made,
    layers: made.layerStages.map((of) => [...of]),
    vegetation: [...made.vegetationStages],
    placed: [...made.objectStages],
    ids: made.stages.map((s) => s.id),
  };
}

const GARDEN: readonly Role[] = ['protection', 'slip', 'drainage element', 'filter', 'substrate'];

describe('given stages', () => {
  it('place the run from the bottom whose roles they list', () => {
    const made = plan(
      [stack('Z', GARDEN)],
      [stage('1', [place(['protection', 'slip'])]), stage('2', [place(['drainage element', 'filter', 'substrate'])])],
    );
    expect(made.layers).toEqual([[0, 0, 1, 1, 1]]);
    expect(made.outOfOrder).toEqual([]);
    expect(made.stages.every((s) => !s.derived)).toBe(true);
  });

  it('whatever the order the roles are listed in', () => {
    const made = plan([stack('Z', GARDEN)], [stage('1', [place(['substrate', 'filter', 'drainage element', 'slip', 'protection'])])]);
    expect(made.layers).toEqual([[0, 0, 0, 0, 0]]);
    expect(made.outOfOrder).toEqual([]);
  });

  it('leave a role that comes again higher up for its own stage', () => {
    // Filter, fill, filter: the first stage reaches only the lower filter.
    const twice: Role[] = ['protection', 'filter', 'light fill', 'filter', 'substrate'];
    const made = plan(
      [stack('Z', twice)],
      [stage('1', [place(['protection', 'filter'])]), stage('2', [place(['light fill'])]), stage('3', [place(['filter', 'substrate'])])],
    );
    expect(made.layers).toEqual([[0, 0, 1, 2, 2]]);
    expect(made.outOfOrder).toEqual([]);
  });

  it('take a role both times where nothing unlisted lies between', () => {
    const made = plan([stack('Z', ['filter', 'light fill', 'filter', 'substrate'])], [stage('1', [place(['filter', 'light fill'])])]);
    expect(made.layers).toEqual([[0, 0, 0, -1]]);
  });

  it('that jump over a missing layer place it and say so', () => {
    const made = plan(
      [stack('Z', GARDEN)],
      [stage('1', [place(['protection', 'drainage element'])]), stage('2', [place(['slip', 'filter', 'substrate'])])],
    );
    expect(made.layers).toEqual([[0, 1, 0, 1, 1]]);
    expect(made.outOfOrder).toEqual([{ zone: 0, layer: 2, stage: 0 }]);
  });

  it('that name a role a build-up does not have, or has laid, do nothing there', () => {
    const made = plan(
      [stack('Z', ['protection', 'substrate'])],
      [stage('1', [place(['protection', 'bedding'])]), stage('2', [place(['protection', 'substrate'])])],
    );
    expect(made.layers).toEqual([[0, 1]]);
    expect(made.outOfOrder).toEqual([]);
  });

  it('place in the zones they name, in all where they name none', () => {
    const made = plan(
      [stack('A', ['protection', 'substrate']), stack('B', ['protection', 'surfacing'])],
      [stage('1', [place(['protection'])]), stage('2', [place(['surfacing', 'substrate'], [1])])],
    );
    expect(made.layers).toEqual([
      [0, -1],
      [0, 1],
    ]);
  });

  it('place objects once, in the first stage that names them', () => {
    const objects = [block('T', boxRing(0, 0, 1, 1), 1), block('U', boxRing(0, 0, 1, 1), 1), block('V', boxRing(0, 0, 1, 1), 1)];
    const made = plan([], [stage('1', []), stage('2', [place([], [], [0])]), stage('3', [place([], [], [0, 2])])], objects);
    expect(made.placed).toEqual([1, -1, 2]);
  });

  it('in which a later entry of the same stage brings what a former lacked', () => {
    const made = plan(
      [stack('Z', ['protection', 'slip', 'substrate'])],
      [stage('1', [place(['protection', 'substrate']), place(['slip'])])],
    );
    expect(made.layers).toEqual([[0, 0, 0]]);
  });
});

describe('vegetation', () => {
  it('comes with the stage that names it', () => {
    const made = plan([stack('Z', ['substrate'], 0.2)], [stage('1', [place(['substrate'])]), stage('2', [place(['vegetation'])])]);
    expect(made.vegetation).toEqual([1]);
  });

  it('comes with the top layer where no stage names it', () => {
    const made = plan(
      [stack('Z', ['protection', 'substrate'], 0.2)],
      [stage('1', [place(['protection'])]), stage('2', []), stage('3', [place(['substrate'])])],
    );
    expect(made.vegetation).toEqual([2]);
  });

  it('comes only to the zones named with it; the others get it with their top layer', () => {
    const made = plan(
      [stack('A', ['substrate'], 0.2), stack('B', ['substrate'], 0.2)],
      [stage('1', [place(['substrate'])]), stage('2', [place(['vegetation'], [0])])],
    );
    expect(made.vegetation).toEqual([1, 0]);
  });

  it('never comes where nothing is placed', () => {
    expect(plan([stack('Z', ['substrate'], 0.2)], [stage('1', [])]).vegetation).toEqual([-1]);
  });
});

describe('derived stages', () => {
  it('are one per role in stacking order', () => {
    const made = plan(
      [stack('A', ['protection', 'drainage element', 'substrate']), stack('B', ['protection', 'slip', 'base course', 'surfacing'])],
      null,
    );
    expect(made.ids).toEqual(['protection', 'slip', 'drainage-element', 'base-course', 'surfacing', 'substrate']);
    expect(made.layers).toEqual([
      [0, 2, 5],
      [0, 1, 3, 4],
    ]);
    expect(made.outOfOrder).toEqual([]);
    expect(made.stages[2]).toEqual({ id: 'drainage-element', name: 'Drainage element', derived: true });
  });

  it('come again where a build-up has a role twice', () => {
    const made = plan([stack('A', ['filter', 'light fill', 'filter', 'substrate'])], null);
    // One round passes the roles in stacking order: light fill stands before filter, so it waits for the second round.
    expect(made.ids).toEqual(['filter', 'light-fill', 'filter-2', 'substrate']);
    expect(made.layers).toEqual([[0, 1, 2, 3]]);
    expect(made.outOfOrder).toEqual([]);
    expect(made.stages[2].name).toBe('Filter (2)');
  });

  it('take two layers of one role upon each other together', () => {
    expect(plan([stack('A', ['protection', 'substrate', 'substrate'])], null).layers).toEqual([[0, 1, 1]]);
  });

  it('bring vegetation last of the layers, then the objects', () => {
    const made = plan([stack('A', ['substrate'], 0.2), stack('B', ['surfacing'])], null, [block('T', boxRing(0, 0, 1, 1), 1)]);
    expect(made.ids).toEqual(['surfacing', 'substrate', 'vegetation', 'objects']);
    expect(made.vegetation).toEqual([2, -1]);
    expect(made.placed).toEqual([3]);
  });

  it('bring vegetation with a layer of that role where there is one', () => {
    const made = plan([stack('A', ['substrate', 'vegetation'], 0.2)], null);
    expect(made.ids).toEqual(['substrate', 'vegetation']);
    expect(made.vegetation).toEqual([1]);
  });

  it('place every layer of every stack, supported', () => {
    // Stacks against the usual order too
    const made = plan([stack('A', ['substrate', 'protection', 'substrate', 'slip']), stack('B', ['filter', 'filter', 'protection'])], null);
    expect(made.layers.flat().every((s) => s >= 0)).toBe(true);
    expect(made.outOfOrder).toEqual([]);
    for (const layers of made.layers) expect([...layers].sort((a, b) => a - b)).toEqual(layers);
  });
});
