/** Edits wait for their turn; while something is dragged, the report comes when none waits, or when it has long been due. */

import type { EditAnswer, Engine, MapAsk, OpenAnswer, Within } from '../model/engine.ts';
import type { HistoryView, PartsEdit } from '../model/history.ts';
import type { Issue } from '../model/issue.ts';
import type { SceneActions, SceneState, Travelled } from './scene-store.ts';

export interface Edited {
  readonly answer: EditAnswer;
  readonly travelled: Travelled | null;
  /** Takes the errors to where the edit was made, instead of a sheet over the page. */
  readonly told?: (errors: readonly Issue[]) => void;
}

type EditActions = Pick<SceneActions, 'setThickness' | 'edit' | 'travel' | 'newGesture'>;
type Queue = ReturnType<typeof latestOfEach<Edited | null>>['push'];

interface Here extends Pick<SceneState, 'snapshot'> {
  readonly history: HistoryView;
  readonly mapAsked: MapAsk | null;
}

/** What changes the scene: each waits for its turn. */
export function editActions(engine: Engine, get: () => Here, push: Queue): EditActions {
  let gestures = 0;
  // Asked when the turn comes: the map may have changed by then.
  const within = (gesture: number | undefined): Within | undefined =>
    gesture === undefined ? undefined : { gesture, map: get().mapAsked };
  return {
    setThickness: (buildUp, layer, thicknessMm, gesture) =>
      push(`${buildUp} ${layer} ${gesture}`, async () => ({
        answer: await answered(engine.setThickness(buildUp, layer, thicknessMm, within(gesture))),
        travelled: null,
      })),
    edit: (make, edit: PartsEdit, gesture) => {
      const kind = `parts ${gesture ?? `alone ${++gestures}`}`;
      return new Promise((told) => {
        const job = async () => {
          const { snapshot } = get();
          const answer = snapshot && (await answered(engine.edit(make(snapshot.scene), edit, within(gesture))));
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

/** A fault of the program itself is told like any other, so that nothing waits for ever. */
export async function answered<Answer>(work: Promise<Answer>): Promise<Answer | Extract<OpenAnswer, { ok: false }>> {
  try {
    return await work;
  } catch (error) {
    const got = error instanceof Error ? error.message : String(error);
    const mend = 'This is a fault of Loamdeck, not of the file. Save the file, reload the page, and report what you did.';
    return { ok: false, issues: [{ code: 'PROGRAM_FAULT', level: 'error', path: '', got, expected: 'a finished calculation', mend }] };
  }
}

/** What is to be done once nothing waits, or even before. */
export interface Aftermath {
  /** So long due that the next edit has to wait for it. */
  readonly overdue: () => boolean;
  /** `givesWay`: it may be left off for an edit. */
  readonly run: (givesWay: boolean) => Promise<void>;
}

/**
 * Runs one job at a time and, of those that come meanwhile, only the latest of each kind: a dragged slider never queues
 * up, and an edit of one layer never swallows that of another.
 */
export function latestOfEach<T>(
  done: (answer: T) => Promise<void>,
  after: Aftermath,
): {
  /** `dropped` is called for a job that never runs. */
  push(kind: string, job: () => Promise<T>, dropped?: () => void): void;
  drop(): void;
  /** Nothing more begins until `release`, called once for each. */
  hold(): void;
  release(): void;
} {
  let running = false;
  let holds = 0;
  const waiting = new Map<string, { readonly job: () => Promise<T>; readonly dropped?: (() => void) | undefined }>();
  const first = () => (holds === 0 ? waiting.entries().next().value : undefined);
  async function run(): Promise<void> {
    running = true;
    try {
      for (let next = first(); next; next = first()) {
        waiting.delete(next[0]);
        await done(await next[1].job());
        if (after.overdue()) await after.run(false);
      }
    } finally {
      running = false;
      // What went wrong after one answer keeps neither the next from its turn nor the report away.
      if (first()) void run();
      else await after.run(true);
    }
  }
  return {
    push(kind, job, dropped) {
      waiting.get(kind)?.dropped?.();
      waiting.set(kind, { job, dropped });
      if (!running && holds === 0) void run();
    },
    drop() {
      for (const { dropped } of waiting.values()) dropped?.();
      waiting.clear();
    },
    hold() {
      holds++;
    },
    release() {
      holds--;
      if (!running && first()) void run();
    },
  };
}
