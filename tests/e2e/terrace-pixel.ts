/** Where places of the small terrace are in the plan on the page. */

import type { Page } from 'playwright-core';

export type Point = readonly [number, number];

/** Where a place of the deck is on the page [CSS px]: its outline is 9 m wide and 6 m high. */
export function terracePixel(on: Page, place: Point): Promise<Point> {
  return on.evaluate(([x, y]): Point => {
    // The box of the middle line; that of the locator has the stroke's width and mitres around it.
    const box = document.querySelector('.pe-surface .pe-outline')!.getBoundingClientRect();
    return [box.x + (x / 9) * box.width, box.y + box.height - (y / 6) * box.height];
  }, place);
}
