/** Where numbers come from, in German. */

import { sourceLine } from '../../model/source.ts';

export function sourceDe(text: string): string {
  return text || sourceLine({ document: text, grade: 'none' });
}
