/** The materials of the scene and of the catalogue: chosen from a list, read, copied, changed. */

import { useState } from 'react';
import { materialCopy, putMaterial } from '../../edit/materials.ts';
import type { CatalogueView, MaterialView } from '../../model/catalogue-view.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { Role } from '../../model/roles.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { type Choice, choiceOf, choicesOf, groupChoices } from '../facts/build-up-facts.ts';
import { SearchField } from '../parts/SearchField.tsx';
import { t } from '../text/text.ts';
import { EntrySources } from './EntrySources.tsx';
import { MaterialForm } from './MaterialForm.tsx';
import { MaterialGroups } from './MaterialGroups.tsx';
import { materialLine } from './MaterialPicker.tsx';
import { MaterialUsesLine } from './MaterialUsesLine.tsx';

interface Props {
  readonly snapshot: Snapshot;
  readonly catalogue: CatalogueView;
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
}

export function MaterialPage({ snapshot, catalogue, chosen, onChoose }: Props) {
  const choices = choicesOf(snapshot.scene, catalogue);
  const choice = choiceOf(choices, chosen ?? '') ?? choices[0];
  const entry = catalogue.materials.find(({ material }) => material.id === choice?.material.id);
  if (choice === undefined) return null;
  return (
    <div className="bu-materials">
      <MaterialList choices={choices} chosen={choice.material.id} onChoose={onChoose} />
      {choice.own ? (
        <MaterialForm
          key={choice.material.id}
          snapshot={snapshot}
          material={choice.material}
          entry={entry ?? null}
          onGone={() => onChoose('')}
        />
      ) : (
        entry && <CatalogueEntry key={choice.material.id} snapshot={snapshot} entry={entry} choice={choice} onChoose={onChoose} />
      )}
    </div>
  );
}

interface ListProps {
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

function MaterialList({ choices, chosen, onChoose }: ListProps) {
  const [search, setSearch] = useState('');
  const { materials } = t;
  const groups = groupChoices(choices, search, t.part);
  return (
    <section className="bu-material-list" aria-label={materials.list}>
      <SearchField label={materials.find} value={search} onChange={setSearch} />
      <div className="bu-picker-list">
        {!choices.some(({ own }) => own) && <p className="small">{materials.noOwn}</p>}
        <MaterialGroups groups={groups} chosen={chosen} onChoose={({ material }) => onChoose(material.id)}>
          {({ material, own, source }) => (
            <>
              {material.name}
              {own && source === '' && <span className="bu-no-source">{materials.noSource}</span>}
            </>
          )}
        </MaterialGroups>
      </div>
    </section>
  );
}

interface EntryProps extends Pick<Props, 'snapshot' | 'onChoose'> {
  readonly entry: MaterialView;
  readonly choice: Choice;
}

/** An entry of the catalogue: its values with their sources, to copy before they can be changed. */
function CatalogueEntry({ snapshot, entry, choice: { material }, onChoose }: EntryProps) {
  const { issues, run } = useEdit();
  const { materials } = t;
  const copy = async (beside: boolean) => {
    const own = materialCopy(snapshot.scene, material, beside ? materials.copyName(material.name) : null);
    const done = await run((now) => putMaterial(now, own), { act: 'copy', part: 'material', names: [own.name] });
    if (done) onChoose(own.id);
  };
  return (
    <section className="bu-material" aria-label={material.name}>
      <h3 className="block-title">
        {material.name}
        <span className="small">{t.part(material.role as Role)}</span>
      </h3>
      <p>{materialLine(material)}</p>
      <MaterialUsesLine snapshot={snapshot} id={material.id} />
      <div className="bu-copies">
        <div>
          <button type="button" className="button" onClick={() => void copy(false)}>
            {materials.inPlace}
          </button>
          <p className="small">{materials.inPlaceSays}</p>
        </div>
        <div>
          <button type="button" className="button" onClick={() => void copy(true)}>
            {materials.beside}
          </button>
          <p className="small">{materials.besideSays}</p>
        </div>
      </div>
      <Refused issues={issues} />
      <EntrySources entry={entry} />
    </section>
  );
}
