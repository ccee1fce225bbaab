/** Screenshot of a running app: `npx tsx tests/tools/look.ts URL out.png [width height] [dpr]`. */

import { chromium } from 'playwright-core';
import { openPage } from '../e2e/open-page.ts';
import { launchOptions } from './chromium.ts';

const [url, out, width = '1280', height = '720', dpr = '1'] = process.argv.slice(2);
if (url === undefined || out === undefined) {
  console.error('Usage: npx tsx tests/tools/look.ts URL out.png [width height] [dpr]');
  process.exit(2);
}

const browser = await chromium.launch(await launchOptions());
const opened = await openPage(browser, url, { width: Number(width), height: Number(height), dpr: Number(dpr) });
try {
  await opened.page.waitForFunction(() => (window as { __loamdeck?: { ready?: boolean } }).__loamdeck?.ready === true, null, {
    timeout: 20_000,
  });
} catch {
  console.error('not ready after 20 s; here is what is on screen');
}
await opened.page.screenshot({ path: out });
for (const problem of opened.problems) console.error(problem);
await browser.close();
