/** Parts of a report that are taken over from the one before where nothing they rest on has changed. */

interface KeptPart {
  readonly restsOn: readonly unknown[];
  readonly value: unknown;
}

/**
 * What a part rests on is compared by identity: unchanged parts of an evaluation stay the very same objects (`ContentMemo`),
 * and nobody changes them in place. Values do not hold the evaluation itself, whose arrays are written anew.
 */
export class KeptParts {
  private readonly now = new Map<string, KeptPart>();
  private readonly before: ReadonlyMap<string, KeptPart>;
  private whole = false;

  /** @param previous - parts of the report before, or of one that was overtaken while it was made; taken over where they still hold */
  constructor(previous?: KeptParts) {
    this.before = previous?.all() ?? new Map();
  }

  /** The report is whole: what it did not ask for is of no more use. */
  close(): void {
    this.whole = true;
  }

  private all(): ReadonlyMap<string, KeptPart> {
    return this.whole ? this.now : new Map([...this.before, ...this.now]);
  }

  /**
   * @param name - which part it is, the same from report to report
   * @param restsOn - everything that the part is made from: objects that are never changed, and plain values
   * @param make - makes it where anything has changed
   * @returns the part
   */
  get<T>(name: string, restsOn: readonly unknown[], make: () => T): T {
    return this.getAll([{ name, restsOn }], () => [make()])[0];
  }

  /**
   * @param parts - several parts of one kind
   * @param make - makes those that have changed, at once
   * @returns the parts in their order
   */
  getAll<T>(parts: readonly { readonly name: string; readonly restsOn: readonly unknown[] }[], make: (changed: number[]) => T[]): T[] {
    const held = parts.map(({ name, restsOn }) => {
      const known = this.now.get(name) ?? this.before.get(name);
      return known && sameEntries(known.restsOn, restsOn) ? known : null;
    });
    const changed = held.flatMap((part, i) => (part ? [] : [i]));
    const made = changed.length > 0 ? make(changed) : [];
    changed.forEach((i, n) => {
      held[i] = { restsOn: parts[i].restsOn, value: made[n] };
    });
    return parts.map(({ name }, i) => {
      const part = held[i] as KeptPart;
      this.now.set(name, part);
      return part.value as T;
    });
  }
}

function sameEntries(before: readonly unknown[], now: readonly unknown[]): boolean {
  return before.length === now.length && before.every((entry, i) => Object.is(entry, now[i]));
}
