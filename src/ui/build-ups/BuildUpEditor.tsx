/** Build-ups and materials, changed: two pages that share the catalogue. */

import './build-ups.css';
import './materials.css';
import { useState } from 'react';
import { useCatalogue } from '../stages/use-catalogue.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { BuildUpPage } from './BuildUpPage.tsx';
import { MaterialPage } from './MaterialPage.tsx';

export function BuildUpEditor() {
  const snapshot = useScene((state) => state.snapshot);
  const catalogue = useCatalogue();
  const [page, setPage] = useState<'buildUps' | 'materials'>('buildUps');
  const [material, setMaterial] = useState<string | null>(null);
  if (snapshot === null) return null;
  const { pages, waiting } = t.buildUps;
  return (
    <div className="bu-editor">
      <fieldset className="segments">
        <legend className="unseen">{pages.label}</legend>
        {(['buildUps', 'materials'] as const).map((one) => (
          <label key={one} className="segment">
            <input type="radio" name="build-up-page" checked={one === page} onChange={() => setPage(one)} />
            <span>{pages[one]}</span>
          </label>
        ))}
      </fieldset>
      {catalogue === null ? (
        <p>{waiting}</p>
      ) : page === 'buildUps' ? (
        <BuildUpPage
          snapshot={snapshot}
          catalogue={catalogue}
          onMaterial={(id) => {
            setMaterial(id);
            setPage('materials');
          }}
        />
      ) : (
        <MaterialPage snapshot={snapshot} catalogue={catalogue} chosen={material} onChoose={setMaterial} />
      )}
    </div>
  );
}
