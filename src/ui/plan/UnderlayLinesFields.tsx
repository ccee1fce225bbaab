/** Showing, hiding and removing the lines under the plan, which come from the import page. */

import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { keepUnder } from './kept-underlay.ts';
import { useSceneFile } from './use-drawn-lists.ts';

/** More layers than this are folded away. */
const FEW_LAYERS = 8;

export function UnderlayLinesFields() {
  const lines = useView((state) => state.underlayLines);
  const { view } = useStores();
  const scene = useSceneFile()?.name ?? '';
  if (lines === null) return null;
  const { name, layers, off, opacity, shown } = lines;
  const put = (change: Partial<typeof lines>) => view.getState().setUnderlayLines({ ...lines, ...change });
  const toggle = (layer: string) => {
    const next = new Set(off);
    if (!next.delete(layer)) next.add(layer);
    put({ off: next });
  };
  const remove = () => {
    view.getState().setUnderlayLines(null);
    void keepUnder('lines', scene, null);
  };
  const words = t.draw.underlay;
  return (
    <section className="pe-underlay-fields">
      <h3 className="block-title">{words.lines(name)}</h3>
      <p className="small">{words.linesHow}</p>
      <div className="pe-fields">
        <label className="check">
          <input type="checkbox" checked={shown} onChange={({ target }) => put({ shown: target.checked })} />
          {words.linesShown}
        </label>
        <div className="pe-field">
          <span className="pe-field-name">{words.opacity}</span>
          <input
            type="range"
            aria-label={words.linesOpacity}
            min="0.1"
            max="1"
            step="0.05"
            value={opacity}
            onChange={({ target }) => put({ opacity: Number(target.value) })}
          />
        </div>
      </div>
      <details className="pe-part-group" open={layers.length <= FEW_LAYERS || undefined}>
        <summary>{words.linesLayers(layers.length)}</summary>
        <ul>
          {layers.map((layer) => (
            <li key={layer.name}>
              <label className="check">
                <input type="checkbox" checked={!off.has(layer.name)} onChange={() => toggle(layer.name)} />
                {layer.name}
              </label>
            </li>
          ))}
        </ul>
      </details>
      <div className="pe-actions">
        <button type="button" className="button" onClick={remove}>
          {words.linesRemove}
        </button>
      </div>
    </section>
  );
}
