/** What is kept on the device: a new version never interrupts the old one, and cleared storage takes nothing else with it. */

import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { untilReady } from './app-state.ts';
import { openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
let server: Server;
/** The app as built, under the version that is out at the time: its page and its service worker differ. */
let out = 'one';
let home = '';
beforeAll(async () => {
  browser = await workerBrowser();
  server = createServer(async ({ url = '/' }, answer) => {
    const built = await fetch(new URL(url, inject('base')));
    const type = built.headers.get('content-type') ?? '';
    const bytes = Buffer.from(await built.arrayBuffer());
    answer.writeHead(built.status, { 'content-type': type, 'cache-control': 'no-store' });
    if (url.startsWith('/sw.js')) answer.end(bytes.toString().replace(/'loamdeck-\w+'/, `'loamdeck-${out}'`));
    else if (type.startsWith('text/html')) answer.end(bytes.toString().replace('<head>', `<head><meta name="version" content="${out}">`));
    else answer.end(bytes);
  });
  await new Promise<void>((listens) => server.listen(0, '127.0.0.1', listens));
  home = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});
afterAll(async () => {
  await browser?.close();
  server?.closeAllConnections();
  server?.close();
});

const versionOf = (page: Page) => page.locator('meta[name=version]').getAttribute('content');
const untilState = (page: Page, state: 'active' | 'waiting') =>
  page.waitForFunction(async (name) => (await navigator.serviceWorker.getRegistration())?.[name] != null, state);

/** Sets the first adjustable layer by its field. */
async function typeThickness(page: Page, mm: number): Promise<void> {
  const field = page.locator('.thickness-row .number-field input').first();
  await field.fill(String(mm));
  await field.press('Enter');
  await page.waitForFunction((typed) => {
    const { undo } = window.__loamdeck.scene().history;
    return undo?.kind === 'thickness' && undo.toMm === typed;
  }, mm);
}

it('a new version waits until every tab of the old one is closed', async () => {
  out = 'one';
  const opened = await openPage(browser, `${home}?scene=terrace`, { reducedMotion: true });
  const { page, context } = opened;
  await untilReady(page);
  await untilState(page, 'active');
  await page.reload();
  await untilReady(page);
  await typeThickness(page, 77);
  out = 'two';
  await page.evaluate(async () => void (await (await navigator.serviceWorker.getRegistration())!.update()));
  await untilState(page, 'waiting');
  // The tab goes on as it was, another one opens in the old version too, and so does the first when it is loaded again.
  await typeThickness(page, 78);
  const other = await context.newPage();
  await other.goto(`${home}?scene=terrace`);
  await untilReady(other);
  expect([await versionOf(page), await versionOf(other)]).toEqual(['one', 'one']);
  await page.close();
  await typeThickness(other, 79);
  await other.reload();
  expect(await versionOf(other)).toBe('one');
  await other.close();
  const next = await context.newPage();
  await expect
    .poll(async () => {
      await next.goto('about:blank');
      await next.goto(`${home}?scene=terrace`);
      return versionOf(next);
    })
    .toBe('two');
  await untilReady(next);
  await expect.poll(() => next.evaluate(() => caches.keys())).toEqual(['loamdeck-two']);
  expect(opened.problems).toEqual([]);
  await opened.close();
});

it('cleared storage is told as nothing kept, and the next change is kept again', async () => {
  const opened = await openPage(browser, `${home}?scene=terrace`, { reducedMotion: true });
  const { page, context } = opened;
  await untilReady(page);
  const copies = (on: Page) =>
    on.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const opening = indexedDB.open('loamdeck', 1);
          opening.onsuccess = () => {
            const counting = opening.result.transaction('states').objectStore('states').count();
            counting.onsuccess = () => {
              opening.result.close();
              resolve(counting.result);
            };
          };
        }),
    );
  await typeThickness(page, 77);
  // A change is kept within two seconds.
  await expect.poll(() => copies(page)).toBeGreaterThan(0);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Storage.clearDataForOrigin', { origin: new URL(home).origin, storageTypes: 'all' });
  // The open scene is untouched.
  expect(await page.evaluate(() => window.__loamdeck.scene().history.undo)).toMatchObject({ kind: 'thickness', toMm: 77 });
  await page.close();
  const next = await context.newPage();
  await next.goto(`${home}?scene=terrace`);
  await untilReady(next);
  await next.getByRole('button', { name: 'File', exact: true }).click();
  await next.getByText('No earlier states are kept on this device.').waitFor();
  await next.keyboard.press('Escape');
  await typeThickness(next, 78);
  await expect.poll(() => copies(next)).toBe(1);
  expect(opened.problems).toEqual([]);
  await opened.close();
});
