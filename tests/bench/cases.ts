/** The benchmark's cases: what is timed, against which copy in the same process, and the proof that it is right. */

import Delaunator from 'delaunator';
import { evaluate } from '../../src/core/evaluate.ts';
import { coverageAreaM2, createRasteriser } from '../../src/core/geometry/coverage.ts';
import { gridOver } from '../../src/core/geometry/grid.ts';
import { signedAreaM2 } from '../../src/core/geometry/ring.ts';
import { netSurface } from '../../src/core/levels/net.ts';
import { sampleSurface } from '../../src/core/levels/surface.ts';
import { zoneLoads } from '../../src/core/loads/field.ts';
import { windowSums } from '../../src/core/loads/patch.ts';
import { axlePath, wheelsAt } from '../../src/core/loads/wheel-path.ts';
import { patchKPa, patchRing } from '../../src/core/loads/wheel-stress.ts';
import type { DeckInput } from '../../src/model/deck-input.ts';
import type { VehicleInput } from '../../src/model/wheel-input.ts';
import { type BenchCase, copyOf, prove } from './bench-case.ts';
import { benchDeck } from './bench-deck.ts';
import { editCases } from './edit-cases.ts';
import { lightenCases } from './lighten-cases.ts';
import { waterCases } from './water-cases.ts';

/** Cases for one cell size; throws where a result is wrong, before anything is timed. */
export function benchCases(cellM: number): BenchCase[] {
  const fine = cellM < 0.2;
  const input = benchDeck(cellM);
  const grid = gridOver(input.deck.outer, cellM, input.originM);
  const size = grid.columns * grid.rows;
  const whole = { column0: 0, column1: grid.columns, row0: 0, row1: grid.rows };
  const copyOne = copyOf(new Float32Array(size));
  const rasteriser = createRasteriser(grid);
  const rings = input.zones.map((zone) => zone.region.outer);
  let area = 0;
  for (const ring of rings) {
    const got = coverageAreaM2(rasteriser.cover([ring]), cellM);
    prove(Math.abs(got / signedAreaM2(ring) - 1) < 1e-9, 'cover-40: area of a zone');
    area += got;
  }
  prove(Math.abs(area - 1e4) < 1e-6, 'cover-40: the zones tile the deck');

  let evaluation = evaluate(input);
  let judgedAnew = evaluate(input);
  const { field, stageLoads, prepared } = evaluation;
  const outs = stageLoads.map(() => new Float64Array(size));
  const sums = new Float64Array(size);
  const levels = new Float64Array(size);
  const edited = [thicker(input, 0.25), thicker(input, 0.3)];
  proveDrag(input, edited[0]);
  const pressed = new Float32Array(size);
  proveWheels(rasteriser, new Float32Array(size), cellM);
  let turn = 0;
  const zoneCells = prepared.zones[20].cells.length;
  return [
    {
      id: 'cover-40',
      what: 'exact shares of 40 zones',
      limit: 'one Float32 grid',
      run: () => {
        for (const ring of rings) rasteriser.cover([ring]);
      },
      copy: copyOne,
      target: fine ? 5 : 40,
    },
    {
      id: 'cover-drag',
      what: 'shares of the 4 zones at a moved node',
      limit: 'one Float32 grid',
      run: () => {
        for (const z of [11, 12, 16, 17]) rasteriser.cover([rings[z]]);
      },
      copy: copyOne,
      target: fine ? 0.35 : 3.2,
    },
    {
      id: 'field-10',
      what: 'saturated load of 10 stages',
      limit: 'the arrays written (Float64)',
      run: () => {
        for (const [s, zones] of stageLoads.entries()) zoneLoads(field, zones, whole, outs[s]);
      },
      copy: copyOf(...outs),
      target: fine ? 1.8 : 2.2,
    },
    {
      id: 'patch',
      what: '1 m² mean at every cell',
      limit: 'one Float32 grid',
      run: () => windowSums(outs[9], grid, prepared.reach, whole, sums),
      copy: copyOne,
      target: fine ? 17.5 : 70,
    },
    {
      id: 'wheels',
      what: '577 positions of 10 wheels, stamped exactly and kept where greatest',
      limit: 'one Float32 grid',
      run: () => {
        pressed.fill(0);
        stampWheels(rasteriser, pressed);
      },
      copy: copyOne,
      target: fine ? 27 : 250,
    },
    {
      id: 'tin',
      what: 'net of 1,000 spots and its levels at all cells',
      limit: 'one Float32 grid',
      run: () => {
        sampleSurface(netSurface(input.levels!, 400), grid, whole, levels);
      },
      copy: copyOne,
      target: fine ? 12.5 : 140,
    },
    {
      id: 'tin-net',
      what: 'the net alone, constrained and extended',
      limit: 'plain delaunator on the same spots',
      run: () => {
        netSurface(input.levels!, 400);
      },
      copy: () => {
        new Delaunator(planOf(input));
      },
      target: null,
    },
    {
      id: 'drag',
      what: 'thickness in one zone: evaluate with the evaluation before',
      limit: 'a full evaluation of the prepared deck',
      run: () => {
        turn = 1 - turn;
        evaluation = evaluate(edited[turn], evaluation);
      },
      // A changed limit makes every bay be judged anew while all shapes stay prepared.
      copy: () => {
        judgedAnew = evaluate(otherLimits(input), judgedAnew);
      },
      target: 1 / 15,
    },
    {
      id: 'drag-copy',
      what: 'the same',
      limit: "the zone's own cells in 20 arrays (load and patch of 10 stages, Float64)",
      run: () => {
        turn = 1 - turn;
        evaluation = evaluate(edited[turn], evaluation);
      },
      copy: copyOf(new Float64Array(zoneCells * 20)),
      target: null,
    },
    ...waterCases(cellM),
    ...lightenCases(cellM),
    ...editCases(cellM),
  ];
}

