/** The engine in the test's own thread, on the demo terrace: one snapshot, one edit, numbers by hand. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { kept } from '../../src/edit/variants.ts';
import type { EditAnswer, Snapshot } from '../../src/model/engine.ts';
import { MAP_KINDS } from '../../src/model/maps.ts';
import type { Picture, SolidMesh } from '../../src/model/picture.ts';
import { createEngine } from '../../src/worker/engine.ts';

const TERRACE = readFileSync(new URL('../../scenes/terrace.scene.json', import.meta.url), 'utf8');

async function opened() {
  const engine = createEngine();
  return { engine, snapshot: snapshotOf(await engine.open(TERRACE)) };
}

function snapshotOf(answer: EditAnswer): Snapshot {
  if (!answer.ok) throw new Error(answer.issues.map((issue) => issue.got).join());
  if (!('snapshot' in answer)) throw new Error('only a preview');
  return answer.snapshot;
}

/** Thickness of a layer in the picture: greatest distance of the two surfaces of its prism. */
function drawnThicknessM(picture: Picture, owner: string, layer: number): number {
  const prism = picture.prisms.find((p) => p.owner === owner && picture.parts[p.parts[0]].kind !== 'slab')!;
  const points = prism.plan.length / 2;
  const at = (surface: number) => prism.heights.subarray(surface * points, (surface + 1) * points);
  return at(layer + 1).reduce((most, top, i) => Math.max(most, top - at(layer)[i]), 0);
}

describe('opening the terrace', () => {
  it('gives a whole snapshot', async () => {
    const { snapshot } = await opened();
    expect(snapshot.scene.name).toBe('Pebble Terrace');
    // 9 m × 6 m in cells of 0.25 m
    expect(snapshot.grid).toEqual({ columns: 36, rows: 24, cellM: 0.25, x0M: 0, y0M: 0 });
    expect(snapshot.originM).toEqual([0, 0]);
    expect(snapshot.report.cells).toBe(864);
    expect(snapshot.stages.map((stage) => stage.id)).toEqual(['S1', 'S2', 'S3', 'S4', 'S5']);
    expect(snapshot.buildUps.map((b) => [b.id, b.zones, b.layers.length])).toEqual([
      ['paving', ['paving'], 9],
      ['bed', ['bed'], 6],
      ['gravel', ['gravel'], 5],
    ]);
    expect(snapshot.evaluatedMs).toBeGreaterThanOrEqual(0);
  });

  it('says which bay judges each cell: B1 left of x = 4.5, B2 right of it', async () => {
    const { snapshot } = await opened();
    expect(snapshot.bayAt).toHaveLength(864);
    snapshot.bayAt.forEach((bay, cell) => {
      expect(bay, `cell ${cell}`).toBe(cell % 36 < 18 ? 0 : 1);
    });
  });

  it('draws every layer, the slab, and what stands on it', async () => {
    const { picture } = (await opened()).snapshot;
    const layers = picture.parts.filter((part) => part.layer >= 0);
    expect(layers).toHaveLength(20);
    for (const kind of ['slab', 'column', 'outlet', 'edge', 'line load', 'block', 'stockpile', 'flood water'] as const) {
      expect(
        picture.parts.some((part) => part.kind === kind),
        kind,
      ).toBe(true);
    }
    expect(picture.notDrawn).toEqual([]);
    expect(picture.bays.map((bay) => bay.id)).toEqual(['B1', 'B2']);
  });

  it('answers for every map and stage, and for cells', async () => {
    const { engine, snapshot } = await opened();
    // The map of differences needs another scheme to compare with.
    await engine.edit(kept(snapshot.scene, 'as it is'), { kind: 'parts', act: 'add', part: 'variant', names: ['as it is'] });
    for (const kind of MAP_KINDS) {
      for (const stage of [null, ...snapshot.stages.keys()]) {
        const map = await engine.map(kind, stage, kind === 'difference' ? 'A' : null);
        expect(map.values, `${kind} ${stage}`).toHaveLength(864);
        expect(map.dataCells + map.noDataCells, `${kind} ${stage}`).toBe(864);
      }
    }
    expect((await engine.coreLog(0, null))?.bay).toBe('B1');
    expect(await engine.coreLog(-1, null)).toBeNull();
  });

  it('is plain data that can cross to another thread', async () => {
    const { snapshot } = await opened();
    expect(structuredClone(snapshot)).toEqual(snapshot);
  });

  it('refused says why; before that there is nothing to ask', async () => {
    const engine = createEngine();
    await expect(engine.map('load', null)).rejects.toThrow(RangeError);
    expect(await engine.open('no json')).toMatchObject({ ok: false, issues: [expect.objectContaining({ level: 'error' })] });
  });
});

