/** What a new user does in the first hour, in both houses that come with the program. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import {
  grid,
  massCell,
  openItems,
  rowOf,
  savedRevision,
  textUnder,
  typeInto,
  untilSaved,
  wordsOf,
} from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
  page.on('pageerror', ({ message }) => thrown.push(message));
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

type House = {
  readonly name: string;
  readonly query: string;
  readonly show: string;
  readonly sets: number;
  /** Whose mass is changed, on which set, to what. */
  readonly set: string;
  readonly item: string;
  readonly mass: string;
  readonly bricks: RegExp;
};

const HOUSES: readonly House[] = [
  {
    name: 'Kestlemere Playhouse',
    query: '?house=kestlemere&show=vell',
    show: 'show:vell',
    sets: 45,
    set: '5',
    item: 'Bar cable',
    mass: '120 lb',
    bricks: /brick/,
  },
  {
    name: 'Skelderwick Theatre',
    query: '?house=skelderwick&show=regatta',
    show: 'show:regatta',
    sets: 24,
    set: '3',
    item: 'Bar cable',
    mass: '60 kg',
    bricks: /weight/,
  },
];

describe.each(HOUSES)('$name', (house) => {
  it('opens with the word DEMO, a wall of all its sets, and a row for each', async () => {
    await goTo(page, `/hang-list${house.query}`);
    await expect.poll(() => page.getByText(/^DEMO/).first().isVisible()).toBe(true);
    const columns = page.getByRole('region', { name: /^The wall/ }).getByRole('link');
    expect(await columns.count()).toBe(house.sets);
    const rows = grid(page)
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader') });
    expect(await rows.count()).toBe(house.sets);
    expect(await page.getByRole('combobox', { name: 'House' }).inputValue()).toBe(
      /house=(\w+)/.exec(house.query)?.[1],
    );
  });

  it('changes the bricks when the mass of an item changes; keeps it; takes it back', async () => {
    await goTo(page, `/hang-list${house.query}`);
    const revision = await savedRevision(page, house.show);
    const before = await figures(house);
    const items = await openItems(page, house.set);
    await (await typeInto(page, massCell(items, house.item), house.mass)).press('Enter');
    await expect.poll(() => textUnder(page, house.set, /^hung/)).not.toBe(before.hung);
    const after = await figures(house);
    expect(after.bricks).not.toBe(before.bricks);
    await untilSaved(page, house.show, revision + 1);
    await page.reload();
    await rowOf(page, house.set).waitFor();
    expect(await figures(house)).toEqual(after);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => figures(house)).toEqual(before);
    await untilSaved(page, house.show, revision + 2);
  });

  it('refuses a mass without a unit in place, says what is accepted, saves nothing', async () => {
    await goTo(page, `/hang-list${house.query}`);
    const revision = await savedRevision(page, house.show);
    const before = await figures(house);
    const items = await openItems(page, house.set);
    const field = await typeInto(page, massCell(items, house.item), '35');
    await field.press('Enter');
    const refusal = page.getByRole('alert').filter({ hasText: 'Accepted' });
    await refusal.waitFor();
    expect(await refusal.textContent()).toMatch(/35[\s\S]*Accepted[\s\S]*(lb|kg)/);
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await figures(house)).toEqual(before);
    await field.press('Escape');
    await page.waitForTimeout(1000);
    expect(await savedRevision(page, house.show)).toBe(revision);
  });

  it('prints the balance card of the set from the sheets, as a PDF with pages', async () => {
    await goTo(page, `/sheets/balance-card/${house.set}${house.query}`);
    const preview = page.getByRole('article', { name: new RegExp(`Balance card.*${house.set}`) });
    // It is no order itself, and names the one to strike by where there is one.
    const head = /NOT AN ORDER OF WORK: DO NOT LOAD BY THIS|SHEET: ORDER .*DO NOT LOAD BY THIS/;
    expect(await preview.textContent()).toMatch(head);
    expect(await preview.textContent()).toContain('DEMO');
    for (const paper of ['PDF, Letter', 'PDF, A4']) {
      const href = await page.getByRole('link', { name: paper }).getAttribute('href');
      const answer = await page.request.get(href ?? '');
      expect(answer.headers()['content-type']).toContain('application/pdf');
      const bytes = (await answer.body()).toString('latin1');
      expect(bytes.startsWith('%PDF-')).toBe(true);
      expect(bytes.match(/\/Type \/Page\b/g)?.length).toBeGreaterThan(0);
    }
  });

  it('says of a typed code that the sheet is current, or superseded', async () => {
    await goTo(page, `/sheets/balance-card/${house.set}${house.query}`);
    const printed = await wordsOf(page.getByRole('article'));
    const code = /type ([0-9A-Z]{4}-[0-9A-Z]{4})/.exec(printed)?.[1] ?? '';
    const ask = async (typed: string): Promise<string> => {
      await page.getByLabel('Code on the printed sheet').fill(typed);
      await page.getByRole('button', { name: 'Current or superseded?' }).click();
      return wordsOf(page.getByRole('status').filter({ hasText: typed }));
    };
    expect(await ask(code.toLowerCase())).toContain('current');
    await goTo(page, `/hang-list${house.query}`);
    const revision = await savedRevision(page, house.show);
    const items = await openItems(page, house.set);
    await (await typeInto(page, massCell(items, house.item), house.mass)).press('Enter');
    await untilSaved(page, house.show, revision + 1);
    await goTo(page, `/sheets/balance-card/${house.set}${house.query}`);
    expect(await ask(code)).toContain('superseded');
    await page.getByRole('button', { name: 'Undo' }).click();
    await untilSaved(page, house.show, revision + 2);
    expect(await ask(code)).toContain('current');
  });
});

const figures = async (house: House): Promise<{ hung: string; bricks: string }> => ({
  hung: await textUnder(page, house.set, /^hung/),
  bricks: await textUnder(page, house.set, house.bricks),
});
