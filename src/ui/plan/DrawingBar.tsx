/** While something is drawn: what to do next, finish and back, what the new part needs, and points typed instead of pointed at. */

import { useShallow } from 'zustand/react/shallow';
import { needsOf } from '../../edit/new-part.ts';
import type { EditPart } from '../../model/history.ts';
import { DRAWN_AS } from '../facts/drawn-kinds.ts';
import { fieldsOf } from '../facts/plan-fields.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { buildUpFor } from './begin-build-up.ts';
import { PartFields } from './PartFields.tsx';
import { usePlan } from './plan-context.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { TypedPoint } from './TypedPoint.tsx';
import { useSceneFile } from './use-drawn-lists.ts';
import { formOf, LEAST_POINTS, usePlanDrawing } from './use-plan-drawing.ts';

export function DrawingBar() {
  const { tool, kind, rectangle, points, choose } = usePlan(
    useShallow(({ tool, kind, rectangle, points, choose }) => ({ tool, kind, rectangle, points, choose })),
  );
  const [one] = useView((state) => state.selected);
  const drawing = usePlanDrawing();
  if (tool === 'scale') return <ScaleBar />;
  const form = formOf(tool, kind);
  const ready = points.length >= LEAST_POINTS[form];
  const title = tool === 'split' ? t.draw.drawing.splitTitle(one?.id ?? '') : t.draw.drawing.title(kind);
  return (
    <section className="pe-sheets pe-bar-drawing" aria-label={title}>
      <h3 className="panel-title">{title}</h3>
      <p aria-live="polite">{hint(tool, form, { rectangle, count: points.length })}</p>
      <div className="pe-actions">
        {form !== 'point' && !(rectangle && form === 'area') && (
          <button type="button" className="button button-main" disabled={!ready} onClick={drawing.finish}>
            {t.draw.drawing.finish}
          </button>
        )}
        {form !== 'point' && (
          <button type="button" className="button" disabled={points.length === 0} onClick={drawing.back}>
            {t.draw.drawing.back}
          </button>
        )}
        <button type="button" className="button" onClick={choose}>
          {t.draw.drawing.cancel}
        </button>
      </div>
      {tool === 'draw' && <Needed />}
      <TypedPoint drawing={drawing} />
    </section>
  );
}

function hint(
  tool: string,
  form: 'area' | 'line' | 'point',
  { rectangle, count }: { readonly rectangle: boolean; readonly count: number },
): string {
  const { drawing } = t.draw;
  if (tool === 'split') return drawing.splitFirst;
  if (form === 'point') return drawing.place;
  if (form === 'area' && rectangle) return drawing.rectangle;
  if (count === 0) return drawing.firstPoint;
  return form === 'area' && count >= LEAST_POINTS.area ? drawing.closes : drawing.nextPoint;
}

/** What only a person can know of the new part, typed before it is drawn and kept for the next one. */
function Needed() {
  const kind = usePlan((state) => state.kind);
  const given = usePlan((state) => state.given[kind]);
  const give = usePlan((state) => state.give);
  const scene = useSceneFile();
  const { part, kind: within } = DRAWN_AS[kind];
  const needs = needsOf(part, within);
  const fields = fieldsOf(part, within).filter(({ path }) => path !== 'kind' || part === 'access point');
  const asked = fields.filter(
    ({ path }) => needs.some((key) => path === key || path.startsWith(`${key}.`)) || (kind === 'zone' && path === 'buildup'),
  );
  if (scene === null || asked.length === 0 || kind === 'hole') return null;
  const { buildup } = (given ?? {}) as { readonly buildup?: string };
  return (
    <div className="pe-needed">
      <PartFields
        part={part as EditPart}
        fields={asked}
        entries={[{ ...given, ...(kind === 'zone' && { buildup: buildUpFor(scene, buildup) }) }]}
        onChange={(change) => give(kind, change(given ?? {}))}
      />
    </div>
  );
}
