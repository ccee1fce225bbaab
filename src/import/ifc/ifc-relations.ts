/** Which elements of a model belong together: wholes and parts, storeys and what stands in them, slabs and their openings. */

import { type IfcModel, readOr, textOf } from './ifc-model.ts';

export interface Storey {
  readonly id: number;
  readonly name: string;
}

export interface Relations {
  readonly children: ReadonlyMap<number, readonly number[]>;
  /** Openings by the element they are in, with the relation that says so. */
  readonly voids: ReadonlyMap<number, readonly { readonly opening: number; readonly relation: number }[]>;
  /** How many bodies are added to an element. */
  readonly projections: ReadonlyMap<number, number>;
  /** What an element is part of, the nearest first. */
  wholesOf(element: number): readonly number[];
  storeyOf(element: number): Storey;
}

const MOST_STEPS = 16;

export function relationsOf(model: IfcModel): Relations {
  const [parent, container] = [new Map<number, number>(), new Map<number, number>()];
  const children = new Map<number, readonly number[]>();
  const voids = new Map<number, readonly { readonly opening: number; readonly relation: number }[]>();
  for (const { one, many } of model.relations('IFCRELAGGREGATES', 4, 5)) {
    children.set(one, [...(children.get(one) ?? []), ...many]);
    for (const part of many) parent.set(part, one);
  }
  for (const { one, many } of model.relations('IFCRELCONTAINEDINSPATIALSTRUCTURE', 5, 4))
    for (const element of many) container.set(element, one);
  for (const { id, one, many } of model.relations('IFCRELVOIDSELEMENT', 4, 5)) {
    voids.set(one, [...(voids.get(one) ?? []), ...many.map((opening) => ({ opening, relation: id }))]);
  }
  const projections = new Map<number, number>();
  for (const { one, many } of model.relations('IFCRELPROJECTSELEMENT', 4, 5))
    projections.set(one, (projections.get(one) ?? 0) + many.length);
  const wholesOf = (element: number): readonly number[] => {
    const wholes: number[] = [];
    for (let at = parent.get(element); at !== undefined && wholes.length < MOST_STEPS; at = parent.get(at)) wholes.push(at);
    return wholes;
  };
  const storeyOf = (element: number): Storey => {
    const place = [element, ...wholesOf(element)].map((at) => container.get(at)).find((at) => at !== undefined);
    return place === undefined ? { id: 0, name: '' } : { id: place, name: readOr(() => textOf(model.entity(place).values[2]), '') };
  };
  return { children, voids, projections, wholesOf, storeyOf };
}