describe('setting the substrate of the bed from 350 to 450 mm', () => {
  // 0.1 m of 1450 kg/m³ saturated: 0.1 · 1.45 · 9.81
  const MORE = 1.42245;
  // A cell in the bed, x 0.5 … 0.75, y 1 … 1.25: column 2, row 4
  const CELL = 4 * 36 + 2;

  async function edited() {
    const { engine, snapshot } = await opened();
    const map = await engine.map('load', null);
    const depth = await engine.map('depth', null);
    const before = { report: snapshot.report, picture: snapshot.picture, loadKNm2: map.values[CELL], depthMm: depth.values[CELL] };
    const log = (await engine.coreLog(CELL, null))!;
    const after = snapshotOf(await engine.setThickness('bed', 5, 450));
    return { engine, before, beforeLog: log, after };
  }

  it('changes the report by 0.1 m of substrate', async () => {
    const { before, after } = await edited();
    const zone = (report: typeof after.report, id: string) => report.zones.find((z) => z.id === id)!;
    expect(zone(after.report, 'bed').saturatedKNm2.mean - zone(before.report, 'bed').saturatedKNm2.mean).toBeCloseTo(MORE, 9);
    expect(zone(after.report, 'bed').depthMm.mean - zone(before.report, 'bed').depthMm.mean).toBeCloseTo(100, 9);
    expect(zone(after.report, 'paving')).toEqual(zone(before.report, 'paving'));
    // The bed is 9 m × 2 m.
    expect(after.report.deck.saturatedKN - before.report.deck.saturatedKN).toBeCloseTo(18 * MORE, 9);
    expect(after.buildUps[1].layers[5].thicknessMm).toBeCloseTo(450, 9);
  });

  it('changes the picture', async () => {
    const { before, after } = await edited();
    expect(drawnThicknessM(before.picture, 'bed', 5)).toBeCloseTo(0.35, 6);
    expect(drawnThicknessM(after.picture, 'bed', 5)).toBeCloseTo(0.45, 6);
  });

  it('changes the maps', async () => {
    const { engine, before } = await edited();
    expect((await engine.map('load', null)).values[CELL] - before.loadKNm2).toBeCloseTo(MORE, 5);
    expect((await engine.map('depth', null)).values[CELL] - before.depthMm).toBeCloseTo(100, 3);
  });

  it('changes the core log', async () => {
    const { engine, beforeLog } = await edited();
    const log = (await engine.coreLog(CELL, null))!;
    expect(log.saturatedKNm2 - beforeLog.saturatedKNm2).toBeCloseTo(MORE, 9);
    expect(log.finishedM - beforeLog.finishedM).toBeCloseTo(0.1, 9);
    expect(log.layers[5].thicknessMm).toBeCloseTo(450, 9);
  });

  it('refused changes nothing', async () => {
    const { engine, snapshot } = await opened();
    expect(await engine.setThickness('paving', 4, 20)).toMatchObject({ ok: false });
    expect(snapshotOf(await engine.setThickness('bed', 5, 350)).report).toEqual(snapshot.report);
  });
});

describe('a deck high above the sea', () => {
  it('is drawn from a datum, so that a slip sheet of 0.2 mm keeps its thickness', async () => {
    const scene = JSON.parse(TERRACE);
    const raise = (value: unknown): unknown => {
      if (Array.isArray(value))
        return value.length === 3 && value.every((v) => typeof v === 'number') ? [value[0], value[1], value[2] + 2400] : value.map(raise);
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(
        Object.entries(value).map(([key, v]) => [key, /^(levelM|membraneTopM|invertM)$/.test(key) ? (v as number) + 2400 : raise(v)]),
      );
    };
    const engine = createEngine();
    const answer = await engine.open(JSON.stringify(raise(scene)));
    if (!answer.ok) throw new Error(answer.issues.map((issue) => issue.mend).join());
    const { picture, datumM, report } = answer.snapshot;
    expect(datumM).toBe(2400);
    const sheet = picture.parts.findIndex((part) => part.owner === 'paving' && part.kind === 'slip');
    const zone = report.zones.find((one) => one.id === 'paving');
    // by hand: 31.5 m² · 0.2 mm
    expect(zone?.areaM2).toBeCloseTo(31.5, 9);
    expect(Math.abs(volumeM3(picture.solids, sheet) / (31.5 * 0.0002) - 1)).toBeLessThan(0.001);
  });
});

