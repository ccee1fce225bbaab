/** A value between its two buttons, less and more. */

import type { ReactNode } from 'react';
import { t } from '../text/text.ts';
import { Icon } from './Icon.tsx';

interface Props {
  /** What the value is. */
  readonly label: string;
  /** Null where there is no less. */
  readonly onLess: (() => void) | null;
  readonly onMore: (() => void) | null;
  /** More above, less below. */
  readonly upright?: boolean;
  /** Between the buttons. */
  readonly children?: ReactNode;
}

export function Stepper({ label, onLess, onMore, upright = false, children }: Props) {
  const less = (
    <button type="button" className="icon-button" aria-label={t.number.less(label)} disabled={onLess === null} onClick={() => onLess?.()}>
      <Icon name="minus" />
    </button>
  );
  const more = (
    <button type="button" className="icon-button" aria-label={t.number.more(label)} disabled={onMore === null} onClick={() => onMore?.()}>
      <Icon name="plus" />
    </button>
  );
  return (
    <>
      {upright ? more : less}
      {children}
      {upright ? less : more}
    </>
  );
}
