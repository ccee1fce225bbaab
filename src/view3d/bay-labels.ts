/** Labels of bays beside the model, with leaders; laid out anew with each drawn frame. */

import { type PerspectiveCamera, Vector3 } from 'three';
import type { Snapshot } from '../model/engine.ts';
import { type MapKind, WATER_MAP_KINDS } from '../model/maps.ts';
import type { ReportBay } from '../model/report.ts';
import type { ViewState } from '../store/view-store.ts';
import { bodyOf } from './camera-fit.ts';
import { convexHull, type LabelBox, type LabelPlace, labelPlaces, type Point } from './label-layout.ts';
import { liftM } from './lift.ts';
import type { PartState } from './part-states.ts';
import { type TopAt, topAt } from './top-at.ts';

/** More would hide what they name; the worst come first. */
const MOST_LABELS = 24;
const SVG = 'http://www.w3.org/2000/svg';

/** The picture [CSS px]. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** What the labels name. */
export interface ShownDeck {
  readonly snapshot: Snapshot;
  readonly states: readonly PartState[];
}

/** What stands behind a bay's id on its label. */
export type BayNote = (bay: ReportBay) => string;

interface Label {
  readonly id: string;
  /** Place among the bays, worst first. */
  readonly rank: number;
  readonly at: readonly [number, number, number];
  readonly element: HTMLElement;
  readonly leader: SVGLineElement;
  readonly dot: SVGCircleElement;
  /** With its note and without [CSS px]. */
  readonly sizes: Readonly<Record<'noted' | 'plain', PictureSize>>;
}

export class BayLabels {
  private readonly overlay: HTMLElement;
  private readonly drawing: SVGSVGElement;
  private labels: readonly Label[] = [];
  private snapshot: Snapshot | null = null;
  private note: BayNote | null = null;
  private plan: readonly Point[] = [];
  private states: readonly PartState[] = [];
  /** What lies on top at each label's place. */
  private tops: readonly (TopAt | null)[] = [];

  constructor(overlay: HTMLElement) {
    this.overlay = overlay;
    this.drawing = document.createElementNS(SVG, 'svg');
    overlay.append(this.drawing);
  }

  setNote(note: BayNote | null): void {
    if (note === this.note) return;
    this.note = note;
    this.snapshot = null;
  }

  private build(snapshot: Snapshot): void {
    this.snapshot = snapshot;
    this.states = [];
    for (const { element, leader, dot } of this.labels) for (const one of [element, leader, dot]) one.remove();
    const { bayLines, bays } = snapshot.picture;
    const corners: Point[] = [];
    for (let i = 0; i < bayLines.length; i += 3) corners.push({ x: bayLines[i], y: bayLines[i + 1] });
    this.plan = convexHull(corners);
    const ranks = bayRanks(snapshot.report.bays);
    this.labels = bays.map((bay) => this.label(bay, ranks));
  }

  private label(bay: Snapshot['picture']['bays'][number], ranks: readonly ReportBay[]): Label {
    const rank = ranks.findIndex(({ id }) => id === bay.id);
    const report = ranks[rank];
    const element = document.createElement('div');
    element.className = bay.confirmed ? 'deck-label' : 'deck-label deck-label-unconfirmed';
    const id = document.createElement('strong');
    id.textContent = bay.label;
    element.append(id);
    const text = report && this.note ? this.note(report) : '';
    if (text !== '') {
      const note = document.createElement('span');
      note.className = 'deck-label-note';
      note.textContent = text;
      element.append(note);
    }
    const leader = document.createElementNS(SVG, 'line');
    const dot = document.createElementNS(SVG, 'circle');
    dot.setAttribute('r', '2.5');
    this.drawing.append(leader, dot);
    this.overlay.append(element);
    const sizeWith = (plain: boolean) => {
      element.classList.toggle('deck-label-plain', plain);
      return { width: element.offsetWidth, height: element.offsetHeight };
    };
    return { id: bay.id, rank, at: bay.at, element, leader, dot, sizes: { plain: sizeWith(true), noted: sizeWith(false) } };
  }

