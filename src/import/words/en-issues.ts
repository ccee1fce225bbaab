/** Messages on drawings: what was found, what was expected, what to do. By code, and by a variant where one code has several. */

import type { DrawingKind } from '../../model/drawing.ts';
import type { ImportIssueCode } from '../issue-codes.ts';
import { ADVICE_EN, type Advice, FILE_KINDS_EN, type FileKind } from './en-files.ts';
import { MODEL_ISSUES_EN } from './en-model.ts';
import { kindsTold } from './kind-words.ts';
import { countEn, type Place, someEn, spotEn } from './number-words.ts';
import { TERMS_EN, type Wanted } from './term-words.ts';

export interface IssueWords {
  readonly got: string;
  readonly expected: string;
  readonly mend: string;
}

interface Count {
  readonly count: number;
}
interface Most {
  readonly most: number;
}

const says = (got: string, expected: string, mend: string): IssueWords => ({ got, expected, mend });

const ANY_DRAWING = 'a drawing as DXF, a model as IFC, areas as GeoJSON, points as CSV or LandXML, or a scene (*.scene.json)';
const AGAIN = 'Save or send the file again, or open an earlier copy.';
const ENCLOSES = 'an outline that encloses an area';
const CHECK_THERE = 'It was left out; check the drawing there.';
const ONE_OUTLINE = 'one closed outline of the deck';
const CLOSE_OUTLINE = 'Give the layer with the deck’s edge the role outline; close the line in the drawing.';

const DRAWINGS: Readonly<Record<Exclude<DrawingKind, 'scene'>, string>> = {
  dxf: 'a DXF drawing',
  geojson: 'a map in GeoJSON',
  landxml: 'survey data in LandXML',
  ifc: 'a building model in IFC',
  table: 'a table or another text',
};

