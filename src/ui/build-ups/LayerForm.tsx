/** The chosen layer: its place, thickness, make-up range, way up, fill and material. */

import { type ReactNode, useState } from 'react';
import {
  insertLayer,
  removeLayer,
  setInfill,
  setMakeUp,
  setThicknessOf,
  startRange,
  swapMaterial,
  turnLayer,
} from '../../edit/build-ups-layers.ts';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import type { Role } from '../../model/roles.ts';
import { type Choice, choiceOf } from '../facts/build-up-facts.ts';
import { ThicknessField } from '../log/ThicknessField.tsx';
import { useThickness } from '../log/use-thickness.ts';
import { partFill } from '../parts/Hatches.tsx';
import { MoveButtons } from '../parts/MoveButtons.tsx';
import { NumberRow } from '../parts/NumberRow.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { THICKEST_MM } from './MakeUpLane.tsx';
import { MaterialPicker } from './MaterialPicker.tsx';
import type { BuildUpEdits } from './use-build-up.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly buildUp: BuildUpView;
  readonly index: number;
  readonly choices: readonly Choice[];
  readonly edits: BuildUpEdits;
  readonly onMaterial: (id: string) => void;
}

type Asked = 'swap' | 'above' | 'below' | null;

export function LayerForm({ buildUp, index, choices, edits, onMaterial }: Props) {
  const [asked, setAsked] = useState<Asked>(null);
  const [refused, setRefused] = useState('');
  const layer = buildUp.layers[index];
  if (layer === undefined) return null;
  const choice = choiceOf(choices, layer.materialId);
  const words = t.buildUps.layer;
  const take = async ({ material }: Choice) => {
    setRefused('');
    if (asked === 'above' || asked === 'below') {
      await edits.layers((given) => insertLayer(given, index, asked, material).layers, 'add', material.name);
    } else if (buildUp.layers[index + 1]?.infill && !layer.infill && !((material.voidLm2 ?? 0) > 0)) {
      setRefused(words.voids);
      return;
    } else {
      await edits.layers((given) => swapMaterial(given, index, choice?.material, material) ?? given, 'exchange', material.name);
    }
    setAsked(null);
  };
  return (
    <section className="bu-layer" aria-label={layer.name}>
      <h3 className="block-title">
        <Swatch fill={partFill(layer.role)} />
        {words.title(layer.name)}
        <span className="small">{t.part(layer.role as Role)}</span>
      </h3>
      <Tools {...{ buildUp, index, edits, asked }} onAsk={(what) => setAsked(what === asked ? null : what)} />
      {asked !== null && (
        <MaterialPicker choices={choices} first={layer.role as Role} onChoose={(one) => void take(one)} onClose={() => setAsked(null)} />
      )}
      <p role="alert" className="bu-refused">
        {refused}
      </p>
      {layer.adjustable ? <LayerThickness {...{ buildUp, index, edits }} /> : <p>{words.fixed(layer.thicknessMm)}</p>}
      <LayerSwitches {...{ buildUp, index, edits, choices }} />
      <p className="small">
        {layer.density !== null && words.density(layer.density.dry, layer.density.saturated)}
        {layer.areal !== null && words.areal(layer.areal.dry, layer.areal.saturated)}
        {' · '}
        {choice?.source === '' ? t.buildUps.picker.noSource : (choice?.source ?? layer.source)}
      </p>
      <button type="button" className="button" onClick={() => onMaterial(layer.materialId)}>
        {words.edit}
      </button>
    </section>
  );
}

interface ToolsProps extends Pick<Props, 'buildUp' | 'index' | 'edits'> {
  readonly asked: Asked;
  readonly onAsk: (asked: Asked) => void;
}

