/** What becomes of the drawing: a new scene, parts of the open one, or lines under its plan; then it is taken over. */

import { useId } from 'react';
import { DRAWN_PARTS, type DrawnPart, type Taking } from '../../model/drawn-parts.ts';
import type { ReadView } from '../../model/importer.ts';
import type { Issue } from '../../model/issue.ts';
import { IMPORT_TARGETS, type ImportTarget } from '../../store/import-store.ts';
import { hasError, hasPart, takingsOf } from '../facts/import-facts.ts';
import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import { useImports, useScene } from '../use-stores.ts';
import { ImportEntries } from './ImportEntries.tsx';
import { useTake } from './use-take.ts';

interface Props {
  readonly read: ReadView;
  readonly issues: readonly Issue[];
}

const BUTTON = { new: 'toNew', into: 'toInto', underlay: 'toUnderlay' } as const satisfies Record<ImportTarget, string>;

export function ImportTake({ read, issues }: Props) {
  const target = useImports((state) => state.target);
  const draft = useImports((state) => state.draft);
  const reading = useImports((state) => state.share !== null || state.drafting);
  const { take, refused, busy } = useTake(read);
  const isDrawn = target === 'underlay';
  const empty = !isDrawn && draft !== null && Object.keys(draft.counts).length === 0;
  const wrong = hasError(isDrawn ? read.issues : issues);
  const noteId = useId();
  return (
    <section className="import-take">
      <h3 className="block-title">{t.imports.take}</h3>
      <Targets />
      {!isDrawn && <Parts />}
      {!isDrawn && <ImportEntries />}
      {refused.length > 0 && (
        <div role="alert">
          <p>{t.imports.refused}</p>
          <IssueList issues={refused} />
        </div>
      )}
      <div className="import-foot">
        <button
          type="button"
          className="button button-main"
          aria-describedby={noteId}
          disabled={wrong || empty || busy || reading || (!isDrawn && draft === null)}
          onClick={() => void take()}
        >
          {t.imports[BUTTON[target]]}
        </button>
        <p id={noteId} className="small">
          {wrong ? t.imports.withErrors : empty ? t.imports.noParts : t.imports.stays}
        </p>
      </div>
    </section>
  );
}

function Targets() {
  const target = useImports((state) => state.target);
  const setTarget = useImports((state) => state.setTarget);
  const hasScene = useScene((state) => state.snapshot !== null);
  const name = useScene((state) => state.snapshot?.scene.name);
  return (
    <fieldset className="import-question">
      <legend>{t.imports.target}</legend>
      {IMPORT_TARGETS.filter((one) => hasScene || one === 'new').map((one) => (
        <label key={one} className="check">
          <input type="radio" name="import-target" value={one} checked={one === target} onChange={() => setTarget(one)} />
          <span>
            {t.imports.targetName(one)}
            {one === 'into' && <span className="small block">{name}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** Parts with a name, under which something was entered. */
const KEEPS: ReadonlySet<DrawnPart> = new Set(['bays', 'zones', 'edges', 'columns', 'outlets', 'trees']);

/** What is there to be taken, with a choice where the scene has such parts already. */
function Parts() {
  const draft = useImports((state) => state.draft);
  const target = useImports((state) => state.target);
  const chosen = useImports((state) => state.takings);
  const setTaking = useImports((state) => state.setTaking);
  const scene = useScene((state) => state.snapshot?.scene);
  if (draft === null) return null;
  const parts = DRAWN_PARTS.filter((part) => draft.counts[part] !== undefined);
  if (parts.length === 0) return null;
  const takings = takingsOf(draft, chosen);
  const into = target === 'into' ? scene : undefined;
  const replaces = into !== undefined && parts.some((part) => KEEPS.has(part) && takings[part] === 'replace' && hasPart(into, part));
  return (
    <div>
      <h4 className="import-parts-title">{t.imports.parts}</h4>
      <ul className="import-parts">
        {parts.map((part) => {
          const says = t.imports.part(part, draft.counts[part] ?? 0);
          const choices: readonly Taking[] = part === 'outline' ? ['replace', 'leave'] : ['add', 'replace', 'leave'];
          return (
            <li key={part}>
              <span>{says}</span>
              {into !== undefined && hasPart(into, part) && (
                <select
                  aria-label={t.imports.takingOf(says)}
                  value={takings[part]}
                  onChange={({ target: field }) => setTaking(part, field.value as Taking)}
                >
                  {choices.map((taking) => (
                    <option key={taking} value={taking}>
                      {t.imports.taking(taking)}
                    </option>
                  ))}
                </select>
              )}
            </li>
          );
        })}
      </ul>
      {replaces && <p className="small">{t.imports.keeps}</p>}
    </div>
  );
}
