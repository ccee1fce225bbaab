/** An engine whose answers come when the test says. */

import type { Engine, OpenAnswer, Snapshot } from '../../src/model/engine.ts';
import { type HistoryView, NO_HISTORY } from '../../src/model/history.ts';
import type { Issue } from '../../src/model/issue.ts';

export const ISSUE: Issue = { code: 'TEST', level: 'error', path: 'zones[0]', got: 'this', expected: 'that', mend: 'Do so.' };

export const refusal: OpenAnswer = { ok: false, issues: [ISSUE] };

/** Answers with a snapshot that can be told apart by its scene's name. */
export function opened(name: string, warnings: readonly Issue[] = [], history: HistoryView = NO_HISTORY): OpenAnswer {
  return { ok: true, snapshot: { scene: { name }, history } as Snapshot, warnings };
}

export function emptyEngine(): Engine {
  return {
    speak: async () => null,
    open: async () => refusal,
    setThickness: async () => refusal,
    edit: async () => refusal,
    finish: async () => null,
    compareVariant: async () => ({ ok: false, issues: [ISSUE] }),
    compareFile: async () => ({ ok: false, issues: [ISSUE] }),
    sceneText: async () => ({ name: 'a.scene.json', text: '{}' }),
    markSaved: async () => NO_HISTORY,
    travel: async () => null,
    map: async () => {
      throw new Error('no map was to be asked for');
    },
    blockedOutlet: async () => null,
    coreLog: async () => null,
    runAt: async () => null,
    sources: async () => [],
    catalogue: async () => ({ materials: [], vegetation: [], vehicles: [] }),
    derive: async () => null,
    exportFile: async () => {
      throw new Error('no file was to be asked for');
    },
    section: async () => {
      throw new Error('no section was to be asked for');
    },
    exportDrawn: async () => {
      throw new Error('no drawing was to be asked for');
    },
    exportHandover: async () => {
      throw new Error('no handover was to be asked for');
    },
  };
}

/** One call that waits for its answer. */
export interface Call {
  readonly name: keyof Engine;
  readonly args: readonly unknown[];
  // biome-ignore lint/suspicious/noExplicitAny: each call has its own answer
  answer(value: any): Promise<void>;
  fail(why: Error): Promise<void>;
}

/** Collects calls; each is answered by hand, in any order. */
export function handEngine(): { engine: Engine; calls: Call[]; named(name: keyof Engine): Call[] } {
  const calls: Call[] = [];
  const ask =
    (name: keyof Engine) =>
    (...args: unknown[]) =>
      // biome-ignore lint/suspicious/noExplicitAny: each call has its own answer
      new Promise<any>((resolve, reject) => {
        const settle = async (end: () => void) => {
          end();
          // Lets everything that waited for the answer run.
          await new Promise((done) => setTimeout(done));
        };
        calls.push({ name, args, answer: (value) => settle(() => resolve(value)), fail: (why) => settle(() => reject(why)) });
      });
  const engine: Engine = {
    speak: ask('speak'),
    open: ask('open'),
    setThickness: ask('setThickness'),
    edit: ask('edit'),
    finish: ask('finish'),
    compareVariant: ask('compareVariant'),
    compareFile: ask('compareFile'),
    sceneText: ask('sceneText'),
    markSaved: ask('markSaved'),
    travel: ask('travel'),
    map: ask('map'),
    blockedOutlet: ask('blockedOutlet'),
    coreLog: ask('coreLog'),
    runAt: ask('runAt'),
    sources: ask('sources'),
    catalogue: ask('catalogue'),
    derive: ask('derive'),
    exportFile: ask('exportFile'),
    section: ask('section'),
    exportDrawn: ask('exportDrawn'),
    exportHandover: ask('exportHandover'),
  };
  return { engine, calls, named: (name) => calls.filter((call) => call.name === name) };
}
