/** What differs in a file that was held against the scene, group by group; or why it could not be. */

import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import type { Compared } from './use-compare-file.ts';

export function ComparedFile({ compared }: { readonly compared: Compared }) {
  const words = t.variants.file;
  const { file } = compared;
  if (compared.state !== 'told')
    return compared.state === 'working' ? <p role="status">{words.working}</p> : <p role="alert">{words.unreadable(file)}</p>;
  const { answer } = compared;
  if (!answer.ok) return <IssueList issues={answer.issues} />;
  const { comparison, notes } = answer;
  const { groups } = comparison;
  return (
    <div className="compared-file">
      {notes.map((says) => (
        <p key={says} className="small">
          {says}
        </p>
      ))}
      {groups.length === 0 ? <p role="status">{words.same(file)}</p> : <p className="small">{words.differs}</p>}
      {groups.map(({ title, lines }) => (
        <section key={title} className="sheet-part">
          <h3 className="block-title">{title}</h3>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
