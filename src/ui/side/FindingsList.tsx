/** What the checks found: stop, check, note; each says what and where, and leads there. */

import { useState } from 'react';
import type { Finding, Severity } from '../../model/finding.ts';
import { IssueList } from '../parts/IssueList.tsx';
import { en as t } from '../text/en.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';

const SEVERITIES: readonly Severity[] = ['stop', 'check', 'note'];
/** More than this at once helps nobody and slows the page. */
const FIRST = 50;
const AROUND_M = 8;

export function FindingsList() {
  const findings = useScene((state) => state.snapshot?.report.findings);
  const warnings = useScene((state) => state.warnings);
  if (findings === undefined) return null;
  return (
    <div className="findings">
      {findings.length === 0 && <p>{t.findings.none}</p>}
      {SEVERITIES.map((severity) => (
        <Group key={severity} severity={severity} findings={findings.filter((one) => one.severity === severity)} />
      ))}
      {warnings.length > 0 && (
        <section>
          <h2 className="block-title">{t.refusal.warnings(warnings.length)}</h2>
          <IssueList issues={warnings} />
        </section>
      )}
    </div>
  );
}

function Group({ severity, findings }: { readonly severity: Severity; readonly findings: readonly Finding[] }) {
  const [all, setAll] = useState(false);
  if (findings.length === 0) return null;
  const shown = all ? findings : findings.slice(0, FIRST);
  return (
    <section className={`finding-group finding-${severity}`}>
      <h2 className="block-title">
        <SeverityMark severity={severity} />
        {t.findings.group(t.findings.severity[severity], findings.length)}
        <span className="small"> {t.findings.meaning[severity]}</span>
      </h2>
      <ul>
        {shown.map((finding, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: findings have no id and their order is that of the report
          <li key={i}>
            <FindingItem finding={finding} />
          </li>
        ))}
      </ul>
      {shown.length < findings.length && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          {t.findings.more(findings.length - shown.length)}
        </button>
      )}
    </section>
  );
}

/** A different shape for each severity, so that colour is not needed to tell them apart. */
function SeverityMark({ severity }: { readonly severity: Severity }) {
  const shapes: Readonly<Record<Severity, string>> = {
    stop: 'M5 1h6l4 4v6l-4 4H5l-4-4V5z',
    check: 'M8 1l7 14H1z',
    note: 'M8 1a7 7 0 1 0 0 14A7 7 0 1 0 8 1z',
  };
  return (
    <svg className="severity-mark" viewBox="0 0 16 16" width="14" height="14" aria-hidden="true" focusable="false">
      <path d={shapes[severity]} />
    </svg>
  );
}

function useWhere({ where }: Finding): string[] {
  const stages = useScene((state) => state.snapshot?.stages);
  const words: string[] = [];
  if (where.bay !== undefined) words.push(t.findings.bay(where.bay));
  if (where.zone !== undefined) words.push(t.findings.zone(where.zone));
  if (where.object !== undefined) words.push(t.findings.object(where.object));
  if (where.stage !== undefined) {
    const index = stages?.findIndex(({ id }) => id === where.stage) ?? -1;
    const name = stages?.[index]?.name ?? '';
    words.push(index < 0 ? t.findings.stage(where.stage) : t.findings.stageNamed(index + 1, name, where.stage));
  }
  if (where.at !== undefined) words.push(t.findings.at(...where.at));
  return words;
}

function FindingItem({ finding }: { readonly finding: Finding }) {
  const go = useGo();
  const stages = useScene((state) => state.snapshot?.stages);
  const showStage = useView((state) => state.showStage);
  const words = useWhere(finding);
  const { where, rule, source, says } = finding;
  const onGo = () => {
    const stage = stages?.findIndex(({ id }) => id === where.stage) ?? -1;
    if (stage >= 0) showStage(stage);
    if (where.bay !== undefined) go.toBay(where.bay, where.at ?? null);
    else if (where.at !== undefined) go.toPoint(where.at, AROUND_M);
    else if (where.zone !== undefined) go.toZone(where.zone);
  };
  return (
    <button type="button" className="finding" onClick={onGo}>
      <span className="finding-says">{says}</span>
      <span className="finding-where">{words.length === 0 ? t.findings.whole : words.join(' · ')}</span>
      <span className="small block">{t.findings.rule(rule, source)}</span>
    </button>
  );
}
