/** The built app in a real browser: it starts, draws something, and asks no other host for anything. */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { isForeign, type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await workerBrowser();
});
afterAll(async () => {
  await browser?.close();
});

describe('the app', () => {
  let opened: OpenedPage;
  beforeAll(async () => {
    opened = await openPage(browser, inject('base'));
    await opened.page.locator('#root main').waitFor();
  });
  afterAll(async () => {
    await opened?.close();
  });

  it('starts without an error and without a request to another host', async () => {
    await opened.screenshot('start');
    expect(await opened.page.title()).toContain('Loamdeck');
    expect(opened.problems).toEqual([]);
  });

  it('is the production build', async () => {
    const scripts = await opened.page.evaluate(async () => {
      const urls = performance.getEntriesByType('resource').filter((entry) => entry.name.endsWith('.js'));
      return (await Promise.all(urls.map(async ({ name }) => (await fetch(name)).text()))).join('');
    });
    expect(scripts.length).toBeGreaterThan(0);
    // Words that only React's development build carries.
    expect(scripts).not.toContain('Download the React DevTools');
  });

  it('serves the JSON Schema of scene files', async () => {
    const schema = await opened.page.evaluate(async () => (await fetch('/scene.schema.json')).json());
    expect(schema.required).toEqual(expect.arrayContaining(['format', 'version', 'name', 'deck', 'buildups', 'zones']));
  });
});

describe('the watch kept on each page', () => {
  it('notes errors, console errors and requests to other hosts', async () => {
    const opened = await openPage(browser, inject('base'));
    await opened.page.evaluate(async () => {
      console.error('planted');
      setTimeout(() => {
        throw new Error('thrown on purpose');
      });
      await fetch('https://elsewhere.example/x').catch(() => undefined);
    });
    await expect.poll(() => opened.problems.join('\n')).toMatch(/thrown on purpose/);
    expect(opened.problems.join('\n')).toMatch(/console: planted/);
    expect(opened.problems.join('\n')).toMatch(/Content Security Policy/);
    await opened.close();
  });

  it.each([
    ['http://127.0.0.1:9/a.js', false],
    ['data:image/png;base64,AA==', false],
    ['blob:http://127.0.0.1:9/1', false],
    ['ws://127.0.0.1:9/', false],
    ['http://127.0.0.1:10/', true],
    ['https://elsewhere.example/x', true],
    ['wss://elsewhere.example/x', true],
  ])('%s leaves the host: %s', (address, foreign) => {
    expect(isForeign(address, 'http://127.0.0.1:9/')).toBe(foreign);
  });
});
