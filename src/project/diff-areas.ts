/** Areas that an outline gains and loses, exact. */

import { commonAreaM2 } from '../core/geometry/common-area.ts';
import { regionAreaM2 } from '../core/geometry/ring.ts';
import type { Region } from '../model/deck-input.ts';
import type { PolygonM } from '../model/scene-file.ts';
import { localOrigin, localRegion } from './resolve-shapes.ts';

interface Outlined {
  readonly outline?: unknown;
  readonly holes?: unknown;
}

/** Area of a shape that came or went; nothing for what has no outline. */
export function changedArea(a: Outlined | null, b: Outlined | null): { area?: { addedM2: number; removedM2: number } } {
  const some = a?.outline ?? b?.outline;
  if (!some) return {};
  const originM = localOrigin(some as PolygonM);
  const region = (of: Outlined | null): Region | null =>
    of?.outline ? localRegion(of.outline as PolygonM, of.holes as readonly PolygonM[] | undefined, originM) : null;
  const [was, is] = [region(a), region(b)];
  const areaOf = (of: Region | null) => (of ? regionAreaM2(of) : 0);
  const common = was && is ? commonAreaM2([was, is]) : 0;
  return { area: { addedM2: rest(areaOf(is), common), removedM2: rest(areaOf(was), common) } };
}

/** Rounding of a difference must not show as area. */
function rest(whole: number, common: number): number {
  return whole - common < 1e-9 * Math.max(1, whole) ? 0 : whole - common;
}
