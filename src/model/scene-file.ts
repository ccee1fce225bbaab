/**
 * The scene file (`*.scene.json`, version 1) as the contract fixes it. Units stand in the keys.
 * Whoever holds a `SceneFile` may rely on what `src/scene` checked: ids unique, references resolved, polygons simple.
 */

import type { FireTableId } from './fire-access.ts';
import type { Role } from './roles.ts';
import type { RunoffSurface, RunoffTableId } from './runoff.ts';
import type { SceneVariant } from './scheme.ts';

export type PointM = readonly [number, number];
export type Point3M = readonly [number, number, number];
/** Three or more points, open or closed, either way round, simple. */
export type PolygonM = readonly PointM[];

export interface SceneFile {
  /** Address of the JSON Schema, written by editors; means nothing to us. */
  readonly $schema?: string;
  readonly format: 'loamdeck-scene';
  readonly version: 1;
  readonly name: string;
  readonly about?: string;
  readonly currency?: string;
  readonly grid?: { readonly cellM?: number };
  readonly rain?: SceneRain;
  /** Water that light layers could float on, and the factors they are judged with. */
  readonly flotation?: SceneFlotation;
  readonly deck: SceneDeck;
  readonly materials?: readonly SceneMaterial[];
  readonly vehicles?: readonly SceneVehicle[];
  readonly buildups: readonly SceneBuildUp[];
  readonly zones: readonly SceneZone[];
  readonly objects?: readonly SceneObject[];
  readonly traffic?: readonly SceneTraffic[];
  readonly setUpAreas?: readonly SceneSetUpArea[];
  readonly stages?: readonly SceneStage[];
  readonly accessPoints?: readonly SceneAccessPoint[];
  readonly views?: readonly SceneView[];
  /** Rule values that replace the defaults. */
  readonly limits?: SceneLimits;
  /** What thicknesses and densities may be off by, unless a material says otherwise. */
  readonly tolerance?: SceneTolerance;
  /** Depths measured on site. */
  readonly probes?: readonly SceneProbe[];
  /** What was read from drawings and mended, sentence by sentence, oldest first. */
  readonly history?: readonly SceneHistoryEntry[];
  /** Other schemes for the same deck, kept to be compared; the scene itself is the one that is judged. */
  readonly variants?: readonly SceneVariant[];
}

export interface SceneHistoryEntry {
  /** Date, with or without the time of day, as ISO 8601 writes it. */
  readonly on?: string;
  readonly says: string;
}

export interface SceneRain {
  readonly designLpsHa: number;
  readonly extremeLpsHa: number;
  /** Rain of a year [mm]. */
  readonly annualMm?: number;
  /** Where peak run-off coefficients of zones come from. */
  readonly table?: RunoffTableId;
  /** How full the storage of the build-ups is before the rain [%]. */
  readonly filledPercent?: number;
  readonly source?: string;
}

export interface SceneFlotation {
  /** Level up to which water stands everywhere, instead of the lowest overflow of each basin [m]. */
  readonly waterLevelM?: number;
  /** Partial factors on uplift and on the weight that holds [-]. */
  readonly upFactor?: number;
  readonly downFactor?: number;
  readonly source?: string;
}

export interface SceneLimits {
  /** Least depth of substrate by form of vegetation [mm]. */
  readonly substrateMm?: Readonly<Record<string, number>>;
  /** Soil of a tree: least volume and depth. */
  readonly treeSoilM3?: number;
  readonly treeSoilMm?: number;
  /** Substrate deeper than this needs a mineral subsoil below [mm]. */
  readonly subsoilBelowMm?: number;
  /** Least base course under vehicles [mm]. */
  readonly baseCourseMm?: number;
  /** Greatest placed thickness of one lift [mm]. */
  readonly liftMm?: number;
  /** Least height of the membrane above the finish: at upstands, and at sills with a drained channel [mm]. */
  readonly upstandMm?: number;
  readonly sillMm?: number;
  /** Width of the strip without plants along edges and round outlets [m]. */
  readonly stripM?: number;
  /** Least fall of surfaces that bear water [%]. */
  readonly fallPercent?: number;
  /** Greatest depth of water that may stay where falls are missing [mm]. */
  readonly pondMm?: number;
  /** Least ratio of what holds a retaining edge to what pushes or turns it [-]. */
  readonly slidingRatio?: number;
  readonly overturningRatio?: number;
  /** Rule that lanes for fire appliances are held against. */
  readonly fireTable?: FireTableId;
  /** Wheel loads are multiplied by it [-]. */
  readonly dynamicFactor?: number;
  /** Where these values come from. */
  readonly source?: string;
}

