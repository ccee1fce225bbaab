/** Tables, scene, report, and all of it in one page. */

import { useState } from 'react';
import type { ExportKind, HandoverPicture } from '../../model/engine.ts';
import { EXPORT_TABLES, type ExportTableId } from '../../model/export-table.ts';
import type { Language } from '../../model/language.ts';
import { today } from '../section/use-section-files.ts';
import { t } from '../text/text.ts';
import type { Saving } from '../use-saving.ts';
import { useScene, useView } from '../use-stores.ts';
import { usePicture } from './use-picture.ts';

/** Of the one that goes into a handover for which none was kept. */
const HANDOVER_SIZE = { widthPx: 1600, heightPx: 1000 };

interface Props {
  readonly saving: Saving;
  readonly language: Language;
  readonly pictures: readonly HandoverPicture[];
}

export function TableExports({ saving, language, pictures }: Props) {
  const exportFile = useScene((state) => state.exportFile);
  const [table, setTable] = useState<ExportTableId>('take-off');
  const save = (kind: ExportKind) => void saving.save(() => exportFile(kind, language));
  const button = (kind: ExportKind, text: string) => (
    <button type="button" className="button" disabled={saving.busy} onClick={() => save(kind)}>
      {text}
    </button>
  );
  return (
    <>
      <section>
        <h3 className="block-title">{t.exports.tables}</h3>
        <label className="section-choice">
          <span>{t.exports.table}</span>
          <select value={table} onChange={({ target }) => setTable(EXPORT_TABLES.find((id) => id === target.value) ?? table)}>
            {EXPORT_TABLES.map((id) => (
              <option key={id} value={id}>
                {t.exports.tableName(id)}
              </option>
            ))}
          </select>
        </label>
        <div className="sheet-buttons">
          {button(`${table} csv`, t.exports.csv)}
          {button('take-off xlsx', t.exports.xlsx)}
        </div>
      </section>
      <section>
        <h3 className="block-title">{t.exports.files}</h3>
        <div className="sheet-buttons">
          {button('scene json', t.exports.scene)}
          {button('report json', t.exports.report)}
        </div>
      </section>
      <HandoverExport saving={saving} language={language} pictures={pictures} />
    </>
  );
}

function HandoverExport({ saving, language, pictures }: Props) {
  const exportHandover = useScene((state) => state.exportHandover);
  const section = useView((state) => state.section);
  const able = useView((state) => state.takePicture !== null);
  const take = usePicture();
  const onSave = () =>
    saving.save(async () => {
      const shown = pictures.length > 0 || !able ? pictures : [await take(HANDOVER_SIZE)];
      return exportHandover({ language, date: today(), pictures: shown, ...(section === null ? {} : { line: section.line }) });
    });
  return (
    <section>
      <h3 className="block-title">{t.exports.handover}</h3>
      <p className="small">{t.exports.handoverSays}</p>
      <div className="sheet-buttons">
        <button type="button" className="button" disabled={saving.busy} onClick={() => void onSave()}>
          {t.exports.html}
        </button>
      </div>
    </section>
  );
}
