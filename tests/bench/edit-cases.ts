/** The benchmark's case of an edit: what a drag of a layer's boundary asks for, against the same scene read and evaluated whole. */

import { readFileSync } from 'node:fs';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { Session } from '../../src/project/session.ts';
import { type BenchCase, prove } from './bench-case.ts';

const COURTYARD = new URL('../../scenes/courtyard.scene.json', import.meta.url);
/** Substrate of the shrubs, in three zones. */
const DRAGGED = { buildUp: 'shrubs', role: 'substrate' };
const MOVED_ZONE = 5;

/** Cases for one cell size; throws where a result is wrong, before anything is timed. */
export function editCases(cellM: number): BenchCase[] {
  const scene = { ...(JSON.parse(readFileSync(COURTYARD, 'utf8')) as SceneFile), grid: { cellM } };
  const text = JSON.stringify(scene);
  const session = new Session();
  const opened = session.open(text).project;
  const layers = opened?.resolved.input.zones.find(({ buildUp }) => buildUp.id === DRAGGED.buildUp)?.buildUp.layers ?? [];
  const layer = layers.findIndex(({ role }) => role === DRAGGED.role);
  prove(layer >= 0, `edit: a ${DRAGGED.role} in ${DRAGGED.buildUp}`);
  const thicknessMm = 1000 * layers[layer].thicknessM;
  const dragged = session.setThickness(DRAGGED.buildUp, layer, thicknessMm + 10, 1).project;
  const whole = readProject(JSON.stringify(dragged?.scene)).project;
  prove(JSON.stringify(dragged?.report) === JSON.stringify(whole?.report), 'edit: report of the edited scene');
  let turn = 0;
  return [
    {
      id: 'edit',
      what: 'a thickness dragged on the courtyard: scene checked, loads, report',
      limit: 'the same scene read and evaluated whole',
      run: () => {
        turn = 1 - turn;
        session.setThickness(DRAGGED.buildUp, layer, thicknessMm + 10 * turn, 1);
      },
      copy: () => {
        readProject(text);
      },
      target: cellM < 0.2 ? 0.16 : 0.25,
    },
    firstCase(session, (thick) => session.changeThickness({ ...DRAGGED, layer, thicknessMm: thicknessMm + thick }, 1), {
      id: 'map first',
      what: 'the same drag as far as its map: scene checked, loads, map',
      target: 0.5,
    }),
    cornerCase(session, scene),
  ];
}

type Named = Pick<BenchCase, 'id' | 'what' | 'target'>;

/** What of an edit is there before its report, against the whole; `edit` goes to and fro. */
function firstCase(session: Session, edit: (thick: number) => unknown, named: Named): BenchCase {
  let turn = 0;
  const first = () => {
    turn = 10 - turn;
    edit(turn);
    return session.map('utilisation', null);
  };
  const { values } = first();
  const fresh = new Session();
  fresh.open(JSON.stringify(session.standing().scene));
  prove(values.join() === fresh.map('utilisation', null).values.join(), `${named.id}: map of the edited scene`);
  return {
    ...named,
    limit: 'the same with its report',
    run: first,
    copy: () => {
      first();
      session.opened();
    },
  };
}

/** A corner of a zone moved by centimetres. */
function cornerCase(session: Session, scene: SceneFile): BenchCase {
  const edit = (byCm: number) => {
    const zones = scene.zones.map((zone, z) => {
      return z === MOVED_ZONE ? { ...zone, outline: zone.outline.map(([x, y], p) => [p === 0 ? x + byCm / 100 : x, y] as const) } : zone;
    });
    const changed = session.change({ zones }, { kind: 'parts', act: 'move', part: 'zone', names: [] }, 2);
    prove(changed.changed !== null, 'edit: a corner moved');
  };
  return firstCase(session, edit, { id: 'corner', what: 'a corner dragged, as far as its map', target: 0.15 });
}
