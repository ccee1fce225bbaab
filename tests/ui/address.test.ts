/** What the address asks for: every name that there is, and a word about each that there is not. */

import { describe, expect, it } from 'vitest';
import { EDITORS } from '../../src/store/edit-view.ts';
import { SHEETS } from '../../src/store/sheet-view.ts';
import { shownBy, unknownWishes } from '../../src/ui/address.ts';
import { textsOf } from '../../src/ui/text/text.ts';

const SCENES = ['terrace', 'courtyard'];
const names = (search: string) => unknownWishes(search, SCENES).map(({ what, wanted }) => `${what}: ${wanted}`);

describe('an address', () => {
  it('may name a scene, a language and everything that can be shown', () => {
    const shows = ['walk', 'talk', ...SHEETS.map((sheet) => `sheet-${sheet}`), ...EDITORS.map((editor) => `edit-${editor}`)];
    for (const show of shows) {
      expect(shownBy(show), show).not.toBeNull();
      expect(names(`?scene=courtyard&lang=de&show=${show}`)).toEqual([]);
    }
    expect(shownBy('sheet-heaps')).toEqual({ kind: 'sheet', sheet: 'heaps' });
    expect(shownBy('edit-plan')).toEqual({ kind: 'edit', editor: 'plan' });
  });

  it('may leave out what it does not want, and carry what is none of our business', () => {
    for (const search of ['', '?', '?show=', '?scene=&lang=', '?from=mail']) expect(names(search), search).toEqual([]);
  });

  it.each([
    ['?scene=garden', ['scene: garden']],
    ['?show=sheet-plan', ['show: sheet-plan']],
    ['?show=sheet-', ['show: sheet-']],
    ['?show=heaps', ['show: heaps']],
    ['?show=toString', ['show: toString']],
    ['?lang=fr', ['lang: fr']],
    ['?lang=DE', ['lang: DE']],
    ['?scene=x&show=y&lang=z', ['scene: x', 'show: y', 'lang: z']],
    [`?scene=${'a'.repeat(500)}`, [`scene: ${'a'.repeat(40)}…`]],
  ])('%s is told', (search, told) => expect(names(search)).toEqual(told));

  it.each(['en', 'de'] as const)('is told with what there is instead, in %s', (language) => {
    for (const wish of unknownWishes('?scene=x1&show=y1&lang=z1', SCENES)) {
      const says = textsOf(language).file.unknownWish(wish);
      expect(says).toContain(wish.wanted);
      for (const one of wish.known) expect(says).toContain(one);
    }
  });
});
