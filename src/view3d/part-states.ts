/** Which parts are drawn at the shown stage with the chosen things hidden, which of them arrive, and which lie on top. */

import type { Part, PartKind } from '../model/picture.ts';
import type { ViewState } from '../store/view-store.ts';

export type Look = Pick<ViewState, 'stage' | 'hiddenKinds' | 'hiddenZones' | 'onlyKind' | 'onlyZone'>;

export interface PartState {
  readonly shown: boolean;
  /** 0 for a part that is there already; parts brought by the shown stage: 1 for the lowest, rising with the floor. */
  readonly arriving: number;
  /** Nothing that is shown lies on it in its build-up; true for the slab, which lies bare where no zone covers it. */
  readonly top: boolean;
}

/** Stays when one kind or one zone is picked out, so that the eye keeps its bearings. */
const GROUND: ReadonlySet<PartKind> = new Set<PartKind>(['slab', 'column']);

/** Whether the shown stage has placed a part and not yet taken it away; null is the finished garden, where all that stays is placed. */
export function isPlaced(part: Part, stage: number | null): boolean {
  if (stage === null) return part.stageTo < 0;
  return part.stageFrom <= stage && (part.stageTo < 0 || stage <= part.stageTo);
}

function isWanted(part: Part, look: Look): boolean {
  if (look.hiddenKinds.has(part.kind) || (part.owner !== '' && look.hiddenZones.has(part.owner))) return false;
  if (GROUND.has(part.kind)) return true;
  return (look.onlyKind === null || part.kind === look.onlyKind) && (look.onlyZone === null || part.owner === look.onlyZone);
}

/** States of all parts, in their order. */
export function partStates(parts: readonly Part[], look: Look): PartState[] {
  const shown = parts.map((part) => part.empty !== true && isPlaced(part, look.stage) && isWanted(part, look));
  const topLayer = new Map<string, number>();
  const arrivingFloors = new Set<number>();
  parts.forEach((part, i) => {
    if (!shown[i]) return;
    if (part.layer >= 0) topLayer.set(part.owner, Math.max(part.layer, topLayer.get(part.owner) ?? 0));
    if (arrives(part, look)) arrivingFloors.add(part.floor);
  });
  const order = [...arrivingFloors].sort((a, b) => a - b);
  return parts.map((part, i) => ({
    shown: shown[i] === true,
    arriving: shown[i] && arrives(part, look) ? 1 + order.indexOf(part.floor) : 0,
    top: shown[i] === true && (part.kind === 'slab' || (part.layer >= 0 && part.layer === topLayer.get(part.owner))),
  }));
}

function arrives(part: Part, look: Look): boolean {
  return look.stage !== null && part.stageFrom === look.stage;
}
