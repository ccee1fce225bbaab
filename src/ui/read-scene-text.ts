/** The text of a file the user chose, or a sentence that says why it cannot be read. */

import { t } from './text/text.ts';

export type TextRead = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly says: string };

/** More is no scene; refused before it is read, so that the page stays quick. */
export const MAX_FILE_BYTES = 20_000_000;

const BYTES_PER_MB = 1_000_000;

/** Reads UTF-8, and UTF-16 where the file begins with its mark, as some editors save it. */
export async function readSceneText(file: Pick<File, 'name' | 'size' | 'arrayBuffer'>): Promise<TextRead> {
  if (file.size > MAX_FILE_BYTES) {
    return { ok: false, says: t.scenes.tooLarge(file.name, file.size / BYTES_PER_MB, MAX_FILE_BYTES / BYTES_PER_MB) };
  }
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return { ok: false, says: t.scenes.unreadable(file.name) };
  }
  try {
    return { ok: true, text: new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes) };
  } catch {
    return { ok: false, says: t.scenes.notText(file.name) };
  }
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return 'utf-8';
}
