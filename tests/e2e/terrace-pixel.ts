/** Where places of the small terrace are in the plan on the page. */

import type { Page } from 'playwright-core';

export type Point = readonly [number, number];

/** Where a place of the deck is on the page [CSS px]: its outline is 9 m wide and 6 m high. */
export async function terracePixel(on: Page, [x, y]: Point): Promise<Point> {
  const box = (await on.locator('.pe-surface .pe-outline').boundingBox())!;
  // The box is that of the middle line of the outline.
  return [box.x + (x / 9) * box.width, box.y + box.height - (y / 6) * box.height];
}
