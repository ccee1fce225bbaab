/** One retaining edge: thrust, pressure under its base and ratios, for both cases of live load, and what is found. */

import type { ReportWallCase } from '../../model/report.ts';
import { inMiddleThird, type ListedWall, middleOf } from '../facts/site-list.ts';
import { numberText } from '../format.ts';
import { t } from '../text/text.ts';
import { useGo } from '../use-go.ts';
import { useScene } from '../use-stores.ts';

/** Seen with at least this much around it [m]. */
const LEAST_M = 6;

interface Row {
  readonly name: string;
  readonly of: (one: ReportWallCase) => string;
  readonly wrong?: (one: ReportWallCase) => boolean;
}

export function WallFacts({ wall }: { readonly wall: ListedWall }) {
  const names = useScene((state) => state.snapshot?.materialNames);
  const go = useGo();
  const middle = middleOf(wall.line);
  const stands = wall.standsOn === null ? null : (names?.get(wall.standsOn) ?? wall.standsOn);
  const cases = [wall.bare, wall.loaded] as const;
  return (
    <div className="wall" data-worst={wall.worst ?? 'none'}>
      <button
        type="button"
        className="row-button"
        disabled={middle === null}
        aria-label={t.walls.pick(wall.id)}
        onClick={() => middle && go.toPoint(middle.at, Math.max(LEAST_M, middle.lengthM))}
      >
        {wall.id}
      </button>{' '}
      <strong className="wall-verdict">{wall.worst === null ? t.walls.fine : t.walls.found[wall.worst]}</strong>
      <p>{t.walls.thrust(wall.thrustKNm, wall.surchargeKNm2)}</p>
      <p>{t.walls.stands(stands, wall.permittedKPa)}</p>
      <table className="numbers edges">
        <caption className="unseen">{t.walls.caption(wall.id)}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{t.walls.bare}</th>
            <th scope="col">{t.walls.loaded}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(wall).map(({ name, of, wrong }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cases.map((one, i) => (
                <td key={i === 0 ? 'bare' : 'loaded'} data-wrong={wrong?.(one) ?? false}>
                  {of(one)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {wall.findings.length > 0 && (
        <ul>
          {wall.findings.map(({ says }) => (
            <li key={says} className="small">
              {says}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

type Pressure = NonNullable<ReportWallCase['pressure']>;

function rowsOf(wall: ListedWall): Row[] {
  const pressed = (name: string, of: (pressure: Pressure) => string): Row => ({
    name,
    of: ({ pressure }) => (pressure ? of(pressure) : t.walls.falls),
    wrong: ({ pressure }) => pressure === null,
  });
  const { permittedKPa } = wall;
  return [
    { name: t.walls.vertical, of: (one) => numberText(one.verticalKNm, 2) },
    {
      name: t.walls.eccentricity(wall.middleThirdM),
      of: (one) => t.walls.metres(one.eccentricityM),
      wrong: (one) => !inMiddleThird(one, wall),
    },
    {
      ...pressed(t.walls.most, ({ maxKPa }) => t.walls.pressure(maxKPa)),
      wrong: ({ pressure }) => pressure === null || (permittedKPa !== null && pressure.maxKPa > permittedKPa),
    },
    pressed(t.walls.least, ({ minKPa }) => t.walls.pressure(minKPa)),
    pressed(t.walls.contact, ({ contactM }) => t.walls.metres(contactM)),
    pressed(t.walls.even, ({ effectiveKPa }) => t.walls.pressure(effectiveKPa)),
    { name: t.walls.sliding, of: (one) => t.walls.ratio(one.slidingRatio), wrong: (one) => one.slidingRatio < 1 },
    { name: t.walls.overturning, of: (one) => t.walls.ratio(one.overturningRatio), wrong: (one) => one.overturningRatio < 1 },
  ];
}
