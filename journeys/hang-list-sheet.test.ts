/** Many rows of the hang list at once, by keyboard alone: as in any spreadsheet, and safer. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import {
  grid,
  rowOf,
  savedRevision,
  textUnder,
  untilAllSaved,
  untilSaved,
  wordsOf,
} from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

const SHOW = 'show:vell';
beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
  page.on('pageerror', ({ message }) => thrown.push(message));
  await page
    .context()
    .grantPermissions(['clipboard-read', 'clipboard-write'], { origin: server.address });
  await goTo(page, '/hang-list');
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const press = (keys: string): Promise<void> => page.keyboard.press(keys);
const times = async (count: number, keys: string): Promise<void> => {
  for (let turn = 0; turn < count; turn += 1) await press(keys);
};

/** What another program would have put there. */
const toClipboard = (text: string): Promise<void> =>
  page.evaluate((words) => navigator.clipboard.writeText(words), text);
const fromClipboard = (): Promise<string> => page.evaluate(() => navigator.clipboard.readText());

const said = (words: string | RegExp) => page.getByRole('status').filter({ hasText: words });
const setNumbers = (): Promise<string[]> => grid(page).getByRole('rowheader').allTextContents();
const nameCell = (set: string) => rowOf(page, set).locator(':scope > td').nth(1);
const heldText = (): Promise<string> =>
  page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
const RAIL_FIRST = ['1', '2', '3', '4', '5'];

/** To the name of a row, by what it is called, from the top of the list down. */
const toSet = async (name: string): Promise<void> => {
  await press('Control+Home');
  await press('/');
  await page.keyboard.type(name);
  await press('Enter');
};

