/** The browser of the worker that a test file runs in. */

import { type Browser, chromium } from 'playwright-core';
import { inject } from 'vitest';

export function workerBrowser(): Promise<Browser> {
  const browsers = inject('browsers');
  const worker = Number(process.env.VITEST_POOL_ID ?? 1);
  return chromium.connect(browsers[(worker - 1) % browsers.length] as string);
}
