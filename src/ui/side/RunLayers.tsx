/** Every layer under one wheel against what it bears: here, and at its worst on the whole line. */

import { useMemo } from 'react';
import type { ReportTraffic } from '../../model/report.ts';
import type { PoseGround, RunPose, RunView } from '../../model/run.ts';
import { type LayerRow, layerRows, mostUsedWheel, wheelName } from '../facts/run-facts.ts';
import { judge } from '../facts/utilisation.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { Derived } from '../sheets/Derived.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

interface Props {
  readonly run: RunView;
  readonly traffic: ReportTraffic | undefined;
}

export function RunLayers({ run, traffic }: Props) {
  const pose = useScene((state) => state.poses.find((one) => one.run === run.id));
  const chosen = useView((state) => state.wheel);
  if (pose === undefined) return <p>{t.legend.waiting}</p>;
  const most = mostUsedWheel(pose);
  const wheel = pose.wheels[chosen ?? most];
  return (
    <section className="sheet-part">
      {pose.on === 'wheels' && <WheelChoice pose={pose} most={most} />}
      {wheel === undefined || !wheel.onLine || wheel.grounds.length === 0 ? (
        <p>{t.wheels.noWheel}</p>
      ) : (
        <>
          {wheel.grounds.map((ground) => (
            <GroundTable key={`${ground.zone} ${ground.beside}`} ground={ground} traffic={traffic} />
          ))}
          <p className="small">{t.wheels.kPa}</p>
          <FootDetails grounds={wheel.grounds} traffic={traffic} />
        </>
      )}
    </section>
  );
}

const nameOf = (pose: RunPose, wheel: number) => t.wheels.wheelName(wheelName(pose, wheel));

function WheelChoice({ pose, most }: { readonly pose: RunPose; readonly most: number }) {
  const wheel = useView((state) => state.wheel);
  const chooseWheel = useView((state) => state.chooseWheel);
  return (
    <label className="choose">
      <span>{t.wheels.wheel}</span>
      <select value={wheel ?? ''} onChange={(event) => chooseWheel(event.target.value === '' ? null : Number(event.target.value))}>
        <option value="">{most < 0 ? t.wheels.noWheel : t.wheels.mostUsed(nameOf(pose, most))}</option>
        {pose.wheels.map((one, w) => (
          <option key={`${one.axle} ${one.leftM}`} value={w}>
            {nameOf(pose, w)}
          </option>
        ))}
      </select>
    </label>
  );
}

interface GroundProps {
  readonly ground: PoseGround;
  readonly traffic: ReportTraffic | undefined;
}

function GroundTable({ ground, traffic }: GroundProps) {
  const rows = useMemo(() => layerRows(ground, traffic), [ground, traffic]);
  const where = ground.beside ? t.wheels.besideZone(ground.zone) : t.wheels.onZone(ground.zone);
  return (
    <table className="numbers run-layers">
      <caption>
        <span className="unseen">{t.wheels.layerCaption(where)}</span>
        <span aria-hidden="true">{where}</span>
      </caption>
      <TableHead heads={[t.wheels.layer, t.wheels.here, t.wheels.route, t.wheels.bears]} />
      <tbody>
        {rows.map((row) => (
          <LayerLine key={`${row.materialId} ${row.nth}`} row={row} run={traffic?.id} zone={ground.zone} />
        ))}
      </tbody>
    </table>
  );
}

const rowName = ({ isMembrane, top }: LayerRow) => (isMembrane ? t.wheels.membraneName : top.name);

interface LineProps {
  readonly row: LayerRow;
  readonly run: string | undefined;
  readonly zone: string | null;
}

function LayerLine({ row, run, zone }: LineProps) {
  const { materialId, nth, top, kPa, share, route } = row;
  const foot = useView((state) => state.foot);
  const chooseFoot = useView((state) => state.chooseFoot);
  const shown = foot.materialId === materialId && (row.isMembrane || foot.nth === nth);
  const over = (value: number | null | undefined) => value != null && judge(value) === 'over';
  return (
    <tr className="bay-row" data-picked={shown} onClick={() => chooseFoot({ materialId, nth })}>
      <th scope="row">
        <button type="button" className="row-button" aria-pressed={shown} aria-label={t.wheels.showFoot(rowName(row))}>
          {rowName(row)}
        </button>
        <span className="small block">{t.wheels.depth(top.depthM * 1000)}</span>
      </th>
      <td data-over={over(share)}>
        {t.wheels.pressure(kPa)}
        {share !== null && <span className="small block">{over(share) ? t.wheels.overShare(share) : t.wheels.usedShare(share)}</span>}
      </td>
      <td data-over={over(route?.share)}>
        {route?.stand && run !== undefined && zone !== null ? (
          <Derived ask={{ kind: 'wheel', run, zone, layer: materialId, stand: route.stand, kPa: route.kPa }}>
            {t.wheels.pressure(route.kPa)}
          </Derived>
        ) : (
          t.wheels.pressure(route?.kPa ?? null)
        )}
        {route?.share != null && (
          <span className="small block">{over(route.share) ? t.wheels.overShare(route.share) : t.wheels.usedShare(route.share)}</span>
        )}
      </td>
      <td>{row.isMembrane ? '–' : top.permittedKPa === null ? t.wheels.noBearing : t.wheels.pressure(top.permittedKPa)}</td>
    </tr>
  );
}

interface FootProps {
  readonly grounds: readonly PoseGround[];
  readonly traffic: ReportTraffic | undefined;
}

/** How the pressure on the chosen layer comes about. */
function FootDetails({ grounds, traffic }: FootProps) {
  const foot = useView((state) => state.foot);
  const rows = useMemo(() => grounds.flatMap((ground) => layerRows(ground, traffic)), [grounds, traffic]);
  const row = rows.find(({ materialId, nth, isMembrane }) => materialId === foot.materialId && (isMembrane || nth === foot.nth));
  if (row === undefined) return <p className="small">{t.wheels.notUnder}</p>;
  const { ring, spreadM, wheelsKPa, governs, aboveKPa, elasticKPa, permittedKPa } = row.top;
  const side = (a: number, b: number) => 1000 * Math.hypot((ring[b] ?? 0) - (ring[a] ?? 0), (ring[b + 1] ?? 0) - (ring[a + 1] ?? 0));
  const lines: readonly (readonly [string, string])[] = [
    [t.wheels.patch, t.wheels.patchSize(side(0, 2), side(2, 4), 1000 * spreadM)],
    [t.wheels.wheelsAlone, t.wheels.governs(wheelsKPa, governs)],
    [t.wheels.above, t.wheels.aboveText(aboveKPa)],
    [t.wheels.elastic, t.wheels.elasticText(elasticKPa, elasticKPa + aboveKPa, permittedKPa)],
  ];
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.wheels.footTitle(rowName(row))}</h2>
      <dl className="run-foot">
        {lines.map(([name, says]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
