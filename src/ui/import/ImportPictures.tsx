/** The drawing as its file has it and as it will lie, plainly drawn: size, north, scale bar, the open deck dashed. */

import { useMemo, useState } from 'react';
import type { ReadView } from '../../model/importer.ts';
import type { PointM } from '../../model/scene-file.ts';
import { fileSize, gapM, type Lie, lieOf, sizeOf } from '../facts/import-facts.ts';
import { previewSheet } from '../facts/preview-paths.ts';
import { numberText } from '../format.ts';
import { t } from '../text/text.ts';
import { useImports, useScene } from '../use-stores.ts';

interface Props {
  readonly read: ReadView;
  readonly marked: string | null;
}

type Which = 'before' | 'after';

export function ImportPictures({ read, marked }: Props) {
  const [which, setWhich] = useState<Which>('after');
  const lie = useMemo(() => lieOf(read), [read]);
  const inFile = fileSize(read);
  if (read.box === null) return null;
  const [width, height] = sizeOf(read.box);
  const size = t.imports.size(width, height);
  const before = inFile === null ? size : t.imports.fileSize(...inFile);
  const other = lie !== null || inFile !== null;
  const shown: Which = other ? which : 'after';
  const says = shown === 'before' ? before : size;
  return (
    <figure className="import-pictures">
      {other && (
        <fieldset className="segments">
          <legend className="unseen">{t.imports.beforeAfter}</legend>
          {(['before', 'after'] as const).map((one) => (
            <label key={one} className="segment">
              <input type="radio" name="import-picture" checked={one === which} onChange={() => setWhich(one)} />
              <span>{t.imports[one]}</span>
            </label>
          ))}
        </fieldset>
      )}
      <Picture read={read} marked={marked} lie={shown === 'before' ? lie : null} withDeck={shown === 'after'} says={says} which={shown} />
    </figure>
  );
}

interface PictureProps extends Props {
  readonly lie: Lie | null;
  readonly withDeck: boolean;
  readonly says: string;
  readonly which: Which;
}

function Picture({ read: { preview, box }, marked, lie, withDeck, says, which }: PictureProps) {
  const roles = useImports((state) => state.roles);
  const target = useImports((state) => state.target);
  const outline = useScene((state) => state.snapshot?.scene.deck.outline);
  const deck: readonly PointM[] | null = withDeck && target !== 'new' && outline !== undefined ? outline : null;
  const sheet = useMemo(() => previewSheet(preview, lie, deck), [preview, lie, deck]);
  const away = deck !== null && box !== null ? gapM(box, deck) : 0;
  const { bar, north } = sheet;
  return (
    <>
      <svg className="import-picture" viewBox={sheet.viewBox} role="img" aria-label={t.imports.picture(t.imports[which], says)}>
        {sheet.deck !== '' && <path className="import-deck" d={sheet.deck} />}
        {sheet.layers.map(({ name, d }) => (
          <path key={name} className={`import-line import-line-${roles[name] ?? 'ignore'}`} data-marked={name === marked} d={d} />
        ))}
        {which === 'after' && (
          <g className="import-bar">
            <path d={`M${bar.x} ${bar.y}v-5v5h${bar.length}v-5`} />
            <text x={bar.x + bar.length + 5} y={bar.y}>
              {numberText(bar.metres, bar.metres < 1 ? 2 : 0)} m
            </text>
          </g>
        )}
        <g className="import-north" transform={`translate(${north[0]} ${north[1]})`}>
          <path d="M0 0V-15M-3.5 -9L0 -16L3.5 -9" />
          <text x="-6" y="0" textAnchor="end">
            {t.imports.north}
          </text>
        </g>
      </svg>
      <figcaption>
        <span className="import-size">{says}</span>
        {preview.left > 0 && <span className="small block">{t.imports.notDrawn(preview.left)}</span>}
        {sheet.deck !== '' && away === 0 && <p className="small">{t.imports.openDeck}</p>}
        {away > 0 && <p className="import-apart">{t.imports.apart(away)}</p>}
      </figcaption>
    </>
  );
}
