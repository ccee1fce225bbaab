/** What each column of a table is, chosen above its first rows. */

import type { Question, TablePreview } from '../../model/drawing.ts';
import { columnRoles, namesPlaces, withColumnRole } from '../facts/import-facts.ts';
import { COLUMN_ROLES } from '../text/en-import.ts';
import { t } from '../text/text.ts';
import { useImports } from '../use-stores.ts';

interface Props {
  readonly table: TablePreview;
  readonly question: Question;
}

export function ColumnPicker({ table, question }: Props) {
  const answer = useImports((state) => state.answer);
  const chosen = useImports((state) => state.answers.columns) ?? question.taken;
  const roles = columnRoles(chosen, table.columns.length);
  return (
    <section>
      <h3 className="block-title">{t.imports.table}</h3>
      <p className="small">{t.imports.tableSays}</p>
      <div className="import-table">
        <table>
          <thead>
            <tr>
              {roles.map((role, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                <th key={i} scope="col">
                  <span className="block">{table.columns[i] ?? ''}</span>
                  <select
                    aria-label={t.imports.column(table.columns[i] ?? `${i + 1}`)}
                    value={role}
                    onChange={({ target }) => answer('columns', withColumnRole(roles, i, target.value as (typeof roles)[number]))}
                  >
                    {COLUMN_ROLES.map((one) => (
                      <option key={one} value={one} disabled={!namesPlaces(withColumnRole(roles, i, one))}>
                        {t.imports.columnRole(one)}
                      </option>
                    ))}
                  </select>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row) => (
              <tr key={row.join('\t')}>
                {roles.map((_, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
                  <td key={i}>{row[i] ?? ''}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
