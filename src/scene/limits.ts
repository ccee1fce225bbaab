/** Limits of what is read, so that no file can stop the program; far above any real scene. */

/** Length of the text [characters], about 20 MB. */
export const MAX_TEXT_LENGTH = 20_000_000;
/** Nesting of brackets; a scene needs about ten. */
export const MAX_DEPTH = 64;
/** Points in the whole scene. */
export const MAX_POINTS = 200_000;
/** Points in one polygon, line or list of levels. */
export const MAX_LIST_POINTS = 20_000;
/** Messages shown for one file. */
export const MAX_ISSUES = 50;
/** Longest side of a deck [m]: nothing longer is a deck. */
export const MAX_DECK_SIDE_M = 5_000;
