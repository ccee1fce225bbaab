/** What is asked and said on building models alone. */

import { allEn, countEn, numberEn, someEn } from './number-words.ts';

export interface Levels {
  readonly fromM: number;
  readonly toM: number;
}
export interface MapPlace {
  readonly eastM: number;
  readonly northM: number;
  readonly levelM: number;
  readonly turnDeg: number;
}
export interface WorldPlace {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly turnDeg: number;
  readonly tiltDeg: number;
}
/** How the outline came about. */
export type SlabWay = 'profile' | 'faces' | 'mesh';

const at = ({ fromM, toM }: Levels) =>
  numberEn(fromM) === numberEn(toM) ? `top at ${numberEn(fromM)} m` : `top from ${numberEn(fromM)} to ${numberEn(toM)} m`;
const storey = (name: string) => (name === '' ? 'no storey' : `storey "${name}"`);
const area = (areaM2: number) => `${numberEn(areaM2, 1)} m²`;
const place = ({ eastM, northM, levelM, turnDeg }: MapPlace) =>
  `east ${numberEn(eastM)} m, north ${numberEn(northM)} m, level ${numberEn(levelM)} m, turned by ${numberEn(turnDeg)}°`;

const WAYS: Readonly<Record<SlabWay, string>> = {
  profile: 'its corners are those of the profile in the file',
  faces: 'its outline was put together from the upward faces in the file and keeps their corners',
  mesh: 'its body is cut, bent or swept in the file, so that its outline comes from a surface of triangles made of it, with 180 straight chords to a full circle',
};

export const MODEL_QUESTIONS_EN = {
  SLAB: (v: { readonly count: number; readonly offered: number }) =>
    `The model has ${someEn(v.count, 'slab', 'slabs')}; ${v.count === v.offered ? 'all are' : `the ${countEn(v.offered)} largest are`} offered. Which is the deck?`,
  ORIGIN: (v: MapPlace) => `The model says where its origin lies on the map: ${place(v)}. Which coordinates are wanted?`,
} as const;

export const MODEL_CHOICES_EN = {
  SLAB: (v: Levels & { readonly name: string; readonly kind: string; readonly storey: string; readonly areaM2: number }) =>
    `"${v.name}" (${v.kind}), ${storey(v.storey)}, ${area(v.areaM2)}, ${at(v)}`,
  SLAB_STOREY: (v: Levels & { readonly count: number; readonly storey: string; readonly areaM2: number }) =>
    `${allEn(v.count, 'slabs')} of ${storey(v.storey)} as one deck, ${area(v.areaM2)}, ${at(v)}`,
  ORIGIN_PROJECT: (_: object) => 'Those of the project, as drawn.',
  ORIGIN_MAP: (v: MapPlace) => `Those of the map: ${place(v)}.`,
} as const;

export const MODEL_MENDS_EN = {
  SLAB_READ: (v: Levels & { readonly name: string; readonly way: SlabWay }) => `The deck is "${v.name}": ${WAYS[v.way]}; ${at(v)}.`,
  SLABS_UNITED: (v: { readonly count: number; readonly areas: number }) =>
    `${someEn(v.count, 'slab', 'slabs')} of one storey were united; they make ${someEn(v.areas, 'area', 'areas')}.`,
  SLAB_OPENINGS: (v: { readonly through: number }) =>
    `${someEn(v.through, 'opening goes', 'openings go')} through the slab and ${v.through === 1 ? 'is' : 'are'} cut out.`,
  OPENINGS_MESHED: (v: { readonly count: number }) =>
    `${someEn(v.count, 'opening is', 'openings are')} in that surface, as deep as the model has them: through the slab, or as steps in its top.`,
  PARTS_COVERED: (v: { readonly count: number }) =>
    `${someEn(v.count, 'part lies', 'parts lie')} wholly or partly under others; levels are those of the uppermost.`,
  OPENINGS_LEFT: (v: { readonly recesses: number; readonly below: number }) =>
    `Not cut out, since they do not go through: ${someEn(v.recesses, 'recess', 'recesses')} in the top, ${someEn(v.below, 'opening', 'openings')} from below only.`,
  STEPS_KEPT: (v: { readonly count: number; readonly insideMm: number }) =>
    `Parts of the top lie side by side at different levels: along ${someEn(v.count, 'edge', 'edges')} around them levels were taken ${v.insideMm} mm inside, so that the steps stay.`,
  COLUMNS_TURNED: (v: { readonly count: number; readonly mostDeg: number }) =>
    `${someEn(v.count, 'column stands', 'columns stand')} turned by up to ${numberEn(v.mostDeg, 1)}°: place and size are kept, sides are laid along the axes.`,
  COLUMNS_BOXED: (v: { readonly count: number }) => `${someEn(v.count, 'column counts', 'columns count')} by the box around its section.`,
  MAP_LEFT: (v: MapPlace) => `Coordinates stay those of the project; its origin lies on the map at ${place(v)}.`,
  MAP_TAKEN: (v: MapPlace) => `The plan was moved to the map: ${place(v)}. Lengths keep the scale of the project.`,
  MAP_SCALE: (v: { readonly scale: number }) =>
    `The model gives a scale to the map: 1 m in the model is ${numberEn(v.scale, 8)} m there. It was not applied; lengths are those of the model.`,
  WORLD_LEFT: (v: WorldPlace) =>
    `The coordinate system of the whole model does not lie at its origin: x ${numberEn(v.xM)} m, y ${numberEn(v.yM)} m, z ${numberEn(v.zM)} m, turned by ${numberEn(v.turnDeg)}°, tilted by ${numberEn(v.tiltDeg)}°. It was not applied; compare place and levels with the plans.`,
  TRUE_NORTH: (v: { readonly turnDeg: number }) =>
    `True north lies ${numberEn(v.turnDeg)}° clockwise from the upward axis of the plan; the plan was not turned.`,
  SITE_LEVEL: (v: { readonly levelM: number }) =>
    `The site gives its own level as ${numberEn(v.levelM)} m; levels stay those of the project, without it.`,
} as const;

