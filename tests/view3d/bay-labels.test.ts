/** Which maps bays are labelled on, and with what. */

import { expect, it } from 'vitest';
import { MAP_KINDS } from '../../src/model/maps.ts';
import { bayLabelsOn } from '../../src/view3d/bay-labels.ts';

it('a permitted load stands only where a map tells of loads, and no bay on maps of water, edges and reach', () => {
  const on = (told: string) => MAP_KINDS.filter((kind) => bayLabelsOn(kind) === told);
  expect(on('noted')).toEqual(['load', 'utilisation', 'worst-stage', 'difference']);
  expect(on('none')).toEqual(['upstand', 'fall', 'reach', 'held', 'catchment', 'flow', 'ponding', 'blocked']);
  expect(on('plain')).toEqual(['depth', 'substrate', 'make-up', 'finished', 'wheel-membrane', 'wheel-bearing']);
  expect(bayLabelsOn(null)).toBe('none');
});
