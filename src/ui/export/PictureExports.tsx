/** The model as it is seen now, in any size. */

import { useState } from 'react';
import type { HandoverPicture } from '../../model/engine.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { t } from '../text/text.ts';
import type { Saving } from '../use-saving.ts';
import { useScene, useView } from '../use-stores.ts';
import { type PictureSize, usePicture } from './use-picture.ts';

const SIZES: readonly PictureSize[] = [
  { widthPx: 1280, heightPx: 720 },
  { widthPx: 1920, heightPx: 1080 },
  { widthPx: 3840, heightPx: 2160 },
];
const LEAST_PX = 320;
const MOST_PX = 4096;

interface Props {
  readonly saving: Saving;
  readonly pictures: readonly HandoverPicture[];
  readonly onPictures: (pictures: readonly HandoverPicture[]) => void;
}

export function PictureExports({ saving, pictures, onPictures }: Props) {
  const [size, setSize] = useState<PictureSize>({ widthPx: 1920, heightPx: 1080 });
  const able = useView((state) => state.takePicture !== null);
  const fileName = useScene((state) => state.snapshot?.scene.name ?? '');
  const take = usePicture();
  const onSave = () =>
    saving.save(async () => {
      const { bytes } = await take(size);
      return { name: `${stemOf(fileName)}-${size.widthPx}x${size.heightPx}.png`, mediaType: 'image/png', bytes };
    });
  const onKeep = () =>
    saving.run(async () => {
      const next = [...pictures, await take(size)];
      onPictures(next);
      return t.exports.kept(next.length);
    });
  return (
    <section>
      <h3 className="block-title">{t.exports.picture}</h3>
      {able ? (
        <>
          <p className="small">{t.exports.pictureSays}</p>
          <SizeChoice size={size} onChange={setSize} />
          <div className="sheet-buttons">
            <button type="button" className="button" disabled={saving.busy} onClick={() => void onSave()}>
              {t.exports.savePicture}
            </button>
            <button type="button" className="button" disabled={saving.busy} onClick={() => void onKeep()}>
              {t.exports.keepPicture}
            </button>
          </div>
          {pictures.length > 0 && <p className="small">{t.exports.kept(pictures.length)}</p>}
        </>
      ) : (
        <p>{t.exports.noPicture}</p>
      )}
    </section>
  );
}

/** Letters and digits of any script stay, everything else becomes a hyphen. */
const stemOf = (name: string) =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'deck';

interface SizeProps {
  readonly size: PictureSize;
  readonly onChange: (size: PictureSize) => void;
}

const OWN = 'own';

function SizeChoice({ size, onChange }: SizeProps) {
  const known = SIZES.findIndex(({ widthPx, heightPx }) => widthPx === size.widthPx && heightPx === size.heightPx);
  return (
    <div className="export-size">
      <label className="section-choice">
        <span>{t.exports.size}</span>
        <select value={known < 0 ? OWN : known} onChange={({ target }) => onChange(SIZES[Number(target.value)] ?? size)}>
          {SIZES.map(({ widthPx, heightPx }, i) => (
            <option key={widthPx} value={i}>
              {t.exports.sizeText(widthPx, heightPx)}
            </option>
          ))}
          {known < 0 && <option value={OWN}>{t.exports.ownSize}</option>}
        </select>
      </label>
      {(['widthPx', 'heightPx'] as const).map((side) => (
        <NumberField
          key={side}
          label={side === 'widthPx' ? t.exports.width : t.exports.height}
          value={size[side]}
          unit="px"
          decimals={0}
          min={LEAST_PX}
          max={MOST_PX}
          onCommit={(value) => onChange({ ...size, [side]: Math.round(value) })}
        />
      ))}
    </div>
  );
}
