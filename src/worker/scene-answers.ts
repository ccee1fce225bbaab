/** Answers to openings and edits: whole, or first what is calculated and then, unless an edit comes before, the report. */

import type { EditAnswer, OpenAnswer, Snapshot, Spoken, Within } from '../model/engine.ts';
import { runViews } from '../project/run-views.ts';
import { type ChangeAnswer, isDeckMap, materialNames, type Session, type SessionAnswer } from '../project/session.ts';
import { stageViews } from '../project/stage-views.ts';
import { breath } from './breath.ts';
import type { DrawnScene } from './drawn-scene.ts';

/** An edit waits no longer than this, or than one part of the report takes [ms]. */
const STRETCH_MS = 6;

export class SceneAnswers {
  private readonly session: Session;
  private readonly drawn: DrawnScene;
  /** How often the scene has become another one. */
  private turn = 0;

  constructor(session: Session, drawn: DrawnScene) {
    this.session = session;
    this.drawn = drawn;
  }

  /** With its report. */
  whole(work: () => SessionAnswer): OpenAnswer {
    const started = performance.now();
    const { project, issues } = work();
    return project ? this.snapshot(performance.now() - started) : { ok: false, issues: this.session.tell(issues) };
  }

  /** Within a gesture without it, where the report before can stand beside the scene. */
  edited(work: (gesture: number | null) => ChangeAnswer, within: Within | undefined): EditAnswer {
    const { session } = this;
    const started = performance.now();
    const answer = work(within?.gesture ?? null);
    if (answer.changed === null) return { ok: false, issues: session.tell(answer.issues) };
    const evaluatedMs = performance.now() - started;
    if (within === undefined || !answer.likeReported) return this.snapshot(evaluatedMs);
    this.turn++;
    const map = within.map && isDeckMap(within.map.kind) ? session.map(within.map.kind, within.map.stage) : null;
    return { ok: true, preview: { ...this.drawn.draw(session, evaluatedMs), map }, warnings: session.warnings() };
  }

  /** What a preview left out; null where the scene has become another one before it was made. */
  async finish(givesWay: boolean): Promise<Spoken | null> {
    const own = this.turn;
    for (;;) {
      if (givesWay) await breath();
      if (this.turn !== own) return null;
      const until = performance.now() + STRETCH_MS;
      do {
        if (this.session.reportStep()) return this.spoken();
      } while (!givesWay || performance.now() < until);
    }
  }

  /** All that has words in it, in the language spoken. */
  spoken(): Spoken {
    return { ...this.words(), buildUps: this.session.buildUps(), warnings: this.session.warnings() };
  }

  private snapshot(evaluatedMs: number): OpenAnswer {
    this.turn++;
    const snapshot: Snapshot = { ...this.drawn.draw(this.session, evaluatedMs), ...this.words() };
    return { ok: true, snapshot, warnings: this.session.warnings() };
  }

  private words(): Omit<Spoken, 'warnings' | 'buildUps'> {
    const project = this.session.spoken();
    return {
      report: project.report,
      stages: stageViews(project),
      runs: runViews(project),
      materialNames: materialNames(project),
    };
  }
}
