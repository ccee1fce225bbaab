/** Print sheets and toolbox talk in a real browser: true scales in the PDF, pages, derivations that recompute, large cards. */

import jsQR from 'jsqr';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { untilLaid, untilReady } from './app-state.ts';
import { type OpenedPage, openPage, type PageOptions } from './open-page.ts';
import { drawnBoxes, pageSizes } from './pdf-boxes.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  for (const { close } of scenes.values()) await close();
  await browser?.close();
});

async function open(scene: string, show: string, options: PageOptions = {}): Promise<OpenedPage> {
  const opened = await openPage(browser, `${inject('base')}?scene=${scene}${show === '' ? '' : `&show=${show}`}&lang=en`, {
    reducedMotion: true,
    ...options,
  });
  await untilReady(opened.page);
  return opened;
}

/** Pages that several tests look at, by scene. */
const scenes = new Map<string, OpenedPage>();

/** A sheet of a scene, opened at its own address by the first that asks for the scene. */
async function sheetOf(scene: string, sheet: 'heaps' | 'engineer' | 'talk'): Promise<OpenedPage> {
  const before = scenes.get(scene);
  const opened = before ?? (await open(scene, `sheet-${sheet}`));
  scenes.set(scene, opened);
  if (before) {
    await before.page.evaluate(() => window.__loamdeck.view().showSheet(null));
    await before.page.locator('.sheet-overlay').waitFor({ state: 'detached' });
    await before.page.evaluate((name) => window.__loamdeck.view().showSheet(name), sheet);
  }
  await untilLaid(opened.page);
  return opened;
}

const pdfOf = (page: Page) => page.pdf({ preferCSSPageSize: true, printBackground: true });

/** The page count that the app promises. */
async function pages(page: Page): Promise<number> {
  return Number(await page.locator('.sheet-overlay').getAttribute('data-pages'));
}

describe('heap board', () => {
  it('prints 10 m at 1:100 as 100 mm, on one A3 page', async () => {
    const { page, problems } = await sheetOf('problem-deck', 'heaps');
    await page.locator('.sheet-choice', { hasText: 'Scale' }).locator('select').selectOption('100');
    const pdf = await pdfOf(page);
    expect(pageSizes(pdf)).toHaveLength(await pages(page));
    const [width, height] = pageSizes(pdf)[0]!;
    expect(width).toBeCloseTo(420, 0);
    expect(height).toBeCloseTo(297, 0);
    const boxes = drawnBoxes(pdf);
    // The bar has five parts of 2 m, each 20 mm × 2 mm on paper.
    const parts = boxes.filter(({ widthMm, heightMm }) => Math.abs(widthMm - 20) < 0.5 && Math.abs(heightMm - 2) < 0.3);
    const left = Math.min(...parts.map(({ x }) => x));
    const right = Math.max(...parts.map(({ x, widthMm }) => x + widthMm));
    expect(Math.abs(right - left - 100)).toBeLessThan(0.5);
    // The deck of the scene is 20 m × 18 m.
    expect(boxes.some(({ widthMm, heightMm }) => Math.abs(widthMm - 200) < 0.5 && Math.abs(heightMm - 180) < 0.5)).toBe(true);
    expect(problems).toEqual([]);
  });

  it('stays one page for the other scenes, never calls an unconfirmed bay good, and says what it is', async () => {
    for (const scene of ['terrace', 'courtyard', 'district']) {
      const { page, screenshot } = await sheetOf(scene, 'heaps');
      expect(await pages(page), scene).toBe(1);
      expect(pageSizes(await pdfOf(page)), scene).toHaveLength(1);
      const text = (await page.locator('.paper').textContent())!;
      expect(text).toContain('Not a structural check.');
      expect(text).toContain('Page 1 of 1');
      expect(text).toMatch(/rev [A-Z]/);
      expect(text).not.toMatch(/\bOK\b/);
      await screenshot(`sheet-heaps-${scene}`);
      if (scene === 'courtyard') {
        // Bay B4 has no date in its basis.
        expect(await page.locator('.paper .paper-plan text[data-bay="B4"]').textContent()).toContain('not confirmed');
        const fill = await page.locator('.paper .paper-plan path[data-bay="B4"]').getAttribute('fill');
        expect(fill).toBe('url(#paper-unconfirmed)');
        // Its link is too long for a code, which the board says with the size.
        await page.locator('.paper .share-none').waitFor();
        const said = (await page.locator('.paper .share-none').textContent())!;
        expect(Number(/has ([\d,]+) bytes/.exec(said)![1]!.replaceAll(',', ''))).toBeGreaterThan(2953);
        expect(said).toContain('2,953 at most');
        expect(await page.locator('.paper .share-code').count()).toBe(0);
      }
    }
  });
});

