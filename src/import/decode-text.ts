/** Bytes to text: byte-order marks, code pages of drawings, and a question where letters look wrong. */

import { choiceOf, type Gathering } from './gathering.ts';

/** Encodings offered where the file does not say its own. */
const OFFERED = ['windows-1252', 'windows-1250', 'windows-1251', 'macintosh', 'utf-8'];
/** Bytes in which a drawing's heading is looked for. */
const HEAD_BYTES = 65_536;
/** `$DWGCODEPAGE` in the words of the platform's decoder. */
const CODE_PAGES: Readonly<Record<string, string>> = {
  '932': 'shift_jis',
  '936': 'gbk',
  '949': 'euc-kr',
  '950': 'big5',
  '874': 'windows-874',
};
/** First version of DXF in UTF-8 (2007). */
const UTF8_SINCE = 1021;
/** UTF-8 read as Windows-1252: `Ã¼` for ü, `â€“` for a dash. */
const BROKEN = /[ÂÃ][\u0080-\u00BF\u0152-\u017E\u02C6-\u2122]|â€/;

/**
 * Decodes a file's text.
 * @param bytes - the whole file
 * @param gather - is asked, and told what was done
 * @returns the text without byte-order mark, line ends as they are
 */
export function decodeText(bytes: Uint8Array, gather: Gathering): string {
  const wide = wideEncoding(bytes);
  if (wide !== null) {
    gather.mend('TEXT_DECODED', { encoding: wide.toUpperCase() });
    return new TextDecoder(wide).decode(bytes);
  }
  const page = codePageOf(bytes);
  const utf8 = strictUtf8(bytes);
  if (utf8 === null) return decodeOther(bytes, page, gather);
  if (BROKEN.test(utf8)) return askBroken(utf8, gather);
  return page !== null && /[\u0080-\uFFFF]/.test(utf8) ? askPage(bytes, page, utf8, gather) : utf8;
}

function strictUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** UTF-16 by its mark, or by the zero in every other byte of Latin text. */
function wideEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const head = bytes.subarray(0, 1024);
  if (head.length < 8) return null;
  const zeros = [0, 0];
  head.forEach((byte, i) => {
    if (byte === 0) zeros[i & 1] += 1;
  });
  const many = 0.4 * (head.length / 2);
  if (zeros[1] > many && zeros[0] === 0) return 'utf-16le';
  return zeros[0] > many && zeros[1] === 0 ? 'utf-16be' : null;
}

/** Code page of a drawing from before 2007, null for anything else. */
function codePageOf(bytes: Uint8Array): string | null {
  const head = Array.from(bytes.subarray(0, HEAD_BYTES), (byte) => String.fromCharCode(byte)).join('');
  if (!/^\s*(?:999|0)\s*[\r\n]/.test(head)) return null;
  const version = /\$ACADVER\s+1\s+AC(\d{4})/.exec(head)?.[1];
  if (version !== undefined && Number(version) >= UTF8_SINCE) return null;
  const page = /\$DWGCODEPAGE\s+3\s+(?:ANSI_|DOS)?(\d+)/i.exec(head)?.[1] ?? '1252';
  const label = CODE_PAGES[page] ?? `windows-${page}`;
  return isKnown(label) ? label : 'windows-1252';
}

function isKnown(label: string): boolean {
  try {
    return new TextDecoder(label).encoding !== '';
  } catch {
    return false;
  }
}

function decodeOther(bytes: Uint8Array, page: string | null, gather: Gathering): string {
  const encoding = askEncoding(bytes, gather, { guess: page ?? 'windows-1252', certain: page !== null });
  if (encoding === 'utf-8') gather.mend('TEXT_DECODED_LOSSY', {});
  else gather.mend('TEXT_DECODED', { encoding });
  return new TextDecoder(encoding).decode(bytes);
}

/** A drawing that says one code page and holds whole UTF-8. */
function askPage(bytes: Uint8Array, page: string, utf8: string, gather: Gathering): string {
  const encoding = askEncoding(bytes, gather, { guess: 'utf-8', certain: false, page });
  if (encoding === 'utf-8') return utf8;
  gather.mend('TEXT_DECODED', { encoding });
  return new TextDecoder(encoding).decode(bytes);
}

interface EncodingGuess {
  readonly guess: string;
  readonly certain: boolean;
  readonly page?: string;
}

function askEncoding(bytes: Uint8Array, gather: Gathering, { guess, certain, page }: EncodingGuess): string {
  const at = bytes.findIndex((byte) => byte >= 0x80);
  const near = bytes.subarray(Math.max(0, at - 20), at + 20);
  const sampleIn = (label: string) =>
    new TextDecoder(label)
      .decode(near)
      .split(/[\r\n]/)
      .find((line) => /[^\0-\x7F]/.test(line)) ?? '';
  const labels = [...new Set([guess, ...(page === undefined ? [] : [page]), ...OFFERED])].filter(isKnown);
  return gather.ask({
    id: 'encoding',
    code: 'ENCODING',
    values: { sample: sampleIn(page ?? 'utf-8').trim() },
    choices: labels.map((value) => choiceOf(value, 'ENCODING_AS', { encoding: value, sample: sampleIn(value).trim() })),
    guess,
    certain,
  });
}

/** Text broken before it was written: the letters themselves are wrong, the bytes are not. */
function askBroken(text: string, gather: Gathering): string {
  const at = BROKEN.exec(text)?.index ?? 0;
  const start = Math.max(text.lastIndexOf('\n', at) + 1, at - 20);
  const before = text
    .slice(start, at + 20)
    .split(/[\r\n]/)[0]
    .trim();
  const after = unbreak(before);
  const taken = gather.ask({
    id: 'encoding',
    code: 'ENCODING',
    values: { sample: before },
    choices: [choiceOf('repair', 'ENCODING_REPAIR', { after }), choiceOf('keep', 'ENCODING_KEEP', { before })],
    guess: 'repair',
  });
  if (taken === 'keep') return text;
  gather.mend('TEXT_UNBROKEN', { before, after });
  return unbreak(text);
}

/** Each run of letters that was UTF-8 in Windows-1252 goes back to bytes and is read as UTF-8. */
function unbreak(text: string): string {
  const byteOf = new Map<string, number>();
  const letters = new TextDecoder('windows-1252').decode(Uint8Array.from({ length: 256 }, (_, i) => i));
  for (const [byte, letter] of [...letters].entries()) byteOf.set(letter, byte);
  return text.replace(/[\u0080-\uFFFF]+/g, (run) => {
    const bytes = [...run].map((letter) => byteOf.get(letter) ?? -1);
    return bytes.includes(-1) ? run : (strictUtf8(Uint8Array.from(bytes)) ?? run);
  });
}
