/** Equal content gives the same object, from the state before too. */

import { expect, it } from 'vitest';
import { ContentMemo } from '../../src/project/content-memo.ts';

it('makes an object once per content and kind', () => {
  const memo = new ContentMemo();
  const a = memo.get('ring', [1, 2], () => ({ made: 1 }));
  expect(memo.get('ring', [1, 2], () => ({ made: 2 }))).toBe(a);
  expect(memo.get('ring', [1, 3], () => ({ made: 3 }))).not.toBe(a);
  expect(memo.get('net', [1, 2], () => ({ made: 4 }))).not.toBe(a);
});

it('keeps what the state before made, and forgets what one state did not ask for', () => {
  const first = new ContentMemo();
  const a = first.get('ring', ['a'], () => ({}));
  const second = new ContentMemo(first);
  expect(second.get('ring', ['a'], () => ({}))).toBe(a);
  const third = new ContentMemo(new ContentMemo(first));
  expect(third.get('ring', ['a'], () => ({}))).not.toBe(a);
});
