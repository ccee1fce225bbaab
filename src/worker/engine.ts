/** The engine behind the app: a session plus the picture of its scene. Runs in a worker; tests run it in their own thread. */

import { onDatum, type Surface } from '../core/levels/surface.ts';
import { exportDrawn } from '../export/drawn-file.ts';
import { exportFile, sceneFileName } from '../export/export-file.ts';
import { exportHandover } from '../export/handover.ts';
import { datumOf, pictureInput, sourceOn, spokenSource } from '../export/picture-source.ts';
import { importIssueIn, mendIn } from '../import/import-language.ts';
import { readSceneText } from '../import/read-scene-text.ts';
import { buildPicture, type PictureMemory } from '../mesh/build-picture.ts';
import { drawSection } from '../mesh/section-drawing.ts';
import type { SectionSource } from '../mesh/section-source.ts';
import type { Engine, OpenAnswer, Snapshot, Spoken } from '../model/engine.ts';
import type { FileAnswer } from '../model/variants.ts';
import { buildUpViews } from '../project/build-up-views.ts';
import { derive } from '../project/derivation.ts';
import type { Project } from '../project/evaluate-project.ts';
import { runViews } from '../project/run-views.ts';
import { materialNames, Session, type SessionAnswer } from '../project/session.ts';
import { speakProject, speakTerm } from '../project/speak.ts';
import { stageViews } from '../project/stage-views.ts';

/**
 * A new engine.
 * @returns engine without a scene
 */
export function createEngine(): Engine {
  const session = new Session();
  let memory: PictureMemory | undefined;
  let source: SectionSource | undefined;
  // The same surface must stay the same object, or nothing drawn could be kept.
  let lowered = new WeakMap<Surface, Surface>();
  let loweredBy = 0;
  const lower = (datumM: number) => {
    if (datumM !== loweredBy) lowered = new WeakMap();
    loweredBy = datumM;
    return (surface: Surface): Surface => {
      if (datumM === 0) return surface;
      const known = lowered.get(surface) ?? onDatum(surface, datumM);
      lowered.set(surface, known);
      return known;
    };
  };

  const answer = (work: () => SessionAnswer): OpenAnswer => {
    const started = performance.now();
    const { project, issues } = work();
    if (!project) return { ok: false, issues: session.tell(issues) };
    const evaluatedMs = performance.now() - started;
    const datumM = datumOf(project);
    const on = pictureInput(project, datumM, lower(datumM));
    const drawn = buildPicture(on, memory);
    memory = drawn.memory;
    source = sourceOn(project, on, drawn.picture, datumM);
    return {
      ok: true,
      snapshot: { ...snapshotOf(session.spoken(), drawn.picture, evaluatedMs), datumM, history: session.history() },
      warnings: session.tell(issues),
    };
  };

  const drawnSource = () => openSource(source);

  return {
    speak: async (language) => {
      session.speak(language);
      return session.isOpen() ? { ...wordsOf(session.spoken()), warnings: session.warnings() } : null;
    },
    open: async (text, unsaved) => answer(() => session.open(text, unsaved)),
    setThickness: async (buildUp, layer, thicknessMm, gesture) => answer(() => session.setThickness(buildUp, layer, thicknessMm, gesture)),
    edit: async (patch, edit, gesture) => answer(() => session.edit(patch, edit, gesture)),
    compareVariant: async (variant) => session.compareVariant(variant),
    compareFile: async (bytes) => compareFile(session, bytes),
    sceneText: async (use) => ({ name: sceneFileName(session.opened().scene), text: session.sceneText(use) }),
    markSaved: async () => session.markSaved(),
    travel: async (way) => (session.history()[way] === null ? null : answer(() => session.travel(way))),
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
    section: async (line, stage) => drawSection(spokenSource(drawnSource(), session.spoken().language), line, stage),
    exportHandover: async (options) => exportHandover({ project: session.opened(), source: drawnSource() }, options),
    exportDrawn: async (kind, options) => exportDrawn(kind, { project: session.opened(), source: drawnSource() }, options),
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

function openSource(source: SectionSource | undefined): SectionSource {
  if (!source) throw new RangeError('createEngine: no scene is open');
  return source;
}

function snapshotOf(project: Project, picture: Snapshot['picture'], evaluatedMs: number): Omit<Snapshot, 'datumM' | 'history'> {
  const { evaluation } = project;
  return {
    scene: project.scene,
    ...wordsOf(project),
    grid: evaluation.prepared.ground.grid,
    originM: evaluation.input.originM,
    picture,
    bayAt: evaluation.bayAt,
    evaluatedMs,
  };
}

function wordsOf(project: Project): Omit<Spoken, 'warnings'> {
  return {
    report: project.report,
    stages: stageViews(project),
    buildUps: buildUpViews(project),
    runs: runViews(project),
    materialNames: materialNames(project),
  };
}
