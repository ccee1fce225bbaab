/** A build-up as a small drawing: layers from the bottom up with number, hatch, thickness and which way up. */

import { drawnAs } from '../../model/palette.ts';
import type { TalkBuildUp, TalkLayer } from '../facts/talk-facts.ts';
import { partFill } from '../parts/Hatches.tsx';
import type { PrintWords } from '../text/print-words.ts';

interface Props {
  readonly buildUp: TalkBuildUp;
  readonly words: PrintWords;
}

function thickness({ layer }: TalkLayer, words: PrintWords): string {
  if (layer.rangeMm !== null) return words.talk.range(layer.rangeMm.min, layer.rangeMm.max);
  return layer.thicknessMm > 0 ? words.talk.mm(layer.thicknessMm) : '';
}

export function LayerColumn({ buildUp, words }: Props) {
  const layers = buildUp.layers.map((one, i) => ({ ...one, number: i + 1 })).reverse();
  return (
    <ol className="layer-column" reversed>
      {layers.map((one) => {
        const { layer, today, number } = one;
        const loose = layer.density !== null;
        return (
          <li key={number} data-today={today} value={number}>
            <span className="layer-number">{number}</span>
            <svg className="layer-hatch" width="64" height="34" viewBox="0 0 64 34" aria-hidden="true">
              <rect width="64" height="34" fill={partFill(drawnAs(layer.role as Parameters<typeof drawnAs>[0], loose))} />
              {layer.orientation !== null && <Cups up={layer.orientation === 'retention'} />}
            </svg>
            <span className="layer-words">
              <strong>{layer.name}</strong> {thickness(one, words)}
              {layer.orientation !== null && (
                <span className="layer-way"> · {layer.orientation === 'retention' ? words.talk.cupsUp : words.talk.cupsDown}</span>
              )}
              {today && <span className="layer-today">{words.talk.today}</span>}
            </span>
          </li>
        );
      })}
    </ol>
  );
}

/** Cups open upwards hold water, which is drawn in them: at a glance the two ways up look much alike. Turned over they drain. */
function Cups({ up }: { readonly up: boolean }) {
  const cup = 'M0 6h3l3 20h8l3-20h3';
  return (
    <g className="layer-cups">
      <rect width="64" height="34" fill="#ffffff" />
      {up && (
        <path
          className="layer-water"
          transform="translate(2 1)"
          d={[0, 20, 40].map((x) => `M${x + 4.5} 11L${x + 6} 26h8l1.5-15z`).join('')}
        />
      )}
      <path
        transform={up ? 'translate(2 1)' : 'translate(2 33) scale(1 -1)'}
        d={[0, 20, 40].map((x) => cup.replace('M0', `M${x}`)).join('')}
      />
    </g>
  );
}
