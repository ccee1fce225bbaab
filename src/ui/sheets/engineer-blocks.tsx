/** The engineer's sheet: bays, bays by stage, columns, zones, materials; wheels and point loads are in a file of their own. */

import type { ReportBay } from '../../model/report.ts';
import { missingBasis } from '../facts/basis.ts';
import { Derived } from './Derived.tsx';
import { pointBlocks } from './engineer-points.tsx';
import { columnsOf, type SheetBlock, type TableBlock } from './paged-sheet.ts';
import type { SheetContext } from './sheet-context.ts';

/** More stages stand in a table of their own. */
const STAGES_ABREAST = 12;

export function engineerBlocks(on: SheetContext): SheetBlock[] {
  const count = on.snapshot.stages.length;
  const groups = Array.from({ length: Math.ceil(count / STAGES_ABREAST) }, (_, i) => i * STAGES_ABREAST);
  return [
    {
      key: 'tap',
      node: <p className="paper-says paper-screen">{on.words.engineer.tap}</p>,
    },
    bayTable(on),
    ...groups.map((from) => stageTable(on, from, Math.min(count, from + STAGES_ABREAST))),
    ...(count === 0 ? [] : [stageList(on)]),
    ...columnTable(on),
    zoneTable(on),
    materialTable(on),
    ...pointBlocks(on),
  ];
}

const over = (utilisation: number | null) => (utilisation !== null && utilisation > 1 + 1e-9 ? 'over' : undefined);

/** A value that is over says so itself: its bay may be hatched as not confirmed, or over in a stage alone. */
const marked = (text: string, utilisation: number | null) => (
  <span key={text} className="over-cell" data-mark={over(utilisation)}>
    {text}
  </span>
);

const worst = (bay: ReportBay) => Math.max(bay.permanent.utilisation ?? 0, bay.imposed.utilisation ?? 0, bay.total?.utilisation ?? 0);

