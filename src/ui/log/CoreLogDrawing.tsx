/** The drilled column: layers to scale beside a depth rule, each with a label that never covers another. */

import { useRef } from 'react';
import type { CoreLog, CoreLogLayer } from '../../model/maps.ts';
import { scaleColumn } from '../facts/column-scale.ts';
import { placeLabels } from '../facts/place-labels.ts';
import { t } from '../text/text.ts';
import { useWidth } from '../use-width.ts';
import { COLUMN_X, ColumnBands, type ColumnLayer, DepthRule, LEAST_LAYER_PX } from './column-parts.tsx';

const LEAST_WIDTH = 240;
const GREATEST_WIDTH = 420;
const COLUMN_WIDTH = 46;
const LABEL_X = 92;
const LABEL_HEIGHT = 31;
const HEAD = 18;
const FOOT = 18;
const LEAST_HEIGHT = 190;
/** Mean width of a letter of Barlow Condensed at 14 px. */
const LETTER_PX = 6;

/** Zones that share the cell, the largest first; its labels are the ones drawn. */
function byZone(layers: readonly CoreLogLayer[]): readonly (readonly CoreLogLayer[])[] {
  const zones = [...new Set(layers.map((layer) => layer.zone))];
  return zones.map((zone) => layers.filter((layer) => layer.zone === zone));
}

export function CoreLogDrawing({ log }: { readonly log: CoreLog }) {
  const columns = byZone(log.layers);
  const [main = []] = columns;
  const figure = useRef<HTMLElement>(null);
  const width = Math.min(GREATEST_WIDTH, Math.max(LEAST_WIDTH, useWidth(figure)));
  const height = Math.max(LEAST_HEIGHT, main.length * LABEL_HEIGHT);
  const names = [...main].reverse().map((layer) => layer.name);
  const anyThin = scaleOf(main, height).bands.some((band) => band.enlarged);
  const totalShare = columns.reduce((sum, [first]) => sum + (first?.share ?? 0), 0) || 1;
  let x = COLUMN_X;
  return (
    <figure ref={figure} className="core-figure">
      <svg width={width} viewBox={`0 0 ${width} ${HEAD + height + FOOT}`} role="img" aria-label={t.core.drawing(names.join(', '))}>
        <text className="core-level" x={COLUMN_X} y={HEAD - 6}>
          {t.core.finished(log.finishedM)}
        </text>
        <g transform={`translate(0 ${HEAD})`}>
          <DepthRule thicknessesMm={main.map(({ thicknessMm }) => thicknessMm)} scale={scaleOf(main, height)} height={height} />
          {columns.map((layers) => {
            const share = ((layers[0]?.share ?? 0) / totalShare) * COLUMN_WIDTH;
            const at = x;
            x += share;
            return <ColumnBands key={layers[0]?.zone} layers={drawn(layers)} scale={scaleOf(layers, height)} x={at} width={share} />;
          })}
          <path className="core-membrane" d={`M${COLUMN_X - 6} ${height}h${COLUMN_WIDTH + 12}`} />
          <Labels layers={main} height={height} letters={Math.floor((width - LABEL_X) / LETTER_PX)} />
        </g>
        <text className="core-level" x={COLUMN_X} y={HEAD + height + 14}>
          {t.core.membrane(log.membraneM)}
        </text>
      </svg>
      <figcaption className="small">
        {t.core.labelsSay} {anyThin && t.core.thin}
      </figcaption>
    </figure>
  );
}

const scaleOf = (layers: readonly CoreLogLayer[], height: number) =>
  scaleColumn(
    layers.map((layer) => layer.thicknessMm),
    height,
    LEAST_LAYER_PX,
  );

/** What the drawing needs of a layer; one material may lie twice in a column. */
const drawn = (layers: readonly CoreLogLayer[]): ColumnLayer[] =>
  layers.map((layer) => ({ ...layer, key: `${layer.zone} ${layer.bottomM} ${layer.materialId}` }));

interface LabelsProps {
  readonly layers: readonly CoreLogLayer[];
  readonly height: number;
  readonly letters: number;
}

function Labels({ layers, height, letters }: LabelsProps) {
  const { bands } = scaleOf(layers, height);
  const topDown = layers.map((layer, i) => ({ layer, band: bands[i] })).reverse();
  const wanted = topDown.map(({ band }) => ((band?.top ?? 0) + (band?.bottom ?? 0)) / 2);
  const placed = placeLabels(wanted, LABEL_HEIGHT, 0, height);
  const edge = COLUMN_X + COLUMN_WIDTH;
  return (
    <>
      {topDown.map(({ layer }, i) => {
        const y = placed[i] ?? 0;
        return (
          <g key={`${layer.zone} ${layer.bottomM}${layer.materialId}`} className="core-label" data-placed={layer.placed}>
            <path d={`M${edge} ${wanted[i]}L${edge + 10} ${y}H${LABEL_X - 4}`} />
            <text x={LABEL_X} y={y - 2}>
              {shortName(layer, letters)}
            </text>
            <text className="core-label-numbers" x={LABEL_X} y={y + 12}>
              {layer.placed ? t.core.layerLine(layer) : t.core.notYet}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** The table below carries the name in full. */
function shortName({ name }: CoreLogLayer, letters: number): string {
  return name.length > letters ? `${name.slice(0, letters - 1).trimEnd()}…` : name;
}
