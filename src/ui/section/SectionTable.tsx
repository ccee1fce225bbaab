/** The section as a table: stretches along the line, each with its layers from the top, thickness and area. */

import type { SectionDrawing } from '../../model/section-drawing.ts';
import { type SectionStretch, sectionStretches } from '../facts/section-line.ts';
import { numberText, thicknessText } from '../format.ts';
import { t } from '../text/text.ts';

export function SectionTable({ drawing }: { readonly drawing: SectionDrawing }) {
  const stretches = sectionStretches(drawing);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className="section-room section-table" tabIndex={0} aria-label={t.section.table}>
      {stretches.length === 0 ? (
        <p className="section-note">{t.section.empty}</p>
      ) : (
        <table className="data">
          <caption className="unseen">{t.section.caption}</caption>
          <thead>
            <tr>
              <th scope="col">{t.section.layer}</th>
              <th scope="col">{t.section.thickness}</th>
              <th scope="col">{t.section.area}</th>
            </tr>
          </thead>
          {stretches.map((stretch) => (
            <Stretch key={stretch.number} of={stretch} />
          ))}
        </table>
      )}
      {drawing.edges.length > 0 && (
        <>
          <h3 className="block-title">{t.section.upstands}</h3>
          <ul>
            {drawing.edges.map(({ id, kind, alongM, membraneTopM }) => (
              <li key={`${id} ${alongM}`}>
                {t.section.edge(kind, id)} {t.section.edgeAt(alongM, membraneTopM)}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Stretch({ of: { number, name, fromM, toM, finishedM, membraneM, rows } }: { readonly of: SectionStretch }) {
  const sum = rows.reduce((all, row) => all + row.areaM2, 0);
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3}>
          {t.section.stretch(number, name)}
          <span className="small block">
            {t.section.span(fromM, toM)}
            {finishedM !== null && membraneM !== null && `; ${t.section.levels(finishedM, membraneM)}`}
          </span>
        </th>
      </tr>
      {rows.map(({ name: layer, thicknessMm, areaM2 }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: layers of one material follow each other
        <tr key={i}>
          <th scope="row">{layer}</th>
          <td>{thicknessMm === null ? t.section.notThere : thicknessText(thicknessMm)}</td>
          <td>{numberText(areaM2, 3)}</td>
        </tr>
      ))}
      <tr className="section-sum">
        <th scope="row">{t.section.whole}</th>
        <td>{finishedM === null || membraneM === null ? '' : thicknessText((finishedM - membraneM) * 1000)}</td>
        <td>{numberText(sum, 3)}</td>
      </tr>
    </tbody>
  );
}
