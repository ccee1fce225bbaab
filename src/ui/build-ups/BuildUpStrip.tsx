/** All build-ups as small columns on one membrane, to one scale, with where they lie. */

import type { BuildUpView } from '../../model/engine.ts';
import { columnAt } from '../facts/column-scale.ts';
import { ColumnBands } from '../log/column-parts.tsx';
import { t } from '../text/text.ts';
import { drawnLayers } from './drawn-layers.ts';

const HEIGHT = 64;
const WIDTH = 34;
const LEAST_PX = 1.5;
/** What the tallest of them measures at least, so that a single thin one isn't drawn like a thick one [mm]. */
const LEAST_TALLEST_MM = 500;

interface Props {
  readonly buildUps: readonly BuildUpView[];
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
}

export function BuildUpStrip({ buildUps, chosen, onChoose }: Props) {
  const tallestMm = Math.max(LEAST_TALLEST_MM, ...buildUps.map(({ sum }) => sum.depthMm));
  const { list } = t.buildUps;
  return (
    <ul className="bu-strip" aria-label={list.title}>
      {buildUps.map((buildUp) => (
        <li key={buildUp.id}>
          <button type="button" className="bu-card" aria-pressed={buildUp.id === chosen} onClick={() => onChoose(buildUp.id)}>
            <SmallColumn buildUp={buildUp} pxPerMm={(HEIGHT - 4) / tallestMm} />
            <span className="bu-card-words">
              <strong>{buildUp.name}</strong>
              <span className="small block">{list.depth(buildUp.sum.depthMm)}</span>
              <span className="small block">{list.area(buildUp.zones.length, buildUp.areaM2)}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function SmallColumn({ buildUp, pxPerMm }: { readonly buildUp: BuildUpView; readonly pxPerMm: number }) {
  const layers = drawnLayers(buildUp);
  const scale = columnAt(
    layers.map(({ thicknessMm }) => thicknessMm),
    HEIGHT,
    LEAST_PX,
    pxPerMm,
  );
  const plain = { ...scale, bands: scale.bands.map((band) => ({ ...band, enlarged: false })) };
  return (
    <svg className="bu-small" width={WIDTH} height={HEIGHT + 2} viewBox={`0 0 ${WIDTH} ${HEIGHT + 2}`} aria-hidden="true" focusable="false">
      <ColumnBands layers={layers} scale={plain} x={3} width={WIDTH - 6} />
      <path className="core-membrane" d={`M0 ${HEIGHT}h${WIDTH}`} />
    </svg>
  );
}
