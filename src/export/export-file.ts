/** Files to be saved from an evaluated scene. */

import type { ExportedFile, ExportKind, ExportLanguage } from '../model/engine.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { csvText } from '../project/export-csv.ts';
import { EXPORT_TABLES, exportTable } from '../project/export-tables.ts';
import { fileName } from './file-name.ts';
import { workbookBytes } from './workbook.ts';

const XLSX_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

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
  const table = (id: (typeof EXPORT_TABLES)[number]) => exportTable(id, scene, report, language);
  if (kind === 'take-off xlsx') {
    return { name: fileName(scene, 'tables', 'xlsx'), mediaType: XLSX_TYPE, bytes: await workbookBytes(EXPORT_TABLES.map(table)) };
  }
  const bytes = new TextEncoder().encode(csvText(table('take-off'), language));
  return { name: fileName(scene, 'take-off', 'csv'), mediaType: 'text/csv;charset=utf-8', bytes };
}
