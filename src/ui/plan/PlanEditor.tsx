/** The plan of the deck, drawn and changed. */

export function PlanEditor() {
  return null;
}
