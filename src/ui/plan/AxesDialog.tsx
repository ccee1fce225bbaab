/** Bays from the distances between axes, seen before they are made, with what would be lost. */

import { type FormEvent, useMemo, useState } from 'react';
import { type AxisTextRead, readAxisText } from '../../edit/axis-text.ts';
import { type AxisBays, withBaysFromAxes } from '../../edit/bays-from-axes.ts';
import type { AxisGrid } from '../../model/drawing.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { boxOf } from '../facts/place.ts';
import { fittingLetters, planFrame, planPath, planPoint } from '../facts/plan-frame.ts';
import { readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { PlanDialog } from './PlanDialog.tsx';
import { usePlan } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

const PREVIEW_PX = 420;

interface Typed {
  readonly along: string;
  readonly across: string;
  readonly x: string;
  readonly y: string;
  readonly turn: string;
}

type Read = { readonly ok: true; readonly grid: AxisGrid } | { readonly ok: false; readonly says: string };

function axisProblem(read: Extract<AxisTextRead, { ok: false }>): string {
  const { axes } = t.draw;
  if (read.why === 'empty') return axes.empty;
  if (read.why === 'too many') return axes.tooMany;
  if (read.why === 'not above 0') return axes.notAbove(read.piece);
  return read.why === 'ambiguous' ? axes.either(read.piece, read.choices) : axes.wrong(read.piece);
}

function readGrid({ along, across, x, y, turn }: Typed): Read {
  const steps = [readAxisText(along), readAxisText(across)];
  const wrong = steps.find((read) => !read.ok);
  if (wrong !== undefined && !wrong.ok) return { ok: false, says: axisProblem(wrong) };
  const places = [x, y, turn].map((text) => readField(text, 'm'));
  const bad = places.find((read) => !read.ok);
  if (bad !== undefined && !bad.ok) return { ok: false, says: t.number.refused(bad) };
  const [alongM = [], acrossM = []] = steps.map((read) => (read.ok ? read.stepsM : []));
  const [atX = 0, atY = 0, turnDeg = 0] = places.map((read) => (read.ok ? read.value : 0));
  return { ok: true, grid: { at: [atX, atY], turnDeg, alongM, acrossM } };
}

/** The grid, or the bays it gives; the sentence where it gives none. */
function baysOf(scene: SceneFile, read: Read): { readonly bays: AxisBays; readonly grid: AxisGrid } | string {
  if (!read.ok) return read.says;
  try {
    return { bays: withBaysFromAxes(scene, read.grid), grid: read.grid };
  } catch {
    return t.draw.axes.tooMany;
  }
}

export function AxesDialog({ onClose }: { readonly onClose: () => void }) {
  const scene = useSceneFile();
  if (scene === null) return null;
  return <AxesForm scene={scene} onClose={onClose} />;
}

function AxesForm({ scene, onClose }: { readonly scene: SceneFile; readonly onClose: () => void }) {
  const edits = usePlanEdits();
  const showTab = usePlan((state) => state.showTab);
  const { min } = boxOf(scene.deck.outline);
  const [typed, setTyped] = useState<Typed>({ along: '', across: '', x: `${min[0]}`, y: `${min[1]}`, turn: '0' });
  const found = useMemo(() => baysOf(scene, readGrid(typed)), [scene, typed]);
  const { axes } = t.draw;
  const started = typed.along !== '' || typed.across !== '';
  const go = async (event: FormEvent) => {
    event.preventDefault();
    if (typeof found === 'string') return;
    const done = await edits.run(
      (now) => withBaysFromAxes(now, found.grid),
      stepOf(
        'add',
        'bay',
        found.bays.selected.map(({ id }) => id),
      ),
    );
    onClose();
    if (done) showTab('bays');
  };
  const field = (key: keyof Typed, label: string, wide: boolean) => (
    <label className="pe-axis-field" data-wide={wide}>
      <span>{label}</span>
      <input
        type="text"
        inputMode={wide ? 'text' : 'decimal'}
        autoComplete="off"
        value={typed[key]}
        onChange={({ target }) => setTyped({ ...typed, [key]: target.value })}
      />
    </label>
  );
  return (
    <PlanDialog title={axes.title} onClose={onClose}>
      <p className="small">{axes.how}</p>
      <form className="pe-axes" onSubmit={(event) => void go(event)}>
        {field('along', `${axes.along} [m]`, true)}
        {field('across', `${axes.across} [m]`, true)}
        {field('x', `${axes.originX} [m]`, false)}
        {field('y', `${axes.originY} [m]`, false)}
        {field('turn', `${axes.turn} [°]`, false)}
        <Preview scene={scene} bays={typeof found === 'string' ? null : found.bays} />
        <div className="pe-axes-says" role="status">
          {typeof found === 'string' ? started && <p data-wrong="true">{found}</p> : <Outcome bays={found.bays} />}
        </div>
        <div className="pe-actions">
          <button type="submit" className="button button-main" disabled={typeof found === 'string'}>
            {axes.go}
          </button>
          <button type="button" className="button" onClick={onClose}>
            {axes.cancel}
          </button>
        </div>
      </form>
    </PlanDialog>
  );
}

function Outcome({ bays }: { readonly bays: AxisBays }) {
  const { axes } = t.draw;
  return (
    <>
      <p>{axes.count(bays.selected.length)}</p>
      {bays.kept.length > 0 && <p>{axes.kept(bays.kept.length)}</p>}
      {bays.lost.length > 0 && <p data-wrong="true">{axes.lost(bays.lost)}</p>}
      {bays.slivers.length > 0 && <p data-wrong="true">{axes.slivers(bays.slivers)}</p>}
    </>
  );
}

function Preview({ scene, bays }: { readonly scene: SceneFile; readonly bays: AxisBays | null }) {
  const { outline } = scene.deck;
  const frame = useMemo(() => planFrame({ scene, originM: outline[0] ?? [0, 0] }, PREVIEW_PX, 8), [scene, outline]);
  return (
    <svg className="pe-preview-plan" role="img" aria-label={t.draw.axes.preview} viewBox={frame.viewBox}>
      <path className="pe-deck" d={planPath(outline, frame)} />
      {bays?.patch.deck?.bays.map((bay) => {
        const { min, max } = boxOf(bay.outline.map((point) => planPoint(point, frame)));
        return (
          <g key={bay.id}>
            <path className="pe-bay" d={planPath(bay.outline, frame)} />
            <text
              className="pe-zone-name"
              x={(min[0] + max[0]) / 2}
              y={(min[1] + max[1]) / 2}
              dy="0.35em"
              style={{ fontSize: fittingLetters([bay.id], { width: max[0] - min[0], height: max[1] - min[1] }, 15) }}
            >
              {bay.id}
            </text>
          </g>
        );
      })}
      <path className="pe-outline" d={planPath(outline, frame)} />
    </svg>
  );
}
