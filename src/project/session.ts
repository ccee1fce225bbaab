/** One open scene: read, edited, asked for maps and core logs. The worker holds one; tests use it directly. */

import { coreLog } from '../core/core-log.ts';
import { cellMap, DECK_MAP_KINDS, type DeckMapKind } from '../core/maps.ts';
import { reachMap } from '../core/reach-map.ts';
import { runPose } from '../core/run-pose.ts';
import { type MappedWater, waterMap } from '../core/water-map.ts';
import { wheelMap } from '../core/wheel-map.ts';
import type { CatalogueView } from '../model/catalogue-view.ts';
import type { BuildUpView } from '../model/engine.ts';
import type { HistoryView, SceneEdit, ScenePatch } from '../model/history.ts';
import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { type CellMap, type CoreLog, isWaterMap, type MapKind } from '../model/maps.ts';
import type { RunPose } from '../model/run.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { SourceUse } from '../model/source.ts';
import { mmFromMetres } from '../model/units.ts';
import type { FileAnswer, VariantAnswer } from '../model/variants.ts';
import type { BlockedOutlet } from '../model/water-result.ts';
import type { WheelStand } from '../model/wheel-input.ts';
import { issueIn } from '../scene/issue-language.ts';
import { textInStyle } from '../scene/scene-text.ts';
import { buildUpViews } from './build-up-views.ts';
import { catalogueView } from './catalogue-view.ts';
import { compareFile } from './compare-file.ts';
import { compareVariant, sceneOfVariant, variantMap } from './compare-variant.ts';
import { type Calculated, calculate, type Project, projectSteps, readProject, readSceneText } from './evaluate-project.ts';
import { History } from './history.ts';
import { requiredEdges } from './resolve-edges.ts';
import { layerThickness } from './resolve-layers.ts';
import { accessOf } from './resolve-routes.ts';
import { wheelsOf } from './run-views.ts';
import { sameParts } from './same-parts.ts';
import { sharedContent } from './shared-content.ts';
import { sourceUses } from './source-uses.ts';
import { speakCoreLog, speakPose, speakProject } from './speak.ts';
import { type WaterStudy, waterStudy } from './water-study.ts';
import { namesOf } from './words/names.ts';

export type SessionAnswer =
  | { readonly project: Project; readonly issues: readonly Issue[] }
  | { readonly project: null; readonly issues: readonly Issue[] };

/** A scene that was shown, with what it was warned of. */
interface State {
  readonly scene: SceneFile;
  readonly issues: readonly Issue[];
}

/** What came of an edit before its report is made. */
export type ChangeAnswer =
  | {
      readonly changed: Calculated;
      readonly issues: readonly Issue[];
      /** The scene lists the same parts as when its report was last whole: that report can stand beside it, marked as the older. */
      readonly likeReported: boolean;
    }
  | { readonly changed: null; readonly issues: readonly Issue[] };

export class Session {
  /** The scene as it stands, perhaps still without its report. */
  private calculated: Calculated | null = null;
  /** With the report last made. */
  private project: Project | null = null;
  /** Makes the report of what is calculated; null where it is made. Other steps with every edit. */
  private steps: Generator<undefined, Project> | null = null;
  private language: Language = 'en';
  /** The project in the language spoken. */
  private told: { readonly of: Project; readonly in: Project } | null = null;
  private states: History<State> | null = null;
  /** The variant last asked for. */
  private compared: { readonly of: SceneFile; readonly id: string; readonly answer: SessionAnswer } | null = null;
  private openedText = '';
  /** What was last given out to be saved. */
  private offered: State | null = null;

  /** Reads a scene file; where it can't be used, the scene open before stays. `unsaved`: the text lies in no file yet. */
  open(text: string, unsaved = false): SessionAnswer {
    const reading = readProject(text);
    if (reading.project) {
      this.calculated = reading.project;
      this.project = reading.project;
      this.steps = null;
      this.states = new History({ scene: reading.project.scene, issues: reading.issues }, unsaved, hasSameContent);
      this.openedText = text;
      this.offered = null;
    }
    return reading;
  }

