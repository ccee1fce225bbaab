/** Which folder may import which, and what a source file looks like. These tables are the rule; other papers only explain them. */

import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codeOnly, readSource, sourceFiles } from './source-text.ts';

const REACT = /^(react|react-dom)(\/|$)/;
const THREE = /^(three|@react-three\/(fiber|drei))(\/|$)/;
const ZUSTAND = /^zustand(\/|$)/;

interface Row {
  /** Folders of src besides its own. */
  readonly folders: readonly string[];
  readonly packages: readonly RegExp[];
}

/** The empty name is src itself. */
const MAY: Record<string, Row> = {
  model: { folders: [], packages: [] },
  catalogue: { folders: ['model'], packages: [] },
  scene: { folders: ['model'], packages: [/^zod$/, /^robust-predicates$/] },
  import: { folders: ['model', 'scene', 'edit', 'core'], packages: [/^saxes$/, /^web-ifc$/] },
  core: { folders: ['model'], packages: [/^delaunator$/, /^@kninnug\/constrainautor$/, /^robust-predicates$/] },
  mesh: { folders: ['model', 'core'], packages: [/^delaunator$/, /^@kninnug\/constrainautor$/] },
  project: { folders: ['model', 'catalogue', 'scene', 'core'], packages: [] },
  export: {
    folders: ['model', 'core', 'project', 'mesh'],
    packages: [/^write-excel-file\/universal$/, /^@tarikjabiri\/dxf$/, /^@gltf-transform\/core$/],
  },
  lighten: { folders: ['model', 'catalogue', 'core', 'project'], packages: [/^highs$/] },
  edit: { folders: ['model', 'scene', 'core'], packages: [/^clipper2-ts$/] },
  worker: {
    folders: ['model', 'scene', 'import', 'core', 'project', 'mesh', 'export', 'lighten'],
    packages: [/^comlink$/, /^web-ifc\/web-ifc\.wasm$/],
  },
  store: { folders: ['model'], packages: [/^zustand\/vanilla$/] },
  cli: { folders: ['model', 'scene', 'import', 'edit', 'catalogue', 'project', 'export', 'lighten'], packages: [/^node:/] },
  view3d: { folders: ['model', 'mesh', 'store'], packages: [REACT, THREE, ZUSTAND] },
  ui: { folders: ['model', 'edit', 'store'], packages: [REACT, ZUSTAND, /^fflate$/, /^qrcode$/] },
  '': {
    folders: ['model', 'catalogue', 'scene', 'core', 'mesh', 'project', 'worker', 'store', 'view3d', 'ui'],
    packages: [REACT, THREE, ZUSTAND, /^comlink$/, /^@fontsource\//],
  },
};

/** Inside core a file imports from its own folder and those before it; files of core itself (the empty name) come last. */
const CORE_ORDER = ['geometry', 'levels', 'layers', 'loads', 'stages', 'rules', 'water', 'takeoff', ''];

const NAMING = /(?:\bfrom\s*|\bimport\s*\(?\s*|\bnew URL\(\s*(?=[^)]*\bimport\.meta\.url))(['"`]) *\1/dg;

/** Every module a text names: import, import type, export from, import(), new URL(…, import.meta.url). */
function importsOf(text: string): string[] {
  // Found where only code is left, so that the word "from" inside a text names nothing; read from the text itself.
  return [...codeOnly(text).matchAll(NAMING)].map((match) => {
    const [start, end] = [match.indices![1]![1], match.index + match[0].length - 1];
    return text.slice(start, end).replace(/\?.*$/, '');
  });
}

/** First folder of a path from src, or of a path inside one of its folders. */
function folderOf(path: string): string {
  const parts = path.split('/');
  return parts.length === 1 ? '' : parts[0]!;
}

/** What is wrong with one import, or null. */
function faultOf(file: string, name: string): string | null {
  const own = folderOf(file);
  const rule = MAY[own];
  if (rule === undefined) return `folder src/${own} has no row in the table`;
  if (!name.startsWith('.')) return rule.packages.some((allowed) => allowed.test(name)) ? null : `src/${own} may not import ${name}`;
  if (!/\.(tsx?|css)$/.test(name)) return `${name} has no extension`;
  const target = posix.normalize(posix.join(posix.dirname(file), name));
  if (target.startsWith('..')) return `${name} is outside src`;
  const to = folderOf(target);
  if (to !== own) return rule.folders.includes(to) ? null : `src/${own} may not import src/${to} (${name})`;
  return own === 'core' ? coreFault(file, target) : null;
}

function coreFault(file: string, target: string): string | null {
  const [from, to] = [file, target].map((path) => folderOf(path.slice('core/'.length))) as [string, string];
  for (const folder of [from, to]) if (!CORE_ORDER.includes(folder)) return `folder src/core/${folder} has no place in the order`;
  return CORE_ORDER.indexOf(to) <= CORE_ORDER.indexOf(from) ? null : `src/core/${from} may not import src/core/${to}`;
}

const faultsOf = (file: string, text: string) => importsOf(text).flatMap((name) => faultOf(file, name) ?? []);

describe('import directions', () => {
  it.each(sourceFiles())('src/%s', (file) => {
    expect(faultsOf(file, readSource(file))).toEqual([]);
  });
});

describe('shape of a file', () => {
  it.each(sourceFiles())('src/%s', (file) => {
    const text = readSource(file);
    expect(text.replace(/^#!.*\n/, ''), 'opens with a doc comment that says what it is').toMatch(/^\/\*\*/);
    expect(posix.basename(file), 'is named after what it exports').not.toMatch(/^(index|utils?|helpers?|misc|common)\.tsx?$/);
    expect(codeOnly(text), 'no default export').not.toMatch(/\bexport\s+default\b/);
  });
});

describe('this test itself', () => {
  it('reads every way of naming a module, and no comment', () => {
    const text = [
      "import type { A } from '../ui/a.ts';",
      "import {\n  B,\n} from './b.ts';",
      "export * from './c.ts';",
      "import './d.css';",
      "const e = await import('three');",
      "new Worker(new URL('../worker/f.ts', import.meta.url), { type: 'module' });",
      "import g from './g.ts?url';",
      "// import h from './h.ts';",
      "/* import { i } from './i.ts'; */",
      "const url = 'https://a.example'; import j from './j.ts';",
      "const k = ['where it comes from', 'three'];",
    ].join('\n');
    expect(importsOf(text)).toEqual(['../ui/a.ts', './b.ts', './c.ts', './d.css', 'three', '../worker/f.ts', './g.ts', './j.ts']);
  });

  it.each([
    ['model/a.ts', "import type { B } from '../core/b.ts';", 'src/model may not import src/core (../core/b.ts)'],
    ['core/loads/a.ts', "import { B } from '../../catalogue/b.ts';", 'src/core may not import src/catalogue (../../catalogue/b.ts)'],
    ['core/loads/a.ts', "import { B } from 'three';", 'src/core may not import three'],
    ['core/geometry/a.ts', "import type { B } from '../levels/b.ts';", 'src/core/geometry may not import src/core/levels'],
    ['core/levels/a.ts', "import { B } from '../stages/b.ts';", 'src/core/levels may not import src/core/stages'],
    ['core/loads/a.ts', "import { B } from '../evaluate.ts';", 'src/core/loads may not import src/core/'],
    ['core/geometry/a.ts', "import { B } from '../wind/b.ts';", 'folder src/core/wind has no place in the order'],
    ['ui/A.tsx', "import { B } from '../view3d/B.tsx';", 'src/ui may not import src/view3d (../view3d/B.tsx)'],
    ['store/a.ts', "import { create } from 'zustand';", 'src/store may not import zustand'],
    ['mesh/a.ts', "import { B } from './b';", './b has no extension'],
    ['ui/A.tsx', "import B from '../../tests/b.ts';", '../../tests/b.ts is outside src'],
    ['extra/a.ts', "import { B } from '../model/b.ts';", 'folder src/extra has no row in the table'],
  ])('finds the fault in %s: %s', (file, text, fault) => {
    expect(faultsOf(file, text)).toEqual([fault]);
  });

  it.each([
    ['core/stages/a.ts', "import { B } from '../geometry/b.ts';"],
    ['core/evaluate.ts', "import { B } from './stages/b.ts';"],
    ['core/geometry/deep/a.ts', "import { B } from '../b.ts';\nimport type { C } from '../../../model/c.ts';"],
    ['main.tsx', "import { B } from './view3d/B.tsx';\nimport { createRoot } from 'react-dom/client';"],
  ])('allows in %s: %s', (file, text) => {
    expect(faultsOf(file, text)).toEqual([]);
  });
});
