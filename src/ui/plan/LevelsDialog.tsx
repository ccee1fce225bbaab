/** Levels of the membrane: how many there are, and more of them pasted as rows. */

import { useState } from 'react';
import type { Point3M } from '../../model/scene-file.ts';
import { readLevelRows } from '../facts/level-rows.ts';
import { t } from '../text/text.ts';
import { PlanDialog } from './PlanDialog.tsx';
import { useSceneFile } from './use-drawn-lists.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

export function LevelsDialog({ onClose }: { readonly onClose: () => void }) {
  const scene = useSceneFile();
  const edits = usePlanEdits();
  const [text, setText] = useState('');
  if (scene === null) return null;
  const { levels: words } = t.draw;
  const spots = scene.deck.levels?.spots ?? [];
  const heights = spots.map(([, , z]) => z);
  const read = readLevelRows(text);
  const found = read.ok ? read.spots : [];
  const take = (replace: boolean) => async () => {
    const done = await edits.run(
      (now) => {
        const { levels } = now.deck;
        const next: readonly Point3M[] = replace ? found : [...(levels?.spots ?? []), ...found];
        // Breaklines belong to the levels they were measured with.
        const { breaklines } = levels ?? {};
        return { patch: { deck: { ...now.deck, levels: { spots: next, ...(!replace && breaklines && { breaklines }) } } } };
      },
      stepOf(replace ? 'exchange' : 'add', 'levels', []),
    );
    if (done) onClose();
  };
  return (
    <PlanDialog title={words.title} onClose={onClose}>
      <p>{spots.length === 0 ? words.none : words.count(spots.length, Math.min(...heights), Math.max(...heights))}</p>
      <p className="small">{words.how}</p>
      <textarea
        className="text-field pe-paste"
        rows={9}
        aria-label={words.paste}
        value={text}
        onChange={({ target }) => setText(target.value)}
      />
      <p role="status" className="pe-says" data-wrong={!read.ok}>
        {read.ok ? found.length > 0 && words.found(found.length) : words.wrong(read.line, read.text)}
      </p>
      <div className="pe-actions">
        <button type="button" className="button button-main" disabled={found.length === 0} onClick={() => void take(false)()}>
          {words.add}
        </button>
        <button type="button" className="button" disabled={found.length === 0} onClick={() => void take(true)()}>
          {words.replace}
        </button>
        <button type="button" className="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </PlanDialog>
  );
}
