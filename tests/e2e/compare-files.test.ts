/** Two scene files in the real browser: dropped at once they are compared; a scheme becomes a variant, another load plan a list. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { sharedPage } from './shared-page.ts';

const TEXT = readFileSync(new URL('../../scenes/terrace.scene.json', import.meta.url), 'utf8');
const terrace = JSON.parse(TEXT);
const thicker = {
  ...terrace,
  zones: terrace.zones.map((zone: { id: string }, i: number) => (i === 0 ? { ...zone, imposedKNm2: 1 } : zone)),
};
const [first, ...others] = terrace.deck.bays;
const replanned = { ...terrace, deck: { ...terrace.deck, bays: [{ ...first, permanentKNm2: first.permanentKNm2 - 1 }, ...others] } };

const opened = sharedPage('?scene=terrace');

const drop = (files: readonly (readonly [name: string, text: string])[]) =>
  opened.page.evaluate((all) => {
    const dataTransfer = new DataTransfer();
    for (const [name, text] of all) dataTransfer.items.add(new File([text], name));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
  }, files);

it('a scheme for the same deck is kept as a variant and held against the first', async () => {
  const { page } = opened;
  await drop([
    ['one.scene.json', TEXT],
    ['two.scene.json', JSON.stringify(thicker)],
  ]);
  await page.getByText('one.scene.json is opened, and two.scene.json is held against it.').waitFor();
  await page.getByRole('button', { name: 'Compare these two' }).click();
  await page.getByText('What was changed').waitFor();
  const { fileName, variants } = await page.evaluate(() => {
    const { fileName, snapshot } = window.__loamdeck.scene();
    return { fileName, variants: snapshot!.scene.variants?.map(({ name }) => name) };
  });
  expect([fileName, variants]).toEqual(['one.scene.json', ['two']]);
  expect(await page.locator('dialog[open]').count()).toBe(0);
  await opened.screenshot('compare-files-variant');
});

it('a file with another load plan, picked on the page of variants, is told change by change', async () => {
  const { page } = opened;
  const file = { name: 'plan-d.scene.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(replanned)) };
  await page.locator('input[type=file][aria-label="Compare with a file…"]').setInputFiles(file);
  const told = page.getByRole('region', { name: 'plan-d.scene.json against what stands' });
  await told.waitFor();
  expect(await told.getByRole('heading', { level: 3 }).allTextContents()).toEqual(['Load plan']);
  expect(await told.getByRole('listitem').allTextContents()).toEqual([
    `bay ${first.id}: permanentKNm2 before ${first.permanentKNm2} kN/m²; now ${first.permanentKNm2 - 1} kN/m²`,
  ]);
  await opened.screenshot('compare-files-list');
});

it('two files that are not both scenes are refused with a sentence', async () => {
  const { page } = opened;
  await drop([
    ['one.scene.json', TEXT],
    ['levels.csv', 'x;y;z\n1;2;3\n'],
  ]);
  await page.getByText('One file was expected, 2 were given.').waitFor();
});
