/** Sentences of undo, saving, recovered work, links and working offline. */

import type { UnknownWish } from '../address.ts';
import { numberText, thicknessOf, timeText } from '../format.ts';

export const file = {
  undo: 'Undo',
  redo: 'Redo',
  /** What a button does, or what was just done. */
  undoes: (edit: string) => `Undo: ${edit}`,
  redoes: (edit: string) => `Redo: ${edit}`,
  undone: (layer: string, buildUp: string, mm: number) => `Undone: ${layer} in ${buildUp} is ${thicknessOf(mm)} again.`,
  redone: (layer: string, buildUp: string, mm: number) => `Done again: ${layer} in ${buildUp} is ${thicknessOf(mm)}.`,
  thickness: (layer: string, buildUp: string, fromMm: number, toMm: number) =>
    `${layer} in ${buildUp}, ${thicknessOf(fromMm)} to ${thicknessOf(toMm)}`,
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
  built: (when: string) =>
    `Version of ${when}. Works without a network from the second visit; a newer version waits until the page is closed.`,
  link: (characters: number) => `Link with the whole scene, ${numberText(characters, 0)} characters`,
  copyLink: 'Copy the link',
  linkCopied: 'Copied',
  linkSays: 'Whoever has the link has the scene. It goes only where you send it; opening it sends nothing.',
  linkTooLong: (characters: number, most: number) =>
    `A link with this scene has ${numberText(characters, 0)} characters; programs cut links longer than ${numberText(most, 0)}. Save the scene and send the file.`,
  fromLink: 'scene of the link',
  incomplete: (arrived: number, sent: number) =>
    `The link is incomplete: ${numberText(arrived, 0)} of ${numberText(sent, 0)} characters arrived. Ask for it again, in one line, or for the file.`,
  badLink: (why: 'damaged' | 'newer' | 'too large') =>
    ({
      damaged: 'The link was changed on its way and cannot be read. Ask for it again, or for the file.',
      newer: 'The link comes from a newer version of Loamdeck. Load this page anew, or ask for the file.',
      'too large': 'The link holds more than a scene can be. It was not opened. Ask for the file.',
    })[why],
  recovered: 'Unsaved work found',
  offer: (name: string, when: string) => `Changes to ${name} of ${when} were not saved to a file. A copy was kept on this device.`,
  openIt: 'Open the copy',
  leaveIt: 'Not now',
  kept: (count: number) => (count === 1 ? 'Earlier state, kept on this device' : `${count} earlier states, kept on this device`),
  keptState: (name: string, when: string) => `${name}, ${when}`,
  keptNone: 'No earlier states are kept on this device.',
  keepsNone: 'This browser keeps no copies here. Save to a file before you leave the page.',
  address: 'About the address',
  unknownWish: ({ what, wanted, known }: UnknownWish) =>
    ({
      scene: `The address asks for a scene “${wanted}”, which is not here. The first demo scene was opened instead. There are: ${known.join(', ')}.`,
      show: `The address asks to show “${wanted}”, which there is not. The model is shown. There are: ${known.join(', ')}.`,
      lang: `The address asks for the language “${wanted}”, which this page does not speak. It speaks: ${known.join(', ')}.`,
    })[what],
  understood: 'Understood',
} as const;
