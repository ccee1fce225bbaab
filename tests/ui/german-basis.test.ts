/** What is missing in the basis of a permitted load, in German. */

import { expect, it } from 'vitest';
import { missingText } from '../../src/ui/text/de-words.ts';

it('has its verb behind what is missing, in the right number', () => {
  expect(missingText(['date'])).toBe('nicht bestätigt: Datum fehlt');
  expect(missingText(['revision', 'date'])).toBe('nicht bestätigt: Index und Datum fehlen');
  expect(missingText(['document', 'revision', 'date'])).toBe('nicht bestätigt: Dokument, Index und Datum fehlen');
});
