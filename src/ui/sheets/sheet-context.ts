/** What every print sheet is made from. */

import type { Snapshot } from '../../model/engine.ts';
import type { Language } from '../../model/language.ts';
import type { QrCode } from '../facts/qr-code.ts';
import type { PrintWords } from '../text/print-words.ts';
import type { PaperSize } from './paged-sheet.ts';

/** The scene as a link, and that as a code where one holds it. */
export interface SheetShare {
  readonly link: string;
  readonly code: QrCode | null;
}

export interface SheetContext {
  readonly snapshot: Snapshot;
  readonly words: PrintWords;
  readonly language: Language;
  readonly paper: PaperSize;
  /** Index of the stage it speaks of; null without stages. */
  readonly stage: number | null;
  /** Null until it is made. */
  readonly share: SheetShare | null;
}
