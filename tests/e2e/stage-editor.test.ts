/** Stages changed in the real browser: derived, put in another order, heaped, driven, held; every number by hand, and the report that of the command line. */

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { bay, buildUp, GRAVITY, rect, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';
import { untilReady } from './app-state.ts';
import { type OpenedPage, openPage } from './open-page.ts';
import { workerBrowser } from './worker-browser.ts';

/** Bay A carries 12, bay W 6 kN/m². On both the sound build-up: 176 kg/m² saturated, 1.72656 kN/m². No stages. */
const SCENE = sceneOf({
  name: 'Two bays',
  deck: {
    outline: rect(0, 0, 8, 4),
    bays: [
      bay('A', rect(0, 0, 4, 4), { permanentKNm2: 12, imposedKNm2: 5 }),
      bay('W', rect(4, 0, 8, 4), { permanentKNm2: 6, imposedKNm2: 5 }),
    ],
  },
  buildups: [buildUp('sound', SOUND.layers, { name: 'Thin soil' })],
  zones: [zone('Z1', rect(0, 0, 8, 4), 'sound', { name: 'All of it' })],
});

let browser: Browser;
let opened: OpenedPage;
let page: Page;
beforeAll(async () => {
  browser = await workerBrowser();
  opened = await openPage(browser, `${inject('base')}?scene=terrace`, { reducedMotion: true });
  page = opened.page;
  await untilReady(page);
  await page.evaluate(async (text) => {
    await window.__loamdeck.scene().openText('Two bays', text, true);
    window.__loamdeck.view().edit('stages');
  }, JSON.stringify(SCENE));
});
afterAll(async () => {
  await opened?.close();
  await browser?.close();
});

const plain = (text: string | null) => (text ?? '').replaceAll('\u202F', ' ');
const stageIds = () => page.evaluate(() => (window.__loamdeck.scene().snapshot!.scene.stages ?? []).map(({ id }) => id));
const found = (rule: string) =>
  page.evaluate((of) => window.__loamdeck.scene().snapshot!.report.findings.filter((one) => one.rule === of), rule);
const row = (name: string) => page.locator('.stage-table').getByRole('button', { name });
/** Waits for the rows of the list, as they read. */
const untilRows = (names: readonly string[]) =>
  page.waitForFunction(
    (wanted) => [...document.querySelectorAll('.stage-table .row-button')].map((one) => one.textContent).join('|') === wanted,
    names.join('|'),
  );
const DERIVED = ['1 Protection', '2 Drainage element', '3 Filter', '4 Substrate'];
const findingsOfStage = () => page.locator('.stage-findings').first();
async function fill(label: string, value: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true }).first();
  await field.fill(value);
  await field.press('Enter');
}

