/** What a stage brings: materials laid, stockpiles, flood test, hold points, cautions; in one line and in full. */

import type { ReactNode } from 'react';
import type { StageView } from '../../model/maps.ts';
import { stageSite } from '../facts/site-list.ts';
import { gardenWorst, stageWorst } from '../facts/stage-worst.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Icon } from '../parts/Icon.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { worstText } from './StageBands.tsx';

function useStage(): { readonly stage: StageView | null; readonly index: number; readonly count: number } {
  const at = useView((state) => state.stage);
  const stages = useScene((state) => state.snapshot?.stages);
  return { stage: at === null ? null : (stages?.[at] ?? null), index: at ?? -1, count: stages?.length ?? 0 };
}

const isOpen = (hold: StageView['holdPoints'][number]) => hold.on === '';

/** The line under the rod. */
export function StageLine() {
  const { stage, index } = useStage();
  const report = useScene((state) => state.snapshot?.report);
  if (stage === null) {
    const garden = report ? gardenWorst(report) : null;
    return (
      <p className="stage-line">
        <strong>{t.stage.finished}.</strong> {garden && `${worstText(garden)} · `}
        {t.stage.gardenSays}
      </p>
    );
  }
  const worst = report ? stageWorst(report, stage.id) : null;
  const open = stage.holdPoints.filter(isOpen).length;
  const parts = [
    ...(worst ? [worstText(worst)] : []),
    ...(stage.stockpiles.length > 0 ? [t.stage.stockpileCount(stage.stockpiles.length)] : []),
    ...(stage.floodTestMm > 0 ? [t.stage.flood(stage.floodTestMm)] : []),
    ...(open > 0 ? [t.stage.openCount(open)] : []),
    ...(stage.cautions.length > 0 ? [t.stage.cautionCount(stage.cautions.length)] : []),
    stage.lays.length === 0 ? t.stage.nothing : stage.lays.map((lay) => t.stage.laysLine(lay.name, lay.areaM2)).join(', '),
  ];
  return (
    <p className="stage-line">
      <strong>{t.legend.stage(index + 1, stage.name)}.</strong> {parts.join(' · ')}
    </p>
  );
}

export function StageSheet({ onClose }: { readonly onClose: (() => void) | null }) {
  const { stage, index, count } = useStage();
  const report = useScene((state) => state.snapshot?.report);
  const worst = report ? (stage === null ? gardenWorst(report) : stageWorst(report, stage.id)) : null;
  return (
    <section className="stage-sheet sheet" aria-label={t.stage.sheetOpen}>
      <header>
        <h2 className="panel-title">{stage === null ? t.stage.finished : `${t.stage.number(index + 1, count)}: ${stage.name}`}</h2>
        {onClose && (
          <button type="button" className="icon-button" aria-label={t.stage.sheetClose} onClick={onClose}>
            <Icon name="close" />
          </button>
        )}
      </header>
      {worst && <p>{worstText(worst)}.</p>}
      {stage === null ? <p>{t.stage.gardenSays}</p> : <StageFacts stage={stage} />}
    </section>
  );
}

function StageFacts({ stage }: { readonly stage: StageView }) {
  const placedKN = useScene((state) => state.snapshot?.report.stages.find(({ id }) => id === stage.id)?.placedKN);
  const { lays, objects, stockpiles, floodTestMm, holdPoints, cautions } = stage;
  return (
    <div className="stage-facts">
      <Block title={t.stage.lays}>
        {placedKN !== undefined && placedKN > 0 && <p>{t.stage.weight(placedKN)}</p>}
        {lays.length === 0 && objects.length === 0 && <p>{t.stage.nothing}</p>}
        <ul>
          {lays.map((lay) => (
            <li key={`${lay.materialId} ${lay.role}`} className="stage-lay">
              <Swatch fill={partFill(lay.role)} />
              <span>
                {lay.name}
                <span className="small block">
                  {t.stage.laysFull(lay.areaM2, lay.volumeM3)} · {lay.zones.join(', ')}
                </span>
              </span>
            </li>
          ))}
        </ul>
        {objects.length > 0 && (
          <p>
            {t.stage.objects}: {objects.join(', ')}
          </p>
        )}
      </Block>
      {holdPoints.length > 0 && (
        <Block title={t.stage.holds}>
          <ul>
            {holdPoints.map((hold) => (
              <HoldPoint key={hold.id} hold={hold} />
            ))}
          </ul>
        </Block>
      )}
      {(stockpiles.length > 0 || floodTestMm > 0) && (
        <Block title={stockpiles.length > 0 ? t.stage.stockpiles : t.stage.floodTitle}>
          <ul>
            {stockpiles.map(({ id, material, heightM }) => (
              <li key={id}>{t.stage.stockpile(id, material, heightM)}</li>
            ))}
            {floodTestMm > 0 && <li>{t.stage.flood(floodTestMm)}</li>}
          </ul>
        </Block>
      )}
      {!stage.derived && <StageSiteBlock id={stage.id} />}
      {cautions.length > 0 && (
        <Block title={t.stage.cautions}>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Block>
      )}
      {stage.derived && <p className="small">{t.stage.derived}</p>}
    </div>
  );
}

/** Machines on their ways, access points, reach, and what counts as an open edge. */
function StageSiteBlock({ id }: { readonly id: string }) {
  const snapshot = useScene((state) => state.snapshot);
  if (snapshot === null) return null;
  const { plant, access, reach } = stageSite(snapshot, id);
  return (
    <Block title={t.site.block}>
      <p>{plant.length === 0 ? t.site.noPlant : t.site.plant(plant)}</p>
      {access.length > 0 && (
        <ul>
          {access.map((point) => (
            <li key={point.id}>{t.site.accessPoint(point)}</li>
          ))}
        </ul>
      )}
      {reach && <p>{t.site.reached(reach.areaM2, reach.unreachedM2)}</p>}
      <p className="small">{t.site.edges}</p>
    </Block>
  );
}

function Block({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="stage-block">
      <h3 className="block-title">{title}</h3>
      {children}
    </section>
  );
}

function HoldPoint({ hold }: { readonly hold: StageView['holdPoints'][number] }) {
  return (
    <li className="hold" data-open={isOpen(hold)}>
      {t.stage.hold(hold.id, hold.says)}
      <span className="block">{isOpen(hold) ? t.stage.open(hold.releasedBy) : t.stage.released(hold.releasedBy, hold.on)}</span>
      {hold.evidence !== '' && <span className="small block">{t.stage.evidence(hold.evidence)}</span>}
    </li>
  );
}
