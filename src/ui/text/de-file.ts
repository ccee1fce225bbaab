/** Undo, saving, recovered work, links and working offline: the sentences in German. */

import { thicknessText } from '../format.ts';
import type { Texts } from './text.ts';

export const file: Texts['file'] = {
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  undoes: (edit) => `Rückgängig: ${edit}`,
  redoes: (edit) => `Wiederholen: ${edit}`,
  undone: (layer, buildUp, mm) => `Rückgängig gemacht: ${layer} in ${buildUp} hat wieder ${thicknessText(mm)} mm.`,
  redone: (layer, buildUp, mm) => `Wiederholt: ${layer} in ${buildUp} hat ${thicknessText(mm)} mm.`,
  thickness: (layer, buildUp, fromMm, toMm) => `${layer} in ${buildUp}, ${thicknessText(fromMm)} auf ${thicknessText(toMm)} mm`,
  changed: 'geändert, nicht gespeichert',
};
