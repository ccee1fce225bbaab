/** A bar of utilisation with a mark at the limit; decoration beside the same value in words. */

import { UTILISATION_COLOURS } from '../../model/palette.ts';
import { judge, utilisationClass } from '../facts/utilisation.ts';
import { classFill, UNCONFIRMED_FILL } from './Hatches.tsx';

const WIDTH = 120;
const HEIGHT = 10;
/** The bar ends at 150 %; what is above runs off with an arrow. */
const FULL = 1.5;

interface Props {
  readonly utilisation: number | null;
  readonly confirmed: boolean;
  /** Within tolerances. */
  readonly band?: { readonly low: number; readonly high: number } | undefined;
}

export function UtilisationBar({ utilisation, confirmed, band }: Props) {
  const value = utilisation ?? 0;
  const index = utilisationClass(value);
  // Over the limit is shown as such whoever says so; anything else unconfirmed only as grey hatch.
  const fill = !confirmed && judge(value) !== 'over' ? UNCONFIRMED_FILL : classFill(index, UTILISATION_COLOURS[index] ?? '');
  const limitX = WIDTH / FULL;
  const at = (ratio: number) => Math.min(ratio / FULL, 1) * WIDTH;
  const width = at(value);
  const middle = 2 + HEIGHT / 2;
  return (
    <svg className="utilisation-bar" viewBox={`0 0 ${WIDTH} ${HEIGHT + 4}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
      <rect x="0" y="2" width={WIDTH} height={HEIGHT} fill="var(--paper)" stroke="var(--rule)" />
      <rect x="0" y="2" width={width} height={HEIGHT} fill={fill} stroke="var(--ink-soft)" strokeWidth="0.75" />
      <path d={`M${limitX} 0v${HEIGHT + 4}`} stroke="var(--ink)" strokeWidth="1.5" />
      {band && (
        <path
          d={`M${at(band.low)} 3.5v7M${at(band.high)} 3.5v7M${at(band.low)} ${middle}H${at(band.high)}`}
          stroke="var(--ink)"
          strokeWidth="1.25"
        />
      )}
      {value > FULL && <path d={`M${WIDTH - 8} ${middle}l-5-4v8z`} fill="var(--sheet)" />}
    </svg>
  );
}
