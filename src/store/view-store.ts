/** How the user looks at the scene: stage, explode, map, cut, what is hidden, what is picked. No numbers of the check live here. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Language } from '../model/language.ts';
import type { MapKind } from '../model/maps.ts';
import type { PartKind } from '../model/picture.ts';
import type { PointM } from '../model/scene-file.ts';
import { type ShownUnits, USUAL_UNITS } from '../model/shown-units.ts';
import type { TakePicture, ViewStand } from '../model/view-picture.ts';
import type { WheelStand } from '../model/wheel-input.ts';
import type { EditorName, Selected } from './edit-view.ts';
import { SECTION_START, type SectionView } from './section-view.ts';
import type { SheetName } from './sheet-view.ts';
import type { UnderlayLines } from './underlay-lines.ts';
import { FIRST_STEP, type Theme, type Walk } from './walk.ts';

export type MapPlace = 'top' | 'slab';

/** A vertical cut through the model. */
export interface Cut {
  readonly on: boolean;
  /** Direction one looks at the cut face, clockwise from +y [°]. */
  readonly lookDeg: number;
  /** Place across the deck, 0 … 1 of its extent in that direction [-]. */
  readonly position: number;
}

/** A vehicle chosen on its line. */
export interface ChosenRun extends WheelStand {
  readonly id: string;
}

/** Which layer's top the patches of wheels are drawn on: the `nth` of that material from the top; '' is the membrane. */
export interface FootLayer {
  readonly materialId: string;
  readonly nth: number;
}

/** A wish to the camera; `count` rises with each so that the same wish can be made twice. */
export interface CameraWish {
  readonly count: number;
  readonly to:
    | 'home'
    | 'plan'
    | 'side'
    | { readonly at: readonly [number, number]; readonly sizeM: number }
    /** The home view seen in this direction, clockwise from +y. */
    | { readonly lookDeg: number }
    /** Eye and what it looks at, local [m]. */
    | { readonly eye: readonly [number, number, number]; readonly target: readonly [number, number, number] };
}

export interface ViewState {
  /** Index of the stage shown; null for the finished garden. */
  readonly stage: number | null;
  readonly playing: boolean;
  /** 0 … 1. */
  readonly explode: number;
  readonly map: MapKind | null;
  readonly mapOn: MapPlace;
  /** Routes, access points, reach and open edges are drawn while a stage is shown. */
  readonly sitePlan: boolean;
  readonly hiddenKinds: ReadonlySet<PartKind>;
  readonly hiddenZones: ReadonlySet<string>;
  readonly onlyKind: PartKind | null;
  readonly onlyZone: string | null;
  readonly cut: Cut;
  readonly cell: number | null;
  readonly bay: string | null;
  /** Loose material of the heap board; null for the first of the scene. */
  readonly heapOf: string | null;
  readonly run: ChosenRun | null;
  /** Wheel looked at, by its index; null for the one that uses most. */
  readonly wheel: number | null;
  readonly foot: FootLayer;
  /** The chosen vehicle drives along its line. */
  readonly driving: boolean;
  /** Outlet that is blocked; null for none. */
  readonly blocked: string | null;
  /** Depth at which the rising water is held; null for as deep as it gets [mm]. */
  readonly heldMm: number | null;
  /** Section shown beside the model. */
  readonly section: SectionView | null;
  /** Points of the line being drawn, coordinates of the file [m]; null while none is drawn. */
  readonly sectionPoints: readonly PointM[] | null;
  readonly camera: CameraWish;
  readonly stillMotion: boolean;
  readonly theme: Theme;
  readonly language: Language;
  /** For reading and typing; no file and no calculation changes with them. */
  readonly units: ShownUnits;
  /** The walkthrough; null while working. */
  readonly walk: Walk | null;
  /** Print sheet over the page; null while working. */
  readonly sheet: SheetName | null;
  /** Index of the card of the toolbox talk; null without a talk. */
  readonly card: number | null;
  /** Page of the editor; null while only looking. */
  readonly editor: EditorName | null;
  /** Parts chosen to be changed; empty for none. */
  readonly selected: readonly Selected[];
  /** Variant held against the scene; null for none. */
  readonly compared: string | null;
  /** Lines of a drawing under the plan; null without. */
  readonly underlayLines: UnderlayLines | null;
  /** What became of the 3D view. */
  readonly canvas: 'starting' | 'ready' | 'lost' | 'unavailable';
  /** Draws what is seen into a picture of any size; null without a 3D view. */
  readonly takePicture: TakePicture | null;
  /** Tells where one stands; null without a 3D view. */
  readonly stand: (() => ViewStand) | null;
}

