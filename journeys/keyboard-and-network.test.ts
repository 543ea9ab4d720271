/** The screens without a mouse, and what becomes of edits when the network or another person is. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { grid, rowOf, savedRevision, untilAllSaved, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const SHOW = 'show:vell';
const focusedText = (): Promise<string> =>
  page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
const nameCell = (set: string) => rowOf(page, set).locator(':scope > td').nth(1);
const saving = (words: string) => page.getByRole('status').filter({ hasText: words });

describe('by keyboard alone', () => {
  it('goes along the wall with arrows and by a typed number, and the screen follows', async () => {
    await goTo(page, '/set/11');
    await page.getByRole('link', { name: /^Set 11, Clock tower flat/ }).focus();
    await page.keyboard.press('ArrowRight');
    await page.waitForURL(/\/set\/12/);
    await page.keyboard.type('D3');
    await page.waitForURL(/\/set\/D3/);
    await page.getByRole('heading', { level: 1, name: 'Set D3, Rear speaker frame' }).waitFor();
    expect(await page.title()).toBe('Set D3, Rear speaker frame, DEMO – Counterpoise');
  });

  it('opens another set by its number, and comes back', async () => {
    await goTo(page, '/set/11');
    const box = page.getByLabel(/^Set number/);
    await box.fill('17');
    await box.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Set 17, Shop sign' }).waitFor();
    await page.goBack();
    await page.getByRole('heading', { level: 1, name: 'Set 11, Clock tower flat' }).waitFor();
  });

  it('moves about the hang list as in a sheet, and types into it', async () => {
    await goTo(page, '/hang-list');
    await nameCell('5').focus();
    await page.keyboard.press('ArrowDown');
    expect(await focusedText()).toBe('empty, depth of 5');
    await page.keyboard.press('ArrowDown');
    expect(await focusedText()).toBe('Border 1');
    await page.keyboard.press('Tab');
    expect(await focusedText()).toContain('1 item');
    await page.keyboard.press('Home');
    expect(await focusedText()).toBe('7');
    await nameCell('7').focus();
    await page.keyboard.type('First border');
    await page.keyboard.press('Enter');
    await expect.poll(() => nameCell('7').textContent()).toBe('First border');
    await page.keyboard.press('Control+z');
    await expect.poll(() => nameCell('7').textContent()).toBe('Border 1');
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => nameCell('7').textContent()).toBe('First border');
  });

  it('hangs something on an empty set, and leaves it empty again', async () => {
    await nameCell('10').focus();
    await page.keyboard.type('Net');
    await page.keyboard.press('Enter');
    await rowOf(page, '10').getByRole('button', { name: '0 items of set 10' }).click();
    await grid(page).getByRole('button', { name: 'Leave set 10 empty in this show' }).click();
    await expect.poll(() => nameCell('10').textContent()).toBe('empty');
    await untilAllSaved(page);
  });
});

describe('when the server is not reached', () => {
  it('keeps edits on the device over a reload, and sends them when it is reached', async () => {
    await goTo(page, '/hang-list');
    await saving('saved, revision').waitFor();
    const revision = await savedRevision(page, SHOW);
    await page.route('**/api/documents/*', (route) =>
      route.request().method() === 'PUT' ? route.abort() : route.continue(),
    );
    await nameCell('8').focus();
    await page.keyboard.type('Legs, pair');
    await page.keyboard.press('Enter');
    await saving('server not reached: edits kept on this device').waitFor();
    await page.reload();
    await expect.poll(() => nameCell('8').textContent()).toBe('Legs, pair');
    await page.unroute('**/api/documents/*');
    await untilSaved(page, SHOW, revision + 1);
    await saving(`saved, revision ${revision + 1}`).waitFor();
  });

  it('merges nothing when somebody else has saved; a person chooses, nothing is lost', async () => {
    // This page is told of nothing; one that is shows theirs before a hand comes to the cell.
    await page.route('**/api/events**', (route) => route.abort());
    await goTo(page, '/hang-list');
    const other = await openPage(browser, server.address);
    await goTo(other, '/set/9');
    const theirs = other.getByLabel('What hangs on set 9');
    await theirs.fill('Harbour cloth');
    const revision = await savedRevision(page, SHOW);
    await theirs.press('Enter');
    await untilSaved(page, SHOW, revision + 1);
    await nameCell('9').focus();
    await page.keyboard.type('Our harbour');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').filter({ hasText: 'Nothing is merged by itself' }).waitFor();
    await page.getByRole('button', { name: /^Take theirs/ }).click();
    await expect.poll(() => nameCell('9').textContent()).toBe('Harbour cloth');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => nameCell('9').textContent()).toBe('Our harbour');
    await untilSaved(page, SHOW, revision + 2);
    await page.unroute('**/api/events**');
    await other.context().close();
  });
});
