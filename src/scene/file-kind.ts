/** Recognises files that are not scenes, and says what they seem to be. */

import type { SceneIssueCode } from './issue-codes.ts';
import type { IssueList } from './issue-list.ts';
import { MAX_TEXT_LENGTH } from './limits.ts';
import { nearestName } from './nearest-name.ts';
import { SCENE_FORMAT, SCENE_VERSION } from './schema.ts';
import { describeValue } from './schema-issues.ts';
import { type IssueWords, type PhraseId, phrase, worded } from './words/phrase.ts';

/** Beginnings of other kinds of files. */
const BEGINNINGS = [
  [/^PK\p{Cc}/u, 'kindZip'],
  [/^%PDF/, 'kindPdf'],
  [/^AC10\d\d/, 'kindDwg'],
  [/^\s*0\r?\n\s*SECTION/, 'kindDxf'],
  [/^ISO-10303-21/, 'kindIfc'],
  [/^glTF/, 'kindGltfBinary'],
  [/^\s*</, 'kindXml'],
  [/^\{\\rtf/, 'kindRtf'],
  [/^\p{Cc}*\uFFFD*PNG|^\uFFFD{4}/u, 'kindPicture'],
] as const satisfies readonly (readonly [RegExp, PhraseId])[];

/**
 * Refuses a text that cannot be a scene before it is read.
 * @param text - the file's text
 * @returns code and words, or null where the text is worth reading
 */
export function refuseText(text: string): (IssueWords & { readonly code: SceneIssueCode }) | null {
  if (text.length > MAX_TEXT_LENGTH) {
    return {
      code: 'FILE_TOO_LARGE',
      ...worded(
        phrase('charactersFound', { n: text.length }),
        phrase('charactersAtMost', { n: MAX_TEXT_LENGTH }),
        phrase('simplifyOrSplit'),
      ),
    };
  }
  if (/^[\s\uFEFF]*$/.test(text)) {
    const found = phrase(text.length === 0 ? 'emptyFile' : 'blankFile');
    return { code: 'FILE_EMPTY', ...worded(found, phrase('sceneText'), phrase('sendAgain')) };
  }
  const head = text.slice(0, 200).replace(/^\uFEFF/, '');
  const kind = BEGINNINGS.find(([beginning]) => beginning.test(head))?.[1];
  if (kind !== undefined) return { code: 'FILE_KIND', ...worded(phrase(kind), phrase('sceneText'), phrase('openScene')) };
  if (!head.includes('\0')) return null;
  return { code: 'FILE_KIND', ...worded(phrase('binaryFile'), phrase('utf8Text'), phrase('saveUtf8')) };
}

/**
 * Checks that a JSON value is a scene of a version that can be read.
 * @param value - parsed JSON
 * @param issues - receives the message
 * @returns whether it is worth checking further
 */
export function checkKind(value: unknown, issues: IssueList): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    issues.error('FORMAT_WRONG', [], () => worded(describeValue(value), phrase('sceneObject'), phrase('openScene')));
    return false;
  }
  const file = value as Record<string, unknown>;
  if (file.format !== SCENE_FORMAT) {
    issues.error('FORMAT_WRONG', Object.hasOwn(file, 'format') ? ['format'] : [], () => formatWords(file));
    return false;
  }
  const { version } = file;
  if (version === SCENE_VERSION) return true;
  const newer = typeof version === 'number' && version > SCENE_VERSION;
  issues.error(newer ? 'VERSION_NEWER' : 'VERSION_WRONG', Object.hasOwn(file, 'version') ? ['version'] : [], () => {
    const found = version === undefined ? phrase('noKey', { key: 'version' }) : phrase('versionFound', { v: describeValue(version) });
    const advice = newer ? phrase('newerProgram') : phrase('writeVersion', { n: SCENE_VERSION });
    return worded(found, phrase('versionWanted', { version: SCENE_VERSION }), advice);
  });
  return false;
}

function formatWords(file: Record<string, unknown>): IssueWords {
  const { format } = file;
  const wanted = phrase('formatWanted', { format: SCENE_FORMAT });
  const kind = kindOf(file);
  if (kind !== null) {
    const seems = phrase(kind);
    const found =
      format === undefined ? phrase('noFormatKind', { kind: seems }) : phrase('formatKind', { f: describeValue(format), kind: seems });
    return worded(found, wanted, phrase('openScene'));
  }
  const found = format === undefined ? phrase('noKey', { key: 'format' }) : phrase('formatFound', { f: describeValue(format) });
  if (typeof format === 'string' && nearestName(format, [SCENE_FORMAT]) !== null)
    return worded(found, wanted, phrase('didYouMean', { what: `"${SCENE_FORMAT}"` }));
  return worded(
    found,
    wanted,
    'deck' in file && 'zones' in file ? phrase('addIfScene', { what: `"format": "${SCENE_FORMAT}"` }) : phrase('openScene'),
  );
}

function kindOf(file: Record<string, unknown>) {
  if (file.format === 'loamdeck-report') return 'isReport';
  if (file.type === 'FeatureCollection' || file.type === 'Feature' || file.type === 'Topology') return 'isGeoJson';
  if (file.type === 'CityJSON') return 'isCityJson';
  if (typeof file.asset === 'object' && file.asset !== null && 'version' in file.asset) return 'isGltf';
  if ('$defs' in file || ('$schema' in file && 'properties' in file)) return 'isSchema';
  if ('dependencies' in file || 'devDependencies' in file) return 'isPackageList';
  return null;
}