/** Reads the code off a picture of the page, taken at four times the size of the screen: this reader is no telephone. */
async function readCode(page: Page): Promise<string | undefined> {
  const box = (await page.locator('.paper .share-code svg').boundingBox())!;
  const cdp = await page.context().newCDPSession(page);
  const { data: png } = await cdp.send('Page.captureScreenshot', { clip: { ...box, scale: 4 } });
  const { width, height, reds } = await page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    // As one text: a million numbers take half a minute on their way here.
    let text = '';
    for (let i = 0; i < data.length; i += 4) text += String.fromCharCode(data[i]!);
    return { width: image.width, height: image.height, reds: text };
  }, png);
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let i = 0; i < reds.length; i++) rgba.fill(reds.charCodeAt(i), 4 * i, 4 * i + 4);
  return jsQR(rgba, width, height)?.data;
}

describe('the code on the heap board', () => {
  it('leads to the scene as it is printed, with its changes', async () => {
    const { page, problems, close, screenshot } = await open('terrace', '', { width: 1720, height: 700 });
    await page.evaluate(() => {
      const { scene } = window.__loamdeck;
      const buildUp = scene().snapshot!.buildUps.find(({ id }) => id === 'bed')!;
      const index = buildUp.layers.findIndex(({ role }) => role === 'substrate');
      scene().setThickness('bed', index, 330);
    });
    await page.waitForFunction(() => window.__loamdeck.scene().history.undo !== null);
    await page.evaluate(() => window.__loamdeck.view().showSheet('heaps'));
    await page.locator('.paper .share-code').waitFor();
    await screenshot('sheet-heaps-code');
    const { text, address } = await page.evaluate(async () => {
      const { text } = await window.__loamdeck.scene().sceneText('copy');
      return { text, address: location.origin + location.pathname };
    });
    expect(text).toContain('"thicknessMm": 330');
    const link = (await readCode(page))!;
    expect(link.startsWith(`${address}#scene=`)).toBe(true);
    expect(await page.locator('.paper .share-code').textContent()).toContain(`at ${address}`);
    const pdf = await pdfOf(page);
    expect(drawnBoxes(pdf).some(({ widthMm, heightMm }) => Math.abs(widthMm - 100) < 0.5 && Math.abs(heightMm - 100) < 0.5)).toBe(true);
    await page.goto('about:blank');
    await page.goto(link);
    await untilReady(page);
    expect(await page.evaluate(async () => (await window.__loamdeck.scene().sceneText('copy')).text)).toBe(text);
    expect(problems).toEqual([]);
    await close();
  });
});

describe('section sheet', () => {
  it('prints 10 m at 1:100 as 100 mm, deck and scale bar alike, and as much at 1:50', async () => {
    const { page, problems, close, screenshot } = await open('problem-deck', '');
    for (const scale of [100, 50]) {
      await page.evaluate((at) => {
        window.__loamdeck.view().showSection({
          line: [
            [5, 3],
            [15, 3],
          ],
          scale: at,
          heights: 1,
        });
      }, scale);
      await page.waitForFunction(() => window.__loamdeck.scene().section?.of === window.__loamdeck.view().section);
      await page.evaluate(() => window.__loamdeck.view().showSheet('section'));
      await page.locator('.paper .paper-drawing').waitFor();
      await screenshot(`sheet-section-${scale}`);
      const pdf = await pdfOf(page);
      expect(pageSizes(pdf)).toHaveLength(1);
      const boxes = drawnBoxes(pdf);
      const wantedMm = 10_000 / scale;
      // The concrete slab under the whole line is 250 mm thick and slopes, so its box is a little higher than it is thick.
      const long = boxes.filter(({ widthMm, heightMm }) => Math.abs(widthMm - wantedMm) < 0.5 && heightMm < 30);
      expect(long.length, `1:${scale}`).toBeGreaterThan(1);
      if (scale === 100) {
        // Its bar has five parts of 2 m, each filled and outlined.
        const parts = boxes.filter(({ widthMm }) => Math.abs(widthMm - 20) < 0.1);
        const left = Math.min(...parts.map(({ x }) => x));
        const right = Math.max(...parts.map(({ x, widthMm }) => x + widthMm));
        expect(Math.abs(right - left - 100)).toBeLessThan(0.5);
      }
      await page.keyboard.press('Escape');
    }
    expect(problems).toEqual([]);
    await close();
  });
});

