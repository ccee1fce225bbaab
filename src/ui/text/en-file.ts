/** Sentences of undo, saving, recovered work, links and working offline. */

import { thicknessText, timeText } from '../format.ts';

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
  /** `when` null: not since it was opened. */
  lastSaved: (when: string | null) => (when === null ? 'last saved to a file: never' : `last saved to a file: ${when}`),
  time: timeText,
  menu: 'File',
  save: 'Save',
  saveAs: 'Save under another name…',
  stays: 'Saved on this device only. Nothing is sent anywhere.',
  saved: (name: string) => `Saved as ${name}.`,
  downloaded: (name: string) => `${name} was handed to the downloads of the browser.`,
  notSaved: (why: string) => `Not saved: ${why}. Save under another name or in another folder.`,
  nameTitle: 'Save the scene',
  name: 'Name of the file',
  nameAdd: 'The browser puts it among its downloads.',
  cancel: 'Cancel',
  recovered: 'Unsaved work found',
  offer: (name: string, when: string) => `Changes to ${name} of ${when} were not saved to a file. A copy was kept on this device.`,
  openIt: 'Open the copy',
  leaveIt: 'Not now',
  kept: (count: number) => (count === 1 ? 'Earlier state, kept on this device' : `${count} earlier states, kept on this device`),
  keptState: (name: string, when: string) => `${name}, ${when}`,
  keepsNone: 'This browser keeps no copies here. Save to a file before you leave the page.',
} as const;
