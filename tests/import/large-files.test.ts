/** Large files: read in slices, stopped at any time, refused above the limits. Row 33 of the bad inputs. */

import { describe, expect, it } from 'vitest';
import { MAX_BYTES } from '../../src/import/limits.ts';
import { readDrawingInSlices, readingSteps } from '../../src/import/read-drawing.ts';
import { dxf, inMetres, line, polyline, rectangle } from './dxf-builder.ts';

const encode = (text: string) => new TextEncoder().encode(text);

/** A hundred thousand separate lines, about 5 MB. */
const LINES = encode(
  dxf({
    header: inMetres,
    entities: Array.from({ length: 100_000 }, (_, i) =>
      line('L', [(i % 300) / 5, Math.floor(i / 300) / 5, (i % 300) / 5 + 0.1, Math.floor(i / 300) / 5]),
    ),
  }),
);
const ROWS = encode(
  `x;y;z\n${Array.from({ length: 200_000 }, (_, i) => `${(i % 400) / 10};${Math.floor(i / 400) / 10};1.${100 + (i % 50)}`).join('\n')}\n`,
);

describe('in slices', () => {
  it.each([
    ['100 000 lines', LINES],
    ['200 000 rows', ROWS],
  ])('%s: progress rises, no step holds the thread for long', (_, bytes) => {
    let [last, steps, longestMs] = [0, 0, 0];
    const reading = readingSteps('large', bytes, {});
    for (;;) {
      const start = process.cpuUsage();
      const step = reading.next();
      const { user, system } = process.cpuUsage(start);
      longestMs = Math.max(longestMs, (user + system) / 1000);
      if (step.done) {
        expect(step.value.issues).toEqual([]);
        break;
      }
      expect(step.value).toBeGreaterThanOrEqual(last - 1e-9);
      expect(step.value).toBeLessThanOrEqual(1);
      last = step.value;
      steps += 1;
    }
    expect(steps).toBeGreaterThan(50);
    expect(longestMs).toBeLessThan(2000);
  });

  it('a signal stops it, and others get the thread in between', async () => {
    const stop = new AbortController();
    let turns = 0;
    const ticking = setInterval(() => (turns += 1), 1);
    const reading = readDrawingInSlices('large', LINES, {
      signal: stop.signal,
      onProgress: (share) => share > 0.2 && stop.abort(new Error('stopped')),
    });
    await expect(reading).rejects.toThrow('stopped');
    clearInterval(ticking);
    expect(turns).toBeGreaterThan(0);
  });

  it('gives the same as at once', async () => {
    const bytes = encode(dxf({ header: inMetres, entities: [rectangle('Deck', 40, 30)] }));
    const sliced = await readDrawingInSlices('small', bytes);
    const steps = readingSteps('small', bytes, {});
    let step = steps.next();
    while (!step.done) step = steps.next();
    expect(sliced).toEqual(step.value);
  });
});

describe('limits', () => {
  it('a file over the limit is refused before it is read', async () => {
    const large = new Uint8Array(MAX_BYTES + 1).fill(0x20);
    const result = await readDrawingInSlices('large', large);
    expect(result.issues).toMatchObject([{ code: 'FILE_TOO_LARGE', level: 'error', expected: 'at most 400 MB' }]);
  });

  it('an outline of a million points is simplified in one pass', () => {
    // A circle of 50 m with a ripple of 1 mm: chords of 5 mm need at least π / acos(1 − 0.005/50) = 222 points.
    const count = 1_000_000;
    const wave = Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      const radius = 50 + 0.001 * Math.sin(1000 * angle);
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    const steps = readingSteps('wave', encode(dxf({ header: inMetres, entities: [polyline('Deck', wave)] })), {});
    let step = steps.next();
    while (!step.done) step = steps.next();
    const shape = step.value.layers[0]?.shapes[0];
    if (shape?.kind !== 'ring') throw new RangeError('no ring');
    expect(shape.points.length).toBeGreaterThan(200);
    expect(shape.points.length).toBeLessThan(1000);
    for (const [x, y] of shape.points) expect(Math.abs(Math.hypot(x, y) - 50)).toBeLessThan(0.0011);
    // Middle of every chord within 5 mm + ripple.
    for (const [i, [x, y]] of shape.points.entries()) {
      const [nextX, nextY] = shape.points[(i + 1) % shape.points.length]!;
      expect(50 - Math.hypot((x + nextX) / 2, (y + nextY) / 2)).toBeLessThan(0.0065);
    }
    expect(step.value.mends.find(({ code }) => code === 'SIMPLIFIED')?.says).toMatch(
      /1,000,000 points became \d{3}, area changed by -?\d+(\.\d+)? m²/,
    );
  });
});
