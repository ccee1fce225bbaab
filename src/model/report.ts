/** The report (`--json`, version 1) as the contract fixes it; parts not computed yet are left out. Units stand in the keys. */

import type { Finding } from './finding.ts';
import type { ReportOutlet, ReportWater } from './report-water.ts';
import type { WheelStand } from './wheel-input.ts';

export interface Spread {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

export interface ReportZone {
  readonly id: string;
  readonly areaM2: number;
  readonly depthMm: Spread;
  readonly makeUpMm: Spread | null;
  readonly dryKNm2: Spread;
  readonly saturatedKNm2: Spread;
  readonly heldLm2: Spread;
  readonly finishedM: Spread;
  readonly shortM2: number;
  readonly overM2: number;
}

export interface ReportBayPermanent {
  readonly meanKNm2: number;
  readonly peakKNm2: number;
  readonly patchKNm2: number;
  readonly patchAt: readonly [number, number];
  readonly permittedKNm2: number | null;
  readonly utilisation: number | null;
}

export interface ReportBay {
  readonly id: string;
  readonly areaM2: number;
  readonly permanent: ReportBayPermanent;
  readonly imposed: { readonly maxKNm2: number; readonly permittedKNm2: number | null; readonly utilisation: number | null };
  /** Only where the bay gives `totalKNm2`: greatest patch of permanent + imposed. */
  readonly total?: {
    readonly patchKNm2: number;
    readonly patchAt: readonly [number, number];
    readonly permittedKNm2: number;
    readonly utilisation: number;
  };
  readonly stages: readonly {
    readonly stage: string;
    readonly patchKNm2: number;
    readonly patchAt: readonly [number, number];
    readonly permittedKNm2: number | null;
    readonly utilisation: number | null;
  }[];
  /** Id of the stage with the greatest patch / permitted. */
  readonly worstStage: string | null;
  readonly confirmed: boolean;
  /** How high loose material may be heaped, by stage and material; where the bay is already over, 0 and by how much. */
  readonly heapM?: readonly { readonly stage: string; readonly material: string; readonly heightM: number; readonly overKNm2: number }[];
  /** Utilisation of the finished garden with all tolerances against and for it [-]. */
  readonly band?: { readonly low: number; readonly high: number };
}

export interface ReportColumn {
  readonly id: string;
  readonly shareM2: number;
  readonly permanentKN: number;
}

export interface ReportEdge {
  readonly id: string;
  /** Least height of the membrane above the finished level along the edge; null where nothing adjoins it [mm]. */
  readonly leastUpstandMm: number | null;
  readonly at: readonly [number, number] | null;
  /** Zone beside that place. */
  readonly zone: string | null;
  readonly requiredMm: number;
}

/** One case of live load on a retaining edge; all per metre. */
export interface ReportWallCase {
  readonly verticalKNm: number;
  /** Towards the foot; negative towards the soil. */
  readonly eccentricityM: number;
  /** Pressure under the base; null where the resultant falls outside it. */
  readonly pressure: {
    readonly maxKPa: number;
    readonly minKPa: number;
    readonly contactM: number;
    readonly effectiveM: number;
    readonly effectiveKPa: number;
  } | null;
  readonly slidingRatio: number;
  readonly overturningRatio: number;
}

/** A retaining edge, characteristic values per metre. */
export interface ReportWall {
  readonly id: string;
  /** Stem and base slab: what the wall adds to the loads of the deck. */
  readonly ownKNm: number;
  readonly surchargeKNm2: number;
  /** Coefficient of active earth pressure [-]. */
  readonly active: number;
  readonly thrustKNm: number;
  /** The live load pushes, but does not stand on the heel; then it does both. */
  readonly bare: ReportWallCase;
  readonly loaded: ReportWallCase;
  /** Eccentricity up to which the whole base presses. */
  readonly middleThirdM: number;
  /** Material whose bearing limits the pressure, and that bearing; null where it stands on none that is known. */
  readonly standsOn: string | null;
  readonly permittedKPa: number | null;
}

/** A lane for fire appliances as drawn. */
export interface ReportRoute {
  readonly id: string;
  /** Rule it is held against. */
  readonly table: string;
  readonly country: string;
  readonly ruleName: string;
  /** Of the width asked for. */
  readonly source: string;
  readonly widthM: number | null;
  /** Greatest width asked for, straight or in a bend. */
  readonly requiredM: number;
  /** Outer radius of the tightest bend; null for a straight lane. */
  readonly leastOuterM: number | null;
  /** On the finished surface along the lane; null where no zone lies under it. */
  readonly steepestPercent: number | null;
  /** Highest step between zones; null where it stays within one. */
  readonly stepMm: number | null;
  /** Longest stretch between walls or the like that leave less than the rule asks for there, and the least they leave. */
  readonly bounded?: { readonly lengthM: number; readonly clearM: number };
}

/** A place where an appliance is set up or worked from. */
export interface ReportSetUpArea {
  readonly id: string;
  readonly kind: 'set-up' | 'movement';
  readonly vehicle: string;
  /** Rule it is held against; null where none is to be used. */
  readonly table: string | null;
  readonly areaM2: number;
  /** Of which on the deck; of the rest nothing is known. */
  readonly onDeckM2: number;
  /** Smallest rectangle around it. */
  readonly lengthM: number;
  readonly widthM: number;
  /** Greatest width of a rectangle in it that is as long as the rule asks for; null where the rule asks for no size. */
  readonly insideWidthM: number | null;
  readonly requiredM: { readonly widthM: number; readonly lengthM: number } | null;
  /** On the finished surface, in any direction; null where no zone lies under it. */
  readonly steepestPercent: number | null;
  /** Highest step between zones; null where it stays within one. */
  readonly stepMm: number | null;
  /** To the building it serves, and how it lies to it; null where none is drawn. */
  readonly buildingM: number | null;
  readonly lies: 'along' | 'across' | null;
  /** What stands in it. */
  readonly standing: readonly string[];
  /** Greatest pressure on the membrane, of wheels and of a support; null where there are none on the deck. */
  readonly wheelsMembraneKPa: number | null;
  readonly supportMembraneKPa: number | null;
  readonly bays: readonly {
    readonly bay: string;
    /** Null where the bay lists no vehicles. */
    readonly vehiclePermitted: boolean | null;
    readonly standingKN: number;
    readonly kNm2: number;
    readonly permittedKNm2: number | null;
  }[];
  /** Greatest of wheels and supports on every layer's top. */
  readonly layers: readonly {
    readonly zone: string;
    readonly layer: string;
    readonly by: 'wheels' | 'support';
    readonly maxKPa: number;
    readonly permittedKPa: number | null;
    readonly utilisation: number | null;
    readonly at: readonly [number, number];
  }[];
}

/** What a stage has to bring, and how much of that ground can't be reached when it begins. */
export interface ReportReach {
  readonly stage: string;
  readonly zones: number;
  readonly areaM2: number;
  readonly unreachedM2: number;
}

/** A vehicle or machine on its line. Point loads: none of this is in the area loads. */
export interface ReportTraffic {
  /** Of the traffic; stage and vehicle for plant. */
  readonly id: string;
  readonly vehicle: string;
  /** Null for traffic on the finished garden. */
  readonly stage: string | null;
  readonly dynamicFactor: number;
  /** Greatest pressure of wheels alone; null where no wheel stands on the deck. */
  readonly maxMembraneKPa: number | null;
  /** At the same place as in an elastic half-space. */
  readonly elasticMembraneKPa: number | null;
  readonly governs: 'one wheel' | 'sum of wheels' | 'enclosing rectangle' | null;
  readonly at: readonly [number, number] | null;
  /** How the vehicle stands at that peak. */
  readonly stand: WheelStand | null;
  readonly baysEntered: readonly string[];
  readonly bays: readonly {
    readonly bay: string;
    readonly maxMembraneKPa: number;
    readonly at: readonly [number, number];
    /** Greatest load of wheels in it at once, static, and that over its area. */
    readonly standingKN: number;
    readonly kNm2: number;
    /** Imposed load permitted; of a total what the finished garden leaves. */
    readonly permittedKNm2: number | null;
    readonly utilisation: number | null;
    /** Null where the bay lists no vehicles. */
    readonly vehiclePermitted: boolean | null;
  }[];
  readonly layers: readonly {
    readonly zone: string;
    /** Material. */
    readonly layer: string;
    /** Wheels and weight of the layers above, saturated. */
    readonly maxKPa: number;
    readonly permittedKPa: number | null;
    readonly utilisation: number | null;
    readonly wheelsKPa: number;
    readonly elasticKPa: number;
    readonly governs: 'one wheel' | 'sum of wheels' | 'enclosing rectangle';
    readonly at: readonly [number, number];
    readonly stand: WheelStand;
  }[];
}

export interface ReportTakeOff {
  readonly material: string;
  readonly areaM2: number;
  readonly placedM3: number;
  /** Loose volume to order; sheets and elements have `orderM2` instead, laps included. */
  readonly orderM3?: number;
  readonly orderM2?: number;
  /** At most, as delivered: granular material and turf wet through, sheets and elements dry. */
  readonly massKg: number;
  readonly dryKg: number;
  /** For `massKg`. */
  readonly deliveries: number | null;
  /** What fills a delivery first. */
  readonly deliveryBy: 'volume' | 'weight' | null;
  /** Were it delivered dry. */
  readonly deliveriesDry: number | null;
  readonly price: number | null;
  readonly zones: readonly TakeOffShare[];
  readonly stages: readonly TakeOffShare[];
}

export interface TakeOffShare {
  readonly id: string;
  readonly areaM2: number;
  readonly placedM3: number;
}

export interface ReportProbe {
  readonly id: string;
  readonly at: readonly [number, number];
  readonly zone: string | null;
  readonly bay: string | null;
  /** Material of the layer measured; null where the whole build-up was. */
  readonly layer: string | null;
  /** Material that the difference is counted as; null where nothing there weighs by its thickness. */
  readonly countedAs: string | null;
  readonly plannedMm: number | null;
  readonly measuredMm: number;
  readonly differenceMm: number | null;
  /** Saturated. */
  readonly differenceKNm2: number | null;
  /** Patch there if the whole window is so. */
  readonly patchKNm2: number | null;
  readonly utilisation: number | null;
}

export interface Report {
  readonly format: 'loamdeck-report';
  readonly version: 1;
  readonly scene: string;
  readonly cellM: number;
  /** Cells with a share of deck. */
  readonly cells: number;
  readonly deck: {
    readonly areaM2: number;
    readonly zonedM2: number;
    readonly unzonedM2: number;
    readonly overlapM2: number;
    /** Build-ups and objects on the deck, dry and saturated. */
    readonly dryKN: number;
    readonly saturatedKN: number;
    /** Of which objects. */
    readonly objectsKN: number;
  };
  readonly zones: readonly ReportZone[];
  readonly bays: readonly ReportBay[];
  readonly stages: readonly {
    readonly id: string;
    readonly name: string;
    /** Weight placed in this stage, saturated. */
    readonly placedKN: number;
    readonly worstBay: string | null;
    readonly utilisation: number | null;
  }[];
  readonly columns?: readonly ReportColumn[];
  readonly outlets?: readonly ReportOutlet[];
  readonly edges?: readonly ReportEdge[];
  readonly water?: ReportWater;
  readonly walls?: readonly ReportWall[];
  readonly routes?: readonly ReportRoute[];
  readonly setUpAreas?: readonly ReportSetUpArea[];
  readonly reach?: readonly ReportReach[];
  readonly traffic?: readonly ReportTraffic[];
  readonly takeoff?: readonly ReportTakeOff[];
  readonly probes?: readonly ReportProbe[];
  readonly findings: readonly Finding[];
  /** Parts of the file that are read but that no check looks at yet. */
  readonly notChecked: readonly string[];
}