function inOrder(bays: readonly ReportBay[]): ReportBay[] {
  return [...bays].sort((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
}

/** Beside a patch that holds the imposed load, too. */
const IMPOSED_MARK = '\u202F*';

/** Where only a total is permitted, that is what the bay is held against. */
const judgedOf = ({ permanent, total }: ReportBay) => (permanent.permittedKNm2 === null && total ? total : permanent);

function bayTable(on: SheetContext): TableBlock {
  const { snapshot, words } = on;
  const given = new Map(snapshot.scene.deck.bays.map((bay) => [bay.id, bay.basis]));
  const use = (value: number | null) => (value === null ? '–' : words.percent(value));
  const load = (value: number | null) => (value === null ? '–' : words.number(value, 2));
  return {
    key: 'bays',
    title: words.engineer.bays,
    says: snapshot.report.bays.some((bay) => judgedOf(bay) === bay.total)
      ? `${words.engineer.baysSays} ${words.engineer.withImposed(IMPOSED_MARK)}`
      : words.engineer.baysSays,
    columns: columnsOf(words.engineer.baysHead, [[1], 1, 1.2, 1.2, 1.3, 1.2, 1.2, 1.3, 1.2, [1.1], [4]]),
    rows: inOrder(snapshot.report.bays).map((bay) => {
      const { id, areaM2, permanent, imposed, total, worstStage, confirmed } = bay;
      const basis = given.get(id);
      const judged = judgedOf(bay);
      const said = basis !== undefined && missingBasis(basis).length === 0 ? words.oneBasis(basis) : words.unconfirmed;
      const stage = snapshot.stages.findIndex((one) => one.id === worstStage);
      return {
        key: id,
        mark: confirmed ? over(worst(bay)) : 'unconfirmed',
        cells: [
          id,
          words.number(areaM2, 1),
          <Derived key="mean" ask={{ kind: 'mean', bay: id }}>
            {words.number(permanent.meanKNm2, 2)}
          </Derived>,
          `${words.number(judged.patchKNm2, 2)}${judged === total ? IMPOSED_MARK : ''}`,
          <span key="permitted">
            {load(judged.permittedKNm2)}
            {judged === total && <small> {words.engineer.ofTotal}</small>}
          </span>,
          judged.utilisation === null ? (
            '–'
          ) : (
            <Derived key="use" ask={{ kind: 'utilisation', bay: id, stage: null }}>
              {marked(use(judged.utilisation), judged.utilisation)}
            </Derived>
          ),
          load(imposed.maxKNm2),
          load(imposed.permittedKNm2),
          marked(use(imposed.utilisation), imposed.utilisation),
          stage < 0 ? '–' : marked(`${stage + 1}`, bay.stages[stage]?.utilisation ?? null),
          said,
        ],
      };
    }),
  };
}

function stageTable(on: SheetContext, from: number, to: number): TableBlock {
  const { snapshot, words } = on;
  const stages = snapshot.stages.slice(from, to);
  return {
    key: `stages ${from}`,
    title: words.engineer.stages(from + 1, to),
    says: words.engineer.stagesSays,
    columns: [
      { head: words.engineer.stagesHead, part: 1.2, text: true },
      { head: words.engineer.stagesPermitted, part: 1.5 },
      ...stages.map((_, i) => ({ head: `${from + i + 1}`, part: 1.15 })),
    ],
    rows: inOrder(snapshot.report.bays).map((bay) => ({
      key: bay.id,
      mark: bay.confirmed ? undefined : 'unconfirmed',
      cells: [
        bay.id,
        bay.stages[from]?.permittedKNm2 == null ? '–' : words.number(bay.stages[from].permittedKNm2, 2),
        ...bay.stages.slice(from, to).map((one) => (
          <span key={one.stage} className="stage-cell" data-worst={one.stage === bay.worstStage} data-mark={over(one.utilisation)}>
            {words.number(one.patchKNm2, 2)}
            {one.utilisation === null ? (
              <span>–</span>
            ) : (
              <Derived ask={{ kind: 'utilisation', bay: bay.id, stage: one.stage }}>{words.percent(one.utilisation)}</Derived>
            )}
          </span>
        )),
      ],
    })),
  };
}

function stageList({ snapshot, words }: SheetContext): TableBlock {
  return {
    key: 'stage list',
    title: words.engineer.stageList,
    columns: columnsOf(words.engineer.stageListHead, [[0.6], [5], 1.4, 1.4, 1.2]),
    rows: snapshot.report.stages.map(({ id, name, placedKN, worstBay, utilisation }, at) => ({
      key: id,
      mark: over(utilisation),
      cells: [`${at + 1}`, name, words.number(placedKN, 0), worstBay ?? '–', utilisation === null ? '–' : words.percent(utilisation)],
    })),
  };
}

const G = 9.81;

function columnTable(on: SheetContext): TableBlock[] {
  const { snapshot, words } = on;
  const { columns = [] } = snapshot.report;
  if (columns.length === 0) return [];
  return [
    {
      key: 'columns',
      title: words.engineer.columns,
      says: words.engineer.columnsSays,
      width: 0.6,
      columns: columnsOf(words.engineer.columnsHead, [[2], 1, 1, 1]),
      rows: columns.map(({ id, shareM2, permanentKN }) => ({
        key: id,
        cells: [
          id,
          words.number(shareM2, 1),
          <Derived key="kN" ask={{ kind: 'column', column: id }}>
            {words.number(permanentKN, 1)}
          </Derived>,
          words.number(permanentKN / G, 1),
        ],
      })),
    },
  ];
}

function zoneTable(on: SheetContext): TableBlock {
  const { snapshot, words } = on;
  const given = new Map(snapshot.scene.zones.map((zone) => [zone.id, zone]));
  const names = new Map(snapshot.buildUps.map(({ id, name }) => [id, name]));
  return {
    key: 'zones',
    title: words.engineer.zones,
    columns: columnsOf(words.engineer.zonesHead, [[3], [3], 1, 1.5, 1.3, 1.4]),
    rows: snapshot.report.zones.map(({ id, areaM2, saturatedKNm2, dryKNm2, heldLm2 }) => {
      const zone = given.get(id);
      return {
        key: id,
        cells: [
          zone?.name ?? id,
          names.get(zone?.buildup ?? '') ?? '',
          words.number(areaM2, 1),
          words.number(saturatedKNm2.mean, 2),
          words.number(dryKNm2.mean, 2),
          <Derived key="held" ask={{ kind: 'held', zone: id }}>
            {words.number(heldLm2.mean, 1)}
          </Derived>,
        ],
      };
    }),
  };
}

function materialTable(on: SheetContext): TableBlock {
  const { snapshot, words } = on;
  const layers = new Map(snapshot.buildUps.flatMap((buildUp) => buildUp.layers.map((layer) => [layer.materialId, layer])));
  return {
    key: 'materials',
    title: words.engineer.materials,
    columns: columnsOf(words.engineer.materialsHead, [[2.4], 1.2, 1.2, 1.2, 1.3, [4]]),
    rows: (snapshot.report.takeoff ?? []).map(({ material, areaM2, placedM3, massKg }) => {
      const layer = layers.get(material);
      const mass = (state: 'dry' | 'saturated') => {
        if (layer?.density) return words.engineer.density(layer.density[state]);
        return layer?.areal ? words.engineer.areal(layer.areal[state]) : '–';
      };
      return {
        key: material,
        cells: [
          layer?.name ?? snapshot.materialNames.get(material) ?? material,
          mass('dry'),
          mass('saturated'),
          words.engineer.placed(layer?.density ? placedM3 : null, areaM2),
          <Derived key="mass" ask={{ kind: 'mass', material }}>
            {words.number(massKg / 1000, 2)}
          </Derived>,
          layer?.source ?? '',
        ],
      };
    }),
  };
}
