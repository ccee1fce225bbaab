/** Tables of a report to be saved: headings in English or German, cells as text or as numbers with their decimals. */

import { dayIn } from '../model/date-text.ts';
import type { ExportLanguage } from '../model/engine.ts';
import type { ExportTableId } from '../model/export-table.ts';
import type { Report, ReportBay, ReportTakeOff, TakeOffShare } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import { EXPORT_WORDS } from './export-words.ts';
import { materialLookup } from './materials.ts';
import { type Names, namesOf } from './words/names.ts';

export type Cell = string | number | null;

export interface ExportTable {
  readonly id: ExportTableId;
  readonly title: string;
  readonly columns: readonly {
    readonly head: string;
    /** Of a column of numbers; null for texts. */
    readonly decimals: number | null;
  }[];
  readonly rows: readonly (readonly Cell[])[];
  /** What the table is and is not, for its foot. */
  readonly note: string;
}

/** Decimals of each column: metres and kN/m² to a hundredth, volumes to a litre, names as text. */
const DECIMALS: Readonly<Record<ExportTableId, readonly (number | null)[]>> = {
  'take-off': [null, null, 2, 3, 3, null, 1, 1, 0, null, 0, 2, null],
  'take-off by zone': [null, null, null, 2, 3],
  'take-off by stage': [null, null, null, 2, 3],
  bays: [null, 2, 3, 3, 3, 2, 1, 1, 1, 2, 2, 1, null, 3, 2, 1, null, null, null, null, null],
  heaps: [null, null, null, null, 2, 3, null],
  columns: [null, 2, 2, 2],
  edges: [null, 0, 0, 3, 3],
  'run-off': [null, 2, 3, 1, 2, null, 2, 2, null, 1, 3, 3],
  outlets: [null, null, 2, 2, 2, 1, 3, 0],
  'blocked outlets': [null, 3, 0, 1, 2, null, null, 2, 1],
};

/** One table of a scene's report; rows are empty where the report has no such part. */
export function exportTable(id: ExportTableId, scene: SceneFile, report: Report, language: ExportLanguage): ExportTable {
  const words = EXPORT_WORDS[language];
  const names = namesOf(scene, language);
  const { title, heads } = words.tables[id];
  return {
    id,
    title,
    columns: heads.map((head, c) => ({ head, decimals: DECIMALS[id][c] })),
    rows: ROWS[id](report, { scene, language, nameOf: nameLookup(scene, names), names }),
    note: `${scene.name}. ${words.tables[id].note}`,
  };
}

interface Context {
  readonly scene: SceneFile;
  readonly language: ExportLanguage;
  readonly names: Names;
  readonly nameOf: (material: string) => string;
}

function nameLookup(scene: SceneFile, names: Names): Context['nameOf'] {
  const materialOf = materialLookup(scene);
  return (id) => names.name(materialOf(id).name);
}

