/** The open scene and everything calculated from it, kept in step with the worker: answers that come late are dropped. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { CatalogueView } from '../model/catalogue-view.ts';
import type { DerivationAsk, Term } from '../model/derivation.ts';
import type { DrawnKind, DrawnOptions } from '../model/drawn-file.ts';
import type {
  Engine,
  ExportedFile,
  ExportKind,
  ExportLanguage,
  HandoverOptions,
  OpenAnswer,
  SceneText,
  Snapshot,
} from '../model/engine.ts';
import { type HistoryView, NO_HISTORY, type PartsEdit, type SceneEdit, type ScenePatch } from '../model/history.ts';
import type { Issue } from '../model/issue.ts';
import type { LightenAnswer, LightenOptions } from '../model/lighten.ts';
import type { CellMap, CoreLog } from '../model/maps.ts';
import type { RunPose } from '../model/run.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { SectionDrawing } from '../model/section-drawing.ts';
import type { SourceUse } from '../model/source.ts';
import type { FileAnswer, VariantAnswer } from '../model/variants.ts';
import type { BlockedOutlet } from '../model/water-result.ts';
import { createLightenings, type Lightening, type LightenWorker } from './lightening.ts';
import { newestOnly, refreshers, worstBlocked } from './refreshers.ts';
import type { SectionView } from './section-view.ts';
import type { ViewStore } from './view-store.ts';

export interface SceneState {
  readonly status: 'empty' | 'working' | 'ready';
  /** Name of the open file or demo scene. */
  readonly fileName: string;
  readonly snapshot: Snapshot | null;
  /** What undo and redo would do, and whether the scene is other than last opened or saved. */
  readonly history: HistoryView;
  /** Of this scene, since it was opened: when it was last saved to a file, and by which name. */
  readonly saved: { readonly at: Date; readonly name: string } | null;
  /** What was just undone or done again; null once anything else is done. */
  readonly travelled: Travelled | null;
  /** Warnings of the open scene. */
  readonly warnings: readonly Issue[];
  /** What was done to read its file, such as another character set. */
  readonly notes: readonly string[];
  /** Why the last file did not open; the scene opened before stays. */
  readonly refused: { readonly fileName: string; readonly issues: readonly Issue[]; readonly ofEdit: boolean } | null;
  /** The map chosen in the view store, once calculated. */
  readonly cellMap: CellMap | null;
  /** The column under the picked cell. */
  readonly coreLog: CoreLog | null;
  /** The chosen vehicle, and those of the stage shown at the middle of their lines. */
  readonly poses: readonly RunPose[];
  /** Water with the chosen outlet blocked. */
  readonly rise: BlockedOutlet | null;
  /** The variant held against the scene, once evaluated. */
  readonly comparison: VariantAnswer | null;
  /** The section chosen in the view store, once drawn. */
  readonly section: DrawnSection | null;
  /** How far the search for lighter zones is; null while there is none. */
  readonly lightening: Lightening | null;
}

export interface Travelled {
  readonly way: 'undo' | 'redo';
  readonly edit: SceneEdit;
}

/** A section as numbers and as its sheet. */
export interface DrawnSection {
  readonly of: SectionView;
  readonly drawing: SectionDrawing;
  readonly svg: string;
}

export interface SceneActions {
  /** `unsaved`: the text lies in no file yet. `notes`: what was done to read it. */
  openText(fileName: string, text: string, unsaved?: boolean, notes?: readonly string[]): Promise<void>;
  /** Tells why a file did not open that is no scene. */
  refuse(fileName: string, issues: readonly Issue[]): void;
  /** Edits of one gesture, as `newGesture` gives it, are one step of undo. */
  setThickness(buildUp: string, layer: number, thicknessMm: number, gesture?: number): void;
  /**
   * Exchanges parts of the scene, when its turn comes, as it then stands. Within a gesture each call says where things end
   * up, not by how much they move: calls that wait are replaced by later ones of their gesture.
   * Gives the errors by which it was refused, to be told in place; none where it was done.
   */
  edit(make: (scene: SceneFile) => ScenePatch, edit: PartsEdit, gesture?: number): Promise<readonly Issue[]>;
  newGesture(): number;
  travel(way: 'undo' | 'redo'): void;
  sceneText(use: 'file' | 'copy'): Promise<SceneText>;
  /** The text that `sceneText` last gave for a file lies in a file of this name now. */
  markSaved(name: string): Promise<void>;
  dismissRefusal(): void;
  /** Another scene file against the scene as it stands. */
  compareFile(bytes: Uint8Array): Promise<FileAnswer>;
  /** Every number of the catalogue and the rules with its source, as the open scene uses them. */
  sources(): Promise<readonly SourceUse[]>;
  /** What build-ups are made of, in the language spoken. */
  catalogue(): Promise<CatalogueView>;
  /** How a number of the report comes about; null where the scene has no such number. */
  derive(ask: DerivationAsk): Promise<Term | null>;
  /** Lighter fills and thicknesses for zones too heavy for their bays; null where it was cancelled. */
  lighten(options: LightenOptions): Promise<LightenAnswer | null>;
  cancelLighten(): void;
  exportFile(kind: ExportKind, language: ExportLanguage): Promise<ExportedFile>;
  exportDrawn(kind: DrawnKind, options: DrawnOptions): Promise<ExportedFile>;
  exportHandover(options: HandoverOptions): Promise<ExportedFile>;
}

