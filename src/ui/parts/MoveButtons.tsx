/** Two buttons that move a row of a list one place up or down; at the end of the list they stay, so that the focus does. */

import { Icon } from './Icon.tsx';

const WAYS = ['up', 'down'] as const;
export type Way = (typeof WAYS)[number];

interface Props {
  readonly labels: Readonly<Record<Way, string>>;
  /** Whether the row is the first or the last as the list is shown. */
  readonly first: boolean;
  readonly last: boolean;
  /** Arrows alone; the labels are their names. */
  readonly short?: boolean;
  readonly onMove: (way: Way) => void;
}

export function MoveButtons({ labels, first, last, short = false, onMove }: Props) {
  return WAYS.map((way) => {
    const ends = way === 'up' ? first : last;
    const named = short ? { 'aria-label': labels[way], title: labels[way] } : {};
    return (
      <button
        key={way}
        type="button"
        className={short ? 'icon-button' : 'button'}
        aria-disabled={ends}
        onClick={() => !ends && onMove(way)}
        {...named}
      >
        <Icon name={way} />
        {!short && labels[way]}
      </button>
    );
  });
}