const ROWS: Readonly<Record<ExportTableId, (report: Report, on: Context) => Cell[][]>> = {
  'take-off': (report, on) => (report.takeoff ?? []).map((row) => takeOffRow(row, on)),
  'take-off by zone': (report, on) => shareRows(report, on, (row) => row.zones),
  'take-off by stage': (report, on) => shareRows(report, on, (row) => row.stages),
  bays: (report, on) => report.bays.map((bay) => bayRow(bay, on)),
  heaps: (report, on) =>
    report.bays.flatMap(({ id, heapM, confirmed }) =>
      (heapM ?? []).map((heap): Cell[] => {
        const name = on.nameOf(heap.material);
        return [id, heap.stage, heap.material, name, heap.heightM, heap.overKNm2, yesNo(confirmed, on)];
      }),
    ),
  columns: (report) => (report.columns ?? []).map((c) => [c.id, c.shareM2, c.permanentKN, c.permanentKN / GRAVITY_MS2]),
  'run-off': ({ water, zones }, { names }) =>
    (water?.zones ?? []).map(({ id, heldM3, freeLm2, peak, designLps, annual, yearlyM3, drain }, z): Cell[] => {
      const row = ({ row: name, source }: typeof peak) => (name === null ? names.source(source) : names.name(name));
      const flow = [drain?.flowLsm ?? null, drain?.capacityLsm ?? null];
      return [id, zones[z].areaM2, heldM3, freeLm2, peak.c, row(peak), designLps, annual.c, row(annual), yearlyM3, ...flow];
    }),
  outlets: ({ outlets, water }, { language }) =>
    (outlets ?? []).map(({ id, kind, catchmentM2, designLps, capacityLps, utilisation }): Cell[] => {
      const name = EXPORT_WORDS[language].outlet[kind];
      const overflow = water?.overflows.find((one) => one.id === id);
      if (!overflow) return [id, name, catchmentM2, designLps, capacityLps, percent(utilisation), null, null];
      return [id, name, overflow.areaM2, overflow.dutyLps, capacityLps, percent(overflow.utilisation), overflow.invertM, overflow.depthMm];
    }),
  'blocked outlets': ({ water }) =>
    (water?.blocked ?? []).map(({ outlet, levelM, depthMm, areaM2, litres, into, bays }): Cell[] => {
      const worst = [...bays].sort((a, b) => (b.utilisation ?? -1) - (a.utilisation ?? -1))[0];
      const bay = [worst?.bay ?? null, worst?.patchKNm2 ?? null, percent(worst?.utilisation ?? null)];
      return [outlet, levelM, depthMm, areaM2, litres === null ? null : litres / 1000, into, ...bay];
    }),
  edges: (report) => (report.edges ?? []).map((e) => [e.id, e.leastUpstandMm, e.requiredMm, e.at?.[0] ?? null, e.at?.[1] ?? null]),
};

function takeOffRow(row: ReportTakeOff, { scene, language, nameOf }: Context): Cell[] {
  const { loose, by } = EXPORT_WORDS[language];
  const unit = row.orderM3 === undefined ? 'm²' : row.orderM3 > row.placedM3 ? loose : 'm³';
  return [
    row.material,
    nameOf(row.material),
    row.areaM2,
    row.placedM3,
    row.orderM3 ?? row.orderM2 ?? null,
    unit,
    row.dryKg,
    row.massKg,
    row.deliveries,
    row.deliveryBy && by[row.deliveryBy],
    row.deliveriesDry,
    row.price,
    row.price === null ? null : (scene.currency ?? null),
  ];
}

function shareRows(report: Report, { nameOf }: Context, sharesOf: (row: ReportTakeOff) => readonly TakeOffShare[]): Cell[][] {
  return (report.takeoff ?? []).flatMap((row) =>
    sharesOf(row).map(({ id, areaM2, placedM3 }): Cell[] => [id, row.material, nameOf(row.material), areaM2, placedM3]),
  );
}

function bayRow(bay: ReportBay, on: Context): Cell[] {
  const { permanent, imposed } = bay;
  const worst = bay.stages.find((stage) => stage.stage === bay.worstStage);
  const basis = on.scene.deck.bays.find((entry) => entry.id === bay.id)?.basis;
  return [
    bay.id,
    bay.areaM2,
    permanent.meanKNm2,
    permanent.peakKNm2,
    permanent.patchKNm2,
    permanent.permittedKNm2,
    percent(permanent.utilisation),
    percent(bay.band?.low ?? null),
    percent(bay.band?.high ?? null),
    imposed.maxKNm2,
    imposed.permittedKNm2,
    percent(bay.total?.utilisation ?? null),
    bay.worstStage,
    worst?.patchKNm2 ?? null,
    worst?.permittedKNm2 ?? null,
    percent(worst?.utilisation ?? null),
    yesNo(bay.confirmed, on),
    basis?.document ?? null,
    basis?.revision ?? null,
    basis?.date === undefined ? null : dayIn(basis.date, on.language),
    basis?.by ?? null,
  ];
}

const percent = (value: number | null) => (value === null ? null : 100 * value);

function yesNo(confirmed: boolean, { language }: Context): string {
  return confirmed ? EXPORT_WORDS[language].confirmed : EXPORT_WORDS[language].notConfirmed;
}