describe('files to save', () => {
  it('have the quantities of the scene as it stands after an edit: bed of 18 m² · 0.30 m', async () => {
    const { engine } = await opened();
    await engine.setThickness('bed', 5, 300);
    const { name, bytes } = await engine.exportFile('take-off csv', 'en');
    expect(name).toBe('pebble-terrace-take-off.csv');
    // 5.4 m³, loose · 1.2
    expect(new TextDecoder().decode(bytes)).toMatch(/\r\nsubstrate-intensive,[^\r]*,18,5\.4,6\.48,m³ loose,/);
  });

  it('are none without a scene', async () => {
    await expect(createEngine().exportFile('take-off csv', 'en')).rejects.toThrow(RangeError);
  });
});

/** Volume of one part by the divergence theorem, taken about one of its own points. */
function volumeM3({ positions, parts, triangles }: SolidMesh, part: number): number {
  let sum = 0;
  let origin = -1;
  const at = (v: number, axis: number) => positions[3 * v + axis] - positions[3 * origin + axis];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = triangles.subarray(t, t + 3);
    if (parts[a] !== part) continue;
    if (origin < 0) origin = a;
    const cross = (i: number, j: number) => at(b, i) * at(c, j) - at(b, j) * at(c, i);
    sum += at(a, 0) * cross(1, 2) + at(a, 1) * cross(2, 0) + at(a, 2) * cross(0, 1);
  }
  return sum / 6;
}

it('a core log says what an infill puts into the voids besides its thickness', async () => {
  const engine = createEngine();
  const answer = await engine.open(readFileSync(new URL('../../scenes/courtyard.scene.json', import.meta.url), 'utf8'));
  if (!answer.ok) throw new Error('courtyard did not open');
  const { grid } = answer.snapshot;
  const log = await engine.coreLog(Math.floor(grid.rows / 2) * grid.columns + Math.floor(grid.columns / 2), null);
  const lava = log?.layers.find((layer) => layer.materialId === 'lava-8-16');
  // drain-60 of the catalogue has voids of 48 l/m²; the scene lays 10 mm of lava over them
  expect(lava?.intoVoidsLm2).toBeCloseTo(48, 9);
  expect(lava?.thicknessMm).toBeCloseTo(10, 9);
});

describe('sections and drawings', () => {
  /** Soil of the bed is 2 m wide and 0.35 m deep. */
  const ACROSS = [
    [2, 0],
    [2, 6],
  ] as const;

  it('cuts the scene as it stands, also after an edit', async () => {
    const { engine } = await opened();
    const soilM2 = async () => {
      const { pieces } = await engine.section(ACROSS, null);
      return pieces.filter((piece) => piece.owner === 'bed' && piece.kind === 'substrate').reduce((sum, piece) => sum + piece.areaM2, 0);
    };
    expect(await soilM2()).toBeCloseTo(2 * 0.35, 9);
    snapshotOf(await engine.setThickness('bed', 5, 400));
    expect(await soilM2()).toBeCloseTo(2 * 0.4, 9);
  });

  it('shows a stage: fleece and drainage, no slabs yet', async () => {
    const { engine } = await opened();
    const { stage, pieces } = await engine.section(ACROSS, 1);
    expect(stage).toEqual({ id: 'S2', name: 'Protect and drain' });
    expect(pieces.some((piece) => piece.kind === 'protection')).toBe(true);
    expect(pieces.some((piece) => piece.kind === 'surfacing' || piece.kind === 'substrate')).toBe(false);
  });

  it.each([
    ['section svg', 'pebble-terrace-section.svg', 'image/svg+xml'],
    ['section dxf', 'pebble-terrace-section.dxf', 'image/vnd.dxf'],
    ['plan svg', 'pebble-terrace-plan.svg', 'image/svg+xml'],
    ['plan dxf', 'pebble-terrace-plan.dxf', 'image/vnd.dxf'],
    ['model glb', 'pebble-terrace-model.glb', 'model/gltf-binary'],
  ] as const)('hands out %s', async (kind, name, mediaType) => {
    const { engine } = await opened();
    const file = await engine.exportDrawn(kind, { language: 'en', line: ACROSS });
    expect([file.name, file.mediaType]).toEqual([name, mediaType]);
    expect(file.bytes.length).toBeGreaterThan(1000);
  });

  it('refuses both while no scene is open', async () => {
    const engine = createEngine();
    await expect(engine.section(ACROSS, null)).rejects.toThrow(RangeError);
    await expect(engine.exportDrawn('model glb', { language: 'en' })).rejects.toThrow(RangeError);
  });
});

