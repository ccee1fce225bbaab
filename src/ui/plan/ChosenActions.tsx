/** What can be done with what is chosen: split, merge, parallel outline, cut, move by numbers, duplicate, delete. */

import { type FormEvent, useState } from 'react';
import { cutAtEdge, offsetPart, subtracted } from '../../edit/fit-areas.ts';
import { type MergedParts, merged } from '../../edit/merge.ts';
import { duplicated, moved, shift } from '../../edit/move-parts.ts';
import { withParts } from '../../edit/part-values.ts';
import { shapesOf } from '../../edit/plan-shapes.ts';
import { patched, patchOf } from '../../edit/point-lists.ts';
import { removed } from '../../edit/references.ts';
import { isRefused, type Refused } from '../../edit/refusal.ts';
import type { EditAct } from '../../model/history.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { gridStepM } from '../facts/plan-surface.ts';
import { readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';
import { madeWithBuildUp } from './begin-build-up.ts';
import { usePlan, usePlanStore } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';
import { chosenBy, type Made, stepOfParts, usePlanEdits } from './use-plan-edits.ts';
import { useZoneBuildUp, ZoneBuildUp } from './ZoneBuildUp.tsx';

const AREAS: ReadonlySet<string> = new Set(['zone', 'bay']);
const CUTTABLE: ReadonlySet<string> = new Set(['zone', 'bay', 'object', 'set-up area', 'stockpile']);
/** A copy lies this many steps of the grid beside its original. */
const COPY_STEPS = 4;
const COPY_GRID_PX = 12;

export function ChosenActions({ selected }: { readonly selected: readonly Selected[] }) {
  const { view } = useStores();
  const plan = usePlanStore();
  const edits = usePlanEdits();
  const scene = useSceneFile();
  const use = usePlan((state) => state.use);
  const drawHole = usePlan((state) => state.draw);
  const [open, setOpen] = useState<'offset' | 'move' | null>(null);
  const [one] = selected;
  if (one === undefined) return null;
  const many = selected.length > 1;
  const isArea = AREAS.has(one.part);
  const allAreas = scene !== null && shapesOf(scene, selected).every(({ form }) => form === 'area');
  const sameKind = selected.every(({ part }) => part === one.part);
  const after = (act: EditAct) => (made: Made) => stepOfParts(act, made.selected === undefined ? selected : chosenBy(made));
  const merge = () => {
    let told: MergedParts | null = null;
    const make = (scene: SceneFile) => {
      const made = merged(scene, selected);
      told = isRefused(made) ? null : made;
      return made;
    };
    void edits.run(make, after('merge')).then((done) => {
      const says = done && told ? saidOfMerger(told) : '';
      if (says !== '') plan.getState().tell({ issues: [], says, at: null, note: true });
    });
  };
  const subtract = () => void edits.run((scene) => subtracted(scene, one, selected.slice(1)), after('change'));
  const cut = () => void edits.run((scene) => cutAtEdge(scene, one), after('change'));
  const copy = () => {
    const { surface } = plan.getState();
    const stepM = surface === null ? 1 : gridStepM(surface, COPY_GRID_PX) * COPY_STEPS;
    void edits.run((scene) => duplicated(scene, selected, shift(stepM, -stepM)), after('copy'));
  };
  const remove = () =>
    void edits
      .run((scene) => ({ patch: removed(scene, selected) }), stepOfParts('remove', selected))
      .then((done) => {
        if (done) view.getState().select([]);
      });
  const { chosen } = t.draw;
  const isDeck = one.part === 'outline';
  return (
    <section aria-label={chosen.actions}>
      <div className="pe-actions">
        {isArea && !many && <Action says={chosen.split} onClick={() => use('split')} />}
        {isArea && many && sameKind && <Action says={chosen.merge} onClick={merge} />}
        {isArea && many && allAreas && <Action says={chosen.subtract} onClick={subtract} />}
        {(isArea || isDeck) && !many && (
          <Action says={t.draw.chosen.offset} pressed={open === 'offset'} onClick={() => setOpen(open === 'offset' ? null : 'offset')} />
        )}
        {CUTTABLE.has(one.part) && isArea && !many && <Action says={chosen.cutAtEdge} onClick={cut} />}
        {one.part === 'zone' && !many && <Action says={chosen.drawHole} onClick={() => drawHole('hole')} />}
        {!isDeck && <Action says={chosen.move} pressed={open === 'move'} onClick={() => setOpen(open === 'move' ? null : 'move')} />}
        {!isDeck && <Action says={chosen.duplicate} onClick={copy} />}
        {!isDeck && <Action says={chosen.remove} onClick={remove} />}
      </div>
      {open === 'offset' && <OffsetForm one={one} onDone={() => setOpen(null)} />}
      {open === 'move' && <MoveForm selected={selected} />}
    </section>
  );
}

/** Less than this comes of adding up areas [m²]. */
const ROUNDING_M2 = 1e-7;

/** What of merged parts is not as a person would take for granted; empty for nothing. */
function saidOfMerger({ differing, changeM2 }: MergedParts): string {
  return [
    ...(differing.length > 0 ? [t.draw.chosen.differing(differing.map((key) => t.draw.field(key)))] : []),
    ...(Math.abs(changeM2) > ROUNDING_M2 ? [t.draw.gaps.merged(changeM2)] : []),
  ].join(' ');
}

function Action({ says, pressed, onClick }: { readonly says: string; readonly pressed?: boolean; readonly onClick: () => void }) {
  return (
    <button type="button" className="button" aria-expanded={pressed} onClick={onClick}>
      {says}
    </button>
  );
}

/** Reads the fields of a form as lengths; null, and the reason told, where one is not read. */
function useLengths(count: number) {
  const [texts, setTexts] = useState<readonly string[]>(Array.from({ length: count }, () => ''));
  const [problem, setProblem] = useState('');
  const field = (index: number, label: string) => (
    <label className="pe-typed-field">
      <span>{label}</span>
      <input
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={texts[index] ?? ''}
        onChange={({ target }) => setTexts(texts.map((text, i) => (i === index ? target.value : text)))}
      />
    </label>
  );
  const read = (): readonly number[] | null => {
    const reads = texts.map((text) => readField(text.trim() === '' && count > 1 ? '0' : text, 'm'));
    const bad = reads.find((one) => !one.ok);
    setProblem(bad !== undefined && !bad.ok ? t.number.refused(bad) : '');
    return bad === undefined ? reads.flatMap((one) => (one.ok ? [one.value] : [])) : null;
  };
  return { field, read, problem, clear: () => setTexts(texts.map(() => '')) };
}

function MoveForm({ selected }: { readonly selected: readonly Selected[] }) {
  const edits = usePlanEdits();
  const { field, read, problem } = useLengths(2);
  const go = (event: FormEvent) => {
    event.preventDefault();
    const by = read();
    if (by === null) return;
    void edits.run((scene) => ({ patch: moved(scene, selected, shift(by[0] ?? 0, by[1] ?? 0)) }), stepOfParts('move', selected));
  };
  return (
    <form className="pe-small-form" onSubmit={go}>
      {field(0, t.draw.chosen.moveX)}
      {field(1, t.draw.chosen.moveY)}
      <button type="submit" className="button button-main">
        {t.draw.chosen.moveGo}
      </button>
      <span className="pe-typed-problem" role="alert">
        {problem}
      </span>
    </form>
  );
}

/** New zones get a build-up. */
function builtUp(scene: SceneFile, made: Made | Refused, buildup: string): Made | Refused {
  if (isRefused(made)) return made;
  const next = patched(scene, made.patch);
  return {
    ...made,
    patch: patchOf(
      scene,
      patched(
        next,
        withParts(next, chosenBy(made), (zone) => ({ ...zone, buildup })),
      ),
    ),
  };
}

const MAKES = ['same', 'new', 'strip'] as const;

function OffsetForm({ one, onDone }: { readonly one: Selected; readonly onDone: () => void }) {
  const edits = usePlanEdits();
  const [make, setMake] = useState<(typeof MAKES)[number]>(one.part === 'outline' ? 'strip' : 'same');
  const [inwards, setInwards] = useState(true);
  const { field, read, problem } = useLengths(1);
  const { offset } = t.draw;
  // A strip along the deck's edge is a zone of its own; that of a zone is built up like it.
  const isDeck = one.part === 'outline';
  const buildUp = useZoneBuildUp();
  const makes = isDeck ? MAKES.filter((each) => each !== 'same') : MAKES;
  const go = (event: FormEvent) => {
    event.preventDefault();
    const [distanceM] = read() ?? [];
    if (distanceM === undefined) return;
    void edits
      .run(
        (scene) => {
          const offset = (now: SceneFile) => offsetPart(now, one, inwards ? -distanceM : distanceM, make);
          return isDeck ? madeWithBuildUp(scene, buildUp, (now, buildup) => builtUp(now, offset(now), buildup)) : offset(scene);
        },
        (made) => stepOfParts(make === 'same' ? 'change' : 'add', chosenBy(made)),
      )
      .then((done) => done && onDone());
  };
  return (
    <form className="pe-small-form" onSubmit={go} aria-label={offset.title}>
      {isDeck && <ZoneBuildUp />}
      {field(0, `${offset.distance} [m]`)}
      <select aria-label={offset.distance} value={inwards ? 'in' : 'out'} onChange={({ target }) => setInwards(target.value === 'in')}>
        <option value="in">{offset.inwards}</option>
        <option value="out">{offset.outwards}</option>
      </select>
      <select
        aria-label={offset.make}
        value={make}
        onChange={({ target }) => setMake(MAKES.find((each) => each === target.value) ?? 'same')}
      >
        {makes.map((each) => (
          <option key={each} value={each}>
            {offset[each]}
          </option>
        ))}
      </select>
      <button type="submit" className="button button-main">
        {offset.go}
      </button>
      <span className="pe-typed-problem" role="alert">
        {problem}
      </span>
    </form>
  );
}
