/** Bays that the chosen vehicle enters: what stands in each at once against the imposed load, and whether the vehicle may. */

import type { ReportTraffic } from '../../model/report.ts';
import { judge } from '../facts/utilisation.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

export function RunBays({ traffic }: { readonly traffic: ReportTraffic | undefined }) {
  const bays = traffic?.bays ?? [];
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.wheels.bays}</h2>
      {bays.length === 0 ? (
        <p>{t.wheels.noBays}</p>
      ) : (
        <table className="numbers run-bays">
          <caption className="unseen">{t.wheels.bayCaption}</caption>
          <TableHead heads={[t.wheels.bay, t.wheels.standing, t.wheels.ofImposed, t.wheels.permitted]} />
          <tbody>
            {bays.map((bay) => (
              <BayLine key={bay.bay} bay={bay} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function BayLine({ bay }: { readonly bay: ReportTraffic['bays'][number] }) {
  const go = useGo();
  const over = bay.utilisation !== null && judge(bay.utilisation) === 'over';
  return (
    <tr className="bay-row" onClick={() => go.toBay(bay.bay, bay.at)}>
      <th scope="row">
        <button type="button" className="row-button" aria-label={t.bays.pick(bay.bay)}>
          {bay.bay}
        </button>
      </th>
      <td>{t.wheels.standingText(bay.standingKN)}</td>
      <td data-over={over}>
        {t.wheels.imposed(bay.kNm2, bay.permittedKNm2)}
        {over && <span className="small block">{t.judgement('over')}</span>}
      </td>
      <td data-over={bay.vehiclePermitted === false}>{t.wheels.permittedText(bay.vehiclePermitted)}</td>
    </tr>
  );
}
