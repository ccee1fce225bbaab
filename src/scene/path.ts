/** Places in a scene file: steps from the top, and the one way they are written. */

export type Path = readonly (string | number)[];

const PLAIN_KEY = /^[A-Za-z_$][\w$-]*$/;
const LONGEST_KEY = 40;

/**
 * Writes a path as the messages show it.
 * @param path - keys and positions from the top of the file
 * @returns e.g. `zones[3].outline[2]`
 */
export function pathText(path: Path): string {
  let text = '';
  for (const step of path) {
    if (typeof step === 'number') text += `[${step}]`;
    else if (PLAIN_KEY.test(step)) text += `${text && '.'}${shorten(step)}`;
    else text += `[${JSON.stringify(shorten(step))}]`;
  }
  return text;
}

/**
 * Shortens what a file holds so that a message stays readable.
 * @param text - text from the file
 * @param limit - greatest length kept
 * @returns the text, or its beginning with …
 */
export function shorten(text: string, limit: number = LONGEST_KEY): string {
  return text.length <= limit ? text : `${text.slice(0, limit - 1)}…`;
}

/**
 * Value at a path.
 * @param root - parsed JSON
 * @param path - keys and positions from the top
 * @returns the value, or undefined where the path leads nowhere
 */
export function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
