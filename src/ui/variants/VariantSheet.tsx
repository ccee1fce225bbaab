/** Schemes side by side: kept, taken over, and one held against what stands. */

import { type ChangeEvent, useId, useRef, useState } from 'react';
import { isShown, kept, nextVariantId, renamedVariant, takenOver, withoutVariant } from '../../edit/variants.ts';
import type { SceneVariant } from '../../model/scheme.ts';
import { Refused } from '../edit/Refused.tsx';
import { type Editing, useEdit } from '../edit/use-edit.ts';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { ComparedFile } from './ComparedFile.tsx';
import { ComparisonTables } from './ComparisonTables.tsx';
import { comparedTitle, useCompareFile } from './use-compare-file.ts';

const NONE: readonly SceneVariant[] = [];

export function VariantSheet() {
  const scene = useScene((state) => state.snapshot?.scene);
  const comparison = useScene((state) => state.comparison);
  const compared = useView((state) => state.compared);
  const editing = useEdit();
  if (scene === undefined) return null;
  const variants = scene.variants ?? NONE;
  const chosen = variants.find(({ id }) => id === compared);
  return (
    <div className="variant-sheet sheet-parts">
      <p className="small">{t.variants.says}</p>
      <KeepForm variants={variants} editing={editing} />
      <FileForm />
      <Refused issues={editing.issues} />
      {variants.length === 0 ? (
        <p>{t.variants.none}</p>
      ) : (
        <ul className="variant-list" aria-label={t.variants.list}>
          {variants.map((variant) => (
            <VariantRow key={variant.id} variant={variant} shown={isShown(scene, variant)} editing={editing} />
          ))}
        </ul>
      )}
      {chosen && comparison === null && <p role="status">{t.variants.comparing}</p>}
      {chosen && comparison?.ok === false && <Refused issues={comparison.issues} />}
      {chosen && comparison?.ok && comparison.comparison.variant === chosen.id && (
        <ComparisonTables comparison={comparison.comparison} name={chosen.name} />
      )}
    </div>
  );
}

function KeepForm({ variants, editing }: { readonly variants: readonly SceneVariant[]; readonly editing: Editing }) {
  const proposed = t.variants.proposed(nextVariantId(variants));
  const [name, setName] = useState('');
  const saysId = useId();
  return (
    <form
      className="variant-keep"
      onSubmit={(event) => {
        event.preventDefault();
        const called = name.trim() || proposed;
        setName('');
        void editing.run((scene) => kept(scene, called), { act: 'add', part: 'variant', names: [called] });
      }}
    >
      <input
        type="text"
        className="text-field"
        autoComplete="off"
        aria-label={t.variants.name}
        aria-describedby={saysId}
        value={name}
        onChange={(event) => setName(event.target.value)}
      />
      <button type="submit" className="button button-main">
        {t.variants.keep}
      </button>
      <span id={saysId} className="small variant-says">
        {t.variants.withoutName(proposed)}
      </span>
    </form>
  );
}

/** Another scene file, held against what stands. */
function FileForm() {
  const picker = useRef<HTMLInputElement>(null);
  const { compared, compare } = useCompareFile();
  const pick = ({ currentTarget }: ChangeEvent<HTMLInputElement>) => {
    const [file] = currentTarget.files ?? [];
    currentTarget.value = '';
    if (file) void compare(file);
  };
  return (
    <>
      <p>
        <button type="button" className="button" onClick={() => picker.current?.click()}>
          {t.variants.file.pick}
        </button>
      </p>
      <input ref={picker} type="file" accept=".json" hidden tabIndex={-1} aria-label={t.variants.file.pick} onChange={pick} />
      {compared && (
        <section className="sheet-part" aria-label={comparedTitle(compared)}>
          {compared.state !== 'working' && <h2 className="block-title">{comparedTitle(compared)}</h2>}
          <ComparedFile compared={compared} />
        </section>
      )}
    </>
  );
}

function VariantRow({ variant, shown, editing }: { readonly variant: SceneVariant; readonly shown: boolean; readonly editing: Editing }) {
  const { id, name, says } = variant;
  const compared = useView((state) => state.compared);
  const compare = useView((state) => state.compare);
  const remove = () => {
    if (compared === id) compare(null);
    void editing.run((scene) => withoutVariant(scene, id), { act: 'remove', part: 'variant', names: [name] });
  };
  const rename = (changed: string) =>
    void editing.run((scene) => renamedVariant(scene, id, { name: changed, ...(says === undefined ? {} : { says }) }), {
      act: 'rename',
      part: 'variant',
      names: [changed],
    });
  return (
    <li className="variant-row" data-shown={shown}>
      <span className="variant-id" aria-hidden="true">
        {id}
      </span>
      <TextField label={t.variants.name} value={name} required onCommit={rename} />
      {says !== undefined && <span className="small variant-says">{says}</span>}
      {shown && <span className="variant-shown">{t.variants.shown}</span>}
      <span className="variant-buttons">
        <button
          type="button"
          className="button"
          aria-label={t.variants.compareName(name)}
          aria-pressed={compared === id}
          onClick={() => compare(compared === id ? null : id)}
        >
          {t.variants.compare}
        </button>
        <button
          type="button"
          className="button"
          aria-label={t.variants.takeOverName(name)}
          disabled={shown}
          onClick={() =>
            void editing.run((scene) => takenOver(scene, id, t.variants.before(name)), { act: 'exchange', part: 'variant', names: [name] })
          }
        >
          {t.variants.takeOver}
        </button>
        <button type="button" className="button" aria-label={t.variants.removeName(name)} onClick={remove}>
          {t.variants.remove}
        </button>
      </span>
    </li>
  );
}
