/** Tells when the graphics context is lost and comes back, and when it is no use to wait any longer. */

export interface ContextNews {
  lost(): void;
  restored(): void;
  /** Restored and lost again twice, or not restored in time. */
  gaveUp(): void;
}

/** A context that is lost again within this time was not really restored. */
const SETTLED_MS = 10_000;
const PATIENCE_MS = 20_000;
const FAILED_RESTORES = 2;

/**
 * Watches a canvas.
 * @param canvas - canvas of the view
 * @param news - who is told
 * @returns stops watching
 */
export function watchContext(canvas: HTMLCanvasElement, news: ContextNews): () => void {
  let failed = 0;
  let restoredAt = Number.NEGATIVE_INFINITY;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function onLost(event: Event): void {
    // Without this the browser never gives the context back.
    event.preventDefault();
    failed = performance.now() - restoredAt < SETTLED_MS ? failed + 1 : 0;
    if (failed >= FAILED_RESTORES) {
      news.gaveUp();
      return;
    }
    news.lost();
    wait();
  }

  function wait(): void {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      // A page in the background gets its context back only when it is shown again.
      if (document.visibilityState === 'visible') news.gaveUp();
      else wait();
    }, PATIENCE_MS);
  }

  function onRestored(): void {
    clearTimeout(waiting);
    restoredAt = performance.now();
    news.restored();
  }

  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onRestored);
  return () => {
    clearTimeout(waiting);
    canvas.removeEventListener('webglcontextlost', onLost);
    canvas.removeEventListener('webglcontextrestored', onRestored);
  };
}

/** Whether this browser can draw the view at all; the trial context is given back at once. */
export function canDraw(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
