/** What phrases are filled with. */

import type { Phrase } from '../../model/issue.ts';

export type Text = string | number;
export type Names = readonly string[];
/** Tells a phrase within a phrase, in the same language. */
export type Tell = (phrase: Phrase) => string;
