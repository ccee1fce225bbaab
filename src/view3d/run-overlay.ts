/** Vehicles over the model: the chosen one and the machines of the stage shown, the lane and the patches of the chosen one. */

import { type Vector3, Vector4 } from 'three';
import type { Snapshot } from '../model/engine.ts';
import { ACCENT, INK, PAPER } from '../model/palette.ts';
import type { RunPose, RunView } from '../model/run.ts';
import type { SceneState } from '../store/scene-store.ts';
import type { FootLayer, ViewState } from '../store/view-store.ts';
import { rgbOf } from './cell-colour.ts';
import { type LineLook, lineMaterial, tintMaterial } from './deck-materials.ts';
import type { DeckModel } from './deck-model.ts';
import { Drawn } from './drawn.ts';
import type { PartState } from './part-states.ts';
import { type Foot, footFaces, footLines, footprints, routeLines, spreadLines } from './run-lines.ts';
import { VehicleDrawn } from './vehicle-drawn.ts';
import { supportShape, vehicleShape } from './vehicle-shape.ts';
import { standingFrames } from './vehicle-stand.ts';

interface Shown {
  readonly snapshot: Snapshot;
  readonly states: readonly PartState[];
  readonly stage: number | null;
  readonly poses: readonly RunPose[];
  readonly chosen: RunPose | null;
  readonly foot: FootLayer;
  readonly explode: number;
}

const tone = (hex: string, opacity: number): Vector4 => new Vector4(...rgbOf(hex).map((value) => value / 255), opacity);

export class RunOverlay {
  private readonly model: DeckModel;
  private readonly lane: Drawn;
  private readonly tint: Drawn;
  private readonly halo: Drawn;
  private readonly outline: Drawn;
  private readonly spread: Drawn;
  /** By run and how it stands; kept while the picture's vehicles are the same. */
  private readonly vehicles = new Map<string, VehicleDrawn>();
  private shown: Shown | null = null;
  /** What is drawn now, for tests. */
  standing: readonly { readonly run: string; readonly origin: Vector3 }[] = [];
  feet: readonly Foot[] = [];

  constructor(model: DeckModel) {
    this.model = model;
    const line = (look: LineLook, order: number) => new Drawn(lineMaterial(model.uniforms, look), null, order);
    this.lane = line({ widthPx: 2, tone: tone(INK, 0.75), lying: true }, 12);
    this.tint = new Drawn(tintMaterial(model.uniforms, tone(ACCENT, 0.34)), null, 13);
    this.halo = line({ widthPx: 4.5, tone: tone(PAPER, 0.9), inFront: true }, 15);
    this.outline = line({ widthPx: 2, tone: tone(ACCENT, 1), inFront: true }, 16);
    this.spread = line({ widthPx: 1.3, tone: tone(ACCENT, 0.8), inFront: true }, 14);
    for (const one of this.lines()) {
      one.setVisible(false);
      model.root.add(one.mesh);
    }
  }

  private lines(): readonly Drawn[] {
    return [this.lane, this.tint, this.spread, this.halo, this.outline];
  }

  /** Takes over what changed in the stores; `states` are those of the picture as it is drawn. */
  follow({ snapshot, poses }: SceneState, { stage, run, foot, explode }: ViewState, states: readonly PartState[]): void {
    if (snapshot === null) return;
    // A vehicle of another stage would stand on layers that are not drawn.
    const here = poses.filter((pose) => pose.stage === stage);
    const chosen = here.find((pose) => pose.run === run?.id) ?? null;
    const now: Shown = { snapshot, states, stage, poses, chosen, foot, explode };
    const was = this.shown;
    this.shown = now;
    const same = was?.snapshot === snapshot;
    if (!same) this.dropVehicles();
    if (!same || was.poses !== poses || was.stage !== stage || was.explode !== explode) this.setVehicles(snapshot, here, explode);
    if (!same || was.chosen !== chosen || was.foot !== foot) this.setFeet(now);
    if (!same || was.chosen?.run !== chosen?.run || was.states !== states) this.setLane(now);
  }

  private setVehicles(snapshot: Snapshot, poses: readonly RunPose[], explode: number): void {
    const wanted = new Set<string>();
    this.standing = [];
    for (const pose of poses) {
      const run = snapshot.runs.find((one) => one.id === pose.run);
      if (run === undefined) continue;
      const frames = standingFrames(pose, { picture: snapshot.picture, datumM: snapshot.datumM, explode });
      if (frames.length === 0) continue;
      const key = `${pose.run} ${pose.on}`;
      wanted.add(key);
      const vehicle = this.vehicles.get(key) ?? this.newVehicle(key, run, pose);
      vehicle.place(frames);
      this.standing = [...this.standing, ...frames.slice(0, 1).map(({ origin }) => ({ run: pose.run, origin }))];
    }
    for (const [key, vehicle] of this.vehicles) vehicle.mesh.visible = wanted.has(key);
  }

  private newVehicle(key: string, { body }: RunView, pose: RunPose): VehicleDrawn {
    const pad = pose.on === 'support' ? pose.wheels[0] : undefined;
    const made = new VehicleDrawn(this.model.uniforms, pad ? supportShape(pad.alongM, pad.acrossM) : vehicleShape(body));
    this.vehicles.set(key, made);
    this.model.root.add(made.mesh);
    return made;
  }

  private setFeet({ snapshot, chosen, foot }: Shown): void {
    const feet = chosen ? footprints(chosen, foot, snapshot.picture, snapshot.datumM) : [];
    this.feet = feet;
    const spread = spreadLines(feet);
    for (const one of [this.tint, this.halo, this.outline]) one.setVisible(feet.length > 0);
    this.spread.setVisible(spread.parts.length > 0);
    if (feet.length === 0) return;
    if (spread.parts.length > 0) this.spread.setLines(spread);
    this.tint.setSolid(footFaces(feet));
    for (const one of [this.halo, this.outline]) one.setLines(footLines(feet));
  }

  private setLane({ snapshot, chosen, states }: Shown): void {
    const run = chosen && snapshot.runs.find((one) => one.id === chosen.run);
    const lines = run ? routeLines([run], snapshot.picture, states) : null;
    this.lane.setVisible(lines !== null && lines.parts.length > 0);
    if (lines !== null && lines.parts.length > 0) this.lane.setLines(lines);
  }

  private dropVehicles(): void {
    for (const vehicle of this.vehicles.values()) {
      this.model.root.remove(vehicle.mesh);
      vehicle.dispose();
    }
    this.vehicles.clear();
  }

  dispose(): void {
    this.dropVehicles();
    for (const one of this.lines()) {
      this.model.root.remove(one.mesh);
      one.dispose();
    }
  }
}
