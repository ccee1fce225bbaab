/** How the section is drawn: scale, heights, size on the screen, sheet or table; saving, a new line, closing. */

import { HEIGHTS, SECTION_SCALES } from '../../store/section-view.ts';
import { wholePercentText } from '../format.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useSaving } from '../use-saving.ts';
import { useScene, useView } from '../use-stores.ts';
import { useSection } from './use-section.ts';
import { useSectionFiles } from './use-section-files.ts';

export interface BarProps {
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
  /** Null for the whole sheet. */
  readonly zoom: number | null;
  readonly onZoom: (zoom: number | null) => void;
}

export const ZOOM_STEP = 1.5;

export function SectionBar({ asTable, onTable, zoom, onZoom }: BarProps) {
  const lengthM = useScene((state) => state.section?.drawing.lengthM);
  const { draw, close } = useSection();
  return (
    <header className="section-bar">
      <h2 className="block-title">{lengthM === undefined ? t.section.region : t.section.title(lengthM)}</h2>
      <ScaleChoice />
      <HeightsChoice />
      <fieldset className="segments" aria-label={t.section.region}>
        {[false, true].map((table) => (
          <label key={String(table)} className="segment">
            <input type="radio" name="section-as" checked={asTable === table} onChange={() => onTable(table)} />
            <span>{table ? t.section.table : t.section.drawing}</span>
          </label>
        ))}
      </fieldset>
      {!asTable && <Zoom zoom={zoom} onZoom={onZoom} />}
      <SaveSection />
      <span className="section-end">
        <button type="button" className="button" onClick={draw}>
          {t.section.redraw}
        </button>
        <button type="button" className="icon-button" aria-label={t.section.close} onClick={close}>
          <Icon name="close" />
        </button>
      </span>
    </header>
  );
}

function ScaleChoice() {
  const section = useView((state) => state.section);
  const showSection = useView((state) => state.showSection);
  if (section === null) return null;
  return (
    <label className="section-choice">
      <span>{t.section.scale}</span>
      <select value={section.scale} onChange={(event) => showSection({ ...section, scale: Number(event.target.value) })}>
        {SECTION_SCALES.map((scale) => (
          <option key={scale} value={scale}>
            {t.section.scaleText(scale)}
          </option>
        ))}
      </select>
    </label>
  );
}

function HeightsChoice() {
  const section = useView((state) => state.section);
  const showSection = useView((state) => state.showSection);
  if (section === null) return null;
  return (
    <label className="section-choice">
      <span>{t.section.heights}</span>
      <select value={section.heights} onChange={(event) => showSection({ ...section, heights: Number(event.target.value) })}>
        {HEIGHTS.map((times) => (
          <option key={times} value={times}>
            {t.section.heightsText(times)}
          </option>
        ))}
      </select>
    </label>
  );
}

function Zoom({ zoom, onZoom }: Pick<BarProps, 'zoom' | 'onZoom'>) {
  return (
    <span className="section-zoom">
      <button type="button" className="icon-button" aria-label={t.section.smaller} onClick={() => onZoom((zoom ?? 1) / ZOOM_STEP)}>
        <Icon name="minus" />
      </button>
      <button type="button" className="button" aria-pressed={zoom === null} onClick={() => onZoom(null)}>
        {t.section.fit}
      </button>
      <button type="button" className="icon-button" aria-label={t.section.larger} onClick={() => onZoom((zoom ?? 1) * ZOOM_STEP)}>
        <Icon name="plus" />
      </button>
      {zoom !== null && <span className="small">{t.section.zoom(wholePercentText(zoom))}</span>}
    </span>
  );
}

function SaveSection() {
  const { save, said } = useSaving();
  const files = useSectionFiles();
  return (
    <span className="section-save">
      {(['svg', 'dxf'] as const).map((kind) => (
        <button
          key={kind}
          type="button"
          className="button"
          aria-label={kind === 'svg' ? t.section.saveSvg : t.section.saveDxf}
          onClick={() => void save(() => files(kind))}
        >
          <Icon name="file" />
          {t.section[kind]}
        </button>
      ))}
      <span role="status" className="unseen">
        {said}
      </span>
    </span>
  );
}
