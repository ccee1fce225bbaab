/** Parts of a page without script: every text escaped, files as addresses that hold them. */

import { markupText } from './markup.ts';

/** A table with its heading; cells are texts, those of `right` columns stand to the right. */
export function htmlTable(heads: readonly string[], rows: readonly (readonly string[])[], right: readonly boolean[] = []): string {
  const side = (column: number) => (right[column] === true ? ' class="n"' : '');
  const head = heads.map((text, c) => `<th scope="col"${side(c)}>${markupText(text)}</th>`).join('');
  const body = rows.map((row) => `<tr>${row.map((text, c) => `<td${side(c)}>${markupText(text)}</td>`).join('')}</tr>`);
  return `<div class="t"><table><thead><tr>${head}</tr></thead>\n<tbody>\n${body.join('\n')}\n</tbody></table></div>`;
}

/** Bytes as an address that holds them. */
export function dataAddress(mediaType: string, bytes: Uint8Array): string {
  const PART = 0x8000;
  let text = '';
  for (let at = 0; at < bytes.length; at += PART) text += String.fromCharCode(...bytes.subarray(at, at + PART));
  return `data:${mediaType};base64,${btoa(text)}`;
}

/** Checksum in hexadecimal digits; null where the page may not calculate any. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string | null> {
  const subtle = globalThis.crypto?.subtle;
  if (subtle === undefined) return null;
  const sum = new Uint8Array(await subtle.digest('SHA-256', bytes));
  return [...sum].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
