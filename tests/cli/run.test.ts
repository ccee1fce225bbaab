/** Calls of the command line in process: what is printed where, and the exit code. */

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CATALOGUE_SOURCES } from '../../src/catalogue/catalogue.ts';
import { run } from '../../src/cli/run.ts';
import { bay, ON_SOUND, rect, sceneOf } from '../helpers/scene-builder.ts';

const GOOD = JSON.stringify(sceneOf(ON_SOUND));
/** 1.7266 kN/m² on a bay that permits 1. */
const OVER = JSON.stringify(sceneOf({ ...ON_SOUND, deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 1 })] } }));
/** 1.7266 of 1.75: 98.7 %, no stop. */
const NEAR = JSON.stringify(sceneOf({ ...ON_SOUND, deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 1.75 })] } }));

const call = (text: string, ...args: string[]) => run(['check', 'deck.scene.json', ...args], () => new TextEncoder().encode(text));

describe('exit codes', () => {
  it('0 without a stop finding, also with checks', () => {
    expect(call(GOOD).code).toBe(0);
    const near = call(NEAR);
    expect(near.code).toBe(0);
    expect(near.out).toContain('check load.permanent');
  });

  it('1 with a stop finding, on paper and as JSON', () => {
    expect(call(OVER).code).toBe(1);
    expect(call(OVER, '--json').code).toBe(1);
  });

  it('2 for a file that is no scene: a message on standard error only', () => {
    const result = call('{ "format": "loamdeck-scene" }');
    expect([result.code, result.out]).toEqual([2, '']);
    expect(result.err).toMatch(/^deck\.scene\.json: error /);
  });
});

describe('--json', () => {
  it('prints the report and nothing else', () => {
    const result = call(GOOD, '--json');
    expect(result.err).toBe('');
    expect(JSON.parse(result.out)).toMatchObject({ format: 'loamdeck-report', version: 1, cells: 192 });
  });

  it('leaves warnings to standard error', () => {
    const dated = sceneOf({
      ...ON_SOUND,
      deck: { bays: [{ ...bay('A1', rect(0, 0, 4, 3)), basis: { document: 'd', revision: 'A', date: '1.2.2026' } }] },
    });
    const result = call(JSON.stringify(dated), '--json');
    expect(JSON.parse(result.out).findings).toEqual([]);
    expect(result.err).toMatch(/^deck\.scene\.json: warning DATE_FORM at deck\.bays\[0\]\.basis\.date/);
    expect(result.code).toBe(0);
  });
});

describe('--cell', () => {
  it('takes another cell: 4 m × 3 m in cells of 0.5 m are 48', () => {
    expect(JSON.parse(call(GOOD, '--json', '--cell', '0.5').out)).toMatchObject({ cellM: 0.5, cells: 48 });
    expect(JSON.parse(call(GOOD, '--cell=0.05', '--json').out)).toMatchObject({ cellM: 0.05, cells: 4800 });
  });

  it.each(['0', '0.04', '2.1', '-1', '0,5', 'half', ''])('refuses "%s"', (cell) => {
    const result = call(GOOD, `--cell=${cell}`);
    expect(result.code).toBe(2);
    expect(result.err).toContain('--cell');
    expect(result.err).toContain(`"${cell}"`);
  });
});

describe('calls', () => {
  const never = () => {
    throw new Error('must not be read');
  };

  it.each([
    ['no file', ['check'], 'none was'],
    ['two files', ['check', 'a', 'b'], '2 were'],
    ['an unknown option', ['check', 'a', '--jsno'], '--jsno'],
    ['an option without its value', ['check', 'a', '--cell'], '--cell'],
    ['an unknown command', ['draw', 'a'], '"draw"'],
  ])('with %s are refused and the use is shown', (_, args, says) => {
    const result = run(args, never);
    expect([result.code, result.out]).toEqual([2, '']);
    expect(result.err).toContain(says);
    expect(result.err).toContain('npm run --silent check -- FILE [--json] [--cell M]');
  });

  it.each([[['--help']], [['check', '--help']], [['check', '-h']], [[]]])('for help get it: %j', (args) => {
    const result = run(args, never);
    expect([result.code, result.err]).toEqual([0, '']);
    expect(result.out).toContain('Exit code 0');
    expect(result.out).toContain('Not a structural check');
  });
});