export type SceneStore = StoreApi<SceneState & SceneActions>;

/** Of what is asked for by stage, map and picked cell: nothing yet. */
const NOTHING_ASKED = { cellMap: null, coreLog: null, poses: [], rise: null, comparison: null, section: null } as const;

const NOTHING_OPEN: SceneState = {
  status: 'empty',
  fileName: '',
  snapshot: null,
  history: NO_HISTORY,
  saved: null,
  travelled: null,
  warnings: [],
  notes: [],
  refused: null,
  ...NOTHING_ASKED,
  lightening: null,
};

/**
 * A scene store that follows the view store: whenever stage, map or picked cell change, it asks the engine anew.
 * @param engine - worker or, in tests, a session in the same thread
 * @param view - view store
 * @param startLightener - starts a worker that lightens
 * @returns store with its actions
 */
export function createSceneStore(engine: Engine, view: ViewStore, startLightener: () => LightenWorker = noLightener): SceneStore {
  const store: SceneStore = createStore<SceneState & SceneActions>()((set) => ({
    ...NOTHING_OPEN,
    refuse: (fileName, issues) => set({ refused: { fileName, issues, ofEdit: false } }),
    async openText(fileName, text, unsaved = false, notes = []) {
      // An edit that still waits was meant for the scene before.
      edits.drop();
      set({ status: 'working' });
      const answer = await answered(unsaved ? engine.open(text, true) : engine.open(text));
      if (!answer.ok) {
        set((old) => ({ status: old.snapshot ? 'ready' : 'empty', refused: { fileName, issues: answer.issues, ofEdit: false } }));
        return;
      }
      view.getState().reset();
      set({
        status: 'ready',
        fileName,
        snapshot: answer.snapshot,
        history: answer.snapshot.history,
        saved: null,
        travelled: null,
        warnings: answer.warnings,
        notes,
        refused: null,
        ...NOTHING_ASKED,
      });
      await Promise.all([refresh.refreshMap(), refresh.refreshLog(), refresh.refreshPoses()]);
    },
    ...editActions(
      engine,
      () => store.getState(),
      (...job) => edits.push(...job),
    ),
    dismissRefusal: () => set({ refused: null }),
    markSaved: async (name) => set({ history: await engine.markSaved(), saved: { at: new Date(), name } }),
    ...createLightenings(
      startLightener,
      async () => ({ text: (await engine.sceneText('copy')).text, language: view.getState().language }),
      (lightening) => set({ lightening }),
    ),
    ...handedThrough(engine),
  }));

  const refresh = refreshers(engine, view, store);
  const edits = latestOfEach<Edited | null>(async (edited) => {
    if (edited === null) return;
    const { answer, travelled, told } = edited;
    if (!answer.ok && told) {
      // What the scene was warned of before is no reason.
      told(answer.issues.filter(({ level }) => level === 'error'));
      return;
    }
    if (!answer.ok) {
      store.setState({ refused: { fileName: store.getState().fileName, issues: answer.issues, ofEdit: true } });
      return;
    }
    const { snapshot, warnings } = answer;
    store.setState({ snapshot, history: snapshot.history, travelled, warnings });
    told?.([]);
    await Promise.all(Object.values(refresh).map((again) => again()));
  });
  followView(view, store, refresh);
  followLanguage(engine, view, store, refresh);
  return store;
}

function noLightener(): never {
  throw new RangeError('createSceneStore: nothing was given that lightens');
}

type EditActions = Pick<SceneActions, 'setThickness' | 'edit' | 'travel' | 'newGesture'>;
type Queue = ReturnType<typeof latestOfEach<Edited | null>>['push'];

/** What changes the scene: each waits for its turn. */
function editActions(engine: Engine, get: () => SceneState, push: Queue): EditActions {
  let gestures = 0;
  return {
    setThickness: (buildUp, layer, thicknessMm, gesture) =>
      push(`${buildUp} ${layer} ${gesture}`, async () => ({
        answer: await answered(engine.setThickness(buildUp, layer, thicknessMm, gesture)),
        travelled: null,
      })),
    edit: (make, edit, gesture) => {
      const kind = `parts ${gesture ?? `alone ${++gestures}`}`;
      return new Promise((told) => {
        const job = async () => {
          const { snapshot } = get();
          const answer = snapshot && (await answered(engine.edit(make(snapshot.scene), edit, gesture)));
          if (answer === null) told([]);
          return answer && { answer, travelled: null, told };
        };
        push(kind, job, () => told([]));
      });
    },
    newGesture: () => ++gestures,
    // Each press of undo is a step of its own, after the edits that still wait.
    travel: (way) =>
      push(`travel ${++gestures}`, async () => {
        const edit = get().history[way];
        const answer = edit && (await answered(engine.travel(way)));
        return answer && { answer, travelled: { way, edit } };
      }),
  };
}

