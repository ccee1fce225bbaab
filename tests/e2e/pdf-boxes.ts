/** Reads from a PDF how many pages it has, how large they are, and the box of everything drawn on them, in millimetres. */

import { inflateSync } from 'node:zlib';

/** On the page, from its lower left corner [mm]. */
export interface DrawnBox {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

const MM_PER_PT = 25.4 / 72;

/** Width and height of every page [mm]. */
export function pageSizes(pdf: Buffer): [number, number][] {
  const text = pdf.toString('latin1');
  const boxes = [...text.matchAll(/\/MediaBox\s*\[\s*([\d.]+)\s+([\d.]+)\s+([\d.]+)\s+([\d.]+)\s*\]/g)];
  return boxes.map(([, x0, y0, x1, y1]) => [(Number(x1) - Number(x0)) * MM_PER_PT, (Number(y1) - Number(y0)) * MM_PER_PT]);
}

/** Texts of all compressed streams that draw. */
function contents(pdf: Buffer): string[] {
  const text = pdf.toString('latin1');
  return [...text.matchAll(/\/FlateDecode[^>]*(?:>>)?[^>]*>>\s*stream\r?\n/g)].flatMap((match) => {
    const start = match.index + match[0].length;
    const end = text.indexOf('endstream', start);
    try {
      return [inflateSync(pdf.subarray(start, end)).toString('latin1')];
    } catch {
      return [];
    }
  });
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

/** Boxes of all paths, by the operators of the PDF standard: q, Q, cm, m, l, c, re and those that paint. */
export function drawnBoxes(pdf: Buffer): DrawnBox[] {
  return contents(pdf).flatMap((content) => {
    const found: DrawnBox[] = [];
    let matrix: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    let numbers: number[] = [];
    let points: [number, number][] = [];
    const put = (x: number, y: number) => {
      const [a, b, c, d, e, f] = matrix;
      points.push([(a * x + c * y + e) * MM_PER_PT, (b * x + d * y + f) * MM_PER_PT]);
    };
    for (const token of content.split(/[\s[\]]+/)) {
      const value = Number(token);
      if (token !== '' && Number.isFinite(value)) {
        numbers.push(value);
        continue;
      }
      const at = (i: number) => numbers.at(i) ?? Number.NaN;
      if (token === 'q') kept.push(matrix);
      else if (token === 'Q') matrix = kept.pop() ?? matrix;
      else if (token === 'cm') matrix = times([at(-6), at(-5), at(-4), at(-3), at(-2), at(-1)], matrix);
      else if (token === 'm' || token === 'l' || token === 'c') put(at(-2), at(-1));
      else if (token === 're') {
        put(at(-4), at(-3));
        put(at(-4) + at(-2), at(-3) + at(-1));
      } else if (/^(f|F|f\*|B|B\*|b|b\*|S|s|n)$/.test(token)) {
        if (points.length > 1 && token !== 'n') {
          const xs = points.map(([x]) => x);
          const ys = points.map(([, y]) => y);
          const [x, y] = [Math.min(...xs), Math.min(...ys)];
          found.push({ x, y, widthMm: Math.max(...xs) - x, heightMm: Math.max(...ys) - y });
        }
        points = [];
      }
      numbers = [];
    }
    return found;
  });
}
