/** Run-off coefficients with their rows, flow in the drainage against what it carries, uplift of light layers. */

import { type ReactNode, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { ReportCoefficient, ReportWater } from '../../model/report-water.ts';
import { listDrains, listUplifts } from '../facts/water-list.ts';
import { type Fact, FactTable } from '../parts/FactTable.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

const AROUND_M = 10;
const FIRST = 8;

interface TableProps<T> {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly T[];
  readonly row: (of: T) => ReactNode;
}

/** A table that begins with its first rows. */
function LongTable<T>({ caption, heads, rows, row }: TableProps<T>) {
  const [all, setAll] = useState(false);
  const shown = all ? rows : rows.slice(0, FIRST);
  return (
    <>
      <table className="numbers water-zones">
        <caption className="unseen">{caption}</caption>
        <TableHead heads={heads} />
        <tbody>{shown.map(row)}</tbody>
      </table>
      {rows.length > shown.length && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          {t.water.more(rows.length - shown.length)}
        </button>
      )}
    </>
  );
}

function ZoneButton({ id }: { readonly id: string }) {
  const go = useGo();
  return (
    <button type="button" className="row-button" aria-label={t.water.zonePick(id)} onClick={() => go.toZone(id)}>
      {id}
    </button>
  );
}

export function RunoffTable({ water }: { readonly water: ReportWater }) {
  const { meanPeakC, meanAnnualC, designLps, yearlyM3 } = water;
  const facts: Fact[] = [
    { name: t.water.meanPeak, value: t.water.coefficient(meanPeakC) },
    { name: t.water.meanAnnual, value: t.water.coefficient(meanAnnualC) },
    ...(designLps === null ? [] : [{ name: t.water.design, value: t.water.lps(designLps) }]),
    { name: t.water.yearly, value: yearlyM3 === null ? t.water.noYearly : t.water.m3(yearlyM3) },
  ];
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.runoff}</h2>
      <p className="small">{t.water.table(water.table)}</p>
      <FactTable facts={facts} />
      <LongTable
        caption={t.water.runoffCaption}
        heads={[t.water.zone, t.water.peak, t.water.annual]}
        rows={water.zones}
        row={({ id, peak, annual }) => (
          <tr key={id}>
            <th scope="row">
              <ZoneButton id={id} />
              <span className="small block">{rowText(peak)}</span>
              {annual.row !== peak.row && <span className="small block">{t.water.yearRow(rowText(annual))}</span>}
            </th>
            <td>{t.water.coefficient(peak.c)}</td>
            <td>{t.water.coefficient(annual.c)}</td>
          </tr>
        )}
      />
    </section>
  );
}

function rowText({ row, source }: ReportCoefficient): string {
  return row === null ? source : t.water.rowOf(row, source);
}

interface DrainProps {
  readonly water: ReportWater;
  readonly names: ReadonlyMap<string, string>;
}

export function DrainTable({ water, names }: DrainProps) {
  const go = useGo();
  const drains = listDrains(water);
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.drains}</h2>
      <p className="small">{drains.length === 0 ? t.water.noDrains : t.water.drainsSay}</p>
      {drains.length > 0 && (
        <LongTable
          caption={t.water.drainsCaption}
          heads={[t.water.zone, t.water.drainFlow, t.water.drainTakes]}
          rows={drains}
          row={({ zone, material, flowLsm, capacityLsm, headMm, secondHeadMm, thicknessMm, at, over }) => (
            <tr key={zone}>
              <th scope="row">
                <button type="button" className="row-button" aria-label={t.water.zonePick(zone)} onClick={() => go.toPoint(at, AROUND_M)}>
                  {zone}
                </button>
                <span className="small block">{names.get(material) ?? material}</span>
                {headMm !== null && <span className="small block">{t.water.head(headMm, secondHeadMm, thicknessMm)}</span>}
                {over && <span className="small block water-wrong">{t.water.drainOver}</span>}
              </th>
              <td>{t.water.lsm(flowLsm)}</td>
              <td>{t.water.lsm(capacityLsm)}</td>
            </tr>
          )}
        />
      )}
    </section>
  );
}

interface UpliftProps {
  readonly water: ReportWater;
  readonly snapshot: Snapshot;
}

export function UpliftTable({ water, snapshot: { stages, materialNames } }: UpliftProps) {
  const go = useGo();
  const uplifts = listUplifts(water);
  const stageText = (id: string | null) => {
    if (id === null) return t.water.garden;
    const index = stages.findIndex((stage) => stage.id === id);
    return t.water.stage(index + 1, stages[index]?.name ?? id);
  };
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.water.uplift}</h2>
      <p className="small">
        {uplifts.length === 0 ? t.water.noUplift : t.water.upliftSays(water.flotation.upFactor, water.flotation.downFactor)}
      </p>
      {uplifts.length > 0 && (
        <LongTable
          caption={t.water.upliftCaption}
          heads={[t.water.zone, t.water.liftHold, t.water.ratio]}
          rows={uplifts}
          row={({ zone, stage, layer, displaces, waterMm, upliftKNm2, holdingKNm2, ratio, ballastKNm2, at }) => (
            <tr key={`${zone} ${stage}`}>
              <th scope="row">
                <button type="button" className="row-button" aria-label={t.water.zonePick(zone)} onClick={() => go.toPoint(at, AROUND_M)}>
                  {zone}
                </button>
                <span className="small block">{stageText(stage)}</span>
                <span className="small block">{t.water.under(materialNames.get(layer) ?? layer, waterMm)}</span>
                <span className="small block">{t.water.model(displaces)}</span>
              </th>
              <td>{t.water.liftHoldText(upliftKNm2, holdingKNm2)}</td>
              <td>
                {t.water.ratioText(ratio)}
                {ballastKNm2 > 0 && <span className="small block water-wrong">{t.water.ballastText(ballastKNm2)}</span>}
              </td>
            </tr>
          )}
        />
      )}
    </section>
  );
}
