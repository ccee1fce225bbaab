/** Counts in sentences, their thousands grouped as the language does. */

const grouped = (count: number | string, mark: string) => String(count).replace(/\B(?=(?:\d{3})+$)/g, mark);

/** A whole number with its thousands grouped. */
export const countEn = (count: number | string) => grouped(count, ',');
export const countDe = (count: number | string) => grouped(count, '.');
