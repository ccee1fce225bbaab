/** Build of the app, its preview server, and the test projects. */

import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import react from '@vitejs/plugin-react';
import { type Plugin, runnerImport } from 'vite';
import { defineConfig } from 'vitest/config';

const ROOT = import.meta.dirname;

/** Writes the JSON Schema of scene files into public/, where the app serves it and editors find it. */
function sceneSchema(): Plugin {
  return {
    name: 'loamdeck:scene-schema',
    // The test runner starts a server of its own, which needs no schema.
    apply: (_, { command }) => command === 'build' || !process.env.VITEST,
    async buildStart() {
      const { module } = await runnerImport<{ sceneJsonSchema: () => unknown }>(join(ROOT, 'src/scene/json-schema.ts'));
      await writeFile(join(ROOT, 'public/scene.schema.json'), `${JSON.stringify(module.sceneJsonSchema(), null, 2)}\n`);
    },
  };
}

/** The development server puts its hot-reload script into the page, which the page's own policy would refuse. */
function noPolicyInDevelopment(): Plugin {
  return {
    name: 'loamdeck:no-policy-in-development',
    apply: 'serve',
    transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
  };
}

/** The libraries for GLB and for lightening can also read files from disk, which the app never asks of them: the modules for that are empty here. */
function noFilesOnDisk(): Plugin {
  const EMPTY = '\0no-files-on-disk';
  return {
    name: 'loamdeck:no-files-on-disk',
    enforce: 'pre',
    resolveId: (id, importer) =>
      /^node:(fs|module|path)$/.test(id) && /@gltf-transform\/core|\/highs\//.test(importer ?? '') ? EMPTY : null,
    load: (id) => (id === EMPTY ? 'export default {};' : null),
  };
}

/** What of the model library opens a model and makes surfaces; its tables of all entities and attributes, most of its length, are left out. */
const MODEL_LIBRARY = `
export class IfcAPI {
  async Init(locateFile) {
    this.wasmModule = await require_web_ifc()({ noInitialRun: true, locateFile });
  }
}`;

/** Keeps the glue of the model library's compiled part, and of its interface what is called. */
function modelLibrary(): Plugin {
  return {
    name: 'loamdeck:model-library',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!/web-ifc\/web-ifc-api\.js$/.test(id)) return null;
      const [helpers, begin, end] = ['var __commonJS', '// dist/web-ifc.js\n', '// dist/ifc-schema.ts\n'].map((mark) => code.indexOf(mark));
      const glueOfThreads = code.indexOf('// dist/web-ifc-mt.js\n');
      if (Math.min(helpers, begin, end, glueOfThreads) < 0) throw new Error('web-ifc is not built as it was: see modelLibrary');
      return { code: code.slice(0, glueOfThreads) + code.slice(begin, end) + MODEL_LIBRARY, map: null };
    },
  };
}

/** Writes the service worker last, with the list of all that was built and a version that changes with any of it. */
function serviceWorker(): Plugin {
  let outDir = '';
  return {
    name: 'loamdeck:service-worker',
    apply: 'build',
    configResolved: (config) => {
      outDir = join(config.root, config.build.outDir);
      if (config.build.outDir.startsWith('/')) outDir = config.build.outDir;
    },
    closeBundle: {
      sequential: true,
      order: 'post',
      async handler() {
        const found = await readdir(outDir, { recursive: true, withFileTypes: true });
        const files = found
          .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
          .map((entry) => relative(outDir, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
          .sort();
        const hash = createHash('sha256');
        for (const file of files) hash.update(file).update(await readFile(join(outDir, file)));
        const text = await readFile(join(ROOT, 'service-worker/service-worker.js'), 'utf8');
        const version = hash.digest('hex').slice(0, 16);
        await writeFile(join(outDir, 'sw.js'), text.replace('__FILES__', () => JSON.stringify(files)).replace('__VERSION__', version));
      },
    },
  };
}

export default defineConfig({
  plugins: [react(), sceneSchema(), noPolicyInDevelopment(), serviceWorker()],
  define: { 'import.meta.env.VITE_BUILT': JSON.stringify(new Date().toISOString()) },
  build: {
    target: 'es2022',
    chunkSizeWarningLimit: 1100,
    // Inlined fonts would be data: URLs, which the page's policy refuses.
    assetsInlineLimit: 0,
  },
  worker: { format: 'es', plugins: () => [noFilesOnDisk(), modelLibrary()] },
  preview: { host: '127.0.0.1', port: Number(process.env.PORT ?? 4173), strictPort: process.env.PORT !== undefined },
  test: {
    projects: [
      {
        extends: true as const,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/e2e/**'],
          testTimeout: 120_000,
          // Loading takes longer than testing: files share what one of them has loaded. What a test sets, it puts back.
          isolate: false,
          maxWorkers: '100%',
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true as const,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/e2e/**/*.test.ts'],
          globalSetup: ['tests/tools/e2e-setup.ts'],
          // A machine that is busy with other things too is slow, not wrong.
          testTimeout: 120_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 60_000 } },
          // After the unit tests; while one file waits, another draws.
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
