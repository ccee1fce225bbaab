/** A number that tells on tap how it comes about; on paper it is only the number. */

import { createContext, type ReactNode, useContext } from 'react';
import type { DerivationAsk } from '../../model/derivation.ts';

interface Derivations {
  readonly ask: (ask: DerivationAsk) => void;
  /** What a tap does, in the language around. */
  readonly title: string;
}

/** Who shows derivations of the numbers below. */
export const DerivationsContext = createContext<Derivations>({ ask: () => undefined, title: '' });

interface Props {
  readonly ask: DerivationAsk;
  readonly children: ReactNode;
}

export function Derived({ ask, children }: Props) {
  const derivations = useContext(DerivationsContext);
  return (
    <button
      type="button"
      className="derived"
      data-ask={ask.kind}
      title={derivations.title}
      onClick={(event) => {
        // A tap on the row around it leads to a place.
        event.stopPropagation();
        derivations.ask(ask);
      }}
    >
      {children}
    </button>
  );
}
