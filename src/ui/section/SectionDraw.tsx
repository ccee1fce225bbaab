/** The line of a new section: points tapped on the model or the plan, or typed. */

import type { PointM } from '../../model/scene-file.ts';
import { isLine } from '../facts/section-line.ts';
import { Icon } from '../parts/Icon.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { t } from '../text/text.ts';
import { useScene, useView } from '../use-stores.ts';
import { SectionPlan } from './SectionPlan.tsx';
import { useSection } from './use-section.ts';

/** As the scene file bounds its coordinates [m]. */
const FARTHEST_M = 1e7;
const LEAST_POINTS = 2;

export function SectionDraw() {
  const points = useView((state) => state.sectionPoints) ?? [];
  const setPoints = useView((state) => state.drawSection);
  const { show } = useSection();
  const ready = isLine(points);
  return (
    <>
      <header className="section-bar">
        <h2 className="block-title">{t.section.drawTitle}</h2>
        <button type="button" className="button button-main" disabled={!ready} onClick={() => show(points)}>
          {t.section.done}
        </button>
        <button type="button" className="button" disabled={points.length < LEAST_POINTS} onClick={() => setPoints([...points].reverse())}>
          {t.section.turn}
        </button>
        <span className="section-end">
          <button type="button" className="button" onClick={() => setPoints(null)}>
            {t.section.cancel}
          </button>
        </span>
      </header>
      <p className="section-says small">
        {t.section.drawHow} {points.length > 1 && !ready && t.section.needTwo}
      </p>
      <div className="section-room section-draw">
        <SectionPlan points={points} onTap={(point) => setPoints([...points, point])} />
        <PointFields points={points} onChange={setPoints} />
      </div>
    </>
  );
}

interface FieldsProps {
  readonly points: readonly PointM[];
  readonly onChange: (points: readonly PointM[]) => void;
}

function PointFields({ points, onChange }: FieldsProps) {
  const outline = useScene((state) => state.snapshot?.scene.deck.outline);
  const set = (index: number, axis: 0 | 1, value: number) =>
    onChange(points.map((point, i): PointM => (i !== index ? point : axis === 0 ? [value, point[1]] : [point[0], value])));
  const add = () => onChange([...points, points.at(-1) ?? outline?.[0] ?? [0, 0]]);
  return (
    <div className="section-points">
      <ol>
        {points.map(([x, y], i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two points may be at one place
          <li key={i}>
            <span>{t.section.point(i + 1)}</span>
            {([x, y] as const).map((value, axis) => (
              <NumberField
                key={axis === 0 ? 'x' : 'y'}
                label={axis === 0 ? t.section.x(i + 1) : t.section.y(i + 1)}
                value={value}
                unit="m"
                decimals={2}
                min={-FARTHEST_M}
                max={FARTHEST_M}
                onCommit={(to) => set(i, axis as 0 | 1, to)}
              />
            ))}
            <button
              type="button"
              className="icon-button"
              aria-label={t.section.removePoint(i + 1)}
              onClick={() => onChange(points.filter((_, k) => k !== i))}
            >
              <Icon name="close" />
            </button>
          </li>
        ))}
      </ol>
      <button type="button" className="button" onClick={add}>
        <Icon name="plus" />
        {t.section.addPoint}
      </button>
    </div>
  );
}
