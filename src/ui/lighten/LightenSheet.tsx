/** Asks for lighter zones and shows what would change, what it saves and costs, or which limit stands in the way. */

import { type FormEvent, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import { LIGHTEN_AIMS, type LightenAim, type LightenAnswer } from '../../model/lighten.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { LightenObstacles } from './LightenObstacles.tsx';
import { LightenProposal } from './LightenProposal.tsx';

/** Thinner layers are not worth a course of their own; common practice. */
const LEAST_LAYER_MM = 50;
const MOST_LEAST_MM = 500;

interface Found {
  readonly of: SceneFile;
  readonly answer: LightenAnswer;
}

export function LightenSheet() {
  const snapshot = useScene((state) => state.snapshot);
  const lighten = useScene((state) => state.lighten);
  const editing = useEdit();
  const [aims, setAims] = useState<readonly LightenAim[]>(LIGHTEN_AIMS);
  const [zones, setZones] = useState<readonly string[] | null>(null);
  const [locked, setLocked] = useState<readonly string[]>([]);
  const [leastLayerMm, setLeastLayerMm] = useState(LEAST_LAYER_MM);
  const lightening = useScene((state) => state.lightening);
  const cancel = useScene((state) => state.cancelLighten);
  const [found, setFound] = useState<Found | null>(null);
  if (snapshot === null) return null;
  const { scene } = snapshot;
  if (scene.zones.length === 0)
    return (
      <div className="lighten-sheet sheet-parts">
        <p className="small">{t.lighten.says}</p>
        <p>{t.lighten.nothing}</p>
      </div>
    );
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const answer = await lighten({ aims, locked, leastLayerMm, ...(zones === null ? {} : { zones }) });
    setFound(answer && { of: scene, answer });
  };
  const stale = found !== null && found.of !== scene;
  return (
    <div className="lighten-sheet sheet-parts">
      <p className="small">{t.lighten.says}</p>
      <form className="lighten-form" onSubmit={(event) => void onSubmit(event)}>
        <fieldset>
          <legend>{t.lighten.aim}</legend>
          {LIGHTEN_AIMS.map((aim) => (
            <Tick
              key={aim}
              label={t.lighten.aims[aim]}
              checked={aims.includes(aim)}
              onChange={(on) => setAims(LIGHTEN_AIMS.filter((one) => (one === aim ? on : aims.includes(one))))}
            />
          ))}
        </fieldset>
        <ZoneChoice snapshot={snapshot} zones={zones} locked={locked} onZones={setZones} onLocked={setLocked} />
        <p className="choose">
          <span>{t.lighten.least}</span>
          <NumberField
            label={t.lighten.least}
            value={leastLayerMm}
            unit="mm"
            decimals={0}
            min={10}
            max={MOST_LEAST_MM}
            onCommit={setLeastLayerMm}
          />
        </p>
        <p>
          {lightening === null ? (
            <button key="find" type="submit" className="button button-main" disabled={aims.length === 0}>
              {t.lighten.find}
            </button>
          ) : (
            <button key="cancel" type="button" className="button" onClick={cancel}>
              {t.lighten.cancel}
            </button>
          )}
        </p>
      </form>
      <p role="status">{lightening !== null ? t.lighten.working(lightening) : stale ? t.lighten.stale : ''}</p>
      <Refused issues={editing.issues} />
      {found && !stale && (
        <>
          {found.answer.over.length === 0 && found.answer.variants.length === 0 && <p>{t.lighten.within}</p>}
          {found.answer.variants.map((variant) => (
            <LightenProposal key={variant.aim} variant={variant} editing={editing} />
          ))}
          <LightenObstacles answer={found.answer} />
          <p className="small">{t.lighten.engineer}</p>
        </>
      )}
    </div>
  );
}

interface TickProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (on: boolean) => void;
}

function Tick({ label, checked, onChange }: TickProps) {
  return (
    <label>
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}

interface ZoneChoiceProps {
  readonly snapshot: Snapshot;
  readonly zones: readonly string[] | null;
  readonly locked: readonly string[];
  readonly onZones: (zones: readonly string[] | null) => void;
  readonly onLocked: (locked: readonly string[]) => void;
}

function ZoneChoice({ snapshot, zones, locked, onZones, onLocked }: ZoneChoiceProps) {
  const all = snapshot.scene.zones;
  const toggled = (list: readonly string[], id: string, on: boolean) => (on ? [...list, id] : list.filter((one) => one !== id));
  const called = ({ id, name }: (typeof all)[number]) => (name === undefined ? id : `${id} · ${name}`);
  return (
    <>
      <fieldset>
        <legend>{t.lighten.zones}</legend>
        {[false, true].map((chosen) => (
          <label key={String(chosen)}>
            <input type="radio" name="lighten-zones" checked={(zones !== null) === chosen} onChange={() => onZones(chosen ? [] : null)} />
            {chosen ? t.lighten.zonesChosen : t.lighten.zonesOver}
          </label>
        ))}
      </fieldset>
      {zones !== null && (
        <fieldset className="lighten-zones" aria-label={t.lighten.zonesChosen}>
          {all.map((zone) => (
            <Tick
              key={zone.id}
              label={called(zone)}
              checked={zones.includes(zone.id)}
              onChange={(on) => onZones(toggled(zones, zone.id, on))}
            />
          ))}
        </fieldset>
      )}
      <details>
        <summary>{t.lighten.locked}</summary>
        <fieldset className="lighten-zones" aria-label={t.lighten.locked}>
          {all.map((zone) => (
            <Tick
              key={zone.id}
              label={called(zone)}
              checked={locked.includes(zone.id)}
              onChange={(on) => onLocked(toggled(locked, zone.id, on))}
            />
          ))}
        </fieldset>
      </details>
    </>
  );
}
