/** The benchmark's case of an edit: what a drag of a layer's boundary asks for, against the same scene read and evaluated whole. */

import { readFileSync } from 'node:fs';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { Session } from '../../src/project/session.ts';
import { type BenchCase, prove } from './bench-case.ts';

const COURTYARD = new URL('../../scenes/courtyard.scene.json', import.meta.url);
/** Substrate of the shrubs, in three zones. */
const DRAGGED = { buildUp: 'shrubs', role: 'substrate' };

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
  ];
}
