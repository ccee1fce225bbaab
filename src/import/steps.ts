/** Reading in steps: the readers are generators, so that a worker can tell how far it is and stop between two steps. */

/** Yields how much is done, 0 to 1, and returns the result. */
export type Steps<T> = Generator<number, T>;

export interface StepOptions {
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal;
}

/** Time after which the thread is left to others [ms]. */
const SLICE_MS = 30;

/** Runs all steps at once. */
export function runAtOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * Runs the steps in slices; messages of the thread are handled between them.
 * @returns the result; rejects with the signal's reason where it was stopped
 */
export async function runInSlices<T>(steps: Steps<T>, { onProgress, signal }: StepOptions): Promise<T> {
  let sliceEnd = performance.now() + SLICE_MS;
  for (;;) {
    signal?.throwIfAborted();
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() < sliceEnd) continue;
    onProgress?.(step.value);
    await new Promise((resume) => setTimeout(resume, 0));
    sliceEnd = performance.now() + SLICE_MS;
  }
}

/** Runs steps as a part of others: their 0 to 1 becomes `from` to `to`. */
export function* partOf<T>(steps: Steps<T>, from: number, to: number): Steps<T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield from + step.value * (to - from);
  }
}
