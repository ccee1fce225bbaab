/** Opens the app in a fresh browser context and writes down everything that must not happen. */

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { CACHE } from '../tools/chromium.ts';

export interface PageOptions {
  width?: number;
  height?: number;
  /** Device pixels per CSS pixel. */
  dpr?: number;
  /** A touch screen of a phone or tablet. */
  touch?: boolean;
  reducedMotion?: boolean;
}

export interface OpenedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Uncaught errors, console errors and requests to other hosts, in order; a good page leaves it empty. */
  readonly problems: readonly string[];
  /** Where SCREENS is set: writes node_modules/.cache/screens/NAME.png, to be looked at. */
  screenshot(name: string): Promise<void>;
  close(): Promise<void>;
}

/** What has not come by then will not come, on a busy machine either. */
const PATIENCE_MS = 60_000;

/** True for an address that leaves the host of `base`. */
export function isForeign(address: string, base: string): boolean {
  const url = new URL(address);
  return /^(https?|wss?):$/.test(url.protocol) && url.host !== new URL(base).host;
}

export async function openPage(browser: Browser, url: string, options: PageOptions = {}): Promise<OpenedPage> {
  const touch = options.touch ?? false;
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 720 },
    deviceScaleFactor: options.dpr ?? 1,
    hasTouch: touch,
    isMobile: touch,
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
  });
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const problems: string[] = [];
  const noteForeign = (address: string) => {
    if (isForeign(address, url)) problems.push(`request to another host: ${address}`);
  };
  page.on('pageerror', (error) => problems.push(`uncaught: ${error.stack ?? error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()} (${message.location().url})`);
  });
  page.on('crash', () => problems.push('the page crashed'));
  page.on('websocket', (socket) => noteForeign(socket.url()));
  context.on('request', (request) => noteForeign(request.url()));
  await page.goto(url);
  return {
    page,
    context,
    problems,
    async screenshot(name) {
      if (!process.env.SCREENS) return;
      await mkdir(join(CACHE, 'screens'), { recursive: true });
      await page.screenshot({ path: join(CACHE, 'screens', `${name}.png`) });
    },
    close: () => context.close(),
  };
}
