/** Every number of catalogue and rules with its source, and what in a scene rests on it. */

import { CATALOGUE_SOURCES, type CatalogueSource, laneEntry, materialById, runoffEntry, vehicleById } from '../catalogue/catalogue.ts';
import { ANNUAL_TABLE, PEAK_TABLES } from '../catalogue/runoff-tables.ts';
import { VEGETATION_FORMS } from '../catalogue/vegetation.ts';
import type { Language } from '../model/language.ts';
import { RUNOFF_TABLE_IDS } from '../model/runoff.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { SourceUse } from '../model/source.ts';
import { materialLookup } from './materials.ts';
import { lanesOf } from './resolve-routes.ts';
import { setUpPlaces } from './resolve-set-up.ts';
import { runoffSurface, runoffTable } from './run-off.ts';
import { type Names, namesOf } from './words/names.ts';
import { sourcePartsDe } from './words/source-de.ts';

/** Rules that read a value; depths of substrate are told per form of vegetation. */
const RULE_OF: Readonly<Record<string, string>> = {
  substrateMm: 'depth.vegetation',
  treeSoilM3: 'depth.vegetation',
  treeSoilMm: 'depth.vegetation',
  subsoilBelowMm: 'depth.vegetation',
  baseCourseMm: 'depth.base',
  liftMm: 'depth.lift',
  upstandMm: 'edge.upstand',
  sillMm: 'edge.upstand',
  stripM: 'edge.strip',
  pondMm: 'water.pond',
  upFactor: 'float.uplift',
  downFactor: 'float.uplift',
  fallPercent: 'level.fall',
  recommendedFallPercent: 'level.fall',
  dynamicFactor: 'stress.layer',
  straightM: 'traffic.width',
  bounded: 'traffic.width',
  bends: 'traffic.bend',
  transitionM: 'traffic.bend',
  gradientPercent: 'traffic.gradient',
  setUpPercent: 'traffic.gradient',
  stepMm: 'traffic.gradient',
  setUpStepMm: 'traffic.gradient',
  slidingRatio: 'wall.sliding',
  overturningRatio: 'wall.sliding',
  wallDensity: 'wall.sliding',
};

/** Of set-up and movement areas. */
const AREA_RULES: Readonly<Record<string, string>> = {
  widthM: 'traffic.width',
  lengthM: 'traffic.width',
  stripAlongM: 'traffic.setup',
  stripAcrossM: 'traffic.setup',
  wallLeastM: 'traffic.setup',
  wallMostM: 'traffic.setup',
  wallAcrossM: 'traffic.setup',
  runOutM: 'traffic.setup',
};

/** Weights written with two decimals are the table's [kN/m²]. */
const ROUNDED_KNM2 = 0.0051;

/** Catalogue first, then what the scene brings itself; without a scene the catalogue alone. */
export function sourceUses(scene: SceneFile | null, language: Language = 'en'): SourceUse[] {
  const uses = usesInEnglish(scene);
  if (language === 'en') return uses;
  const names = namesOf(scene, language);
  return uses.map((use) => ({ ...use, name: nameIn(use, names), number: names.name(use.number), source: sourcePartsDe(use.source) }));
}

/** Tables of rules are listed by what they are for. */
function nameIn({ name }: SourceUse, names: Names): string {
  const table = /^(lanes|run-off), (.*)$/.exec(name);
  if (!table) return names.name(name);
  return `${table[1] === 'lanes' ? 'Feuerwehrzufahrten' : 'Abfluss'}, ${names.name(table[2])}`;
}

function usesInEnglish(scene: SceneFile | null): SourceUse[] {
  if (!scene) return CATALOGUE_SOURCES.map((one) => ({ ...one, name: nameOf(one), usedIn: [] }));
  const usedIn = usesOf(scene);
  const listed = CATALOGUE_SOURCES.map((one) => ({ ...one, name: nameOf(one), usedIn: usedIn(one) }));
  return [...listed, ...ownSources(scene)];
}

function nameOf({ kind, entry }: CatalogueSource): string {
  if (kind === 'material') return materialById.get(entry)?.name ?? entry;
  return kind === 'vehicle' ? (vehicleById.get(entry)?.name ?? entry) : entry;
}

function usesOf(scene: SceneFile): (of: CatalogueSource) => string[] {
  const materials = materialUses(scene);
  const vehicles = vehicleUses(scene);
  const own = new Set([...(scene.materials ?? []), ...(scene.vehicles ?? [])].map(({ id }) => id));
  const { limits } = scene;
  const runoff = runoffUses(scene);
  const lanes = new Set(lanesOf(scene, [0, 0]).map(({ table }) => laneEntry(table)));
  const areas = areaEntries(scene);
  return ({ kind, entry, number }) => {
    if (kind === 'material') return own.has(entry) ? [] : (materials.get(entry) ?? []);
    if (kind === 'vehicle') return own.has(entry) ? [] : (vehicles.get(entry) ?? []);
    const ofForm = scene.buildups.filter(({ vegetation }) => vegetation?.form === entry).map(({ id }) => id);
    if (kind === 'vegetation') return sameWeight(scene, entry);
    if (number === 'substrateMm') return limits?.substrateMm?.[entry] === undefined ? ofForm : [];
    const ofArea = /^(setUp|movement)\.(\w+)$/.exec(number);
    if (ofArea) return areas.get(ofArea[1])?.has(entry) ? [AREA_RULES[ofArea[2]]] : [];
    if (number === 'setUpStepMm') return areas.size > 0 ? [RULE_OF[number]] : [];
    if (number === 'setUpPercent' && areas.get('any')?.has(entry)) return [RULE_OF[number]];
    if (lanes.has(entry)) return [RULE_OF[number] ?? number];
    if (runoff.has(entry)) return runoff.get(entry)?.has(number) ? ['water.outlet'] : [];
    const replaced = number in { ...limits, ...scene.flotation };
    return entry !== 'all decks' || replaced ? [] : [RULE_OF[number] ?? number];
  };
}

