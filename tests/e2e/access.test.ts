/** Access in the real browser: no serious fault anywhere, the whole job by keyboard, targets, narrow screens, other colours, less motion. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { CARDS, SHEETS } from '../../src/store/sheet-view.ts';
import { seriousFaults, sidewaysPx, smallTargets, tabUntil } from './access-faults.ts';
import { untilIdle, untilMapped, untilReady } from './app-state.ts';
import { type OpenedPage, openPage, type PageOptions } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  await browser?.close();
});

async function open(scene: string, options: PageOptions): Promise<OpenedPage> {
  const opened = await openPage(browser, `${inject('base')}?scene=${scene}`, options);
  await untilReady(opened.page);
  return opened;
}

/** One map of each group: of fixed classes, of steps, of named classes. */
const MAPS = ['utilisation', 'upstand', 'reach', 'catchment'] as const;

describe.each([
  ['laptop', { width: 1280, height: 720 }, 24],
  ['phone', { width: 390, height: 844, touch: true, dpr: 3 }, 44],
] as const)('on a %s', (device, options, leastPx) => {
  let opened: OpenedPage;
  let page: Page;
  beforeAll(async () => {
    opened = await open('courtyard', { ...options, reducedMotion: true });
    page = opened.page;
  });
  afterAll(() => opened?.close());

  /** Serious faults, small targets and sideways scrolling in one state of the page. */
  async function faults(within?: string): Promise<string[]> {
    const sideways = await sidewaysPx(page);
    return [
      ...(await seriousFaults(page, within)),
      ...(await smallTargets(page, leastPx)),
      ...(sideways > 0 ? [`scrolls sideways by ${sideways} px`] : []),
    ];
  }

  it('the page as it opens', async () => {
    expect(await faults()).toEqual([]);
  });

  it('every sheet of the register', async () => {
    const found: Record<string, string[]> = {};
    for (const id of await page.getByRole('tab').evaluateAll((all) => all.map((one) => one.id))) {
      await page.locator(`#${id}`).evaluate((tab: HTMLElement) => tab.click());
      await page.locator(`[aria-labelledby=${id}]`).waitFor();
      const here = await faults('#tables');
      if (here.length > 0) found[id] = here;
    }
    expect(found).toEqual({});
  });

  it('maps of every group, and the table of one', async () => {
    const found: Record<string, string[]> = {};
    for (const map of MAPS) {
      await page.evaluate((kind) => window.__loamdeck.view().showMap(kind), map);
      await untilMapped(page);
      const here = await faults('.view');
      if (here.length > 0) found[map] = here;
    }
    await page.locator('#tab-cells').evaluate((tab: HTMLElement) => tab.click());
    await page.locator('[aria-labelledby=tab-cells] table').waitFor();
    expect([found, await faults('#tables')]).toEqual([{}, []]);
  });

  it('a stage with its sheet', async () => {
    await page.evaluate(() => {
      window.__loamdeck.view().showMap(null);
      window.__loamdeck.view().showStage(3);
    });
    if (device === 'phone') await page.locator('#tab-stage').click();
    else await page.getByRole('button', { name: 'Stage sheet' }).click();
    expect(await faults()).toEqual([]);
    if (device === 'laptop') await page.keyboard.press('Escape');
  });

  it.each(['Scenes', 'File'])('the menu %s', async (name) => {
    await page.getByRole('button', { name, exact: true }).click();
    const found = await faults();
    await page.keyboard.press('Escape');
    expect(found).toEqual([]);
  });

  it.each(['Export', 'Settings'])('the panel %s', async (name) => {
    await page.getByRole('button', { name, exact: true }).click();
    const found = await faults();
    await page.keyboard.press('Escape');
    expect(found).toEqual([]);
  });

  it.skipIf(device === 'phone')('every look of the page, chosen in the settings and kept for the next visit', async () => {
    const found: Record<string, string[]> = {};
    await page.evaluate(() => window.__loamdeck.view().showMap('utilisation'));
    for (const [look, theme] of [
      ['Projector', 'projector'],
      ['Paper', 'paper'],
      ['Sun', 'sun'],
    ] as const) {
      await page.getByRole('button', { name: 'Settings', exact: true }).click();
      await page.getByRole('radio', { name: look }).check({ force: true });
      expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(theme);
      const here = await faults();
      await page.keyboard.press('Escape');
      for (const tab of ['bays', 'findings']) {
        await page.locator(`#tab-${tab}`).click();
        here.push(...(await seriousFaults(page)));
      }
      await opened.screenshot(`look-${theme}`);
      if (here.length > 0) found[look] = here;
    }
    expect(found).toEqual({});
    await page.reload();
    await untilReady(page);
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('sun');
    await page.getByRole('button', { name: 'Settings', exact: true }).click();
    await page.getByRole('radio', { name: 'Paper' }).check({ force: true });
    await page.keyboard.press('Escape');
  });

  it('the derivation of a number', async () => {
    await page.locator('#tab-bays').evaluate((tab: HTMLElement) => tab.click());
    await page.locator('.bays .derived').first().click();
    await page.getByTestId('derivation-value').waitFor();
    const found = await faults('.derivation-dialog');
    await page.keyboard.press('Escape');
    expect(found).toEqual([]);
  });

  it('the section and its table', async () => {
    await page.evaluate(() => {
      window.__loamdeck.view().showSection({
        line: [
          [1, 4],
          [12, 4],
        ],
      });
    });
    await page.waitForFunction(() => window.__loamdeck.scene().section?.of === window.__loamdeck.view().section);
    const drawn = await faults();
    await page.getByRole('radio', { name: 'Table' }).check({ force: true });
    await page.locator('.section-table').waitFor();
    expect([drawn, await faults()]).toEqual([[], []]);
  });

  /** On a phone those of other shapes; the rest is tables as in them. */
  const sheets = device === 'laptop' ? SHEETS : (['heaps', 'talk'] as const);
  it.each(sheets)('the print sheet %s', async (sheet) => {
    await page.evaluate((name) => window.__loamdeck.view().showSheet(name), sheet);
    await page.locator('.sheet-overlay .paper').first().waitFor();
    const found = await faults('.sheet-overlay');
    await page.evaluate(() => window.__loamdeck.view().showSheet(null));
    // Numbers of a page drawn smaller are small; the same ones can be tapped in the tables of the app.
    expect(found.filter((fault) => !fault.startsWith('<button type="button" class="derived"'))).toEqual([]);
  });

  it('the toolbox talk, every card', async () => {
    await page.evaluate(() => {
      window.__loamdeck.view().closeSection();
      window.__loamdeck.view().showCard(0);
    });
    const found: Record<string, string[]> = {};
    for (const [index, card] of CARDS.entries()) {
      await page.evaluate((at) => window.__loamdeck.view().showCard(at), index);
      await page.locator('.talk h2', { hasText: `${index + 1} ` }).waitFor();
      const here = await faults('.talk');
      if (here.length > 0) found[card] = here;
    }
    await page.evaluate(() => window.__loamdeck.view().showCard(null));
    expect(found).toEqual({});
  });

  it('the help', async () => {
    await page.getByRole('button', { name: 'Help' }).click();
    expect(await faults('dialog')).toEqual([]);
    await page.keyboard.press('Escape');
  });

  it('the walkthrough', async () => {
    await page.getByRole('button', { name: 'Walkthrough' }).click();
    await page.waitForFunction(() => window.__loamdeck.view().walk !== null);
    await untilIdle(page);
    expect(await faults()).toEqual([]);
    // The picture has most of the window, or half of it on a phone.
    const picture = (await page.locator('.deck-view').boundingBox())!;
    expect(picture.height / options.height).toBeGreaterThan(0.5);
    await page.evaluate(() => window.__loamdeck.view().leaveWalk());
  });

  it('draws at most two device pixels per CSS pixel, and nothing went wrong', async () => {
    await untilIdle(page);
    const ratio = await page.locator('.deck-view canvas').evaluate((one: HTMLCanvasElement) => one.width / one.clientWidth);
    expect(ratio).toBeCloseTo(Math.min(2, 'dpr' in options ? options.dpr : 1), 1);
    expect(opened.problems).toEqual([]);
  });
});

