/** What a case of the benchmark is, and what all of them need. */

export interface BenchCase {
  readonly id: string;
  readonly what: string;
  /** What the ratio is taken to. */
  readonly limit: string;
  run(): void;
  copy(): void;
  /** Ratio aimed at; null where none is set. */
  readonly target: number | null;
}

/** Stops the benchmark where a result is wrong. */
export function prove(right: boolean, what: string): void {
  if (!right) throw new Error(`bench: ${what} is wrong; nothing was timed`);
}

/** A copy of some arrays into others of the same size. */
export function copyOf(...arrays: (Float32Array | Float64Array | Int32Array | Int16Array)[]): () => void {
  const targets = arrays.map((array) => array.slice());
  return () => {
    for (let i = 0; i < arrays.length; i++) targets[i].set(arrays[i] as never);
  };
}
