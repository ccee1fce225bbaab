/** The command as people and programs call it, in a process of its own. */

import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
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