const says = (got: string, expected: string, mend: string) => ({ got, expected, mend });
const SLAB = 'a slab (IfcSlab or IfcRoof) with a body';

export const MODEL_ISSUES_EN = {
  'FILE_KIND:schema': (v: { readonly schema: string }) =>
    says(
      v.schema === '' ? 'a building model that does not name its schema' : `a building model of the schema ${v.schema}`,
      'IFC2X3 or IFC4',
      'Export the slabs and columns again as IFC4 or IFC2X3.',
    ),
  NO_SLAB: (v: { readonly slabs: number; readonly columns: number }) =>
    says(
      `a building model with ${someEn(v.slabs, 'slab', 'slabs')} and ${someEn(v.columns, 'column', 'columns')}`,
      SLAB,
      'Ask for the structural model, or for the outline of the deck as DXF.',
    ),
  'NO_SLAB:body': (v: { readonly slabs: number; readonly columns: number }) =>
    says(
      `${someEn(v.slabs, 'slab', 'slabs')} without a body that can be laid out, and ${someEn(v.columns, 'column', 'columns')}`,
      SLAB,
      'Export the model again with bodies (reference view or coordination view), or the outline of the deck as DXF.',
    ),
  MODEL_SHAPE: (v: { readonly count: number; readonly sample: string }) =>
    says(
      `${someEn(v.count, 'slab', 'slabs')} with a body that cannot be laid out, for example "${v.sample}"`,
      'swept profiles, faces, or bodies cut by planes',
      'They are not offered. If the deck is among them, export it again, or its outline as DXF.',
    ),
  MODEL_OPENINGS: (v: { readonly count: number; readonly name: string }) =>
    says(
      `${someEn(v.count, 'opening', 'openings')} of "${v.name}" with a body that cannot be laid out`,
      'swept profiles, faces, or bodies cut by planes',
      'The deck is read as if they were closed: draw them in the plan, or export the model again.',
    ),
  MODEL_PROJECTIONS: (v: { readonly count: number; readonly name: string }) =>
    says(
      `${someEn(v.count, 'projection', 'projections')} added to "${v.name}"`,
      'a slab with openings only',
      'They are not in its outline and levels: draw them in the plan.',
    ),
  OPENINGS_BESIDE: (v: { readonly count: number; readonly name: string }) =>
    says(
      `${someEn(v.count, 'opening', 'openings')} of "${v.name}" beside it, seen from above`,
      'openings that cut the slab they belong to',
      'Nothing is cut out for them. If one is missing, draw it in the plan, or export the model again.',
    ),
  MODEL_SLABS_LEFT: (v: { readonly count: number; readonly most: number }) =>
    says(
      `${someEn(v.count, 'slab', 'slabs')} more than are looked at`,
      `at most ${countEn(v.most)} slabs`,
      'If the deck is missing, export only its storey.',
    ),
  MODEL_UNIT: (v: { readonly unitM: number }) =>
    says(
      v.unitM > 0 ? `a unit of length of ${numberEn(v.unitM, 7)} m` : 'a unit of length that cannot be read',
      'metre with a prefix, foot, inch or yard',
      'The unit is asked instead: choose the one that gives the true size, and check a known length.',
    ),
  MODEL_DAMAGED: (v: { readonly count: number }) =>
    says(
      `${someEn(v.count, 'line', 'lines')} out of form`,
      'entities with a number, a type and values',
      'Left out; export the model again if anything is missing.',
    ),
} as const;

export type ModelQuestions = typeof MODEL_QUESTIONS_EN;
export type ModelChoices = typeof MODEL_CHOICES_EN;
export type ModelMends = typeof MODEL_MENDS_EN;
export type ModelIssues = typeof MODEL_ISSUES_EN;
