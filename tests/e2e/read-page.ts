/** Reads all text that the page shows: what of it is cut off, and what of it is in no German sentence. */

import type { Page } from 'playwright-core';

/**
 * Texts that stick out of their button, cell or tab, that a box cuts off without a way to scroll to them, or that the page's edge cuts off.
 * @param page - page with a scene open
 * @param elsewhere - selectors of boxes whose full text stands elsewhere
 * @returns one line each
 */
export function clippedTexts(page: Page, elsewhere: string): Promise<string[]> {
  return page.evaluate((allowed) => {
    const found: string[] = [];
    const nameOf = (element: Element) =>
      `${element.tagName.toLowerCase()}${element.id ? `#${element.id}` : ''}${[...element.classList].map((name) => `.${name}`).join('')}`;
    const holds = (style: CSSStyleDeclaration) => style.overflowX !== 'visible' || style.overflowY !== 'visible';
    /** Clipped to nothing on purpose. */
    const forReadersOnly = (element: Element): boolean => {
      for (let up: Element | null = element; up; up = up.parentElement) if (getComputedStyle(up).clipPath === 'inset(50%)') return true;
      return false;
    };
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = words.nextNode(); node; node = words.nextNode()) {
      const text = node.textContent?.trim() ?? '';
      const parent = node.parentElement;
      if (text === '' || parent === null || parent.closest(`script, style, option, svg, .unseen, .deck-labels, [hidden], ${allowed}`))
        continue;
      if (!parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      if (forReadersOnly(parent)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const rect = range.getBoundingClientRect();
      if (rect.width === 0) continue;
      const says = (why: string, by: Element) => found.push(`${why} ${nameOf(by)}: ${text.slice(0, 60)}`);
      const box = parent.closest('button, [role="tab"], label, td, th, summary, legend, .sheet');
      if (box) {
        const outer = box.getBoundingClientRect();
        if (rect.right > outer.right + 1 || rect.left < outer.left - 1) says('sticks out of', box);
      }
      let scrolls = false;
      for (let up: Element | null = parent; up && up !== document.body; up = up.parentElement) {
        const style = getComputedStyle(up);
        if (!holds(style)) continue;
        const outer = up.getBoundingClientRect();
        const [x, y] = [style.overflowX, style.overflowY];
        const reachX: boolean = scrolls || x === 'auto' || x === 'scroll';
        const reachY: boolean = scrolls || y === 'auto' || y === 'scroll';
        if (!reachX && (rect.right > outer.right + 1 || rect.left < outer.left - 1)) says('cut off sideways by', up);
        else if (!reachY && (rect.bottom > outer.bottom + 2 || rect.top < outer.top - 2)) says('cut off below by', up);
        scrolls ||= reachX || reachY;
      }
      if (!scrolls && (rect.right > innerWidth + 1 || rect.left < -1)) says('beyond the page from', parent);
    }
    return found;
  }, elsewhere);
}

/**
 * Texts, names and titles that hold one of these words, once the strings of the scene file are taken out of them.
 * @param page - page with a scene open
 * @param pattern - source of a regular expression for the words
 * @returns the texts
 */
export function textsWith(page: Page, pattern: string): Promise<string[]> {
  return page.evaluate((source) => {
    const word = new RegExp(source, 'iu');
    const ofScene = new Set<string>();
    const collect = (value: unknown): void => {
      if (typeof value === 'string') ofScene.add(value.trim());
      else if (value !== null && typeof value === 'object') for (const one of Object.values(value)) collect(one);
    };
    const { snapshot } = window.__loamdeck.scene();
    collect(snapshot?.scene);
    collect(snapshot?.stages.map(({ id, name }) => [id, name]));
    const long = [...ofScene].filter((one) => one !== '').sort((a, b) => b.length - a.length);
    const texts = new Set<string>();
    for (const element of document.body.querySelectorAll('*')) {
      if (element.matches('script, style, noscript, [lang="en"]')) continue;
      const own = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).map((node) => node.textContent ?? '');
      const said = [...own, element.getAttribute('aria-label') ?? '', element.getAttribute('title') ?? ''];
      for (const text of said) {
        // Ids of rules are the same in every language.
        let left = text.replace(/\b[a-z]+\.[a-z]+\b/g, ' ');
        for (const one of long) left = left.split(one).join(' ');
        if (word.test(left)) texts.add(text.trim());
      }
    }
    return [...texts];
  }, pattern);
}
