/** Issues of a file in the one wording of an issue: why it did not open, or what to know though it did. */

import { type Issue, issueLine } from '../../model/issue.ts';

export function IssueList({ issues }: { readonly issues: readonly Issue[] }) {
  return (
    <ol className="issues">
      {issues.map((issue, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a list that never changes; two issues may read alike
        <li key={i} className={`issue issue-${issue.level}`}>
          {issueLine(issue)}
        </li>
      ))}
    </ol>
  );
}
