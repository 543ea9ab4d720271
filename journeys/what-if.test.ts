/** Asking before doing: a hang changed in a question, two hangs compared, the show elsewhere. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, typeInto, untilSaved } from './hang-list.ts';
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

const plain = async (where: Locator): Promise<string> =>
  ((await where.textContent()) ?? '').replaceAll('\u00a0', ' ');

const summary = (): Locator => page.locator('.what-if-sum');
const figures = (): Locator => page.getByRole('table', { name: 'In figures' });
const rowOf = (what: string): Locator =>
  figures()
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: what, exact: true }) });

/** The cell of the mass of the first item, on the set page and in the question alike. */
const massCell = (): Locator =>
  page
    .getByRole('table', { name: /^What hangs on set 11\./ })
    .locator('tbody tr')
    .first()
    .locator('td')
    .nth(1);

const askMass = async (text: string): Promise<void> => {
  await typeInto(page, massCell(), text);
  await page.keyboard.press('Enter');
};

describe('what if', () => {
  it('is asked from the set, and says that nothing is changed yet', async () => {
    await goTo(page, '/set/11');
    await page.getByRole('link', { name: 'What if?' }).click();
    await page.getByRole('heading', { level: 1, name: /What if: set 11/ }).waitFor();
    expect(await plain(summary())).toContain('Nothing is changed yet');
    expect(await page.getByRole('button', { name: 'Make this the plan' }).isDisabled()).toBe(true);
  });

  it('shows a heavier flat beside the plan: bricks, pulls, lines and checks', async () => {
    const revision = await savedRevision(page, SHOW);
    await askMass('700 lb');
    await summary().getByText('3 full bricks more').waitFor();
    const said = await plain(summary());
    expect(said).toMatch(/Hand pull to start it at most \d+ lbf, was \d+ lbf\./);
    expect(said).toContain('Worse, set 11');
    expect(await plain(rowOf('what hangs'))).toContain('640 lb700 lb60 lb more');
    expect(await page.getByText('Full line: what if. Thin dashed line: as planned.').count()).toBe(
      1,
    );
    const lines = page.getByRole('table', { name: /^Lift lines at/ });
    expect(await plain(lines.getByRole('row').nth(3))).toMatch(/^line 3\d+ lbf\d+ lbf\d+ lbf more/);
    expect(await page.locator('.frame-word').first().textContent()).toBe('WHAT IF');
    expect(await savedRevision(page, SHOW)).toBe(revision);
  });

  it('opens the same question again from its address, in another window', async () => {
    const other = await openPage(browser, server.address, { selfCheck: 'never' });
    await goTo(other, page.url().slice(server.address.length));
    await other.locator('.what-if-sum').getByText('3 full bricks more').waitFor();
    await other.context().close();
  });

  it('says what is refused, and where a place is past the end of the batten', async () => {
    const places = page.getByRole('table', { name: /^Places along the batten/ });
    const cell = places.locator('tbody td').first();
    await typeInto(page, cell, '-40 ft; 40 ft');
    await page.keyboard.press('Enter');
    await places.getByText('DOC-117').first().waitFor();
    await page.keyboard.press('Escape');
    expect(await plain(cell)).toContain('4.5 ft');
  });

  it('is put back without a trace', async () => {
    await page.getByRole('button', { name: 'Put it back' }).click();
    await summary().getByText('Nothing is changed yet').waitFor();
    expect(new URL(page.url()).searchParams.get('if')).toBeNull();
  });

  it('is made the plan as one edit, which undo takes back', async () => {
    const revision = await savedRevision(page, SHOW);
    await askMass('700 lb');
    await summary().getByText('3 full bricks more').waitFor();
    await page.getByRole('button', { name: 'Make this the plan' }).click();
    await page.getByRole('heading', { level: 1, name: 'Set 11, Clock tower flat' }).waitFor();
    expect(await plain(massCell())).toContain('700 lb');
    await untilSaved(page, SHOW, revision + 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => plain(massCell())).toContain('640 lb');
    await untilSaved(page, SHOW, revision + 2);
  });

  it('says that an address does not fit the plan', async () => {
    await goTo(page, '/set/11/what-if?if=%5B7%5D');
    await page.getByText('does not fit the plan as it stands').waitFor();
    await page.getByRole('button', { name: 'Begin from the plan' }).click();
    await summary().getByText('Nothing is changed yet').waitFor();
  });
});

describe('two hangs', () => {
  it('lie side by side with both curves, figures and the difference', async () => {
    await goTo(page, '/set/11');
    await page.getByRole('link', { name: 'Lay another hang beside it' }).click();
    await page
      .getByRole('combobox', { name: 'Beside it' })
      .selectOption({ label: '36, Iron bridge' });
    await figures().waitFor();
    expect(await plain(rowOf('what hangs'))).toContain('640 lb520 lb120 lb less');
    expect(await page.getByText('Full line: set 36. Thin dashed line: set 11.').count()).toBe(1);
    expect(page.url()).toContain('other=36');
  });

  it('may be of one set, now and at a revision', async () => {
    // The second revision is the plan with the flat of 700 lb, which undo took back.
    await goTo(page, '/set/11/beside?other=11');
    await page.getByRole('combobox', { name: 'As it stands' }).selectOption('2');
    await expect.poll(() => plain(rowOf('what hangs'))).toContain('640 lb700 lb60 lb more');
    expect(page.url()).toContain('otherRevision=2');
  });

  it('may be of another show in the same house', async () => {
    await goTo(page, '/set/11/beside?other=11&otherShow=winterferry&otherHouse=kestlemere');
    await figures().waitFor();
    // The ferry bow of 720 lb hangs where the tower of 640 lb hung.
    expect(await plain(rowOf('what hangs'))).toContain('640 lb720 lb80 lb more');
  });
});

describe('another house', () => {
  const pieces = (): Locator => page.locator('.fit-table > tbody > tr');

  it('fits the show to the sets there, and says what no longer works and what to ask', async () => {
    await goTo(page, '/hang-list');
    await page.getByRole('link', { name: 'Fit it to another house' }).click();
    await page
      .getByRole('combobox', { name: 'House to go to' })
      .selectOption({ label: 'Skelderwick Theatre' });
    await pieces().first().waitFor();
    expect(await pieces().count()).toBe(28);
    expect(await plain(pieces().filter({ hasText: 'Clock tower flat' }))).toContain('LOD-005');
    expect(await plain(pieces().filter({ hasText: 'Great dial' }))).toContain('hangs nowhere');
    expect(await page.getByRole('heading', { name: /What to ask/ }).count()).toBe(1);
    await page.getByRole('button', { name: 'Copy the questions' }).click();
  });

  it('takes a piece by hand to another set, and the address keeps it', async () => {
    const chosen = page.getByRole('combobox', { name: 'Set there for Clock tower flat' });
    await chosen.selectOption('7');
    await expect.poll(() => chosen.inputValue()).toBe('7');
    expect(new URL(page.url()).searchParams.get('moved')).toBe('11>7');
    await page.reload();
    await expect.poll(() => chosen.inputValue()).toBe('7');
  });

  it('makes a show of it in the other house', async () => {
    await page.getByRole('textbox', { name: 'Name of the show there' }).fill('Vell on tour');
    await page.getByRole('button', { name: 'Make a show for Skelderwick Theatre' }).click();
    await expect.poll(() => page.url()).toContain('show=vell-on-tour');
    await goTo(page, '/set/7?house=skelderwick&show=vell-on-tour');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain(
      'Set 7, Clock tower flat',
    );
  });
});