/** Tables by the kind of area held against them, and by any kind. */
function areaEntries(scene: SceneFile): Map<string, Set<string>> {
  const entries = new Map<string, Set<string>>();
  for (const { kind, table } of setUpPlaces(scene, [0, 0])) {
    if (!table) continue;
    for (const key of [kind === 'set-up' ? 'setUp' : 'movement', 'any'])
      entries.set(key, (entries.get(key) ?? new Set()).add(laneEntry(table)));
  }
  return entries;
}

/** Rows of the run-off tables that zones of the scene can fall into; none without rain. */
function runoffUses(scene: SceneFile): Map<string, Set<string>> {
  const rows = new Map<string, Set<string>>([...RUNOFF_TABLE_IDS, 'year' as const].map((table) => [runoffEntry(table), new Set()]));
  const { rain } = scene;
  if (!rain) return rows;
  const materialOf = materialLookup(scene);
  const surfaces = new Set([...scene.buildups.map((buildUp) => runoffSurface(buildUp, materialOf)), 'bare deck']);
  const table = runoffTable(scene);
  const used = (all: readonly { readonly name: string; readonly surface: string }[]) =>
    new Set(all.filter(({ surface }) => surfaces.has(surface)).map(({ name }) => name));
  rows.set(runoffEntry(table), used(PEAK_TABLES[table]));
  if (rain.annualMm !== undefined) rows.set(runoffEntry('year'), used(ANNUAL_TABLE));
  return rows;
}

/** A build-up names the weight of its plants itself; it rests on the table where it took the table's. */
function sameWeight(scene: SceneFile, form: string): string[] {
  const tableKNm2 = VEGETATION_FORMS.find((one) => one.form === form)?.kNm2 ?? Number.NaN;
  const same = scene.buildups.filter(({ vegetation }) => vegetation?.form === form && Math.abs(vegetation.kNm2 - tableKNm2) < ROUNDED_KNM2);
  return same.map(({ id }) => id);
}

/** Build-ups by the materials they are made of, stages by what they heap. */
function materialUses(scene: SceneFile): Map<string, string[]> {
  const uses = new Map<string, string[]>();
  for (const { id, layers } of scene.buildups) for (const { material } of layers) add(uses, material, id);
  for (const { id, stockpiles } of scene.stages ?? []) for (const { material } of stockpiles ?? []) add(uses, material, id);
  return uses;
}

function vehicleUses(scene: SceneFile): Map<string, string[]> {
  const uses = new Map<string, string[]>();
  for (const { id, vehicle } of scene.traffic ?? []) add(uses, vehicle, id);
  for (const { id, vehicle } of scene.setUpAreas ?? []) add(uses, vehicle, id);
  for (const { id, plant } of scene.stages ?? []) for (const { vehicle } of plant ?? []) add(uses, vehicle, id);
  for (const { id, vehicles } of scene.deck.bays) for (const vehicle of vehicles ?? []) add(uses, vehicle, id);
  return uses;
}

function add(uses: Map<string, string[]>, key: string, user: string): void {
  const users = uses.get(key) ?? [];
  if (!users.includes(user)) users.push(user);
  uses.set(key, users);
}

/** Materials, vehicles and rule values that the scene file gives itself, with what it says of their source. */
function ownSources(scene: SceneFile): SourceUse[] {
  const entered = (document: string | undefined) => ({
    document: document?.trim() || 'scene file, no source given',
    grade: 'entered' as const,
  });
  const materials = materialUses(scene);
  const vehicles = vehicleUses(scene);
  const { substrateMm = {}, source, fireTable, ...values } = scene.limits ?? {};
  const { source: ofFactors, waterLevelM: _, ...factors } = scene.flotation ?? {};
  const rule = (entry: string, number: string): SourceUse => {
    return { kind: 'rule', entry, name: entry, number, source: entered(source), usedIn: [RULE_OF[number] ?? number] };
  };
  return [
    ...(scene.materials ?? []).map((one): SourceUse => {
      const usedIn = materials.get(one.id) ?? [];
      return { kind: 'material', entry: one.id, name: one.name, number: 'all', source: entered(one.source), usedIn };
    }),
    ...(scene.vehicles ?? []).map((one): SourceUse => {
      const usedIn = vehicles.get(one.id) ?? [];
      return { kind: 'vehicle', entry: one.id, name: one.name, number: 'all', source: entered(one.source), usedIn };
    }),
    ...Object.keys(substrateMm).map((form) => rule(form, 'substrateMm')),
    ...Object.keys(values).map((number) => rule('all decks', number)),
    ...Object.keys(factors).map((number): SourceUse => ({ ...rule('all decks', number), source: entered(ofFactors) })),
    ...(scene.rain ? [{ ...rule('rain', 'all'), source: entered(scene.rain.source), usedIn: ['water.outlet', 'water.overflow'] }] : []),
  ];
}