export interface SceneTolerance {
  readonly thicknessMm?: number;
  readonly densityPercent?: number;
}

export interface SceneProbe {
  readonly id: string;
  readonly at: PointM;
  /** Material of the layer probed; without it the whole build-up was measured. */
  readonly layer?: string;
  readonly measuredMm: number;
  readonly on?: string;
  readonly by?: string;
}

export interface SceneDeck {
  readonly outline: PolygonM;
  readonly openings?: readonly PolygonM[];
  readonly slabMm?: number;
  readonly rootResistant?: boolean;
  /** Top of membrane. */
  readonly levels?: SceneLevels;
  readonly bays: readonly SceneBay[];
  readonly columns?: readonly { readonly id: string; readonly at: PointM; readonly sizeM: PointM }[];
  readonly outlets?: readonly SceneOutlet[];
  readonly edges?: readonly SceneEdge[];
}

export interface SceneLevels {
  readonly spots: readonly Point3M[];
  readonly breaklines?: readonly (readonly Point3M[])[];
}

export interface SceneBay {
  readonly id: string;
  readonly outline: PolygonM;
  readonly permanentKNm2?: number;
  readonly imposedKNm2?: number;
  readonly totalKNm2?: number;
  /** Permitted while building, if the engineer gives one. */
  readonly stageKNm2?: number;
  readonly vehicles?: readonly string[];
  readonly basis?: SceneBasis;
}

export interface SceneBasis {
  readonly document?: string;
  readonly revision?: string;
  readonly date?: string;
  readonly by?: string;
}

export interface SceneOutlet {
  readonly id: string;
  readonly at: PointM;
  readonly kind: 'outlet' | 'overflow';
  readonly lps?: number;
  readonly invertM?: number;
}

export interface SceneEdge {
  readonly id: string;
  readonly line: readonly PointM[];
  readonly kind: 'upstand' | 'threshold';
  readonly membraneTopM: number;
  readonly drainedChannel?: boolean;
}

export interface SceneMaterial {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  /** kg/m³ as placed and compacted; granular and slabs. */
  readonly density?: { readonly dry: number; readonly saturated: number };
  /** kg/m²; sheets and elements, instead of density. */
  readonly areal?: { readonly dry: number; readonly saturated: number };
  readonly thicknessMm?: number;
  readonly voidLm2?: number;
  readonly retentionLm2?: number;
  readonly waterCapacityPercent?: number;
  /** Loose volume / placed volume. */
  readonly compactionFactor?: number;
  readonly lapPercent?: number;
  readonly bearingKPa?: number;
  /** Widening of a wheel's patch on every side per metre of depth [-]. */
  readonly dispersal?: number;
  readonly flowLsm?: number;
  /** Pores that only ponded water fills, beyond what the material holds by itself [% of its volume]. */
  readonly porePercent?: number;
  /** Permeability of a granular layer that drains [m/s]. */
  readonly permeabilityMs?: number;
  /** How water lifts it: as a sealed block, or by its grains alone with water between them. */
  readonly uplift?: 'sealed' | 'grains';
  /** What a surfacing is to a run-off table. */
  readonly surface?: RunoffSurface;
  /** A substrate without organic matter, which may lie deep. */
  readonly mineral?: boolean;
  readonly tolerance?: SceneTolerance;
  readonly price?: { readonly per: 'm3' | 'm2' | 't'; readonly amount: number };
  readonly delivery?: { readonly unit: string; readonly m3?: number; readonly kg?: number };
  readonly source?: string;
}

export interface SceneVehicle {
  readonly id: string;
  readonly name: string;
  readonly source?: string;
  readonly widthM: number;
  readonly axles: readonly {
    readonly atM: number;
    readonly loadKN: number;
    readonly wheels: number;
    readonly trackM: number;
    /** Contact patch along × across. */
    readonly contactM: PointM;
  }[];
}

export type SceneThickness = number | { readonly min: number; readonly max: number; readonly nominal: number };

export interface SceneLayer {
  readonly material: string;
  readonly orientation?: 'retention' | 'drained';
  /** Sits in the voids of the element directly below; `thicknessMm` is what lies above the element. */
  readonly infill?: boolean;
  readonly thicknessMm?: SceneThickness;
}