describe('paste, undo and fill by keyboard alone', () => {
  it('takes 45 rows from a spreadsheet as one edit, and one undo takes them back', async () => {
    const before = await grid(page).locator('tbody').textContent();
    const revision = await savedRevision(page, SHOW);
    // Number, name and kind: position and items lie between and are left blank.
    const rows = (await setNumbers()).map((set, index) =>
      [set, '', `Piece ${index + 1}`, '', 'soft', '24 ft', '55 ft', '4 in'].join('\t'),
    );
    expect(rows).toHaveLength(45);
    await toClipboard(`${rows.join('\r\n')}\r\n`);
    await toSet('house curtain');
    expect(await heldText()).toBe('House curtain');
    await press('Home');
    await press('Control+v');
    await said(/^Pasted 45 rows from set 1, set: .* One undo takes it back\./).waitFor();
    await expect.poll(() => nameCell('4').textContent()).toBe('Piece 4');
    expect(await textUnder(page, 'D4', /^in trim/)).toContain(`24'-0"`);
    await untilSaved(page, SHOW, revision + 1);
    await press('Control+z');
    await expect.poll(() => grid(page).locator('tbody').textContent()).toBe(before);
    await untilSaved(page, SHOW, revision + 2);
  });

  it('names every cell that is not understood, and changes nothing', async () => {
    const before = await grid(page).locator('tbody').textContent();
    await toClipboard('Net\t\tsilk\t24\nDrop\t\tsoft\tfour ft');
    await toSet('electric 1');
    await press('Control+v');
    const refusal = page.getByRole('alert').filter({ hasText: 'not pasted, nothing changed' });
    await refusal.waitFor();
    const words = await wordsOf(refusal);
    expect(words).toContain('3 places were not understood');
    expect(words).toContain('row 1, set 5, kind: found “silk”. Accepted: soft, hard');
    expect(words).toMatch(/row 1, set 5, in trim: found “24”. Accepted: .*ft/);
    expect(words).toMatch(/row 2, set 6, in trim: found “four ft”/);
    expect(await grid(page).locator('tbody').textContent()).toBe(before);
  });

  it('refuses a huge text before it reads it', async () => {
    await toClipboard('x\n'.repeat(150_000));
    await nameCell('5').focus();
    await press('Control+v');
    await page.getByRole('alert').filter({ hasText: 'a text of 300000 characters' }).waitFor();
  });

  it('chooses with Shift and arrows, says what is chosen, and copies it with units', async () => {
    await toSet('border 1');
    await press('Tab');
    await press('Tab');
    await press('Tab');
    await press('Shift+ArrowDown');
    await press('Shift+ArrowRight');
    await press('Shift+ArrowRight');
    await said('Chosen: 2 rows by 3 columns, sets 7 to 8.').waitFor();
    expect(await grid(page).locator('[aria-selected="true"]').count()).toBe(6);
    await press('Control+c');
    await said('Copied 2 rows by 3 columns, sets 7 to 8.').waitFor();
    expect(await fromClipboard()).toBe('34.25 ft\t\t3 in\r\n30.25 ft\t\t5 in');
    const html = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      return (await item?.getType('text/html'))?.text() ?? '';
    });
    expect(html).toContain('<td>34.25 ft</td>');
  });

  it('neutralises a name like a formula on its way out, and takes it back as it was', async () => {
    await nameCell('7').focus();
    await toClipboard('=HYPERLINK("x")');
    await press('Control+v');
    await expect.poll(() => nameCell('7').textContent()).toBe('=HYPERLINK("x")');
    await press('Control+c');
    await said('Copied 1 row by 1 column, set 7.').waitFor();
    expect(await fromClipboard()).toBe('\'=HYPERLINK("x")');
    await press('ArrowDown');
    await press('Control+v');
    await expect.poll(() => nameCell('8').textContent()).toBe('=HYPERLINK("x")');
    await times(2, 'Control+z');
    await expect.poll(() => nameCell('7').textContent()).toBe('Border 1');
  });

  it('fills down and clears, each one edit', async () => {
    await toSet('border 1');
    await times(5, 'Tab');
    await times(2, 'Shift+ArrowDown');
    await press('Control+d');
    await said(/^Filled set 7 down into sets 8 to 9: 2 cells changed/).waitFor();
    await expect.poll(() => textUnder(page, '9', /^depth/)).toBe('3 in');
    await press('Delete');
    await said(/^Cleared sets 7 to 9: 3 cells changed/).waitFor();
    await expect.poll(() => textUnder(page, '9', /^depth/)).toBe('unknown');
    await times(2, 'Control+z');
    await expect.poll(() => textUnder(page, '9', /^depth/)).toBe('2 in');
    await expect.poll(() => textUnder(page, '7', /^depth/)).toBe('3 in');
  });

  it('leaves whole rows empty where whole rows are chosen, and brings them back', async () => {
    await toSet('harbour');
    await press('Shift+Space');
    await said('Chosen: 1 whole row, set 9.').waitFor();
    await press('Delete');
    await expect.poll(() => nameCell('9').textContent()).toBe('empty');
    await press('Control+z');
    await expect.poll(() => nameCell('9').textContent()).toBe('Harbour drop');
  });
});

