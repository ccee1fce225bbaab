/** What the checks found: stop, check, note; each says what and where, and leads there. */

import { useMemo, useState } from 'react';
import type { Finding, Rule, Severity } from '../../model/finding.ts';
import { type FindingGroup, groupByRule } from '../facts/finding-groups.ts';
import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene, useView } from '../use-stores.ts';

const SEVERITIES: readonly Severity[] = ['stop', 'check', 'note'];
/** Of one rule; more at once hides the other rules. */
const FIRST = 3;
/** More than this at once slows the page. */
const STEP = 50;
const AROUND_M = 8;
/** Rules that lighter build-ups may mend. */
const LIGHTER_HELPS: ReadonlySet<Rule> = new Set<Rule>(['load.permanent', 'load.total', 'load.stage']);

export function FindingsList() {
  const findings = useScene((state) => state.snapshot?.report.findings);
  const warnings = useScene((state) => state.warnings);
  const notes = useScene((state) => state.notes);
  if (findings === undefined) return null;
  return (
    <div className="findings">
      {findings.length === 0 && <p>{t.findings.none}</p>}
      {SEVERITIES.map((severity) => (
        <Group key={severity} severity={severity} findings={findings} />
      ))}
      {warnings.length + notes.length > 0 && (
        <section>
          <h2 className="block-title">{t.refusal.warnings(warnings.length + notes.length)}</h2>
          {notes.map((says) => (
            <p key={says}>{says}</p>
          ))}
          <IssueList issues={warnings} />
        </section>
      )}
    </div>
  );
}

function Group({ severity, findings }: { readonly severity: Severity; readonly findings: readonly Finding[] }) {
  const groups = useMemo(() => groupByRule(findings, severity), [findings, severity]);
  if (groups.length === 0) return null;
  const count = groups.reduce((sum, group) => sum + group.findings.length, 0);
  return (
    <section className={`finding-group finding-${severity}`}>
      <h2 className="block-title">
        <SeverityMark severity={severity} />
        {t.findings.group(t.findings.severity[severity], count)}
        <span className="small"> {t.findings.meaning[severity]}</span>
      </h2>
      {groups.map((group) => (
        <RuleGroup key={group.rule} group={group} />
      ))}
    </section>
  );
}

function RuleGroup({ group: { rule, findings } }: { readonly group: FindingGroup }) {
  const [shown, setShown] = useState(FIRST);
  const left = findings.length - shown;
  const edit = useView((state) => state.edit);
  return (
    <section className="finding-rule">
      <h3>{t.findings.rule(rule, findings.length)}</h3>
      <ul>
        {findings.slice(0, shown).map((finding, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: findings have no id and their order is that of the report
          <li key={i}>
            <FindingItem finding={finding} />
          </li>
        ))}
      </ul>
      {left > 0 && (
        <button type="button" className="button" onClick={() => setShown(shown + STEP)}>
          {t.findings.more(Math.min(left, STEP))}
        </button>
      )}
      {LIGHTER_HELPS.has(rule) && (
        <button type="button" className="button" onClick={() => edit('lighten')}>
          {t.lighten.open}
        </button>
      )}
    </section>
  );
}

/** A different shape for each severity, so that colour is not needed to tell them apart. */
export function SeverityMark({ severity }: { readonly severity: Severity }) {
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

export function FindingItem({ finding }: { readonly finding: Finding }) {
  const go = useGo();
  const stages = useScene((state) => state.snapshot?.stages);
  const showStage = useView((state) => state.showStage);
  const words = useWhere(finding);
  const { where, rule, source, says } = finding;
  const onGo = () => {
    const stage = stages?.findIndex(({ id }) => id === where.stage) ?? -1;
    // What is shown then is what the finding speaks of: its stage, or the finished garden.
    showStage(stage < 0 ? null : stage);
    if (where.bay !== undefined) go.toBay(where.bay, where.at ?? null);
    else if (where.at !== undefined) go.toPoint(where.at, AROUND_M);
    else if (where.zone !== undefined) go.toZone(where.zone);
    else if (where.object !== undefined) go.toObject(where.object);
  };
  return (
    <button type="button" className="finding" onClick={onGo}>
      <span className="finding-says">{says}</span>
      <span className="finding-where">{words.length === 0 ? t.findings.whole : words.join(' · ')}</span>
      <span className="small block">{t.findings.source(rule, source)}</span>
    </button>
  );
}