export interface SceneBuildUp {
  readonly id: string;
  readonly name: string;
  readonly vegetation?: { readonly form: string; readonly kNm2: number };
  readonly runoff?: { readonly peak?: number; readonly annual?: number };
  /** Bottom to top. */
  readonly layers: readonly SceneLayer[];
}

export type SceneFinish =
  | { readonly kind: 'build-up' }
  | { readonly kind: 'level'; readonly levelM: number }
  | { readonly kind: 'plane'; readonly at: Point3M; readonly fallPercent: number; readonly towardsDeg: number }
  | { readonly kind: 'spots'; readonly spots: readonly Point3M[]; readonly breaklines?: readonly (readonly Point3M[])[] };

export interface SceneZone {
  readonly id: string;
  readonly name?: string;
  readonly outline: PolygonM;
  readonly holes?: readonly PolygonM[];
  readonly use?: string;
  readonly buildup: string;
  readonly imposedKNm2?: number;
  readonly finish?: SceneFinish;
}

export type SceneObject =
  | {
      readonly kind: 'tree';
      readonly id: string;
      readonly name?: string;
      readonly at: PointM;
      readonly massKg: number;
      readonly spreadM: number;
    }
  | {
      readonly kind: 'line';
      readonly id: string;
      readonly name?: string;
      readonly line: readonly PointM[];
      readonly kNm: number;
      readonly widthM: number;
    }
  | {
      readonly kind: 'block';
      readonly id: string;
      readonly name?: string;
      readonly outline: PolygonM;
      readonly kNm2: number;
      readonly heightM?: number;
    }
  | SceneRetaining;

/** An L-shaped wall: the line is the free face of its stem, the base slab reaches from there under the soil. */
export interface SceneRetaining {
  readonly kind: 'retaining';
  readonly id: string;
  readonly name?: string;
  readonly line: readonly PointM[];
  /** Where the soil lies, seen along the line from its first point. */
  readonly side: 'left' | 'right';
  /** From the underside of the base slab to the surface of the soil. */
  readonly retainedM: number;
  readonly baseM: number;
  readonly stemM: number;
  readonly slabM: number;
  /** Density saturated [kg/m³]. */
  readonly backfill: { readonly density: number; readonly frictionDeg: number };
  /** Live load behind the wall; without it the imposed load of the zone behind. */
  readonly surchargeKNm2?: number;
  /** Tangent of the angle of friction under the base; no default, as membrane and fleece slide. */
  readonly baseFriction: number;
  /** [kg/m³] */
  readonly wallDensity?: number;
}

export interface SceneTraffic {
  readonly id: string;
  readonly vehicle: string;
  readonly route: readonly PointM[];
  readonly widthM?: number;
}

/** Where an appliance sets up its ladder (set-up) or stands to be worked from (movement), on the finished garden. */
export interface SceneSetUpArea {
  readonly id: string;
  readonly name?: string;
  readonly kind: 'set-up' | 'movement';
  readonly outline: PolygonM;
  readonly vehicle: string;
  /** Foot of the building it serves. */
  readonly building?: readonly PointM[];
}

export interface SceneStage {
  readonly id: string;
  readonly name: string;
  readonly place?: readonly ScenePlace[];
  readonly stockpiles?: readonly SceneStockpile[];
  readonly plant?: readonly { readonly vehicle: string; readonly route: readonly PointM[] }[];
  readonly floodTestMm?: number;
  readonly holdPoints?: readonly SceneHoldPoint[];
  readonly cautions?: readonly string[];
}

/** Either layers by role (in the zones named, else in all) or objects by id; both may stand together. */
export interface ScenePlace {
  readonly zones?: readonly string[];
  readonly roles?: readonly Role[];
  readonly objects?: readonly string[];
}

export interface SceneStockpile {
  readonly id: string;
  readonly outline: PolygonM;
  readonly material: string;
  readonly heightM: number;
}

export interface SceneHoldPoint {
  readonly id: string;
  readonly says: string;
  readonly releasedBy?: string;
  readonly evidence?: string;
  readonly on?: string;
}

export interface SceneAccessPoint {
  readonly id: string;
  readonly at: PointM;
  readonly kind: 'ramp' | 'crane' | 'blower' | 'gate';
  readonly reachM?: number;
}

export interface SceneView {
  readonly id: string;
  readonly name: string;
  readonly eye: Point3M;
  readonly target: Point3M;
  readonly says?: string;
  readonly show?: Readonly<Record<string, string | number | boolean>>;
}
