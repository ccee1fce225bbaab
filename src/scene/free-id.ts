/** Ids for new parts: the name they come with, if it is short and free, else letters with a number. */

const LONGEST = 40;

/**
 * An id that nothing of the list has yet.
 * @param wish - name it comes with
 * @param letter - beginning of a made-up id
 * @param taken - ids of the list; the new one is added
 * @returns the id
 */
export function freeId(wish: string | undefined, letter: string, taken: Set<string>): string {
  const own = wish !== undefined && wish !== '' && wish.length <= LONGEST ? wish : null;
  let id = own ?? `${letter}1`;
  for (let i = 2; taken.has(id); i++) id = own === null ? `${letter}${i}` : `${own}-${i}`;
  taken.add(id);
  return id;
}
