/** Texts that are no scene: what is wrong with each, and what the message must say. */

import type { SceneIssueCode } from '../../src/scene/issue-codes.ts';
import { MAX_TEXT_LENGTH } from '../../src/scene/limits.ts';

export interface TextCase {
  readonly text: string;
  readonly code: SceneIssueCode;
  readonly path?: string;
  readonly line?: number;
  /** Words that must stand somewhere in the message. */
  readonly says: readonly string[];
}

export const TEXT_CASES: readonly TextCase[] = [
  { text: '', code: 'FILE_EMPTY', says: ['0 bytes'] },
  { text: ' \r\n\t', code: 'FILE_EMPTY', says: ['nothing but blanks'] },
  { text: 'PK\u0003\u0004…', code: 'FILE_KIND', says: ['ZIP', '*.scene.json'] },
  { text: '%PDF-1.7', code: 'FILE_KIND', says: ['PDF'] },
  { text: 'AC1032', code: 'FILE_KIND', says: ['DWG'] },
  { text: '  0\r\nSECTION\r\n', code: 'FILE_KIND', says: ['DXF'] },
  { text: 'ISO-10303-21;', code: 'FILE_KIND', says: ['IFC'] },
  { text: '<!doctype html>', code: 'FILE_KIND', says: ['HTML'] },
  { text: '\uFFFD\uFFFD{\0"\0', code: 'FILE_KIND', says: ['UTF-16', 'Save the file as UTF-8'] },
  { text: ' '.repeat(MAX_TEXT_LENGTH + 1), code: 'FILE_TOO_LARGE', says: ['20 MB'] },

  { text: '{', code: 'JSON_TRUNCATED', line: 1, says: ['byte 1', 'stops in the middle'] },
  // First line 2 bytes with its end; second 31 up to the cut.
  {
    text: '{\n"deck": {"outline": [[1, 2], [3',
    code: 'JSON_TRUNCATED',
    path: 'deck.outline[1]',
    line: 2,
    says: ['inside deck.outline[1]', 'byte 33', 'column 32'],
  },
  { text: '{"name": "Lawn', code: 'JSON_TRUNCATED', path: 'name', says: ['inside name'] },
  { text: '{"name": "La\\u00', code: 'JSON_TRUNCATED', says: ['inside name'] },
  { text: '{"a": tru', code: 'JSON_TRUNCATED', says: ['inside a'] },
  { text: '{"a": 1.', code: 'JSON_TRUNCATED', says: ['end of the text'] },
  { text: '{"a": -', code: 'JSON_TRUNCATED', says: ['inside a'] },
  { text: '{"a"', code: 'JSON_TRUNCATED', says: ['colon'] },
  { text: '['.repeat(65), code: 'JSON_TOO_DEEP', says: ['64'] },

  { text: '{"heightM": 0,8}', code: 'DECIMAL_COMMA', says: ['0,8', 'Write 0.8;'] },
  { text: '{"heightM": -0, 8}', code: 'DECIMAL_COMMA', says: ['Write -0.8;'] },
  { text: '{"kg": 1.234,5}', code: 'DECIMAL_COMMA', says: ['1.234,5', 'Write 1234.5;'] },
  { text: '{"at": [1,05, 2]}', code: 'DECIMAL_COMMA', path: 'at', says: ['1,05', 'Write 1.05;'] },

  { text: '{"a": NaN}', code: 'JSON_NOT_FINITE', path: 'a', says: ['NaN', 'true number'] },
  { text: '{"a": -Infinity}', code: 'JSON_NOT_FINITE', path: 'a', says: ['-Infinity'] },
  { text: '[undefined]', code: 'JSON_NOT_FINITE', path: '[0]', says: ['undefined'] },
  { text: '{"a": #REF!}', code: 'JSON_COMMENT', says: ['#REF!'] },
  { text: '{"a": [1, 2,]}', code: 'JSON_TRAILING_COMMA', says: ['closing ]', 'Delete the comma'] },
  { text: '{"a": 1,\n}', code: 'JSON_TRAILING_COMMA', line: 2, says: ['closing }'] },
  { text: '{"a": 1 "b": 2}', code: 'JSON_MISSING_COMMA', says: ['"b": 2', 'Put a comma'] },
  { text: '[[1, 2] [3, 4]]', code: 'JSON_MISSING_COMMA', says: ['[3, 4]'] },
  { text: "{'a': 1}", code: 'JSON_QUOTES', says: ['key', 'straight double quotation marks'] },
  { text: '{"a": „x“}', code: 'JSON_QUOTES', path: 'a', says: ['„x“'] },
  { text: '{"a": lawn}', code: 'JSON_QUOTES', path: 'a', says: ['lawn', 'Put it between'] },
  { text: '{"a": 1 // height\n}', code: 'JSON_COMMENT', says: ['// height', '"about"'] },
  { text: '{\n/* note */ "a": 1}', code: 'JSON_COMMENT', line: 2, says: ['/* note */'] },
  { text: '{heightM: 1}', code: 'JSON_UNQUOTED_KEY', says: ['"heightM"'] },
  { text: '{"a": .5}', code: 'JSON_NUMBER', path: 'a', says: ['Write 0.5.'] },
  { text: '{"a": +5}', code: 'JSON_NUMBER', says: ['Write 5.'] },
  { text: '{"a": 5.}', code: 'JSON_NUMBER', says: ['Write 5.'] },
  { text: '{"a": 007}', code: 'JSON_NUMBER', says: ['Write 7.'] },
  { text: '{"a": 250mm}', code: 'JSON_NUMBER', says: ['Write 250 alone', 'unit stands in the key'] },
  { text: '{"a": 250 mm}', code: 'JSON_NUMBER', says: ['Write 250 alone'] },
  { text: '{"a": 1 000}', code: 'JSON_NUMBER', says: ['Write 1000.'] },
  { text: '{"a": 1\u202f000}', code: 'JSON_NUMBER', says: ['Write 1000.'] },
  { text: '{"a": 1\'000}', code: 'JSON_NUMBER', says: ['Write 1000.'] },
  { text: '{"a": \u22125}', code: 'JSON_NUMBER', says: ['Write -5.'] },
  { text: '{"a": 1e}', code: 'JSON_NUMBER', says: ['1e', 'Write digits'] },
  { text: '{"a": "x\ny"}', code: 'JSON_STRING_OPEN', path: 'a', says: ['\\n'] },
  { text: '{"a": "C:\\plan"}', code: 'JSON_ESCAPE', says: ['backslash twice'] },
  { text: '{"a": "x\ty"}', code: 'JSON_ESCAPE', says: ['tab'] },
  { text: '{"a": "x\u0001y"}', code: 'JSON_ESCAPE', says: ['control character 1'] },
  { text: '{"a": 1}}', code: 'JSON_AFTER_END', says: ['one scene'] },
  { text: '{"a": True}', code: 'JSON_SYNTAX', path: 'a', says: ['Write true'] },
  { text: '{"a": None}', code: 'JSON_SYNTAX', path: 'a', says: ['Write null'] },
  { text: '{"a" 1}', code: 'JSON_SYNTAX', says: ['colon'] },
  { text: '{"a": 1,, "b": 2}', code: 'JSON_SYNTAX', says: ['extra comma'] },
  { text: '[[1, 2}', code: 'JSON_SYNTAX', path: '[0]', says: ['every [ is closed by ]'] },

  { text: '"scene"', code: 'FORMAT_WRONG', says: ['object in braces'] },
  { text: '[1, 2]', code: 'FORMAT_WRONG', says: ['[1,2]'] },
  { text: 'null', code: 'FORMAT_WRONG', says: ['null'] },
  { text: '{}', code: 'FORMAT_WRONG', says: ['no "format"', '*.scene.json'] },
  { text: '{"deck": {}, "zones": []}', code: 'FORMAT_WRONG', says: ['Add "format"'] },
  { text: '{"format": "loamdeck-scenes"}', code: 'FORMAT_WRONG', path: 'format', says: ['Did you mean "loamdeck-scene"?'] },
  { text: '{"format": "loamdeck-report"}', code: 'FORMAT_WRONG', says: ['a report'] },
  { text: '{"type": "FeatureCollection", "features": []}', code: 'FORMAT_WRONG', says: ['GeoJSON'] },
  { text: '{"asset": {"version": "2.0"}}', code: 'FORMAT_WRONG', says: ['glTF'] },
  { text: '{"$schema": "x", "properties": {}}', code: 'FORMAT_WRONG', says: ['JSON Schema'] },
  { text: '{"dependencies": {}}', code: 'FORMAT_WRONG', says: ['package list'] },
  { text: '{"format": "loamdeck-scene"}', code: 'VERSION_WRONG', says: ['no "version"', 'Write "version": 1'] },
  { text: '{"format": "loamdeck-scene", "version": "1"}', code: 'VERSION_WRONG', path: 'version', says: ['without quotation marks'] },
  {
    text: '{"format": "loamdeck-scene",\n"version": 2}',
    code: 'VERSION_NEWER',
    path: 'version',
    line: 2,
    says: ['newer Loamdeck', 'update'],
  },
];
