/** What a search typed by hand finds. */

/** True where every word of a search stands somewhere in a text, in any order, large or small. */
export function holdsWords(text: string, search: string): boolean {
  const among = text.toLowerCase();
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => among.includes(word));
}
