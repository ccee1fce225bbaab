/** The same report in two languages: every finding, name and source in German, every number the same. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CATALOGUE_SOURCES, materialById, vehicleById } from '../../src/catalogue/catalogue.ts';
import { FIRE_TABLES } from '../../src/catalogue/fire-access.ts';
import { MATERIALS_DE, NAMES_DE, VEHICLES_DE } from '../../src/catalogue/german-names.ts';
import { DOCUMENTS_DE, PLACES_DE } from '../../src/catalogue/german-sources.ts';
import { ANNUAL_TABLE, PEAK_TABLES } from '../../src/catalogue/runoff-tables.ts';
import { VEGETATION_FORMS } from '../../src/catalogue/vegetation.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { sourceUses } from '../../src/project/source-uses.ts';
import { speakProject } from '../../src/project/speak.ts';
import { stageViews } from '../../src/project/stage-views.ts';
import { namesOf } from '../../src/project/words/names.ts';
import { createEngine } from '../../src/worker/engine.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

const textOf = (name: string) => readFileSync(new URL(`../../scenes/${name}.scene.json`, import.meta.url), 'utf8');

function projectOf(text: string) {
  const { project } = readProject(text);
  if (!project) throw new Error('the scene does not open');
  return project;
}

/** Words that no German sentence has. */
const ENGLISH =
  /(?<!\p{L})(the|and|of|is|are|with|not|no|to|from|bay|stage|layer|lies|permitted|water|build-up|drawn|wheels|there|which|deck|outlet|asks|common|practice|memory|assumed|secondary|fleece|gravel|sheet|slabs|appliance|loader)(?!\p{L})/iu;

/** What the author of a scene wrote stays as it is, in English too. */
function withoutOwn(text: string, own: readonly string[]): string {
  return own.reduce((rest, one) => rest.split(one).join('…'), text);
}

/** Numbers of a sentence whatever the decimal mark, in no order: languages put them in different places. */
const numbersIn = (text: string) => [...text.matchAll(/\d+(?:[.,]\d+)*/g)].map(([number]) => number.replaceAll(',', '.')).sort();

/** Every text of a scene. */
function ownTexts(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(ownTexts);
  return value && typeof value === 'object' ? Object.values(value).flatMap(ownTexts) : [];
}

