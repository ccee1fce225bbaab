/** The column one edits: layers to scale on the membrane, a handle at the top of each that can be set, rows to choose and to move. */

import './build-up-column.css';
import { type KeyboardEvent, useRef, useState } from 'react';
import { piecesOf } from '../../edit/build-ups-layers.ts';
import type { BuildUpView } from '../../model/engine.ts';
import { columnAt, scaleColumn } from '../facts/column-scale.ts';
import { placeLabels } from '../facts/place-labels.ts';
import { COLUMN_X, ColumnBands, DepthRule, LEAST_LAYER_PX } from '../log/column-parts.tsx';
import { Icon } from '../parts/Icon.tsx';
import { useRowDrag } from '../stages/use-row-drag.ts';
import { t } from '../text/text.ts';
import { useMedia } from '../use-media.ts';
import { drawnLayers, layerKey } from './drawn-layers.ts';
import { LayerHandle } from './LayerHandle.tsx';
import { MakeUpLane } from './MakeUpLane.tsx';
import type { BuildUpEdits } from './use-build-up.ts';

/** Room above the column to pull it up into. */
const HEADROOM = 0.14;
const LEAST_HEIGHT = 300;
const FOOT = 20;
/** Handles side by side, so that those of thin layers do not cover one another. */
const SLOTS = 3;
const LEADER = 20;

interface Props {
  readonly buildUp: BuildUpView;
  readonly layer: number;
  readonly onLayer: (index: number) => void;
  readonly edits: BuildUpEdits;
}

/** A layer that is being dragged: its thickness as shown, and the scale that was there at the start. */
export interface Dragged {
  readonly index: number;
  readonly mm: number;
  readonly pxPerMm: number;
}

export function BuildUpColumn({ buildUp, layer, onLayer, edits }: Props) {
  const touch = useMedia('(pointer: coarse)');
  const [dragged, setDragged] = useState<Dragged | null>(null);
  const { row, slot } = touch ? { row: 46, slot: 44 } : { row: 36, slot: 28 };
  const height = Math.max(LEAST_HEIGHT, buildUp.layers.length * row);
  const layers = drawnLayers(buildUp, dragged ?? undefined);
  const thicknesses = layers.map(({ thicknessMm }) => thicknessMm);
  const scale = scaleOf(thicknesses, height, dragged);
  const makeUp = buildUp.layers.findIndex(({ rangeMm }) => rangeMm !== null);
  const lane = makeUp < 0 ? 0 : slot;
  // On a touch screen the column gives up what its lane takes, so that the names keep their room.
  const slots = SLOTS - (touch && lane > 0 ? 1 : 0);
  const width = slots * slot;
  const edge = COLUMN_X + width + lane;
  const middles = scale.bands.map(({ top, bottom }) => (top + bottom) / 2).reverse();
  const placed = placeLabels(middles, row, 0, height);
  const { column } = t.buildUps;
  let handles = 0;
  return (
    <section className="bu-column" aria-label={column.title(buildUp.name)}>
      <div className="bu-figure" style={{ height: height + FOOT }}>
        <svg
          className="core-figure bu-drawing"
          width={edge + LEADER}
          height={height + FOOT}
          role="img"
          aria-label={column.drawing(buildUp.layers.map(({ name }) => name).reverse())}
        >
          <DepthRule thicknessesMm={thicknesses} scale={scale} height={height} />
          <ColumnBands layers={layers} scale={scale} x={COLUMN_X} width={width} />
          <path className="core-membrane" d={`M${COLUMN_X - 6} ${height}h${width + 12}`} />
          <g className="core-label">
            {placed.map((y, i) => (
              <path key={layers[layers.length - 1 - i]?.key} d={`M${COLUMN_X + width} ${middles[i]}H${edge}L${edge + LEADER - 6} ${y}h6`} />
            ))}
          </g>
          <text className="bu-membrane" x={COLUMN_X + 8} y={height + 15}>
            {column.membrane}
          </text>
        </svg>
        {buildUp.layers.map((one, i) => {
          if (!one.adjustable) return null;
          const x = COLUMN_X + (handles++ % slots) * slot;
          return (
            <LayerHandle
              // biome-ignore lint/suspicious/noArrayIndexKey: layers have no id; a material can lie twice in a build-up
              key={`${i} ${one.materialId}`}
              buildUp={buildUp.id}
              index={i}
              layer={one}
              place={{ x, y: scale.bands[i]?.top ?? 0, size: slot }}
              pxPerMm={scale.pxPerMm}
              onDrag={setDragged}
              onChoose={onLayer}
            />
          );
        })}
        <MakeUpLane
          key={`${buildUp.id} ${makeUp}`}
          {...{ buildUp, edits }}
          index={makeUp}
          place={{
            x: COLUMN_X + width,
            bottom: scale.bands[makeUp]?.bottom ?? height,
            width: lane,
            height: height + FOOT,
            pxPerMm: scale.pxPerMm,
          }}
          onChoose={onLayer}
        />
        <LayerRows {...{ buildUp, layer, onLayer, edits, placed, row }} left={edge + LEADER} />
      </div>
      <p className="small">
        {column.key()} {lane > 0 && column.lane} {scale.bands.some(({ enlarged }) => enlarged) && column.thin}
      </p>
    </section>
  );
}