describe('the stage editor', () => {
  it('shows derived stages and writes them into the scene', async () => {
    await page.getByText('The file names no stages.').waitFor();
    await untilRows(DERIVED);
    expect(await stageIds()).toEqual([]);
    await page.getByRole('button', { name: 'Write them into the scene to change them' }).click();
    await page.getByRole('textbox', { name: 'Name' }).waitFor();
    expect(await stageIds()).toEqual(['protection', 'drainage-element', 'filter', 'substrate']);
    expect(await found('stage.order')).toEqual([]);
  });

  it('moves a stage by keys: what lies on nothing is told, and undo takes it back', async () => {
    await row('3 Filter').focus();
    await page.keyboard.press('Alt+ArrowUp');
    await untilRows(['1 Protection', '2 Filter', '3 Drainage element', '4 Substrate']);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('2 Filter');
    expect(await page.locator('.stage-list [role=status]').textContent()).toBe('Filter is stage 2 of 4 now.');
    const order = await found('stage.order');
    expect(order.map(({ where, severity }) => [where.zone, where.stage, severity])).toEqual([['Z1', 'filter', 'stop']]);
    expect(await findingsOfStage().textContent()).toContain(order[0]!.says);
    expect(await page.getByRole('checkbox', { name: 'Filter, All of it: missing below: Drainage element' }).isChecked()).toBe(true);
    await opened.screenshot('stages-order');
    await page.keyboard.press('Control+z');
    await untilRows(DERIVED);
    expect(await found('stage.order')).toEqual([]);
  });

  it('moves a stage by its handle', async () => {
    const handle = (await page.locator('.stage-handle').nth(3).boundingBox())!;
    const goal = (await page.locator('.stage-table tbody tr').nth(1).boundingBox())!;
    await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
    await page.mouse.down();
    await page.mouse.move(handle.x + 5, goal.y + goal.height / 2, { steps: 4 });
    await page.mouse.up();
    await untilRows(['1 Protection', '2 Substrate', '3 Drainage element', '4 Filter']);
    await page.keyboard.press('Control+z');
    await untilRows(DERIVED);
  });

  it('takes a tick away: the layer is left over at the end', async () => {
    await row('3 Filter').click();
    await page.getByRole('checkbox', { name: 'Filter, All of it: laid in this stage' }).uncheck();
    await page.getByRole('checkbox', { name: 'Filter, All of it: no stage lays it' }).waitFor();
    expect((await found('stage.left')).map(({ where }) => where.zone)).toEqual(['Z1']);
    await page.getByRole('heading', { name: 'Left over at the end' }).waitFor();
    await page.keyboard.press('Control+z');
    await page.getByRole('checkbox', { name: 'Filter, All of it: laid in this stage' }).waitFor();
  });

  it('says how high a heap may be, puts a higher one there, and the check says by how much it is over', async () => {
    await row('4 Substrate').click();
    await page.getByRole('tab', { name: 'Stockpiles' }).click();
    const card = page.getByRole('group', { name: 'New stockpile' });
    await card.getByRole('combobox', { name: 'Material' }).selectOption('soil');
    // Soil lies loose at 1500 / 1.2 = 1250 kg/m³, 12.2625 kN/m³; room (6 − 1.72656) / 12.2625 = 0.3485 m, down to 0.30.
    const bays = card.getByRole('combobox', { name: 'In the middle of bay' });
    expect((await bays.locator('option').allTextContents()).map(plain)).toEqual([
      // (12 − 1.72656) / 12.2625 = 0.8378
      'A: 0.80 m may be heaped',
      'W: 0.30 m may be heaped',
    ]);
    await bays.selectOption('W');
    expect(plain(await card.getByRole('status').textContent())).toContain('0.50 m is 0.20 m more than bay W may carry');
    await card.getByRole('button', { name: 'Put it there' }).click();
    await page.getByRole('group', { name: 'Stockpile K1' }).waitFor();
    // 0.5 · 12.2625 + 1.72656 = 7.85781 on every square metre of the heap, 1.85781 more than 6.
    const [over] = await found('load.stage');
    expect([over?.where.bay, over?.where.stage, over?.severity, over?.limit]).toEqual(['W', 'substrate', 'stop', 6]);
    expect(over?.value).toBeCloseTo(0.5 * (1500 / 1.2) * (GRAVITY / 1000) + 1.72656, 9);
    const heap = page.getByRole('group', { name: 'Stockpile K1' });
    // 2 m × 2 m · 0.5 m · 12.2625 = 24.525 kN
    expect(plain(await heap.textContent())).toMatch(/4\.0 m², 24\.5 kN loose and saturated.*Bay W: over by 1\.86 kN\/m²/);
    expect(plain(await findingsOfStage().textContent())).toContain('7.86 kN/m²');
    expect(await row('4 Substrate').locator('xpath=ancestor::tr').textContent()).toContain('1 stop');
    await opened.screenshot('stages-heap');
  });

  it('moves the heap by its corner to where it may lie', async () => {
    await fill('Left edge, x', '1');
    await page.waitForFunction(() => window.__loamdeck.scene().snapshot!.report.findings.every(({ rule }) => rule !== 'load.stage'));
    const [pile] = await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.stages!.at(-1)!.stockpiles!);
    expect(pile?.outline).toEqual(rect(1, 1, 3, 3));
    // 12 − 7.85781 leaves 0.3378 m of soil.
    expect(plain(await page.getByRole('group', { name: 'Stockpile K1' }).textContent())).toContain('Bay A: 0.30 m more may be heaped');
  });

  it('refuses what the scene may not hold, in place', async () => {
    await page.getByRole('tab', { name: 'Machines' }).click();
    const card = page.getByRole('group', { name: 'New machine' });
    const way = card.getByRole('textbox', { name: /^Way/ });
    await way.fill('1; 2\n3 4 5');
    await way.press('Control+Enter');
    expect(await card.getByRole('alert').textContent()).toContain('Line 2: two numbers are read');
    await way.fill('1; 2\n7; 2');
    await way.press('Control+Enter');
    await card.getByRole('combobox', { name: 'Machine' }).selectOption('wheel-loader-2t');
    await card.getByRole('button', { name: 'Let it drive' }).click();
    await page.getByText(/kPa on the membrane; drives over bays A and W/).waitFor();
    // It stands on what lies there when the stage begins: filter on open elements.
    expect((await found('stage.plant')).map(({ where }) => where.stage)).toEqual(['substrate']);
    expect(await findingsOfStage().locator('li').count()).toBeGreaterThan(0);
  });

  it('adds a hold point, which the talk tells', async () => {
    await page.getByRole('tab', { name: 'Hold points' }).click();
    await page.getByRole('button', { name: 'Add a hold point' }).click();
    const card = page.getByRole('group', { name: 'Hold point H1' });
    const says = card.getByRole('textbox', { name: 'What must be seen' });
    await says.fill('The filter is turned up at every edge.');
    await says.press('Control+Enter');
    await fill('Released by', 'site manager');
    await fill('Flood test, depth of water', '50');
    // 0.05 m · 9.81
    await page.getByText(/The water alone is 0\.49/).waitFor();
    // None of the three, made one right after the other, takes another back.
    expect(await page.evaluate(() => window.__loamdeck.scene().snapshot!.scene.stages!.at(-1))).toMatchObject({
      holdPoints: [{ id: 'H1', says: 'The filter is turned up at every edge.', releasedBy: 'site manager' }],
      floodTestMm: 50,
    });
    await page.getByRole('button', { name: 'Talk', exact: true }).click();
    await page.getByRole('dialog').waitFor();
    await page.evaluate(() => window.__loamdeck.view().showCard(3));
    const stops = page.locator('.talk');
    await stops.getByText('The filter is turned up at every edge.').waitFor();
    expect(await stops.textContent()).toContain('site manager');
    await page.evaluate(() => window.__loamdeck.view().showCard(null));
    expect(await page.locator('.rail').textContent()).toContain('1 open hold point');
  });

  it('says what deriving anew replaces before it does', async () => {
    await page.getByRole('button', { name: 'Derive from the build-ups' }).click();
    expect(await page.locator('.stage-ask').textContent()).toContain(
      'One stage per role replaces your 4 stages, with 1 stockpile, 1 machine, 1 flood test and 1 hold point.',
    );
    await page.getByRole('button', { name: 'Keep mine' }).click();
    expect(await page.locator('.stage-ask').count()).toBe(0);
  });

  it('leads to the plan with the tool in hand, the stage still shown', async () => {
    await page.getByRole('tab', { name: 'Stockpiles' }).click();
    await page.getByRole('button', { name: 'Draw on the plan' }).click();
    await page.getByRole('button', { name: 'Draw', exact: true, pressed: true }).waitFor();
    expect(await page.evaluate(() => window.__loamdeck.view().stage)).toBe(3);
  });

  it('gives the report of the command line on the saved file', async () => {
    const [text, report] = await page.evaluate(async () => {
      const scene = window.__loamdeck.scene();
      return [(await scene.sceneText('copy')).text, scene.snapshot!.report] as const;
    });
    const { out } = run(['check', 'two-bays.scene.json', '--json'], () => new TextEncoder().encode(text));
    expect(report).toEqual(JSON.parse(out));
    expect(opened.problems).toEqual([]);
  });
});
