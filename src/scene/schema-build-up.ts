/** Schema of materials, vehicles, build-ups, zones and objects. */

import { z } from 'zod';
import { ROLES } from '../model/roles.ts';
import { RUNOFF_SURFACES } from '../model/runoff.ts';
import {
  choice,
  described,
  filledList,
  flag,
  idSchema,
  levelsShape,
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
import { toleranceSchema } from './schema-rules.ts';
import { phrase } from './words/phrase.ts';

export const roleSchema = choice(ROLES, 'Role of the layer');

function weights(unit: string) {
  return {
    dry: positive('Dry', unit),
    saturated: positive('Saturated with water', unit),
  };
}

export const materialSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown'),
    role: roleSchema,
    density: z
      .strictObject(weights('kg/m³'))
      .describe('Density as placed and compacted, for granular materials and slabs [kg/m³]')
      .exactOptional(),
    areal: z.strictObject(weights('kg/m²')).describe('Mass per area, for sheets and elements, instead of density [kg/m²]').exactOptional(),
    thicknessMm: positive('Thickness', 'mm').exactOptional(),
    voidLm2: quantity('Volume of the voids an infill can take', 'l/m²', { min: 0 }).exactOptional(),
    retentionLm2: quantity('Water held in the element', 'l/m²', { min: 0 }).exactOptional(),
    waterCapacityPercent: quantity('Water held by the material, by volume', '%', { min: 0, max: 100 }).exactOptional(),
    compactionFactor: quantity('Loose volume per placed volume', '-', { min: 1, max: 5 }).exactOptional(),
    lapPercent: quantity('Extra area for laps and cuts', '%', { min: 0, max: 100 }).exactOptional(),
    bearingKPa: positive('Permitted pressure on its top', 'kPa').exactOptional(),
    dispersal: quantity("Widening of a wheel's patch on every side per depth", '-', { min: 0, max: 10 }).exactOptional(),
    flowLsm: quantity('Flow in its plane per metre of width', 'l/(s·m)', { min: 0 }).exactOptional(),
    porePercent: quantity('Pores that only ponded water fills, beyond the water it holds', '%', { min: 0, max: 100 }).exactOptional(),
    permeabilityMs: positive('Permeability as a granular drain', 'm/s').exactOptional(),
    uplift: choice(['sealed', 'grains'], 'How water lifts it: as a sealed block, or by its grains with water between them').exactOptional(),
    surface: choice(RUNOFF_SURFACES, 'What its surface is to a table of run-off coefficients').exactOptional(),
    mineral: flag('Substrate without organic matter, which may lie deep').exactOptional(),
    tolerance: toleranceSchema.exactOptional(),
    price: z
      .strictObject({
        per: choice(['m3', 'm2', 't'], 'Unit of the price'),
        amount: quantity('Price per unit', "the scene's currency", { min: 0 }),
      })
      .describe('Price')
      .exactOptional(),
    delivery: z
      .strictObject({
        unit: text('Unit of delivery, e.g. truck'),
        m3: positive('Volume of one delivery', 'm³').exactOptional(),
        kg: positive('Mass of one delivery', 'kg').exactOptional(),
      })
      .describe('How it is delivered')
      .exactOptional(),
    source: text('Where the numbers come from').exactOptional(),
  })
  .describe('Material; replaces the catalogue entry with the same id');

export const vehicleSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown'),
    source: text('Where the numbers come from').exactOptional(),
    widthM: positive('Width over all', 'm'),
    axles: filledList(
      z
        .strictObject({
          atM: quantity('Distance behind the front axle', 'm', { min: 0 }),
          loadKN: positive('Load of the axle', 'kN'),
          wheels: described(z.number().int().min(1).max(16), 'Wheels on the axle', phrase('wholeNumber', { a: 1, b: 16 })),
          trackM: quantity('Distance between the outer wheels, centre to centre', 'm', { min: 0 }),
          contactM: described(
            z.tuple([positive('Length of the contact patch', 'm'), positive('Width of the contact patch', 'm')]),
            'Contact patch of a wheel, along × across',
            phrase('sizeList'),
          ),
        })
        .describe('Axle'),
      'Axles from the front',
    ),
  })
  .describe('Vehicle; replaces the catalogue entry with the same id');

const thicknessSchema = described(
  z.union([
    quantity('Thickness', 'mm', { min: 0 }),
    z.strictObject({
      min: quantity('Least thickness', 'mm', { min: 0 }),
      max: positive('Greatest thickness', 'mm'),
      nominal: quantity('Usual thickness', 'mm', { min: 0 }),
    }),
  ]),
  'Thickness',
  phrase('thicknessOrRange'),
);

