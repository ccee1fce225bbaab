/** Build-ups to begin with, one per use: our own compositions of catalogue materials that keep the rules of order and depth. */

import type { SceneBuildUp, SceneLayer } from '../model/scene-file.ts';

export const TEMPLATE_IDS = [
  'lawn',
  'perennials',
  'shrubs',
  'tree pit',
  'sedum',
  'path',
  'terrace',
  'timber deck',
  'drive lane',
  'fire lane',
  'gravel strip',
  'play surface',
] as const;
export type TemplateId = (typeof TEMPLATE_IDS)[number];

/** Words for them, and where their figures come from, stand in the tables of `ui/text`. */
export interface BuildUpTemplate {
  readonly id: TemplateId;
  readonly vegetation: SceneBuildUp['vegetation'];
  /** Bottom to top. */
  readonly layers: readonly SceneLayer[];
}

const layer = (material: string, thicknessMm?: SceneLayer['thicknessMm']): SceneLayer =>
  thicknessMm === undefined ? { material } : { material, thicknessMm };

/** Fleece and one slip sheet; under wheels the heavier fleece and two sheets. */
const ON_MEMBRANE = [layer('fleece-500'), layer('pe-slip-1')] as const;
const UNDER_WHEELS = [layer('fleece-800'), layer('pe-slip-2')] as const;

/** An element laid to hold water, filled a centimetre over its top, under filter fleece: beneath planting. */
const heldIn = (element: string): readonly SceneLayer[] => [
  { material: element, orientation: 'retention' },
  { material: 'lava-8-16', infill: true, thicknessMm: 10 },
  layer('filter-150'),
];

/** An element laid to let water go, under filter fleece: beneath paving. */
const drainedBy = (element: string): readonly SceneLayer[] => [{ material: element, orientation: 'drained' }, layer('filter-150')];

/** The same filled, so that it bears wheels. */
const filledUnderWheels: readonly SceneLayer[] = [
  { material: 'drain-25', orientation: 'drained' },
  { material: 'lava-8-16', infill: true, thicknessMm: 10 },
  layer('filter-200'),
];

export const BUILD_UP_TEMPLATES: readonly BuildUpTemplate[] = [
  {
    id: 'lawn',
    vegetation: { form: 'lawn', kNm2: 0.05 },
    layers: [...ON_MEMBRANE, ...heldIn('drain-40'), layer('substrate-lawn', 250), layer('turf-roll')],
  },
  {
    id: 'perennials',
    vegetation: { form: 'perennials', kNm2: 0.2 },
    layers: [...ON_MEMBRANE, ...heldIn('drain-40'), layer('substrate-intensive', 300)],
  },
  {
    id: 'shrubs',
    vegetation: { form: 'shrubs to 3 m', kNm2: 0.3 },
    layers: [...ON_MEMBRANE, ...heldIn('drain-60'), layer('substrate-intensive', 350)],
  },
  {
    id: 'tree pit',
    vegetation: { form: 'small trees to 10 m', kNm2: 0.6 },
    layers: [...ON_MEMBRANE, ...heldIn('drain-60'), layer('substrate-subsoil', 300), layer('substrate-tree', 350)],
  },
  {
    id: 'sedum',
    vegetation: { form: 'sedum, moss and herbs', kNm2: 0.1 },
    layers: [...ON_MEMBRANE, { material: 'drain-25', orientation: 'retention' }, layer('filter-100'), layer('substrate-extensive', 80)],
  },
  {
    id: 'path',
    vegetation: undefined,
    layers: [...ON_MEMBRANE, ...drainedBy('drain-25'), layer('base-2-32', 150), layer('bedding-2-8', 40), layer('slab-60')],
  },
  {
    id: 'terrace',
    vegetation: undefined,
    layers: [
      ...ON_MEMBRANE,
      ...drainedBy('drain-25'),
      layer('foam-glass', { min: 50, nominal: 150, max: 400 }),
      layer('separation-200'),
      layer('base-2-32', 120),
      layer('bedding-2-8', 40),
      layer('slab-60'),
    ],
  },
  {
    id: 'timber deck',
    vegetation: undefined,
    layers: [...ON_MEMBRANE, ...drainedBy('drain-25'), layer('gravel-16-32', 50), layer('timber-deck')],
  },
  {
    id: 'drive lane',
    vegetation: undefined,
    layers: [...UNDER_WHEELS, ...filledUnderWheels, layer('base-0-32', 250), layer('bedding-2-5', 40), layer('slab-80')],
  },
  {
    id: 'fire lane',
    vegetation: undefined,
    layers: [...UNDER_WHEELS, ...filledUnderWheels, layer('base-0-32', 250), layer('bedding-2-8', 40), layer('grass-paver-80')],
  },
  {
    id: 'gravel strip',
    vegetation: undefined,
    layers: [...ON_MEMBRANE, ...drainedBy('drain-25'), layer('gravel-strip', 150)],
  },
  {
    id: 'play surface',
    vegetation: undefined,
    layers: [...ON_MEMBRANE, ...drainedBy('drain-25'), layer('base-2-32', 150), layer('bound-gravel', 50)],
  },
];

/**
 * A template as a build-up; where the membrane does not resist roots, planting gets a root barrier beneath it.
 * @param template - the template
 * @param rootResistant - what the scene says of the membrane; nothing said counts as resistant, as the rules take it
 */
export function fromTemplate(template: BuildUpTemplate, rootResistant: boolean | undefined): Pick<SceneBuildUp, 'vegetation' | 'layers'> {
  const { vegetation } = template;
  const layers = rootResistant === false && vegetation ? [layer('root-barrier'), ...template.layers] : template.layers;
  return vegetation ? { vegetation, layers } : { layers };
}
