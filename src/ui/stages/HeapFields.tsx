/** Fields of a stockpile: its material, lengths in metres, the corner and extents of a rectangle. */

import type { Rectangle } from '../../edit/stockpiles.ts';
import type { LooseChoices } from '../facts/loose-choices.ts';
import { NumberRow } from '../parts/NumberRow.tsx';
import { t } from '../text/text.ts';
import { ChoiceOf } from './ChoiceOf.tsx';

/** As the scene file bounds heights and coordinates [m]. */
export const LEAST_M = 0.01;
export const HIGHEST_M = 20;
const FARTHEST_M = 10_000_000;

export function MaterialChoice({
  choices,
  value,
  onChoose,
}: {
  readonly choices: LooseChoices;
  readonly value: string;
  readonly onChoose: (id: string) => void;
}) {
  const words = t.stageEditor.heaps;
  // Until the catalogue comes, what is chosen stands for itself.
  const listed = [...choices.known, ...choices.others].some(({ id }) => id === value);
  const others = listed ? choices.others : [...choices.others, { id: value, name: value }];
  return (
    <ChoiceOf
      label={words.material}
      value={value}
      groups={[
        { name: words.ofScene, choices: choices.known },
        { name: words.ofCatalogue, choices: others },
      ]}
      onChoose={onChoose}
    />
  );
}

interface MetresProps {
  readonly label: string;
  readonly value: number;
  readonly range: readonly [number, number];
  readonly onCommit: (value: number) => void;
}

export function Metres({ label, value, range: [min, max], onCommit }: MetresProps) {
  return <NumberRow className="stage-field" label={label} value={value} unit="m" decimals={2} min={min} max={max} onCommit={onCommit} />;
}

export function RectangleFields({
  rectangle,
  onCommit,
}: {
  readonly rectangle: Rectangle;
  readonly onCommit: (to: Partial<Rectangle>) => void;
}) {
  const words = t.stageEditor.heaps;
  const { xM, yM, lengthM, widthM } = rectangle;
  const place = [-FARTHEST_M, FARTHEST_M] as const;
  const extent = [LEAST_M, FARTHEST_M] as const;
  return (
    <>
      <Metres label={words.x} value={xM} range={place} onCommit={(x) => onCommit({ xM: x })} />
      <Metres label={words.y} value={yM} range={place} onCommit={(y) => onCommit({ yM: y })} />
      <Metres label={words.length} value={lengthM} range={extent} onCommit={(length) => onCommit({ lengthM: length })} />
      <Metres label={words.width} value={widthM} range={extent} onCommit={(width) => onCommit({ widthM: width })} />
    </>
  );
}
