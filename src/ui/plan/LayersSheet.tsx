/** What of the plan is shown and what is locked, and the picture below it. */

import { PLAN_LAYERS } from '../../store/plan-draw.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { usePlan } from './plan-context.ts';
import { UnderlayFields } from './UnderlayFields.tsx';
import { UnderlayLinesFields } from './UnderlayLinesFields.tsx';

/** Neither can be chosen, so neither can be locked. */
const NEVER_LOCKED: ReadonlySet<string> = new Set(['map', 'grid']);

export function LayersSheet() {
  const hidden = usePlan((state) => state.hidden);
  const locked = usePlan((state) => state.locked);
  const toggleLayer = usePlan((state) => state.toggleLayer);
  return (
    <>
      <h3 className="block-title">{t.draw.layers.title}</h3>
      <p className="small">{t.draw.layers.how}</p>
      <ul className="pe-layers">
        {PLAN_LAYERS.map((layer) => {
          const name = t.draw.layerNames[layer];
          const isHidden = hidden.has(layer);
          const isLocked = locked.has(layer);
          return (
            <li key={layer} data-hidden={isHidden}>
              <button
                type="button"
                className="icon-button"
                aria-pressed={!isHidden}
                aria-label={t.draw.layers.show(name)}
                title={t.draw.layers.show(name)}
                onClick={() => toggleLayer('hidden', layer)}
              >
                <Icon name={isHidden ? 'hidden' : 'eye'} />
              </button>
              {!NEVER_LOCKED.has(layer) && (
                <button
                  type="button"
                  className="icon-button"
                  aria-pressed={isLocked}
                  aria-label={t.draw.layers.lock(name)}
                  title={t.draw.layers.lock(name)}
                  onClick={() => toggleLayer('locked', layer)}
                >
                  <Icon name={isLocked ? 'lock' : 'unlocked'} />
                </button>
              )}
              <span>{name}</span>
            </li>
          );
        })}
      </ul>
      <p className="small">{t.draw.layers.mapHow}</p>
      <UnderlayFields />
      <UnderlayLinesFields />
    </>
  );
}
