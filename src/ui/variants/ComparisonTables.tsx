/** What stands against a variant: figures, bays, zones, materials and changes, each as a table, and the way to the map. */

import type { BeforeAfter } from '../../model/scene-change.ts';
import type { SchemeFigures, VariantComparison } from '../../model/variants.ts';
import { loadNumber, mmText, numberText, percentText, unitText } from '../format.ts';
import { Icon } from '../parts/Icon.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useLayout } from '../use-media.ts';
import { useView } from '../use-stores.ts';

interface FigureRow {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  readonly difference: string;
}

/** The top of the comparison, line by line. */
function figureRows(before: SchemeFigures, after: SchemeFigures): FigureRow[] {
  const v = t.variants;
  const counted = (name: string, of: (figures: SchemeFigures) => number): FigureRow => ({
    name,
    before: v.count(of(before)),
    after: v.count(of(after)),
    difference: v.signed(of(after) - of(before), 0),
  });
  const weighed = (name: string, of: (figures: SchemeFigures) => number): FigureRow => ({
    name,
    before: v.kN(of(before)),
    after: v.kN(of(after)),
    difference: v.kNDifference(of(after) - of(before)),
  });
  const price = ({ price: sum }: SchemeFigures) => (sum === null ? v.noPrice : numberText(sum, 0));
  return [
    weighed(v.saturated, ({ saturatedKN }) => saturatedKN),
    weighed(v.dry, ({ dryKN }) => dryKN),
    { name: v.worst, before: v.worstOf(before.worst), after: v.worstOf(after.worst), difference: '' },
    counted(v.over, ({ baysOver }) => baysOver),
    counted(v.notConfirmed, ({ baysNotConfirmed }) => baysNotConfirmed),
    counted(v.stops, ({ stops }) => stops),
    counted(v.checks, ({ checks }) => checks),
    { name: v.held, before: v.lm2(before.heldLm2), after: v.lm2(after.heldLm2), difference: v.signed(after.heldLm2 - before.heldLm2, 1) },
    {
      name: v.price,
      before: price(before),
      after: price(after),
      difference: before.price === null || after.price === null ? '' : v.signed(after.price - before.price, 0),
    },
  ];
}

const told = ({ before, after }: BeforeAfter, text: (value: number) => string) =>
  t.variants.change(before === null ? t.variants.nothing : text(before), after === null ? t.variants.nothing : text(after));

export function ComparisonTables({ comparison, name }: { readonly comparison: VariantComparison; readonly name: string }) {
  const { before, after, report, takeOff, changes } = comparison;
  const map = useView((state) => state.map);
  const showMap = useView((state) => state.showMap);
  const edit = useView((state) => state.edit);
  const phone = useLayout() === 'phone';
  if (changes.length === 0) return <p>{t.variants.same}</p>;
  return (
    <>
      <section className="sheet-part">
        <h2 className="block-title">{t.variants.figures}</h2>
        <button
          type="button"
          className="button"
          aria-pressed={map === 'difference'}
          onClick={() => {
            showMap(map === 'difference' && !phone ? null : 'difference');
            // There the editor covers the model.
            if (phone) edit(null);
          }}
        >
          <Icon name="eye" />
          {t.variants.map}
        </button>
        <table className="numbers">
          <TableHead heads={[t.variants.quantity, t.variants.now, name, t.variants.difference]} />
          <tbody>
            {figureRows(before, after).map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td>{row.before}</td>
                <td>{row.after}</td>
                <td>{row.difference}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <ReportTables report={report} />
      {takeOff.length > 0 && (
        <section className="sheet-part">
          <h2 className="block-title">{t.variants.takeOff}</h2>
          <table className="numbers">
            <TableHead heads={[t.variants.material, t.variants.volume, t.variants.mass]} />
            <tbody>
              {takeOff.map(({ material, name: called, placedM3, massKg }) => (
                <tr key={material}>
                  <th scope="row">{called}</th>
                  <td>{told(placedM3, t.variants.m3)}</td>
                  <td>{told(massKg, t.variants.tonnes)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <section className="sheet-part">
        <h2 className="block-title">{t.variants.changes}</h2>
        <ul className="variant-changes">
          {changes.map((change) => (
            <li key={change}>{change}</li>
          ))}
        </ul>
      </section>
    </>
  );
}

function ReportTables({ report }: Pick<VariantComparison, 'report'>) {
  const go = useGo();
  return (
    <>
      {report.bays.length > 0 && (
        <section className="sheet-part">
          <h2 className="block-title">{t.variants.bays}</h2>
          <table className="numbers">
            <TableHead heads={[t.variants.bay, t.variants.garden, t.variants.stage]} />
            <tbody>
              {report.bays.map(({ id, utilisation, worstStageUtilisation }) => (
                <tr key={id}>
                  <th scope="row">
                    <button type="button" className="row-button" onClick={() => go.toBay(id, null)}>
                      {id}
                    </button>
                  </th>
                  <td>{told(utilisation, percentText)}</td>
                  <td>{told(worstStageUtilisation, percentText)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {report.zones.length > 0 && (
        <section className="sheet-part">
          <h2 className="block-title">{t.variants.zones}</h2>
          <table className="numbers">
            <TableHead heads={[t.variants.zone, t.variants.depth, `${t.variants.load}, ${unitText('kN/m²')}`]} />
            <tbody>
              {report.zones.map(({ id, meanDepthMm, greatestKNm2 }) => (
                <tr key={id}>
                  <th scope="row">
                    <button type="button" className="row-button" onClick={() => go.toZone(id)}>
                      {id}
                    </button>
                  </th>
                  <td>{told(meanDepthMm, mmText)}</td>
                  <td>{told(greatestKNm2, loadNumber)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </>
  );
}
