/** Parts of a drawing in a scene: what is added, what is replaced, what stays as it was entered. */

import { describe, expect, it } from 'vitest';
import { takeParts } from '../../src/edit/take-parts.ts';
import { STARTER } from '../../src/model/drawn-parts.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const HISTORY = [{ on: '2026-03-09T10:15Z', says: 'Read from a drawing.' }];
const base = (): SceneFile => ({
  ...sceneOf(),
  zones: [zone('Z1', rect(0, 0, 2, 3), 'soil-100'), zone('Z2', rect(2, 0, 4, 3), 'soil-100')],
  stages: [{ id: 'S1', name: 'Soil', place: [{ zones: ['Z1', 'Z2'], roles: ['substrate'] }] }],
});
const patched = (...[parts, takings]: [Parameters<typeof takeParts>[1], Parameters<typeof takeParts>[2]]) =>
  ({ ...base(), ...takeParts(base(), parts, takings, HISTORY) }) as SceneFile;
const errorsOf = (scene: SceneFile) => readProject(JSON.stringify(scene)).issues.filter(({ level }) => level === 'error');

describe('adding', () => {
  it('gives ids that are taken a number, and keeps all that is there', () => {
    const scene = patched({ bays: [{ id: 'A1', outline: rect(0, 0, 1, 1) }], outlets: [{ id: 'O1', at: [1, 1], kind: 'outlet' }] }, {});
    expect(scene.deck.bays.map(({ id }) => id)).toEqual([...base().deck.bays.map(({ id }) => id), 'A1-2']);
    expect(scene.deck.outlets?.at(-1)).toMatchObject({ at: [1, 1] });
    expect(scene.zones).toEqual(base().zones);
    expect(scene.history).toEqual(HISTORY);
  });

  it('puts levels to the levels there are', () => {
    const spots = [[0, 0, 1] as const];
    const scene = { ...base(), deck: { ...base().deck, levels: { spots: [[3, 0, 1.1] as const] } } };
    const { deck } = takeParts(scene, { levels: { spots } }, { levels: 'add' }, []);
    expect(deck?.levels?.spots).toEqual([
      [3, 0, 1.1],
      [0, 0, 1],
    ]);
    expect(takeParts(scene, { levels: { spots } }, { levels: 'replace' }, []).deck?.levels?.spots).toEqual(spots);
  });
});

describe('replacing', () => {
  it('moves a bay of the same name and keeps its limits', () => {
    const [old] = base().deck.bays;
    const scene = patched({ bays: [{ id: 'A1', outline: rect(0, 0, 3.5, 3) }] }, { bays: 'replace' });
    expect(scene.deck.bays).toEqual([{ ...old, outline: rect(0, 0, 3.5, 3) }]);
  });

  it('takes zones out that the drawing has not, and out of the stages too', () => {
    const drawn = [{ ...zone('Z2', rect(0, 0, 4, 3), STARTER), holes: [rect(1, 1, 2, 2)] }];
    const buildups = [{ id: STARTER, name: 'To be designed', layers: [{ material: 'fleece-500' }] }];
    const scene = patched({ zones: drawn, buildups }, { zones: 'replace' });
    // The zone that stays keeps its build-up; its new hole comes with its outline.
    expect(scene.zones).toMatchObject([{ id: 'Z2', buildup: 'soil-100', outline: rect(0, 0, 4, 3), holes: [rect(1, 1, 2, 2)] }]);
    expect(scene.stages?.[0]?.place).toEqual([{ zones: ['Z2'], roles: ['substrate'] }]);
    expect(scene.buildups).toContainEqual(buildups[0]);
    expect(errorsOf(scene)).toEqual([]);
  });

  it('a zone without a hole loses the hole it had', () => {
    const before = { ...base(), zones: [{ ...zone('Z1', rect(0, 0, 4, 3), 'soil-100'), holes: [rect(1, 1, 2, 2)] }] };
    const { zones } = takeParts(before, { zones: [zone('Z1', rect(0, 0, 4, 3), STARTER)] }, { zones: 'replace' }, []);
    expect(zones?.[0]).not.toHaveProperty('holes');
  });

  it('trees only, never other objects; ids stay apart from theirs', () => {
    const block = { kind: 'block', id: 'T1', outline: rect(0, 0, 1, 1), kNm2: 2 } as const;
    const before = { ...base(), objects: [block, { kind: 'tree', id: 'T9', at: [1, 1], massKg: 500, spreadM: 1 } as const] };
    const trees = [{ kind: 'tree', id: 'T1', at: [2, 2], massKg: 800, spreadM: 2 } as const];
    const { objects } = takeParts(before, { trees }, { trees: 'replace' }, []);
    expect(objects).toEqual([block, { ...trees[0], id: 'T1-2' }]);
  });
});

it('what is left out leaves no trace', () => {
  const patch = takeParts({ ...base(), buildups: [SOIL_100] }, { bays: [{ id: 'X', outline: rect(0, 0, 1, 1) }] }, { bays: 'leave' }, []);
  expect(patch.deck).toEqual(base().deck);
});
