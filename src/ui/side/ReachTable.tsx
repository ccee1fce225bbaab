/** Reach per stage: how much has to be brought, and how much of it can't be reached; a row shows the map of that stage. */

import { numberText } from '../format.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

export function ReachTable() {
  const reach = useScene((state) => state.snapshot?.report.reach);
  const stages = useScene((state) => state.snapshot?.stages);
  const showStage = useView((state) => state.showStage);
  const showMap = useView((state) => state.showMap);
  if (reach === undefined || stages === undefined || reach.length === 0) return null;
  const show = (index: number) => {
    showStage(index);
    showMap('reach');
  };
  return (
    <section className="sheet-part">
      <h2 className="block-title">{t.site.reachTitle}</h2>
      <p className="small">{t.site.reachSays}</p>
      <table className="numbers edges">
        <caption className="unseen">{t.site.reachCaption}</caption>
        <TableHead heads={[t.site.reachStage, t.site.reachArea, t.site.reachMissing]} />
        <tbody>
          {reach.map(({ stage, areaM2, unreachedM2 }) => {
            const index = stages.findIndex(({ id }) => id === stage);
            const name = stages[index]?.name ?? stage;
            return (
              <tr key={stage} className="bay-row" data-missing={unreachedM2 > 0} onClick={() => show(index)}>
                <th scope="row">
                  <button type="button" className="row-button" aria-label={t.site.reachPick(index + 1, name)}>
                    {stage}
                  </button>
                  <span className="small block">{name}</span>
                </th>
                <td>{numberText(areaM2, 1)}</td>
                <td className="edge-missing">{unreachedM2 > 0 ? numberText(unreachedM2, 1) : t.site.reachAll}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
