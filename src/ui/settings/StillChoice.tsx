/** Whether pictures stand still: moves and glides are left out. */

import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

export function StillChoice() {
  const still = useView((state) => state.stillMotion);
  const setStill = useView((state) => state.setStillMotion);
  return (
    <label className="check">
      <input type="checkbox" checked={still} onChange={(event) => setStill(event.target.checked)} />
      <span>
        {t.help.still}
        <span className="small block">{t.help.stillAdd}</span>
      </span>
    </label>
  );
}
