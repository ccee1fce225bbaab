/** Legend of what is drawn, as a strip below the model: of the map, or without one of the layers and parts. */

import { type ReactNode, useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { type Layout, useMedia } from '../use-media.ts';
import { useView } from '../use-stores.ts';
import { MapPlace } from './MapBar.tsx';
import { MapLegend } from './MapLegend.tsx';
import { RoleLegend, RoleRemarks } from './RoleLegend.tsx';

const WIDE = '(min-width: 1500px)';

export function Legend({ layout }: { readonly layout: Layout }) {
  const map = useView((state) => state.map);
  const wide = useMedia(WIDE);
  // With targets for fingers the list of layers is as tall as the model.
  const coarse = useMedia('(pointer: coarse)');
  if (map !== null && layout !== 'phone') {
    return (
      <section className="legend" aria-label={t.legend.title} data-map="true">
        <MapLegend kind={map} />
      </section>
    );
  }
  if (map !== null) {
    return (
      <Folding key="map" title={t.map.quantity(map)} start={false} beside={<MapPlace />}>
        <MapLegend kind={map} />
      </Folding>
    );
  }
  return (
    <Folding key={`roles ${wide}`} title={t.legend.rolesTitle} start={wide && !coarse} beside={<RoleRemarks />}>
      <RoleLegend />
    </Folding>
  );
}

interface FoldingProps {
  readonly title: string;
  /** Open at first. */
  readonly start: boolean;
  readonly beside: ReactNode;
  readonly children: ReactNode;
}

function Folding({ title, start, beside, children }: FoldingProps) {
  const [open, setOpen] = useState(start);
  return (
    <section className="legend" aria-label={t.legend.title} data-open={open}>
      <div className="legend-row">
        <button type="button" className="legend-head" aria-expanded={open} onClick={() => setOpen(!open)}>
          {title}
          <Icon name={open ? 'down' : 'up'} />
        </button>
        {beside}
      </div>
      {open && <div className="legend-body">{children}</div>}
    </section>
  );
}