/** The engine speaks the language of the view; what is shown already is told again in it, not calculated anew. */
function followLanguage(engine: Engine, view: ViewStore, store: SceneStore, refresh: ReturnType<typeof refreshers>): void {
  const speak = newestOnly(
    () => engine.speak(view.getState().language),
    // Answers come in the order of the questions: these words are those of the snapshot that is there by now.
    (spoken) => {
      const { snapshot } = store.getState();
      if (!spoken || !snapshot) return;
      const { warnings, ...words } = spoken;
      store.setState({ snapshot: { ...snapshot, ...words }, warnings });
      void refresh.refreshLog();
      void refresh.refreshPoses();
    },
  );
  if (view.getState().language !== 'en') void speak();
  view.subscribe((now, before) => {
    if (now.language !== before.language) void speak();
  });
}

/** Asks anew for what follows stage, map, picked cell, section and chosen vehicle. */
function followView(view: ViewStore, store: SceneStore, refresh: ReturnType<typeof refreshers>): void {
  const { refreshMap, refreshLog, refreshPoses, refreshRise, refreshComparison, refreshSection } = refresh;
  view.subscribe((now, before) => {
    if (now.cell !== before.cell || now.stage !== before.stage) store.setState({ travelled: null });
    const blocks = now.blocked !== before.blocked;
    if (blocks) void refreshRise();
    if (now.map === 'blocked' && now.blocked === null) {
      view.getState().blockOutlet(worstBlocked(store.getState().snapshot));
      return;
    }
    const compares = now.compared !== before.compared;
    if (compares || now.language !== before.language) void refreshComparison();
    const isOther = (blocks && now.map === 'blocked') || (compares && now.map === 'difference');
    if (now.map !== before.map || now.stage !== before.stage || isOther) void refreshMap();
    if (now.section !== before.section || now.language !== before.language || now.stage !== before.stage) void refreshSection();
    if (now.run !== before.run || now.stage !== before.stage) void refreshPoses();
    if (now.cell !== before.cell || now.stage !== before.stage) void refreshLog();
  });
}

interface Edited {
  readonly answer: OpenAnswer;
  readonly travelled: Travelled | null;
  /** Takes the errors to where the edit was made, instead of a sheet over the page. */
  readonly told?: (errors: readonly Issue[]) => void;
}

/** A fault of the program itself is told like any other, so that nothing waits for ever. */
async function answered<Answer extends OpenAnswer | null>(work: Promise<Answer>): Promise<Answer | OpenAnswer> {
  try {
    return await work;
  } catch (error) {
    const got = error instanceof Error ? error.message : String(error);
    const mend = 'This is a fault of Loamdeck, not of the file. Save the file, reload the page, and report what you did.';
    return { ok: false, issues: [{ code: 'PROGRAM_FAULT', level: 'error', path: '', got, expected: 'a finished calculation', mend }] };
  }
}

/**
 * Runs one job at a time and, of those that come meanwhile, only the latest of each kind: a dragged slider never queues
 * up, and an edit of one layer never swallows that of another.
 */
function latestOfEach<T>(done: (answer: T) => Promise<void>): {
  /** `dropped` is called for a job that never runs. */
  push(kind: string, job: () => Promise<T>, dropped?: () => void): void;
  drop(): void;
} {
  let running = false;
  const waiting = new Map<string, { readonly job: () => Promise<T>; readonly dropped?: (() => void) | undefined }>();
  async function run(): Promise<void> {
    running = true;
    try {
      for (let next = waiting.entries().next().value; next; next = waiting.entries().next().value) {
        waiting.delete(next[0]);
        await done(await next[1].job());
      }
    } finally {
      running = false;
    }
  }
  return {
    push(kind, job, dropped) {
      waiting.get(kind)?.dropped?.();
      waiting.set(kind, { job, dropped });
      if (!running) void run();
    },
    drop() {
      for (const { dropped } of waiting.values()) dropped?.();
      waiting.clear();
    },
  };
}

type HandedThrough = Pick<
  SceneActions,
  'sources' | 'catalogue' | 'compareFile' | 'sceneText' | 'derive' | 'exportFile' | 'exportDrawn' | 'exportHandover'
>;

/** What only the engine knows, and no state keeps. */
function handedThrough(engine: Engine): HandedThrough {
  return {
    sources: () => engine.sources(),
    compareFile: (bytes) => engine.compareFile(bytes),
    catalogue: () => engine.catalogue(),
    sceneText: (use) => engine.sceneText(use),
    derive: (ask) => engine.derive(ask),
    exportFile: (kind, language) => engine.exportFile(kind, language),
    exportDrawn: (kind, options) => engine.exportDrawn(kind, options),
    exportHandover: (options) => engine.exportHandover(options),
  };
}