function Tools({ buildUp, index, edits, asked, onAsk }: ToolsProps) {
  const words = t.buildUps.layer;
  const { layers } = buildUp;
  const only = layers.length === 1;
  const withFill = layers[index + 1]?.infill && !layers[index]?.infill ? 2 : 1;
  const remove = () => void edits.layers((given) => removeLayer(given, index), 'remove', words.names(layers[index]?.name ?? '', withFill));
  const asking = (what: Asked, label: string): ReactNode => (
    <button type="button" className="button" aria-expanded={asked === what} onClick={() => onAsk(what)}>
      {label}
    </button>
  );
  return (
    <div className="bu-tools">
      <MoveButtons labels={words} first={index === layers.length - 1} last={index === 0} onMove={(way) => edits.step(index, way)} />
      {asking('above', words.above)}
      {asking('below', words.below)}
      {asking('swap', words.swap)}
      <button type="button" className="button" disabled={only} title={only ? words.onlyOne : undefined} onClick={remove}>
        {words.remove}
      </button>
    </div>
  );
}

type PartProps = Pick<Props, 'buildUp' | 'index' | 'edits'>;

/** Thickness, or the three of a make-up layer. */
function LayerThickness({ buildUp, index, edits }: PartProps) {
  const layer = buildUp.layers[index] as BuildUpView['layers'][number];
  const thickness = useThickness({ buildUp: buildUp.id, index, layer });
  const words = t.buildUps.layer;
  const { rangeMm } = layer;
  const range = rangeMm && { ...rangeMm, nominal: layer.thicknessMm };
  const setRange = (change: Partial<NonNullable<typeof rangeMm>>) =>
    range && void edits.layers((given) => setThicknessOf(given, index, { ...range, ...change }), 'change', layer.name);
  const row = { className: 'bu-field', unit: 'mm', decimals: 0 };
  return (
    <div className="bu-thickness">
      <div className="bu-field">
        <span>{range === null ? words.thickness : words.nominal}</span>
        <ThicknessField label={t.thickness.field(layer.name)} thickness={thickness} />
      </div>
      {range !== null && (
        <>
          <NumberRow {...row} label={words.least} value={range.min} min={0} max={range.nominal} onCommit={(min) => setRange({ min })} />
          <NumberRow
            {...row}
            label={words.greatest}
            value={range.max}
            min={range.nominal}
            max={THICKEST_MM}
            onCommit={(max) => setRange({ max })}
          />
        </>
      )}
    </div>
  );
}

/** What a layer may be besides: make-up layer, one way up or the other, fill of the element below. */
function LayerSwitches({ buildUp, index, edits, choices }: PartProps & Pick<Props, 'choices'>) {
  const words = t.buildUps.layer;
  const layer = buildUp.layers[index] as BuildUpView['layers'][number];
  const below = buildUp.layers[index - 1];
  const voidLm2 = below && !below.infill ? (choiceOf(choices, below.materialId)?.material.voidLm2 ?? 0) : 0;
  const holds = (choiceOf(choices, layer.materialId)?.material.retentionLm2 ?? 0) > 0;
  const other = buildUp.layers.find(({ rangeMm }, i) => rangeMm !== null && i !== index);
  const makeUp = (on: boolean) =>
    edits.layers((given) => setMakeUp(given, index, on ? startRange(layer.thicknessMm) : null), 'change', layer.name);
  return (
    <>
      {layer.adjustable && !layer.infill && (
        <label className="check">
          <input type="checkbox" checked={layer.rangeMm !== null} onChange={(event) => void makeUp(event.target.checked)} />
          <span>{other ? words.makeUpOther(other.name) : words.makeUp}</span>
        </label>
      )}
      {layer.adjustable && below !== undefined && voidLm2 > 0 && (
        <label className="check">
          <input
            type="checkbox"
            checked={layer.infill}
            onChange={(event) => void edits.layers((given) => setInfill(given, index, event.target.checked, voidLm2), 'change', layer.name)}
          />
          <span>{words.infill(below.name)}</span>
        </label>
      )}
      {holds && (
        <fieldset className="segments bu-way">
          <legend>{words.orientation}</legend>
          {(['retention', 'drained'] as const).map((way) => (
            <label key={way} className="segment">
              <input
                type="radio"
                name={`way-${buildUp.id}-${index}`}
                checked={layer.orientation === way}
                onChange={() => void edits.layers((given) => turnLayer(given, index, way), 'change', layer.name)}
              />
              <span>{words[way]}</span>
            </label>
          ))}
        </fieldset>
      )}
    </>
  );
}
