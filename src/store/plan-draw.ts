/** How the plan is worked on: tool, points drawn so far, what is shown and locked. The scene itself is not in here. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Issue } from '../model/issue.ts';
import type { PointM } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';

/** What can be drawn; what it becomes in the scene is told by `ui/facts/drawn-kinds.ts`. */
export const DRAWN_KINDS = [
  'zone',
  'hole',
  'finish level',
  'finish breakline',
  'bay',
  'outline',
  'opening',
  'upstand',
  'threshold',
  'outlet',
  'overflow',
  'column',
  'level',
  'breakline',
  'tree',
  'line',
  'block',
  'retaining',
  'route',
  'set-up',
  'movement',
  'access point',
  'stockpile',
  'plant',
] as const;
export type DrawnKind = (typeof DRAWN_KINDS)[number];

/** Sheets of the plan that can be hidden or locked by themselves. */
export const PLAN_LAYERS = [
  'zone',
  'bay',
  'outline',
  'opening',
  'edge',
  'outlet',
  'column',
  'levels',
  'finish',
  'object',
  'route',
  'set-up area',
  'access point',
  'stockpile',
  'plant',
  'map',
  'grid',
] as const;
export type PlanLayer = (typeof PLAN_LAYERS)[number];

export const PLAN_TABS = ['chosen', 'parts', 'bays', 'layers'] as const;
export type PlanTab = (typeof PLAN_TABS)[number];

/** `box`: chooses several, by a box drawn round them or one after the other. */
export type PlanTool = 'choose' | 'box' | 'draw' | 'split' | 'scale';

/** Points are being set. */
export const isDrawing = (tool: PlanTool): boolean => tool !== 'choose' && tool !== 'box';

/** What is wrong, or worth knowing, told beside the drawing. */
export interface PlanProblem {
  /** Sentences of an edit that was refused … */
  readonly issues: readonly Issue[];
  /** … or one of the drawing itself. */
  readonly says?: string;
  /** Where it is, coordinates of the file. */
  readonly at: PointM | null;
  /** Nothing is wrong. */
  readonly note?: boolean;
  /** Outline as it would have become, or that is meant. */
  readonly ghost?: readonly PointM[];
}

/** Which place of the deck is at which pixel. */
export interface Surface {
  /** Pixels per metre. */
  readonly scalePx: number;
  /** Where the local origin is drawn, from the upper left corner [px]. */
  readonly panPx: PointM;
}

/** Where the pointer is, or what it has caught: coordinates of the file. */
export interface PlanAim {
  readonly at: PointM;
  /** Kind of what is caught; null for nothing. */
  readonly caught: string | null;
  readonly guide: readonly [PointM, PointM] | null;
}

/** A box being drawn round parts, by two corners of it: coordinates of the file. */
export interface PlanBox {
  readonly from: PointM;
  readonly to: PointM;
  /** What lies wholly in it. */
  readonly inside: readonly Selected[];
}

export interface PlanVertex {
  /** Hole, building line or, where absent, the outline or line itself. */
  readonly piece?: number | 'building' | undefined;
  readonly index: number;
}

/** A picture below the plan. It stays on this device. */
export interface Underlay {
  readonly name: string;
  /** The picture itself, as a data address. */
  readonly url: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Similarity from its pixels (y down) to coordinates of the file, as `src/edit/underlay.ts` has it. */
  readonly place: { readonly a: number; readonly b: number; readonly dx: number; readonly dy: number };
  /** 0 … 1. */
  readonly opacity: number;
  readonly shown: boolean;
}

