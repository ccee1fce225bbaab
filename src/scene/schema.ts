/** Schema of the scene file (`*.scene.json`, version 1); unknown keys are errors. Units stand in the keys. */

import { z } from 'zod';
import type { SceneFile } from '../model/scene-file.ts';
import { buildUpSchema, materialSchema, objectSchema, vehicleSchema, zoneSchema } from './schema-build-up.ts';
import { deckSchema } from './schema-deck.ts';
import { idSchema, list, quantity, text } from './schema-numbers.ts';
import { flotationSchema, historySchema, limitsSchema, probeSchema, rainSchema, toleranceSchema } from './schema-rules.ts';
import { accessPointSchema, setUpAreaSchema, stageSchema, trafficSchema, viewSchema } from './schema-site.ts';

export const SCENE_FORMAT = 'loamdeck-scene';
export const SCENE_VERSION = 1;

/** What a scheme decides; a kept variant has the same keys. */
const scheme = {
  materials: list(materialSchema, 'Materials of this scene').exactOptional(),
  vehicles: list(vehicleSchema, 'Vehicles of this scene').exactOptional(),
  buildups: list(buildUpSchema, 'Build-ups'),
  zones: list(zoneSchema, 'Zones'),
  objects: list(objectSchema, 'Trees, lines and blocks').exactOptional(),
  traffic: list(trafficSchema, 'Traffic').exactOptional(),
  setUpAreas: list(setUpAreaSchema, 'Set-up and movement areas of appliances').exactOptional(),
  stages: list(stageSchema, 'Stages in order').exactOptional(),
  accessPoints: list(accessPointSchema, 'Access points').exactOptional(),
};

const variantSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name of the variant'),
    says: text('What it is about').exactOptional(),
    scheme: z.strictObject(scheme).describe('What it has instead of the keys of the same name in the scene'),
  })
  .describe('Another scheme for the same deck');

export const sceneFileSchema = z
  .strictObject({
    $schema: text('Address of the JSON Schema, for editors').exactOptional(),
    format: z.literal(SCENE_FORMAT).describe(`Kind of file: "${SCENE_FORMAT}"`),
    version: z.literal(SCENE_VERSION).describe(`Version of the scene file: ${SCENE_VERSION}`),
    name: text('Name of the scene'),
    about: text('What the scene shows').exactOptional(),
    currency: text('Currency of prices, e.g. EUR').exactOptional(),
    grid: z
      .strictObject({ cellM: quantity('Side of a grid cell', 'm', { min: 0.05, max: 2 }).exactOptional() })
      .describe('Calculation grid')
      .exactOptional(),
    rain: rainSchema.exactOptional(),
    flotation: flotationSchema.exactOptional(),
    deck: deckSchema,
    ...scheme,
    views: list(viewSchema, 'Saved views').exactOptional(),
    limits: limitsSchema.exactOptional(),
    tolerance: toleranceSchema.exactOptional(),
    probes: list(probeSchema, 'Depths measured on site').exactOptional(),
    history: list(historySchema, 'What was read from drawings and mended, oldest first').exactOptional(),
    variants: list(variantSchema, 'Other schemes for the same deck, kept to be compared').exactOptional(),
  })
  .describe('Scene: a podium deck with its build-ups, zones, loads and stages') satisfies z.ZodType<SceneFile>;
