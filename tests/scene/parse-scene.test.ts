/** Scenes that open, and how their messages read. */

import { describe, expect, it } from 'vitest';
import { issueLine } from '../../src/model/issue.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { fullScene, KNOWN, minimalScene, square } from './scenes.ts';

describe('scenes that open', () => {
  it('the smallest scene of the contract', () => {
    const reading = parseScene(JSON.stringify(minimalScene()), KNOWN);
    expect(reading.issues).toEqual([]);
    expect(reading.scene).toEqual(minimalScene());
  });

  it('the contract’s example, every key of it', () => {
    const reading = parseScene(JSON.stringify(fullScene(), null, 2), KNOWN);
    expect(reading.issues.map(issueLine)).toEqual([]);
    expect(reading.scene).toEqual(fullScene());
  });

  it('with an infill said to lie flush by a thickness of 0', () => {
    const scene = fullScene();
    scene.buildups[0].layers[2].thicknessMm = 0;
    expect(scene.buildups[0].layers[2].infill).toBe(true);
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(issueLine)).toEqual([]);
  });

  it('with a byte-order mark and Windows line ends', () => {
    const text = `\uFEFF${JSON.stringify(minimalScene(), null, 2).replaceAll('\n', '\r\n')}`;
    expect(parseScene(text, KNOWN).scene).toEqual(minimalScene());
  });

  it('in national-grid coordinates, shapes that would lose their digits otherwise', () => {
    // A triangle of 4 mm by 4 mm at E 392 000, N 5 812 000: its area of 8 mm² drowns in an unshifted shoelace sum,
    // whose terms near 2.3e12 m² carry steps of about 0.0005 m².
    const [east, north] = [392_000, 5_812_000];
    const scene = minimalScene();
    scene.deck.outline = square(east, north, 40);
    const triangle = [
      [east + 1, north + 1],
      [east + 1.004, north + 1],
      [east + 1, north + 1.004],
    ];
    scene.deck.openings = [triangle];
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(issueLine)).toEqual([]);
  });

  it('with clockwise, closed and repeated points', () => {
    const scene = minimalScene();
    const ring = square(0, 0, 10)
      .reverse()
      .flatMap((p) => [p, p]);
    scene.deck.outline = [...ring, ring[0]];
    expect(parseScene(JSON.stringify(scene), KNOWN).scene).not.toBeNull();
  });

  it('with holes that touch the outline and each other in single points', () => {
    const scene = minimalScene();
    // First hole: a diamond with one corner on the lower edge; second: its corner on the first hole's corner.
    scene.deck.openings = [
      [
        [5, 0],
        [6, 1],
        [5, 2],
        [4, 1],
      ],
      [
        [6, 1],
        [8, 2],
        [7, 3],
      ],
    ];
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(issueLine)).toEqual([]);
  });

  it('with crossing breaklines of one level at the crossing', () => {
    const scene = minimalScene();
    // Both at 0.1 in (5, 5): halfway from 0 to 0.2, and level all along.
    scene.deck.levels = {
      spots: [],
      breaklines: [
        [
          [0, 0, 0],
          [10, 10, 0.2],
        ],
        [
          [0, 10, 0.1],
          [10, 0, 0.1],
        ],
      ],
    };
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(issueLine)).toEqual([]);
  });

  it('where the scene’s own material and vehicle replace those of the catalogue', () => {
    const scene = fullScene();
    // Without voids of its own the element no longer takes the infill.
    scene.materials.push({ id: 'drain-60', name: 'Other', role: 'drainage element', areal: { dry: 2, saturated: 2.6 }, thicknessMm: 60 });
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(({ code }) => code)).toEqual(['INFILL_NO_VOIDS']);
  });
});

describe('messages', () => {
  it('name the line, and read as one sentence after the other', () => {
    const text =
      '{\n "format": "loamdeck-scene",\n "version": 1,\n "name": "x",\n "deck": { "outline": [[0,0],[9,0],[9,9]], "bays": [] },\n "buildups": [],\n "zons": []\n}';
    const { scene, issues } = parseScene(text, KNOWN);
    expect(scene).toBeNull();
    expect(issues.map(issueLine)).toEqual([
      'error UNKNOWN_KEY at zons (line 7): found the key "zons"; expected one of $schema, format, version, name, about, currency, grid, rain, flotation, deck, materials, vehicles, buildups, zones, objects, traffic, setUpAreas, stages, accessPoints, views and 5 more. Did you mean "zones"?',
    ]);
  });

  it('stop at fifty and count the rest, errors first', () => {
    const scene = minimalScene();
    scene.buildups = [{ id: 'a', name: 'a', layers: [{ material: 'foam-glass', thicknessMm: 4000 }] }];
    // 60 zones with an unknown build-up, one warning for the thickness.
    scene.zones = Array.from({ length: 60 }, (_, i) => ({ id: `Z${i}`, outline: square(0, 0, 1), buildup: 'none' }));
    const { issues } = parseScene(JSON.stringify(scene), KNOWN);
    expect(issues).toHaveLength(51);
    expect(issues.slice(0, 50).every(({ code }) => code === 'UNKNOWN_ID')).toBe(true);
    expect(issues[50]).toMatchObject({ code: 'MORE_ISSUES', level: 'error', got: '11 further messages' });
  });

  it('are only warnings where the scene opens', () => {
    const scene = fullScene();
    scene.deck.bays[0].basis.date = 'March 2026';
    const reading = parseScene(JSON.stringify(scene), KNOWN);
    expect(reading.scene).not.toBeNull();
    expect(reading.issues.map(({ level }) => level)).toEqual(['warning']);
  });

  it('count bytes where the text is cut, umlauts and byte-order mark included', () => {
    // 3 (mark) + 10 ({"name": ") + 2 (ü) + 3 (…) = 18 bytes
    const { issues } = parseScene('\uFEFF{"name": "ü…', KNOWN);
    expect(issues[0]?.code).toBe('JSON_TRUNCATED');
    expect(issues[0]?.got).toContain('byte 18');
  });
});

describe('keys that mean something to the language', () => {
  it('__proto__ is refused everywhere and changes nothing', () => {
    const text = JSON.stringify(fullScene()).replaceAll('{"', '{"__proto__":{"polluted":true},"');
    const { scene, issues } = parseScene(text, KNOWN);
    expect(scene).toBeNull();
    expect(issues.filter(({ code }) => code === 'UNKNOWN_KEY').length).toBeGreaterThan(20);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('constructor, toString and the like are unknown keys or harmless settings', () => {
    const scene = minimalScene();
    scene.constructor = { prototype: { polluted: true } };
    expect(parseScene(JSON.stringify(scene), KNOWN).issues.map(({ code, path }) => [code, path])).toEqual([['UNKNOWN_KEY', 'constructor']]);
    const view = { id: 'V', name: 'v', eye: [1, 1, 1], target: [0, 0, 0], show: { constructor: 1, toString: 2 } };
    expect(parseScene(JSON.stringify({ ...minimalScene(), views: [view] }), KNOWN).scene?.views).toEqual([view]);
    const zone = { id: 'toString', outline: square(0, 0, 1), buildup: 'constructor' };
    expect(parseScene(JSON.stringify({ ...minimalScene(), zones: [zone] }), KNOWN).issues.map(({ code }) => code)).toEqual(['UNKNOWN_ID']);
  });
});
