/** Plan and section as drawings to scale, and the model. */

import { useState } from 'react';
import type { DrawnKind, DrawnOptions } from '../../model/drawn-file.ts';
import type { Language } from '../../model/language.ts';
import { today, useSectionFiles } from '../section/use-section-files.ts';
import { t } from '../text/text.ts';
import type { Saving } from '../use-saving.ts';
import { useScene, useView } from '../use-stores.ts';

const PLAN_SCALES = [50, 100, 200, 250, 500] as const;

interface Props {
  readonly saving: Saving;
  readonly language: Language;
}

export function DrawingExports({ saving, language }: Props) {
  const exportDrawn = useScene((state) => state.exportDrawn);
  const section = useView((state) => state.section);
  const sectionFile = useSectionFiles();
  const [scale, setScale] = useState<number>(100);
  const drawn = (kind: DrawnKind, options: DrawnOptions) => void saving.save(() => exportDrawn(kind, options));
  const line = section === null ? {} : { line: section.line };
  return (
    <section>
      <h3 className="block-title">{t.exports.drawings}</h3>
      <label className="section-choice">
        <span>{t.exports.scale}</span>
        <select value={scale} onChange={({ target }) => setScale(Number(target.value))}>
          {PLAN_SCALES.map((to) => (
            <option key={to} value={to}>
              {t.exports.scaleText(to)}
            </option>
          ))}
        </select>
      </label>
      <div className="sheet-buttons">
        {(['svg', 'dxf'] as const).map((kind) => (
          <button
            key={kind}
            type="button"
            className="button"
            disabled={saving.busy}
            onClick={() => drawn(`plan ${kind}`, { language, scale, date: today(), ...line })}
          >
            {kind === 'svg' ? t.exports.planSvg : t.exports.planDxf}
          </button>
        ))}
        {section !== null &&
          (['svg', 'dxf'] as const).map((kind) => (
            <button
              key={kind}
              type="button"
              className="button"
              disabled={saving.busy}
              onClick={() => void saving.save(() => sectionFile(kind, language))}
            >
              {kind === 'svg' ? t.exports.sectionSvg : t.exports.sectionDxf}
            </button>
          ))}
        <button type="button" className="button" disabled={saving.busy} onClick={() => drawn('model glb', { language })}>
          {t.exports.glb}
        </button>
      </div>
      {section === null && <p className="small">{t.exports.noSection}</p>}
      <p className="small">{t.exports.glbSays}</p>
    </section>
  );
}