const layerSchema = z
  .strictObject({
    material: reference('Material of the layer'),
    orientation: choice(['retention', 'drained'], 'Which way up the element is laid').exactOptional(),
    infill: flag('Whether it fills the voids of the element below; thicknessMm then lies above the element').exactOptional(),
    thicknessMm: thicknessSchema.exactOptional(),
  })
  .describe('Layer of a build-up');

export const buildUpSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown'),
    vegetation: z
      .strictObject({ form: text('Form of vegetation, e.g. lawn'), kNm2: quantity('Load of the vegetation', 'kN/m²', { min: 0 }) })
      .describe('Vegetation')
      .exactOptional(),
    runoff: z
      .strictObject({
        peak: quantity('Peak runoff coefficient', '-', { min: 0, max: 1 }).exactOptional(),
        annual: quantity('Annual runoff coefficient', '-', { min: 0, max: 1 }).exactOptional(),
      })
      .describe('Runoff coefficients instead of the table')
      .exactOptional(),
    layers: list(layerSchema, 'Layers from bottom to top'),
  })
  .describe('Build-up');

const finishSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('build-up').describe('Finished level: deck level and all thicknesses') }),
    z.strictObject({ kind: z.literal('level').describe('Finished level: one level'), levelM: quantity('Finished level', 'm') }),
    z.strictObject({
      kind: z.literal('plane').describe('Finished level: a plane with a fall'),
      at: point3Schema,
      fallPercent: quantity('Fall', '%', { min: 0, max: 100 }),
      towardsDeg: quantity('Bearing towards which it falls, clockwise from +y', '°', { min: -360, max: 360 }),
    }),
    z.strictObject({ kind: z.literal('spots').describe('Finished level: its own net of levels'), ...levelsShape }),
  ])
  .describe('How the finished level is given');

export const zoneSchema = z
  .strictObject({
    id: idSchema,
    name: text('Name shown').exactOptional(),
    outline: polygon('Outline of the zone'),
    holes: list(polygon('Outline of a hole'), 'Holes in the zone').exactOptional(),
    use: text('Use, e.g. lawn').exactOptional(),
    buildup: reference('Build-up of the zone'),
    imposedKNm2: quantity('Imposed load', 'kN/m²', { min: 0 }).exactOptional(),
    finish: finishSchema.exactOptional(),
  })
  .describe('Zone');

const named = { id: idSchema, name: text('Name shown').exactOptional() };

const retainingSchema = z.strictObject({
  kind: z
    .literal('retaining')
    .describe(
      'An L-shaped retaining wall standing on the build-up. Its load on the deck is stem and base slab; the soil on its heel is that of the zone',
    ),
  ...named,
  line: polyline('Free face of the stem; the base slab reaches from here under the soil'),
  side: choice(['left', 'right'], 'Where the soil lies, seen along the line from its first point'),
  retainedM: positive("Height from the underside of the base slab to the soil's surface", 'm'),
  baseM: positive('Width of the base slab, from the free face of the stem to its end under the soil', 'm'),
  stemM: positive('Thickness of the stem, less than baseM', 'm'),
  slabM: positive('Thickness of the base slab, less than retainedM', 'm'),
  backfill: z
    .strictObject({
      density: positive('Density saturated with water', 'kg/m³'),
      frictionDeg: quantity('Angle of internal friction', '°', { min: 0, max: 60 }),
    })
    .describe('Soil behind the wall, drained: no water pressure is counted'),
  surchargeKNm2: quantity('Live load behind the wall; without it the imposed load of the zone behind', 'kN/m²', { min: 0 }).exactOptional(),
  baseFriction: quantity('Tangent of the angle of friction under the base, as measured: membrane and fleece slide', '-', {
    above: 0,
    max: 1,
  }),
  wallDensity: positive('Density of the wall, else that of reinforced concrete', 'kg/m³').exactOptional(),
});

export const objectSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('tree').describe('A tree with its root ball'),
      ...named,
      at: pointSchema,
      massKg: positive('Mass of the tree with its root ball', 'kg'),
      spreadM: positive('Diameter of the disc its load spreads over', 'm'),
    }),
    z.strictObject({
      kind: z.literal('line').describe('A wall, kerb or other line load'),
      ...named,
      line: polyline('Line of the object'),
      kNm: positive('Load per metre', 'kN/m'),
      widthM: positive('Width of the strip it stands on', 'm'),
    }),
    z.strictObject({
      kind: z.literal('block').describe('A pool, pavilion or other load on an area'),
      ...named,
      outline: polygon('Outline of the object'),
      kNm2: positive('Load per area', 'kN/m²'),
      heightM: positive('Height as drawn', 'm').exactOptional(),
    }),
    retainingSchema,
  ])
  .describe('Object');
