/** Limits of what is read, so that no file can stop the program; far above any drawing of one deck. */

/** Length of a file [bytes]. */
export const MAX_BYTES = 400_000_000;
/** Points of the whole drawing. */
export const MAX_POINTS = 3_000_000;
/** Entities, features or rows. */
export const MAX_ENTITIES = 2_000_000;
/** Entities that blocks may grow to. */
export const MAX_FROM_BLOCKS = 300_000;
/** Blocks inside blocks, tags inside tags. */
export const MAX_DEPTH = 32;
/** Copies of one inserted block. */
export const MAX_COPIES = 10_000;
/** Messages shown for one file. */
export const MAX_ISSUES = 50;
/** More points in one shape than this are asked about. */
export const MANY_POINTS = 2_000;
/** Levels up to so many are thinned to what a scene holds: seconds of work. */
export const MAX_THINNED = 1_000_000;
/** Points on lines with levels that stay as they are while levels are thinned. */
export const MAX_THINNED_LINES = 10_000;
/** Longest text kept [characters]. */
export const MAX_TEXT = 500;

/** Greatest distance of a chord from its arc, and of a simplified line from its points [m]. */
export const CHORD_ERROR_M = 0.005;
/** Ends of lines nearer than this are one point [m]. */
export const JOIN_M = 0.005;
/** An outline with a gap up to this is closed [m]. */
export const CLOSE_M = 0.05;
/** Lines of a building model: each holds little, and most are never looked at. */
export const MAX_MODEL_ENTITIES = 8_000_000;