export const ISSUES_EN = {
  ...MODEL_ISSUES_EN,
  FILE_EMPTY: (_: object) => says('an empty file (0 bytes)', ANY_DRAWING, AGAIN),
  'FILE_EMPTY:blank': (_: object) => says('a file with nothing but blanks', ANY_DRAWING, AGAIN),
  FILE_TOO_LARGE: (v: Most & { readonly sizeMB: number }) =>
    says(`${v.sizeMB} MB`, `at most ${countEn(v.most)} MB`, 'Too large here: export only the layers of the deck.'),
  FILE_KIND: (v: { readonly what: FileKind; readonly advice: Advice }) => says(FILE_KINDS_EN[v.what], ANY_DRAWING, ADVICE_EN[v.advice]),
  'FILE_KIND:xml': (v: { readonly root: string }) => says(`XML of another kind (${v.root})`, ANY_DRAWING, 'Ask for LandXML, DXF or CSV.'),
  'FILE_KIND:drawing': (v: { readonly kind: Exclude<DrawingKind, 'scene'> }) =>
    says(DRAWINGS[v.kind], 'a scene (*.scene.json)', 'Read it as a drawing: import takes DXF, IFC, GeoJSON, LandXML and CSV.'),
  TOO_MANY_ENTITIES: (v: Most) =>
    says(`more than ${countEn(v.most)} entities`, `at most ${countEn(v.most)}`, 'Export only the layers of the deck.'),
  TOO_MANY_POINTS: (v: Most) =>
    says(
      `more than ${countEn(v.most)} points`,
      `at most ${countEn(v.most)} points in one drawing`,
      'Too large here: export only the layers of the deck, or draw curves with fewer points.',
    ),
  TEXT_LOST: (v: Count & { readonly sample: string }) =>
    says(
      `${someEn(v.count, 'text', 'texts')} with lost letters, for example "${v.sample}"`,
      'letters with accents and umlauts whole',
      'The letters were lost when the file was written; export it again, best in UTF-8, or check the names.',
    ),
  ANSWER_UNKNOWN: (v: { readonly answer: string; readonly choices: string }) =>
    says(`"${v.answer}"`, `one of ${v.choices}`, 'Choose one of these.'),
  MORE_ISSUES: (v: Count & Most) =>
    says(
      someEn(v.count, 'further message', 'further messages'),
      `at most ${countEn(v.most)} in one list`,
      'Mend those above and read the file again.',
    ),
  FILE_TRUNCATED: (v: Count & { readonly unit: 'line' | 'byte'; readonly at: number }) =>
    says(
      `the end of the file at ${v.unit} ${v.at}, after ${someEn(v.count, 'entry', 'entries')}`,
      'a file that is closed at its end',
      'It was probably not saved or sent completely. Save or send it again, or use the part that was read.',
    ),
  'FILE_TRUNCATED:json': (_: object) => says('JSON that breaks off or breaks its rules', 'a whole file', 'Export it again.'),
  BLOCK_MISSING: (v: { readonly block: string }) =>
    says(
      `an inserted block "${v.block}" that is not in the file`,
      'every inserted block in the same file',
      'Export the drawing with its blocks, or explode them.',
    ),
  BLOCK_CYCLE: (v: Most & { readonly block: string }) =>
    says(
      `a block "${v.block}" that holds itself, or blocks nested more than ${countEn(v.most)} deep`,
      'blocks that end',
      'Left out from there on; explode the block and export again.',
    ),
  BLOCKS_TOO_MANY: (v: Most) =>
    says(
      `blocks that grow to more than ${countEn(v.most)} entities`,
      `at most ${countEn(v.most)}`,
      'Nothing was changed. Export only the layers of the deck, without plants and furniture.',
    ),
  NOTHING_FOUND: (v: { readonly kinds: string }) =>
    says(
      v.kinds === '' ? 'nothing drawn' : `nothing that can be used (${kindsTold(v.kinds, 'en')})`,
      'outlines, lines, points or levels',
      'Export the plan as lines and closed polylines in model space, with blocks and other drawings bound in.',
    ),
  NUMBER_BAD: (v: Count & { readonly found: string }) =>
    says(
      `${someEn(v.count, 'entity', 'entities')} with a coordinate that is no number, the first "${v.found}"`,
      'finite numbers with a decimal point',
      'These were left out; export the drawing again.',
    ),
  'NUMBER_BAD:survey': (v: Count & { readonly found: string }) =>
    says(
      `${someEn(v.count, 'entry', 'entries')} with a coordinate that is no number, the first "${v.found}"`,
      'north, east and level as finite numbers',
      'These were left out; export the file again.',
    ),
  'NUMBER_BAD:row': (v: Count & { readonly found: string }) =>
    says(
      `${someEn(v.count, 'row', 'rows')} with a coordinate that is no number, the first "${v.found}"`,
      'finite numbers in the columns x and y',
      'These rows were left out; correct the cells, or pick other columns.',
    ),
  DXF_DAMAGED: (v: Count & { readonly found: string }) =>
    says(
      `"${v.found}" after ${someEn(v.count, 'entity', 'entities')}`,
      'the number of a group code in every other line',
      'The file was changed or damaged on its way; export it again as DXF in text form.',
    ),
  GEOJSON_DAMAGED: (v: Count) =>
    says(
      `${someEn(v.count, 'feature', 'features')} out of form, the first here`,
      'a geometry with coordinates that are lists of finite numbers',
      'These were left out; export the file again.',
    ),
  XML_ENTITIES: (_: object) =>
    says('a file that defines its own entities', 'plain LandXML', 'Nothing was read: such files can grow without end. Export it again.'),
  XML_DAMAGED: (v: { readonly line: number; readonly problem: string }) =>
    says(`XML that breaks its rules in line ${v.line}: ${v.problem}`, 'well-formed LandXML', 'Export it again.'),
  TOO_DEEP: (v: Most) => says(`elements nested more than ${countEn(v.most)} deep`, 'LandXML, which never is', 'Export it again.'),
  ROWS_RAGGED: (v: Count & { readonly cells: number; readonly columns: number }) =>
    says(
      `${someEn(v.count, 'row', 'rows')} with another number of columns, the first with ${v.cells}`,
      `${v.columns} columns as in the other rows`,
      'These rows were left out; check the mark between the columns.',
    ),
  LEVELS_MISSING: (v: Count & { readonly of: number }) =>
    says(
      `${countEn(v.count)} of ${countEn(v.of)} points without a level`,
      'a level for every point',
      'They give no level; check whether a part of the deck stays without levels.',
    ),
  LEVELS_TOO_MANY: (v: Count & Most & { readonly lines: number; readonly mostLines: number }) =>
    says(
      `${countEn(v.count)} levels and ${countEn(v.lines)} points on lines with levels`,
      `at most ${countEn(v.most)} levels and ${countEn(v.mostLines)} points on lines, which can then be thinned`,
      'Ask the surveyor for the points on the deck alone, thinned to one in every 10 to 20 cm.',
    ),
  LEVELS_TOO_ROUGH: (v: Count & Most & { readonly errorMm: number }) =>
    says(
      `${countEn(v.count)} levels so rough that more than ${countEn(v.most)} would have to stay, even with differences of ${v.errorMm} mm`,
      'a survey of the bare deck',
      'Ask the surveyor for the points on the deck alone: plants, walls, cars and people measured along make a surface rough.',
    ),
  LEVELS_THINNED_APART: (v: { readonly layers: string }) =>
    says(
      `levels that were thinned as one surface of the layers ${v.layers}, and are now used otherwise`,
      'all of these layers used as levels, and no others with levels',
      'The greatest difference told counts for these layers together. Give them back their use, or let the surveyor thin them.',
    ),
  RING_TOO_FEW_POINTS: (v: Count & Place) => says(`an outline of ${countEn(v.count)} points near ${spotEn(v)}`, ENCLOSES, CHECK_THERE),
  'RING_TOO_FEW_POINTS:none': (_: object) => says('an outline of 0 points', ENCLOSES, CHECK_THERE),
  RING_ZERO_AREA: (v: Place) => says(`an outline that encloses no area near ${spotEn(v)}`, ENCLOSES, CHECK_THERE),
  RING_CROSSES_ITSELF: (v: Place & { readonly name: string; readonly how: 'cross' | 'touch' }) =>
    says(
      `the edge of ${v.name === '' ? 'an outline' : `"${v.name}"`} ${v.how === 'cross' ? 'crossing' : 'touching'} itself near ${spotEn(v)}`,
      'edges that meet only at their ends, so that area and load can be computed',
      'Mend the drawing there, or split the shape before it is used as an area.',
    ),
  // Making a scene of it
  'ROLE_UNKNOWN:layer': (v: { readonly layer: string; readonly layers: string }) =>
    says(`a role for a layer "${v.layer}"`, `one of the layers ${v.layers}`, 'Check the name of the layer.'),
  ROLE_UNKNOWN: (v: { readonly role: string; readonly roles: string }) =>
    says(`the role "${v.role}"`, `one of ${v.roles}`, 'Choose one of these.'),
  'OUTLINE_MISSING:role': (_: object) => says('no layer given as outline', ONE_OUTLINE, CLOSE_OUTLINE),
  OUTLINE_MISSING: (v: { readonly layer: string }) => says(`no closed outline on layer "${v.layer}"`, ONE_OUTLINE, CLOSE_OUTLINE),
  OUTLINE_SEVERAL: (v: Count) =>
    says(
      `${countEn(v.count)} closed outlines`,
      'one outline of the deck',
      'The largest was taken; put openings on a layer of their own, other decks in a file of their own.',
    ),
  RING_OPEN: (v: Place & { readonly layer: string; readonly gapMm: number; readonly endX: number; readonly endY: number }) =>
    says(
      `a line on layer "${v.layer}" that does not close (gap ${v.gapMm} mm between ${spotEn(v)} and ${spotEn({ x: v.endX, y: v.endY })})`,
      'a closed outline; gaps up to 50 mm are closed',
      'Close the line in the drawing, or put it on a layer of another role.',
    ),
  BAY_HOLES: (v: Count) =>
    says(
      `${someEn(v.count, 'bay', 'bays')} with holes`,
      'bays as one outline each',
      'Their holes were left out. Draw openings of the deck on a layer of their own.',
    ),
  SHAPE_UNFIT: (v: Count & { readonly layer: string; readonly wanted: Wanted }) =>
    says(
      `${someEn(v.count, 'shape', 'shapes')} on layer "${v.layer}" that ${v.count === 1 ? 'is' : 'are'} of no use there`,
      TERMS_EN.wanted[v.wanted],
      'They were left out; give the layer another role, or mend the drawing.',
    ),
  AXES_UNFIT: (_: object) =>
    says(
      'lines that make no grid',
      'straight axes in two directions at right angles, two or more in each',
      'Enter the distances between axes by hand, or draw the bays as outlines.',
    ),
} as const satisfies { readonly [id in ImportIssueCode | `${ImportIssueCode}:${string}`]?: (values: never) => IssueWords };

export type Issues = typeof ISSUES_EN;
