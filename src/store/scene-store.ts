/** The open scene and everything calculated from it, kept in step with the worker: answers that come late are dropped. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { CatalogueView } from '../model/catalogue-view.ts';
import type { DerivationAsk, Term } from '../model/derivation.ts';
import type { DrawnKind, DrawnOptions } from '../model/drawn-file.ts';
import type { Engine, ExportedFile, ExportKind, ExportLanguage, HandoverOptions, MapAsk, SceneText, Snapshot } from '../model/engine.ts';
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
import { answered, type Edited, editActions, latestOfEach } from './edit-queue.ts';
import { createLightenings, type Lightening, type LightenWorker } from './lightening.ts';
import { newestOnly, type Refresh, refreshers, worstBlocked } from './refreshers.ts';
import type { SectionView } from './section-view.ts';
import { reportsFollow, takeAnswers } from './take-answers.ts';
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
  /**
   * What is still that of a state before while something is dragged: report, tables and stages of the snapshot, and with them the map
   * where it rests on more than the calculation. Null where all is of one state. Whoever shows such a number says so.
   */
  readonly behind: 'tables' | 'tables and map' | null;
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
  behind: null,
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
      edits.hold();
      set({ status: 'working' });
      const answer = await answered(unsaved ? engine.open(text, true) : engine.open(text));
      // So was one that came since.
      if (answer.ok) edits.drop();
      edits.release();
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
        behind: null,
        ...NOTHING_ASKED,
      });
      await Promise.all([refresh.refreshMap(), refresh.refreshLog(), refresh.refreshPoses()]);
    },
    ...editActions(
      engine,
      () => ({ ...store.getState(), mapAsked: mapAsked(view) }),
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
  const take = takeAnswers(view, store, refresh);
  const edits = latestOfEach<Edited | null>(take.edited, reportsFollow(engine, store, take.finished));
  followView(view, store, refresh);
  followLanguage(engine, view, store, refresh);
  return store;
}

/** The map that the view shows, as it is asked for with an edit. */
function mapAsked(view: ViewStore): MapAsk | null {
  const { map, stage } = view.getState();
  return map && { kind: map, stage };
}

function noLightener(): never {
  throw new RangeError('createSceneStore: nothing was given that lightens');
}

/** The engine speaks the language of the view; what is shown already is told again in it, not calculated anew. */
function followLanguage(engine: Engine, view: ViewStore, store: SceneStore, refresh: Refresh): void {
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
function followView(view: ViewStore, store: SceneStore, refresh: Refresh): void {
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
