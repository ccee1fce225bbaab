/** Everything drawn of one picture: four meshes, whatever the number of zones, moved and coloured by uniforms. */

import { type BufferGeometry, DoubleSide, FrontSide, Group, Scene, Vector4 } from 'three';
import type { CellMap, GridShape } from '../model/maps.ts';
import { ACCENT, INK, PAPER } from '../model/palette.ts';
import type { EdgeLines, Picture, SolidMesh } from '../model/picture.ts';
import type { MapPlace } from '../store/view-store.ts';
import { cellPixels, rgbOf } from './cell-colour.ts';
import type { CutPlane } from './cut-plane.ts';
import { faceMaterial, type LineLook, lineMaterial, pickMaterial } from './deck-materials.ts';
import { bayTexture, cellTexture, type DeckUniforms, deckUniforms, MAP_MODE, partTexture } from './deck-uniforms.ts';
import { Drawn } from './drawn.ts';
import type { PartState } from './part-states.ts';
import { partHeightsM, partTextureRows, writePartTexels } from './part-texture.ts';

export interface CutFaces {
  readonly faces: SolidMesh;
  readonly outlines: EdgeLines;
}

export class DeckModel {
  readonly root = new Group();
  /** The same things as `root`, drawn as places. */
  readonly pickScene = new Scene();
  readonly uniforms: DeckUniforms = deckUniforms();
  private readonly solids = new Drawn(
    faceMaterial(this.uniforms, { ofCut: false, withCells: false }),
    pickMaterial(this.uniforms, false),
    0,
  );
  private readonly cutFaces = new Drawn(
    faceMaterial(this.uniforms, { ofCut: true, withCells: false }),
    pickMaterial(this.uniforms, true),
    0,
  );
  private readonly edges = lines(this.uniforms, 1, { widthPx: 1, tone: null, crowds: true });
  private readonly bays = lines(this.uniforms, 2, { widthPx: 1.7, tone: tone(INK, 0.75), lying: true });
  private readonly cutEdges = lines(this.uniforms, 3, { widthPx: 1.5, tone: tone(INK, 0.9), crowds: true, uncut: true });
  private readonly markHalo = lines(this.uniforms, 4, { widthPx: 5, tone: tone(PAPER, 0.9), uncut: true, inFront: true });
  private readonly mark = lines(this.uniforms, 5, { widthPx: 2.2, tone: tone(ACCENT, 1), uncut: true, inFront: true });
  private readonly arrowHalo = lines(this.uniforms, 6, { widthPx: 4, tone: tone(PAPER, 0.75), lying: true });
  private readonly arrows = lines(this.uniforms, 7, { widthPx: 1.6, tone: tone(INK, 0.9), lying: true });
  private readonly plainFaces = this.solids.mesh.material;
  private readonly cellFaces = faceMaterial(this.uniforms, { ofCut: false, withCells: true });
  private readonly sunnyFaces = faceMaterial(this.uniforms, { ofCut: false, withCells: false, withSun: true });
  private sunny = false;
  private heightsM: Float64Array = new Float64Array(0);
  private green: ReadonlySet<string> = new Set();

  constructor() {
    for (const one of this.all()) {
      this.root.add(one.mesh);
      if (one.twin) this.pickScene.add(one.twin);
    }
    this.setCut(null, null);
    this.setMark(null);
    this.setArrows(null);
  }

  private all(): readonly Drawn[] {
    return [this.solids, this.cutFaces, this.edges, this.bays, this.cutEdges, this.markHalo, this.mark, this.arrowHalo, this.arrows];
  }

  setPicture(picture: Picture): void {
    this.solids.setSolid(picture.solids);
    this.edges.setLines(picture.edges);
    this.bays.setLines(bayLines(picture));
    this.heightsM = partHeightsM(picture);
    const rows = partTextureRows(picture.parts.length);
    if (this.uniforms.partTexels.value.image.height !== rows) {
      this.uniforms.partTexels.value.dispose();
      this.uniforms.partTexels.value = partTexture(rows);
    }
    const { min, max } = picture.boundsM;
    this.uniforms.pickBounds.value.set(min[0] - 1, min[1] - 1, max[0] + 1, max[1] + 1);
    this.uniforms.dropM.value = Math.min(6, 0.5 + 0.08 * Math.hypot(max[0] - min[0], max[1] - min[1]));
  }