describe.each(['problem-deck', 'courtyard', 'terrace'])('%s', (name) => {
  const english = projectOf(textOf(name));
  const german = speakProject(english, 'de');
  const own = [...new Set(ownTexts(english.scene))].filter((text) => /[ -]/.test(text)).sort((a, b) => b.length - a.length);
  const pairs = german.report.findings.map((finding, f) => ({ en: english.report.findings[f], de: finding }));

  it('tells every finding in German, none in a mixture', () => {
    for (const { de, en } of pairs) {
      expect(de.says, de.rule).not.toBe(en.says);
      expect(withoutOwn(de.says, own), de.rule).not.toMatch(ENGLISH);
      expect(withoutOwn(de.source, own), de.rule).not.toMatch(ENGLISH);
      expect(`${de.says} ${de.source}`).not.toMatch(/undefined|NaN|null|\[object/);
      expect(de.says, de.rule).toMatch(/^[A-ZÄÖÜ0-9„].*\.$/s);
    }
  });

  it('gives the same numbers in both', () => {
    for (const { de, en } of pairs) {
      expect(numbersIn(de.says), `${en.says}\n${de.says}`).toEqual(numbersIn(en.says));
      const { says: _, source: __, ...facts } = de;
      const { says: ___, source: ____, ...same } = en;
      expect(facts).toEqual(same);
    }
  });

  it('has no decimal points in German sentences, but in what the scene wrote', () => {
    for (const { de } of pairs) expect(withoutOwn(de.says, own), de.says).not.toMatch(/\d\.\d/);
  });

  it('says in German what is not checked and where a coefficient comes from', () => {
    const { notChecked, water } = german.report;
    const texts = [...notChecked, ...(water?.zones ?? []).flatMap(({ peak, annual }) => [peak.row ?? '', annual.row ?? '', peak.source])];
    for (const text of texts) expect(withoutOwn(text, own)).not.toMatch(ENGLISH);
  });

  it('is the very report again in English', () => {
    expect(speakProject(english, 'en')).toBe(english);
  });
});

describe('names of the catalogue', () => {
  it('are German for every material and vehicle, and for no other', () => {
    expect(Object.keys(MATERIALS_DE).sort()).toEqual([...materialById.keys()].sort());
    expect(Object.keys(VEHICLES_DE).sort()).toEqual([...vehicleById.keys()].sort());
  });

  it('are German for every form of vegetation, fire table and row of run-off', () => {
    const wanted = [
      ...VEGETATION_FORMS.map(({ form }) => form),
      ...FIRE_TABLES.flatMap(({ name, country }) => [name, country]),
      ...[...Object.values(PEAK_TABLES).flat(), ...ANNUAL_TABLE].map(({ name }) => name),
    ];
    for (const name of wanted) expect(NAMES_DE, name).toHaveProperty([name]);
  });

  it('leave what the scene names itself as written, even where the catalogue has that name', () => {
    const own = { id: 'x', name: 'Lava 8/16', role: 'drainage fill' as const, density: { dry: 1, saturated: 2 } };
    const { name } = namesOf(sceneOf({ materials: [{ ...own, name: 'Concrete slabs 60 mm' }] }), 'de');
    expect(name('Concrete slabs 60 mm')).toBe('Concrete slabs 60 mm');
    expect(name('Concrete slabs 80 mm')).toBe('Betonplatten 80 mm');
    expect(name('Best soil of the yard')).toBe('Best soil of the yard');
  });
});

describe('sources of the catalogue', () => {
  // Published titles and bare clause numbers are the same in every language.
  const TITLE = /^(EN|DIN) [\d-]+:[\d-]+$|^[D\d.]+$|^Dienstblatt /;

  it('have German words wherever the words are ours', () => {
    for (const { source } of CATALOGUE_SOURCES) {
      if (!TITLE.test(source.document)) expect(DOCUMENTS_DE, source.document).toHaveProperty([source.document]);
      if (source.place && !TITLE.test(source.place)) expect(PLACES_DE, source.place).toHaveProperty([source.place]);
    }
  });

  it('keep every number in German', () => {
    const thousands = (text: string) => text.replace(/75[.,]000/g, '75000');
    for (const [en, de] of Object.entries({ ...DOCUMENTS_DE, ...PLACES_DE })) {
      expect(numbersIn(thousands(de)), de).toEqual(numbersIn(thousands(en)));
    }
  });

  it('are listed with German names', () => {
    const uses = sourceUses(null, 'de');
    expect(uses).toHaveLength(sourceUses(null).length);
    for (const { name, number } of uses)
      expect(`${name} ${number}`).not.toMatch(/\b(the|and|of|for|on|with|from|lanes|run-off|planting)\b/);
  });
});

describe('the engine', () => {
  it('speaks another language without a number changed, and goes on in it', async () => {
    const engine = createEngine();
    expect(await engine.speak('en')).toBeNull();
    const opened = await engine.open(textOf('problem-deck'));
    if (!opened.ok) throw new Error('the scene does not open');
    const { snapshot } = opened;
    const spoken = await engine.speak('de');
    if (!spoken) throw new Error('nothing is open');
    const bare = (report: typeof snapshot.report) => {
      const { findings, notChecked: _, stages, water: __, routes: ___, ...numbers } = report;
      return {
        numbers,
        values: findings.map(({ value, limit }) => [value, limit]),
        stages: stages.map(({ name: ____, ...stage }) => stage),
      };
    };
    // toEqual compares numbers by Object.is: to the bit.
    expect(bare(spoken.report)).toEqual(bare(snapshot.report));
    expect(spoken.report.findings[0].says).not.toBe(snapshot.report.findings[0].says);
    const edited = await engine.setThickness(snapshot.buildUps[0].id, 0, snapshot.buildUps[0].layers[0].thicknessMm);
    if (!('snapshot' in edited)) throw new Error('refused, or without its report');
    expect(edited.snapshot.report.findings[0].says).toBe(spoken.report.findings[0].says);
    const back = await engine.speak('en');
    expect(back?.report.findings).toEqual(snapshot.report.findings);
  });
});

it('names stages that were derived in German, and leaves those that were given', () => {
  const { stages, ...rest } = JSON.parse(textOf('courtyard'));
  const derived = stageViews(speakProject(projectOf(JSON.stringify(rest)), 'de'));
  for (const { name } of derived)
    expect(name).toMatch(/^(Durchwurzelungsschutz|Schutzlage|Gleitlage|Drän|Leicht|Trenn|Filter|Trag|Bett|Belag|Ein|Sub|Bewuchs|Bäume)/);
  expect(stageViews(speakProject(projectOf(textOf('courtyard')), 'de')).map(({ name }) => name)).toEqual(
    stages.map(({ name }: { name: string }) => name),
  );
});
