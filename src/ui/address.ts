/** What the address asks for behind "?": which scene, what of it to show, which language; and what of that there is not. */

import { isLanguage, LANGUAGES } from '../model/language.ts';
import { EDITORS, type EditorName, isEditor } from '../store/edit-view.ts';
import { isSheet, SHEETS, type SheetName } from '../store/sheet-view.ts';

export type Shown =
  | { readonly kind: 'walk' | 'talk' }
  | { readonly kind: 'sheet'; readonly sheet: SheetName }
  | { readonly kind: 'edit'; readonly editor: EditorName };

/** What to show beside the model; null for nothing of that name. */
export function shownBy(name: string): Shown | null {
  if (name === 'walk' || name === 'talk') return { kind: name };
  const [, kind, rest] = /^(sheet|edit)-(.+)$/.exec(name) ?? [];
  if (kind === 'sheet' && isSheet(rest)) return { kind, sheet: rest };
  return kind === 'edit' && isEditor(rest) ? { kind, editor: rest } : null;
}

/** A wish that cannot be met, and what there is instead. */
export interface UnknownWish {
  readonly what: 'scene' | 'show' | 'lang';
  readonly wanted: string;
  readonly known: readonly string[];
}

/** Longer names only fill the page. */
const MOST_LETTERS = 40;

export function unknownWishes(search: string, scenes: readonly string[]): UnknownWish[] {
  const asked = new URLSearchParams(search);
  const shows = ['walk', 'talk', ...SHEETS.map((sheet) => `sheet-${sheet}`), ...EDITORS.map((editor) => `edit-${editor}`)];
  const rules = [
    ['scene', scenes, (name: string) => scenes.includes(name)],
    ['show', shows, (name: string) => shownBy(name) !== null],
    ['lang', LANGUAGES, isLanguage],
  ] as const;
  return rules.flatMap(([what, known, isKnown]): UnknownWish[] => {
    const wanted = asked.get(what) ?? '';
    if (wanted === '' || isKnown(wanted)) return [];
    return [{ what, wanted: wanted.length > MOST_LETTERS ? `${wanted.slice(0, MOST_LETTERS)}…` : wanted, known }];
  });
}
