/** By keyboard alone in the real browser: where Tab starts, and where the focus goes when something closes. */

import { expect, it } from 'vitest';
import { sharedPage } from './shared-page.ts';

const opened = sharedPage('?scene=terrace');

const focused = () => opened.page.evaluate(() => document.activeElement?.textContent?.trim());

it('starts at the top of the page, with the way past the model', async () => {
  await opened.page.keyboard.press('Tab');
  expect(await focused()).toBe('Skip to the tables');
});

it('closes the stage sheet with Escape and goes back to its button', async () => {
  const { page } = opened;
  await page.getByRole('button', { name: 'Stage sheet' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.stage-sheet').count()).toBe(1);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('.stage-sheet').count()).toBe(0);
  await expect.poll(focused).toBe('Stage sheet');
});

it('goes back to the scenes when a file chosen there was refused', async () => {
  const { page } = opened;
  await page.getByRole('button', { name: 'Scenes' }).press('Enter');
  const coming = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).press('Enter');
  await (await coming).setFiles({ name: 'list.json', mimeType: 'application/json', buffer: Buffer.from('[]') });
  await page.getByRole('dialog', { name: 'list.json was not opened' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog', { name: 'list.json was not opened' }).waitFor({ state: 'detached' });
  await expect.poll(focused).toBe('Scenes');
  expect(opened.problems).toEqual([]);
});
