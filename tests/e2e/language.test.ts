/** The app in German in the real browser: no text cut off at three widths, no English word, and a switch that keeps the picture. */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { SHEETS } from '../../src/store/sheet-view.ts';
import { untilIdle, untilLaid, untilMapped, untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { clippedTexts, textsWith } from './read-page.ts';
import { workerBrowser } from './worker-browser.ts';

const WIDTHS = [
  { width: 1280, height: 720 },
  { width: 768, height: 1024, touch: true },
  { width: 320, height: 640, touch: true },
];

/**
 * Names of stages and of the scene are cut on the rail and the strip; the stage sheet and the window's title have them whole.
 * When the scene was last saved stands in its menu too; that it is not saved is never cut.
 * The stage's line begins with what matters most; its sheet has the whole of it.
 */
const ELSEWHERE = '.band-name, .scene-called, .scene-saved, .stage-line';

/** English and nothing else, as whole words. */
const ENGLISH =
  '(?<!\\p{L})(the|and|of|with|without|from|are|is|has|does|which|where|what|this|every|bays?|layers?|stages?|heaps?|loads?|cells?|deck|weight|water|edges?|height|depth|thickness|permitted|over|under|show|hide|close|open|none|confirmed|finished|garden|wheels?|vehicles?|sources?)(?!\\p{L})';

/** Pages of the editor, and what is there once each is. */
const EDITOR_PAGES = [
  ['plan', '.pe-sheet'],
  ['build-ups', '.bu-chosen'],
  ['stages', '.stage-page'],
  ['variants', '.variant-sheet'],
  ['lighten', '.lighten-sheet'],
  ['views', '.views-table'],
] as const;

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe.each(WIDTHS)('in German, $width pixels wide', (size) => {
  let opened: OpenedPage;
  beforeAll(async () => {
    opened = await openPage(browser, `${inject('base')}?scene=courtyard&lang=de`, { ...size, reducedMotion: true });
    await untilReady(opened.page);
  });
  afterAll(() => opened?.close());

  it('cuts no text off and says nothing in English, on any sheet', async () => {
    const { page } = opened;
    const tabs = await page.getByRole('tab').evaluateAll((all) => all.map(({ id }) => id));
    expect(tabs.length).toBeGreaterThan(9);
    const found: string[] = [];
    for (const tab of tabs) {
      await page.locator(`#${tab}`).click();
      await page.getByText('Quellen werden zusammengestellt').waitFor({ state: 'detached' });
      await page.evaluate(() => {
        for (const one of document.querySelectorAll('#tab-panel details')) one.setAttribute('open', '');
      });
      for (const text of [...(await clippedTexts(page, ELSEWHERE)), ...(await textsWith(page, ENGLISH))]) found.push(`${tab}: ${text}`);
    }
    expect(found).toEqual([]);
  });

  it('cuts no text off beside a map, a stage and a picked place', async () => {
    const { page } = opened;
    await page.evaluate(() => {
      const view = window.__loamdeck.view();
      view.showStage(10);
      view.showMap('worst-stage');
      view.pickCell(window.__loamdeck.scene().snapshot?.bayAt.indexOf(0) ?? null);
    });
    await untilMapped(page);
    expect(await clippedTexts(page, ELSEWHERE)).toEqual([]);
    expect(await textsWith(page, ENGLISH)).toEqual([]);
  });

  it('cuts no text off on print sheets and runs over no edge of a page', async () => {
    const { page } = opened;
    const found: string[] = [];
    await page.evaluate(async () => {
      const { bays } = window.__loamdeck.scene().snapshot!.scene.deck;
      const [[x0, y0], [x1]] = bays[0]!.outline as [[number, number], [number, number]];
      const at = (y0 ?? 0) + 1;
      window.__loamdeck.view().showSection({
        line: [
          [x0, at],
          [x1, at],
        ],
      });
    });
    await page.waitForFunction(() => window.__loamdeck.scene().section?.of === window.__loamdeck.view().section);
    for (const sheet of SHEETS) {
      await page.evaluate((name) => window.__loamdeck.view().showSheet(name), sheet);
      await untilLaid(page);
      const over = await page.locator('.sheet-overlay .paper-body').evaluateAll((bodies) =>
        bodies.flatMap((body, i) => {
          const [down, aside] = [body.scrollHeight - body.clientHeight, body.scrollWidth - body.clientWidth];
          return down > 1 || aside > 1 ? [`page ${i + 1} runs over by ${down} px down, ${aside} px aside`] : [];
        }),
      );
      for (const text of [...over, ...(await clippedTexts(page, `${ELSEWHERE}, .page`)), ...(await textsWith(page, ENGLISH))])
        found.push(`${sheet}: ${text}`);
    }
    await page.evaluate(() => {
      window.__loamdeck.view().showSheet(null);
      window.__loamdeck.view().closeSection();
    });
    expect(found).toEqual([]);
  });

  it('cuts no text off on any page of the editor', async () => {
    const { page } = opened;
    const found: string[] = [];
    const look = async (where: string) => {
      for (const text of [...(await clippedTexts(page, `${ELSEWHERE}, .bu-row`)), ...(await textsWith(page, ENGLISH))])
        found.push(`${where}: ${text}`);
    };
    await page.evaluate(() => window.__loamdeck.view().showStage(10));
    await page.evaluate(() =>
      window.__loamdeck
        .scene()
        .edit(() => ({ name: 'Innenhof über der Tiefgarage, mit einem Namen, der länger ist als der Streifen breit' }), {
          kind: 'parts',
          act: 'rename',
          part: 'scene',
          names: ['Innenhof'],
        }),
    );
    await page.getByText('nicht gespeichert', { exact: true }).waitFor();
    for (const [editor, shown] of EDITOR_PAGES) {
      await page.evaluate((name) => window.__loamdeck.view().edit(name), editor);
      await page.locator(shown).first().waitFor();
      await look(editor);
      if (editor === 'build-ups') {
        await page.getByRole('radio', { name: 'Materialien' }).check({ force: true });
        await page.locator('.bu-material').first().waitFor();
        await look('materials');
      }
      if (editor !== 'stages') continue;
      for (const tab of await page.locator('.stage-tabs > [role=tab]').all()) {
        await tab.click();
        await look(`stages, ${await tab.textContent()}`);
      }
    }
    await page.evaluate(() => window.__loamdeck.view().edit(null));
    expect(found).toEqual([]);
  });

  it('cuts no text off in menus, in the help and in the walkthrough', async () => {
    const { page } = opened;
    const found: string[] = [];
    const look = async (where: string) => {
      for (const text of [...(await clippedTexts(page, `${ELSEWHERE}, .stage-line`)), ...(await textsWith(page, ENGLISH))]) {
        found.push(`${where}: ${text}`);
      }
    };
    for (const name of ['Szenen', 'Datei', 'Blätter', 'Hilfe']) {
      await page.getByRole('button', { name, exact: true }).click();
      await look(name);
      await page.keyboard.press('Escape');
    }
    await page.getByRole('button', { name: 'Rundgang' }).click();
    await untilIdle(page);
    await look('Rundgang');
    expect(found).toEqual([]);
    expect(opened.problems).toEqual([]);
  });
});

it('says kindly what the address asks for and there is not', async () => {
  const opened = await openPage(browser, `${inject('base')}?scene=nowhere&show=sheet-plan&lang=xx`, { reducedMotion: true });
  const { page } = opened;
  await untilReady(page);
  const strip = page.getByRole('region', { name: 'About the address' });
  const says = (await strip.textContent())!;
  for (const word of ['nowhere', 'sheet-plan', 'xx', 'terrace', 'sheet-heaps', 'en, de']) expect(says).toContain(word);
  // The first demo scene is open, and the page can be worked with.
  expect(await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.name)).toBe('Pebble Terrace');
  await page.getByLabel('Language', { exact: true }).selectOption('de');
  await expect.poll(() => page.locator('.address-strip').textContent()).toContain('die es hier nicht gibt');
  await opened.screenshot('address-strip');
  await page.getByRole('button', { name: 'Verstanden' }).click();
  expect(await page.locator('.address-strip').count()).toBe(0);
  expect(opened.problems).toEqual([]);
  await opened.close();
});

