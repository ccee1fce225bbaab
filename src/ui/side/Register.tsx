/** Index tabs of the sheets: an upright register along the edge of the panel, or rows above it on a phone. */

import { type KeyboardEvent, useEffect, useRef } from 'react';
import { tabAfter } from '../parts/tab-keys.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

export const SHEETS = [
  'core',
  'stage',
  'bays',
  'findings',
  'zones',
  'cells',
  'heaps',
  'edges',
  'site',
  'wheels',
  'water',
  'takeoff',
  'probes',
  'sources',
] as const;
export type Sheet = (typeof SHEETS)[number];

/** Upright words take more height than a low window has for more tabs than this; then they lie. */
const MOST_UPRIGHT = 9;

interface Props {
  readonly sheets: readonly Sheet[];
  readonly sheet: Sheet;
  readonly upright: boolean;
  readonly onChoose: (sheet: Sheet) => void;
}

/** Arrow keys, Home and End move between the tabs; only the chosen one is in the tab order. */
export function Register({ sheets, sheet, upright, onChoose }: Props) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const tab = list.current?.querySelector<HTMLElement>(`#tab-${sheet}`);
    if (list.current && tab) bringIntoSight(list.current, tab);
  }, [sheet]);
  const stops = useScene((state) => state.snapshot?.report.findings.filter(({ severity }) => severity === 'stop').length ?? 0);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = tabAfter(event.key, sheets.indexOf(sheet), sheets.length);
    if (to === null) return;
    event.preventDefault();
    const next = sheets[to] as Sheet;
    onChoose(next);
    list.current?.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
  };
  return (
    <div
      ref={list}
      role="tablist"
      className={classOf(upright, sheets.length)}
      aria-label={t.tabs.title}
      aria-orientation={upright ? 'vertical' : 'horizontal'}
      onKeyDown={onKeyDown}
    >
      {sheets.map((one) => (
        <button
          key={one}
          id={`tab-${one}`}
          type="button"
          role="tab"
          aria-selected={one === sheet}
          aria-controls="tab-panel"
          tabIndex={one === sheet ? 0 : -1}
          onClick={() => onChoose(one)}
        >
          {t.tabs[one]}
          {one === 'findings' && stops > 0 && (
            <span className="tab-count" role="img" aria-label={t.tabs.stops(stops)}>
              {stops}
            </span>
          )}
        </button>
      ))}
    </div>
  );
}

function classOf(upright: boolean, count: number): string {
  if (!upright) return 'register register-rows';
  return count > MOST_UPRIGHT ? 'register register-lying' : 'register';
}

/** By its own scroll positions: the browser's way would also move where the Tab key goes on from. */
function bringIntoSight(list: HTMLElement, tab: HTMLElement): void {
  const [outer, inner] = [list.getBoundingClientRect(), tab.getBoundingClientRect()];
  list.scrollLeft += Math.max(0, inner.right - outer.right) + Math.min(0, inner.left - outer.left);
  list.scrollTop += Math.max(0, inner.bottom - outer.bottom) + Math.min(0, inner.top - outer.top);
}
