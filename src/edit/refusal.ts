/** Why an operation of the plan cannot be done; the words stand in the tables of `ui/text`, complete in every language. */

export const REFUSALS = [
  /** The part is not (or no longer) in the scene. */
  'no such part',
  /** The operation does not exist for this kind of part. */
  'wrong kind',
  /** The drawn line does not lead from edge to edge through the area. */
  'line does not divide',
  /** The areas have no length of edge in common, so that they would not become one. */
  'not touching',
  /** Nothing would be left of the area. */
  'nothing left',
  /** What would remain is in several pieces where one is needed. */
  'in pieces',
  /** The result would have a hole, which a bay cannot have. */
  'bay with hole',
  /** Fewer than two areas were given. */
  'too few parts',
  /** There is nothing to fill: no gap there. */
  'no gap',
  /** The area and the other one have nothing in common. */
  'apart',
  /** A length or distance is not above 0. */
  'length not above 0',
  /** No point was set before, to which the entry could refer. */
  'no point before',
  /** No direction of the pointer, along which a length could run. */
  'no direction',
  /** The two points are the same. */
  'same point',
  /** A shape would have too few points left. */
  'too few points',
] as const;
export type Refusal = (typeof REFUSALS)[number];

export interface Refused {
  readonly refused: Refusal;
}

export const isRefused = (result: object): result is Refused => 'refused' in result;
