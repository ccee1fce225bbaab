/** What lightening a deck asks for, and what comes back: variants with their scenes, and the limits that stand in the way. */

import type { Finding, Rule } from './finding.ts';
import type { SceneFile } from './scene-file.ts';

/** cost: least price of the layers that may change · weight: least weight · change: least volume exchanged. */
export const LIGHTEN_AIMS = ['cost', 'weight', 'change'] as const;
export type LightenAim = (typeof LIGHTEN_AIMS)[number];

/** What may be changed in a build-up. */
export const LIGHTEN_MEANS = ['fill', 'split', 'substrate', 'subsoil'] as const;
export type LightenMeans = (typeof LIGHTEN_MEANS)[number];

export interface LightenOptions {
  /** All, where left out. */
  readonly aims?: readonly LightenAim[];
  /** Zones to lighten; where left out, those that reach places over their limit. */
  readonly zones?: readonly string[];
  /** Zones that stay as they are. */
  readonly locked?: readonly string[];
  /** Materials to try; where left out, light fills and mineral subsoils of scene and catalogue. */
  readonly fills?: readonly string[];
  /** All, where left out. */
  readonly means?: readonly LightenMeans[];
  /** Least thickness of a layer that is added [mm]. */
  readonly leastLayerMm?: number;
}

export interface ThicknessSpread {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

/** One material of a zone's build-up, before and after; null where there is none. */
export interface LightenLayer {
  readonly material: string;
  readonly name: string;
  readonly beforeMm: ThicknessSpread | null;
  readonly afterMm: ThicknessSpread | null;
}

export interface LightenZone {
  readonly zone: string;
  readonly buildUp: string;
  readonly newBuildUp: string;
  readonly layers: readonly LightenLayer[];
  /** Stage that lays what is new, where its places had to be added to; null where the stages stay as they are. */
  readonly laidIn: string | null;
  /** Saturated, over the whole zone. */
  readonly savedKN: number;
}

/** A load that a bay is held against: of the finished garden, with imposed loads, or of a stage. */
export interface LightenLoad {
  readonly bay: string;
  readonly kind: 'permanent' | 'total' | 'stage';
  /** Null for the finished garden. */
  readonly stage: string | null;
  readonly permittedKNm2: number;
}

export interface LightenBay extends LightenLoad {
  /** Greatest patch. */
  readonly beforeKNm2: number;
  readonly afterKNm2: number;
  /** This limit shaped the answer: without it the answer would be another. */
  readonly binding: boolean;
}

/** A limit that can be kept singly, but not together with the others as far as was found; it gets no worse. */
export interface LightenUnmet extends LightenLoad {
  readonly beforeKNm2: number;
  readonly afterKNm2: number;
  readonly why: 'no common answer' | 'time';
}

/** How far a search is. */
export interface LightenProgress {
  readonly aim: LightenAim;
  readonly round: number;
  /** Bays that the last proposal leaves over a limit. */
  readonly baysLeft: number;
}

export interface LightenVariant {
  readonly aim: LightenAim;
  /** False where the search was stopped early, limits were given up, or changes were held back together for what one of them may have done: sound, but there may be a better one. */
  readonly proven: boolean;
  readonly unmet: readonly LightenUnmet[];
  readonly zones: readonly LightenZone[];
  /** Loads of the bays that change, those over their limit before first. */
  readonly bays: readonly LightenBay[];
  readonly savedKN: number;
  /** Volume brought that was not there before [m³]. */
  readonly exchangedM3: number;
  /** Sum of the take-off's prices; null where a material that changes has none. */
  readonly costBefore: number | null;
  readonly costAfter: number | null;
  /** Findings that come with it: bays now close to their limit, notes. */
  readonly newFindings: readonly Finding[];
  readonly scene: SceneFile;
}

/** Rules that, given up, would let the zones become light enough at that place. */
export type LightenHindrance = 'substrate depth' | 'tree soil' | 'room' | 'base course' | 'locked zones';

/** A limit that no change can keep. */
export interface LightenObstacle extends LightenLoad {
  /** File coordinates [m]. */
  readonly at: readonly [number, number];
  readonly beforeKNm2: number;
  /** With everything there as light as it may be. */
  readonly lightestKNm2: number;
  readonly overKNm2: number;
  /** Of that, what stands there besides the zones that may change: objects, heaps, water, other zones. */
  readonly othersKNm2: number;
  readonly hindrances: readonly LightenHindrance[];
}

export type LightenPassing = 'locked' | 'not within its levels' | 'no layer to change';

/** A change that was tried and left out from some thickness on, as it breaks a rule. */
export interface LightenLeftOut {
  readonly zone: string;
  /** Material, or `substrate`. */
  readonly change: string;
  /** Least thickness that was found to break it; of `substrate` by how much it got thinner [mm]. */
  readonly fromMm: number;
  readonly rule: Rule;
  readonly says: string;
}

export interface LightenAnswer {
  /** Loads over their limit before. */
  readonly over: readonly (LightenLoad & { readonly beforeKNm2: number })[];
  /** Zones that may change. */
  readonly zones: readonly string[];
  readonly passedOver: readonly { readonly zone: string; readonly why: LightenPassing }[];
  readonly variants: readonly LightenVariant[];
  readonly obstacles: readonly LightenObstacle[];
  /** Per aim: limits that can be kept singly, but that no answer was found to keep together. */
  readonly unsolved: readonly { readonly aim: LightenAim; readonly why: 'no common answer' | 'time' | 'no prices' }[];
  readonly leftOut: readonly LightenLeftOut[];
  /** Materials that the cheapest mix could not consider. */
  readonly withoutPrice: readonly string[];
}
