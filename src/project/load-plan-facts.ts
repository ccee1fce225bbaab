/** What the load plan and the loads entered contradict each other in: the same load twice, and a plan of which a later edition is known. */

import type { Evaluation } from '../core/evaluation.ts';
import { commonAreaM2 } from '../core/geometry/common-area.ts';
import { regionAreaM2 } from '../core/geometry/ring.ts';
import type { FindingFact } from '../model/finding.ts';
import type { SceneBay, SceneFile, SceneObject } from '../model/scene-file.ts';
import { documentKey, type Edition, editionOf, editionsInHistory, isEarlier } from '../scene/load-plan-editions.ts';

export function loadPlanFacts(scene: SceneFile, on: Evaluation): FindingFact[] {
  return [...scene.deck.bays.flatMap(twicePermitted), ...twiceEntered(scene, on), ...earlierEditions(scene)];
}

const SAME_KNM2 = 1e-6;

function planFact(
  bay: SceneBay,
  severity: FindingFact['severity'],
  [value, limit]: readonly [number, number],
  facts: FindingFact['facts'],
) {
  return { rule: 'load.basis', severity, where: { bay: bay.id }, value, limit, unit: 'kN/m²', facts } as const;
}

/** A basis that says of the permanent load that imposed load is in it; not a plan that merely lists both. */
const INCLUDED =
  /(?<!\b(?:not|nicht|ohne|without)\s)\b(?:incl(?:\.|uding|udes|usive of)?|inkl(?:\.|usive)?|einschl(?:\.|ie(?:ß|ss)lich)?)\s*(?:the |der |die )?(?:imposed|live|variable|nutz|verkehrs|ver[äa]nderlich)[\p{L}]*/iu;

/** One permitted load inside another: the limit of the permanent load would come out too high. */
function twicePermitted(bay: SceneBay): FindingFact[] {
  const { permanentKNm2: permanent, imposedKNm2: imposed, totalKNm2: total, basis } = bay;
  const found: FindingFact[] = [];
  const words = [basis?.document, basis?.revision, basis?.by].map((text) => INCLUDED.exec(text ?? '')?.[0]).find((said) => said);
  if (permanent !== undefined && words !== undefined)
    found.push(planFact(bay, 'check', [permanent, total ?? permanent], { why: 'included', words, imposedKNm2: imposed ?? -1 }));
  if (total === undefined) return found;
  const [part, name] = (permanent ?? 0) >= (imposed ?? 0) ? [permanent ?? 0, 'permanent'] : [imposed ?? 0, 'imposed'];
  if (total < part - SAME_KNM2) found.push(planFact(bay, 'check', [part, total], { why: 'total below', part: name }));
  else if (permanent !== undefined && imposed !== undefined && Math.abs(permanent + imposed - total) > SAME_KNM2)
    found.push(planFact(bay, 'note', [permanent + imposed, total], { why: 'total other', permanentKNm2: permanent, imposedKNm2: imposed }));
  return found;
}

/** Names under which people enter live load as an object. */
const LIVE = /\b(?:imposed|live)[ -]?loads?\b|nutzlast|verkehrslast|menschengedr/i;
/** Common areas below this are slivers of drawing [m²]. */
const NO_AREA_M2 = 0.05;
/** An object over at least this share of a zone carries the load of its use rather than something that stands there [-]. */
const WHOLE_ZONE = 0.9;

/** An object that says again what the zone below it is meant to carry; it makes loads greater, so it is told as a note. */
function twiceEntered({ zones, objects = [] }: SceneFile, { input }: Evaluation): FindingFact[] {
  return objects.flatMap((object, o) => {
    const kNm2 = pressureOf(object);
    if (kNm2 === null) return [];
    const named = LIVE.test(`${object.name ?? ''} ${object.id}`);
    return zones.flatMap(({ id: zone, imposedKNm2 = 0 }, z): FindingFact[] => {
      if (imposedKNm2 === 0 || !(named || Math.abs(imposedKNm2 - kNm2) <= SAME_KNM2)) return [];
      const { region } = input.zones[z];
      const areaM2 = input.objects[o].pieces.reduce((sum, { ring }) => sum + commonAreaM2([{ outer: ring, holes: [] }, region]), 0);
      if (areaM2 < NO_AREA_M2 || !(named || areaM2 >= WHOLE_ZONE * regionAreaM2(region))) return [];
      const facts = { why: 'twice', areaM2, name: object.name ?? object.id };
      return [
        {
          rule: 'load.imposed',
          severity: 'note',
          where: { zone, object: object.id },
          value: kNm2,
          limit: imposedKNm2,
          unit: 'kN/m²',
          facts,
        },
      ];
    });
  });
}

function pressureOf(object: SceneObject): number | null {
  if (object.kind === 'block') return object.kNm2;
  return object.kind === 'line' ? object.kNm / object.widthM : null;
}

interface Known {
  readonly edition: Edition;
  readonly bays: string[];
  inHistory: boolean;
}

/** Bays whose permitted load stands on an edition before one that other bays or the history know of the same document. */
function earlierEditions(scene: SceneFile): FindingFact[] {
  const dated = scene.deck.bays.flatMap((bay) => {
    const [document, edition] = [bay.basis?.document?.trim(), editionOf(bay.basis)];
    return document && edition ? [{ bay: bay.id, document, edition }] : [];
  });
  const known = knownEditions(scene, dated);
  return dated.flatMap(({ bay, document, edition }): FindingFact[] => {
    const later = [...(known.get(documentKey(document))?.values() ?? [])].filter((one) => isEarlier(edition, one.edition));
    if (later.length === 0) return [];
    const last = later.reduce((latest, one) => (isEarlier(latest.edition, one.edition) ? one : latest));
    const facts = {
      why: 'earlier',
      document,
      revision: edition.revision ?? '',
      date: edition.date ?? '',
      laterRevision: last.edition.revision ?? '',
      laterDate: last.edition.date ?? '',
      bays: last.bays.join('\n'),
      inHistory: last.inHistory ? 1 : 0,
    };
    return [{ rule: 'load.basis', severity: 'check', where: { bay }, value: 0, limit: 1, unit: '-', facts }];
  });
}

interface DatedBay {
  readonly bay: string;
  readonly document: string;
  readonly edition: Edition;
}

/** By document, then by edition. */
function knownEditions(scene: SceneFile, dated: readonly DatedBay[]): Map<string, Map<string, Known>> {
  const known = new Map<string, Map<string, Known>>();
  const enter = (document: string, edition: Edition): Known => {
    const editions = known.get(document) ?? new Map<string, Known>();
    known.set(document, editions);
    const key = `${edition.revision}\n${edition.date}`;
    const one = editions.get(key) ?? { edition, bays: [], inHistory: false };
    editions.set(key, one);
    return one;
  };
  for (const { document } of dated) {
    const key = documentKey(document);
    if (!known.has(key)) for (const edition of editionsInHistory(scene, document)) enter(key, edition).inHistory = true;
  }
  for (const { bay, document, edition } of dated) enter(documentKey(document), edition).bays.push(bay);
  return known;
}
