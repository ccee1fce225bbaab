/** A file being read: how far it is, what was found and asked, what each layer is, what would be taken over. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Answers, DrawingBox, LayerRole, LayerRoles, Mend } from '../model/drawing.ts';
import { type DrawnPart, type PartEntries, STARTER, type Taking, type Takings } from '../model/drawn-parts.ts';
import type { DraftAsk, DraftView, Importer, ReadAsk, ReadView, Taken } from '../model/importer.ts';
import type { Issue } from '../model/issue.ts';
import type { PolygonM } from '../model/scene-file.ts';
import type { SceneStore } from './scene-store.ts';
import type { ViewStore } from './view-store.ts';

/** A worker that reads; while it does, only ending it stops it. */
export interface ImportWorker {
  readonly importer: Importer;
  stop(): void;
  /** Rejects where the worker dies of itself, as when memory runs out. */
  readonly crash: Promise<never>;
}

/** A scene of its own, into the scene that is open, or lines to draw over in its plan. */
export const IMPORT_TARGETS = ['new', 'into', 'underlay'] as const;
export type ImportTarget = (typeof IMPORT_TARGETS)[number];

export type Opened =
  | { readonly kind: 'drawing' | 'stopped' | 'unreadable' | 'crashed' }
  | { readonly kind: 'scene'; readonly text: string; readonly mends: readonly Mend[] }
  | { readonly kind: 'refused'; readonly issues: readonly Issue[] };

export interface ImportState {
  /** The file on the page; null while the page is closed. */
  readonly file: { readonly name: string; readonly bytes: number } | null;
  /** How much is read, 0 to 1; null while nothing is being read. */
  readonly share: number | null;
  readonly read: ReadView | null;
  readonly answers: Answers;
  readonly roles: LayerRoles;
  readonly entries: PartEntries;
  readonly target: ImportTarget;
  readonly takings: Takings;
  readonly draft: DraftView | null;
  /** The draft is not yet that of the roles and entries. */
  readonly drafting: boolean;
  /** The worker died while the page was open. */
  readonly crashed: boolean;
}

export interface ImportActions {
  /** Reads a file; drawings stay on the page, all else is handed back. */
  open(file: File): Promise<Opened>;
  /** Answers a question and reads again with it; null takes the answer back. */
  answer(question: string, value: string | null): void;
  setRole(layer: string, role: LayerRole): void;
  setEntries(entries: PartEntries): void;
  setTarget(target: ImportTarget): void;
  setTaking(part: DrawnPart, taking: Taking): void;
  /** The parts to be taken over, as they now stand; `on` is the date of their history. Null where there are none. */
  take(on: string): Promise<Taken | null>;
  /** Stops whatever is going on and leaves the page. */
  close(): void;
}

export type ImportStore = StoreApi<ImportState & ImportActions>;

const CLOSED: ImportState = {
  file: null,
  share: null,
  read: null,
  answers: {},
  roles: {},
  entries: { buildup: STARTER },
  target: 'new',
  takings: {},
  draft: null,
  drafting: false,
  crashed: false,
};

/**
 * A new import store.
 * @param start - starts a worker
 * @param scene - the open scene, which a drawing may go into
 * @param view - whose language is spoken
 * @returns store with its actions
 */
export function createImportStore(start: () => ImportWorker, scene: SceneStore, view: ViewStore): ImportStore {
  const store: ImportStore = createStore<ImportState & ImportActions>()((set, get) => ({
    ...CLOSED,
    open: (file) => session.open(file),
    answer: (question, value) => {
      const { [question]: _, ...others } = get().answers;
      // Another separator makes other columns.
      const { columns: __, ...withoutColumns } = others;
      const kept = question === 'separator' ? withoutColumns : others;
      set({ answers: value === null ? kept : { ...kept, [question]: value } });
      void session.readAgain();
    },
    setRole: (layer, role) => {
      set({ roles: { ...get().roles, [layer]: role } });
      void session.refreshDraft();
    },
    setEntries: (entries) => {
      set({ entries });
      void session.refreshDraft();
    },
    setTarget: (target) => {
      set({ target });
      void session.retarget();
    },
    setTaking: (part, taking) => set({ takings: { ...get().takings, [part]: taking } }),
    take: (on) => session.take(on),
    close: () => {
      session.stop();
      set(CLOSED);
    },
  }));
  const session = new ImportSession(start, { store, scene, view });
  view.subscribe((now, before) => {
    if (now.language !== before.language) void session.tellAgain();
  });
  return store;
}

interface Stores {
  readonly store: ImportStore;
  readonly scene: SceneStore;
  readonly view: ViewStore;
}

/** The worker of one file after the other; answers of one that was stopped are dropped. */
class ImportSession {
  readonly #start: () => ImportWorker;
  readonly #stores: Stores;
  #worker: ImportWorker | null = null;
  #reading = false;
  #file: File | null = null;
  /** Rises with all that makes earlier answers worthless. */
  #ticket = 0;
  #draftTicket = 0;
  /** Whether the last reading knew of the deck that is open. */
  #knewDeck = false;

  constructor(start: () => ImportWorker, stores: Stores) {
    this.#start = start;
    this.#stores = stores;
  }

  stop(): void {
    this.#ticket += 1;
    this.#draftTicket += 1;
    if (!this.#reading) {
      void this.#worker?.importer.forget();
      return;
    }
    this.#worker?.stop();
    this.#worker = null;
    this.#reading = false;
  }

