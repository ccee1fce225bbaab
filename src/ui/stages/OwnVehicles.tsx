/** Machines of the scene's own, as a data sheet gives them: width and axles with their wheels. */

import { addVehicle, changeVehicle, nextVehicleId, removeVehicle, type SceneAxle } from '../../edit/vehicles.ts';
import type { SceneFile, SceneVehicle } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { Metres } from './HeapFields.tsx';
import { TextRow } from './TextRow.tsx';
import { changedAt, without } from './use-stage-edit.ts';

/** A start to be typed over: two axles of a small machine. */
const START_AXLES: readonly SceneAxle[] = [0, 1.5].map((atM) => ({ atM, loadKN: 10, wheels: 2, trackM: 1, contactM: [0.15, 0.25] }));
const START_WIDTH_M = 1.2;

export function OwnVehicles({ scene }: { readonly scene: SceneFile }) {
  const { issues, run } = useEdit();
  const words = t.stageEditor.plant;
  const own = scene.vehicles ?? [];
  const onAdd = () => {
    const vehicle = { id: nextVehicleId(scene), name: words.newName(own.length + 1), widthM: START_WIDTH_M, axles: START_AXLES };
    void run((now) => addVehicle(now, vehicle), { act: 'add', part: 'vehicle', names: [vehicle.name] });
  };
  return (
    <section className="stage-own">
      <h3 className="block-title">{words.own}</h3>
      {own.length === 0 && <p>{words.ownNone}</p>}
      <Refused issues={issues} />
      {own.map((vehicle) => (
        <VehicleCard
          key={vehicle.id}
          vehicle={vehicle}
          onChange={(to) =>
            void run((now) => changeVehicle(now, vehicle.id, to), { act: 'change', part: 'vehicle', names: [to(vehicle).name] })
          }
          onRemove={() => void run((now) => removeVehicle(now, vehicle.id), { act: 'remove', part: 'vehicle', names: [vehicle.name] })}
        />
      ))}
      <button type="button" className="button" onClick={onAdd}>
        {words.ownAdd}
      </button>
    </section>
  );
}

interface CardProps {
  readonly vehicle: SceneVehicle;
  readonly onChange: (to: (vehicle: SceneVehicle) => SceneVehicle) => void;
  readonly onRemove: () => void;
}

function VehicleCard({ vehicle, onChange, onRemove }: CardProps) {
  const words = t.stageEditor.plant;
  const { axles } = vehicle;
  const last = axles.at(-1);
  const onAddAxle = () => last && onChange((now) => ({ ...now, axles: [...now.axles, { ...last, atM: last.atM + 1 }] }));
  return (
    <fieldset className="stage-card">
      <legend>{words.ownTitle(vehicle.name)}</legend>
      <div className="stage-fields">
        <TextRow label={words.name} value={vehicle.name} required onCommit={(name) => onChange((now) => ({ ...now, name }))} />
        <TextRow label={words.source} value={vehicle.source ?? ''} onCommit={(source) => onChange((now) => withSource(now, source))} />
        <Metres
          label={words.widthM}
          value={vehicle.widthM}
          range={[0.1, 10]}
          onCommit={(widthM) => onChange((now) => ({ ...now, widthM }))}
        />
      </div>
      <div className="wide-table">
        <table className="numbers axle-table">
          <caption className="unseen">{words.axleCaption}</caption>
          <TableHead
            heads={[words.axleHead, words.atM, words.loadKN, words.wheels, words.trackM, words.along, words.across, words.removeHead]}
          />
          <tbody>
            {axles.map((axle, i) => (
              <AxleRow
                // biome-ignore lint/suspicious/noArrayIndexKey: axles have no id
                key={i}
                number={i + 1}
                axle={axle}
                onChange={(to) => onChange((now) => ({ ...now, axles: changedAt(now.axles, i, to) }))}
                onRemove={axles.length > 1 ? () => onChange((now) => ({ ...now, axles: without(now.axles, i) })) : null}
              />
            ))}
          </tbody>
        </table>
      </div>
      <p className="small">{words.tracked}</p>
      <div className="stage-tools">
        <button type="button" className="button" onClick={onAddAxle}>
          {words.addAxle}
        </button>
        <button type="button" className="button" aria-label={words.ownRemove(vehicle.name)} onClick={onRemove}>
          {t.stageEditor.list.remove}
        </button>
      </div>
    </fieldset>
  );
}

function withSource({ source: _, ...vehicle }: SceneVehicle, source: string): SceneVehicle {
  return source === '' ? vehicle : { ...vehicle, source };
}

interface AxleProps {
  readonly number: number;
  readonly axle: SceneAxle;
  readonly onChange: (to: (axle: SceneAxle) => SceneAxle) => void;
  /** Null for the only one. */
  readonly onRemove: (() => void) | null;
}

/** Unit, decimals and range of each number of an axle. */
const FIELDS = {
  atM: { unit: 'm', decimals: 2, min: 0, max: 50 },
  loadKN: { unit: 'kN', decimals: 1, min: 0.01, max: 5000 },
  wheels: { unit: '', decimals: 0, min: 1, max: 16 },
  trackM: { unit: 'm', decimals: 2, min: 0, max: 10 },
  contactM: { unit: 'm', decimals: 2, min: 0.01, max: 10 },
} as const;

function AxleRow({ number, axle, onChange, onRemove }: AxleProps) {
  const words = t.stageEditor.plant;
  const { contactM } = axle;
  const label = (name: string) => words.ofAxle(number, name);
  return (
    <tr>
      <th scope="row">{words.axle(number)}</th>
      {(['atM', 'loadKN', 'wheels', 'trackM'] as const).map((key) => (
        <td key={key}>
          <NumberField
            label={label(words[key])}
            value={axle[key]}
            {...FIELDS[key]}
            onCommit={(value) => onChange((now) => ({ ...now, [key]: value }))}
          />
        </td>
      ))}
      {([0, 1] as const).map((i) => (
        <td key={i}>
          <NumberField
            label={label(i === 0 ? words.along : words.across)}
            value={contactM[i]}
            {...FIELDS.contactM}
            onCommit={(sizeM) => onChange((now) => ({ ...now, contactM: i === 0 ? [sizeM, now.contactM[1]] : [now.contactM[0], sizeM] }))}
          />
        </td>
      ))}
      <td>
        {onRemove && (
          <button type="button" className="icon-button" aria-label={words.removeAxle(number)} onClick={onRemove}>
            <Icon name="close" />
          </button>
        )}
      </td>
    </tr>
  );
}
