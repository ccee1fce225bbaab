/** Files, devices and failures in a real browser: bad files, no WebGL, phone and tablet, the large scene, editing, accessibility. */

import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
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

async function withPage(scene: string, options: PageOptions, test: (opened: OpenedPage) => Promise<void>): Promise<void> {
  const opened = await openPage(browser, `${inject('base')}?scene=${scene}`, options);
  try {
    await untilReady(opened.page);
    await test(opened);
    expect(opened.problems).toEqual([]);
  } finally {
    await opened.close();
  }
}

const AXE = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/** Serious and critical findings of axe, one line each. */
async function seriousFaults({ page }: OpenedPage): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(
        ({ id, nodes }) =>
          `${id}: ${nodes
            .slice(0, 3)
            .map((node) => node.html.slice(0, 120))
            .join(' | ')}`,
      );
  });
}

describe('a file that is not a scene', () => {
  it('is refused with the words of the command line, and the open scene stays', async () => {
    await withPage('terrace', {}, async ({ page }) => {
      const good = readFileSync('scenes/terrace.scene.json', 'utf8');
      const bad = good.replace('"outline"', '"outlin"');
      const said = run(['check', 'bad.scene.json'], () => new TextEncoder().encode(bad)).err;
      const name = await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.name);
      await page.getByRole('button', { name: 'Scenes' }).click();
      await page
        .locator('input[type=file]')
        .first()
        .setInputFiles({ name: 'bad.scene.json', mimeType: 'application/json', buffer: Buffer.from(bad) });
      const dialog = page.getByRole('dialog', { name: 'bad.scene.json was not opened' });
      await dialog.waitFor();
      const shown = (await dialog.textContent()) ?? '';
      const mend = /Did you mean "[^"]+"\?/.exec(said)?.[0];
      expect(mend).toBeDefined();
      expect(shown).toContain(mend);
      expect(shown).toContain('bad.scene.json');
      await page.keyboard.press('Escape');
      expect(await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.name)).toBe(name);
    });
  });

  it('a good one opens by the picker', async () => {
    await withPage('terrace', {}, async ({ page }) => {
      const renamed = readFileSync('scenes/terrace.scene.json', 'utf8').replace(/"name": "[^"]+"/, '"name": "Renamed yard"');
      await page
        .locator('input[type=file]')
        .first()
        .setInputFiles({ name: 'own.scene.json', mimeType: 'application/json', buffer: Buffer.from(renamed) });
      await page.waitForFunction(() => window.__loamdeck.scene().snapshot?.scene.name === 'Renamed yard');
    });
  });
});

describe('without WebGL', () => {
  it('tables, maps and core log still work', async () => {
    const opened = await openPage(browser, 'about:blank', {});
    await opened.page.addInitScript(() => {
      const get = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind.startsWith('webgl') ? null : (get as (...all: unknown[]) => unknown).call(this, kind, ...rest);
      } as typeof get;
    });
    await opened.page.goto(`${inject('base')}?scene=terrace`);
    await opened.page.waitForFunction(() => window.__loamdeck?.ready === true);
    expect(await opened.page.evaluate(() => window.__loamdeck.view().canvas)).toBe('unavailable');
    await opened.page.evaluate(() => window.__loamdeck.view().showMap('utilisation'));
    await opened.page.waitForFunction(() => window.__loamdeck.scene().cellMap !== null);
    await opened.page.getByRole('tab', { name: /Cells/ }).click();
    await opened.page.getByRole('tabpanel').getByRole('button').first().click();
    await opened.page.waitForFunction(() => window.__loamdeck.scene().coreLog !== null);
    expect(await opened.page.getByRole('img', { name: /plan/i }).count()).toBeGreaterThan(0);
    await opened.screenshot('no-webgl');
    await opened.close();
  });
});