/** Ten wheels, 260 kN. */
const LORRY: VehicleInput = {
  id: 'lorry',
  name: 'Lorry',
  axles: [
    { atM: 0, loadKN: 70, wheels: 2, trackM: 2, alongM: 0.25, acrossM: 0.35 },
    { atM: 4, loadKN: 95, wheels: 4, trackM: 1.9, alongM: 0.25, acrossM: 0.25 },
    { atM: 5.4, loadKN: 95, wheels: 4, trackM: 1.9, alongM: 0.25, acrossM: 0.25 },
  ],
  pad: null,
  radiusM: 12,
};
/** About 144 m, so that 577 positions lie 0.25 m apart; the growth of the patches changes as the cover does, 0.2 to 0.65 m. */
const ROAD = axlePath([8, 12, 80, 20, 84, 90.6], LORRY.radiusM);
const POSITIONS = 577;
const growthM = (x: number) => 0.2 + 0.0045 * x;

function stampWheels(rasteriser: ReturnType<typeof createRasteriser>, out: Float32Array): void {
  for (let i = 0; i < POSITIONS; i++) stampOne(rasteriser, out, i);
}

function stampOne(rasteriser: ReturnType<typeof createRasteriser>, out: Float32Array, i: number): number {
  const wheels = wheelsAt(ROAD, LORRY, (i * ROAD.lengthM) / (POSITIONS - 1), 1);
  return rasteriser.raise(
    wheels.map((wheel) => patchRing(wheel, growthM(wheel.x))),
    wheels.map((wheel) => patchKPa(wheel, growthM(wheel.x))),
    out,
  );
}

/** The force of every position, and the peak against four times as many positions. */
function proveWheels(rasteriser: ReturnType<typeof createRasteriser>, out: Float32Array, cellM: number): void {
  for (let i = 0; i < POSITIONS; i++) {
    const force = stampOne(rasteriser, out, i) * cellM ** 2;
    prove(Math.abs(force / 260 - 1) < 1e-12, `wheels: force of position ${i}`);
  }
  const peak = out.reduce((most, value) => Math.max(most, value), 0);
  const finest = new Float32Array(out.length);
  for (let i = 0; i < 4 * POSITIONS; i++) {
    const wheels = wheelsAt(ROAD, LORRY, (i * ROAD.lengthM) / (4 * POSITIONS), 1);
    const rings = wheels.map((wheel) => patchRing(wheel, growthM(wheel.x)));
    rasteriser.raise(
      rings,
      wheels.map((wheel) => patchKPa(wheel, growthM(wheel.x))),
      finest,
    );
  }
  const better = finest.reduce((most, value) => Math.max(most, value), 0);
  prove(Math.abs(better - peak) < 0.5, `wheels: peak ${peak} against ${better} kPa in finer steps`);
}

/** A drag must give what a full evaluation gives. */
function proveDrag(input: DeckInput, edited: DeckInput): void {
  const dragged = evaluate(edited, evaluate(input));
  const full = evaluate(edited);
  full.bays.forEach((bay, b) => {
    prove(bay.patch.kNm2 === dragged.bays[b].patch.kNm2, `drag: patch of bay ${b}`);
    prove(Math.abs(bay.meanKNm2 - dragged.bays[b].meanKNm2) < 1e-12, `drag: mean of bay ${b}`);
  });
}

function thicker(input: DeckInput, thicknessM: number): DeckInput {
  const zones = input.zones.map((zone, z) => {
    if (z !== 20) return zone;
    const layers = zone.buildUp.layers.map((layer, i) => (i === 8 ? { ...layer, thicknessM } : layer));
    return { ...zone, buildUp: { ...zone.buildUp, layers } };
  });
  return { ...input, zones };
}

function otherLimits(input: DeckInput): DeckInput {
  return { ...input, bays: input.bays.map((bay) => ({ ...bay, imposedKNm2: 5 + Math.random() })) };
}

function planOf(input: DeckInput): Float64Array {
  const spots = input.levels!.spots;
  return Float64Array.from({ length: (spots.length / 3) * 2 }, (_, i) => spots[3 * (i >> 1) + (i & 1)]);
}