  /**
   * Sets one layer's thickness (of a make-up layer: its nominal) [mm]; refused with the same checks as a file.
   * Edits of one gesture are one step of undo.
   */
  setThickness(buildUp: string, layer: number, thicknessMm: number, gesture: number | null = null): SessionAnswer {
    return this.reported(this.changeThickness({ buildUp, layer, thicknessMm }, gesture));
  }

  /** The same without a report yet. */
  changeThickness(to: ThicknessChange, gesture: number | null = null): ChangeAnswer {
    const calculated = this.standing();
    const buildups = withThickness(calculated.scene, to);
    return this.change({ buildups }, thicknessEdit(calculated, to), gesture);
  }

  /**
   * Exchanges parts of the scene; refused with the same checks as a file, and then nothing changes.
   * Edits of one gesture are one step of undo.
   */
  edit(patch: ScenePatch, edit: SceneEdit, gesture: number | null = null): SessionAnswer {
    return this.reported(this.change(patch, edit, gesture));
  }

  /** The same without a report yet: `reportStep` makes it, or whoever first asks for anything that rests on it. */
  change(patch: ScenePatch, edit: SceneEdit, gesture: number | null = null): ChangeAnswer {
    const states = this.known();
    const reading = readEdited(states.present.scene, patch);
    if (!reading.scene) return { changed: null, issues: reading.issues };
    states.push(edit, reading, gesture);
    return this.show(states.present);
  }

  /** One step back or forth, to the very scene that was there; without one nothing changes. */
  travel(way: 'undo' | 'redo'): SessionAnswer {
    const states = this.known();
    return this.reported(this.show(states.go(way) ?? states.present));
  }

  /** Makes one more part of the report of the scene as it stands; true once it is whole. */
  reportStep(): boolean {
    const step = this.steps?.next();
    if (step?.done !== true) return step === undefined;
    // Steps that threw have ended without a value, and go on throwing here.
    if (!step.value) throw new RangeError('Session: the report of this scene could not be made');
    this.project = step.value;
    this.steps = null;
    return true;
  }

  history(): HistoryView {
    return this.known().view();
  }

  /** The scene as a text: that which was opened, with what was changed since. Only a text for a file can be marked as saved. */
  sceneText(use: 'file' | 'copy' = 'file'): string {
    const { present } = this.known();
    if (use === 'file') this.offered = present;
    return textInStyle(this.openedText, present.scene);
  }

  /** What was last given out lies in a file now. */
  markSaved(): HistoryView {
    if (this.offered) this.known().markSaved(this.offered);
    return this.history();
  }

  private known(): History<State> {
    if (!this.states) throw new RangeError('Session: no scene is open');
    return this.states;
  }

  private show({ scene, issues }: State): ChangeAnswer {
    const likeReported = sameParts(this.project?.scene, scene);
    const calculated = calculate(scene, { previous: this.standing() });
    this.calculated = calculated;
    this.steps = projectSteps(calculated);
    return { changed: calculated, issues, likeReported };
  }

  private reported({ changed, issues }: ChangeAnswer): SessionAnswer {
    return { project: changed && this.opened(), issues };
  }

  /** `of` is the outlet that is blocked or the variant that is compared, for the maps of those. */
  map(kind: MapKind, stage: number | null, of: string | null = null): CellMap {
    const { evaluation, scene } = this.standing();
    if (kind === 'difference') return this.variantMap(of);
    if (isWaterMap(kind)) return waterMap(evaluation, kind, this.mappedWater(of));
    if (kind === 'reach') return reachMap(evaluation, stage, accessOf(scene, evaluation.input.originM));
    if (kind === 'wheel-membrane' || kind === 'wheel-bearing') return wheelMap(evaluation, kind, wheelsOf(this.opened()), stage);
    return cellMap(evaluation, kind, stage, requiredEdges(scene, evaluation.input.originM));
  }

  coreLog(cell: number, stage: number | null): CoreLog | null {
    const { evaluation, scene } = this.standing();
    const log = coreLog(evaluation, cell, stage);
    return log && speakCoreLog(log, { scene, language: this.language });
  }

