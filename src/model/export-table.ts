/** Tables of the report that can be saved. */

export const EXPORT_TABLES = [
  'take-off',
  'take-off by zone',
  'take-off by stage',
  'bays',
  'heaps',
  'columns',
  'edges',
  'run-off',
  'outlets',
  'blocked outlets',
] as const;
export type ExportTableId = (typeof EXPORT_TABLES)[number];
