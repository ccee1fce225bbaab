/** One search for lighter zones at a time, in a worker of its own that ends with it or is ended. */

import type { LightenAnswer, LightenOptions, LightenProgress } from '../model/lighten.ts';
import type { LightenAsk, Lightener } from '../model/lightener.ts';

/** A worker that lightens; while it does, only ending it stops it. */
export interface LightenWorker {
  readonly lightener: Lightener;
  stop(): void;
  /** Rejects where the worker dies of itself, as when memory runs out. */
  readonly crash: Promise<never>;
}

/** How far the search is: nothing told yet, or its last round. */
export type Lightening = 'started' | LightenProgress;

export interface Lightenings {
  /** Null where it was cancelled, or another was asked for. */
  lighten(options: LightenOptions): Promise<LightenAnswer | null>;
  cancelLighten(): void;
}

/**
 * Searches one after the other.
 * @param start - starts a worker
 * @param ask - the open scene and the language spoken
 * @param tell - takes how far the search is; null once there is none
 */
export function createLightenings(
  start: () => LightenWorker,
  ask: () => Promise<Omit<LightenAsk, 'options'>>,
  tell: (lightening: Lightening | null) => void,
): Lightenings {
  let cancel: (() => void) | null = null;
  return {
    cancelLighten: () => cancel?.(),
    async lighten(options) {
      cancel?.();
      const worker = start();
      const { promise: cancelled, resolve } = settledLater();
      cancel = resolve;
      tell('started');
      const isCurrent = () => cancel === resolve;
      const search = async () => {
        const scene = await ask();
        return worker.lightener.lighten({ ...scene, options }, (progress) => {
          if (isCurrent()) tell(progress);
        });
      };
      try {
        return await Promise.race([search(), worker.crash, cancelled]);
      } finally {
        worker.stop();
        if (isCurrent()) {
          cancel = null;
          tell(null);
        }
      }
    },
  };
}

function settledLater(): { readonly promise: Promise<null>; readonly resolve: () => void } {
  let resolve = () => {};
  const promise = new Promise<null>((settle) => {
    resolve = () => settle(null);
  });
  return { promise, resolve };
}
