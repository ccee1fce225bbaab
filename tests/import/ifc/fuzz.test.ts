/** Damaged models: lines lost, doubled and exchanged, references and values of other kinds. There is an answer each time, soon and without a throw. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftIssues, draftScene } from '../../../src/import/draft-scene.ts';
import { guessRoles } from '../../../src/import/guess-roles.ts';
import { loadMesher } from '../../../src/import/ifc/web-ifc-mesher.ts';
import { readingSteps } from '../../../src/import/read-drawing.ts';
import { runAtOnce } from '../../../src/import/steps.ts';
import type { LayerRoles } from '../../../src/model/drawing.ts';
import { KNOWN_IDS } from '../../../src/project/materials.ts';
import { ALL_MODELS } from './models.ts';

const SEED = 4711;
const RUNS = 150;
/** For each model: a busy machine tries fewer cases, not longer ones [ms]. */
const LONGEST_MS = 1500;

const MESHER = await loadMesher();

const value = fc.constantFrom('0.', '-1.', '1E300', '-1E12', '99999999', '$', '*', '()', "'x'", '.T.', '#1', '#99999', '1.5', '((((');
const mark = fc.constantFrom("'", '(', ')', ';', ',', '#', '$', '/*', '\n', '\\X2\\', '=', '\0', 'ENDSEC;');
const PLACES = { ref: /#\d+/g, number: /-?\d+\.\d*(?:E-?\d+)?/g, type: /IFC[A-Z0-9]+/g, line: /\n#[^\n]*/g } as const;

const damage = fc.record({
  how: fc.constantFrom('ref', 'number', 'type', 'line', 'lost', 'twice', 'mark', 'cut'),
  at: fc.nat(100_000),
  from: fc.nat(100_000),
  value,
  mark,
});

type Damage = typeof damage extends fc.Arbitrary<infer T> ? T : never;

function damaged(text: string, { how, at, from, value: put, mark: sign }: Damage): string {
  if (how === 'mark' || how === 'cut') {
    const place = at % (text.length + 1);
    return how === 'cut' && from % 4 === 0 ? text.slice(0, place) : text.slice(0, place) + sign + text.slice(place + (from % 3));
  }
  const pattern = PLACES[how === 'lost' || how === 'twice' ? 'line' : how];
  const found = [...text.matchAll(pattern)];
  const hit = found[at % Math.max(1, found.length)];
  if (hit === undefined) return text;
  const other = found[from % found.length]![0];
  const instead = { ref: other, number: put, type: other, line: other, lost: '', twice: hit[0] + other }[how];
  return text.slice(0, hit.index) + instead + text.slice(hit.index + hit[0].length);
}

describe(`damaged models (seed ${SEED})`, () => {
  it.each(ALL_MODELS.map((model, i) => [i, model] as const))('model %i', (_, model) => {
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 4 }), fc.boolean(), (damages, use) => {
        const bytes = new TextEncoder().encode(damages.reduce(damaged, model));
        const answers = use ? { truncated: 'use' } : {};
        const result = runAtOnce(readingSteps('damaged.ifc', bytes, { answers, mesher: MESHER }));
        const draft = draftScene(result, Object.fromEntries(guessRoles(result)) as LayerRoles);
        draftIssues(draft, KNOWN_IDS);
        if (result.box === null) expect(result.issues.some(({ level }) => level === 'error')).toBe(true);
        for (const { shapes } of result.layers)
          for (const shape of shapes)
            for (const at of 'points' in shape ? shape.points : [shape.at]) expect(at.every(Number.isFinite)).toBe(true);
      }),
      { seed: SEED, numRuns: RUNS, interruptAfterTimeLimit: LONGEST_MS },
    );
  });
});
