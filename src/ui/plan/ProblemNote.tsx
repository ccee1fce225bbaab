/** Why something was not done, or what to know of what was done, beside the drawing, with a way to the place. */

import { Icon } from '../parts/Icon.tsx';
import { IssueList } from '../parts/IssueList.tsx';
import { t } from '../text/text.ts';
import { usePlan } from './plan-context.ts';

export function ProblemNote() {
  const problem = usePlan((state) => state.problem);
  const tell = usePlan((state) => state.tell);
  const lookAt = usePlan((state) => state.lookAt);
  return (
    <div className="pe-problem-room" role="alert">
      {problem && (
        <div className="pe-problem" data-note={problem.note === true}>
          <div>
            {!problem.note && <strong>{t.draw.problem.title}</strong>}
            {problem.says && <p>{problem.says}</p>}
            {problem.issues.length > 0 && <IssueList issues={problem.issues} />}
          </div>
          {problem.at && (
            <button type="button" className="button" onClick={() => lookAt(problem.at ?? 'all')}>
              {t.draw.problem.show}
            </button>
          )}
          <button type="button" className="icon-button" aria-label={t.draw.problem.close} onClick={() => tell(null)}>
            <Icon name="close" />
          </button>
        </div>
      )}
    </div>
  );
}