  /** A vehicle at one place of its line; null where the scene has no such vehicle. */
  runAt(id: string, stand: WheelStand): RunPose | null {
    const project = this.opened();
    const { runs, layers } = wheelsOf(project);
    const run = runs.find((one) => one.id === id);
    const pose = run && (stand.on === 'wheels' || run.vehicle.pad) ? runPose(project.evaluation, run, layers, stand) : null;
    return pose && speakPose(pose, this.spoken());
  }

  /** Water with one outlet closed; null where the scene has no such outlet on its deck. */
  blockedOutlet(outlet: string): BlockedOutlet | null {
    const study = this.waterStudy();
    const index = study?.course.site.outlets.findIndex(({ id }) => id === outlet) ?? -1;
    return study?.blocked[index] ?? null;
  }

  compareVariant(variant: string): VariantAnswer {
    const found = this.variant(variant);
    if (!found.project) return { ok: false, issues: this.tell(found.issues) };
    return { ok: true, comparison: compareVariant(this.spoken(), found.project, variant) };
  }

  /** Another file against the scene as it stands; nothing of it is kept. */
  compareFile(text: string, notes: readonly string[] = []): FileAnswer {
    const { scene, issues } = readSceneText(text);
    if (!scene) return { ok: false, issues: this.tell(issues) };
    return { ok: true, comparison: compareFile(this.opened().scene, scene, this.language), notes };
  }

  private variantMap(variant: string | null): CellMap {
    const found = variant === null ? null : this.variant(variant);
    if (!found?.project) throw new RangeError(`Session: no variant to be compared, found ${variant}`);
    return variantMap(this.opened(), found.project);
  }

  /** A kept variant, checked and evaluated on its own; kept until the next edit. */
  private variant(id: string): SessionAnswer {
    const { scene } = this.standing();
    if (this.compared?.of === scene && this.compared.id === id) return this.compared.answer;
    const wanted = scene.variants?.find((variant) => variant.id === id);
    if (wanted === undefined) throw new RangeError(`Session: no variant "${id}"`);
    const answer = readProject(JSON.stringify(sceneOfVariant(scene, wanted)));
    this.compared = { of: scene, id, answer: { ...answer, issues: answer.issues.map(withoutLine) } as SessionAnswer };
    return this.compared.answer;
  }

  private waterStudy(): WaterStudy | null {
    const { scene, evaluation, resolved } = this.opened();
    return waterStudy(scene, evaluation, resolved.materialOf);
  }

  private mappedWater(outlet: string | null): MappedWater {
    const study = this.waterStudy();
    if (!study) throw new RangeError('Session: the scene draws neither outlets nor rain');
    return {
      course: study.course,
      rainLpsHa: this.opened().scene.rain?.designLpsHa ?? null,
      blocked: outlet === null ? null : this.blockedOutlet(outlet),
    };
  }

  sources(): SourceUse[] {
    return sourceUses(this.standing().scene, this.language);
  }

  /** What build-ups are made of, in the language spoken. */
  catalogue(): CatalogueView {
    return catalogueView(this.language);
  }

  /** Build-ups as they stand, in the language spoken. */
  buildUps(): BuildUpView[] {
    return buildUpViews(this.standing(), this.language);
  }

  /** Language of every answer from now on; nothing is evaluated anew. */
  speak(language: Language): void {
    this.language = language;
  }

  /** Messages in the language spoken. */
  tell(issues: readonly Issue[]): readonly Issue[] {
    return issues.map((issue) => issueIn(issue, this.language));
  }

  /** What the scene as it stands is warned of, in the language spoken. */
  warnings(): readonly Issue[] {
    return this.tell(this.known().present.issues);
  }

  /** The scene as it stands, its report and names in the language spoken. */
  spoken(): Project {
    const project = this.opened();
    if (this.told?.of !== project || this.told.in.language !== this.language) {
      this.told = { of: project, in: speakProject(project, this.language) };
    }
    return this.told.in;
  }

  isOpen(): boolean {
    return this.calculated !== null;
  }

