/** Why an edit was refused, told where it was made; nothing where it was done. */

import type { Issue } from '../../model/issue.ts';
import { IssueList } from '../parts/IssueList.tsx';

export function Refused({ issues }: { readonly issues: readonly Issue[] }) {
  return <div role="alert">{issues.length > 0 && <IssueList issues={issues} />}</div>;
}
