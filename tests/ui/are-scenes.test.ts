/** Two files dropped at once are told to be scenes in whatever encoding they are written. */

import { expect, it } from 'vitest';
import { areScenes } from '../../src/ui/variants/are-scenes.ts';

const SCENE = '{ "format": "loamdeck-scene", "name": "Hof Süd" }';
const utf8 = new File([SCENE], 'a.json');
const utf16 = new File([new Uint16Array([0xfeff, ...[...SCENE].map((letter) => letter.charCodeAt(0))])], 'b.json');
const windows = new File([Uint8Array.from([...SCENE].map((letter) => letter.charCodeAt(0)))], 'c.json');
const table = new File(['x;y;z\n1;2;3\n'], 'd.csv');

it('in one or two bytes per letter', async () => {
  expect(await areScenes([utf8, utf16])).toBe(true);
  expect(await areScenes([windows, utf16])).toBe(true);
});

it('only where both are', async () => {
  expect(await areScenes([utf8, table])).toBe(false);
  expect(await areScenes([table, utf16])).toBe(false);
});
