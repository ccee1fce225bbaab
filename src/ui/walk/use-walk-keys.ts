/** Keys of the walkthrough, those of a clicker among them. A focused picture keeps its arrows; a slider its own. */

import { useEffect } from 'react';
import { type Drive, STANDING } from '../../store/walk.ts';
import { useStores } from '../use-stores.ts';
import type { WalkViews } from './use-walk-views.ts';

const DRIVES: Readonly<Record<string, Partial<Drive>>> = {
  w: { ahead: 1 },
  s: { ahead: -1 },
  a: { aside: -1 },
  d: { aside: 1 },
  arrowup: { ahead: 1 },
  arrowdown: { ahead: -1 },
  arrowleft: { turn: -1 },
  arrowright: { turn: 1 },
};
const STEPS: Readonly<Record<string, number>> = { PageDown: 1, ArrowRight: 1, ArrowDown: 1, PageUp: -1, ArrowLeft: -1, ArrowUp: -1 };

function driveOf(held: ReadonlySet<string>): Drive {
  const sum = { ...STANDING };
  for (const key of held) {
    const { ahead = 0, aside = 0, turn = 0 } = DRIVES[key] ?? {};
    sum.ahead += ahead;
    sum.aside += aside;
    sum.turn += turn;
  }
  return sum;
}

const isSlider = (target: EventTarget | null): boolean => target instanceof HTMLInputElement && target.type === 'range';

export function useWalkKeys(views: WalkViews, leave: () => void): void {
  const { view } = useStores();
  useEffect(() => {
    const held = new Set<string>();
    const drive = () => view.getState().setWalk({ drive: driveOf(held) });
    const down = (event: KeyboardEvent) => {
      const { walk, setWalk } = view.getState();
      if (walk === null || event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return;
      const key = event.key.toLowerCase();
      if (event.key === 'Escape') {
        if (walk.onFoot) views.go(walk.at);
        else if (walk.lifted) setWalk({ lifted: false });
        else leave();
      } else if (walk.onFoot && DRIVES[key] !== undefined && !isSlider(event.target)) {
        held.add(key);
        drive();
      } else if (/^[1-9]$/.test(event.key)) views.go(Number(event.key) - 1);
      else if (STEPS[event.key] !== undefined && !(isSlider(event.target) && event.key.startsWith('Arrow')))
        views.step(STEPS[event.key] as number);
      else return;
      event.preventDefault();
    };
    const up = (event: KeyboardEvent) => {
      if (held.delete(event.key.toLowerCase())) drive();
    };
    const stop = () => {
      if (held.size > 0) {
        held.clear();
        drive();
      }
    };
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    window.addEventListener('blur', stop);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
      window.removeEventListener('blur', stop);
    };
  }, [view, views, leave]);
}