describe('order and rows by keyboard alone', () => {
  it('sorts by a column from its head, and one key brings rail order back', async () => {
    await untilAllSaved(page);
    await goTo(page, '/hang-list');
    await toSet('house curtain');
    await times(6, 'Tab');
    await press('ArrowUp');
    await press('Enter');
    await said(/sorted by hung, from the most, not in rail order/).waitFor();
    expect((await setNumbers()).slice(0, 5)).not.toEqual(RAIL_FIRST);
    const head = grid(page).getByRole('columnheader', { name: /^hung/ });
    expect(await head.getAttribute('aria-sort')).toBe('descending');
    await press('F8');
    await said('All 45 sets are shown, in rail order.').waitFor();
    expect((await setNumbers()).slice(0, 5)).toEqual(RAIL_FIRST);
  });

  it('shows only what is asked for, and says how many rows are hidden', async () => {
    const kind = page.getByRole('combobox', { name: 'kind', exact: true });
    await kind.focus();
    await page.keyboard.type('electric');
    await said('5 of 45 sets are shown, 40 are hidden, in rail order.').waitFor();
    expect(await setNumbers()).toEqual(['5', '19', '21', '32', '40']);
    await page.getByRole('button', { name: 'Every set in rail order' }).focus();
    await press('Enter');
    await said('All 45 sets are shown, in rail order.').waitFor();
    await press('/');
    await page.keyboard.type('clear me away');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('border');
    await said('4 found').waitFor();
    await press('Tab');
    await press('Space');
    await said('4 of 45 sets are shown, 41 are hidden, in rail order.').waitFor();
    await press('F8');
  });

  it('hides a column on this device, and it stays hidden over a reload', async () => {
    await page.getByText('Columns', { exact: true }).focus();
    await press('Enter');
    await page.getByRole('checkbox', { name: 'stack' }).focus();
    await press('Space');
    await said('1 column is hidden: stack.').waitFor();
    await page.reload();
    await said('1 column is hidden: stack.').waitFor();
    const heads = await grid(page).getByRole('columnheader').allTextContents();
    expect(heads.some((words) => words.startsWith('stack'))).toBe(false);
    await page.getByText('Columns, 1 hidden').click();
    await page.getByRole('button', { name: 'Show every column' }).click();
    await said('in rail order.').waitFor();
  });

  it('says in its row what a set is kept for, and lists its keys', async () => {
    expect(await wordsOf(rowOf(page, '4'))).toContain('kept empty');
    expect(await wordsOf(rowOf(page, '20'))).toMatch(/locked out: /);
    expect(await wordsOf(nameCell('D3'))).toContain('dead-hung');
    expect(await wordsOf(nameCell('M1'))).toContain('on a motor');
    await page.getByText('Keys of this list').click();
    expect(await page.getByText('every set in rail order again').isVisible()).toBe(true);
    expect(await violationsOf(page)).toEqual([]);
  });
});

describe('by mouse', () => {
  const depth = (set: string) => rowOf(page, set).locator(':scope > td').nth(6);
  const chosen = () => grid(page).locator('[aria-selected="true"]');

  it('chooses by drawing over cells, or with Shift and a click, and types nowhere', async () => {
    await depth('7').hover();
    await page.mouse.down();
    await depth('8').hover();
    await depth('9').hover();
    await page.mouse.up();
    await said('Chosen: 3 rows by 1 column, sets 7 to 9.').waitFor();
    await depth('11').click({ modifiers: ['Shift'] });
    await said('Chosen: 5 rows by 1 column, sets 7 to 11.').waitFor();
    expect(await chosen().count()).toBe(5);
    expect(await grid(page).getByRole('textbox').count()).toBe(0);
    await press('Escape');
    expect(await chosen().count()).toBe(0);
  });

  it('chooses whole rows from the number of the set, and leaves this screen for none', async () => {
    await rowOf(page, '7').getByRole('rowheader').hover();
    await page.mouse.down();
    await rowOf(page, '8').getByRole('rowheader').hover();
    await page.mouse.up();
    await said('Chosen: 2 whole rows, sets 7 to 8.').waitFor();
    expect(new URL(page.url()).pathname).toBe('/hang-list');
  });
});

describe('by touch', () => {
  it('chooses by two taps, fills, and pastes into a field', async () => {
    const phone = await openPage(browser, server.address, { width: 390 });
    await goTo(phone, '/hang-list');
    const cell = (set: string) => rowOf(phone, set).locator(':scope > td').nth(6);
    await phone.getByRole('button', { name: 'Choose cells' }).tap();
    await cell('7').tap();
    await cell('9').tap();
    expect(await grid(phone).locator('[aria-selected="true"]').count()).toBe(3);
    expect(await grid(phone).getByRole('textbox').count()).toBe(0);
    await phone.getByRole('button', { name: 'Fill down' }).tap();
    await expect.poll(() => wordsOf(cell('9'))).toBe('3 in');
    await phone.getByRole('button', { name: 'Paste …' }).tap();
    await phone.getByLabel(/Cells copied from a spreadsheet/).fill('6 in\n7 in');
    await phone.getByRole('button', { name: 'Put it in from set 7, depth' }).tap();
    await expect.poll(() => wordsOf(cell('8'))).toBe('7 in');
    const wide = await phone.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide).toBe(0);
    expect(await violationsOf(phone)).toEqual([]);
    await phone.context().close();
  });
});
