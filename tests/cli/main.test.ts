/** The command as people and programs call it, in a process of its own. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const check = (...args: string[]) => spawnSync('npm', ['run', '--silent', 'check', '--', ...args], { cwd: ROOT, encoding: 'utf8' });

it('prints the report as pure JSON and ends with 0', () => {
  const result = check('scenes/terrace.scene.json', '--json');
  expect(result.status).toBe(0);
  const report = JSON.parse(result.stdout);
  expect(report).toMatchObject({ format: 'loamdeck-report', version: 1, scene: 'Pebble Terrace' });
  // 9 m × 6 m
  expect(report.deck.areaM2).toBeCloseTo(54, 9);
}, 60_000);

it('ends with 2 for a file that is not there, message on standard error', () => {
  const result = check('scenes/nothing.scene.json', '--json');
  expect([result.status, result.stdout]).toEqual([2, '']);
  expect(result.stderr).toContain('scenes/nothing.scene.json: there is no such file');
}, 60_000);

it('writes a workbook', () => {
  const folder = mkdtempSync(join(tmpdir(), 'deck-'));
  const out = join(folder, 'terrace.xlsx');
  const result = spawnSync('npm', ['run', '--silent', 'export', '--', 'scenes/terrace.scene.json', '--xlsx', out], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  expect([result.status, result.stdout]).toEqual([0, '']);
  expect(Object.keys(unzipSync(readFileSync(out)))).toContain('xl/worksheets/sheet7.xml');
  rmSync(folder, { recursive: true });
}, 60_000);

it('ends with 2 where the workbook can’t be written', () => {
  const result = spawnSync('npm', ['run', '--silent', 'export', '--', 'scenes/terrace.scene.json', '--xlsx', '/nowhere/at/all.xlsx'], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  expect(result.status).toBe(2);
  expect(result.stderr).toContain("/nowhere/at/all.xlsx: the file can't be written");
}, 60_000);
