/** What a stage waits for: flood test, hold points with who releases them, cautions. */

import { nextId } from '../../edit/next-id.ts';
import { holdPointIds } from '../../edit/stages.ts';
import type { SceneHoldPoint } from '../../model/scene-file.ts';
import { GRAVITY_MS2 } from '../../model/units.ts';
import { Refused } from '../edit/Refused.tsx';
import { NumberRow } from '../parts/NumberRow.tsx';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { DateRow } from './DateRow.tsx';
import type { PageProps } from './StagePage.tsx';
import { TextRow } from './TextRow.tsx';
import { changedAt, type StageEditing, useStageEdit, without } from './use-stage-edit.ts';

const DEEPEST_MM = 2000;

export function HoldsPage({ snapshot, stage }: PageProps) {
  const editing = useStageEdit(stage.id);
  const { issues, change } = editing;
  const words = t.stageEditor.holds;
  const floodMm = stage.floodTestMm ?? 0;
  const holds = stage.holdPoints ?? [];
  const onAdd = () => {
    const id = nextId('H', holdPointIds(snapshot.scene));
    void change('add', 'hold point', id, (now) => ({ holdPoints: [...(now.holdPoints ?? []), { id, says: words.newSays }] }));
  };
  return (
    <>
      <Refused issues={issues} />
      <div className="stage-fields">
        <NumberRow
          className="stage-field"
          label={words.flood}
          value={floodMm}
          unit="mm"
          decimals={0}
          min={0}
          max={DEEPEST_MM}
          onCommit={(floodTestMm) => void change('change', 'stage', stage.name, () => ({ floodTestMm }))}
        />
        <p className="small">{words.floodSays((floodMm * GRAVITY_MS2) / 1000)}</p>
      </div>
      <h3 className="block-title">{words.title}</h3>
      {holds.length === 0 && <p>{words.none}</p>}
      {holds.map((hold, i) => (
        <HoldCard
          key={hold.id}
          hold={hold}
          onChange={(to) =>
            void change('change', 'hold point', hold.id, (now) => ({
              holdPoints: changedAt(now.holdPoints, i, (one) => withoutBlank({ ...one, ...to })),
            }))
          }
          onRemove={() => void change('remove', 'hold point', hold.id, (now) => ({ holdPoints: without(now.holdPoints, i) }))}
        />
      ))}
      <button type="button" className="button" onClick={onAdd}>
        {words.add}
      </button>
      <Cautions name={stage.name} cautions={stage.cautions ?? []} change={change} />
    </>
  );
}

/** What is emptied is not named in the file. */
function withoutBlank(hold: SceneHoldPoint): SceneHoldPoint {
  return Object.fromEntries(Object.entries(hold).filter(([, text]) => text !== '')) as unknown as SceneHoldPoint;
}

interface HoldProps {
  readonly hold: SceneHoldPoint;
  readonly onChange: (to: Partial<SceneHoldPoint>) => void;
  readonly onRemove: () => void;
}

function HoldCard({ hold, onChange, onRemove }: HoldProps) {
  const words = t.stageEditor.holds;
  const { id, says, releasedBy = '', evidence = '', on = '' } = hold;
  return (
    <fieldset className="stage-card">
      <legend>
        {words.hold(id)} <span className="small">{on === '' ? words.open : words.released}</span>
      </legend>
      <div className="stage-fields">
        <TextRow label={words.says} value={says} required lines={2} onCommit={(text) => onChange({ says: text })} />
        <TextRow label={words.by} value={releasedBy} onCommit={(text) => onChange({ releasedBy: text })} />
        <TextRow label={words.evidence} value={evidence} onCommit={(text) => onChange({ evidence: text })} />
        <DateRow label={words.on} value={on} onCommit={(text) => onChange({ on: text })} />
      </div>
      <button type="button" className="button" aria-label={words.remove(id)} onClick={onRemove}>
        {t.stageEditor.list.remove}
      </button>
    </fieldset>
  );
}

interface CautionsProps {
  readonly name: string;
  readonly cautions: readonly string[];
  readonly change: StageEditing['change'];
}

function Cautions({ name, cautions, change }: CautionsProps) {
  const words = t.stageEditor.holds;
  return (
    <>
      <h3 className="block-title">{words.cautions}</h3>
      <ul className="stage-cautions">
        {cautions.map((caution, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: cautions have no id and may read alike
          <li key={i}>
            <TextField
              label={words.caution(i + 1)}
              value={caution}
              required
              onCommit={(text) => void change('change', 'stage', name, (now) => ({ cautions: changedAt(now.cautions, i, () => text) }))}
            />
            <button
              type="button"
              className="button"
              aria-label={words.removeCaution(i + 1)}
              onClick={() => void change('change', 'stage', name, (now) => ({ cautions: without(now.cautions, i) }))}
            >
              {t.stageEditor.list.remove}
            </button>
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="button"
        onClick={() => void change('change', 'stage', name, (now) => ({ cautions: [...(now.cautions ?? []), words.newCaution] }))}
      >
        {words.addCaution}
      </button>
    </>
  );
}
