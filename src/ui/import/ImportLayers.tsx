/** Layers of a drawing: what was read of each and left out, and what it is used as. */

import { LAYER_ROLES, type LayerRole } from '../../model/drawing.ts';
import type { LayerView } from '../../model/importer.ts';
import { t } from '../text/text.ts';
import { useImports } from '../use-stores.ts';

interface Props {
  readonly layers: readonly LayerView[];
  /** The layer under pointer or focus, to be marked in the drawing. */
  readonly onMark: (layer: string | null) => void;
}

export function ImportLayers({ layers, onMark }: Props) {
  const roles = useImports((state) => state.roles);
  const setRole = useImports((state) => state.setRole);
  return (
    <section>
      <h3 className="block-title">{t.imports.layers(layers.length)}</h3>
      <p className="small">{t.imports.layersSay}</p>
      <ul className="import-layers">
        {layers.map(({ name, hidden, used, ignored }) => (
          <li
            key={name}
            data-used={roles[name] !== 'ignore'}
            onPointerEnter={() => onMark(name)}
            onPointerLeave={() => onMark(null)}
            onFocus={() => onMark(name)}
            onBlur={() => onMark(null)}
          >
            <span className="import-layer">
              {name}
              {hidden && <span className="small block">{t.imports.hidden}</span>}
            </span>
            <span className="small import-counts">
              <Counts says={t.imports.used} counts={used} />
              <Counts says={t.imports.ignored} counts={ignored} />
            </span>
            <select
              aria-label={t.imports.roleOf(name)}
              value={roles[name] ?? 'ignore'}
              onChange={({ target }) => setRole(name, target.value as LayerRole)}
            >
              {LAYER_ROLES.map((role) => (
                <option key={role} value={role}>
                  {t.imports.role(role)}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Counts({ says, counts }: { readonly says: string; readonly counts: readonly string[] }) {
  if (counts.length === 0) return null;
  return (
    <span className="block">
      {says}: {counts.join(', ')}
    </span>
  );
}
