/** Content that comes again as new objects is exchanged for the objects that were there: states of a scene then share it. */

/**
 * The new value, made of the old one's objects wherever they say the same. Neither is changed.
 * @param before - plain data, as it was
 * @param after - plain data, as it is now
 * @returns data equal to `after`; `before` itself where nothing is other
 */
export function sharedContent<T>(before: unknown, after: T): T {
  if (Object.is(before, after)) return after;
  if (Array.isArray(before) && Array.isArray(after)) return sharedList(before, after) as T;
  if (isPlain(before) && isPlain(after)) return sharedObject(before, after) as T;
  return after;
}

/** Entries with an id are held against that of the same id, wherever it stands; others against that in their place. */
function sharedList(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const byId = new Map(before.filter((entry) => idOf(entry) !== undefined).map((entry) => [idOf(entry), entry]));
  const made = after.map((entry, i) => {
    const id = idOf(entry);
    return sharedContent(id === undefined ? before[i] : byId.get(id), entry);
  });
  return made.length === before.length && made.every((entry, i) => Object.is(entry, before[i])) ? before : made;
}

type Plain = Readonly<Record<string, unknown>>;

/** Order of keys counts as content, since it can be seen in the file. */
function sharedObject(before: Plain, after: Plain): Plain {
  const keys = Object.keys(after);
  const made = Object.fromEntries(keys.map((key) => [key, sharedContent(before[key], after[key])]));
  const old = Object.keys(before);
  return old.length === keys.length && keys.every((key, i) => old[i] === key && Object.is(made[key], before[key])) ? before : made;
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function idOf(entry: unknown): unknown {
  return isPlain(entry) && typeof entry.id === 'string' ? entry.id : undefined;
}
