/** Sentences of undo, saving, recovered work, links and working offline. */

import { thicknessText } from '../format.ts';

export const file = {
  undo: 'Undo',
  redo: 'Redo',
  /** What a button does, or what was just done. */
  undoes: (edit: string) => `Undo: ${edit}`,
  redoes: (edit: string) => `Redo: ${edit}`,
  undone: (layer: string, buildUp: string, mm: number) => `Undone: ${layer} in ${buildUp} is ${thicknessText(mm)} mm again.`,
  redone: (layer: string, buildUp: string, mm: number) => `Done again: ${layer} in ${buildUp} is ${thicknessText(mm)} mm.`,
  thickness: (layer: string, buildUp: string, fromMm: number, toMm: number) =>
    `${layer} in ${buildUp}, ${thicknessText(fromMm)} to ${thicknessText(toMm)} mm`,
  changed: 'changed, not saved',
} as const;
