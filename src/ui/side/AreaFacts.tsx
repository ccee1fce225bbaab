/** One set-up or movement area: what is drawn, what the rule asks for, what stands in it, what it presses. */

import type { ListedArea } from '../facts/site-list.ts';
import { mmText } from '../format.ts';
import { type Fact, FactTable } from '../parts/FactTable.tsx';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';

/** Seen with this much around it, in its own lengths. */
const AROUND = 1.5;
/** Less of an area than this beyond the deck is rounding [m²]. */
const ROUNDING_M2 = 0.01;

export function AreaFacts({ area }: { readonly area: ListedArea }) {
  const go = useGo();
  const { id, kind, name, outline, lengthM } = area;
  const sum = (axis: 0 | 1) => outline.reduce((all, point) => all + point[axis], 0) / outline.length;
  return (
    <div>
      <button
        type="button"
        className="row-button"
        disabled={outline.length === 0}
        aria-label={t.areas.pick(id)}
        onClick={() => go.toPoint([sum(0), sum(1)], AROUND * lengthM)}
      >
        {id}
      </button>
      <span className="small block">{[t.areas.kind[kind], name].filter((part) => part !== '').join(', ')}</span>
      <FactTable facts={[...sizeFacts(area), ...groundFacts(area), ...loadFacts(area)]} />
    </div>
  );
}

function sizeFacts({ lengthM, widthM, insideWidthM, requiredM, small, areaM2, onDeckM2 }: ListedArea): Fact[] {
  const facts: Fact[] = [{ name: t.areas.size, value: t.areas.by(widthM, lengthM) }];
  if (requiredM) {
    facts.push({ name: t.areas.required, value: t.areas.by(requiredM.widthM, requiredM.lengthM) });
    const room = insideWidthM ? t.areas.by(insideWidthM, requiredM.lengthM) : t.areas.noRoom(requiredM.lengthM);
    if (insideWidthM !== null) facts.push({ name: t.areas.room, value: room, wrong: small });
  }
  if (areaM2 - onDeckM2 > ROUNDING_M2) facts.push({ name: t.areas.onDeck, value: t.areas.partOf(onDeckM2, areaM2), wrong: true });
  return facts;
}

function groundFacts({ steepestPercent, stepMm, buildingM, standing, faults }: ListedArea): Fact[] {
  const steepest = steepestPercent === null ? t.lanes.unknown : t.lanes.percent(steepestPercent);
  return [
    { name: t.lanes.steepest, value: steepest, wrong: faults.gradient },
    { name: t.lanes.step, value: stepMm === null ? t.lanes.noStep : mmText(stepMm), wrong: faults.step },
    ...(buildingM === null ? [] : [{ name: t.areas.building, value: t.lanes.metres(buildingM) }]),
    ...(standing.length === 0 ? [] : [{ name: t.areas.standing, value: standing.join(', '), wrong: true }]),
  ];
}

function loadFacts({ wheelsMembraneKPa, supportMembraneKPa, bays }: ListedArea): Fact[] {
  const wrong = bays.flatMap(({ bay, vehiclePermitted, kNm2, permittedKNm2 }) => {
    if (vehiclePermitted === false) return [t.areas.forbidden(bay)];
    return permittedKNm2 !== null && kNm2 > permittedKNm2 ? [t.areas.overBay(bay, kNm2, permittedKNm2)] : [];
  });
  return [
    ...(wheelsMembraneKPa === null ? [] : [{ name: t.areas.wheels, value: t.areas.pressure(wheelsMembraneKPa) }]),
    ...(supportMembraneKPa === null ? [] : [{ name: t.areas.support, value: t.areas.pressure(supportMembraneKPa) }]),
    {
      name: t.areas.bays,
      value: wrong.length > 0 ? wrong.join('; ') : bays.map(({ bay }) => bay).join(', ') || '–',
      wrong: wrong.length > 0,
    },
  ];
}
