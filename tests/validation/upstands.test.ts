/**
 * Heights of membranes above the finish, through scene file and report.
 *
 * [read] baunetzwissen.de, glossary entry "Anschluss" (German flat-roof guideline and DIN 18531-1): the membrane ends at least 15 cm above the
 *        top of surfacing, gravel or planting at a pitch up to 5°, at a door with a grating or drain at least 5 cm; a second page says the same
 *        of the door (dbz.de, on roof terraces).
 * [secondary] 75 mm at thresholds only, as a trade article quotes BS 6229:2018; the same 150 mm at other edges.
 * The levels 100.480, 100.630, 100.530 and 100.555 are arithmetic on these.
 */

import { describe, expect, it } from 'vitest';
import type { SceneEdge, SceneLimits } from '../../src/model/scene-file.ts';
import { findingsOf, MAKE_UP, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const OUTLINE = rect(0, 0, 4, 3);
const FINISHED_M = 100.48;

/** A deck at 100.000 finished level at 100.480, and one edge along its south side. */
function project(edge: Partial<SceneEdge>, limits: SceneLimits = {}, cellM = 0.25) {
  const levels = { spots: OUTLINE.map(([x, y]): [number, number, number] => [x, y, 100]) };
  const edges: SceneEdge[] = [{ id: 'E', line: [OUTLINE[0], OUTLINE[1]], kind: 'upstand', membraneTopM: 100.63, ...edge }];
  const zones = [zone('Z', OUTLINE, 'make-up', { finish: { kind: 'level', levelM: FINISHED_M } })];
  return read(sceneOf({ deck: { outline: OUTLINE, levels, edges }, buildups: [MAKE_UP], zones, limits }), cellM);
}

const DOOR = { kind: 'threshold', drainedChannel: true } as const;

describe('finished level 100.480', () => {
  it.each<[string, Partial<SceneEdge>, SceneLimits, number, number]>([
    ['an upstand', {}, {}, 100.63, 150],
    ['a door with a drained channel', DOOR, {}, 100.53, 50],
    ['a door without one', { kind: 'threshold' }, {}, 100.63, 150],
    ['a door where 75 mm are asked for', DOOR, { sillMm: 75 }, 100.555, 75],
  ])('%s', (...[, edge, limits, enoughM, requiredMm]) => {
    const enough = project({ ...edge, membraneTopM: enoughM }, limits);
    expect(findingsOf(enough, 'edge.upstand')).toEqual([]);
    expect(enough.report.edges).toEqual([
      { id: 'E', leastUpstandMm: expect.closeTo(requiredMm, 6), at: [expect.closeTo(2, 9), 0], zone: 'Z', requiredMm },
    ]);
    // One millimetre lower
    const [finding] = findingsOf(project({ ...edge, membraneTopM: enoughM - 0.001 }, limits), 'edge.upstand');
    expect(finding).toMatchObject({ severity: 'stop', value: expect.closeTo(requiredMm - 1, 6), limit: requiredMm, unit: 'mm' });
    expect(finding.says).toContain('1 mm are missing');
  });

  it('is the same in every grid', () => {
    for (const cellM of [0.05, 0.3, 0.7, 2]) {
      expect(project({}, {}, cellM).report.edges?.[0].leastUpstandMm, `${cellM} m`).toBeCloseTo(150, 6);
    }
  });

  it('names the source of the limit: the glossary, or the scene’s own', () => {
    const low = { membraneTopM: 100.5 };
    expect(findingsOf(project(low), 'edge.upstand')[0].source).toContain('German flat-roof guideline');
    expect(findingsOf(project(low, { upstandMm: 120, source: 'agreed with the roofer' }), 'edge.upstand')[0].source).toContain(
      'agreed with the roofer',
    );
  });
});
