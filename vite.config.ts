/** Build of the app, its preview server, and the test projects. */

import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
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

/** The GLB library can also read files from disk, which the app never asks of it: the modules for that are empty here. */
function noFilesOnDisk(): Plugin {
  const EMPTY = '\0no-files-on-disk';
  return {
    name: 'loamdeck:no-files-on-disk',
    enforce: 'pre',
    resolveId: (id, importer) => (/^node:(fs|path)$/.test(id) && importer?.includes('@gltf-transform/core') ? EMPTY : null),
    load: (id) => (id === EMPTY ? 'export default {};' : null),
  };
}

export default defineConfig({
  plugins: [react(), sceneSchema(), noPolicyInDevelopment()],
  build: {
    target: 'es2022',
    chunkSizeWarningLimit: 1100,
    // Inlined fonts would be data: URLs, which the page's policy refuses.
    assetsInlineLimit: 0,
  },
  worker: { format: 'es', plugins: () => [noFilesOnDisk()] },
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
          testTimeout: 30_000,
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
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // After the unit tests and one file at a time: the software renderer needs the processor to itself.
          sequence: { groupOrder: 1 },
          maxWorkers: 1,
        },
      },
    ],
  },
});
