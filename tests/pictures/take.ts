/** `npm run pictures`: builds the app, drives it in the real browser and takes the README's pictures. */

import { mkdir } from 'node:fs/promises';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { untilIdle, untilMapped, untilReady } from '../e2e/app-state.ts';
import { openPage } from '../e2e/open-page.ts';
import { launchOptions } from '../tools/chromium.ts';

const OUT = 'tests/pictures';

interface Shot {
  readonly name: string;
  readonly scene: string;
  readonly width?: number;
  readonly height?: number;
  readonly touch?: boolean;
  prepare(page: Page): Promise<void>;
}

/** Clicks the middle of the deck, as a user would. */
async function pickMiddle(page: Page): Promise<void> {
  const at = await page.evaluate(() => {
    const { grid } = window.__loamdeck.scene().snapshot!;
    const cell = Math.floor(grid.rows * 0.55) * grid.columns + Math.floor(grid.columns * 0.45);
    return window.__loamdeck.probe.source!.projectCell(cell);
  });
  const box = await page.locator('canvas').boundingBox();
  if (at && box) await page.mouse.click(box.x + at[0], box.y + at[1]);
  await page.waitForFunction(() => window.__loamdeck.scene().coreLog !== null);
}

const SHOTS: readonly Shot[] = [
  { name: 'courtyard', scene: 'courtyard', prepare: pickMiddle },
  {
    name: 'exploded',
    scene: 'courtyard',
    prepare: (page) => page.evaluate(() => window.__loamdeck.view().setExplode(1)),
  },
  {
    name: 'worst-stage',
    scene: 'courtyard',
    prepare: async (page) => {
      await page.evaluate(() => {
        const view = window.__loamdeck.view();
        view.showStage(10);
        view.showMap('utilisation');
      });
      await untilMapped(page);
    },
  },
  {
    name: 'cut',
    scene: 'terrace',
    prepare: async (page) => {
      await page.evaluate(() => window.__loamdeck.view().setCut({ on: true, position: 0.45 }));
      await pickMiddle(page);
    },
  },
  {
    name: 'plan',
    scene: 'courtyard',
    prepare: async (page) => {
      await page.evaluate(() => {
        const view = window.__loamdeck.view();
        view.edit('plan');
        view.select([{ part: 'zone', id: window.__loamdeck.scene().snapshot!.scene.zones[0]!.id }]);
      });
      await page.locator('.pe-surface .pe-outline').first().waitFor();
    },
  },
  {
    name: 'build-up',
    scene: 'courtyard',
    prepare: async (page) => {
      await page.evaluate(() => {
        window.__loamdeck.view().edit('build-ups');
        window.__loamdeck.view().showMap('load');
      });
      await page.locator('.bu-column').waitFor();
      await untilMapped(page);
    },
  },
  { name: 'phone', scene: 'courtyard', width: 390, height: 844, touch: true, prepare: async () => undefined },
];

await mkdir(OUT, { recursive: true });
process.env.NODE_ENV = 'production';
const outDir = 'node_modules/.cache/pictures-dist';
await build({ logLevel: 'warn', build: { outDir, emptyOutDir: true } });
const server = await preview({ logLevel: 'warn', build: { outDir }, preview: { port: 0, strictPort: false, open: false } });
const base = server.resolvedUrls?.local[0] ?? '';
const browser = await chromium.launch(await launchOptions());
for (const shot of SHOTS) {
  const { width = 1280, height = 720, touch = false } = shot;
  const opened = await openPage(browser, `${base}?scene=${shot.scene}`, { width, height, touch, reducedMotion: true });
  await untilReady(opened.page);
  await shot.prepare(opened.page);
  await untilIdle(opened.page);
  await opened.page.screenshot({ path: `${OUT}/${shot.name}.png` });
  for (const problem of opened.problems) console.error(`${shot.name}: ${problem}`);
  await opened.close();
  console.log(`${OUT}/${shot.name}.png`);
}
await browser.close();
await server.close();