describe('engineer’s sheet', () => {
  it('repeats the head of a parted table, numbers its pages, and prints nothing else of the app', async () => {
    const { page } = await sheetOf('district', 'engineer');
    const count = await pages(page);
    expect(count).toBeGreaterThan(3);
    const pdf = await pdfOf(page);
    expect(pageSizes(pdf)).toHaveLength(count);
    expect(pageSizes(pdf)[0]![0]).toBeCloseTo(210, 0);
    for (let i = 0; i < count; i++) {
      const paper = page.locator('.paper').nth(i);
      expect(await paper.textContent()).toContain(`Page ${i + 1} of ${count}`);
      expect(await paper.textContent()).toContain('Compares entered loads with entered limits. Not a structural check.');
      // Nothing runs over the foot of the page.
      const over = await paper.locator('.paper-body').evaluate((body) => body.scrollHeight - body.clientHeight);
      expect(over, `page ${i + 1}`).toBeLessThanOrEqual(1);
    }
    // 70 bays, each once, in tables that each have their head.
    const tables = page.locator('.paper [data-block="bays"] table');
    expect(await tables.count()).toBeGreaterThan(1);
    expect(await tables.locator('thead').count()).toBe(await tables.count());
    expect(await tables.locator('tbody tr').count()).toBe(70);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.top-strip').isVisible()).toBe(false);
    expect(await page.locator('.sheet-bar').isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
  });

  it('tells of each kind of number how it comes about, and that recomputes to it', async () => {
    const { page, problems, screenshot } = await sheetOf('courtyard', 'engineer');
    for (const kind of ['mean', 'utilisation', 'column', 'mass', 'held', 'wheel']) {
      const number = page.locator(`.paper .derived[data-ask="${kind}"]`).nth(1);
      const shown = Number((await number.textContent())!.replace(/[^\d.]/g, ''));
      await number.click();
      const value = page.getByTestId('derivation-value').locator('strong');
      await value.waitFor();
      const derived = Number((await value.textContent())!.replace(/\u202F.*$/, ''));
      // Utilisations are shown in percent, masses in tonnes.
      const scale = kind === 'utilisation' ? 100 : kind === 'mass' ? 0.001 : 1;
      expect(Math.abs(derived * scale - shown), kind).toBeLessThanOrEqual(0.0501);
      expect(await page.locator('.derivation-again').getAttribute('data-agrees'), kind).toBe('true');
      expect(await page.locator('.derivation-lines li').count(), kind).toBeGreaterThan(3);
      if (kind === 'mean') await screenshot('derivation');
      await page.keyboard.press('Escape');
    }
    expect(problems).toEqual([]);
  });
});

describe('toolbox talk', () => {
  it('is two taps away from a stage, on cards to be read and turned with gloves', async () => {
    const { page, problems, close, screenshot } = await open('courtyard', '', { width: 1024, height: 768, touch: true });
    await page.evaluate(() => window.__loamdeck.view().showStage(5));
    await page.getByRole('button', { name: 'Talk', exact: true }).click();
    await page.getByRole('dialog', { name: /Toolbox talk · Stage 6/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('sun');
    for (let card = 1; card <= 5; card++) {
      await page.getByText(`${card} of 5`).waitFor();
      const tooSmall = await page.locator('.talk').evaluate((talk) => {
        const walker = document.createTreeWalker(talk, NodeFilter.SHOW_TEXT);
        const small: string[] = [];
        for (let node = walker.nextNode(); node; node = walker.nextNode()) {
          const parent = node.parentElement!;
          // Names on a drawing are also in the words beside it.
          if (node.textContent!.trim() === '' || parent.closest('svg') !== null) continue;
          if (Number.parseFloat(getComputedStyle(parent).fontSize) < 24) small.push(node.textContent!);
        }
        return small;
      });
      expect(tooSmall, `card ${card}`).toEqual([]);
      for (const box of await Promise.all((await page.locator('.talk button').all()).map((button) => button.boundingBox()))) {
        expect(Math.min(box!.width, box!.height), `card ${card}`).toBeGreaterThanOrEqual(56);
      }
      await screenshot(`talk-${card}`);
      if (card < 5) await page.keyboard.press('ArrowRight');
    }
    await page.getByRole('button', { name: 'DE', exact: true }).click();
    expect(await page.locator('.talk h2').textContent()).toBe('5 Kanten, Heben, Notfall');
    // Of one card only.
    await page.getByRole('button', { name: 'Zurück' }).click();
    expect(await page.locator('.talk h2').textContent()).toBe('4 Stop points');
    await page.keyboard.press('Escape');
    expect(await page.locator('.talk').count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Talk');
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('paper');
    expect(problems).toEqual([]);
    await close();
  });

  it('prints on one page with lines to sign, whatever the scene', async () => {
    for (const scene of ['terrace', 'courtyard', 'problem-deck', 'district']) {
      const { page, screenshot } = await sheetOf(scene, 'talk');
      expect(await pages(page), scene).toBe(1);
      expect(pageSizes(await pdfOf(page)), scene).toHaveLength(1);
      const body = page.locator('.paper .fitted-page');
      expect(await body.evaluate((element) => element.scrollHeight - element.clientHeight), scene).toBeLessThanOrEqual(1);
      expect(await page.locator('.paper .talk-sign-columns tbody tr').count()).toBe(12);
      await screenshot(`sheet-talk-${scene}`);
    }
  });
});