describe('files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'deck-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const read = (file: string) => readFileSync(file);
  const at = (name: string, bytes: Uint8Array | string) => {
    writeFileSync(join(folder, name), bytes);
    return join(folder, name);
  };

  it('that do not exist are named', () => {
    const file = join(folder, 'nothing.json');
    expect(run(['check', file], read)).toEqual({
      out: '',
      err: `${file}: there is no such file. Check the name and the folder.\n`,
      code: 2,
    });
  });

  it('that are folders are named as such', () => {
    const result = run(['check', folder], read);
    expect(result.code).toBe(2);
    expect(result.err).toMatch(/folder/);
  });

  it('that are not UTF-8 are read as what they seem to be, and say so', () => {
    // "ü" in an 8-bit code page, which is no UTF-8
    const result = run(['check', at('latin.json', Buffer.from([0x7b, 0xfc, 0x7d]))], read);
    expect(result.code).toBe(2);
    expect(result.err).toMatch(/latin\.json: note TEXT_DECODED: Text was read as windows-1252/);
  });

  it('with a byte order mark are read', () => {
    expect(run(['check', at('marked.json', `\uFEFF${GOOD}`)], read).code).toBe(0);
  });

  it('with an unknown key get its place, and the nearest key', () => {
    const bad = GOOD.replace('"outline"', '"outlin"');
    const result = run(['check', at('typo.json', bad)], read);
    expect(result.code).toBe(2);
    expect(result.err).toMatch(/typo\.json: error UNKNOWN_KEY at .*"outlin".*outline/);
  });

  it('cut short are refused, not crashed on', () => {
    for (const length of [0, 1, 50, GOOD.length - 1]) {
      const result = run(['check', at('cut.json', GOOD.slice(0, length))], read);
      expect(result.code, `${length} signs`).toBe(2);
      expect(result.err).toContain('cut.json: error ');
    }
  });
});

