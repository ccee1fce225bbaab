/** The check page: the drawing beside what was asked, read and changed, and below it what is taken over. */

import { useState } from 'react';
import type { ReadView } from '../../model/importer.ts';
import { sortQuestions } from '../facts/import-facts.ts';
import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import { useImports } from '../use-stores.ts';
import { ColumnPicker } from './ColumnPicker.tsx';
import { ImportLayers } from './ImportLayers.tsx';
import { ImportPictures } from './ImportPictures.tsx';
import { ImportQuestion } from './ImportQuestion.tsx';
import { ImportTake } from './ImportTake.tsx';

export function ImportCheck({ read }: { readonly read: ReadView }) {
  const { kind, box, points, questions, mends, table } = read;
  const draft = useImports((state) => state.draft);
  const [marked, setMarked] = useState<string | null>(null);
  const { open, settled, columns, openCount } = sortQuestions(questions);
  const issues = [...read.issues, ...(draft?.issues ?? [])];
  return (
    <div className="import-check">
      <div className="import-side">
        <p className="import-facts">
          {[kind && t.imports.kind(kind), t.imports.points(points)].filter(Boolean).join(', ')}
          {box && <span className="small block">{t.imports.corner(box.minX, box.minY)}</span>}
        </p>
        <ImportPictures read={read} marked={marked} />
        <IssueList issues={issues} />
      </div>
      <div className="import-steps">
        {open.length > 0 && (
          <section>
            <h3 className="block-title">{t.imports.questions(openCount)}</h3>
            <p className="small">{t.imports.questionsSay}</p>
            {open.map((question) => (
              <ImportQuestion key={question.id} question={question} />
            ))}
          </section>
        )}
        {table !== undefined && columns !== null && <ColumnPicker table={table} question={columns} />}
        {read.layers.length > 0 && <ImportLayers layers={read.layers} onMark={setMarked} />}
        {settled.length > 0 && (
          <details className="import-settled">
            <summary>{t.imports.settled(settled.length)}</summary>
            {settled.map((question) => (
              <ImportQuestion key={question.id} question={question} />
            ))}
          </details>
        )}
        <section>
          <h3 className="block-title">{t.imports.mends}</h3>
          {mends.length === 0 ? (
            <p>{t.imports.noMends}</p>
          ) : (
            <ul className="import-mends">
              {mends.map(({ code, layer, says }) => (
                <li key={`${code} ${layer} ${says}`}>{layer === undefined ? says : t.imports.onLayer(layer, says)}</li>
              ))}
            </ul>
          )}
        </section>
        <ImportTake read={read} issues={issues} />
      </div>
    </div>
  );
}
