/** `diff` and `lighten` on the command line: what is printed and written, and the exit codes. */

import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { SOLVER } from '../helpers/lightened.ts';
import { bay, ON_SOUND, rect, sceneOf } from '../helpers/scene-builder.ts';

const permitting = (permanentKNm2: number) => sceneOf({ ...ON_SOUND, deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2 })] } });
const FILES: Record<string, unknown> = { good: permitting(12), less: permitting(11), over: permitting(1), broken: {} };
const call = (...args: string[]) =>
  run(args, (file) => new TextEncoder().encode(JSON.stringify(FILES[file])), undefined, { solver: SOLVER });

describe('diff', () => {
  it('names the change; the exit code is that of check on the second scene', () => {
    const { out, code } = call('diff', 'good', 'less');
    expect(out).toContain('Load plan\n  bay A1: permanentKNm2 before 12 kN/m²; now 11 kN/m²\n');
    expect(code).toBe(0);
    expect(call('diff', 'good', 'over').code).toBe(1);
    expect(call('diff', 'over', 'good').code).toBe(0);
  });

  it('gives JSON and nothing else', () => {
    const { changes } = JSON.parse(call('diff', 'good', 'less', '--json').out);
    expect(changes).toHaveLength(1);
  });

  it('refuses files that are no scenes, and calls with one file', () => {
    expect(call('diff', 'good', 'broken').code).toBe(2);
    expect(call('diff', 'good').err).toMatch(/^Two scene files were expected/);
  });
});

describe('lighten', () => {
  it('has nothing to do within the limits', () => {
    expect(call('lighten', 'good')).toMatchObject({ out: 'No bay is over its limit.\n', code: 0 });
  });

  it('says what is in the way', () => {
    const { out, code } = call('lighten', 'over');
    // The same load stands in the last stage and in the finished garden: told once.
    expect(out.match(/1\.73 of 1\.00 kN\/m²/g)).toHaveLength(1);
    expect(out).toContain('bay A1, permanent, stage substrate: 1.73 of 1.00 kN/m²');
    expect(code).toBe(1);
  });

  it('refuses an unknown aim', () => {
    expect(call('lighten', 'good', '--by', 'luck').err).toMatch(/^--by takes one of: cost, weight, change; found "luck"/);
  });
});
