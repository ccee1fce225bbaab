/** Issues of a file in the one wording of an issue: why it did not open, or what to know though it did. */

import { type Issue, issueLineIn } from '../../model/issue.ts';
import { useView } from '../use-stores.ts';

export function IssueList({ issues }: { readonly issues: readonly Issue[] }) {
  const language = useView((state) => state.language);
  return (
    <ol className="issues">
      {issues.map((issue, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a list that never changes; two issues may read alike
        <li key={i} className={`issue issue-${issue.level}`}>
          {issueLineIn(issue, language)}
        </li>
      ))}
    </ol>
  );
}
