/** Changing, undoing and saving a scene in a real browser. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { CACHE } from '../tools/chromium.ts';
import { untilIdle, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  await browser?.close();
});

const TERRACE = readFileSync('scenes/terrace.scene.json', 'utf8');

/** The app with a scene; `before` runs in the page ahead of it. */
async function withApp(query: string, before: readonly (() => void)[], test: (opened: OpenedPage) => Promise<void>): Promise<void> {
  const opened = await openPage(browser, `${inject('base')}favicon.svg`, { reducedMotion: true });
  try {
    for (const one of before) await opened.page.addInitScript(one);
    // A refusal by the page's own policy counts as a problem, also where nobody would notice it.
    await opened.page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => console.error(`policy: ${violatedDirective}`));
    });
    await opened.page.goto(`${inject('base')}${query}`);
    await untilReady(opened.page);
    await test(opened);
    expect(opened.problems).toEqual([]);
  } finally {
    await opened.close();
  }
}

const history = (page: Page) => page.evaluate(() => window.__loamdeck.scene().history);
const text = (page: Page) => page.evaluate(async () => (await window.__loamdeck.scene().sceneText('copy')).text);
const untilUnchanged = (page: Page) => page.waitForFunction(() => !window.__loamdeck.scene().history.changed);
const untilChanged = (page: Page) => page.waitForFunction(() => window.__loamdeck.scene().history.changed);

/** Sets the first adjustable layer by its field, as a person does. */
async function typeThickness(page: Page, mm: string): Promise<void> {
  const field = page.locator('.thickness-row .number-field input').first();
  await field.fill(mm);
  await field.press('Enter');
  await page.waitForFunction((typed) => {
    const { undo } = window.__loamdeck.scene().history;
    return undo?.kind === 'thickness' && undo.toMm === Number(typed);
  }, mm);
}

/** What lies in the browser's storage. */
const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ unsaved: boolean; text: string }[]>((resolve) => {
        const opening = indexedDB.open('loamdeck', 1);
        opening.onsuccess = () => {
          const all = opening.result.transaction('states').objectStore('states').getAll();
          all.onsuccess = () => resolve(all.result);
        };
      }),
  );

async function bytesOf(download: Download): Promise<Buffer> {
  const path = join(CACHE, 'downloaded.json');
  await download.saveAs(path);
  return readFileSync(path);
}

describe('undo and redo', () => {
  it('take a dragged slider as one step and say what was undone', async () => {
    await withApp('?scene=terrace', [], async ({ page }) => {
      const slider = page.locator('.thickness-row input[type=range]').first();
      await slider.scrollIntoViewIfNeeded();
      const box = (await slider.boundingBox())!;
      const y = box.y + box.height / 2;
      await page.mouse.move(box.x + box.width * 0.3, y);
      await page.mouse.down();
      for (let k = 1; k <= 50; k++) await page.mouse.move(box.x + box.width * (0.3 + 0.008 * k), y);
      await page.mouse.up();
      await untilChanged(page);
      await expect.poll(async () => (await history(page)).undo).toMatchObject({ toMm: Number(await slider.inputValue()) });
      await page.keyboard.press('Control+z');
      await untilUnchanged(page);
      expect(await history(page)).toMatchObject({ undo: null, changed: false });
      expect(await page.getByTestId('live').textContent()).toMatch(/^Undone: .+\smm again\.$/);
      expect(await text(page)).toBe(TERRACE);
      await page.keyboard.press('Control+Shift+Z');
      await untilChanged(page);
      await page.getByRole('button', { name: /^Undo: / }).click();
      await untilUnchanged(page);
      await page.keyboard.press('Control+y');
      await untilChanged(page);
    });
  });

  it('leave the keys to a field while something is typed there', async () => {
    await withApp('?scene=terrace', [], async ({ page }) => {
      await typeThickness(page, '77');
      const field = page.locator('.thickness-row .number-field input').first();
      await field.fill('9');
      await field.press('Control+z');
      await untilIdle(page);
      expect((await history(page)).undo).toMatchObject({ toMm: 77 });
    });
  });
});