describe('export', () => {
  const read = () => new TextEncoder().encode(GOOD);

  it('prints the take-off as CSV and nothing else', () => {
    const result = run(['export', 'deck.scene.json'], read);
    expect([result.code, result.err]).toEqual([0, '']);
    expect(result.out.startsWith('\uFEFFmaterial,name,')).toBe(true);
    expect(result.file).toBeUndefined();
  });

  it('prints the table asked for, in German', () => {
    // A1: 12 m²
    expect(run(['export', 'd', '--table', 'bays', '--language', 'de'], read).out).toMatch(/^\uFEFFFeld;Fläche m².*\r\nA1;12;/);
  });

  it('gives a workbook to write', async () => {
    const { out, file, code } = run(['export', 'd', '--xlsx', 'out.xlsx'], read);
    expect([out, code, file?.name]).toEqual(['', 0, 'out.xlsx']);
    // A zip begins with "PK", 3, 4
    expect([...(await file!.bytes).subarray(0, 4)]).toEqual([0x50, 0x4b, 3, 4]);
  });

  it.each([
    ['a table that is none', ['--table', 'beams'], '"beams"'],
    ['another language', ['--language', 'fr'], '"fr"'],
    ['a table and a workbook', ['--table', 'bays', '--xlsx', 'o.xlsx'], 'exclude'],
    ['an option of another command', ['--json'], '"export" has no option "--json"'],
  ])('refuses %s', (_, args, says) => {
    const result = run(['export', 'd', ...args], read);
    expect([result.code, result.out]).toEqual([2, '']);
    expect(result.err).toContain(says);
  });

  it.each([
    ['a section as SVG', ['--section', '0,1,4,1', '--svg', 'o.svg'], 'o.svg', '<?xml'],
    ['a section as DXF', ['--section=-1,1,4,1,4,3', '--dxf', 'o.dxf'], 'o.dxf', '0\nSECTION'],
    ['a plan as SVG', ['--plan', '--svg', 'p.svg', '--scale', '200'], 'p.svg', '<?xml'],
    ['a model', ['--glb', 'm.glb'], 'm.glb', 'glTF'],
  ])('gives %s to write', async (_, args, name, begins) => {
    const { out, err, file, code } = run(['export', 'd', ...args], read);
    expect([out, err, code, file?.name]).toEqual(['', '', 0, name]);
    const text = new TextDecoder().decode(await file!.bytes).replaceAll('\r', '');
    expect(text.slice(0, 40).trimStart().startsWith(begins)).toBe(true);
  });

  it('dates a drawing today, or as told', async () => {
    const text = async (...more: string[]) =>
      new TextDecoder().decode(await run(['export', 'd', '--plan', '--svg', 'o', ...more], read, '2026-03-09').file!.bytes);
    expect(await text()).toContain('>Date 2026-03-09<');
    expect(await text('--date', '2026-05-01', '--language', 'de')).toContain('>Datum 01.05.2026<');
  });

  it('draws a stage by its id', async () => {
    const staged = sceneOf({ ...ON_SOUND, stages: [{ id: 'S1', name: 'Fleece first', place: [{ roles: ['protection'] }] }] });
    const readStaged = () => new TextEncoder().encode(JSON.stringify(staged));
    const { file } = run(['export', 'd', '--section', '0,1,4,1', '--svg', 'o', '--stage', 'S1'], readStaged);
    const text = new TextDecoder().decode(await file!.bytes);
    expect(text).toContain('>Section A–A, stage: Fleece first<');
    expect(text).toContain('CUT-PROTECTION');
    expect(text).not.toContain('CUT-SUBSTRATE');
  });

  it.each([
    ['an output without a drawing', ['--svg', 'o'], '--section X,Y,X,Y or --plan'],
    ['a drawing without an output', ['--plan'], '--svg OUT or --dxf OUT'],
    ['a line of one point and a half', ['--section', '1,2,3', '--svg', 'o'], '"1,2,3"'],
    ['a line with a gap', ['--section', '1,,3,4', '--svg', 'o'], '"1,,3,4"'],
    ['two outputs', ['--plan', '--svg', 'o', '--dxf', 'p'], 'exclude'],
    ['a scale of nothing', ['--plan', '--svg', 'o', '--scale', '0'], '"0"'],
    ['a scale of words', ['--plan', '--svg', 'o', '--scale', '1:50'], '"1:50"'],
    ['a DXF with other heights', ['--section', '0,0,1,1', '--dxf', 'o', '--heights', '2'], 'always true'],
    ['a plan of a stage', ['--plan', '--svg', 'o', '--stage', 'S1'], '--stage belongs to a section'],
    ['a model with a scale', ['--glb', 'o', '--scale', '50'], '--scale belongs to a drawing'],
    ['a stage that is none', ['--section', '0,0,1,1', '--svg', 'o', '--stage', 'Q'], 'There is no stage "Q"; there are: '],
  ])('refuses %s', (_, args, says) => {
    const result = run(['export', 'd', ...args], read);
    expect([result.code, result.out, result.file]).toEqual([2, '', undefined]);
    expect(result.err).toContain(says);
  });

  it('gives no table of a file that is no scene', () => {
    const result = run(['export', 'd'], () => new TextEncoder().encode('{}'));
    expect([result.code, result.out]).toEqual([2, '']);
  });
});

describe('sources', () => {
  const never = () => {
    throw new Error('must not be read');
  };

  it('lists every number of the catalogue and the rules, the best grade first', () => {
    const { out, err, code } = run(['sources'], never);
    expect([err, code]).toEqual(['', 0]);
    expect(out).toMatch(/^Read: /);
    for (const { kind, entry, number, source } of CATALOGUE_SOURCES) {
      expect(out, `${entry} ${number}`).toContain(source.document);
      expect(out).toMatch(new RegExp(`${kind} ${entry.replaceAll('.', '\\.')}: ([^\\n]*, )?${number.replaceAll('.', '\\.')}[,;\\n]`));
    }
    expect(out).not.toMatch(/used in|undefined/);
  });

  it('says how many numbers rest on each grade: together all there are', () => {
    const counts = [...run(['sources'], never).out.matchAll(/\((\d+) numbers? on \d+ sources?\)/g)].map(([, count]) => Number(count));
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(CATALOGUE_SOURCES.length);
  });

  it('names what in a scene rests on a number, and what the scene brings itself', () => {
    const scene = sceneOf({
      buildups: [{ id: 'bed', name: 'Bed', layers: [{ material: 'substrate-lawn', thicknessMm: 200 }] }],
      zones: [],
    });
    const own = { ...scene, materials: [{ ...scene.materials![0], source: 'data sheet 7' }] };
    const zones = [{ id: 'Z1', outline: rect(0, 0, 4, 3), buildup: 'bed' }];
    const { out } = run(['sources', 'd'], () => new TextEncoder().encode(JSON.stringify({ ...own, zones })));
    expect(out).toMatch(/material substrate-lawn: .*; used in bed/);
    expect(out).toContain('data sheet 7');
  });
});