  /** The scene as it stands, with all that was calculated and its report. */
  opened(): Project {
    while (!this.reportStep());
    if (!this.project) throw new RangeError('Session: no scene is open');
    return this.project;
  }

  /** The scene as it stands, perhaps still without its report. */
  standing(): Calculated {
    if (!this.calculated) throw new RangeError('Session: no scene is open');
    return this.calculated;
  }
}

interface ThicknessChange {
  readonly buildUp: string;
  readonly layer: number;
  readonly thicknessMm: number;
}

/** Whether a map rests on the calculation alone. */
export function isDeckMap(kind: MapKind): kind is DeckMapKind {
  return (DECK_MAP_KINDS as readonly MapKind[]).includes(kind);
}

/** The scene with a patch, checked like a file; whatever says what it said before stays the very same object. */
function readEdited(scene: SceneFile, patch: ScenePatch): State | { readonly scene: null; readonly issues: readonly Issue[] } {
  const wanted = Object.fromEntries(Object.entries({ ...scene, ...patch }).filter(([, value]) => value !== null && value !== undefined));
  const reading = readSceneText(JSON.stringify(wanted));
  const issues = reading.issues.map(withoutLine);
  if (!reading.scene) return { scene: null, issues };
  const untouched = Object.entries(scene).filter(([key]) => !Object.hasOwn(patch, key));
  return { scene: { ...sharedContent(scene, reading.scene), ...Object.fromEntries(untouched) }, issues };
}

function hasSameContent(one: State, other: State): boolean {
  const [a, b] = [Object.entries(one.scene), Object.entries(other.scene)];
  if (a.length !== b.length) return false;
  // Edits leave most parts the very same.
  return a.every(([key, value], i) => b[i][0] === key && (b[i][1] === value || JSON.stringify(b[i][1]) === JSON.stringify(value)));
}

/** The text an edit is read from is not the user's file: its lines mean nothing to them. */
function withoutLine({ line: _, ...issue }: Issue): Issue {
  return issue;
}

/** Thickness of a layer as the build-up has it now, and as it will be. */
function thicknessEdit({ scene, resolved }: Calculated, to: ThicknessChange): SceneEdit {
  const layer = scene.buildups.find(({ id }) => id === to.buildUp)?.layers[to.layer];
  if (layer === undefined) throw new RangeError(`setThickness: no layer ${to.layer} in a build-up "${to.buildUp}"`);
  const given = typeof layer.thicknessMm === 'object' ? layer.thicknessMm.nominal : layer.thicknessMm;
  const fromMm = given ?? mmFromMetres(layerThickness(layer, resolved.materialOf(layer.material)).thicknessM);
  return { kind: 'thickness', buildUp: to.buildUp, layer: to.layer, fromMm, toMm: to.thicknessMm };
}

function withThickness(scene: SceneFile, { buildUp: id, layer: index, thicknessMm }: ThicknessChange): SceneFile['buildups'] {
  if (!scene.buildups.some((buildUp) => buildUp.id === id && index in buildUp.layers)) {
    throw new RangeError(`setThickness: no layer ${index} in a build-up "${id}"`);
  }
  return scene.buildups.map((buildUp) => {
    if (buildUp.id !== id) return buildUp;
    const layers = buildUp.layers.map((layer, i) => {
      if (i !== index) return layer;
      const range = typeof layer.thicknessMm === 'object' ? { ...layer.thicknessMm, nominal: thicknessMm } : thicknessMm;
      return { ...layer, thicknessMm: range };
    });
    return { ...buildUp, layers };
  });
}

/** Names of every material that the report speaks of, by id. */
export function materialNames({ scene, language, report, resolved }: Project): Map<string, string> {
  const names = namesOf(scene, language);
  const heaped = report.bays.flatMap((bay) => (bay.heapM ?? []).map(({ material }) => material));
  const laid = (report.takeoff ?? []).map(({ material }) => material);
  return new Map([...new Set([...laid, ...heaped])].map((id) => [id, names.name(resolved.materialOf(id).name)]));
}
