/** Big buttons to walk with a finger: they go as long as they are held. */

import { type Drive, STANDING } from '../../store/walk.ts';
import { Icon, type IconName } from '../parts/Icon.tsx';
import { walk as t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

const BUTTONS: readonly { readonly name: Exclude<keyof typeof t.pad, 'title'>; readonly icon: IconName; readonly drive: Partial<Drive> }[] =
  [
    { name: 'ahead', icon: 'up', drive: { ahead: 1 } },
    { name: 'left', icon: 'previous', drive: { turn: -1 } },
    { name: 'back', icon: 'down', drive: { ahead: -1 } },
    { name: 'right', icon: 'next', drive: { turn: 1 } },
  ];

export function WalkPad() {
  const setWalk = useView((state) => state.setWalk);
  const stop = () => setWalk({ drive: STANDING });
  return (
    <fieldset className="walk-pad" aria-label={t.pad.title}>
      {BUTTONS.map(({ name, icon, drive }) => (
        <button
          key={name}
          type="button"
          className={`walk-pad-${name}`}
          aria-label={t.pad[name]}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            setWalk({ drive: { ...STANDING, ...drive } });
          }}
          onPointerUp={stop}
          onPointerCancel={stop}
          onContextMenu={(event) => event.preventDefault()}
        >
          <Icon name={icon} />
        </button>
      ))}
    </fieldset>
  );
}
