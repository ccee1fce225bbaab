/** Labels of a plan: inside their region where they fit, shorter where they don't, aside with a line where nothing does. */

import { describe, expect, it } from 'vitest';
import { type PlanLabel, placeLabels } from '../../src/export/plan-labels.ts';
import { type Box, overlaps, type Text, textBox } from '../../src/export/sheet.ts';

const regionOf = (x: number, y: number, width: number, height: number) => ({
  outer: Float64Array.of(x, y, x + width, y, x + width, y + height, x, y + height),
  holes: [],
});

const label = (region: PlanLabel['region'], ...variants: string[][]): PlanLabel => ({ region, variants, looks: {}, best: 'middle' });
const textsOf = (placed: ReturnType<typeof placeLabels>[number]) => placed.shapes.filter((shape): shape is Text => shape.shape === 'text');

describe('labels in regions', () => {
  it('stand in the middle of a region with room', () => {
    const [placed] = placeLabels([label(regionOf(0, 0, 60, 40), ['Lawn'], ['1'])], []);
    expect(placed!.variant).toBe(0);
    const [text] = textsOf(placed!);
    const box = textBox(text!);
    expect(text!.text).toBe('Lawn');
    expect([box.x + box.width / 2, text!.at[1] - 1.25]).toEqual([expect.closeTo(30, 6), expect.closeTo(20, 6)]);
  });

  it('take a shorter variant where the region is narrow', () => {
    // "Gravel strip along the wall" is some 50 mm long; broken into words it is 12 mm wide and 18.5 mm high.
    const lines = ['Gravel', 'strip', 'along', 'the', 'wall'];
    const variants = [['Gravel strip along the wall'], lines, ['7']];
    expect(placeLabels([label(regionOf(0, 0, 20, 40), ...variants)], [])[0]!.variant).toBe(1);
    expect(placeLabels([label(regionOf(0, 0, 8, 8), ...variants)], [])[0]!.variant).toBe(2);
  });

  it('stand beside a region without room, with a line to it', () => {
    const [placed] = placeLabels([label(regionOf(0, 0, 1, 1), ['27'])], []);
    expect(placed!.shapes.map((shape) => shape.shape)).toEqual(['line', 'text']);
  });

  it('keep off each other and off what is there already', () => {
    const region = regionOf(0, 0, 60, 12);
    const column: Box = { x: 25, y: 0, width: 10, height: 12 };
    const labels = ['One', 'Two', 'Three'].map((text) => label(region, [text]));
    const boxes = placeLabels(labels, [column]).flatMap((placed) => textsOf(placed).map(textBox));
    expect(boxes).toHaveLength(3);
    for (const [i, box] of boxes.entries()) {
      expect(overlaps(box, column)).toBe(false);
      for (const other of boxes.slice(i + 1)) expect(overlaps(box, other)).toBe(false);
    }
  });

  it('keep out of holes', () => {
    const [hole, outer] = [regionOf(10, 10, 40, 20).outer, regionOf(0, 0, 60, 40).outer];
    const clockwise = Float64Array.of(hole[0]!, hole[1]!, hole[6]!, hole[7]!, hole[4]!, hole[5]!, hole[2]!, hole[3]!);
    const [placed] = placeLabels([label({ outer, holes: [clockwise] }, ['Ring path'])], []);
    const box = textBox(textsOf(placed!)[0]!);
    expect(overlaps(box, { x: 10, y: 10, width: 40, height: 20 })).toBe(false);
  });
});
