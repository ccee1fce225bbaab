/** What is chosen: its name, what it says, its points and what can be done with it; the deck itself where nothing is. */

import { partIn, withParts } from '../../edit/part-values.ts';
import { shapeOf, shapesOf } from '../../edit/plan-shapes.ts';
import { patched, patchOf } from '../../edit/point-lists.ts';
import { renamed } from '../../edit/references.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { PLAN_LAYERS, type PlanLayer } from '../../store/plan-draw.ts';
import { innerPoint } from '../facts/place.ts';
import { flatPoint } from '../facts/plan-drag.ts';
import { fieldsOf } from '../facts/plan-fields.ts';
import { lineLengthM, ringAreaM2 } from '../facts/plan-hit.ts';
import { Icon } from '../parts/Icon.tsx';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { TEMPLATE_MARK, withChosenBuildUp } from './begin-build-up.ts';
import { ChosenActions } from './ChosenActions.tsx';
import { DeckFields } from './DeckFields.tsx';
import { FinishFields } from './FinishFields.tsx';
import { PartFields } from './PartFields.tsx';
import { PointsTable } from './PointsTable.tsx';
import { isNameless, partTitle } from './part-title.ts';
import { usePlan } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

export function ChosenSheet() {
  const scene = useSceneFile();
  const selected = useView((state) => state.selected);
  const boxing = usePlan((state) => state.tool === 'box');
  if (scene === null) return null;
  const known = shapesOf(scene, selected).map(({ part, id }): Selected => ({ part, id }));
  const [first] = known;
  if (first === undefined) {
    return (
      <>
        <p className="small">{boxing ? t.draw.box.how : t.draw.chosen.noneHow}</p>
        <DeckFields scene={scene} />
      </>
    );
  }
  return (
    <>
      <ChosenHead scene={scene} selected={known} />
      {first.part === 'outline' ? <DeckFields scene={scene} /> : <Values scene={scene} selected={known} />}
      {known.length === 1 && first.part === 'zone' && <FinishFields scene={scene} zone={first.id} />}
      <ChosenActions selected={known} />
      {known.length === 1 && <PointsTable scene={scene} one={first} />}
    </>
  );
}

interface Props {
  readonly scene: SceneFile;
  readonly selected: readonly Selected[];
}

function ChosenHead({ scene, selected }: Props) {
  const lookAt = usePlan((state) => state.lookAt);
  const edits = usePlanEdits();
  const [one] = selected;
  if (one === undefined) return null;
  const shapes = shapesOf(scene, selected);
  const [shape] = shapes;
  if (shape === undefined) return null;
  const points = shape.points.map(flatPoint);
  const areaM2 = shapes.reduce((sum, { form, points: ring, holes = [] }) => {
    return form === 'area' ? sum + ringAreaM2(ring) - holes.reduce((cut, hole) => cut + ringAreaM2(hole), 0) : sum;
  }, 0);
  const at = (shape.form === 'area' ? innerPoint(points, shape.holes) : points[Math.floor(points.length / 2)]) ?? 'all';
  const rename = (to: string) =>
    void edits.run(
      (now) => ({ patch: renamed(now, one.part, one.id, to), selected: { part: one.part, id: to } }),
      stepOf('rename', one.part, [to]),
    );
  return (
    <header className="pe-chosen-head">
      <h3 className="panel-title">{selected.length === 1 ? partTitle(scene, one) : t.draw.chosen.several(selected.length)}</h3>
      <p className="small">
        {/* Bays and zones lie over one another: their areas together say nothing. */}
        {areaM2 > 0 && shapes.every(({ part }) => part === one.part) && t.draw.chosen.area(areaM2)}
        {shapes.length === 1 && shape.form === 'line' && t.draw.chosen.length(lineLengthM(points))}
      </p>
      {selected.length === 1 && !isNameless(one.part) && (
        <div className="pe-field">
          <span className="pe-field-name">{t.draw.chosen.id}</span>
          <TextField label={t.draw.chosen.id} value={one.id} required onCommit={rename} />
        </div>
      )}
      <ByKind selected={selected} />
      <button type="button" className="icon-button" aria-label={t.draw.chosen.zoom} title={t.draw.chosen.zoom} onClick={() => lookAt(at)}>
        <Icon name="only" />
      </button>
    </header>
  );
}

/** Several parts of different kinds: which of them to keep. */
function ByKind({ selected }: { readonly selected: readonly Selected[] }) {
  const { view } = useStores();
  const kinds = PLAN_LAYERS.filter((layer) => selected.some(({ part }) => part === layer));
  if (kinds.length < 2) return null;
  const counted = (kind: PlanLayer) => t.draw.parts.count(t.draw.layerNames[kind], selected.filter(({ part }) => part === kind).length);
  return (
    <fieldset className="pe-kinds">
      <legend className="small">{t.draw.box.only}</legend>
      {kinds.map((kind) => (
        <button
          key={kind}
          type="button"
          className="button"
          onClick={() => view.getState().select(selected.filter(({ part }) => part === kind))}
        >
          {counted(kind)}
        </button>
      ))}
    </fieldset>
  );
}

/** Several parts of one kind have their fields in common; those of different kinds have none. */
function Values({ scene, selected }: Props) {
  const edits = usePlanEdits();
  const [one] = selected;
  if (one === undefined) return null;
  const kinds = new Set(shapesOf(scene, selected).map(({ part, kind }) => `${part} ${part === 'object' ? kind : ''}`));
  if (kinds.size > 1) return null;
  const fields = fieldsOf(one.part, shapeOf(scene, one)?.kind).filter(({ path }) => selected.length === 1 || path !== 'name');
  if (fields.length === 0) return null;
  const entries = selected.flatMap((ref) => partIn(scene, ref) ?? []);
  const change = (make: (entry: object) => object) =>
    void edits.run((now) => ({ patch: changedValues(now, selected, make) }), stepOf('change', one.part, edits.names(selected)));
  return (
    <section>
      <h4 className="block-title">{t.draw.chosen.values}</h4>
      <PartFields part={one.part} fields={fields} entries={entries} onChange={change} />
    </section>
  );
}

/** A build-up that is still a template is made first. */
function changedValues(scene: SceneFile, selected: readonly Selected[], make: (entry: object) => object) {
  let now = scene;
  const next = withParts(scene, selected, (entry) => {
    const made = make(entry) as { readonly buildup?: string };
    if (made.buildup?.startsWith(TEMPLATE_MARK) !== true) return made;
    const begun = now === scene ? withChosenBuildUp(scene, made.buildup) : { scene: now, id: now.buildups.at(-1)?.id ?? '' };
    now = begun.scene;
    return { ...made, buildup: begun.id };
  });
  return now === scene ? next : patchOf(scene, patched(scene, { ...next, buildups: now.buildups }));
}
