/** A stockpile to be put somewhere: material, bay with the height it may have there, height, extents. Nothing is put there before it is asked for. */

import { useState } from 'react';
import { rectangleOutline } from '../../edit/stockpiles.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneStage, SceneStockpile } from '../../model/scene-file.ts';
import { type HeapEntry, heapBoard } from '../facts/heap-board.ts';
import type { LooseChoices } from '../facts/loose-choices.ts';
import { innerPoint } from '../facts/place.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { HIGHEST_M, LEAST_M, MaterialChoice, Metres } from './HeapFields.tsx';

interface Props {
  readonly snapshot: Snapshot;
  readonly stage: SceneStage;
  readonly choices: LooseChoices;
  readonly onAdd: (pile: Omit<SceneStockpile, 'id'>) => Promise<boolean>;
}

const START_M = { height: 0.5, length: 2, width: 2 } as const;
const LONGEST_M = 500;

export function NewHeap({ snapshot, stage, choices, onAdd }: Props) {
  const words = t.stageEditor.heaps;
  const { scene, report } = snapshot;
  const pickedBay = useView((state) => state.bay);
  const [chosen, setChosen] = useState<{ readonly material?: string; readonly bay?: string }>({});
  const [sizeM, setSizeM] = useState<{ readonly height: number; readonly length: number; readonly width: number }>(START_M);
  const material = chosen.material ?? (choices.known[0] ?? choices.others[0])?.id;
  const bay = chosen.bay ?? pickedBay ?? scene.deck.bays[0]?.id;
  if (material === undefined) return <p>{words.noMaterial}</p>;
  if (bay === undefined) return <p>{words.noBay}</p>;
  const board = heapBoard(report, scene, stage.id, material);
  const known = choices.known.some(({ id }) => id === material);
  const entry = board.find((one) => one.bay === bay);
  const onClick = () => void onAdd({ outline: aroundMiddle(scene, bay, sizeM), material, heightM: sizeM.height });
  return (
    <fieldset className="stage-card">
      <legend>{words.newTitle}</legend>
      <div className="stage-fields">
        <MaterialChoice choices={choices} value={material} onChoose={(id) => setChosen({ ...chosen, material: id })} />
        <label className="stage-field">
          <span>{words.bay}</span>
          <select value={bay} onChange={(event) => setChosen({ ...chosen, bay: event.target.value })}>
            {board.map((one) => (
              <option key={one.bay} value={one.bay}>
                {known ? words.roomOf(one) : one.bay}
              </option>
            ))}
          </select>
        </label>
        <Metres
          label={words.height}
          value={sizeM.height}
          range={[LEAST_M, HIGHEST_M]}
          onCommit={(height) => setSizeM({ ...sizeM, height })}
        />
        <Metres
          label={words.length}
          value={sizeM.length}
          range={[LEAST_M, LONGEST_M]}
          onCommit={(length) => setSizeM({ ...sizeM, length })}
        />
        <Metres label={words.width} value={sizeM.width} range={[LEAST_M, LONGEST_M]} onCommit={(width) => setSizeM({ ...sizeM, width })} />
      </div>
      <p role="status" className={known && entry && isTooHigh(entry, sizeM.height) ? 'stage-warn' : 'small'}>
        {known ? entry && isTooHigh(entry, sizeM.height) && words.tooHigh(sizeM.height, bay, entry) : words.unknown}
      </p>
      <button type="button" className="button button-main" onClick={onClick}>
        {words.add}
      </button>
    </fieldset>
  );
}

const isTooHigh = ({ state, heightM }: HeapEntry, wantedM: number) => state === 'over' || (state === 'free' && wantedM > heightM + 1e-9);

/** A rectangle round the middle of a bay, its corner on whole decimetres. */
function aroundMiddle(scene: Snapshot['scene'], bay: string, { length, width }: { readonly length: number; readonly width: number }) {
  const outline = scene.deck.bays.find(({ id }) => id === bay)?.outline ?? scene.deck.outline;
  const [x, y] = innerPoint(outline) ?? (outline[0] as readonly [number, number]);
  const tenths = (valueM: number) => Math.round(valueM * 10) / 10;
  return rectangleOutline({ xM: tenths(x - length / 2), yM: tenths(y - width / 2), lengthM: length, widthM: width });
}