describe('comparing with another file', () => {
  const utf16 = (text: string) => new Uint8Array(new Uint16Array([0xfeff, ...[...text].map((letter) => letter.charCodeAt(0))]).buffer);
  const ask = async (bytes: Uint8Array, language: 'en' | 'de' = 'en') => {
    const { engine } = await opened();
    if (language !== 'en') await engine.speak(language);
    return engine.compareFile(bytes);
  };
  const named = TERRACE.replace('"name": "Pebble Terrace"', '"name": "Terrasse am Mühlgrün"');

  it('reads text in two bytes per letter and in an older code page, and says so', async () => {
    expect(named).not.toBe(TERRACE);
    const wide = await ask(utf16(named));
    expect(wide).toMatchObject({ ok: true, comparison: { name: 'Terrasse am Mühlgrün' }, notes: ['Text was read as UTF-16LE.'] });
    // In Windows-1252 each of these letters is one byte of its own number.
    const old = Uint8Array.from([...named].map((letter) => letter.charCodeAt(0)));
    expect(old.every((byte, i) => byte === named.charCodeAt(i))).toBe(true);
    expect(await ask(old, 'de')).toMatchObject({
      ok: true,
      comparison: { name: 'Terrasse am Mühlgrün' },
      notes: ['Text wurde als windows-1252 gelesen.'],
    });
    expect(await ask(new TextEncoder().encode(named))).toMatchObject({ ok: true, notes: [] });
  });

  it('refuses what is no scene with the words of opening it', async () => {
    expect(await ask(new TextEncoder().encode('x;y;z\n1;2;3\n'))).toMatchObject({
      ok: false,
      issues: [{ code: 'FILE_KIND', got: 'a table or another text', expected: 'a scene (*.scene.json)' }],
    });
    expect(await ask(new Uint8Array(0), 'de')).toMatchObject({
      ok: false,
      issues: [{ code: 'FILE_EMPTY', got: 'eine leere Datei (0 Byte)' }],
    });
  });
});

describe('a thickness dragged within a gesture', () => {
  const CELL = 4 * 36 + 2;
  const within = { gesture: 1, map: { kind: 'depth', stage: null } } as const;
  const dragged = async (thicknessMm: number, opening = opened()) => {
    const { engine, snapshot } = await opening;
    const answer = await engine.setThickness('bed', 5, thicknessMm, within);
    if (!('preview' in answer)) throw new Error('no preview');
    return { engine, snapshot, preview: answer.preview };
  };
  /** What is read of a map of the opened scene is a copy of its own. */
  const depthMm = async (engine: ReturnType<typeof createEngine>) => (await engine.map('depth', null)).values[CELL];

  it('brings its map and picture at once, and the report when it is asked for', async () => {
    const opening = opened();
    const before = await depthMm((await opening).engine);
    const { engine, snapshot, preview } = await dragged(450, opening);
    // From 350 to 450 mm.
    expect(preview.map!.values[CELL] - before).toBeCloseTo(100, 3);
    expect(preview.buildUps[1].layers[5].thicknessMm).toBeCloseTo(450, 9);
    const spoken = (await engine.finish(true))!;
    const zone = (report: typeof spoken.report) => report.zones.find(({ id }) => id === 'bed')!;
    expect(zone(spoken.report).depthMm.mean - zone(snapshot.report).depthMm.mean).toBeCloseTo(100, 9);
  });

  it('does not finish the report of a state that is gone', async () => {
    const { engine, snapshot } = await dragged(450);
    const late = engine.finish(true);
    await engine.setThickness('bed', 5, 400, within);
    expect(await late).toBeNull();
    const { report } = (await engine.finish(true))!;
    const bed = (zones: typeof report.zones) => zones.find(({ id }) => id === 'bed')!.depthMm.mean;
    // From 350 to 400 mm.
    expect(bed(report.zones) - bed(snapshot.report.zones)).toBeCloseTo(50, 9);
  });

  it('goes on with the report where what came meanwhile was refused', async () => {
    const { engine } = await dragged(450);
    const late = engine.finish(true);
    expect(await engine.setThickness('bed', 5, -1, within)).toMatchObject({ ok: false });
    expect(await late).not.toBeNull();
  });

  it('has the whole answer where the scene gets other parts, or there is no gesture', async () => {
    const { engine, preview } = await dragged(450);
    const { zones } = preview.scene;
    const renamed = zones.map((zone, z) => (z === 0 ? { ...zone, name: `${zone.name} again` } : zone));
    const edit = { kind: 'parts', act: 'change', part: 'zone', names: [] } as const;
    expect(snapshotOf(await engine.edit({ zones: renamed }, edit, within)).report.format).toBe('loamdeck-report');
    expect(snapshotOf(await engine.setThickness('bed', 5, 400)).report.format).toBe('loamdeck-report');
  });

  it('makes the report by itself for whoever asks for what rests on it', async () => {
    const { engine } = await dragged(450);
    const { bytes } = await engine.exportFile('report json', 'en');
    const report = JSON.parse(new TextDecoder().decode(bytes));
    expect(report).toEqual(JSON.parse(JSON.stringify((await engine.finish(true))!.report)));
  });
});
