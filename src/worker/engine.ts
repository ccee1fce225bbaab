/** The engine behind the app: a session plus the picture of its scene. Runs in a worker; tests run it in their own thread. */

import { exportDrawn } from '../export/drawn-file.ts';
import { exportFile, sceneFileName } from '../export/export-file.ts';
import { exportHandover } from '../export/handover.ts';
import { spokenSource } from '../export/picture-source.ts';
import { importIssueIn, mendIn } from '../import/import-language.ts';
import { readSceneText } from '../import/read-scene-text.ts';
import { drawSection } from '../mesh/section-drawing.ts';
import type { Engine } from '../model/engine.ts';
import type { FileAnswer } from '../model/variants.ts';
import { derive } from '../project/derivation.ts';
import { Session } from '../project/session.ts';
import { speakProject, speakTerm } from '../project/speak.ts';
import { DrawnScene } from './drawn-scene.ts';
import { SceneAnswers } from './scene-answers.ts';

/**
 * A new engine.
 * @returns engine without a scene
 */
export function createEngine(): Engine {
  const session = new Session();
  const drawn = new DrawnScene();
  const answers = new SceneAnswers(session, drawn);
  return {
    speak: async (language) => {
      session.speak(language);
      return session.isOpen() ? answers.spoken() : null;
    },
    open: async (text, unsaved) => answers.whole(() => session.open(text, unsaved)),
    setThickness: async (buildUp, layer, thicknessMm, within) =>
      answers.edited((gesture) => session.changeThickness({ buildUp, layer, thicknessMm }, gesture), within),
    edit: async (patch, edit, within) => answers.edited((gesture) => session.change(patch, edit, gesture), within),
    finish: (givesWay) => answers.finish(givesWay),
    compareVariant: async (variant) => session.compareVariant(variant),
    compareFile: async (bytes) => compareFile(session, bytes),
    sceneText: async (use) => ({ name: sceneFileName(session.standing().scene), text: session.sceneText(use) }),
    markSaved: async () => session.markSaved(),
    travel: async (way) => (session.history()[way] === null ? null : answers.whole(() => session.travel(way))),
    map: async (kind, stage, outlet) => session.map(kind, stage, outlet),
    blockedOutlet: async (outlet) => session.blockedOutlet(outlet),
    coreLog: async (cell, stage) => session.coreLog(cell, stage),
    runAt: async (run, stand) => session.runAt(run, stand),
    sources: async () => session.sources(),
    catalogue: async () => session.catalogue(),
    derive: async (ask) => {
      const term = derive(session.opened(), ask);
      return term && speakTerm(term, session.spoken());
    },
    exportFile: async (kind, language) => exportFile(kind, speakProject(session.opened(), language), language),
    section: async (line, stage) => drawSection(spokenSource(drawn.source, session.spoken().language), line, stage),
    exportHandover: async (options) => exportHandover({ project: session.opened(), source: drawn.source }, options),
    exportDrawn: async (kind, options) => exportDrawn(kind, { project: session.opened(), source: drawn.source }, options),
  };
}

/** Another file against the scene as it stands, its bytes read like those of a file that is opened. */
function compareFile(session: Session, bytes: Uint8Array): FileAnswer {
  const { language } = session.spoken();
  const read = readSceneText(bytes);
  if ('issue' in read) return { ok: false, issues: [importIssueIn(read.issue, language)] };
  const notes = read.mends.map((mend) => mendIn(mend, language).says);
  return session.compareFile(read.text, notes);
}
