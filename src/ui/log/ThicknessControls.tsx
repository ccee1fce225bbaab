/** Thicknesses of one build-up: of the zone under the picked place, or chosen from the list. */

import { useState } from 'react';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import { thicknessOf } from '../format.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { ThicknessRow } from './ThicknessRow.tsx';

function buildUpOf(snapshot: Snapshot, zone: string | null): string | undefined {
  return snapshot.scene.zones.find(({ id }) => id === zone)?.buildup;
}

export function ThicknessControls({ zone }: { readonly zone: string | null }) {
  const snapshot = useScene((state) => state.snapshot);
  const [chosen, setChosen] = useState<{ readonly zone: string | null; readonly id: string } | null>(null);
  if (snapshot === null) return null;
  // A choice from the list holds until another place is picked.
  const id = (chosen?.zone === zone ? chosen.id : undefined) ?? buildUpOf(snapshot, zone);
  const buildUp = snapshot.buildUps.find((one) => one.id === id) ?? snapshot.buildUps[0];
  if (buildUp === undefined) return null;
  return (
    <section className="thickness">
      <h3 className="block-title">{t.thickness.title}</h3>
      <label className="choose">
        <span>{t.thickness.choose}</span>
        <select value={buildUp.id} onChange={(event) => setChosen({ zone, id: event.target.value })}>
          {snapshot.buildUps.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <p className="small">{t.thickness.of(buildUp.zones)}</p>
      <BuildUpRows key={buildUp.id} buildUp={buildUp} />
    </section>
  );
}

function BuildUpRows({ buildUp }: { readonly buildUp: BuildUpView }) {
  const topDown = buildUp.layers.map((layer, index) => ({ layer, index })).reverse();
  const adjustable = topDown.filter(({ layer }) => layer.adjustable);
  return (
    <>
      {adjustable.length === 0 && <p>{t.thickness.none}</p>}
      {adjustable.map(({ layer, index }) => (
        <ThicknessRow key={index} buildUp={buildUp.id} index={index} layer={layer} />
      ))}
      <details className="layer-list">
        <summary>{t.thickness.layers(topDown.length)}</summary>
        <ol>
          {topDown.map(({ layer, index }) => (
            <li key={index}>
              <Swatch fill={partFill(layer.role)} />
              <span>
                {layer.name}, {thicknessOf(layer.thicknessMm)}
                {layer.source !== '' && <span className="small block">{t.thickness.source(layer.source)}</span>}
              </span>
            </li>
          ))}
        </ol>
      </details>
    </>
  );
}
