/** Keeps objects whose content has not changed the very same objects, so that the core sees at once what is new. */

/** Texts of objects seen before: scenes share what an edit leaves alone, so most objects come again and again. */
const texts = new WeakMap<object, string>();

function textOf(part: unknown): string {
  if (typeof part !== 'object' || part === null) return JSON.stringify(part) ?? '';
  let text = texts.get(part);
  if (text === undefined) {
    text = JSON.stringify(part);
    texts.set(part, text);
  }
  return text;
}

export class ContentMemo {
  private readonly kept = new Map<string, unknown>();
  private readonly before: ReadonlyMap<string, unknown>;

  /** @param previous - memo of the state before, whose objects are used again where the content is equal */
  constructor(previous?: ContentMemo) {
    this.before = previous?.kept ?? new Map();
  }

  /**
   * @param kind - what is made, so that equal content of different kinds stays apart
   * @param content - everything the object depends on: plain data that nobody changes in place
   * @param make - makes it where it is not known yet
   * @returns the object for this content
   */
  get<T>(kind: string, content: readonly unknown[], make: () => T): T {
    const key = `${kind} ${content.map(textOf).join(' ')}`;
    const known = this.kept.get(key) ?? this.before.get(key);
    const value = known === undefined ? make() : (known as T);
    this.kept.set(key, value);
    return value;
  }
}
