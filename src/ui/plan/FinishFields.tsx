/** How the finished level of a zone is given: by its build-up, one level, a plane with a fall, or levels of its own. */

import { withParts } from '../../edit/part-values.ts';
import { shapeOf } from '../../edit/plan-shapes.ts';
import type { SceneFile, SceneFinish, SceneZone } from '../../model/scene-file.ts';
import { innerPoint } from '../facts/place.ts';
import { t } from '../text/text.ts';
import { QuantityField } from './QuantityField.tsx';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';

const KINDS = ['build-up', 'level', 'plane', 'spots'] as const;
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
            onChange={({ target }) => set(begun(scene, zone, KINDS.find((one) => one === target.value) ?? 'build-up'))}
          >
            {KINDS.filter((one) => one !== 'spots' || kind === 'spots').map((one) => (
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
        {finish?.kind === 'spots' && <p className="small">{t.draw.fieldWords.spotsHow}</p>}
      </div>
    </section>
  );
}

/** To begin with: level where the deck's highest spot and a usual build-up come to, through the middle of the zone. */
function begun(scene: SceneFile, zone: SceneZone, kind: SceneFinish['kind']): SceneFinish {
  const levels = scene.deck.levels?.spots.map(([, , z]) => z) ?? [];
  const levelM = zone.finish?.kind === 'plane' ? zone.finish.at[2] : Math.max(0, ...levels) + 0.5;
  const rounded = Math.round(levelM * 100) / 100;
  if (kind === 'level') return { kind, levelM: zone.finish?.kind === 'level' ? zone.finish.levelM : rounded };
  if (kind !== 'plane') return { kind: 'build-up' };
  const shape = shapeOf(scene, { part: 'zone', id: zone.id });
  const [x, y] = (shape && innerPoint(zone.outline, zone.holes)) ?? zone.outline[0] ?? [0, 0];
  const near = (value: number) => Math.round(value * 100) / 100;
  return { kind, at: [near(x), near(y), zone.finish?.kind === 'level' ? zone.finish.levelM : rounded], fallPercent: 2, towardsDeg: 180 };
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