export interface ViewActions {
  showStage(stage: number | null): void;
  stepStage(step: number, stageCount: number): void;
  setPlaying(playing: boolean): void;
  setExplode(explode: number): void;
  showMap(map: MapKind | null): void;
  setMapOn(mapOn: MapPlace): void;
  setSitePlan(sitePlan: boolean): void;
  toggleKind(kind: PartKind): void;
  toggleZone(zone: string): void;
  isolateKind(kind: PartKind | null): void;
  isolateZone(zone: string | null): void;
  showAll(): void;
  setCut(cut: Partial<Cut>): void;
  pickCell(cell: number | null): void;
  pickBay(bay: string | null): void;
  showHeapsOf(material: string): void;
  /** A vehicle at a place of its line, or none. */
  chooseRun(run: ChosenRun | null): void;
  moveRun(frontM: number): void;
  chooseWheel(wheel: number | null): void;
  chooseFoot(foot: FootLayer): void;
  setDriving(driving: boolean): void;
  /** Blocks one outlet, all others working; or none. */
  blockOutlet(outlet: string | null): void;
  holdWater(depthMm: number | null): void;
  /** Shows another section, or changes how it is drawn. */
  showSection(section: Pick<SectionView, 'line'> & Partial<SectionView>): void;
  closeSection(): void;
  /** The points of a line being drawn; null ends drawing without a section. */
  drawSection(points: readonly PointM[] | null): void;
  setTakePicture(takePicture: TakePicture | null): void;
  setStand(stand: (() => ViewStand) | null): void;
  moveCamera(to: CameraWish['to']): void;
  setStillMotion(still: boolean): void;
  setTheme(theme: Theme): void;
  setLanguage(language: Language): void;
  setUnits(units: Partial<ShownUnits>): void;
  /** Puts the work aside as it is shown and begins the walkthrough. */
  startWalk(): void;
  setWalk(walk: Partial<Walk>): void;
  /** Back to the work as it was shown. */
  leaveWalk(): void;
  showSheet(sheet: SheetName | null): void;
  /** Goes to a card of the toolbox talk; null leaves it. */
  showCard(card: number | null): void;
  /** Goes to a page of the editor; null leaves it. */
  edit(editor: EditorName | null): void;
  select(selected: readonly Selected[]): void;
  /** Holds a variant against the scene, or none. */
  compare(variant: string | null): void;
  setUnderlayLines(lines: UnderlayLines | null): void;
  setCanvas(canvas: ViewState['canvas']): void;
  /** Everything back to the start, for a newly opened scene; keeps the canvas and motion settings. */
  reset(): void;
}

export type ViewStore = StoreApi<ViewState & ViewActions>;

const START = {
  stage: null,
  playing: false,
  explode: 0,
  map: null,
  mapOn: 'top',
  sitePlan: true,
  hiddenKinds: new Set<PartKind>(),
  hiddenZones: new Set<string>(),
  onlyKind: null,
  onlyZone: null,
  cut: { on: false, lookDeg: 0, position: 0.5 },
  cell: null,
  bay: null,
  heapOf: null,
  run: null,
  wheel: null,
  foot: { materialId: '', nth: 0 },
  driving: false,
  blocked: null,
  heldMm: null,
  section: null,
  sectionPoints: null,
  walk: null,
  sheet: null,
  card: null,
  editor: null,
  selected: [],
  underlayLines: null,
  compared: null,
} as const satisfies Partial<ViewState>;

/** Before the 3D view stands. */
const NO_VIEW = { canvas: 'starting', takePicture: null, stand: null } as const satisfies Partial<ViewState>;

function toggled<T>(set: ReadonlySet<T>, item: T): ReadonlySet<T> {
  const next = new Set(set);
  if (!next.delete(item)) next.add(item);
  return next;
}

/**
 * A new view store.
 * @param language - spoken from the start
 * @param units - shown from the start
 * @returns store with its actions
 */
