/** Reads a scene file: text in, scene or messages out. Never throws, whatever the text. */

import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { checkBuildUps, checkMaterials } from './check-build-ups.ts';
import { checkLevels } from './check-levels.ts';
import { checkDuplicateIds, checkReferences } from './check-names.ts';
import { checkShapes } from './check-shapes.ts';
import { checkLoads, checkStages } from './check-site.ts';
import { checkWalls } from './check-walls.ts';
import { checkWater } from './check-water.ts';
import { checkKind, refuseText } from './file-kind.ts';
import { issueIn } from './issue-language.ts';
import { IssueList } from './issue-list.ts';
import { lineOfOffset } from './json-problem.ts';
import { type JsonReading, readJson } from './json-reader.ts';
import { type KnownIds, withScene } from './known-ids.ts';
import { MAX_POINTS } from './limits.ts';
import { pathText, shorten } from './path.ts';
import { sceneFileSchema } from './schema.ts';
import { reportRefusals, reportUnknownKey } from './schema-issues.ts';
import { phrase, worded } from './words/phrase.ts';

/** A scene with warnings at most, or no scene and at least one error. */
export type SceneReading =
  | { readonly scene: SceneFile; readonly issues: readonly Issue[] }
  | { readonly scene: null; readonly issues: readonly Issue[] };

/**
 * Reads and checks a scene file.
 * @param text - the file's text, with or without a byte-order mark
 * @param known - materials and vehicles of the catalogue, which a scene may refer to
 * @param language - of the messages
 * @returns the scene and warnings, or errors
 */
export function parseScene(text: string, known: KnownIds, language: Language = 'en'): SceneReading {
  const reading = readScene(text, known);
  return { ...reading, issues: reading.issues.map((issue) => issueIn(issue, language)) };
}

function readScene(text: string, known: KnownIds): SceneReading {
  const refusal = refuseText(text);
  if (refusal !== null) return { scene: null, issues: [{ ...refusal, level: 'error', path: '' }] };
  const reading = readJson(text);
  if ('problem' in reading) {
    const { offset, path, ...words } = reading.problem;
    return { scene: null, issues: [{ ...words, level: 'error', path: pathText(path), line: lineOfOffset(text, offset) }] };
  }
  const issues = new IssueList((path) => lineOfOffset(text, reading.offsetOf(path)));
  const scene = sceneOf(reading, text, issues);
  if (scene !== null) checkScene(scene, known, issues);
  return scene === null || issues.hasErrors ? { scene: null, issues: issues.list() } : { scene, issues: issues.list() };
}

/** The scene as far as the schema goes, or null with at least one error reported. */
function sceneOf(reading: JsonReading, text: string, issues: IssueList): SceneFile | null {
  const { value } = reading;
  reportRepeatedKeys(reading, text, issues);
  if (!checkKind(value, issues)) return null;
  for (const path of reading.refused) reportUnknownKey(path, value, issues);
  const points = countPoints(value);
  if (points > MAX_POINTS) {
    issues.error('TOO_MANY_POINTS', [], () =>
      worded(phrase('pointsFound', { n: points }), phrase('pointsInScene', { n: MAX_POINTS }), phrase('simplifyLevels')),
    );
    return null;
  }
  const result = sceneFileSchema.safeParse(value);
  if (result.success) {
    reportDamage(text, issues);
    return result.data;
  }
  reportRefusals(result.error.issues, value, issues);
  return null;
}

function checkScene(scene: SceneFile, known: KnownIds, issues: IssueList): void {
  const all = withScene(known, scene);
  checkDuplicateIds(scene, issues);
  checkReferences(scene, all, issues);
  checkMaterials(scene, issues);
  checkBuildUps(scene, all, issues);
  checkShapes(scene, issues);
  checkLevels(scene, issues);
  checkLoads(scene, issues);
  checkWalls(scene, issues);
  checkWater(scene, issues);
  checkStages(scene, all, issues);
}

/** The platform would keep the last of two equal keys and say nothing. */
function reportRepeatedKeys(reading: JsonReading, text: string, issues: IssueList): void {
  for (const { path, firstOffset } of reading.repeated) {
    issues.error('DUPLICATE_KEY', path, () =>
      worded(
        phrase('keyAgain', { key: shorten(String(path.at(-1))), line: lineOfOffset(text, firstOffset) }),
        phrase('keyOnce'),
        phrase('dropWrongOne'),
      ),
    );
  }
}

/** A letter lost in saving or sending becomes U+FFFD; the scene still opens. */
function reportDamage(text: string, issues: IssueList): void {
  const at = text.indexOf('\uFFFD');
  if (at === -1) return;
  issues.warning('TEXT_DAMAGED', [], () =>
    worded(phrase('lettersLost', { line: lineOfOffset(text, at) }), phrase('utf8Text'), phrase('saveUtf8CheckNames')),
  );
}

function countPoints(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  if (Array.isArray(value) && typeof value[0] === 'number') return 1;
  let points = 0;
  for (const item of Object.values(value)) points += countPoints(item);
  return points;
}