it('switches the language without a new canvas, and keeps it for the next visit', async () => {
  const opened = await openPage(browser, `${inject('base')}?scene=terrace`, { reducedMotion: true });
  const { page } = opened;
  await untilReady(page);
  const lang = () => page.evaluate(() => document.documentElement.lang);
  expect(await lang()).toBe('en');
  await page.evaluate(() => {
    (window as unknown as { canvasBefore: unknown }).canvasBefore = document.querySelector('canvas');
  });
  await page.evaluate(() => {
    window.__loamdeck.view().showMap('reach');
    window.__loamdeck.view().showStage(2);
    window.__loamdeck.view().pickCell(window.__loamdeck.scene().snapshot?.bayAt.indexOf(0) ?? null);
  });
  await untilMapped(page);
  const choice = page.getByLabel('Language', { exact: true });
  await choice.focus();
  await choice.selectOption('de');
  await expect.poll(lang).toBe('de');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Sprache');
  await untilIdle(page);
  expect(
    await page.evaluate(() => (window as unknown as { canvasBefore: unknown }).canvasBefore === document.querySelector('canvas')),
  ).toBe(true);
  await page.getByRole('tab', { name: 'Befunde' }).click();
  await expect.poll(() => textsWith(page, ENGLISH)).toEqual([]);
  const name = await page.evaluate(() => window.__loamdeck.scene().snapshot?.scene.name);
  expect(await page.title()).toBe(`${name} – Loamdeck`);
  await page.reload();
  await untilReady(page);
  expect(await lang()).toBe('de');
  expect(opened.problems).toEqual([]);
  await opened.close();
});