describe('widths of the window', () => {
  it('the statement is whole, and nothing scrolls sideways, from 320 px on; a phone shows the way to the stages', async () => {
    const { page, close } = await open('courtyard', { width: 320, height: 640, touch: true, reducedMotion: true });
    for (const [width, height] of [
      [320, 640],
      [390, 844],
      [820, 1180],
      [1024, 768],
      [1280, 720],
    ] as const) {
      await page.setViewportSize({ width, height });
      await untilIdle(page);
      const seen = await page.evaluate(() => {
        const [strip, statement] = ['.top-strip', '.statement'].map((name) => document.querySelector(name)!.getBoundingClientRect());
        const said = [...document.querySelectorAll<HTMLElement>('.statement > span')].filter((one) => one.offsetWidth > 0);
        // Every button and the statement lie in the strip without lying on each other.
        const boxes = [...document.querySelectorAll('.top-strip > *')]
          .map((one) => one.getBoundingClientRect())
          .filter((box) => box.width > 0);
        const onEachOther = boxes.some((one, i) =>
          boxes
            .slice(i + 1)
            .some(
              (other) =>
                one.left < other.right - 1 && other.left < one.right - 1 && one.top < other.bottom - 1 && other.top < one.bottom - 1,
            ),
        );
        return {
          inside:
            statement!.left >= 0 &&
            statement!.right <= innerWidth &&
            statement!.top >= strip!.top - 1 &&
            statement!.bottom <= strip!.bottom + 1,
          words: said.map((one) => one.textContent).join(),
          onEachOther,
        };
      });
      expect(seen, `${width} px`).toEqual({ inside: true, words: expect.stringContaining('Not a structural check.'), onEachOther: false });
      expect(await sidewaysPx(page), `${width} px`).toBeLessThanOrEqual(0);
      if (width > 700) continue;
      const box = (await page.getByRole('tab', { name: 'Stages' }).boundingBox())!;
      expect(box.x >= 0 && box.x + box.width <= width, `Stages at ${width} px`).toBe(true);
    }
    await close();
  });
});

