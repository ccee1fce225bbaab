/** Keeps objects whose content has not changed the very same objects, so that the core sees at once what is new. */

export class ContentMemo {
  private readonly kept = new Map<string, unknown>();
  private readonly before: ReadonlyMap<string, unknown>;

  /** @param previous - memo of the state before, whose objects are used again where the content is equal */
  constructor(previous?: ContentMemo) {
    this.before = previous?.kept ?? new Map();
  }

  /**
   * @param kind - what is made, so that equal content of different kinds stays apart
   * @param content - everything the object depends on, plain data
   * @param make - makes it where it is not known yet
   * @returns the object for this content
   */
  get<T>(kind: string, content: unknown, make: () => T): T {
    const key = `${kind} ${JSON.stringify(content)}`;
    const known = this.kept.get(key) ?? this.before.get(key);
    const value = known === undefined ? make() : (known as T);
    this.kept.set(key, value);
    return value;
  }
}
