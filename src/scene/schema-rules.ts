/** Schema of rule values, tolerances and probed depths. */

import { z } from 'zod';
import { FIRE_TABLE_IDS } from '../model/fire-access.ts';
import { RUNOFF_TABLE_IDS } from '../model/runoff.ts';
import { choice, idSchema, pointSchema, positive, quantity, reference, text } from './schema-numbers.ts';

export const toleranceSchema = z
  .strictObject({
    thicknessMm: quantity('Thickness may be more or less by this', 'mm', { min: 0 }).exactOptional(),
    densityPercent: quantity('Density may be more or less by this', '%', { min: 0, max: 100 }).exactOptional(),
  })
  .describe('Tolerance');

export const limitsSchema = z
  .strictObject({
    substrateMm: z
      .record(z.string(), positive('Least depth of substrate', 'mm'))
      .describe('Least depth of substrate by form of vegetation [mm]')
      .exactOptional(),
    treeSoilM3: positive('Least soil volume of a tree', 'm³').exactOptional(),
    treeSoilMm: positive('Least soil depth of a tree', 'mm').exactOptional(),
    subsoilBelowMm: positive('Substrate deeper than this needs mineral subsoil below', 'mm').exactOptional(),
    baseCourseMm: positive('Least base course under vehicles', 'mm').exactOptional(),
    liftMm: positive('Greatest placed thickness of one lift', 'mm').exactOptional(),
    upstandMm: positive('Least height of the membrane above the finish at upstands', 'mm').exactOptional(),
    sillMm: positive('Least height of the membrane above the finish at sills with a drained channel', 'mm').exactOptional(),
    stripM: quantity('Width of the strip without plants along edges and round outlets', 'm', { min: 0 }).exactOptional(),
    fallPercent: quantity('Least fall of surfaces that bear water', '%', { min: 0, max: 100 }).exactOptional(),
    pondMm: quantity('Greatest depth of water that may stay where falls are missing', 'mm', { min: 0 }).exactOptional(),
    slidingRatio: quantity('Least friction under a retaining edge per thrust', '-', { min: 1, max: 10 }).exactOptional(),
    overturningRatio: quantity('Least stabilising per overturning moment of a retaining edge', '-', { min: 1, max: 10 }).exactOptional(),
    fireTable: choice(FIRE_TABLE_IDS, 'Rule for lanes of fire appliances').exactOptional(),
    dynamicFactor: quantity('Factor on wheel loads for moving and braking', '-', { min: 1, max: 3 }).exactOptional(),
    source: text('Where these values come from').exactOptional(),
  })
  .describe('Rule values that replace the defaults');

export const rainSchema = z
  .strictObject({
    designLpsHa: positive('Design rain', 'l/(s·ha)'),
    extremeLpsHa: positive('Extreme rain', 'l/(s·ha)'),
    annualMm: positive('Rain of a year', 'mm').exactOptional(),
    table: choice(RUNOFF_TABLE_IDS, 'Table of peak run-off coefficients').exactOptional(),
    filledPercent: quantity('How full the storage of the build-ups is before the rain', '%', { min: 0, max: 100 }).exactOptional(),
    source: text('Where the rain figures come from').exactOptional(),
  })
  .describe('Rain');

export const flotationSchema = z
  .strictObject({
    waterLevelM: quantity('Level up to which water stands, instead of the lowest overflow of each basin', 'm').exactOptional(),
    upFactor: quantity('Partial factor on uplift', '-', { min: 1, max: 3 }).exactOptional(),
    downFactor: quantity('Partial factor on the weight that holds', '-', { above: 0, max: 1 }).exactOptional(),
    source: text('Where these values come from').exactOptional(),
  })
  .describe('Standing water and factors for the check whether light layers float');

export const probeSchema = z
  .strictObject({
    id: idSchema,
    at: pointSchema,
    layer: reference('Material of the layer probed; without it the whole build-up').exactOptional(),
    measuredMm: quantity('Depth measured', 'mm', { min: 0 }),
    on: text('Date of the measurement').exactOptional(),
    by: text('Who measured').exactOptional(),
  })
  .describe('Depth measured on site');

export const historySchema = z
  .strictObject({
    on: text('Date, with or without the time of day, as ISO 8601 writes it').exactOptional(),
    says: text('What was read and what was mended'),
  })
  .describe('One step by which the scene came from drawings');
