/** What people with other hands, eyes and devices would stumble over, read off the page. */

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { contrast } from '../helpers/colour-vision.ts';

const AXE = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/** Serious and critical findings of axe within a part of the page, one line each. */
export async function seriousFaults(page: Page, within = 'body'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  return page.evaluate(async (part) => {
    const { axe } = window as unknown as {
      axe: { run(on: string, options: object): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await axe.run(part, { resultTypes: ['violations'], iframes: false, preload: false });
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(
        ({ id, nodes }) =>
          `${id}: ${nodes
            .map(({ html }) => html.slice(0, 120))
            .slice(0, 3)
            .join(' | ')}`,
      );
  }, within);
}

/** Controls with a side shorter than `leastPx`; of a radio or check box the label is what one hits. Links within a sentence are let be. */
export function smallTargets(page: Page, leastPx: number): Promise<string[]> {
  return page.evaluate((least) => {
    const controls = 'button, a[href], select, input, summary, [role=tab], [role=option], [role=slider]';
    const small = new Set<string>();
    for (const one of document.querySelectorAll<HTMLElement>(controls)) {
      const label = one.matches('[type=radio], [type=checkbox]') ? one.closest('label') : null;
      const { width, height } = (label ?? one).getBoundingClientRect();
      if (width === 0 || one.closest('[hidden], [aria-hidden=true], .skip')) continue;
      if (one.matches('p a') && getComputedStyle(one).display === 'inline') continue;
      if (width < least - 0.5 || height < least - 0.5) small.add(`${one.outerHTML.slice(0, 90)}: ${width} × ${height}`);
    }
    return [...small];
  }, leastPx);
}

/** How far the page itself could be scrolled sideways [CSS px]. */
export function sidewaysPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

/** What shows that something has the focus. */
export interface SeenFocus {
  readonly name: string;
  /** Colour of the outline and of what lies round it, `#RRGGBB`; null where nothing is to be seen. */
  readonly line: string | null;
  readonly ground: string;
}

/** Focus as it is drawn now: on the element itself, or on the label beside an input that is not drawn. */
export function seenFocus(page: Page): Promise<SeenFocus | null> {
  return page.evaluate(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body) return null;
    const hex = (colour: string) => {
      const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number);
      return `#${[r, g, b].map((byte) => Math.round(byte).toString(16).padStart(2, '0')).join('')}`;
    };
    const groundOf = (from: Element | null): string => {
      for (let at = from; at !== null; at = at.parentElement) {
        const colour = getComputedStyle(at).backgroundColor;
        if (!/, 0\)$|transparent/.test(colour)) return hex(colour);
      }
      return '#ffffff';
    };
    const name = (focused.getAttribute('aria-label') ?? focused.closest('label')?.textContent ?? focused.textContent ?? '')
      .trim()
      .slice(0, 60);
    for (const one of [focused, focused.nextElementSibling, focused.parentElement]) {
      if (one === null) continue;
      const { outlineStyle, outlineWidth, outlineColor, outlineOffset, boxShadow } = getComputedStyle(one);
      if (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) {
        const inside = Number.parseFloat(outlineOffset) < 0;
        return { name, line: hex(outlineColor), ground: groundOf(inside ? one : one.parentElement) };
      }
      if (one === focused && boxShadow !== 'none') return { name, line: hex(boxShadow), ground: groundOf(one) };
    }
    return { name, line: null, ground: '#ffffff' };
  });
}

/** Presses Tab until something of this name has the focus; the focus is to be seen at every stop. */
export async function tabUntil(page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  for (let stop = 0; stop < 150; stop++) {
    await page.keyboard.press(key);
    const focus = await seenFocus(page);
    if (focus === null) continue;
    expect(focus.line, `focus on ${focus.name}`).not.toBeNull();
    // WCAG 2.2, 1.4.11: marks stand off their ground by 3 : 1.
    expect(contrast(focus.line!, focus.ground), `focus on ${focus.name}`).toBeGreaterThanOrEqual(3);
    if (name.test(focus.name)) return;
  }
  throw new Error(`tabUntil: nothing is called ${name}`);
}