describe('by keyboard alone', () => {
  let opened: OpenedPage;
  beforeAll(async () => {
    opened = await open('terrace', { reducedMotion: true });
  });
  afterAll(() => opened?.close());

  const tabTo = (name: RegExp, key?: 'Shift+Tab') => tabUntil(opened.page, name, key);

  it('opens a scene, chooses a map, a stage and a cell, changes a thickness, reads the core log', async () => {
    const { page } = opened;
    await tabTo(/^Scenes/);
    await page.keyboard.press('Enter');
    await tabTo(/courtyard/i);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'Larkenmoor Court');
    await untilReady(page);

    await tabTo(/^None$/);
    await page.keyboard.press('ArrowRight');
    await untilMapped(page);
    expect(await page.evaluate(() => window.__loamdeck.view().map)).toBe('load');

    await tabTo(/revious stage/);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.__loamdeck.view().stage !== null);

    await tabTo(/^Bays/);
    for (let press = 0; press < 12; press++) {
      if ((await page.locator('[role=tab][aria-selected=true]').textContent()) === 'Cells') break;
      await page.keyboard.press('ArrowDown');
    }
    await tabTo(/^Column \d+, row/);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => window.__loamdeck.scene().coreLog !== null);
    // What a reader of the screen hears of it: bay, stage, load of permitted, percent.
    await expect
      .poll(() => page.getByTestId('live').textContent())
      .toMatch(/^Bay [A-Z]\d, stage 12: \d+\.\d\d of \d+\.\d\d kN\/m², \d+ percent, /);

    // Back past field and buttons of the thickness to its slider.
    const onSlider = () => page.evaluate(() => document.activeElement?.matches('.thickness-row input[type=range]'));
    do await tabTo(/substrate/i, 'Shift+Tab');
    while (!(await onSlider()));
    const before = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN);
    await page.keyboard.press('ArrowRight');
    await page.waitForFunction((old) => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN !== old, before);
    expect(opened.problems).toEqual([]);
    // Some 150 stops, each looked at: a machine with much else to do takes its time.
  }, 120_000);

  it('typing into a field moves no camera', async () => {
    const { page } = opened;
    await untilIdle(page);
    const camera = () => page.evaluate(() => [...window.__loamdeck.probe.source!.cameraPosition()]);
    const before = await camera();
    await page.locator('.thickness-row input:not([type=range])').first().focus();
    for (const key of ['2', 'p', 's', '+', '-', 'Home', 'ArrowLeft', 'PageUp', 'Escape']) await page.keyboard.press(key);
    await untilIdle(page);
    expect(await camera()).toEqual(before);
  });
});

describe('wishes of the device', () => {
  it('less motion is followed at once, while the page is open', async () => {
    const { page, close } = await open('terrace', {});
    const still = () => page.evaluate(() => window.__loamdeck.view().stillMotion);
    expect(await still()).toBe(false);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await expect.poll(still).toBe(true);
    await untilIdle(page);
    // The camera is there in the first frame that is drawn.
    const first = await page.evaluate(async () => {
      const { probe, view } = window.__loamdeck;
      const { frames } = probe;
      view().moveCamera('plan');
      while (probe.frames === frames) await new Promise(requestAnimationFrame);
      return [...probe.source!.cameraPosition()];
    });
    await untilIdle(page);
    expect(await page.evaluate(() => [...window.__loamdeck.probe.source!.cameraPosition()])).toEqual(first);
    await page.emulateMedia({ reducedMotion: 'no-preference' });
    await expect.poll(still).toBe(false);
    await close();
  });

  it('in forced colours what is chosen still looks chosen', async () => {
    const opened = await open('courtyard', { reducedMotion: true });
    const { page } = opened;
    await page.emulateMedia({ forcedColors: 'active' });
    await page.evaluate(() => window.__loamdeck.view().showMap('utilisation'));
    await untilMapped(page);
    const looks = (chosen: string, other: string) =>
      page.evaluate(
        (names) =>
          names.map((name) => {
            const { backgroundColor, color, outline } = getComputedStyle(document.querySelector(name)!);
            return `${backgroundColor} ${color} ${outline}`;
          }),
        [chosen, other],
      );
    for (const [chosen, other] of [
      ['[role=tab][aria-selected=true]', '[role=tab][aria-selected=false]'],
      ['.tool-button[aria-pressed=true]', '.tool-button[aria-pressed=false]'],
      ['.segment input:checked + span', '.segment input:not(:checked) + span'],
    ] as const) {
      const [one, two] = await looks(chosen, other);
      expect(one, chosen).not.toBe(two);
    }
    expect(await seriousFaults(page)).toEqual([]);
    await opened.screenshot('access-forced-colours');
    await opened.close();
  });
});
