/** The report (`--json`, version 1) as the contract fixes it; parts not computed yet are left out. Units stand in the keys. */

import type { Finding } from './finding.ts';

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
  readonly findings: readonly Finding[];
}