  /** Places all labels for the camera as it stands: of all bays while a map compares them, else of the picked one. */
  update(shown: ShownDeck, view: ViewState, camera: PerspectiveCamera, size: PictureSize): void {
    const { snapshot } = shown;
    if (snapshot !== this.snapshot) this.build(snapshot);
    const told = bayLabelsOn(view.map);
    const look = told === 'noted' || view.map === null ? 'noted' : 'plain';
    const wanted = this.labels.filter((label) => label.id === view.bay || (told !== 'none' && label.rank < MOST_LABELS));
    if (wanted.length > 0 && shown.states !== this.states) {
      this.states = shown.states;
      this.tops = this.labels.map(({ at }) => topAt(snapshot.picture, shown.states, at[0], at[1]));
    }
    const toScreen = (x: number, y: number, z: number): Point => {
      const at = new Vector3(x, y, z).project(camera);
      return { x: ((at.x + 1) / 2) * size.width, y: ((1 - at.y) / 2) * size.height };
    };
    const { min } = snapshot.picture.boundsM;
    const { centre, halfHeightM } = bodyOf(snapshot.picture, view.explode);
    const outline = [min[2], centre[2] + halfHeightM].flatMap((z) => this.plan.map(({ x, y }) => toScreen(x, y, z)));
    const boxes = wanted.map((label): LabelBox => {
      const [x, y, slabZ] = label.at;
      const lies = view.map !== null && view.mapOn === 'slab' ? null : this.tops[this.labels.indexOf(label)];
      const z = lies ? lies.zM + liftM(snapshot.picture, lies.part, true, view.explode) : slabZ;
      return { anchor: toScreen(x, y, z), ...label.sizes[look] };
    });
    const places = labelPlaces(boxes, { ...size, outline });
    for (const label of this.labels) {
      label.element.classList.toggle('deck-label-plain', look === 'plain');
      const k = wanted.indexOf(label);
      put(label, k < 0 ? null : places[k], boxes[k], label.id === view.bay);
    }
  }

  dispose(): void {
    this.overlay.replaceChildren();
    this.labels = [];
  }
}

/** Maps that a permitted load belongs to. */
const OF_LOADS: ReadonlySet<MapKind> = new Set<MapKind>(['load', 'utilisation', 'worst-stage', 'difference']);
/** Maps that no bay means anything to: they have labels of their own, or tell of edges and of water held. */
const WITHOUT_BAYS: ReadonlySet<MapKind> = new Set<MapKind>([...WATER_MAP_KINDS, 'reach', 'upstand', 'fall', 'held']);

/** What labels of all bays tell on a map: id and permitted load, the id alone, or nothing. */
export function bayLabelsOn(map: MapKind | null): 'noted' | 'plain' | 'none' {
  if (map === null || WITHOUT_BAYS.has(map)) return 'none';
  return OF_LOADS.has(map) ? 'noted' : 'plain';
}

/** Bays that nobody confirmed first, then by how much of what they may carry they carry. */
export function bayRanks(bays: readonly ReportBay[]): readonly ReportBay[] {
  const weight = (bay: ReportBay) => (bay.confirmed ? (bay.permanent.utilisation ?? 0) : Number.MAX_VALUE);
  return [...bays].sort((a, b) => weight(b) - weight(a));
}

function put(label: Label, place: LabelPlace | null, box: LabelBox | undefined, picked: boolean): void {
  const { element, leader, dot } = label;
  const shown = place !== null && box !== undefined;
  for (const one of [element, leader, dot]) one.style.visibility = shown ? 'visible' : 'hidden';
  if (!shown) return;
  element.classList.toggle('deck-label-picked', picked);
  leader.classList.toggle('deck-leader-picked', picked);
  // By the edge that faces the model, so that a font that comes late moves nothing.
  const edge = Math.round(place.side === 'left' ? place.x + box.width : place.x);
  element.style.transform = `translate(${edge}px, ${Math.round(place.y)}px)${place.side === 'left' ? ' translateX(-100%)' : ''}`;
  leader.setAttribute('x1', String(edge + (place.side === 'left' ? 2 : -2)));
  leader.setAttribute('y1', String(Math.round(place.y + box.height / 2)));
  leader.setAttribute('x2', String(box.anchor.x));
  leader.setAttribute('y2', String(box.anchor.y));
  dot.setAttribute('cx', String(box.anchor.x));
  dot.setAttribute('cy', String(box.anchor.y));
}
