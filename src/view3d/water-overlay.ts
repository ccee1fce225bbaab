/** Water over the slab: the rising surface of a blocked outlet, and marks of outlets and overflows. */

import { Vector4 } from 'three';
import { cutWater, type WaterBed, type WaterSurface, waterBed, waterSurface } from '../mesh/water-surface.ts';
import type { Snapshot } from '../model/engine.ts';
import { isWaterMap } from '../model/maps.ts';
import { ACCENT, PAPER } from '../model/palette.ts';
import type { EdgeLines, SolidMesh } from '../model/picture.ts';
import type { BlockedOutlet } from '../model/water-result.ts';
import type { SceneState } from '../store/scene-store.ts';
import type { Cut, ViewState } from '../store/view-store.ts';
import { rgbOf } from './cell-colour.ts';
import { cutPlane } from './cut-plane.ts';
import { lineMaterial, waterMaterial } from './deck-materials.ts';
import type { DeckModel } from './deck-model.ts';
import { Drawn } from './drawn.ts';
import type { FieldLabel } from './field-labels.ts';
import { type Leaving, slabPrism, type WaterWords, waterMarks } from './water-marks.ts';

const RISE_MS = 1600;
/** Layers lifted less than this hide the slab: water is then drawn through them. */
const CLOSED = 0.05;
const WATER = '#2F7DAA';
const CLAY = '#A5371B';
const tone = (hex: string, opacity: number) => new Vector4(...rgbOf(hex).map((value) => value / 255), opacity);

/** What the water drawn was made from. */
interface Shown {
  readonly snapshot: Snapshot;
  readonly rise: BlockedOutlet | null;
  readonly heldMm: number | null;
  readonly cut: Cut;
  readonly marked: boolean;
}

export class WaterOverlay {
  private readonly model: DeckModel;
  private readonly fill: Drawn;
  private readonly cutFill: Drawn;
  private readonly shoreHalo: Drawn;
  private readonly shore: Drawn;
  private readonly cutLine: Drawn;
  private readonly markHalo: Drawn;
  private readonly marks: Drawn;
  private readonly closed: Drawn;
  private words: WaterWords = { outlet: ({ id }) => id, blocked: (id) => id, leaves: (into) => into ?? '' };
  private shown: Shown | null = null;
  private bed: WaterBed | null = null;
  private surface: WaterSurface | null = null;
  private riseStartMs: number | null = null;
  /** Over its own map the surface would change the colours that the legend explains. */
  private overMap = false;
  /** The same array as long as nothing changes. */
  labels: readonly FieldLabel[] = [];

  constructor(model: DeckModel) {
    this.model = model;
    const { uniforms } = model;
    const line = (order: number, hex: string, widthPx: number, look: { inFront?: boolean; uncut?: boolean }) =>
      new Drawn(lineMaterial(uniforms, { widthPx, tone: tone(hex, 1), ...look }), null, order);
    this.fill = new Drawn(waterMaterial(uniforms, tone(WATER, 0.42), false), null, 17);
    this.cutFill = new Drawn(waterMaterial(uniforms, tone(WATER, 0.6), true), null, 17);
    this.shoreHalo = line(18, PAPER, 4.5, {});
    this.shore = line(19, WATER, 2, {});
    this.cutLine = line(19, WATER, 2.5, { uncut: true });
    this.markHalo = line(20, PAPER, 5, { inFront: true });
    this.marks = line(21, ACCENT, 2, { inFront: true });
    this.closed = line(22, CLAY, 2.6, { inFront: true });
    for (const one of this.all()) {
      one.setVisible(false);
      model.root.add(one.mesh);
    }
  }

  private all(): readonly Drawn[] {
    return [this.fill, this.cutFill, this.shoreHalo, this.shore, this.cutLine, this.markHalo, this.marks, this.closed];
  }

  setWords(words: WaterWords): void {
    this.words = words;
    this.shown = null;
  }

  /** Takes over what changed in the stores. */
  follow({ snapshot, rise }: SceneState, view: ViewState): void {
    if (snapshot === null) return;
    const ofChosen = rise !== null && snapshot.scene.deck.outlets?.[rise.outlet]?.id === view.blocked ? rise : null;
    const marked = view.blocked !== null || view.map === 'held' || (view.map !== null && isWaterMap(view.map));
    const now: Shown = { snapshot, rise: ofChosen, heldMm: view.heldMm, cut: view.cut, marked };
    const was = this.shown;
    this.shown = now;
    const fresh = was?.snapshot !== snapshot || was.rise !== ofChosen;
    this.setLook(view);
    if (fresh || was.marked !== marked) this.setMarks(now);
    if (fresh) this.setBed(now, was?.rise?.outlet !== ofChosen?.outlet && !view.stillMotion);
    // Taken by hand, it no longer moves by itself.
    if (view.stillMotion || view.heldMm !== null) this.riseStartMs = null;
    if (fresh || was.heldMm !== view.heldMm || (this.riseStartMs === null && was.cut !== view.cut)) this.setLevel(this.depthM(now));
  }

