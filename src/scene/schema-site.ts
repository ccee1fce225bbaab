/** Schema of traffic, stages, access points and views. */

import { z } from 'zod';
import { SHOW_KEYS } from '../model/view-show.ts';
import { roleSchema } from './schema-build-up.ts';
import {
  choice,
  described,
  filledList,
  idSchema,
  list,
  point3Schema,
  pointSchema,
  polygon,
  polyline,
  positive,
  quantity,
  reference,
  text,
} from './schema-numbers.ts';
import { phrase } from './words/phrase.ts';

export const trafficSchema = z
  .strictObject({
    id: idSchema,
    vehicle: reference('Vehicle'),
    route: polyline('Line the vehicle follows'),
    widthM: positive('Width of the lane', 'm').exactOptional(),
  })
  .describe('Traffic on the finished deck');

export const setUpAreaSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown').exactOptional(),
    kind: choice(['set-up', 'movement'], 'Set-up area for a ladder or platform, or movement area to work from'),
    outline: polygon('Outline of the area'),
    vehicle: reference('Vehicle that stands there'),
    building: polyline('Foot of the building it serves').exactOptional(),
  })
  .describe('Place where an appliance stands to work');

const placeSchema = z
  .strictObject({
    zones: filledList(reference('Zone'), 'Zones in which the layers are placed; all zones where left out').exactOptional(),
    roles: filledList(roleSchema, 'Roles of the layers placed').exactOptional(),
    objects: filledList(reference('Object'), 'Objects placed').exactOptional(),
  })
  .describe('What the stage places');

const stockpileSchema = z
  .strictObject({
    id: idSchema,
    outline: polygon('Outline of the stockpile'),
    material: reference('Material, lying loose'),
    heightM: positive('Height of the heap', 'm'),
  })
  .describe('Stockpile');

const holdPointSchema = z
  .strictObject({
    id: idSchema,
    says: text('What must be seen before work goes on'),
    releasedBy: text('Who releases it').exactOptional(),
    evidence: text('What shows that it is met').exactOptional(),
    on: text('Date of release as YYYY-MM-DD').exactOptional(),
  })
  .describe('Hold point');

export const stageSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown'),
    place: list(placeSchema, 'Layers and objects placed in this stage').exactOptional(),
    stockpiles: list(stockpileSchema, 'Stockpiles lying there in this stage').exactOptional(),
    plant: list(
      z.strictObject({ vehicle: reference('Vehicle'), route: polyline('Line the plant follows') }).describe('Plant on its way'),
      'Plant moving on the deck in this stage',
    ).exactOptional(),
    floodTestMm: quantity('Depth of water in a flood test', 'mm', { min: 0 }).exactOptional(),
    holdPoints: list(holdPointSchema, 'Hold points').exactOptional(),
    cautions: list(text('Caution'), 'Cautions').exactOptional(),
  })
  .describe('Stage of construction');

export const accessPointSchema = z
  .strictObject({
    id: idSchema,
    at: pointSchema,
    kind: choice(['ramp', 'crane', 'blower', 'gate'], 'Kind of access'),
    reachM: positive('Reach', 'm').exactOptional(),
  })
  .describe('Access for material');

const SHOW_TEXT = `What the view shows. ${Object.entries(SHOW_KEYS)
  .map(([key, holds]) => `${key}: ${holds}`)
  .join('; ')}`;

export const viewSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown'),
    eye: point3Schema,
    target: point3Schema,
    says: text('What to see there').exactOptional(),
    show: z
      .record(z.string(), described(z.union([z.string(), z.number(), z.boolean()]), 'Setting', phrase('setting')))
      .describe(SHOW_TEXT)
      .exactOptional(),
  })
  .describe('Saved view');
