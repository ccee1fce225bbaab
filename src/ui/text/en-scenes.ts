/** Sentences about opening scenes and what could not be opened. */

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
    dropHint:
      'Or drop a file anywhere on this page: a scene, a drawing (DXF), a building model (IFC), a map (GeoJSON), points (CSV, XYZ, LandXML). It stays on this device.',
    veil: 'Drop one file to open it',
    folder: 'This is a folder, a file was expected.',
    several: (count: number) => `One file was expected, ${count} were given. Read several files one after the other.`,
    noFile: 'What was dropped is not a file. Save it as a file and drop that.',
    unreadable: (name: string) => `${name} could not be read from the disk. Check that it still exists and may be opened.`,
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