export function createViewStore(language: Language = 'en', units: ShownUnits = USUAL_UNITS): ViewStore {
  /** What the work looked like when the walkthrough began. */
  let aside: Partial<ViewState> = {};
  return createStore<ViewState & ViewActions>()((set, get) => ({
    ...START,
    camera: { count: 0, to: 'home' },
    stillMotion: false,
    theme: 'paper',
    language,
    units,
    ...NO_VIEW,
    showStage: (stage) => set({ stage }),
    // One step before the first stage is the bare deck's first stage, one after the last is the finished garden.
    stepStage: (step, stageCount) => {
      const at = get().stage ?? stageCount;
      const next = Math.min(stageCount, Math.max(0, at + step));
      set({ stage: next === stageCount ? null : next });
    },
    setPlaying: (playing) => set({ playing }),
    setExplode: (explode) => set({ explode: Math.min(1, Math.max(0, explode)) }),
    showMap: (map) => set({ map }),
    setMapOn: (mapOn) => set({ mapOn }),
    setSitePlan: (sitePlan) => set({ sitePlan }),
    toggleKind: (kind) => set({ hiddenKinds: toggled(get().hiddenKinds, kind) }),
    toggleZone: (zone) => set({ hiddenZones: toggled(get().hiddenZones, zone) }),
    isolateKind: (onlyKind) => set({ onlyKind }),
    isolateZone: (onlyZone) => set({ onlyZone }),
    showAll: () => set({ hiddenKinds: new Set(), hiddenZones: new Set(), onlyKind: null, onlyZone: null }),
    setCut: (cut) => set({ cut: { ...get().cut, ...cut } }),
    pickCell: (cell) => set({ cell }),
    pickBay: (bay) => set({ bay }),
    showHeapsOf: (heapOf) => set({ heapOf }),
    // Another vehicle has other wheels and layers.
    chooseRun: (run) => set(run?.id === get().run?.id ? { run } : { run, wheel: null, foot: START.foot, driving: false }),
    moveRun: (frontM) => {
      const { run } = get();
      if (run !== null) set({ run: { ...run, frontM } });
    },
    chooseWheel: (wheel) => set({ wheel }),
    chooseFoot: (foot) => set({ foot }),
    setDriving: (driving) => set({ driving }),
    // Without a blocked outlet its map has nothing to show.
    blockOutlet: (blocked) => set({ blocked, heldMm: null, ...(blocked === null && get().map === 'blocked' ? { map: 'ponding' } : {}) }),
    holdWater: (heldMm) => set({ heldMm }),
    ...sectionActions(set, get),
    moveCamera: (to) => set({ camera: { count: get().camera.count + 1, to } }),
    ...settingActions(set, get),
    ...pageActions(set, get),
    startWalk: () => {
      const { stage, explode, map, sitePlan, hiddenKinds, hiddenZones, onlyKind, onlyZone, cut, cell, bay, run, walk } = get();
      if (walk !== null) return;
      aside = { stage, explode, map, sitePlan, hiddenKinds, hiddenZones, onlyKind, onlyZone, cut, cell, bay, run };
      set({ ...START, underlayLines: get().underlayLines, sitePlan: false, walk: FIRST_STEP });
    },
    setWalk: (change) => {
      const { walk } = get();
      if (walk !== null) set({ walk: { ...walk, ...change } });
    },
    leaveWalk: () => {
      if (get().walk === null) return;
      set({ ...aside, walk: null, playing: false, camera: { count: get().camera.count + 1, to: 'home' } });
    },
    setUnderlayLines: (underlayLines) => set({ underlayLines }),
    setCanvas: (canvas) => set({ canvas }),
    reset: () => set({ ...START, camera: { count: get().camera.count + 1, to: 'home' } }),
  }));
}

type SectionActions = Pick<ViewActions, 'showSection' | 'closeSection' | 'drawSection' | 'setTakePicture' | 'setStand'>;

function sectionActions(set: (change: Partial<ViewState>) => void, get: () => ViewState): SectionActions {
  return {
    showSection: (section) => set({ section: { ofCut: false, ...SECTION_START, ...get().section, ...section }, sectionPoints: null }),
    closeSection: () => set({ section: null, sectionPoints: null }),
    drawSection: (sectionPoints) => set({ sectionPoints }),
    setTakePicture: (takePicture) => set({ takePicture }),
    setStand: (stand) => set({ stand }),
  };
}

type SettingActions = Pick<ViewActions, 'setStillMotion' | 'setTheme' | 'setLanguage' | 'setUnits'>;

function settingActions(set: (change: Partial<ViewState>) => void, get: () => ViewState): SettingActions {
  return {
    setStillMotion: (stillMotion) => set({ stillMotion }),
    setTheme: (theme) => set({ theme }),
    setLanguage: (language) => set({ language }),
    setUnits: (units) => set({ units: { ...get().units, ...units } }),
  };
}

/** What stands before the model or beside it. */
function pageActions(
  set: (change: Partial<ViewState>) => void,
  get: () => ViewState,
): Pick<ViewActions, 'showSheet' | 'showCard' | 'edit' | 'select' | 'compare'> {
  return {
    showSheet: (sheet) => set({ sheet }),
    showCard: (card) => set({ card }),
    edit: (editor) => set({ editor }),
    select: (selected) => set({ selected }),
    // Without a variant its map has nothing to show.
    compare: (compared) => set({ compared, ...(compared === null && get().map === 'difference' ? { map: null } : {}) }),
  };
}
