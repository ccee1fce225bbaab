/** Water in the report: run-off, outlets and overflows, ponds, blocked outlets, drainage flow, flotation. Units stand in the keys. */

/** Flow to an outlet or overflow with all of them working. */
export interface ReportOutlet {
  readonly id: string;
  readonly kind: 'outlet' | 'overflow';
  readonly catchmentM2: number;
  /** Area times peak coefficient. */
  readonly effectiveM2: number;
  /** Null without rain in the scene, and where it is not counted: off the deck, or an overflow without a level. */
  readonly designLps: number | null;
  readonly capacityLps: number | null;
  readonly utilisation: number | null;
}

/** Where a run-off coefficient of a zone comes from. */
export interface ReportCoefficient {
  readonly c: number;
  /** Row of the table; null where the scene gives the value, or no row fits and 1.0 is taken. */
  readonly row: string | null;
  readonly source: string;
}

export interface ReportWaterZone {
  readonly id: string;
  readonly peak: ReportCoefficient;
  readonly annual: ReportCoefficient;
  readonly heldM3: number;
  /** At the filling the scene gives; null where it gives none. */
  readonly freeLm2: number | null;
  readonly designLps: number | null;
  readonly yearlyM3: number | null;
  /** Flow in the drainage along the longest way; null where no rain or no capacity is given, or no water finds a way out. */
  readonly drain: {
    readonly material: string;
    readonly flowLsm: number;
    /** Of the element as given; of a fill running full by Darcy. */
    readonly capacityLsm: number;
    readonly at: readonly [number, number];
    /** Greatest height of water in a fill, by McEnroe and by Giroud; null for an element. */
    readonly headMm: number | null;
    readonly secondHeadMm: number | null;
    readonly thicknessMm: number;
  } | null;
}

/** An overflow with every outlet out of work. */
export interface ReportOverflow {
  readonly id: string;
  readonly invertM: number | null;
  /** Deck whose water reaches it then. */
  readonly areaM2: number;
  /** (extreme − design · C) · area; null without rain, and where the overflow is not counted. */
  readonly dutyLps: number | null;
  readonly capacityLps: number | null;
  readonly utilisation: number | null;
  /** Water at its deepest when it begins to run. */
  readonly depthMm: number | null;
}

export interface ReportPond {
  readonly at: readonly [number, number];
  readonly zone: string | null;
  readonly levelM: number;
  readonly depthMm: number;
  readonly areaM2: number;
  /** In pores and above the layers. */
  readonly litres: number;
  /** On the bare membrane. */
  readonly bareLitres: number;
}

/** One outlet closed, all others working. */
export interface ReportBlocked {
  readonly outlet: string;
  /** Null where nothing lets the water out. */
  readonly levelM: number | null;
  readonly depthMm: number | null;
  readonly areaM2: number | null;
  readonly litres: number | null;
  /** Outlet, overflow or edge that takes the water then. */
  readonly into: string | null;
  readonly bays: readonly {
    readonly bay: string;
    readonly waterKNm2: number;
    readonly patchKNm2: number;
    readonly at: readonly [number, number];
    /** Greatest of permanent and total. */
    readonly utilisation: number | null;
  }[];
}

export interface ReportUplift {
  readonly zone: string;
  /** Worst stage; null for the finished garden. */
  readonly stage: string | null;
  /** Material of the lowest layer that lifts. */
  readonly layer: string;
  /** Share of its volume that this layer pushes aside: 1 for sealed blocks. */
  readonly displaces: number;
  /** Water above the membrane. */
  readonly waterMm: number;
  readonly upliftKNm2: number;
  readonly holdingKNm2: number;
  /** Factors included. */
  readonly ratio: number;
  /** Missing dry weight. */
  readonly ballastKNm2: number;
  readonly at: readonly [number, number];
}

export interface ReportWater {
  /** Table of peak run-off coefficients. */
  readonly table: string;
  /** Null where the scene gives no rain: then no flows are told. */
  readonly rain: {
    readonly designLpsHa: number;
    readonly extremeLpsHa: number;
    readonly annualMm: number | null;
    readonly source: string;
  } | null;
  readonly heldM3: number;
  readonly filledPercent: number | null;
  readonly freeM3: number | null;
  readonly meanPeakC: number | null;
  readonly meanAnnualC: number | null;
  readonly designLps: number | null;
  readonly yearlyM3: number | null;
  /** Deck whose water finds no outlet. */
  readonly undrainedM2: number;
  readonly zones: readonly ReportWaterZone[];
  readonly overflows: readonly ReportOverflow[];
  readonly ponds: readonly ReportPond[];
  readonly blocked: readonly ReportBlocked[];
  readonly flotation: { readonly upFactor: number; readonly downFactor: number; readonly zones: readonly ReportUplift[] };
}