  async open(file: File): Promise<Opened> {
    this.stop();
    this.#file = file;
    this.#knewDeck = false;
    const { store } = this.#stores;
    store.setState({ ...CLOSED, file: { name: file.name, bytes: file.size }, share: 0 });
    const read = await this.#read((importer, ask, onProgress) => importer.open(file, file.name, ask, onProgress));
    if (typeof read === 'string') {
      if (read !== 'stopped') store.getState().close();
      return { kind: read };
    }
    const { kind, sceneText, mends, issues, layers, questions } = read;
    const nothing = kind === null || (layers.length === 0 && questions.length === 0);
    if (kind === 'scene' || nothing) {
      store.getState().close();
      return kind === 'scene' ? { kind, text: sceneText ?? '', mends } : { kind: 'refused', issues };
    }
    const roles = rolesOf(read, {});
    const into = this.#deck() !== null && !Object.values(roles).includes('outline');
    store.setState({ read, share: null, roles, target: into ? 'into' : 'new' });
    await this.retarget();
    return { kind: 'drawing' };
  }

  /** Reads again with the answers as they now stand; what is being read is stopped. */
  async readAgain(): Promise<void> {
    const { store } = this.#stores;
    const busy = this.#reading;
    const file = this.#file;
    if (busy) this.stop();
    store.setState({ share: 0 });
    const read = await this.#read((importer, ask, onProgress) =>
      busy && file !== null ? importer.open(file, file.name, ask, onProgress) : importer.again(ask, onProgress),
    );
    if (read === 'stopped') return;
    if (typeof read === 'string') {
      store.setState({ share: null, crashed: true });
      return;
    }
    store.setState({ read, share: null, roles: rolesOf(read, store.getState().roles) });
    await this.refreshDraft();
  }

  /** With another target the drawing may have to lie otherwise. */
  async retarget(): Promise<void> {
    const { target, read } = this.#stores.store.getState();
    const deck = this.#deck();
    const apart = target !== 'new' && deck !== null && read?.box != null && !meet(read.box, boxOf(deck));
    if (apart || (target === 'new' && this.#knewDeck)) await this.readAgain();
    else await this.refreshDraft();
  }

  async refreshDraft(): Promise<void> {
    const { store } = this.#stores;
    const own = ++this.#draftTicket;
    const worker = this.#worker;
    // A reading that goes on ends with a draft.
    if (worker === null || this.#reading) return;
    store.setState({ drafting: true });
    const draft = await Promise.race([worker.importer.draft(this.#draftAsk()), worker.crash]).catch(() => null);
    if (own !== this.#draftTicket || worker !== this.#worker) return;
    store.setState(draft === null ? { drafting: false, crashed: true } : { drafting: false, draft });
  }

  async tellAgain(): Promise<void> {
    const { store, view } = this.#stores;
    const worker = this.#worker;
    if (worker === null || this.#reading || store.getState().read === null) return;
    const own = this.#ticket;
    const read = await worker.importer.told(view.getState().language);
    if (own !== this.#ticket) return;
    store.setState({ read });
    await this.refreshDraft();
  }

  async take(on: string): Promise<Taken | null> {
    if (this.#worker === null) return null;
    try {
      return await Promise.race([this.#worker.importer.take(this.#draftAsk(), on), this.#worker.crash]);
    } catch {
      this.#stores.store.setState({ crashed: true });
      return null;
    }
  }

  /** What was read, or why nothing was. */
  async #read(
    work: (importer: Importer, ask: ReadAsk, onProgress: (share: number) => void) => Promise<ReadView>,
  ): Promise<ReadView | 'stopped' | 'unreadable' | 'crashed'> {
    const { store, view } = this.#stores;
    const own = ++this.#ticket;
    const worker = this.#worker ?? this.#start();
    this.#worker = worker;
    this.#reading = true;
    const { answers, target } = store.getState();
    const deck = target === 'new' ? null : this.#deck();
    this.#knewDeck = deck !== null;
    const ask: ReadAsk = { answers, around: deck && boxOf(deck), language: view.getState().language };
    const onProgress = (share: number) => {
      if (own === this.#ticket) store.setState({ share });
    };
    let crashed = false;
    worker.crash.catch(() => {
      crashed = true;
    });
    try {
      const read = await Promise.race([work(worker.importer, ask, onProgress), worker.crash]);
      if (own !== this.#ticket) return 'stopped';
      this.#reading = false;
      // Another language was chosen meanwhile.
      const { language } = view.getState();
      return language === ask.language ? read : await worker.importer.told(language);
    } catch {
      if (own !== this.#ticket) return 'stopped';
      this.#reading = false;
      if (crashed) this.#worker = null;
      return crashed ? 'crashed' : 'unreadable';
    }
  }

  #draftAsk(): DraftAsk {
    const { store, view } = this.#stores;
    const { roles, entries, target } = store.getState();
    return { roles, entries, deck: target === 'new' ? null : this.#deck(), language: view.getState().language };
  }

  #deck(): PolygonM | null {
    return this.#stores.scene.getState().snapshot?.scene.deck.outline ?? null;
  }
}

/** What a person chose stays; new layers get what they most likely are. */
function rolesOf({ layers }: ReadView, chosen: LayerRoles): LayerRoles {
  return Object.fromEntries(layers.map(({ name, guess }) => [name, (Object.hasOwn(chosen, name) && chosen[name]) || guess || 'ignore']));
}

function boxOf(points: PolygonM): DrawingBox {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of points) {
    box.minX = Math.min(box.minX, x);
    box.minY = Math.min(box.minY, y);
    box.maxX = Math.max(box.maxX, x);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}

function meet(a: DrawingBox, b: DrawingBox): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}