describe('saving', () => {
  it('writes the picked file in the style it was opened in, and the same file the next time', async () => {
    const stub = () => {
      const files: string[][] = [];
      Object.assign(window, {
        savedFiles: files,
        showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) => {
          const texts: string[] = [];
          files.push(texts);
          const createWritable = async () => ({ write: async (part: string) => void texts.push(part), close: async () => {} });
          return { name: suggestedName, createWritable };
        },
      });
    };
    await withApp('?scene=terrace', [stub], async ({ page }) => {
      await typeThickness(page, '77');
      expect(await page.locator('.scene-name').textContent()).toContain('changed, not saved · last saved to a file: never');
      await page.keyboard.press('Control+s');
      await untilUnchanged(page);
      await typeThickness(page, '78');
      await page.getByRole('button', { name: 'File', exact: true }).click();
      await page.getByRole('button', { name: 'Save', exact: true }).click();
      await untilUnchanged(page);
      const files = await page.evaluate(() => (window as unknown as { savedFiles: string[][] }).savedFiles);
      expect(files.map((texts) => texts.length)).toEqual([2]);
      // One number of the file is another, nothing else.
      const changed = files[0]!.map((saved) => {
        const lines = TERRACE.split('\n');
        return saved.split('\n').filter((line, i) => line !== lines[i]);
      });
      expect(changed.map((lines) => lines.length)).toEqual([1, 1]);
      expect(changed.map(([line]) => line)).toEqual([
        expect.stringMatching(/^ +\{ .*"thicknessMm": 77 .*\},?$/),
        expect.stringMatching(/^ +\{ .*"thicknessMm": 78 .*\},?$/),
      ]);
      expect(await page.locator('.scene-name').textContent()).not.toContain('not saved');
      // A step back is a change again.
      await page.getByRole('button', { name: /^Undo: / }).click();
      await untilChanged(page);
    });
  });

  it('asks for the name where the browser would not, and reads back to the same report', async () => {
    const noPicker = () => {
      delete (window as unknown as { showSaveFilePicker?: unknown }).showSaveFilePicker;
      delete (Window.prototype as unknown as { showSaveFilePicker?: unknown }).showSaveFilePicker;
    };
    await withApp('?scene=terrace', [noPicker], async ({ page }) => {
      await typeThickness(page, '77');
      await page.keyboard.press('Control+s');
      await page.getByLabel('Name of the file').fill('My yard?.json');
      const downloading = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save', exact: true }).last().click();
      const download = await downloading;
      expect(download.suggestedFilename()).toBe('My yard-.scene.json');
      await untilUnchanged(page);
      const report = await page.evaluate(() => JSON.stringify(window.__loamdeck.scene().snapshot!.report));
      const saved = await bytesOf(download);
      await page
        .locator('input[type=file]')
        .first()
        .setInputFiles({ name: 'back.scene.json', mimeType: 'application/json', buffer: saved });
      await page.waitForFunction(() => window.__loamdeck.scene().fileName === 'back.scene.json');
      expect(await page.evaluate(() => JSON.stringify(window.__loamdeck.scene().snapshot!.report))).toBe(report);
    });
  });
});

