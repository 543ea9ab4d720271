/** A piece looks for a set: ranked, with reasons, at every width; then it is put there. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

const SHOW = 'show:vell';

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address, { selfCheck: 'never' });
  page.on('pageerror', ({ message }) => thrown.push(message));
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const rows = (from: Page = page): Locator => from.locator('.places-table tbody tr');

const ask = async (from: Page): Promise<void> => {
  await goTo(from, '/which-set?piece=17');
  await from.getByRole('checkbox', { name: /keeps empty/ }).check();
  await from.getByRole('button', { name: 'Look for a set' }).click();
  await from.getByText(/\d+ free sets: \d+ with nothing known against them/).waitFor();
};

describe('which set?', () => {
  it('ranks the free sets for a piece, each with its reasons', async () => {
    await ask(page);
    const first = rows().nth(1);
    expect((await first.locator('td').first().textContent())?.trim()).toBe('1');
    await first.locator('summary').first().click();
    expect(await first.locator('dl').textContent()).toMatch(/To look at|Not known/);
    expect(await page.locator('.ruled-out tbody tr').count()).toBeGreaterThan(0);
    expect(await page.locator('.frame-word').first().textContent()).toBe('WHAT IF');
  });

  it('says on demand what the work on a set needs', async () => {
    const first = rows().nth(1);
    await first.getByRole('button', { name: /^Ask/ }).click();
    await expect.poll(() => first.textContent(), { timeout: 60_000 }).toMatch(/on: .*off: /s);
  });

  it('puts the piece on the set that is chosen, and undo brings it back', async () => {
    const first = rows().nth(1);
    const set = ((await first.locator('th').textContent()) ?? '').trim();
    const revision = await savedRevision(page, SHOW);
    await first.getByRole('button', { name: /^Hang it here/ }).click();
    await page.getByRole('heading', { level: 1, name: `Set ${set}, Shop sign` }).waitFor();
    await untilSaved(page, SHOW, revision + 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('heading', { level: 1, name: `Set ${set}, empty` }).waitFor();
    await untilSaved(page, SHOW, revision + 2);
    await goTo(page, '/set/17');
    await page.getByRole('heading', { level: 1, name: 'Set 17, Shop sign' }).waitFor();
  });

  it.each([1024, 390] as const)('is read without scrolling aside at %i', async (width) => {
    const narrow = await openPage(browser, server.address, { width, selfCheck: 'never' });
    await ask(narrow);
    const wide = await narrow.evaluate(() => {
      const box = document.querySelector('.places-table')?.parentElement;
      return box === null || box === undefined ? -1 : box.scrollWidth - box.clientWidth;
    });
    expect(wide).toBe(0);
    await narrow.context().close();
  });
});
