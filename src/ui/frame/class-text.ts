/** Limits of a map's classes in words. */

import type { CellMap } from '../../model/maps.ts';
import { type MapClass, unitOf } from '../facts/map-classes.ts';
import { cellText, wholePercentText } from '../format.ts';
import { t } from '../text/text.ts';

/** Limits of fixed classes are round numbers: 50 %, not 50.0 %. */
export function limitText(value: number, map: CellMap): string {
  const unit = unitOf(map);
  return unit === '-' ? wholePercentText(value) : cellText(value, unit);
}

export function classText({ from, to, hatched }: MapClass, map: CellMap): string {
  if (map.classLimits === null) return from === null || to === null ? '' : t.legend.range(limitText(from, map), limitText(to, map));
  const over = hatched ? `: ${t.legend.overWord}` : '';
  if (to === null) return `${t.legend.above(limitText(from ?? 0, map))}${over}`;
  if (from === null || from === 0) return t.legend.upTo(limitText(to, map));
  return `${t.legend.range(limitText(from, map), limitText(to, map))}${over}`;
}
