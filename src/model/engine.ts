/** What the app asks of the worker that owns the calculation, and what it gets back: plain data only. */

import type { CatalogueView } from './catalogue-view.ts';
import type { DerivationAsk, Term } from './derivation.ts';
import type { DrawnKind, DrawnOptions } from './drawn-file.ts';
import type { ExportTableId } from './export-table.ts';
import type { HistoryView, PartsEdit, ScenePatch } from './history.ts';
import type { Issue } from './issue.ts';
import type { Language } from './language.ts';
import type { CellMap, CoreLog, GridShape, MapKind, StageView } from './maps.ts';
import type { Picture } from './picture.ts';
import type { Report } from './report.ts';
import type { RunPose, RunView } from './run.ts';
import type { PointM, SceneFile } from './scene-file.ts';
import type { SectionDrawing } from './section-drawing.ts';
import type { SourceUse } from './source.ts';
import type { FileAnswer, VariantAnswer } from './variants.ts';
import type { BlockedOutlet } from './water-result.ts';
import type { WheelStand } from './wheel-input.ts';

/** One evaluated scene, as the app shows it. */
export interface Snapshot {
  readonly scene: SceneFile;
  readonly report: Report;
  readonly stages: readonly StageView[];
  readonly grid: GridShape;
  /** File coordinates of the local origin [m]. */
  readonly originM: readonly [number, number];
  /** Drawn in local coordinates, heights less `datumM`: drawn in 32 bits, thin sheets high above the sea would lose their thickness. */
  readonly picture: Picture;
  /** Level that is height 0 of the picture [m]. */
  readonly datumM: number;
  /** Index into `report.bays` of the bay that judges each cell; -1 for none. */
  readonly bayAt: Int16Array;
  /** Names, materials and thicknesses of each build-up, resolved, bottom to top. */
  readonly buildUps: readonly BuildUpView[];
  /** Vehicles on their lines: traffic, then plant by stage. */
  readonly runs: readonly RunView[];
  /** Names of all materials of the report by their ids. */
  readonly materialNames: ReadonlyMap<string, string>;
  /** Steps back and forth, and whether anything is unsaved. */
  readonly history: HistoryView;
  /** Time the calculation took in the worker, its report not counted where that came by itself [ms]. */
  readonly evaluatedMs: number;
}

/** What of a snapshot rests on the calculation alone, and is there before the report. */
export interface Preview
  extends Pick<Snapshot, 'scene' | 'grid' | 'originM' | 'picture' | 'datumM' | 'bayAt' | 'buildUps' | 'history' | 'evaluatedMs'> {
  /** The map that was to come along; null where it rests on more than the calculation. */
  readonly map: CellMap | null;
}

/** Where an edit belongs. */
export interface Within {
  /** Edits of one gesture are one step of undo. */
  readonly gesture: number;
  /** The map that is shown. */
  readonly map: MapAsk | null;
}

export interface MapAsk {
  readonly kind: MapKind;
  readonly stage: number | null;
}

export interface BuildUpView {
  readonly id: string;
  readonly name: string;
  readonly zones: readonly string[];
  /** Of these zones on the deck [m²]. */
  readonly areaM2: number;
  /** Bays these zones lie on, in the order of the report. */
  readonly bays: readonly string[];
  /** All layers and the vegetation, the make-up layer at its nominal thickness. */
  readonly sum: BuildUpLoad;
  /** Bottom to top. */
  readonly layers: readonly {
    readonly materialId: string;
    readonly name: string;
    readonly role: string;
    readonly thicknessMm: number;
    /** Make-up layer: its range. */
    readonly rangeMm: { readonly min: number; readonly max: number } | null;
    /** Thickness can be set (granular layers and slabs; sheets have their own). */
    readonly adjustable: boolean;
    /** Of granular layers and slabs [kg/m³]; null for sheets and elements. */
    readonly density: { readonly dry: number; readonly saturated: number } | null;
    /** Of sheets and elements [kg/m²]; null for granular layers and slabs. */
    readonly areal: { readonly dry: number; readonly saturated: number } | null;
    /** Which way up an element lies; null where that does not matter. */
    readonly orientation: 'retention' | 'drained' | null;
    /** Sits in the voids of the element below. */
    readonly infill: boolean;
    /** At this thickness. */
    readonly load: BuildUpLoad;
    readonly source: string;
  }[];
}