describe('copies kept in the browser', () => {
  const ended = async (page: Page) => page.close({ runBeforeUnload: false });

  const untilKept = (page: Page, timeout = 10_000) => expect.poll(async () => (await kept(page)).length, { timeout }).toBe(1);

  /** The wait until a copy is kept is over at once; were it another one, tests would only take longer. */
  const hurried = () => {
    const wait = window.setTimeout as (work: TimerHandler, ms?: number, ...rest: unknown[]) => number;
    Object.assign(window, {
      setTimeout: (work: TimerHandler, ms?: number, ...rest: unknown[]) => wait(work, ms === 2000 ? 0 : ms, ...rest),
    });
  };

  /** Waits until the app, which looked as it started, has shown what it found: whatever is asked for later is answered later. */
  const untilLooked = (page: Page) =>
    page.evaluate(async () => {
      await new Promise<void>((resolve) => {
        const opening = indexedDB.open('loamdeck', 1);
        opening.onsuccess = () => {
          // Only one that writes waits for those that read.
          const asking = opening.result.transaction('states', 'readwrite');
          asking.objectStore('states').count();
          asking.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      });
      await navigator.locks.query();
      for (let i = 0; i < 2; i++) await new Promise(requestAnimationFrame);
    });

  it('bring back the work of a closed tab, after asking', async () => {
    await withApp('?scene=terrace', [], async ({ page, context }) => {
      await typeThickness(page, '77');
      const work = await text(page);
      // At most five seconds of work are lost.
      await untilKept(page, 5000);
      await ended(page);
      const next = await context.newPage();
      await next.goto(`${inject('base')}?scene=courtyard`);
      await untilReady(next);
      const offer = next.getByRole('region', { name: 'Unsaved work found' });
      expect(await offer.textContent()).toMatch(/Pebble Terrace of \d{4}-\d\d-\d\d, \d\d:\d\d /);
      // Nothing was opened by itself.
      expect(await next.evaluate(() => window.__loamdeck.scene().fileName)).not.toContain('Terrace');
      await next.getByRole('button', { name: 'Open the copy' }).click();
      await next.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'Pebble Terrace');
      expect(await text(next)).toBe(work);
      expect((await history(next)).changed).toBe(true);
      await offer.waitFor({ state: 'detached' });
      // Taken over: the same work is offered by this tab's end, not by the first one's.
      const states = await kept(next);
      expect(states.filter(({ unsaved }) => unsaved).map(({ text: copy }) => copy)).toEqual([work]);
    });
  });

  it('are offered no more once not wanted, and stay in the list', async () => {
    await withApp('?scene=terrace', [hurried], async ({ page, context }) => {
      await typeThickness(page, '77');
      await untilKept(page);
      await ended(page);
      const next = await context.newPage();
      await next.goto(`${inject('base')}?scene=terrace`);
      await next.getByRole('button', { name: 'Not now' }).click();
      await next.getByRole('button', { name: 'Not now' }).waitFor({ state: 'detached' });
      await next.reload();
      await untilReady(next);
      await untilLooked(next);
      expect(await next.getByRole('button', { name: 'Open the copy' }).count()).toBe(0);
      await next.getByRole('button', { name: 'File', exact: true }).click();
      await next.getByText('Earlier state, kept on this device').waitFor();
    });
  });

  it('of a tab that is still open are not offered in another', async () => {
    await withApp('?scene=terrace', [hurried], async ({ page, context }) => {
      await typeThickness(page, '77');
      await untilKept(page);
      const next = await context.newPage();
      await next.goto(`${inject('base')}?scene=terrace`);
      await untilReady(next);
      await untilLooked(next);
      expect(await next.getByRole('button', { name: 'Open the copy' }).count()).toBe(0);
    });
  });

  it('refused by the browser leave a sentence and a working app', async () => {
    const shut = () => {
      const counted = window as unknown as { asked: number };
      counted.asked = 0;
      Object.defineProperty(window, 'indexedDB', {
        get: () => ({
          open: () => {
            counted.asked++;
            throw new Error('refused');
          },
        }),
      });
    };
    await withApp('?scene=terrace', [shut, hurried], async ({ page }) => {
      const asked = () => page.evaluate(() => (window as unknown as { asked: number }).asked);
      await expect.poll(asked).toBeGreaterThan(0);
      const before = await asked();
      await typeThickness(page, '77');
      await expect.poll(asked).toBeGreaterThan(before);
      await page.getByRole('button', { name: 'File', exact: true }).click();
      await page.getByText('This browser keeps no copies here.').waitFor();
    });
  });
});

