/** Sentences of the export sheet and of the settings. */

import type { ExportTableId } from '../../model/export-table.ts';

const TABLES: Readonly<Record<ExportTableId, string>> = {
  'take-off': 'Take-off',
  'take-off by zone': 'Take-off by zone',
  'take-off by stage': 'Take-off by stage',
  bays: 'Bays',
  heaps: 'Heap heights',
  columns: 'Columns',
  edges: 'Edges',
  'run-off': 'Run-off',
  outlets: 'Outlets',
  'blocked outlets': 'Blocked outlets',
};

export const exports = {
  button: 'Export',
  title: 'Export',
  says: 'Files are made on this device and stay on it.',
  close: 'Close',
  language: 'Language of the files',
  picture: 'Picture of the model',
  pictureSays: 'As it is seen now, with its legend. PNG.',
  size: 'Size',
  sizeText: (width: number, height: number) => `${width} × ${height}`,
  ownSize: 'Own size',
  width: 'Width',
  height: 'Height',
  savePicture: 'Save PNG',
  keepPicture: 'Keep for the handover',
  kept: (count: number) => (count === 1 ? '1 picture is kept for the handover.' : `${count} pictures are kept for the handover.`),
  noPicture: 'No picture: this browser or device offers no 3D view, or not one so large.',
  drawings: 'Drawings',
  scale: 'Scale of the plan',
  scaleText: (to: number) => `1 : ${to}`,
  planSvg: 'Plan, SVG',
  planDxf: 'Plan, DXF',
  sectionSvg: 'Section, SVG',
  sectionDxf: 'Section, DXF',
  noSection: 'No section is shown. Draw one with “Section” beside the model.',
  model: 'Model',
  glb: 'Model, GLB',
  glbSays: 'The finished garden in metres, one node per layer and zone, loads in its extras.',
  tables: 'Tables',
  table: 'Table',
  tableName: (id: ExportTableId) => TABLES[id],
  csv: 'Table, CSV',
  xlsx: 'All tables, workbook',
  files: 'Scene and report',
  scene: 'Scene file',
  report: 'Report, JSON',
  handover: 'Handover',
  handoverSays:
    'Everything in one page that opens without a server: findings, tables, plan, section, pictures, hold points, sources, and the files with their checksums.',
  html: 'Handover, HTML',
  working: 'Making the file…',
  /** Lines baked into a picture. */
  of: (scene: string, stage: string) => `${scene} · ${stage}`,
  map: (quantity: string, unit: string, basis: string) => `${quantity}, ${unit}. ${basis}.`,
};

export const settings = {
  button: 'Settings',
  title: 'Settings',
  loads: 'Loads per area',
  lengths: 'Thicknesses and depths',
  lengthNames: { mm: 'mm', cm: 'cm', m: 'm', 'ft-in': 'feet and inches' },
  unitsSay:
    'For reading and typing only: the tables of this page follow them; the scene file, exports, prints, drawings and derivations keep kN/m², mm and m, and say so. 1 t/m² is 9.81 kN/m², 1 kN/m² is 20.885 psf. Coordinates, levels and distances stay in metres.',
  theme: 'Look',
  themes: { paper: 'Paper', projector: 'Projector', sun: 'Sun' },
  themesSay:
    'Projector: strong lines for a beamer in a lit room. Sun: black on white for a screen outdoors. Prints always look like paper.',
  motion: 'Motion',
  close: 'Close',
};
