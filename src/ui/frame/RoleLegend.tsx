/** Layers and parts with their hatches; each can be hidden or shown alone. */

import { useMemo } from 'react';
import { ROLE_STYLE } from '../../model/palette.ts';
import type { PartKind } from '../../model/picture.ts';
import { partFill } from '../parts/Hatches.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';

const ORDER = Object.keys(ROLE_STYLE) as PartKind[];

/** Kinds that this scene draws, from the top down. */
function useKinds(): readonly PartKind[] {
  const parts = useScene((state) => state.snapshot?.picture.parts);
  return useMemo(() => {
    const present = new Set(parts?.map((part) => part.kind));
    return ORDER.filter((kind) => present.has(kind));
  }, [parts]);
}

export function RoleLegend() {
  const kinds = useKinds();
  const hidden = useView((state) => state.hiddenKinds);
  const only = useView((state) => state.onlyKind);
  return (
    <ul className="legend-roles">
      {kinds.map((kind) => (
        <RoleLine key={kind} kind={kind} shown={only === null ? !hidden.has(kind) : only === kind} only={only === kind} />
      ))}
    </ul>
  );
}

/** What to know of the picture, also while the list is folded: that something is hidden, that sheets are drawn thicker. */
export function RoleRemarks() {
  const hidden = useView((state) => state.hiddenKinds.size > 0 || state.onlyKind !== null);
  const anyZone = useView((state) => state.hiddenZones.size > 0 || state.onlyZone !== null);
  const showAll = useView((state) => state.showAll);
  return (
    <>
      <ExplodedRemark />
      {(hidden || anyZone) && (
        <button type="button" className="button" onClick={showAll}>
          {t.legend.showAll}
        </button>
      )}
    </>
  );
}

export function ExplodedRemark() {
  const exploded = useView((state) => state.explode > 0);
  return exploded ? <span className="legend-remark">{t.legend.exploded}</span> : null;
}

function RoleLine({ kind, shown, only }: { readonly kind: PartKind; readonly shown: boolean; readonly only: boolean }) {
  const toggle = useView((state) => state.toggleKind);
  const isolate = useView((state) => state.isolateKind);
  const name = t.part(kind);
  return (
    <li data-shown={shown}>
      <button
        type="button"
        className="role-toggle"
        aria-pressed={shown}
        aria-label={shown ? t.legend.hide(name) : t.legend.show(name)}
        onClick={() => toggle(kind)}
      >
        <Swatch fill={partFill(kind)} />
        <span className="role-name">{name}</span>
        {!shown && <span className="role-hidden">{t.legend.hiddenWord}</span>}
      </button>
      <button
        type="button"
        className="only-button"
        aria-pressed={only}
        aria-label={t.legend.only(name)}
        onClick={() => isolate(only ? null : kind)}
      >
        {t.legend.onlyWord}
      </button>
    </li>
  );
}
