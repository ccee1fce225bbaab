/** Ids of new parts: the letter of their kind and the next number. */

/**
 * The id after the highest of its kind.
 * @param letter - beginning of the ids of this kind
 * @param taken - ids there are
 * @returns the letter with a number that none of them has
 */
export function nextId(letter: string, taken: Iterable<string>): string {
  let highest = 0;
  for (const id of taken) {
    const number = id.startsWith(letter) && /^\d{1,6}$/.test(id.slice(letter.length)) ? Number(id.slice(letter.length)) : 0;
    highest = Math.max(highest, number);
  }
  return `${letter}${highest + 1}`;
}
