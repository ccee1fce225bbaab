/** Builds the app as it ships, serves it, starts one browser; the browser tests connect to both. */

import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { CACHE, launchOptions } from './chromium.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the served app, with a slash at its end. */
    base: string;
    /** Address that playwright's `chromium.connect` takes. */
    ws: string;
  }
}

const OUT = join(CACHE, 'e2e-dist');

async function buildForProduction(): Promise<void> {
  // The test runner sets NODE_ENV=test, and with that the bundle would contain React's development build.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await build({ logLevel: 'warn', mode: 'production', build: { outDir: OUT, emptyOutDir: true } });
  } finally {
    process.env.NODE_ENV = before;
  }
}

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  await buildForProduction();
  const server = await preview({
    logLevel: 'warn',
    build: { outDir: OUT },
    preview: { host: '127.0.0.1', port: 0, strictPort: false, open: false },
  });
  const base = server.resolvedUrls?.local[0];
  if (base === undefined) throw new Error('setup: the preview server gave no address');
  const browser = await chromium.launchServer(await launchOptions());
  project.provide('base', base);
  project.provide('ws', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await server.close();
  };
}
