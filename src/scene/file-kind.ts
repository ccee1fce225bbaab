/** Recognises files that are not scenes, and says what they seem to be. */

import type { SceneIssueCode } from './issue-codes.ts';
import type { IssueList, IssueWords } from './issue-list.ts';
import { MAX_TEXT_LENGTH } from './limits.ts';
import { nearestName } from './nearest-name.ts';
import { SCENE_FORMAT, SCENE_VERSION } from './schema.ts';
import { describeValue } from './schema-issues.ts';

const OPEN_SCENE = 'Open a scene file (*.scene.json).';

/** Beginnings of other kinds of files. */
const BEGINNINGS: readonly (readonly [RegExp, string])[] = [
  [/^PK\p{Cc}/u, 'a ZIP archive or a file packed like one, e.g. a spreadsheet'],
  [/^%PDF/, 'a PDF document'],
  [/^AC10\d\d/, 'a DWG drawing'],
  [/^\s*0\r?\n\s*SECTION/, 'a DXF drawing'],
  [/^ISO-10303-21/, 'an IFC or STEP model'],
  [/^glTF/, 'a binary glTF model'],
  [/^\s*</, 'an XML or HTML text'],
  [/^\{\\rtf/, 'an RTF document'],
  [/^\p{Cc}*\uFFFD*PNG|^\uFFFD{4}/u, 'a picture or another binary file'],
];

/**
 * Refuses a text that cannot be a scene before it is read.
 * @param text - the file's text
 * @returns code and words, or null where the text is worth reading
 */
export function refuseText(text: string): (IssueWords & { readonly code: SceneIssueCode }) | null {
  if (text.length > MAX_TEXT_LENGTH) {
    const got = `${text.length} characters`;
    return {
      code: 'FILE_TOO_LARGE',
      got,
      expected: `at most ${MAX_TEXT_LENGTH} characters (20 MB)`,
      mend: 'Simplify outlines and levels, or split the scene.',
    };
  }
  if (/^[\s\uFEFF]*$/.test(text)) {
    const got = text.length === 0 ? 'an empty file (0 bytes)' : 'a file with nothing but blanks';
    return { code: 'FILE_EMPTY', got, expected: 'a scene as JSON text', mend: 'Save or send the file again, or open an earlier copy.' };
  }
  const head = text.slice(0, 200).replace(/^\uFEFF/, '');
  const kind = BEGINNINGS.find(([beginning]) => beginning.test(head))?.[1];
  if (kind !== undefined) return { code: 'FILE_KIND', got: kind, expected: 'a scene as JSON text', mend: OPEN_SCENE };
  if (!head.includes('\0')) return null;
  return { code: 'FILE_KIND', got: 'binary data or text in UTF-16', expected: 'text in UTF-8', mend: 'Save the file as UTF-8.' };
}

/**
 * Checks that a JSON value is a scene of a version that can be read.
 * @param value - parsed JSON
 * @param issues - receives the message
 * @returns whether it is worth checking further
 */
export function checkKind(value: unknown, issues: IssueList): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    issues.error('FORMAT_WRONG', [], () => ({ got: describeValue(value), expected: 'a scene: an object in braces { }', mend: OPEN_SCENE }));
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
    const got = version === undefined ? 'no "version"' : `version ${describeValue(version)}`;
    const mend = newer
      ? 'This scene was made by a newer Loamdeck: update the program to open it.'
      : `Write "version": ${SCENE_VERSION}, without quotation marks.`;
    return { got, expected: `version ${SCENE_VERSION}`, mend };
  });
  return false;
}

function formatWords(file: Record<string, unknown>): IssueWords {
  const { format } = file;
  const expected = `"format": "${SCENE_FORMAT}"`;
  const stated = format === undefined ? 'no "format"' : `format ${describeValue(format)}`;
  const kind = kindOf(file);
  if (kind !== null) return { got: `${stated}; this seems to be ${kind}`, expected, mend: OPEN_SCENE };
  if (typeof format === 'string' && nearestName(format, [SCENE_FORMAT]) !== null)
    return { got: stated, expected, mend: `Did you mean "${SCENE_FORMAT}"?` };
  const mend = 'deck' in file && 'zones' in file ? `Add ${expected} if this is a scene.` : OPEN_SCENE;
  return { got: stated, expected, mend };
}

function kindOf(file: Record<string, unknown>): string | null {
  if (file.format === 'loamdeck-report') return 'a report, the result of a check, not the scene it was made from';
  if (file.type === 'FeatureCollection' || file.type === 'Feature' || file.type === 'Topology') return 'a map in GeoJSON';
  if (file.type === 'CityJSON') return 'a city model in CityJSON';
  if (typeof file.asset === 'object' && file.asset !== null && 'version' in file.asset) return 'a glTF model';
  if ('$defs' in file || ('$schema' in file && 'properties' in file)) return 'a JSON Schema';
  if ('dependencies' in file || 'devDependencies' in file) return 'the package list of a program';
  return null;
}
