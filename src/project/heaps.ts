/** The heap board: how high each loose material may lie on each bay at each stage. */

import type { Evaluation } from '../core/evaluation.ts';
import { stageLimitKNm2 } from '../core/judge.ts';
import { heapRoom } from '../core/loads/heaps.ts';
import type { ReportBay } from '../model/report.ts';
import type { Role } from '../model/roles.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { looseKNm3, type MaterialOf } from './materials.ts';

export interface HeapMaterial {
  readonly id: string;
  readonly looseKNm3: number;
}

/** Roles whose materials come tipped or blown, also where no compaction factor is given. */
const LOOSE_ROLES: readonly Role[] = ['drainage fill', 'base course', 'bedding', 'substrate'];

/** Materials of a scene that can lie in a heap, in the order in which they are first named: layers first, then stockpiles. */
export function heapMaterials(scene: SceneFile, materialOf: MaterialOf): HeapMaterial[] {
  const laid = scene.buildups.flatMap((buildUp) => buildUp.layers.map((layer) => layer.material));
  const heaped = (scene.stages ?? []).flatMap((stage) => (stage.stockpiles ?? []).map((pile) => pile.material));
  const isLoose = (id: string): boolean => {
    const { density, compactionFactor, role } = materialOf(id);
    if (!density) return false;
    return compactionFactor !== undefined || LOOSE_ROLES.includes(role) || heaped.includes(id);
  };
  return [...new Set([...laid, ...heaped])].filter(isLoose).map((id) => ({ id, looseKNm3: looseKNm3(materialOf(id)) }));
}

/** Heights on one bay, stage by stage; none where nothing is permitted or no deck lies in the bay. Contract, section 2, Heap height. */
export function bayHeaps(on: Evaluation, b: number, materials: readonly HeapMaterial[]): NonNullable<ReportBay['heapM']> {
  const permittedKNm2 = stageLimitKNm2(on.input.bays[b]);
  if (permittedKNm2 === null) return [];
  return on.bays[b].stages.flatMap(({ patch }, s) => {
    if (patch.cell < 0) return [];
    return materials.map((material) => ({
      stage: on.plan.stages[s].id,
      material: material.id,
      ...heapRoom(permittedKNm2, patch.kNm2, material.looseKNm3),
    }));
  });
}
