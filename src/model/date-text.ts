/** Days as people read them: files write year, month and day, and so does English; German turns them round. */

import type { Language } from './language.ts';

const ISO_DAY = /^(\d{4})-(\d\d)-(\d\d)$/;

/**
 * A day of a file in a language.
 * @param day - as the file has it, e.g. `2026-03-09`
 * @param language - it is told in
 * @returns in German `09.03.2026`; what is no such day stands as it is
 */
export function dayIn(day: string, language: Language): string {
  return language === 'de' ? day.replace(ISO_DAY, '$3.$2.$1') : day;
}

/** The day of a time here, not in Greenwich, as files write it. */
export function dayOf(time: Date): string {
  return [time.getFullYear(), time.getMonth() + 1, time.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}
