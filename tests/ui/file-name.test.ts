/** Names typed for a saved scene. */

import { expect, it } from 'vitest';
import { asFileName } from '../../src/ui/file/write-file.ts';

it.each([
  ['yard', 'yard.scene.json'],
  ['yard.json', 'yard.scene.json'],
  ['yard.scene.json', 'yard.scene.json'],
  [' Hof Süd 2 ', 'Hof Süd 2.scene.json'],
  ['a/b\\c:d', 'a-b-c-d.scene.json'],
  ['..', 'deck.scene.json'],
  ['', 'deck.scene.json'],
  ['tab\there', 'tab-here.scene.json'],
])('%j becomes %s', (typed, name) => expect(asFileName(typed)).toBe(name));
