/** Days as people read them. */

import { expect, it } from 'vitest';
import { dayIn, dayOf } from '../../src/model/date-text.ts';

it('turns a day round in German, with two digits for day and month, and leaves English and all else', () => {
  expect(dayIn('2026-03-09', 'de')).toBe('09.03.2026');
  expect(dayIn('2026-03-09', 'en')).toBe('2026-03-09');
  expect(dayIn('in March', 'de')).toBe('in March');
  expect(dayIn('', 'de')).toBe('');
});

it('takes the day here, not in Greenwich', () => {
  expect(dayOf(new Date(2026, 2, 9, 0, 5))).toBe('2026-03-09');
});
