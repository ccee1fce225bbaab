/** What the build-up comes to as it is now: loads, depth, water, the worst bay beneath, findings. Follows every edit. */

import { useMemo } from 'react';
import type { BuildUpView, Snapshot } from '../../model/engine.ts';
import { type BuildUpFinding, findingsUnder, worstBay, zoneLoads } from '../facts/build-up-facts.ts';
import { judge } from '../facts/utilisation.ts';
import { loadText, mmText } from '../format.ts';
import { FactTable } from '../parts/FactTable.tsx';
import { Follows } from '../parts/Follows.tsx';
import { UtilisationBar } from '../parts/UtilisationBar.tsx';
import { SeverityMark } from '../side/FindingsList.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

/** More of them hide what they stand beside. */
const MOST_FINDINGS = 6;

interface Props {
  readonly snapshot: Snapshot;
  readonly buildUp: BuildUpView;
}

export function BuildUpLive({ snapshot, buildUp }: Props) {
  const { live } = t.buildUps;
  const { sum, zones } = buildUp;
  const loads = useMemo(() => zoneLoads(snapshot.report, zones), [snapshot.report, zones]);
  const findings = useMemo(() => findingsUnder(snapshot.report.findings, buildUp), [snapshot.report, buildUp]);
  const facts = [
    { name: live.depth, value: mmText(sum.depthMm) },
    { name: live.dry, value: loadText(sum.dryKNm2) },
    { name: live.saturated, value: loadText(sum.saturatedKNm2) },
    { name: live.held, value: live.heldText(sum.heldLm2) },
  ];
  return (
    <section className="bu-live" aria-label={live.title}>
      {buildUp.layers.some(({ rangeMm }) => rangeMm !== null) && <p className="small">{live.nominal}</p>}
      <FactTable facts={facts} />
      <Follows what="tables" />
      {loads !== null && <FactTable facts={[{ name: live.inZones, value: live.zoneLoads(...loads) }]} />}
      {zones.length === 0 ? <p>{live.noZone}</p> : <WorstBay snapshot={snapshot} buildUp={buildUp} />}
      {zones.length > 0 && <Findings findings={findings} />}
    </section>
  );
}

/** The same in one line, for narrow pages, where the rest stands below the column; readers get it there. */
export function BuildUpBrief({ snapshot, buildUp }: Props) {
  const verdict = useMemo(() => worstBay(snapshot, buildUp), [snapshot, buildUp]);
  const utilisation = verdict?.governing.utilisation ?? null;
  return (
    <p className="bu-brief" aria-hidden="true" data-judgement={utilisation === null ? 'none' : judge(utilisation)}>
      {t.buildUps.live.brief(buildUp.sum)}
      {verdict !== null && utilisation !== null && <strong> · {t.buildUps.live.briefBay(verdict.id, utilisation)}</strong>}
      {verdict !== null && <Follows what="tables" />}
    </p>
  );
}

function WorstBay({ snapshot, buildUp }: Props) {
  const verdict = useMemo(() => worstBay(snapshot, buildUp), [snapshot, buildUp]);
  const go = useGo();
  const { live } = t.buildUps;
  if (verdict === null) return <p>{live.noBay}</p>;
  const { id, governing, status, confirmed } = verdict;
  const { utilisation, kind, stage } = governing;
  const number = snapshot.stages.findIndex((one) => one.id === stage);
  const of = number < 0 ? t.bays.governing(kind) : t.bays.stage(number + 1, snapshot.stages[number]?.name ?? '');
  return (
    <div className="bu-bay" data-judgement={utilisation === null ? 'none' : judge(utilisation)}>
      <button type="button" className="row-button" onClick={() => go.toBay(id, governing.at)}>
        {live.bay(id)}
      </button>
      <p className="bu-bay-use">
        <strong>{utilisation === null ? '–' : live.bayUse(utilisation)}</strong>
        <UtilisationBar utilisation={utilisation} confirmed={confirmed} />
      </p>
      <p className="small">
        {t.bays.status(status)} · {of}
      </p>
    </div>
  );
}

function Findings({ findings }: { readonly findings: readonly BuildUpFinding[] }) {
  const { live } = t.buildUps;
  const count = findings.reduce((sum, one) => sum + one.count, 0);
  const left = findings.length - MOST_FINDINGS;
  return (
    <div className="bu-findings">
      <h3 className="block-title">{live.findings(count)}</h3>
      {count > 0 && <p className="small">{live.findingsSay}</p>}
      <ul>
        {findings.slice(0, MOST_FINDINGS).map(({ finding, count: times }) => (
          <li key={`${finding.severity} ${finding.rule} ${finding.where.zone === undefined}`} className={`finding-${finding.severity}`}>
            <details>
              <summary>
                <SeverityMark severity={finding.severity} />
                <span className="unseen">{t.findings.severity[finding.severity]}: </span>
                {t.findings.rule(finding.rule, times)}
              </summary>
              <p className="small">{finding.says}</p>
            </details>
          </li>
        ))}
      </ul>
      {left > 0 && <p className="small">{live.more(left)}</p>}
    </div>
  );
}
