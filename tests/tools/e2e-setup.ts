/** Builds the app as it ships, serves it, starts one browser; the browser tests connect to both. */

import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { CACHE, launchOptions } from './chromium.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the served app, with a slash at its end. */
    base: string;
    /** Addresses that playwright's `chromium.connect` takes: a browser for each worker. */
    browsers: readonly string[];
  }
}

/** Smoothed edges and a page rastered by the software renderer take most of its time and are not what is tested. */
const FAST = ['--webgl-antialiasing-mode=none', '--disable-gpu-rasterization'];

async function buildForProduction(outDir: string): Promise<void> {
  // The test runner sets NODE_ENV=test, and with that the bundle would contain React's development build.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await build({ logLevel: 'warn', mode: 'production', build: { outDir, emptyOutDir: true } });
  } finally {
    process.env.NODE_ENV = before;
  }
}

/** One browser each: a page that draws much holds up the others of its browser. */
const E2E_WORKERS = 2;

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  // A folder per run: two at once do not take each other's files away.
  await mkdir(CACHE, { recursive: true });
  const outDir = await mkdtemp(join(CACHE, 'e2e-dist-'));
  await buildForProduction(outDir);
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const base = server.resolvedUrls?.local[0];
  if (base === undefined) throw new Error('setup: the preview server gave no address');
  const options = await launchOptions();
  const browsers = await Promise.all(
    Array.from({ length: E2E_WORKERS }, () => chromium.launchServer({ ...options, args: [...(options.args ?? []), ...FAST] })),
  );
  project.provide('base', base);
  project.provide(
    'browsers',
    browsers.map((browser) => browser.wsEndpoint()),
  );
  return async () => {
    for (const browser of browsers) await browser.close();
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}
