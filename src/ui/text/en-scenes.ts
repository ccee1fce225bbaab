/** Sentences about opening scenes and what could not be opened. */

import { numberText } from '../format.ts';
import { many } from './en-words.ts';

const DEMO_NAMES: Readonly<Record<string, string>> = {
  terrace: 'Small terrace',
  courtyard: 'Courtyard over a car park',
  'problem-deck': 'Problem deck: one fault of many kinds',
  district: 'District podium, 1.5 ha',
};

export const sceneTexts = {
  scenes: {
    button: 'Scenes',
    title: 'Open a scene',
    demos: 'Invented demo scenes',
    demoName: (id: string) => DEMO_NAMES[id] ?? id,
    openFile: 'Open a file…',
    dropHint: 'Or drop a *.scene.json file anywhere on this page. It stays on this device.',
    veil: 'Drop one scene file to open it',
    folder: 'That is a folder. Drop the one *.scene.json file inside it.',
    several: (count: number) => `${count} files came at once. Drop one scene file at a time.`,
    noFile: 'What was dropped is not a file. Save it as a *.scene.json file and drop that.',
    tooLarge: (name: string, sizeMB: number, limitMB: number) =>
      `${name} has ${numberText(sizeMB, 1)} MB; a scene file may have ${limitMB} MB. Check that it is a scene, not a drawing or a model.`,
    unreadable: (name: string) => `${name} could not be read from the disk. Check that it still exists and may be opened.`,
    notText: (name: string) => `${name} is not a text file in UTF-8. Save it as UTF-8 text, or choose the *.scene.json file.`,
    demoFailed: (name: string) => `The demo scene “${name}” could not be loaded. Check the connection and try again.`,
  },
  refusal: {
    title: (fileName: string) => `${fileName} was not opened`,
    titleEdit: 'That change was not made',
    stays: 'The scene opened before stays as it was.',
    issues: (count: number) => many(count, 'thing to mend', 'things to mend'),
    close: 'Close',
    warnings: (count: number) => many(count, 'remark on the file', 'remarks on the file'),
    copy: 'Copy the list',
    copied: 'Copied',
  },
} as const;
