/** What is wrong with what was typed into a field, said beside it at once. */

import type { ReactNode } from 'react';

export function FieldProblem({ id, children }: { readonly id: string; readonly children: ReactNode }) {
  if (children === null) return null;
  return (
    <span className="field-problem" id={id} role="alert">
      {children}
    </span>
  );
}
