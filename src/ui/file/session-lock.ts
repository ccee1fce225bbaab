/** Tells the runs of the app that go on in other tabs from those that have ended. */

const PREFIX = 'loamdeck-session-';

export const SESSION = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

/** Held as long as the tab lives; the browser lets go of it, however the tab ends. */
export function holdSession(): void {
  void navigator.locks?.request(PREFIX + SESSION, () => new Promise(() => {}));
}

export async function runningSessions(): Promise<ReadonlySet<string>> {
  const { held = [] } = (await navigator.locks?.query()) ?? {};
  return new Set(held.flatMap(({ name }) => (name?.startsWith(PREFIX) ? [name.slice(PREFIX.length)] : [])));
}