  private setMarks({ snapshot, rise, marked }: Shown): void {
    const marks = marked ? waterMarks(snapshot, this.words, rise && leavingOf(snapshot, rise)) : null;
    this.labels = marks?.labels ?? [];
    show(this.marks, marks?.open ?? null);
    show(this.closed, marks?.closed ?? null);
    show(this.markHalo, marks && joined(marks.open, marks.closed));
  }

  private setBed({ snapshot, rise }: Shown, moves: boolean): void {
    const slab = slabPrism(snapshot.picture);
    const { water, levelM } = rise ?? { water: null, levelM: null };
    this.bed =
      slab === null || water === null || levelM === null
        ? null
        : waterBed(slab, { grid: snapshot.grid, cells: water.cells }, levelM - snapshot.datumM);
    this.riseStartMs = moves && this.bed !== null ? performance.now() : null;
  }

  /** Depth at its deepest as it stands now [m]. */
  private depthM({ rise, heldMm }: Shown): number {
    if (this.riseStartMs !== null) return 0;
    return heldMm === null ? (rise?.water?.mostM ?? 0) : heldMm / 1000;
  }

  private setLevel(depthM: number): void {
    const { bed, shown } = this;
    const rise = shown?.rise;
    if (!shown || bed === null || !rise?.water || rise.levelM === null) {
      this.surface = null;
      for (const one of [this.fill, this.cutFill, this.shoreHalo, this.shore, this.cutLine]) one.setVisible(false);
      return;
    }
    const levelM = rise.levelM - shown.snapshot.datumM - rise.water.mostM + depthM;
    this.surface = waterSurface(bed, levelM);
    const part = slabPrism(shown.snapshot.picture)?.parts[0] ?? 0;
    show(this.fill, facesOf(this.surface.corners, part));
    if (this.overMap) this.fill.setVisible(false);
    const shore = linesOf(this.surface.shore, part);
    show(this.shoreHalo, shore);
    show(this.shore, shore);
    const cut = shown.cut.on ? cutWater(this.surface, cutPlane(shown.snapshot.picture.boundsM, shown.cut)) : null;
    show(this.cutFill, cut && facesOf(cut.faces, part));
    show(this.cutLine, cut && linesOf(cut.line, part));
  }

  /** Height of the surface as drawn, local; null where none is [m]. */
  get drawnM(): number | null {
    return this.surface?.corners[2] ?? null;
  }

  private setLook({ explode, cut, map, mapOn }: ViewState): void {
    const through = explode < CLOSED && !cut.on;
    for (const one of [this.fill, this.shoreHalo, this.shore]) one.mesh.material.depthTest = !through;
    this.overMap = map === 'blocked' && (through || mapOn === 'slab');
    if (this.surface !== null) this.fill.setVisible(!this.overMap && this.surface.corners.length > 0);
  }

  /**
   * Goes on rising.
   * @param nowMs - time of the frame
   * @returns whether there is more to come
   */
  step(nowMs: number): boolean {
    if (this.riseStartMs === null || this.shown === null) return false;
    const share = Math.min(1, Math.max(0, (nowMs - this.riseStartMs) / RISE_MS));
    const eased = 1 - (1 - share) ** 2;
    this.setLevel(eased * (this.shown.rise?.water?.mostM ?? 0));
    if (share === 1) this.riseStartMs = null;
    return share < 1;
  }

  dispose(): void {
    for (const one of this.all()) {
      this.model.root.remove(one.mesh);
      one.dispose();
    }
  }
}

function leavingOf({ scene }: Snapshot, { outlet, into, overCell }: BlockedOutlet): Leaving {
  const outlets = scene.deck.outlets ?? [];
  const edges = scene.deck.edges ?? [];
  const taker = into < 0 ? null : (outlets[into]?.id ?? edges[into - outlets.length]?.id ?? null);
  return { outlet: outlets[outlet]?.id ?? '', into: taker, overCell };
}

function show(drawn: Drawn, of: EdgeLines | SolidMesh | null): void {
  const some = of !== null && of.parts.length > 0;
  drawn.setVisible(some);
  if (!some) return;
  if ('triangles' in of) drawn.setSolid(of);
  else drawn.setLines(of);
}

function joined(a: EdgeLines, b: EdgeLines): EdgeLines {
  return {
    positions: Float32Array.from([...a.positions, ...b.positions]),
    parts: Uint16Array.from([...a.parts, ...b.parts]),
    upper: Uint8Array.from([...a.upper, ...b.upper]),
  };
}

function linesOf(positions: Float64Array, part: number): EdgeLines {
  const vertices = positions.length / 3;
  return { positions: Float32Array.from(positions), parts: new Uint16Array(vertices).fill(part), upper: new Uint8Array(vertices).fill(1) };
}

function facesOf(corners: Float64Array, part: number): SolidMesh {
  const vertices = corners.length / 3;
  return {
    positions: Float32Array.from(corners),
    normals: new Int8Array(4 * vertices),
    parts: new Uint16Array(vertices).fill(part),
    upper: new Uint8Array(vertices).fill(1),
    triangles: Uint32Array.from({ length: vertices }, (_, v) => v),
  };
}
