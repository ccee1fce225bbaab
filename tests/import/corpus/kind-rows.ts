/** Files of the wrong kind, empty, packed or too large; the same for import and check. */

import { dxf, inMetres, rectangle } from '../dxf-builder.ts';
import { SEVERAL_SLABS, SLOPED_FACES } from '../ifc/models.ts';
import { type BadInput, bytes8 } from './bad-input.ts';

const zip = (name: string) => bytes8(`PK\x03\x04\x14\0\0\0\x08\0${'\0'.repeat(16)}${String.fromCharCode(name.length)}\0\0\0${name}....`);
const model = (...lines: string[]) =>
  `ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n${lines.join('\n')}\nENDSEC;\nEND-ISO-10303-21;\n`;
const both = (row: number, what: string, file: () => string | Uint8Array, says: readonly string[]): BadInput[] =>
  (['import', 'check'] as const).map((by) => ({ row, what, by, file, expected: { error: row === 44 ? 'FILE_EMPTY' : 'FILE_KIND', says } }));

const aModel = (what: string, file: () => string, expected: BadInput['expected']): BadInput => ({
  row: 36,
  what: `a model: ${what}`,
  by: 'import',
  file,
  expected,
});

export const KIND_ROWS: readonly BadInput[] = [
  aModel('slabs without a body', () => model("#1=IFCSLAB('a');", "#2=IFCSLAB('b');", "#3=IFCCOLUMN('c');"), {
    error: 'NO_SLAB',
    says: ['2 slabs without a body', '1 column', 'as DXF'],
  }),
  aModel('no slab', () => model("#1=IFCWALL('a');"), { error: 'NO_SLAB', says: ['0 slabs', 'structural model'] }),
  aModel('three slabs', () => SEVERAL_SLABS, { asks: ['slab', '17'], says: ['storey "Above"', '100 m²', 'top at 3 m'] }),
  aModel('a slab of sloping faces', () => SLOPED_FACES, { mend: 'SLAB_READ', says: ['upward faces', 'top from 0 to 0.2 m'] }),
  ...both(36, 'a model of a newer schema', () => model().replace("'IFC4'", "'IFC4X3_ADD2'"), ['IFC4X3_ADD2', 'IFC4 or IFC2X3']),
  ...both(38, 'a packed file', () => zip('deck.dxf'), ['a ZIP archive', 'Unpack it']),
  ...both(43, 'a DWG drawing', () => bytes8('AC1032\0\0\0\0\0\x06'), ['a DWG drawing', 'export DXF 2007 or later']),
  ...both(43, 'a DWG drawing with the name of a DXF', () => bytes8('AC1018\0\0\0\0\0\x06'), ['a DWG drawing']),
  ...both(43, 'a PDF document', () => '%PDF-1.7\n%âãÏÓ\n', ['a PDF document', 'as DXF']),
  ...both(43, 'a packed model', () => zip('model.ifc'), ['a packed IFC model', 'Unpack it']),
  ...both(43, 'a spreadsheet', () => zip('xl/workbook.xml'), ['a spreadsheet', 'as CSV']),
  ...both(43, 'an older spreadsheet', () => bytes8('\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1\0\0'), ['older office document', 'as CSV']),
  ...both(43, 'a picture', () => bytes8('\x89PNG\r\n\x1A\n\0\0'), ['a picture']),
  ...both(43, 'a photograph', () => bytes8('\xFF\xD8\xFF\xE0\0\x10JFIF'), ['a picture']),
  ...both(43, 'a shapefile', () => bytes8("\0\0'\n\0\0\0\0"), ['a shapefile', 'GeoJSON']),
  ...both(43, 'a web page', () => '<!DOCTYPE html><html><body>Sign in</body></html>', ['a web page', 'download it again']),
  ...both(43, 'a map in KML', () => '<?xml version="1.0"?><kml><Document/></kml>', ['a KML map', 'GeoJSON']),
  ...both(43, 'a DXF in its binary form', () => bytes8('Xyz Binary DXF\r\n\x1A\0'), ['binary form of DXF', 'text form']),
  {
    row: 43,
    what: 'a drawing given to check',
    by: 'check',
    file: () => dxf({ header: inMetres, entities: [rectangle('A', 40, 30)] }),
    expected: { error: 'FILE_KIND', says: ['a DXF drawing', 'import'] },
  },
  {
    row: 43,
    what: 'a drawing given to check',
    by: 'check',
    file: () => SLOPED_FACES,
    expected: { error: 'FILE_KIND', says: ['a building model in IFC', 'Read it as a drawing'] },
  },
  {
    row: 43,
    what: 'a report',
    by: 'import',
    file: () => '{"format":"loamdeck-report","version":1}',
    expected: { error: 'FILE_KIND', says: ['a report', 'scene it was made from'] },
  },
  {
    row: 43,
    what: 'a letter',
    by: 'import',
    file: () => 'Dear all\nplease find the drawing attached\n',
    expected: { error: 'FILE_KIND', says: ['a text without numbers'] },
  },
  ...both(44, 'an empty file', () => '', ['0 bytes']),
  ...both(44, 'nothing but blanks', () => ' \r\n\t\n', ['nothing but blanks']),
];
