/** A scene in the part of an address behind "#", which browsers send to nobody: deflated, with its length and a checksum. */

import { deflateSync, Inflate } from 'fflate';
import { SCENE_WORDS } from './scene-words.ts';

/** Longer addresses are cut by mail programs and messengers. */
export const MOST_CHARACTERS = 16_000;
/** Many times what a scene of a link has; deflate alone would allow a thousandfold. */
const MOST_BYTES = 5_000_000;
/** So little is inflated at once that no bomb gets far beyond the limit. */
const PIECE = 1024;
/** What a version is packed against: the first one was against nothing. */
const WORDS_OF: Readonly<Record<string, Uint8Array>> = { 1: new Uint8Array(0), 2: new TextEncoder().encode(SCENE_WORDS) };
const VERSION = 2;
const MARK = '#scene=';

export type LinkRead =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: 'incomplete'; readonly arrived: number; readonly sent: number }
  | { readonly ok: false; readonly why: 'damaged' | 'newer' | 'too large' };

export const isLink = (hash: string): boolean => hash.startsWith(MARK);

/** What goes behind the address of the app, whatever its length. */
export function linkOf(text: string): string {
  const packed = base64url(deflateSync(new TextEncoder().encode(text), { level: 9, dictionary: WORDS_OF[VERSION] }));
  return `${MARK}${VERSION}.${packed.length}.${checksum(packed)}.${packed}`;
}

export function readLink(hash: string): LinkRead {
  const [version = '', length = '', sum = '', packed = '', ...more] = hash.slice(MARK.length).split('.');
  if (/^\d+$/.test(version) && Number(version) > VERSION) return { ok: false, why: 'newer' };
  const words = WORDS_OF[version];
  if (words === undefined || !/^\d{1,9}$/.test(length) || more.length > 0) return { ok: false, why: 'damaged' };
  const sent = Number(length);
  if (packed.length < sent) return { ok: false, why: 'incomplete', arrived: packed.length, sent };
  if (packed.length > sent || checksum(packed) !== sum) return { ok: false, why: 'damaged' };
  if (sent > MOST_CHARACTERS) return { ok: false, why: 'too large' };
  return inflated(packed, words);
}

function inflated(packed: string, dictionary: Uint8Array): LinkRead {
  try {
    const bytes = bytesOf(packed);
    const parts: Uint8Array[] = [];
    let size = 0;
    const inflate = new Inflate({ dictionary }, (part) => {
      parts.push(part);
      size += part.length;
    });
    for (let at = 0; at < bytes.length; at += PIECE) {
      inflate.push(bytes.subarray(at, at + PIECE), at + PIECE >= bytes.length);
      if (size > MOST_BYTES) return { ok: false, why: 'too large' };
    }
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    const text = parts.map((part) => decoder.decode(part, { stream: true })).join('') + decoder.decode();
    return text === '' ? { ok: false, why: 'damaged' } : { ok: true, text };
  } catch {
    return { ok: false, why: 'damaged' };
  }
}

function base64url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function bytesOf(packed: string): Uint8Array {
  const binary = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}

/** CRC-32 of ISO 3309 over the characters, as eight hexadecimal digits. */
export function checksum(text: string): string {
  let crc = 0xffffffff;
  for (let i = 0; i < text.length; i++) {
    crc ^= text.charCodeAt(i) & 0xff;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (~crc >>> 0).toString(16).padStart(8, '0');
}
