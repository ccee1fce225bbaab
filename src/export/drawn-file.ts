/** Drawings and models of an evaluated scene as files. */

import { drawSection } from '../mesh/section-drawing.ts';
import type { SectionSource } from '../mesh/section-source.ts';
import { dayIn } from '../model/date-text.ts';
import type { DrawnKind, DrawnOptions } from '../model/drawn-file.ts';
import type { ExportedFile } from '../model/engine.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Project } from '../project/evaluate-project.ts';
import { fileName } from './file-name.ts';
import { spokenSource } from './picture-source.ts';
import { planSheet } from './plan-sheet.ts';
import { sectionSheet } from './section-sheet.ts';
import type { Sheet } from './sheet.ts';
import { sheetSvg } from './sheet-svg.ts';
import { SHEET_WORDS } from './sheet-words.ts';

const SCALE = { section: 50, plan: 100 } as const;
const NAME = 'A–A';

/**
 * One file. The writers of DXF and GLB are loaded when they are first needed.
 * @param kind - what to save
 * @param of - evaluated scene and its picture
 * @param options - line, scale, language …
 * @returns name, media type and bytes
 * @throws RangeError if a section has no line, or a scale is not above 0
 */
export async function exportDrawn(
  kind: DrawnKind,
  { project, source: english }: { readonly project: Project; readonly source: SectionSource },
  options: DrawnOptions,
): Promise<ExportedFile> {
  const { scene } = project;
  const source = spokenSource(english, options.language);
  switch (kind) {
    case 'model glb': {
      const { modelGlb } = await import('./model-glb.ts');
      return { name: fileName(scene, 'model', 'glb'), mediaType: 'model/gltf-binary', bytes: await modelGlb(project, source) };
    }
    case 'section svg':
      return svgFile(scene, 'section', sectionOf(source, options));
    case 'plan svg':
      return svgFile(scene, 'plan', planOf(source, options));
    case 'section dxf':
      return dxfFile(scene, 'section', sectionOf(source, { ...options, exaggeration: 1 }));
    case 'plan dxf':
      return dxfFile(scene, 'plan', planOf(source, options));
  }
}

function svgFile(scene: SceneFile, what: string, sheet: Sheet): ExportedFile {
  return { name: fileName(scene, what, 'svg'), mediaType: 'image/svg+xml', bytes: new TextEncoder().encode(sheetSvg(sheet)) };
}

async function dxfFile(scene: SceneFile, what: string, sheet: Sheet): Promise<ExportedFile> {
  const { sheetDxf } = await import('./sheet-dxf.ts');
  return { name: fileName(scene, what, 'dxf'), mediaType: 'image/vnd.dxf', bytes: new TextEncoder().encode(sheetDxf(sheet)) };
}

function above0(name: string, value: number): number {
  if (value > 0 && Number.isFinite(value)) return value;
  throw new RangeError(`exportDrawn: ${name} must be above 0, got ${value}`);
}

function sectionOf(source: SectionSource, options: DrawnOptions): Sheet {
  const { line, language, stage = null, date = null, name = NAME } = options;
  if (line === undefined) throw new RangeError('exportDrawn: a section needs a line, got none');
  const drawing = drawSection(source, line, stage);
  const crossed = new Set(drawing.bays.map(({ bay }) => bay));
  return sectionSheet(drawing, {
    name,
    scale: above0('scale', options.scale ?? SCALE.section),
    exaggeration: above0('exaggeration', options.exaggeration ?? 1),
    language,
    date,
    basis: basisOf(source.scene, language, (bay) => crossed.has(bay)),
  });
}

function planOf({ scene, input }: SectionSource, options: DrawnOptions): Sheet {
  const { line, language, date = null, name = NAME, bayTexts, bayTextsAre } = options;
  return planSheet(scene, input, {
    scale: above0('scale', options.scale ?? SCALE.plan),
    language,
    date,
    basis: basisOf(scene, language, () => true),
    ...(bayTexts === undefined ? {} : { bayTexts }),
    ...(bayTextsAre === undefined ? {} : { bayTextsAre }),
    ...(line === undefined ? {} : { section: { name, line } }),
  });
}

/** Documents that permit the loads of some bays, each once. */
function basisOf({ deck }: SceneFile, language: DrawnOptions['language'], wanted: (bay: string) => boolean): string[] {
  const { revision } = SHEET_WORDS[language];
  const documents = deck.bays.flatMap(({ id, basis }) => {
    if (!wanted(id) || basis?.document === undefined) return [];
    return [
      [basis.document, basis.revision && revision(basis.revision), basis.date && dayIn(basis.date, language)].filter(Boolean).join(', '),
    ];
  });
  return [...new Set(documents)];
}
