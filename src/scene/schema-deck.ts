/** Schema of the deck: outline, levels, bays, columns, outlets, edges. */

import { z } from 'zod';
import {
  choice,
  described,
  flag,
  idSchema,
  levelsShape,
  list,
  pointSchema,
  polygon,
  polyline,
  positive,
  quantity,
  reference,
  text,
} from './schema-numbers.ts';
import { phrase } from './words/phrase.ts';

const basisSchema = z
  .strictObject({
    document: text('Document the permitted loads are taken from, e.g. load plan').exactOptional(),
    revision: text('Revision of that document').exactOptional(),
    date: text('Date of that document as YYYY-MM-DD').exactOptional(),
    by: text('Who answers for it, e.g. structural engineer').exactOptional(),
  })
  .describe('Where the permitted loads come from; without document, revision and date the bay counts as not confirmed');

const baySchema = z
  .strictObject({
    id: idSchema,
    outline: polygon('Outline of the bay'),
    permanentKNm2: positive('Permitted permanent load', 'kN/m²').exactOptional(),
    imposedKNm2: positive('Permitted imposed load', 'kN/m²').exactOptional(),
    totalKNm2: positive('Permitted load in all, permanent and imposed together', 'kN/m²').exactOptional(),
    stageKNm2: positive('Permitted load while building', 'kN/m²').exactOptional(),
    vehicles: list(reference('Vehicle'), 'Vehicles the engineer permits here').exactOptional(),
    basis: basisSchema.exactOptional(),
  })
  .describe('Part of the deck with its own permitted load');

const columnSchema = z
  .strictObject({
    id: idSchema,
    at: pointSchema,
    sizeM: described(
      z.tuple([positive('Width of the column along x', 'm'), positive('Width of the column along y', 'm')]),
      'Size of the column',
      phrase('sizeList'),
    ),
  })
  .describe('Column');

const outletSchema = z
  .strictObject({
    id: idSchema,
    at: pointSchema,
    kind: choice(['outlet', 'overflow'], 'Kind of outlet'),
    lps: positive('Capacity', 'l/s').exactOptional(),
    invertM: quantity('Height at which water begins to flow out', 'm').exactOptional(),
  })
  .describe('Outlet or overflow');

const edgeSchema = z
  .strictObject({
    id: idSchema,
    line: polyline('Line of the edge'),
    kind: choice(['upstand', 'threshold'], 'Kind of edge'),
    membraneTopM: quantity('Level of the top end of the membrane', 'm'),
    drainedChannel: flag('Whether a drained channel runs in front of it').exactOptional(),
  })
  .describe('Edge of the membrane');

export const deckSchema = z
  .strictObject({
    outline: polygon('Outline of the deck'),
    openings: list(polygon('Outline of an opening'), 'Openings in the deck').exactOptional(),
    slabMm: positive('Thickness of the slab', 'mm').exactOptional(),
    rootResistant: flag('Whether the membrane (by others) resists roots').exactOptional(),
    levels: z.strictObject(levelsShape).describe('Levels of the top of the membrane; 0.000 everywhere where left out').exactOptional(),
    bays: list(baySchema, 'Bays with their permitted loads, may be empty'),
    columns: list(columnSchema, 'Columns under the deck').exactOptional(),
    outlets: list(outletSchema, 'Roof outlets and overflows').exactOptional(),
    edges: list(edgeSchema, 'Upstands and thresholds where the membrane ends').exactOptional(),
  })
  .describe('The podium deck');
