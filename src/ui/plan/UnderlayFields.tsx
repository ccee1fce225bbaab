/** Choosing, showing and scaling the picture below the plan. */

import { type ChangeEvent, useEffect, useRef, useState } from 'react';
import { boxOf } from '../facts/place.ts';
import { t } from '../text/text.ts';
import { keepUnder } from './kept-underlay.ts';
import { usePlan } from './plan-context.ts';
import { QuantityField } from './QuantityField.tsx';
import { useSceneFile } from './use-drawn-lists.ts';

const MOST_MB = 15;
const TYPES = 'image/png,image/jpeg,image/webp';
const OPACITY = 0.6;

/** A picture as the page may show it: its own text, since addresses of other kinds are closed to it. */
const dataOf = (file: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(file);
  });

/** Size of a picture; null for what the browser cannot show. */
async function pictureSize(file: Blob): Promise<{ readonly widthPx: number; readonly heightPx: number } | null> {
  try {
    const bitmap = await createImageBitmap(file);
    const size = { widthPx: bitmap.width, heightPx: bitmap.height };
    bitmap.close();
    return size;
  } catch {
    return null;
  }
}

export function UnderlayFields() {
  const scene = useSceneFile();
  const underlay = usePlan((state) => state.underlay);
  const setUnderlay = usePlan((state) => state.setUnderlay);
  const use = usePlan((state) => state.use);
  const [says, setSays] = useState('');
  const input = useRef<HTMLInputElement>(null);
  const name = scene?.name ?? '';
  useEffect(() => {
    if (underlay === null) return;
    const later = setTimeout(
      () => void keepUnder('pictures', name, underlay).then((isKept) => setSays(isKept ? '' : t.draw.underlay.notKept)),
      400,
    );
    return () => clearTimeout(later);
  }, [name, underlay]);
  if (scene === null) return null;
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = '';
    if (file === undefined) return;
    if (file.size > MOST_MB * 1e6) return setSays(t.draw.underlay.tooLarge(MOST_MB));
    const size = TYPES.split(',').includes(file.type) ? await pictureSize(file) : null;
    if (size === null) return setSays(t.draw.underlay.refused(file.name));
    setSays('');
    // Over the whole deck to begin with.
    const { min, max } = boxOf(scene.deck.outline);
    const metresPerPx = Math.max((max[0] - min[0]) / size.widthPx, (max[1] - min[1]) / size.heightPx);
    const place = { a: metresPerPx, b: 0, dx: min[0], dy: min[1] + size.heightPx * metresPerPx };
    setUnderlay({ name: file.name, url: await dataOf(file), ...size, place, opacity: OPACITY, shown: true });
  };
  const remove = () => void keepUnder('pictures', name, null).then(() => setUnderlay(null));
  const words = t.draw.underlay;
  return (
    <section className="pe-underlay-fields">
      <h3 className="block-title">{words.title}</h3>
      <p className="small">{words.how}</p>
      <input ref={input} type="file" accept={TYPES} hidden onChange={(event) => void take(event)} />
      <div className="pe-actions">
        <button type="button" className="button" onClick={() => input.current?.click()}>
          {underlay === null ? words.choose : words.change}
        </button>
        {underlay !== null && (
          <>
            <button type="button" className="button" onClick={() => use('scale')}>
              {words.scale}
            </button>
            <button type="button" className="button" onClick={remove}>
              {words.remove}
            </button>
          </>
        )}
      </div>
      {underlay !== null && (
        <div className="pe-fields">
          <label className="check">
            <input
              type="checkbox"
              checked={underlay.shown}
              onChange={({ target }) => setUnderlay({ ...underlay, shown: target.checked })}
            />
            {words.shown}
          </label>
          <div className="pe-field">
            <span className="pe-field-name">{words.opacity}</span>
            <input
              type="range"
              aria-label={words.opacity}
              min="0.1"
              max="1"
              step="0.05"
              value={underlay.opacity}
              onChange={({ target }) => setUnderlay({ ...underlay, opacity: Number(target.value) })}
            />
          </div>
          <Corner />
        </div>
      )}
      <p className="pe-says" data-wrong="true" role="status">
        {says}
      </p>
    </section>
  );
}

/** The picture is moved by its lower left corner. */
function Corner() {
  const underlay = usePlan((state) => state.underlay);
  const setUnderlay = usePlan((state) => state.setUnderlay);
  if (underlay === null) return null;
  const { place, heightPx } = underlay;
  const [x, y] = [place.b * heightPx + place.dx, place.dy - place.a * heightPx];
  const field = { unit: 'm', decimals: 3, min: -1e7, max: 1e7 } as const;
  const put = (axis: 'x' | 'y') => (to: number | undefined) => {
    if (to === undefined) return;
    setUnderlay({ ...underlay, place: { ...place, ...(axis === 'x' ? { dx: place.dx + to - x } : { dy: place.dy + to - y }) } });
  };
  return (
    <div className="pe-field">
      <span className="pe-field-name">{t.draw.underlay.place}</span>
      <span className="pe-size">
        <QuantityField label={`${t.draw.underlay.place}: x`} value={x} {...field} onCommit={put('x')} />
        <QuantityField label={`${t.draw.underlay.place}: y`} value={y} {...field} onCommit={put('y')} />
      </span>
    </div>
  );
}
