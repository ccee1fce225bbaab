/** A scene as a link: there and back, and what is said of one that did not arrive whole. */

import { readFileSync } from 'node:fs';
import { inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checksum, isLink, linkOf, MOST_CHARACTERS, readLink } from '../../src/ui/file/scene-link.ts';
import { SCENE_WORDS } from '../../src/ui/file/scene-words.ts';

const TERRACE = readFileSync('scenes/terrace.scene.json', 'utf8');
const LINK = linkOf(TERRACE);
const packedOf = (link: string) => link.split('.')[3]!;

/** As `linkOf` frames it, with any content. */
function framed(bytes: Uint8Array, version = 2): string {
  const packed = Buffer.from(bytes).toString('base64url');
  return `#scene=${version}.${packed.length}.${checksum(packed)}.${packed}`;
}

describe('a link', () => {
  it('gives the text back to the byte', () => {
    expect(isLink(LINK)).toBe(true);
    expect(readLink(LINK)).toEqual({ ok: true, text: TERRACE });
    const odd = '\uFEFF{ "name": "Hof Süd \u{1F333}" }\r\n';
    expect(readLink(linkOf(odd))).toEqual({ ok: true, text: odd });
  });

  it('holds only characters that no program takes for the end of an address', () => {
    expect(LINK).toMatch(/^#scene=2\.\d+\.[0-9a-f]{8}\.[A-Za-z0-9_-]+$/);
  });

  it('gives any text back', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, unit: 'grapheme', maxLength: 300 }), (text) => {
        expect(readLink(linkOf(text))).toEqual({ ok: true, text });
      }),
    );
  });

  it('is plain deflate against the words of scenes, as another library reads it', () => {
    const dictionary = Buffer.from(SCENE_WORDS);
    expect(inflateRawSync(Buffer.from(packedOf(LINK), 'base64url'), { dictionary }).toString()).toBe(TERRACE);
  });

  it('made earlier still opens', () => {
    const text = '{ "format": "loamdeck-scene", "version": 1, "deck": { "outline": [[0, 0], [9, 0]] }, "stages": [] }\n';
    // Version 1, without words
    expect(readLink(framed(deflateSync(new TextEncoder().encode(text)), 1))).toEqual({ ok: true, text });
    // Version 2, packed by zlib: fails as soon as the words change, and so would every link handed out
    const kept = '#scene=2.34.b42db827.q8bXw0btXyP6kNj7XZYgGhzLSEUTqLcAAA';
    expect(readLink(kept)).toEqual({ ok: true, text });
  });

  it('of a small demo scene stays below the limit, that of the large one does not', () => {
    expect(LINK.length).toBeLessThan(MOST_CHARACTERS);
    expect(linkOf(readFileSync('scenes/district.scene.json', 'utf8')).length).toBeGreaterThan(MOST_CHARACTERS);
  });
});

describe('a link that did not arrive whole', () => {
  it.each([1, 100, packedOf(LINK).length - 1])('says how many characters arrived when %i are missing', (missing) => {
    const sent = packedOf(LINK).length;
    expect(readLink(LINK.slice(0, -missing))).toEqual({ ok: false, why: 'incomplete', arrived: sent - missing, sent });
  });

  it('is refused with any one character changed', () => {
    const start = LINK.length - packedOf(LINK).length;
    fc.assert(
      fc.property(fc.integer({ min: start, max: LINK.length - 1 }), fc.constantFrom(...'Az09-_% '), (at, character) => {
        fc.pre(LINK[at] !== character);
        expect(readLink(LINK.slice(0, at) + character + LINK.slice(at + 1)).ok).toBe(false);
      }),
    );
  });

  it.each([
    ['nothing behind the mark', '#scene=', 'damaged'],
    ['a later version', LINK.replace('=2.', '=3.'), 'newer'],
    ['something added', `${LINK}abc`, 'damaged'],
    ['version 0', LINK.replace('=2.', '=0.'), 'damaged'],
    ['no number for the length', '#scene=2.x.00000000.AAAA', 'damaged'],
    ['no deflated bytes', framed(new Uint8Array([255, 255, 255, 255])), 'damaged'],
    ['bytes that are no text', framed(deflateSync(new Uint8Array([0xff, 0xfe, 0xfd]))), 'damaged'],
    ['an empty text', framed(deflateSync(new Uint8Array(0))), 'damaged'],
    // Deflate reaches about 1 : 1000: 60 MB of zeros need about 60 kB, 8 MB about 8 kB, which is no longer than a link may be.
    ['far more characters than a link may have', framed(deflateSync(new Uint8Array(60_000_000))), 'too large'],
    ['few characters that swell to 8 MB', framed(deflateSync(new Uint8Array(8_000_000))), 'too large'],
  ])('is refused with %s', (_, link, why) => expect(readLink(link)).toEqual({ ok: false, why }));

  it('never throws, whatever stands there', () => {
    fc.assert(
      fc.property(fc.string(), (text) => void readLink(`#scene=${text}`)),
      { numRuns: 2000 },
    );
  });
});

it('the checksum is CRC-32: its check value for "123456789" is CBF43926', () => {
  // Printed with the parameters of CRC-32/ISO-HDLC in every catalogue of CRC algorithms
  expect(checksum('123456789')).toBe('cbf43926');
  expect(checksum('')).toBe('00000000');
});
