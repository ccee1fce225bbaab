/** One page of the app that all tests of a file share: opened before the first, closed behind the last. */

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage, type PageOptions } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

export interface SharedPage extends OpenedPage {
  /** For tests that open another page beside it. */
  readonly browser: Browser;
}

/**
 * @param search - end of the address, e.g. `?scene=terrace`
 * @param options - size and kind of the window
 * @returns the page, there once tests run
 */
export function sharedPage(search: string, options: PageOptions = { reducedMotion: true }): SharedPage {
  let browser: Browser | undefined;
  let opened: OpenedPage | undefined;
  beforeAll(async () => {
    browser = await workerBrowser();
    opened = await openPage(browser, `${inject('base')}${search}`, options);
    await untilReady(opened.page);
  });
  afterAll(async () => {
    await opened?.close();
    await browser?.close();
  });
  const there = <T>(one: T | undefined): T => {
    if (one === undefined) throw new RangeError('sharedPage: a page is there only while tests run');
    return one;
  };
  return {
    get browser() {
      return there(browser);
    },
    get page() {
      return there(opened).page;
    },
    get context() {
      return there(opened).context;
    },
    get problems() {
      return there(opened).problems;
    },
    screenshot: (name) => there(opened).screenshot(name),
    close: () => there(opened).close(),
  };
}