describe('the district, 1.5 ha', () => {
  it('draws in few calls and follows a dragged thickness without blocking the page', async () => {
    await withPage('district', { reducedMotion: true }, async (opened) => {
      const { page } = opened;
      const drawing = await page.evaluate(() => window.__loamdeck.probe.source!.drawing());
      expect(drawing.calls).toBeLessThanOrEqual(40);
      await page.evaluate(() => window.__loamdeck.view().showMap('load'));
      await untilMapped(page);
      await opened.screenshot('district-load');
      const before = await page.evaluate(() => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN);
      const longest = await page.evaluate(async () => {
        const scene = window.__loamdeck.scene();
        const buildUp = scene.snapshot!.buildUps.find((one) => one.zones.length > 0 && one.layers.some((layer) => layer.adjustable))!;
        const layer = buildUp.layers.findIndex((one) => one.role === 'substrate' && one.adjustable);
        // Long tasks of the page's own thread while a slider would be dragged; drawing itself is the software renderer's here.
        let worst = 0;
        let last = performance.now();
        let beating = true;
        const beat = () => {
          const now = performance.now();
          worst = Math.max(worst, now - last);
          last = now;
          if (beating) setTimeout(beat, 0);
        };
        beat();
        for (let i = 1; i <= 8; i++) {
          scene.setThickness(buildUp.id, layer, buildUp.layers[layer].thicknessMm + 10 * i);
          await new Promise((resolve) => setTimeout(resolve, 16));
        }
        beating = false;
        return worst;
      });
      await page.waitForFunction((old) => window.__loamdeck.scene().snapshot!.report.deck.saturatedKN > old, before);
      // Not a stopwatch: only that no evaluation of the whole scene (hundreds of milliseconds) runs on the page's thread.
      expect(longest).toBeLessThan(2000);
    });
  });
});

describe('devices', () => {
  it.each([
    ['laptop', { width: 1280, height: 720 }],
    ['tablet', { width: 1024, height: 768, touch: true }],
    ['tablet-upright', { width: 820, height: 1180, touch: true }],
    ['phone', { width: 390, height: 844, touch: true, dpr: 2 }],
    ['narrow', { width: 320, height: 640, touch: true }],
  ] as const)('%s: no sideways scroll, targets large enough, no serious fault of access', async (name, options) => {
    await withPage('terrace', { ...options, reducedMotion: true }, async (opened) => {
      await opened.screenshot(`device-${name}`);
      const page = await opened.page.evaluate(
        (least) => {
          const small: string[] = [];
          for (const element of document.querySelectorAll<HTMLElement>('button, a[href], select, [role=tab], [role=option]')) {
            const box = element.getBoundingClientRect();
            if (box.width === 0 || element.closest('[hidden], [aria-hidden=true], .skip')) continue;
            if (box.width < least - 0.5 || box.height < least - 0.5)
              small.push(`${element.outerHTML.slice(0, 90)} ${box.width}×${box.height}`);
          }
          return { small, sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth };
        },
        'touch' in options ? 44 : 24,
      );
      expect(page.sideways).toBeLessThanOrEqual(0);
      expect(page.small).toEqual([]);
      expect(await seriousFaults(opened)).toEqual([]);
    });
  });

  it('a tap picks a place on a touch screen', async () => {
    await withPage('terrace', { width: 390, height: 844, touch: true, reducedMotion: true }, async ({ page }) => {
      const at = await page.evaluate(() => {
        const { grid } = window.__loamdeck.scene().snapshot!;
        return window.__loamdeck.probe.source!.projectCell(Math.floor(grid.rows / 2) * grid.columns + Math.floor(grid.columns / 2));
      });
      const box = (await page.locator('canvas').boundingBox())!;
      await page.touchscreen.tap(box.x + at![0], box.y + at![1]);
      await page.waitForFunction(() => window.__loamdeck.view().cell !== null);
    });
  });
});

describe('keys', () => {
  it('turn the camera only while the model has the focus', async () => {
    await withPage('terrace', { reducedMotion: true }, async ({ page }) => {
      const camera = () => page.evaluate(() => window.__loamdeck.probe.source!.cameraPosition());
      const before = await camera();
      await page.getByRole('tab', { name: /Bays/ }).focus();
      await page.keyboard.press('ArrowRight');
      await untilIdle(page);
      expect(await camera()).toEqual(before);
      await page.locator('.deck-view').focus();
      await page.keyboard.press('ArrowLeft');
      await untilIdle(page);
      expect(await camera()).not.toEqual(before);
    });
  });
});
