/** A column of layers to scale with its depth rule: parts of the core log and of the column one edits. */

import { drawnAs } from '../../model/palette.ts';
import type { Role } from '../../model/roles.ts';
import { type ColumnScale, depthTicks, tickStepMm } from '../facts/column-scale.ts';
import { numberText } from '../format.ts';
import { partFill } from '../parts/Hatches.tsx';

export interface ColumnLayer {
  readonly key: string;
  readonly role: Role;
  readonly loose: boolean;
  readonly thicknessMm: number;
  readonly placed: boolean;
}

/** Where the rule stands; the column begins right of it. */
export const RULE_X = 28;
export const COLUMN_X = 32;
/** A layer thinner than this is drawn so thick. */
export const LEAST_LAYER_PX = 4;
const TICKS_APART_PX = 28;

interface BandsProps {
  readonly layers: readonly ColumnLayer[];
  readonly scale: ColumnScale;
  readonly x: number;
  readonly width: number;
}

export function ColumnBands({ layers, scale: { bands }, x, width }: BandsProps) {
  return (
    <>
      {layers.map(({ key, role, loose, placed }, i) => {
        const { top, bottom, enlarged } = bands[i] ?? { top: 0, bottom: 0, enlarged: false };
        return (
          <g key={key} className="core-layer" data-placed={placed}>
            <rect x={x} y={top} width={width} height={bottom - top} fill={placed ? partFill(drawnAs(role, loose)) : 'none'} />
            {enlarged && <path className="core-thin" d={`M${x + width - 9} ${bottom + 1.5}l6-${bottom - top + 3}`} />}
          </g>
        );
      })}
    </>
  );
}

interface RuleProps {
  readonly thicknessesMm: readonly number[];
  readonly scale: ColumnScale;
  /** Of the membrane. */
  readonly height: number;
}

export function DepthRule({ thicknessesMm, scale, height }: RuleProps) {
  const ticks = depthTicks(thicknessesMm, scale, tickStepMm(scale.pxPerMm, TICKS_APART_PX));
  const totalMm = thicknessesMm.reduce((sum, mm) => sum + mm, 0);
  const top = scale.bands.at(-1)?.top ?? 0;
  return (
    <g className="core-rule">
      <path d={`M${RULE_X} ${top}V${height}`} />
      {ticks.map(({ depthMm, y, labelled }) => (
        <g key={depthMm}>
          <path d={`M${RULE_X - (labelled ? 6 : 3)} ${y}H${RULE_X}`} />
          {labelled && height - y > 16 && (
            <text x={RULE_X - 8} y={y + 4}>
              {numberText(depthMm, 0)}
            </text>
          )}
        </g>
      ))}
      <path d={`M${RULE_X - 6} ${height}H${RULE_X}`} />
      <text x={RULE_X - 8} y={height + 3}>
        {numberText(totalMm, 0)}
      </text>
      <text x={RULE_X} y={height + 15}>
        mm
      </text>
    </g>
  );
}
