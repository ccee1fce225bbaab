/** Files to be saved from an evaluated scene. */

import type { ExportedFile, ExportKind, ExportLanguage } from '../model/engine.ts';
import { EXPORT_TABLES, type ExportTableId } from '../model/export-table.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { csvText } from '../project/export-csv.ts';
import { exportTable } from '../project/export-tables.ts';
import { fileName } from './file-name.ts';
import { workbookBytes } from './workbook.ts';

const XLSX_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const JSON_TYPE = 'application/json';

const encode = (text: string) => new TextEncoder().encode(text);

/** As the command line writes them. */
export const jsonText = (value: SceneFile | Report): string => `${JSON.stringify(value, null, 2)}\n`;

/**
 * One file. The workbook has all tables, the take-off first.
 * @param kind - what to save
 * @param of - scene and its report
 * @param language - of headings and notes, and of the numbers of a CSV
 * @returns name, media type and bytes
 */
export async function exportFile(
  kind: ExportKind,
  { scene, report }: { readonly scene: SceneFile; readonly report: Report },
  language: ExportLanguage,
): Promise<ExportedFile> {
  const table = (id: ExportTableId) => exportTable(id, scene, report, language);
  if (kind === 'take-off xlsx') {
    return { name: fileName(scene, 'tables', 'xlsx'), mediaType: XLSX_TYPE, bytes: await workbookBytes(EXPORT_TABLES.map(table)) };
  }
  if (kind === 'scene json') return { name: sceneFileName(scene), mediaType: JSON_TYPE, bytes: encode(jsonText(scene)) };
  if (kind === 'report json') return { name: fileName(scene, 'report', 'json'), mediaType: JSON_TYPE, bytes: encode(jsonText(report)) };
  const id = kind.slice(0, -' csv'.length) as ExportTableId;
  return {
    name: fileName(scene, id.replaceAll(' ', '-'), 'csv'),
    mediaType: 'text/csv;charset=utf-8',
    bytes: encode(csvText(table(id), language)),
  };
}

/** With the double ending by which scenes are known. */
export function sceneFileName(scene: SceneFile): string {
  return fileName(scene, '', 'scene.json');
}
