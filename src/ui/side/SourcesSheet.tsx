/** Where every number of the catalogue and the rules comes from, how far it can be trusted, and what rests on it. */

import { useEffect, useMemo, useState } from 'react';
import type { SourceUse } from '../../model/source.ts';
import { type ListedSource, listSources, usedEntries } from '../facts/source-list.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { ImportHistory } from './ImportHistory.tsx';

export function SourcesSheet() {
  const snapshot = useScene((state) => state.snapshot);
  const ask = useScene((state) => state.sources);
  const [uses, setUses] = useState<readonly SourceUse[] | null>(null);
  const [all, setAll] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another scene uses other numbers
  useEffect(() => {
    let current = true;
    void ask().then((found) => current && setUses(found));
    return () => {
      current = false;
    };
  }, [ask, snapshot]);
  const groups = useMemo(() => listSources(uses ?? [], !all), [uses, all]);
  if (uses === null) return <p>{t.sources.waiting}</p>;
  return (
    <div className="sheet-parts">
      <ImportHistory />
      <p>{t.sources.says}</p>
      <label className="check">
        <input type="checkbox" checked={all} onChange={(event) => setAll(event.target.checked)} />
        <span>{t.sources.all}</span>
      </label>
      {groups.map(({ grade, sources }) => (
        <section key={grade} className="sheet-part">
          <h2 className="block-title">
            {t.sources.grade(grade, sources.length)}
            <span className="small">{t.sources.meaning[grade]}</span>
          </h2>
          <ul className="sources">
            {sources.map((listed) => (
              <SourceItem key={[listed.source.document, listed.source.place, listed.source.url].join('\n')} listed={listed} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function SourceItem({ listed: { source, uses } }: { readonly listed: ListedSource }) {
  const { document, place, url } = source;
  return (
    <li>
      <p>
        {document}
        {place !== undefined && <span className="small block">{place}</span>}
        {url !== undefined && (
          <a className="source-url" href={url} target="_blank" rel="noreferrer">
            {url}
          </a>
        )}
      </p>
      <ul className="small">
        {usedEntries(uses).map(({ kind, name, numbers, usedIn }) => (
          <li key={`${kind} ${name}`}>{t.sources.use(kind, name, numbers, usedIn)}</li>
        ))}
      </ul>
    </li>
  );
}
