/** What is in no area load or stands on it in places: wheels, vehicles in bays, trees, walls and blocks, retaining edges. */

import type { ReportTraffic } from '../../model/report.ts';
import type { SceneObject } from '../../model/scene-file.ts';
import { Derived } from './Derived.tsx';
import { columnsOf, type TableBlock } from './paged-sheet.ts';
import type { SheetContext } from './sheet-context.ts';

export function pointBlocks(on: SheetContext): TableBlock[] {
  return [...wheelTable(on), ...vehicleTable(on), ...objectTable(on), ...wallTable(on)];
}

function stageName({ snapshot, words }: SheetContext, stage: string | null): string {
  const at = snapshot.stages.findIndex(({ id }) => id === stage);
  return at < 0 ? words.finished : words.stageName(at + 1, snapshot.stages[at]?.name ?? '');
}

/** Of each vehicle the layers used most, one per material. */
const MOST_LAYERS = 3;

function mostUsed({ layers }: ReportTraffic) {
  const seen = new Set<string>();
  return [...layers]
    .sort((a, b) => (b.utilisation ?? 0) - (a.utilisation ?? 0))
    .filter(({ layer }) => !seen.has(layer) && seen.add(layer))
    .slice(0, MOST_LAYERS);
}

function wheelTable(on: SheetContext): TableBlock[] {
  const { snapshot, words } = on;
  const { traffic = [] } = snapshot.report;
  if (traffic.length === 0) return [];
  const names = new Map(snapshot.runs.map(({ id, vehicle }) => [id, vehicle]));
  return [
    {
      key: 'wheels',
      title: words.engineer.wheels,
      says: words.engineer.wheelsSays,
      columns: columnsOf(words.engineer.wheelsHead, [[2.4], [2.4], [3], 1, 1.1, 1.1, 1.3]),
      rows: traffic.flatMap((run) =>
        mostUsed(run).map((layer, i) => ({
          key: `${run.id} ${i}`,
          mark: (layer.utilisation ?? 0) > 1 ? 'over' : undefined,
          cells: [
            i === 0 ? (names.get(run.id) ?? run.vehicle) : '',
            i === 0 ? stageName(on, run.stage) : '',
            `${layer.zone} · ${snapshot.materialNames.get(layer.layer) ?? layer.layer}`,
            <Derived
              key="kPa"
              ask={{ kind: 'wheel', run: run.id, zone: layer.zone, layer: layer.layer, stand: layer.stand, kPa: layer.maxKPa }}
            >
              {words.number(layer.maxKPa, 1)}
            </Derived>,
            layer.permittedKPa === null ? '–' : words.number(layer.permittedKPa, 0),
            layer.utilisation === null ? '–' : words.percent(layer.utilisation),
            i > 0 || run.maxMembraneKPa === null ? '' : words.number(run.maxMembraneKPa, 1),
          ],
        })),
      ),
    },
  ];
}

function vehicleTable({ snapshot, words }: SheetContext): TableBlock[] {
  const names = new Map(snapshot.runs.map(({ id, vehicle }) => [id, vehicle]));
  const rows = (snapshot.report.traffic ?? []).flatMap((run) =>
    run.bays.map((bay, i) => ({
      key: `${run.id} ${bay.bay}`,
      mark: bay.vehiclePermitted === false || (bay.utilisation ?? 0) > 1 ? 'over' : undefined,
      cells: [
        i === 0 ? `${names.get(run.id) ?? run.vehicle} (${run.id})` : '',
        bay.bay,
        words.number(bay.standingKN, 1),
        words.number(bay.kNm2, 2),
        bay.permittedKNm2 === null ? '–' : words.number(bay.permittedKNm2, 2),
        words.engineer.listed(bay.vehiclePermitted),
      ],
    })),
  );
  if (rows.length === 0) return [];
  return [{ key: 'in bays', title: words.engineer.inBays, columns: columnsOf(words.engineer.inBaysHead, [[3.4], [1], 1, 1, 1, 1]), rows }];
}

const G = 9.81;

function loadOf(object: SceneObject, { quantity }: SheetContext['words'], ownKNm: number | undefined): string {
  switch (object.kind) {
    case 'tree':
      return quantity((object.massKg * G) / 1000, 1, 'kN');
    case 'line':
      return quantity(object.kNm, 2, 'kN/m');
    case 'block':
      return quantity(object.kNm2, 2, 'kN/m²');
    case 'retaining':
      return ownKNm === undefined ? '–' : quantity(ownKNm, 2, 'kN/m');
  }
}

function objectTable({ snapshot, words }: SheetContext): TableBlock[] {
  const { objects = [] } = snapshot.scene;
  if (objects.length === 0) return [];
  const own = new Map((snapshot.report.walls ?? []).map(({ id, ownKNm }) => [id, ownKNm]));
  return [
    {
      key: 'points',
      title: words.engineer.points,
      width: 0.7,
      columns: columnsOf(words.engineer.pointsHead, [[3], [1.5], 1.5]),
      rows: objects.map((object) => ({
        key: object.id,
        cells: [
          object.name === undefined ? object.id : `${object.name} (${object.id})`,
          words.engineer.object[object.kind],
          loadOf(object, words, own.get(object.id)),
        ],
      })),
    },
  ];
}

function wallTable({ snapshot, words }: SheetContext): TableBlock[] {
  const { walls = [] } = snapshot.report;
  if (walls.length === 0) return [];
  return [
    {
      key: 'walls',
      title: words.engineer.walls,
      columns: columnsOf(words.engineer.wallsHead, [[1.2], 1, 1.2, 1, [1.6], 1, 1, 1.2]),
      rows: walls.map(({ id, ownKNm, surchargeKNm2, thrustKNm, loaded, bare, permittedKPa }) => ({
        key: id,
        cells: [
          id,
          words.number(ownKNm, 2),
          words.number(surchargeKNm2, 2),
          words.number(thrustKNm, 2),
          loaded.pressure === null ? words.engineer.offBase : words.number(loaded.pressure.maxKPa, 1),
          permittedKPa === null ? '–' : words.number(permittedKPa, 0),
          words.number(Math.min(bare.slidingRatio, loaded.slidingRatio), 2),
          words.number(Math.min(bare.overturningRatio, loaded.overturningRatio), 2),
        ],
      })),
    },
  ];
}
