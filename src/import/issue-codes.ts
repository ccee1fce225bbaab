/** Every code a drawing can be answered with: stable, searchable, one meaning each. */

export const IMPORT_ISSUE_CODES = {
  FILE_EMPTY: 'the file holds nothing',
  FILE_KIND: 'the file is of a kind that cannot be read',
  FILE_TOO_LARGE: 'the file is longer than the limit',
  TOO_MANY_POINTS: 'more points than the limit',
  TOO_MANY_ENTITIES: 'more entities, features or rows than the limit',
  BLOCKS_TOO_MANY: 'inserted blocks grow beyond the limit',
  BLOCK_CYCLE: 'a block that holds itself',
  BLOCK_MISSING: 'an inserted block that is not in the file',
  TEXT_LOST: 'letters were lost when the file was written',
  TEXT_DAMAGED: 'letters that could not be read',
  DXF_DAMAGED: 'a line that breaks the pairs of code and value',
  DXF_BINARY: 'a drawing in the binary form of DXF',
  FILE_TRUNCATED: 'the file stops in the middle',
  NOTHING_FOUND: 'no shape, point or level that can be used',
  NUMBER_BAD: 'a coordinate that is no number',
  XML_DAMAGED: 'XML that breaks the rules',
  XML_ENTITIES: 'XML that defines its own entities',
  TOO_DEEP: 'nesting deeper than the limit',
  GEOJSON_DAMAGED: 'a GeoJSON object out of form',
  ROWS_RAGGED: 'rows with another number of columns',
  LEVELS_MISSING: 'points without a level',
  RING_TOO_FEW_POINTS: 'an outline with fewer than three different points',
  RING_ZERO_AREA: 'an outline that encloses no area',
  RING_CROSSES_ITSELF: 'edges of one outline cross or touch',
  ANSWER_UNKNOWN: 'an answer that is not among the choices',
  // Making a scene of it
  ROLE_UNKNOWN: 'a role or layer that there is not',
  OUTLINE_MISSING: 'no closed outline on the layers given as outline',
  OUTLINE_SEVERAL: 'more than one outline',
  RING_OPEN: 'a line that does not close where an outline was expected',
  SHAPE_UNFIT: 'a shape that its layer’s role cannot use',
  AXES_UNFIT: 'axes that form no grid at right angles',
  MORE_ISSUES: 'further messages were left out',
} as const satisfies Record<string, string>;

export type ImportIssueCode = keyof typeof IMPORT_ISSUE_CODES;