function scaleOf(thicknesses: readonly number[], height: number, dragged: Dragged | null) {
  if (dragged === null)
    return columnAt(thicknesses, height, LEAST_LAYER_PX, scaleColumn(thicknesses, height * (1 - HEADROOM), LEAST_LAYER_PX).pxPerMm);
  const fits = scaleColumn(thicknesses, height, LEAST_LAYER_PX).pxPerMm;
  return columnAt(thicknesses, height, LEAST_LAYER_PX, Math.min(dragged.pxPerMm, fits));
}

interface RowsProps extends Props {
  readonly placed: readonly number[];
  readonly row: number;
  readonly left: number;
}

/** Top to bottom, as one looks at the column. */
function LayerRows({ buildUp: { layers }, layer, onLayer, edits, placed, row, left }: RowsProps) {
  const { column } = t.buildUps;
  const last = layers.length - 1;
  const list = useRef<HTMLOListElement>(null);
  const pieces = piecesOf(layers.map(({ materialId, infill }) => ({ material: materialId, infill })));
  const drag = useRowDrag((from, to) => {
    const place = pieces.findIndex((piece) => piece.includes(last - to));
    edits.move(last - from, place);
  });
  const onKeyDown = (event: KeyboardEvent, index: number) => {
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    const way = event.key === 'ArrowUp' ? 'up' : 'down';
    if (event.altKey) {
      edits.step(index, way);
      return;
    }
    const to = Math.min(last, Math.max(0, index + (way === 'up' ? 1 : -1)));
    onLayer(to);
    list.current?.querySelectorAll('button')[last - to]?.focus();
  };
  return (
    <ol ref={list} className="bu-rows" style={{ left }}>
      {layers
        .map((_, i) => last - i)
        .map((index, at) => {
          const one = layers[index];
          if (one === undefined) return null;
          const drop =
            drag.drop !== null && drag.drop.to === at && drag.drop.from !== at ? (drag.drop.from > at ? 'above' : 'below') : undefined;
          return (
            <li
              key={layerKey(layers, index)}
              style={{ top: (placed[at] ?? 0) - row / 2, height: row }}
              data-chosen={index === layer}
              data-drop={drop}
            >
              <button
                type="button"
                className="bu-row"
                aria-pressed={index === layer}
                aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
                title={column.keys}
                onClick={() => onLayer(index)}
                onKeyDown={(event) => onKeyDown(event, index)}
              >
                <span className="bu-row-name">{one.name}</span>
                <span className="bu-row-numbers">{column.line(one.load, one.rangeMm !== null, one.infill)}</span>
                <span className="unseen">{column.place(index + 1, layers.length)}</span>
              </button>
              <span className="bu-grip" title={column.grip} aria-hidden="true" {...drag.handle(at)}>
                <Icon name="grip" />
              </span>
            </li>
          );
        })}
    </ol>
  );
}
