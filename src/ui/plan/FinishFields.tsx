/** How the finished level of a zone is given: by its build-up, one level, a plane with a fall, or levels of its own. */

import { begunFinish } from '../../edit/finishes.ts';
import { withParts } from '../../edit/part-values.ts';
import { finishNet } from '../../edit/point-lists.ts';
import type { SceneFile, SceneFinish, SceneZone } from '../../model/scene-file.ts';
import { levelText } from '../format.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';
import { partTitle } from './part-title.ts';
import { usePlan } from './plan-context.ts';
import { QuantityField } from './QuantityField.tsx';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

const KINDS = ['build-up', 'level', 'plane', 'spots'] as const;
/** More are chosen in the plan or the list of parts. */
const MOST_SPOTS = 24;
const LEVEL = { unit: 'm', decimals: 3, min: -10_000, max: 10_000 } as const;
const PLACE = { unit: 'm', decimals: 3, min: -1e7, max: 1e7 } as const;

export function FinishFields({ scene, zone: id }: { readonly scene: SceneFile; readonly zone: string }) {
  const edits = usePlanEdits();
  const zone = scene.zones.find((one) => one.id === id);
  if (zone === undefined) return null;
  const { finish } = zone;
  const kind = finish?.kind ?? 'build-up';
  const set = (next: SceneFinish) =>
    void edits.run(
      (now) => ({
        patch: withParts(now, [{ part: 'zone', id }], (entry) => {
          const { finish: _, ...rest } = entry as SceneZone;
          return next.kind === 'build-up' ? rest : { ...rest, finish: next };
        }),
      }),
      stepOf('change', 'zone', [id]),
    );
  return (
    <section>
      <div className="pe-fields">
        <div className="pe-field" data-type="choice">
          <span className="pe-field-name">{t.draw.fieldWords.finish}</span>
          <select
            aria-label={t.draw.fieldWords.finish}
            value={kind}
            onChange={({ target }) => set(begunFinish(scene, zone, KINDS.find((one) => one === target.value) ?? 'build-up'))}
          >
            {KINDS.map((one) => (
              <option key={one} value={one}>
                {t.draw.choice(one)}
              </option>
            ))}
          </select>
        </div>
        {finish?.kind === 'level' && (
          <Row label={t.draw.field('levelM')}>
            <QuantityField
              label={t.draw.field('levelM')}
              value={finish.levelM}
              {...LEVEL}
              onCommit={(levelM = 0) => set({ ...finish, levelM })}
            />
          </Row>
        )}
        {finish?.kind === 'plane' && <PlaneFields finish={finish} onSet={set} />}
      </div>
      {finish?.kind === 'spots' && <SpotList scene={scene} zone={id} finish={finish} />}
    </section>
  );
}

/** Each level is chosen here as in the plan; further ones are drawn, or typed, as any other part. */
function SpotList({ scene, zone, finish }: { readonly scene: SceneFile; readonly zone: string; readonly finish: Spots }) {
  const { view } = useStores();
  const draw = usePlan((state) => state.draw);
  const { spotsHow, spotsDraw, spotsOne } = t.draw.fieldWords;
  const ids = finishNet(zone);
  const all = [
    ...finish.spots.map(([, , levelM], i) => ({ id: ids.spot(i), level: levelText(levelM) })),
    ...(finish.breaklines ?? []).map((line, i) => ({ id: ids.line(i), level: line.map(([, , levelM]) => levelText(levelM)).join(' – ') })),
  ];
  return (
    <>
      <p className="small">{spotsHow}</p>
      <div className="pe-actions">
        {all.slice(0, MOST_SPOTS).map(({ id, level }) => (
          <button key={id} type="button" className="button" onClick={() => view.getState().select([{ part: 'finish', id }])}>
            {spotsOne(partTitle(scene, { part: 'finish', id }), level)}
          </button>
        ))}
        <button type="button" className="button" onClick={() => draw('finish level')}>
          <Icon name="pencil" />
          {spotsDraw}
        </button>
      </div>
    </>
  );
}

function Row({ label, children }: { readonly label: string; readonly children: React.ReactNode }) {
  return (
    <div className="pe-field">
      <span className="pe-field-name">{label}</span>
      {children}
    </div>
  );
}

type Plane = Extract<SceneFinish, { kind: 'plane' }>;
type Spots = Extract<SceneFinish, { kind: 'spots' }>;

function PlaneFields({ finish, onSet }: { readonly finish: Plane; readonly onSet: (finish: SceneFinish) => void }) {
  const { at, fallPercent, towardsDeg } = finish;
  const { planeAt, planeLevel, fall, towards } = t.draw.fieldWords;
  const put =
    (axis: 0 | 1 | 2) =>
    (to = 0) =>
      onSet({ ...finish, at: [axis === 0 ? to : at[0], axis === 1 ? to : at[1], axis === 2 ? to : at[2]] });
  return (
    <>
      <Row label={planeAt}>
        <span className="pe-size">
          <QuantityField label={`${planeAt}: x`} value={at[0]} {...PLACE} onCommit={put(0)} />
          <QuantityField label={`${planeAt}: y`} value={at[1]} {...PLACE} onCommit={put(1)} />
        </span>
      </Row>
      <Row label={planeLevel}>
        <QuantityField label={planeLevel} value={at[2]} {...LEVEL} onCommit={put(2)} />
      </Row>
      <Row label={fall}>
        <QuantityField
          label={fall}
          value={fallPercent}
          unit="%"
          decimals={2}
          min={0}
          max={100}
          onCommit={(to = 0) => onSet({ ...finish, fallPercent: to })}
        />
      </Row>
      <Row label={towards}>
        <QuantityField
          label={towards}
          value={towardsDeg}
          unit="°"
          decimals={1}
          min={-360}
          max={360}
          onCommit={(to = 0) => onSet({ ...finish, towardsDeg: to })}
        />
      </Row>
    </>
  );
}
