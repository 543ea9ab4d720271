/**
 * The main job without a mouse and without a pointer of any kind: a piece is hung on an empty set,
 * weighed, given its heights, looked at, and its card printed. Not one click, not one focus that a
 * key did not give.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, textUnder, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
  page.on('pageerror', ({ message }) => thrown.push(message));
  await goTo(page, '/hang-list');
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const SHOW = 'show:vell';
const press = (keys: string): Promise<void> => page.keyboard.press(keys);

/** What has the focus, as it is called. */
const held = (): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (at === null || at === document.body) return 'nothing has the focus';
    const words = at?.getAttribute('aria-label') ?? at?.textContent ?? '';
    return words.replaceAll(/\s+/g, ' ').trim();
  });

/** More than there are controls on any screen: the way there is by keys, or there is none. */
const MOST = 160;

const reach = async (words: RegExp, key = 'Tab'): Promise<void> => {
  const passed: string[] = [];
  for (let turn = 0; turn < MOST; turn += 1) {
    const now = await held();
    if (words.test(now)) return;
    passed.push(now.slice(0, 40));
    await press(key);
  }
  throw new Error(`no way to ${words} by ${key}; passed ${passed.slice(-12).join(' | ')}`);
};

const typeHere = async (text: string): Promise<void> => {
  await press('Enter');
  await page.keyboard.type(text);
  await press('Enter');
};

/** To the set in the first column of the list, found by what hangs there. */
const toRow = async (found: string): Promise<void> => {
  await press('/');
  await page.keyboard.type(found);
  await press('Enter');
};

describe('the main job by keys alone', () => {
  it('hangs a piece on an empty set and says its heights', async () => {
    const revision = await savedRevision(page, SHOW);
    await toRow('electric 1');
    await press('ArrowUp');
    expect(await held()).toMatch(/^empty/);
    await page.keyboard.type('Practice flat');
    await press('Enter');
    await untilSaved(page, SHOW, revision + 1);
    await press('ArrowUp');
    expect(await held()).toBe('Practice flat');
    for (const height of ['20 ft', '55 ft']) {
      await reach(/no (in|out) trim|^–|none/i, 'ArrowRight');
      await typeHere(height);
      await press('ArrowUp');
    }
    expect(await textUnder(page, '4', /^in trim/)).toContain(`20'-0"`);
    expect(await textUnder(page, '4', /^out trim/)).toContain(`55'-0"`);
  });

  it('adds an item and weighs it, in pounds and ounces or as it is typed', async () => {
    await press('Home');
    await reach(/items? of set 4$/, 'ArrowRight');
    await press('Enter');
    await reach(/^type a new item here/, 'ArrowDown');
    await typeHere('Flat, 12 by 18');
    await reach(/^Flat, 12 by 18/, 'ArrowUp');
    await press('ArrowRight');
    await press('ArrowRight');
    await typeHere('84.5 kg');
    // 84.5 / 0.45359237 is 186.3 lb, and a load is rounded up.
    await expect.poll(() => textUnder(page, '4', /^hung/)).toBe('187 lb');
    // How many bricks it needs waits for how high it is, and where it is picked.
    expect(await textUnder(page, '4', /^bricks/)).toBe('unknown');
    for (const length of ['18 ft', '1 ft']) {
      await reach(/^Flat, 12 by 18/, 'ArrowUp');
      await reach(/^unknown$/, 'ArrowRight');
      await typeHere(length);
    }
    await expect.poll(() => textUnder(page, '4', /^bricks/)).toMatch(/^\d+ F/);
  });

  it('opens the set, and from it the order of work and the sheets', async () => {
    await toRow('practice flat');
    await press('Home');
    await press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Set 4, Practice flat' }).waitFor();
    await reach(/^Order/);
    await press('Enter');
    await page.getByRole('heading', { level: 1, name: /order of work/i }).waitFor();
    await reach(/^Sheets/);
    await press('Enter');
    await page.waitForURL(/\/sheets/);
    await reach(/^balance card, set 4$/);
    await press('Enter');
    await page.waitForURL(/\/sheets\/balance-card\/4/);
    await reach(/^PDF, Letter$/);
    const href = await page.evaluate(() => (document.activeElement as HTMLAnchorElement).href);
    const print = await page.request.get(href);
    expect(print.headers()['content-type']).toContain('application/pdf');
    expect((await print.body()).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('has all its keys on one card, which gives the focus back', async () => {
    await reach(/^Hang list$/);
    const before = await held();
    await press('?');
    const card = page.getByRole('dialog', { name: 'Keys' });
    await card.getByRole('heading', { name: 'Everywhere' }).waitFor();
    expect(await card.getByText('takes the last edit back').count()).toBe(1);
    await press('Escape');
    await card.waitFor({ state: 'detached' });
    expect(await held()).toBe(before);
  });
});