  setStates(picture: Picture, states: readonly PartState[]): void {
    const texture = this.uniforms.partTexels.value;
    writePartTexels(picture, states, { heightsM: this.heightsM, green: this.green }, texture.image.data as Float32Array);
    texture.needsUpdate = true;
  }

  setGrid(grid: GridShape, bayAt: Int16Array): void {
    this.uniforms.gridAt.value.set(grid.x0M, grid.y0M, grid.cellM);
    this.uniforms.gridSize.value.set(grid.columns, grid.rows);
    this.uniforms.bayCells.value.dispose();
    this.uniforms.bayCells.value = bayTexture(bayAt, grid.columns, grid.rows);
  }

  setMap(map: CellMap | null, place: MapPlace, grid: GridShape): void {
    this.uniforms.mapMode.value = map === null ? MAP_MODE.none : MAP_MODE[place];
    this.uniforms.bayLinesOn.value = map !== null;
    this.chooseFaces();
    if (map === null) return;
    this.uniforms.mapCells.value.dispose();
    this.uniforms.mapCells.value = cellTexture(cellPixels(map), grid.columns, grid.rows);
  }

  setPickedBay(index: number): void {
    this.uniforms.pickedBay.value = index;
    this.chooseFaces();
  }

  /** The costlier shader only where there is something for it to draw. */
  private chooseFaces(): void {
    const cells = this.uniforms.mapMode.value !== MAP_MODE.none || this.uniforms.pickedBay.value >= 0;
    this.solids.mesh.material = cells ? this.cellFaces : this.sunny ? this.sunnyFaces : this.plainFaces;
  }

  /** Light of the walkthrough in place of the drawing's; maps keep theirs, so that colours mean the same. */
  setSunny(sunny: boolean): void {
    this.sunny = sunny;
    this.chooseFaces();
  }

  /** Zones with plants; counts from the next change of states. */
  setGreen(zones: ReadonlySet<string>): void {
    this.green = zones;
  }

  /** Faces of all solids, for whoever draws them in another way. */
  get solidGeometry(): BufferGeometry {
    return this.solids.mesh.geometry;
  }

  setCut(plane: CutPlane | null, cut: CutFaces | null): void {
    this.uniforms.cutOn.value = plane !== null;
    if (plane !== null) this.uniforms.cutPlane.value.set(plane.lookX, plane.lookY, plane.offsetM);
    for (const faces of [this.plainFaces, this.cellFaces, this.sunnyFaces]) faces.side = plane === null ? FrontSide : DoubleSide;
    this.cutFaces.setVisible(cut !== null);
    this.cutEdges.setVisible(cut !== null);
    if (cut === null) return;
    this.cutFaces.setSolid(cut.faces);
    this.cutEdges.setLines(cut.outlines);
  }

  /** Lines of the mark on the picked cell. */
  setMark(lines: EdgeLines | null): void {
    for (const one of [this.markHalo, this.mark]) {
      one.setVisible(lines !== null);
      if (lines !== null) one.setLines(lines);
    }
  }

  /** Arrows of the map of falls. */
  setArrows(lines: EdgeLines | null): void {
    for (const one of [this.arrowHalo, this.arrows]) {
      one.setVisible(lines !== null);
      if (lines !== null) one.setLines(lines);
    }
  }

  dispose(): void {
    for (const one of this.all()) one.dispose();
    for (const faces of [this.plainFaces, this.cellFaces, this.sunnyFaces]) faces.dispose();
    this.uniforms.hatchFields.value.dispose();
    this.uniforms.partTexels.value.dispose();
    this.uniforms.mapCells.value.dispose();
    this.uniforms.bayCells.value.dispose();
  }
}

function tone(hex: string, opacity: number): Vector4 {
  const [red, green, blue] = rgbOf(hex);
  return new Vector4(red / 255, green / 255, blue / 255, opacity);
}

function lines(uniforms: DeckUniforms, order: number, look: LineLook): Drawn {
  return new Drawn(lineMaterial(uniforms, look), null, order);
}

/** Outlines of bays move with the slab. */
function bayLines(picture: Picture): EdgeLines {
  const vertices = picture.bayLines.length / 3;
  const slab = Math.max(
    0,
    picture.parts.findIndex((part) => part.kind === 'slab'),
  );
  return { positions: picture.bayLines, parts: new Uint16Array(vertices).fill(slab), upper: new Uint8Array(vertices).fill(1) };
}
