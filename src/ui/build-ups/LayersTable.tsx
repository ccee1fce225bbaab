/** The column as a table: every layer with its thickness to set, what it weighs and holds, and its place. */

import type { BuildUpView } from '../../model/engine.ts';
import { roundToSum } from '../facts/round-to-sum.ts';
import { loadNumber, numberText, thicknessOf } from '../format.ts';
import { ThicknessField } from '../log/ThicknessField.tsx';
import { useThickness } from '../log/use-thickness.ts';
import { partFill } from '../parts/Hatches.tsx';
import { MoveButtons } from '../parts/MoveButtons.tsx';
import { Swatch } from '../parts/Swatch.tsx';
import { TableHead } from '../parts/TableHead.tsx';
import { t } from '../text/text.ts';
import { layerKey } from './drawn-layers.ts';
import type { BuildUpEdits } from './use-build-up.ts';

interface Props {
  readonly buildUp: BuildUpView;
  readonly layer: number;
  readonly onLayer: (index: number) => void;
  readonly edits: BuildUpEdits;
}

export function LayersTable({ buildUp, layer, onLayer, edits }: Props) {
  const { table } = t.buildUps;
  const { sum } = buildUp;
  const { rows, vegetationKNm2 } = roundedRows(buildUp);
  return (
    <details className="bu-table" open>
      <summary>{table.title}</summary>
      <div className="bu-table-scroll">
        <table className="numbers">
          <TableHead heads={[table.layer, table.thickness, table.dry(), table.saturated(), table.held]} />
          <tbody>
            {vegetationKNm2 > 0 && (
              <tr>
                <th scope="row">{table.vegetation}</th>
                <td />
                <td>{loadNumber(vegetationKNm2)}</td>
                <td>{loadNumber(vegetationKNm2)}</td>
                <td />
              </tr>
            )}
            {rows.map(({ one, index, dryKNm2, saturatedKNm2 }) => (
              <LayerRow
                key={layerKey(buildUp.layers, index)}
                buildUp={buildUp.id}
                index={index}
                layer={one}
                loads={[dryKNm2, saturatedKNm2]}
                count={rows.length}
                chosen={index === layer}
                onChoose={() => onLayer(index)}
                edits={edits}
              />
            ))}
          </tbody>
          <tfoot>
            <tr className="sum-total">
              <th scope="row">{table.total}</th>
              <td>{thicknessOf(sum.depthMm)}</td>
              <td>{loadNumber(sum.dryKNm2)}</td>
              <td>{loadNumber(sum.saturatedKNm2)}</td>
              <td>{numberText(sum.heldLm2, 1)}</td>
            </tr>
          </tfoot>
        </table>
      </div>
    </details>
  );
}

/** Top to bottom; rounded so that the rows add up to the total. */
function roundedRows({ layers, sum }: BuildUpView) {
  const plants = sum.dryKNm2 - layers.reduce((all, { load }) => all + load.dryKNm2, 0);
  const [dry, saturated] = (['dryKNm2', 'saturatedKNm2'] as const).map((key) =>
    roundToSum([...layers.map(({ load }) => load[key]), plants], 2),
  );
  const rows = layers.map((one, index) => ({ one, index, dryKNm2: dry?.[index] ?? 0, saturatedKNm2: saturated?.[index] ?? 0 }));
  return { rows: rows.reverse(), vegetationKNm2: dry?.[layers.length] ?? 0 };
}

interface RowProps {
  readonly buildUp: string;
  readonly index: number;
  readonly layer: BuildUpView['layers'][number];
  /** Dry and saturated, as shown. */
  readonly loads: readonly [number, number];
  readonly count: number;
  readonly chosen: boolean;
  readonly onChoose: () => void;
  readonly edits: BuildUpEdits;
}

function LayerRow({ buildUp, index, layer, loads: [dryKNm2, saturatedKNm2], count, chosen, onChoose, edits }: RowProps) {
  const thickness = useThickness({ buildUp, index, layer });
  const { table } = t.buildUps;
  const { name, role, load, adjustable, thicknessMm } = layer;
  return (
    <tr data-picked={chosen}>
      <th scope="row">
        <span className="bu-table-name">
          <Swatch fill={partFill(role)} />
          <button type="button" className="row-button" aria-pressed={chosen} onClick={onChoose}>
            {name}
          </button>
          <MoveButtons
            short
            labels={{ up: table.up(name), down: table.down(name) }}
            first={index === count - 1}
            last={index === 0}
            onMove={(way) => edits.step(index, way)}
          />
        </span>
      </th>
      <td>{adjustable ? <ThicknessField label={t.thickness.field(name)} thickness={thickness} /> : thicknessOf(thicknessMm)}</td>
      <td>{loadNumber(dryKNm2)}</td>
      <td>{loadNumber(saturatedKNm2)}</td>
      <td>{load.heldLm2 === 0 ? '' : numberText(load.heldLm2, 1)}</td>
    </tr>
  );
}