export interface PlanState {
  /** Null until the plan knows its size. */
  readonly surface: Surface | null;
  /** Of the drawing on the page; nothing until it is known. */
  readonly sizePx: { readonly width: number; readonly height: number };
  /** File and place of the deck it was made for. */
  readonly of: string;
  readonly tool: PlanTool;
  readonly kind: DrawnKind;
  readonly rectangle: boolean;
  /** Taken up on another page, before the plan showed its deck. */
  readonly takenUp: boolean;
  /** Points set so far, coordinates of the file. */
  readonly points: readonly PointM[];
  readonly aim: PlanAim | null;
  readonly box: PlanBox | null;
  /** What was typed for parts of a kind that are still to be drawn. */
  readonly given: Readonly<Partial<Record<DrawnKind, object>>>;
  /** Point of the chosen part that is chosen itself. */
  readonly vertex: PlanVertex | null;
  readonly snapping: boolean;
  /** Points that several parts have in common move together. */
  readonly shared: boolean;
  readonly hidden: ReadonlySet<PlanLayer>;
  readonly locked: ReadonlySet<PlanLayer>;
  readonly problem: PlanProblem | null;
  readonly underlay: Underlay | null;
  readonly tab: PlanTab;
  /** The plan over the model too. */
  readonly wide: boolean;
  /** A wish to see a place; `count` rises with each. */
  readonly look: { readonly count: number; readonly at: PointM | 'all' };
}

export interface PlanActions {
  setSurface(surface: Surface): void;
  setSize(sizePx: PlanState['sizePx']): void;
  /** Another deck is shown: what was under way in the one before is put down. */
  showDeck(of: string, surface: Surface): void;
  /** Back to choosing; what was being drawn is gone. */
  choose(): void;
  draw(kind: DrawnKind, rectangle?: boolean): void;
  /** The same from another page: the tool stays in the hand when the plan then shows its deck. */
  takeUp(kind: DrawnKind, rectangle: boolean): void;
  use(tool: PlanTool): void;
  setPoints(points: readonly PointM[]): void;
  setAim(aim: PlanAim | null): void;
  setBox(box: PlanBox | null): void;
  give(kind: DrawnKind, given: object): void;
  setVertex(vertex: PlanVertex | null): void;
  tell(problem: PlanProblem | null): void;
  toggle(what: 'snapping' | 'shared' | 'wide'): void;
  toggleLayer(of: 'hidden' | 'locked', layer: PlanLayer): void;
  setUnderlay(underlay: Underlay | null): void;
  showTab(tab: PlanTab): void;
  lookAt(at: PointM | 'all'): void;
}

export type PlanStore = StoreApi<PlanState & PlanActions>;

/** Nothing of what was being drawn stays. */
const PUT_DOWN = { points: [], vertex: null, problem: null, takenUp: false } as const;

export function createPlanStore(): PlanStore {
  return createStore<PlanState & PlanActions>()((set, get) => ({
    ...PUT_DOWN,
    surface: null,
    sizePx: { width: 0, height: 0 },
    of: '',
    tool: 'choose',
    kind: 'zone',
    rectangle: false,
    aim: null,
    box: null,
    given: {},
    snapping: true,
    shared: true,
    hidden: new Set<PlanLayer>(),
    locked: new Set<PlanLayer>(),
    underlay: null,
    tab: 'parts',
    wide: false,
    look: { count: 0, at: 'all' },
    setSurface: (surface) => set({ surface }),
    setSize: (sizePx) => set({ sizePx }),
    showDeck: (of, surface) => set({ ...PUT_DOWN, tool: get().takenUp ? 'draw' : 'choose', underlay: null, of, surface }),
    choose: () => set({ ...PUT_DOWN, tool: 'choose' }),
    draw: (kind, rectangle = get().rectangle) => set({ ...PUT_DOWN, tool: 'draw', kind, rectangle }),
    takeUp: (kind, rectangle) => set({ ...PUT_DOWN, tool: 'draw', kind, rectangle, takenUp: true }),
    use: (tool) => set({ ...PUT_DOWN, tool }),
    setPoints: (points) => set({ points, problem: null }),
    setAim: (aim) => set({ aim }),
    setBox: (box) => set({ box }),
    give: (kind, given) => set({ given: { ...get().given, [kind]: given } }),
    setVertex: (vertex) => set({ vertex }),
    tell: (problem) => set({ problem }),
    toggle: (what) => set({ [what]: !get()[what] }),
    toggleLayer: (of, layer) => {
      const next = new Set(get()[of]);
      if (!next.delete(layer)) next.add(layer);
      set({ [of]: next });
    },
    setUnderlay: (underlay) => set({ underlay }),
    showTab: (tab) => set({ tab }),
    lookAt: (at) => set({ look: { count: get().look.count + 1, at } }),
  }));
}
