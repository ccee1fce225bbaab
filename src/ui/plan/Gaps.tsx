/** Places on the deck that no zone, or no bay, covers: to be looked at, and filled from a neighbour. */

import { useMemo, useState } from 'react';
import { gapFilled } from '../../edit/fit-areas.ts';
import { type Gap, gapsOf } from '../../edit/gaps.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { t } from '../text/text.ts';
import { partTitle } from './part-title.ts';
import { usePlan } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

/** Larger ones first; what is left comes up as these are filled. */
const MOST_GAPS = 12;
/** Those with the longest edge in common. */
const MOST_NEIGHBOURS = 3;

interface Props {
  readonly part: 'zone' | 'bay';
  readonly title: string;
}

export function Gaps({ part, title }: Props) {
  const scene = useSceneFile();
  const [open, setOpen] = useState(false);
  return (
    <details className="pe-part-group pe-gaps" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open && scene !== null && <GapList part={part} scene={scene} />}
    </details>
  );
}

function GapList({ part, scene }: Pick<Props, 'part'> & { readonly scene: SceneFile }) {
  // Only while they are looked at: with many zones this takes a moment.
  const gaps = useMemo(() => gapsOf(scene, part), [scene, part]);
  if (gaps.length === 0) return <p className="small">{t.draw.refused('no gap')}</p>;
  return (
    <>
      <p className="small">{t.draw.gaps.how}</p>
      <ul>
        {gaps.slice(0, MOST_GAPS).map((gap) => (
          <GapItem key={`${gap.at[0]} ${gap.at[1]}`} part={part} scene={scene} gap={gap} />
        ))}
      </ul>
      {gaps.length > MOST_GAPS && <p className="small">{t.draw.gaps.more(gaps.length - MOST_GAPS)}</p>}
    </>
  );
}

function GapItem({ part, scene, gap }: Pick<Props, 'part'> & { readonly scene: SceneFile; readonly gap: Gap }) {
  const edits = usePlanEdits();
  const lookAt = usePlan((state) => state.lookAt);
  const tell = usePlan((state) => state.tell);
  const words = t.draw.gaps;
  const neighbours = gap.neighbours.slice(0, MOST_NEIGHBOURS);
  const says = words.one(gap.areaM2);
  const show = () => {
    tell({ issues: [], says, at: gap.at, ghost: gap.outline, note: true });
    lookAt(gap.at);
  };
  const fill = (id: string) => void edits.run((now) => gapFilled(now, gap.at, { part, id }), stepOf('change', part, [id]));
  return (
    <li>
      <span>{says}</span>
      <div className="pe-actions">
        <button type="button" className="button" aria-label={words.showLabel(gap.areaM2)} onClick={show}>
          {words.show}
        </button>
        {neighbours.map((id) => (
          <button key={id} type="button" className="button" onClick={() => fill(id)}>
            {words.fillFrom(partTitle(scene, { part, id }))}
          </button>
        ))}
        {neighbours.length === 0 && <span className="small">{words.alone}</span>}
      </div>
      {neighbours.length > 0 && (
        <p className="small">{part === 'bay' ? words.bayTakes : words.zoneTakes(neighbours.map((id) => buildUpOf(scene, id)))}</p>
      )}
    </li>
  );
}

/** Title of a zone and name of its build-up. */
function buildUpOf(scene: SceneFile, id: string): readonly [string, string] {
  const buildUp = scene.zones.find((zone) => zone.id === id)?.buildup ?? '';
  return [partTitle(scene, { part: 'zone', id }), scene.buildups.find((one) => one.id === buildUp)?.name ?? buildUp];
}