describe('a link', () => {
  it('made in the menu opens the changed scene elsewhere, and nothing of it is sent', async () => {
    await withApp('?scene=terrace', [], async ({ page, context }) => {
      await typeThickness(page, '77');
      const work = await text(page);
      await page.getByRole('button', { name: 'File', exact: true }).click();
      const field = page.getByLabel(/^Link with the whole scene, [\d,]+ characters$/);
      const link = await field.inputValue();
      const next = await context.newPage();
      const asked: string[] = [];
      next.on('request', (request) => asked.push(`${request.method()} ${request.url()} ${request.postData() ?? ''}`));
      await next.goto(link);
      await untilReady(next);
      expect(await text(next)).toBe(work);
      expect((await history(next)).changed).toBe(false);
      // The browser's own list of requests has the address with its "#" for the page itself; what it sends ends before that.
      const sent = asked.map((line) => line.replace(/#\S*/, ''));
      expect(sent.length).toBeGreaterThan(3);
      expect(sent.every((line) => /^GET \S+ $/.test(line) && line.length < 300)).toBe(true);
      // Another one put into the address bar opens too.
      await next.evaluate(() => {
        location.hash = location.hash.slice(0, -40);
      });
      const dialog = next.getByRole('dialog');
      await dialog.waitFor();
      expect(await dialog.textContent()).toMatch(/The link is incomplete: [\d,]+ of [\d,]+ characters arrived/);
    });
  });

  it('of a scene too large for one is refused with its size and the next step', async () => {
    await withApp('?scene=district', [], async ({ page }) => {
      await page.getByRole('button', { name: 'File', exact: true }).click();
      await page.getByText(/A link with this scene has [\d,]+ characters; .* Save the scene and send the file\./).waitFor();
      expect(await page.getByLabel(/^Link with the whole scene/).count()).toBe(0);
    });
  });

  it('cut on its way opens nothing and says how much arrived', async () => {
    const opened = await openPage(browser, `${inject('base')}#scene=1.2011.00000000.${'A'.repeat(1204)}`, {});
    const dialog = opened.page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.textContent()).toContain('1,204 of 2,011 characters arrived');
    expect(await opened.page.evaluate(() => window.__loamdeck.scene().snapshot)).toBeNull();
    expect(opened.problems).toEqual([]);
    await opened.close();
  });
});

describe('without a network', () => {
  it('the second visit opens scenes and calculates, and breaks no rule of the page', async () => {
    await withApp('?scene=terrace', [], async ({ page, context }) => {
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
      await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.active?.state === 'activated');
      await context.setOffline(true);
      const next = await context.newPage();
      const broken: string[] = [];
      next.on('console', (message) => message.type() === 'error' && broken.push(message.text()));
      next.on('requestfailed', (request) => broken.push(request.url()));
      await next.addInitScript(() => {
        document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => console.error(`policy: ${violatedDirective}`));
      });
      const answer = await next.goto(`${inject('base')}?scene=courtyard`);
      expect(answer!.fromServiceWorker()).toBe(true);
      await untilReady(next);
      const courtyard = await next.evaluate(() => window.__loamdeck.scene().snapshot?.scene.name);
      await next.getByRole('button', { name: 'Scenes' }).click();
      await next.locator('.scenes-sheet .demo').nth(2).click();
      // The scene that was open stays until the other is read.
      await next.waitForFunction((before) => window.__loamdeck.scene().snapshot?.scene.name !== before, courtyard);
      await untilReady(next);
      await typeThickness(next, '77');
      expect(await text(next)).toContain('77');
      expect(broken).toEqual([]);
    });
  });
});

describe('the policy of the page', () => {
  it('refuses a script in the page and requests to another host', async () => {
    const opened = await openPage(browser, `${inject('base')}?scene=terrace`, {});
    await untilReady(opened.page);
    const refused = await opened.page.evaluate(async () => {
      const seen: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
      const script = document.createElement('script');
      script.textContent = 'window.wasRun = true';
      document.body.append(script);
      await fetch('http://another.invalid/').catch(() => null);
      const image = new Image();
      image.src = 'http://another.invalid/a.png';
      const deadline = performance.now() + 40_000;
      while (new Set(seen).size < 3 && performance.now() < deadline) await new Promise(requestAnimationFrame);
      return { seen: [...new Set(seen)].sort(), wasRun: 'wasRun' in window };
    });
    expect(refused).toEqual({ seen: ['connect-src', 'img-src', 'script-src-elem'], wasRun: false });
    await opened.close();
  });
});
