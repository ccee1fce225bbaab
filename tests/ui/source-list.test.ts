/** Sources one by one, by grade, with what rests on them. */

import { describe, expect, it } from 'vitest';
import type { SourceGrade, SourceUse } from '../../src/model/source.ts';
import { listSources, usedEntries } from '../../src/ui/facts/source-list.ts';
import { sources } from '../../src/ui/text/en-sheets.ts';

const use = (entry: string, number: string, [document, grade]: readonly [string, SourceGrade], usedIn: readonly string[]): SourceUse => ({
  kind: 'material',
  entry,
  name: `Name of ${entry}`,
  number,
  source: { document, grade },
  usedIn,
});

const TABLE_A = ['table A', 'assumed'] as const;
const TABLE_B = ['table B', 'assumed'] as const;

const USES = [
  use('sand', 'density', TABLE_B, ['lawn']),
  use('soil', 'density', TABLE_A, []),
  use('soil', 'compactionFactor', TABLE_B, ['beds']),
  use('sand', 'lapPercent', TABLE_B, ['beds', 'lawn']),
  use('fleece', 'areal', ['norm', 'read'], ['lawn']),
];

describe('list', () => {
  it('has each source once, by grade, those of the scene first', () => {
    const groups = listSources(USES, false).map(({ grade, sources: of }) => [grade, of.map(({ source }) => source.document)]);
    expect(groups).toEqual([
      ['read', ['norm']],
      ['assumed', ['table B', 'table A']],
    ]);
  });

  it('can leave out what the scene does not use', () => {
    const documents = listSources(USES, true).flatMap(({ sources: of }) => of.map(({ source }) => source.document));
    expect(documents).toEqual(['norm', 'table B']);
  });
});

it('numbers and users of one entry are told together, each once', () => {
  const tableB = listSources(USES, true)[1]?.sources[0];
  expect(usedEntries(tableB?.uses ?? [])).toEqual([
    { name: 'Name of sand', kind: 'material', numbers: ['density', 'lapPercent'], usedIn: ['lawn', 'beds'] },
    { name: 'Name of soil', kind: 'material', numbers: ['compactionFactor'], usedIn: ['beds'] },
  ]);
  expect(sources.use('material', 'Sand', ['density', 'lapPercent'], ['lawn', 'beds'])).toBe('Sand: density, laps. Used by lawn, beds');
});