export interface BuildUpLoad {
  readonly depthMm: number;
  readonly dryKNm2: number;
  readonly saturatedKNm2: number;
  readonly heldLm2: number;
}

export type OpenAnswer =
  | { readonly ok: true; readonly snapshot: Snapshot; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Within a gesture a preview, as long as the scene lists the same parts: what is said of the state before can stand beside it. */
export type EditAnswer = OpenAnswer | { readonly ok: true; readonly preview: Preview; readonly warnings: readonly Issue[] };

/** A table as CSV, all of them as a workbook, the scene as it stands, the report. */
export type ExportKind = `${ExportTableId} csv` | 'take-off xlsx' | 'scene json' | 'report json';
export type ExportLanguage = Language;

/** A file to be saved. */
export interface ExportedFile {
  readonly name: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface SceneText {
  /** A name for the file, after the scene. */
  readonly name: string;
  readonly text: string;
}

/** What goes into the handover besides the scene and its report. */
export interface HandoverOptions {
  readonly language: ExportLanguage;
  readonly date: string;
  readonly pictures: readonly HandoverPicture[];
  /** Line of a section that goes into it. */
  readonly line?: readonly PointM[];
}

export interface HandoverPicture {
  readonly caption: string;
  /** PNG. */
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** All of a snapshot that has words in it. */
export interface Spoken extends Pick<Snapshot, 'report' | 'stages' | 'buildUps' | 'runs' | 'materialNames'> {
  readonly warnings: readonly Issue[];
}

export interface Engine {
  /** Language of every answer from now on; the words of the open scene in it, null where none is open. Nothing is evaluated anew. */
  speak(language: Language): Promise<Spoken | null>;
  /** `unsaved`: the text lies in no file yet. */
  open(text: string, unsaved?: boolean): Promise<OpenAnswer>;
  /** Sets the thickness (nominal of a make-up layer) of one layer of one build-up. */
  setThickness(buildUp: string, layer: number, thicknessMm: number, within?: Within): Promise<EditAnswer>;
  /** Exchanges parts of the scene, checked like a file. */
  edit(patch: ScenePatch, edit: PartsEdit, within?: Within): Promise<EditAnswer>;
  /** What a preview left out, once it is made; null where an edit came before. `givesWay`: edits that come meanwhile go first. */
  finish(givesWay: boolean): Promise<Spoken | null>;
  /** A kept variant against the scene as it stands; refused like a file where it cannot be evaluated. */
  compareVariant(variant: string): Promise<VariantAnswer>;
  /** Another scene file against the scene as it stands; refused like a file. */
  compareFile(bytes: Uint8Array): Promise<FileAnswer>;
  /** The scene as a file: the text that was opened, with what was changed. */
  sceneText(use: 'file' | 'copy'): Promise<SceneText>;
  /** What `sceneText` last gave for a file lies in a file now. */
  markSaved(): Promise<HistoryView>;
  /** One step back or forth; null where there is none. */
  travel(way: 'undo' | 'redo'): Promise<OpenAnswer | null>;
  /** `outlet`: the one that is blocked, for the map of that. */
  map(kind: MapKind, stage: number | null, outlet?: string | null): Promise<CellMap>;
  /** Water with one outlet closed; null where the scene has no such outlet. */
  blockedOutlet(outlet: string): Promise<BlockedOutlet | null>;
  /** Null outside the deck. */
  coreLog(cell: number, stage: number | null): Promise<CoreLog | null>;
  /** A vehicle at one place of its line; null where there is no such vehicle. */
  runAt(run: string, stand: WheelStand): Promise<RunPose | null>;
  /** Every number of the catalogue and the rules with its source. */
  sources(): Promise<readonly SourceUse[]>;
  /** What build-ups are made of, in the language spoken. */
  catalogue(): Promise<CatalogueView>;
  /** How a number comes about; null where the scene has no such number. */
  derive(ask: DerivationAsk): Promise<Term | null>;
  exportFile(kind: ExportKind, language: ExportLanguage): Promise<ExportedFile>;
  /** Along a line in coordinates of the file, at a stage or, where that is null, in the finished garden. */
  section(line: readonly PointM[], stage: number | null): Promise<SectionDrawing>;
  /** All that is known of the scene in one page that opens without a server. */
  exportHandover(options: HandoverOptions): Promise<ExportedFile>;
  exportDrawn(kind: DrawnKind, options: DrawnOptions): Promise<ExportedFile>;
}
