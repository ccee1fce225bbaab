/** Legend of what is drawn: of the map, or without one of the layers and parts. Folds away where room is short. */

import { useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { en as t } from '../text/en.ts';
import { type Layout, useMedia } from '../use-media.ts';
import { useView } from '../use-stores.ts';
import { MapLegend } from './MapLegend.tsx';
import { RoleLegend } from './RoleLegend.tsx';

export function Legend({ layout }: { readonly layout: Layout }) {
  const map = useView((state) => state.map);
  const [chosen, setChosen] = useState<boolean | null>(null);
  // With targets for fingers the list of layers is as tall as the model.
  const coarse = useMedia('(pointer: coarse)');
  const open = chosen ?? (layout !== 'phone' && (map !== null || !coarse));
  return (
    <section className="legend sheet" aria-label={t.legend.title} data-open={open} data-map={map !== null}>
      <button type="button" className="legend-head" aria-expanded={open} onClick={() => setChosen(!open)}>
        {map === null ? t.legend.rolesTitle : t.map.quantity(map)}
        <Icon name={open ? 'down' : 'up'} />
      </button>
      {open && <div className="legend-body">{map === null ? <RoleLegend /> : <MapLegend kind={map} />}</div>}
    </section>
  );
}
