/** A number that tells on tap how it comes about; on paper it is only the number. */

import type { ReactNode } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';
import type { SheetContext } from './sheet-context.ts';

interface Props {
  readonly ask: DerivationAsk;
  readonly on: Pick<SheetContext, 'derive'>;
  readonly children: ReactNode;
}

export function Derived({ ask, on, children }: Props) {
  return (
    <button type="button" className="derived" data-ask={ask.kind} onClick={() => on.derive(ask)}>
      {children}
    </button>
  );
}
