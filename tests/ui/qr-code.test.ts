/** QR codes, read back by another library; sizes against those the standard prints. */

import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { MOST_QR_BYTES, type QrCode, qrCode } from '../../src/ui/facts/qr-code.ts';

const PX_PER_SQUARE = 3;

/** Paints the lengths of the drawing; they are all of one form. */
function painted({ size, path }: QrCode): Uint8ClampedArray {
  const side = size * PX_PER_SQUARE;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let i = 0; i < Number(length) * PX_PER_SQUARE; i++) {
      for (let j = 0; j < PX_PER_SQUARE; j++) {
        const at = ((Number(y) * PX_PER_SQUARE + j) * side + Number(x) * PX_PER_SQUARE + i) * 4;
        pixels.fill(0, at, at + 3);
      }
    }
  }
  return pixels;
}

function readBack(code: QrCode): string | undefined {
  const side = code.size * PX_PER_SQUARE;
  return jsQR(painted(code), side, side)?.data;
}

describe('a QR code', () => {
  it.each(['https://deck.example/#scene=2.34.b42db827.q8bXw0btXyP6kNj7', 'Gründach – Höhe 0,25 m', 'a'.repeat(700)])('says %s', (text) => {
    expect(readBack(qrCode(text)!)).toBe(text);
  });

  // ISO/IEC 18004: side 17 + 4 · version; byte mode at level L holds 17 in version 1, 1732 in version 30, 2953 in version 40; 4 light squares around.
  it.each([
    [17, 21],
    [18, 25],
    [1732, 137],
    [1733, 141],
    [2953, 177],
  ])('of %i bytes has %i squares a side', (bytes, side) => {
    expect(qrCode('x'.repeat(bytes))?.size).toBe(side + 8);
  });

  it('of more bytes there is none; letters of two bytes count twice', () => {
    expect(MOST_QR_BYTES).toBe(2953);
    expect(qrCode('x'.repeat(2954))).toBeNull();
    expect(qrCode('ä'.repeat(1476))).not.toBeNull();
    expect(qrCode('ä'.repeat(1477))).toBeNull();
  });

  it('bears as much dirt as its size allows', () => {
    // Version 1 holds 7 bytes at level H, which mends 30 %: a tenth of the squares turned is still read.
    const code = qrCode('x'.repeat(7))!;
    expect(code.size).toBe(21 + 8);
    const pixels = painted(code);
    const side = code.size * PX_PER_SQUARE;
    // A patch of 5 × 4 squares within the words, away from the marks in the corners.
    for (let x = 14; x < 19; x++) {
      for (let y = 17; y < 21; y++) {
        for (let j = 0; j < PX_PER_SQUARE; j++) {
          const at = ((y * PX_PER_SQUARE + j) * side + x * PX_PER_SQUARE) * 4;
          for (let k = 0; k < PX_PER_SQUARE * 4; k++) if (k % 4 !== 3) pixels[at + k] = 255 - pixels[at + k]!;
        }
      }
    }
    expect(jsQR(pixels, side, side)?.data).toBe('xxxxxxx');
  });
});
