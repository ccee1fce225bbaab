/** `check --variant`: a kept variant is judged as if its scheme stood in the file alone. */

import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { bay, GRAVITY, ON_SOUND, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const soil = (thicknessMm: number) => ({
  buildups: ON_SOUND.buildups.map((one) => ({
    ...one,
    layers: one.layers.map((layer) => (layer.material === 'soil' ? { ...layer, thicknessMm } : layer)),
  })),
  zones: ON_SOUND.zones,
});
const plain = sceneOf({ deck: { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 5 })] } });
const [thin, thick] = [soil(100), soil(500)];
// materials decide the weights and belong to a scheme.
const { materials } = plain;
const scheme = { materials, ...thick };
const broken = { materials, ...soil(100), zones: [zone('Z1', rect(0, 0, 4, 3), 'gone')] };
const FILES: Record<string, unknown> = {
  kept: { ...plain, ...thin, variants: [{ id: 'A', name: 'deep soil', scheme }] },
  alone: { ...plain, ...thick },
  broken: { ...plain, ...thin, variants: [{ id: 'A', name: 'half a scheme', scheme: broken }] },
  none: { ...plain, ...thin },
};
const call = (...args: string[]) => run(['check', ...args], (file) => new TextEncoder().encode(JSON.stringify(FILES[file])));

describe('check --variant', () => {
  it('gives the report of the scene with that scheme, and its exit code', () => {
    const { out, code } = call('kept', '--variant', 'A', '--json');
    expect(JSON.parse(out)).toEqual(JSON.parse(call('alone', '--json').out));
    // Sheet, element with its water and cloth 2 + 23 + 1, soil 0.5 m · 1500 kg/m³: 776 kg/m² = 7.61 kN/m² of 5.
    expect(JSON.parse(out).bays[0].permanent.patchKNm2).toBeCloseTo(0.776 * GRAVITY, 9);
    expect(code).toBe(1);
    // 176 kg/m² = 1.73 kN/m² of 5.
    expect(call('kept').code).toBe(0);
  });

  it('names the variant above the summary, in German too, and takes the same cells', () => {
    expect(call('kept', '--variant', 'A').out).toMatch(/^Variant A: deep soil\n/);
    expect(call('kept', '--variant', 'A', '--language', 'de').out).toMatch(/^Variante A: deep soil\n/);
    expect(JSON.parse(call('kept', '--variant', 'A', '--json', '--cell', '0.5').out).cells).toBe(48);
  });

  it('refuses a variant that is not kept, naming those there are', () => {
    expect(call('kept', '--variant', 'B')).toMatchObject({
      out: '',
      err: 'kept: there is no variant "B"; there are: A (deep soil).\n',
      code: 2,
    });
    expect(call('none', '--variant', 'A').err).toContain('keeps no variants');
    expect(call('none', '--variant', 'A', '--language', 'de').err).toContain('enthält keine Varianten');
  });

  it('says what is wrong with a scheme that is not valid by itself', () => {
    const { err, code, out } = call('broken', '--variant', 'A');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('broken: variant A: error UNKNOWN_ID at zones[0].buildup: found');
  });

  it('belongs to check alone', () => {
    expect(run(['export', 'kept', '--variant', 'A'], () => new Uint8Array()).err).toContain('has no option "--variant"');
  });
});
