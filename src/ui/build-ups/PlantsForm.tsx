/** Vegetation of a build-up, and run-off coefficients that replace the table's. */

import type { CatalogueView } from '../../model/catalogue-view.ts';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import type { SceneBuildUp } from '../../model/scene-file.ts';
import { NumberRow } from '../parts/NumberRow.tsx';
import { t } from '../text/text.ts';
import type { BuildUpEdits } from './use-build-up.ts';

/** Of forms that the table gives no weight for; common practice for thin planting [kN/m²]. */
const LIGHT_PLANTS_KNM2 = 0.1;
const HEAVIEST_KNM2 = 10;

interface Props {
  readonly snapshot: Snapshot;
  readonly buildUp: BuildUpView;
  readonly catalogue: CatalogueView;
  readonly edits: BuildUpEdits;
}

export function PlantsForm({ snapshot, buildUp, catalogue, edits }: Props) {
  const { plants } = t.buildUps;
  const { vegetation, runoff } = snapshot.scene.buildups.find(({ id }) => id === buildUp.id) ?? {};
  const known = catalogue.vegetation.find(({ form }) => form === vegetation?.form);
  const forms = vegetation && !known ? [...catalogue.vegetation, { form: vegetation.form, name: vegetation.form }] : catalogue.vegetation;
  const setForm = (form: string) => {
    const view = catalogue.vegetation.find((one) => one.form === form);
    const kNm2 = Math.round((view?.kNm2 ?? LIGHT_PLANTS_KNM2) * 100) / 100;
    void edits.change({ vegetation: form === '' ? null : { form, kNm2 } });
  };
  const leastMm = snapshot.scene.limits?.substrateMm?.[vegetation?.form ?? ''] ?? known?.leastMm ?? null;
  return (
    <section className="bu-plants" aria-label={plants.title}>
      <h3 className="block-title">{plants.title}</h3>
      <div className="bu-fields">
        <label className="bu-field">
          <span>{plants.form}</span>
          <select value={vegetation?.form ?? ''} onChange={(event) => setForm(event.target.value)}>
            <option value="">{plants.none}</option>
            {forms.map(({ form, name }) => (
              <option key={form} value={form}>
                {name}
              </option>
            ))}
          </select>
        </label>
        {vegetation && (
          <NumberRow
            className="bu-field"
            label={plants.weight}
            value={vegetation.kNm2}
            unit="kN/m²"
            decimals={2}
            min={0}
            max={HEAVIEST_KNM2}
            onCommit={(kNm2) => void edits.change({ vegetation: { ...vegetation, kNm2 } })}
          />
        )}
      </div>
      {vegetation && <p className="small">{leastMm === null ? plants.unknown : plants.least(leastMm)}</p>}
      <RunOff runoff={runoff} edits={edits} />
    </section>
  );
}

function RunOff({ runoff, edits }: { readonly runoff: SceneBuildUp['runoff']; readonly edits: BuildUpEdits }) {
  const { plants } = t.buildUps;
  const set = (key: 'peak' | 'annual', value: number | null) => {
    const { [key]: _, ...others } = runoff ?? {};
    const next = value === null ? others : { ...others, [key]: value };
    void edits.change({ runoff: Object.keys(next).length === 0 ? null : next });
  };
  return (
    <>
      <p>{plants.runoff}</p>
      <div className="bu-fields">
        {(['peak', 'annual'] as const).map((key) => (
          <NumberRow
            key={key}
            className="bu-field"
            label={`${plants.runoff}: ${plants[key]}`}
            shown={plants[key]}
            value={runoff?.[key] ?? null}
            unit=""
            decimals={2}
            min={0}
            max={1}
            onCommit={(value) => set(key, value)}
            onClear={() => set(key, null)}
          />
        ))}
      </div>
      <p className="small">{plants.table}</p>
    </>
  );
}
