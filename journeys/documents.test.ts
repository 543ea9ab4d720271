/** Two people on one show: refused, seen, put together; then history, a way back, and a copy. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { massCell, openItems, savedRevision, typeInto, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let one: Page;
let other: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  one = await openPage(browser, server.address, { selfCheck: 'never' });
  other = await openPage(browser, server.address, { selfCheck: 'never' });
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const SHOW = 'show:vell';
const IN_SHOW = '?house=kestlemere&show=vell';

/** Who types on a page stands in its title block. */
const named = async (page: Page, name: string): Promise<void> => {
  await goTo(page, `/hang-list${IN_SHOW}`);
  await page.getByLabel('edits and prints by').fill(name);
};

const weigh = async (page: Page, set: string, item: string, mass: string): Promise<void> => {
  const items = await openItems(page, set);
  await typeInto(page, massCell(items, item), mass);
  await page.keyboard.press('Enter');
};

const words = async (place: Locator): Promise<string> =>
  ((await place.textContent()) ?? '').replaceAll(/\s+/g, ' ');

type Show = {
  readonly name: string;
  readonly hangs: readonly { readonly set: string; readonly items: readonly unknown[] }[];
};

const showNow = async (id = SHOW): Promise<Show> => {
  const answer = await one.request.get(`/api/documents/${id}`);
  return ((await answer.json()) as { readonly document: Show }).document;
};

const itemsOf = ({ hangs }: Show, set: string): string =>
  JSON.stringify(hangs.find((hang) => hang.set === set)?.items);

describe('two editors in conflict', () => {
  it('refuses the stale save, and shows what each changed and what both did', async () => {
    await named(one, 'flyman one');
    await named(other, 'flyman two');
    await weigh(one, '11', 'Clock tower flat', '310 lb');
    await untilSaved(one, SHOW, 2);
    await weigh(one, '9', 'Harbour drop', '130 lb');
    await untilSaved(one, SHOW, 3);
    await weigh(other, '11', 'Clock tower flat', '320 lb');
    await other.getByText('the show was saved by somebody else').waitFor();
    await weigh(other, '3', 'Clock-face gauze', '90 lb');
    const mine = other.getByRole('region', { name: 'What you changed' });
    const theirs = other.getByRole('region', { name: 'What they changed' });
    await theirs.waitFor();
    expect(await words(mine)).toMatch(/Set 11.*both changed this: mass of Clock tower flat 320 lb/);
    await expect.poll(() => words(mine)).toMatch(/Set 3.*mass of Clock-face gauze 90 lb/);
    expect(await words(theirs)).toMatch(/Set 11.*both changed this: .* 310 lb/);
    expect(await words(theirs)).toMatch(/Set 9.*130 lb/);
    expect(await words(theirs)).toContain('flyman one');
    expect(await savedRevision(other, SHOW)).toBe(3);
  });

  it('asks for each place that both changed, and shows what would be saved', async () => {
    await other.getByText('1 place is still to be chosen').waitFor();
    expect(await violationsOf(other)).toEqual([]);
    const place = other.getByRole('group', { name: /^Set 11/ });
    await place.getByRole('radio', { name: /^mine.*320 lb/ }).check();
    const result = other.getByRole('region', { name: 'What would be saved' });
    expect(await words(result)).toMatch(/as revision 4, against revision 3/);
    expect(await words(result)).toMatch(/320 lb/);
    expect(await words(result)).not.toContain('Set 9');
    expect(await savedRevision(other, SHOW)).toBe(3);
  });

  it('opens a choice again whose place a further save has changed meanwhile', async () => {
    await goTo(one, `/hang-list${IN_SHOW}`);
    await weigh(one, '11', 'Clock tower flat', '311 lb');
    await untilSaved(one, SHOW, 4);
    // What a page does when it comes back to the front.
    await other.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await other.getByText('Revision 4 has come from flyman one').waitFor();
    await other.getByText('1 place is still to be chosen').waitFor();
    expect(await other.getByRole('button', { name: 'Save them put together' }).count()).toBe(0);
  });

  it('saves what was put together, and nothing of either is lost', async () => {
    const place = other.getByRole('group', { name: /^Set 11/ });
    await place.getByRole('radio', { name: /^mine.*320 lb/ }).check();
    await other.getByRole('button', { name: 'Save them put together' }).click();
    await untilSaved(other, SHOW, 5);
    const show = await showNow();
    expect(itemsOf(show, '11')).toContain('320 lb');
    expect(itemsOf(show, '9')).toContain('130 lb');
    expect(itemsOf(show, '3')).toContain('90 lb');
  });

  it('keeps every revision with who and why', async () => {
    await goTo(other, `/documents/${encodeURIComponent(SHOW)}${IN_SHOW}`);
    const list = other.getByRole('list', { name: 'Newest first' });
    const rows = list.getByRole('listitem');
    await expect.poll(() => rows.count()).toBe(5);
    expect(await words(rows.nth(0))).toMatch(/^Revision 5.*flyman two.*together with revision 4/);
    expect(await words(rows.nth(1))).toMatch(/^Revision 4.*flyman one/);
    const difference = other.getByRole('region', { name: 'From revision 4 to revision 5' });
    expect(await words(difference)).toMatch(/2 places differ/);
    const drawn = /revision 5 in full, revision 4 in broken/;
    await difference.getByRole('img', { name: drawn }).waitFor();
    expect(await words(difference)).toContain('PLANNED');
    expect(await violationsOf(other)).toEqual([]);
  });
});

describe('the history of a show', () => {
  it('goes back to an old revision as a new one, after saying what that changes', async () => {
    await other.getByRole('button', { name: 'Restore revision 1' }).click();
    const restore = other.getByRole('region', { name: 'Restore revision 1' });
    await restore.getByText('What that changes of what is there now').waitFor();
    expect(await words(restore)).toMatch(/Set 11.*was 320 lb/);
    expect(await violationsOf(other)).toEqual([]);
    await restore.getByLabel('Why it is restored').fill('the tower is not weighed yet');
    await restore.getByRole('button', { name: 'Restore revision 1' }).click();
    await untilSaved(other, SHOW, 6);
    expect(itemsOf(await showNow(), '11')).not.toContain('320 lb');
    await other.getByRole('button', { name: 'Undo' }).click();
    await untilSaved(other, SHOW, 7);
    expect(itemsOf(await showNow(), '11')).toContain('320 lb');
    await other.getByText('revision 1 restored: the tower is not weighed yet').first().waitFor();
  });

  it('has a remark on what is there now, and finds it again', async () => {
    await other.getByLabel('Remark on what is there now').fill('as hung on Tuesday');
    await other.getByRole('button', { name: 'Write the remark' }).click();
    await untilSaved(other, SHOW, 8);
    await other.getByLabel(/^Only those with a remark, 1 of 8/).check();
    const rows = other.getByRole('list', { name: 'Newest first' }).getByRole('listitem');
    expect(await rows.count()).toBe(1);
    expect(await words(rows.first())).toContain('Remark: as hung on Tuesday');
  });
});

describe('several shows', () => {
  it('copies a show, and an edit of the copy leaves the first as it was', async () => {
    await goTo(one, `/documents${IN_SHOW}`);
    const first = await showNow();
    const name = '<img src=x onerror="document.title=1">';
    await one.getByRole('button', { name: `Copy ${first.name}` }).click();
    await one.getByLabel('Name of the copy').fill(name);
    await one.getByRole('button', { name: 'Copy the show' }).click();
    const row = one.getByRole('listitem').filter({ hasText: name });
    await row.waitFor();
    expect(await words(row)).toContain(`copied from ${first.name}, revision`);
    // What looks like markup is the text that it is.
    expect(await one.locator('img[src="x"]').count()).toBe(0);
    expect(await one.title()).not.toBe('1');
    await row.getByRole('link', { name: /^Open/ }).click();
    await one.getByRole('grid').waitFor();
    await weigh(one, '11', 'Clock tower flat', '999 lb');
    const copy = 'show:img-src-x-onerror-document-title';
    await untilSaved(one, copy, 2);
    expect(itemsOf(await showNow(copy), '11')).toContain('999 lb');
    expect(await showNow()).toEqual(first);
  });

  it('sets a show aside and takes it back, and keeps a house that shows refer to', async () => {
    await goTo(one, '/documents?house=kestlemere&show=vell');
    await one.getByRole('button', { name: 'Set aside Winterferry' }).click();
    await one.getByLabel('Why it is set aside').fill('the run is over');
    await one.getByRole('button', { name: 'Set it aside' }).click();
    const aside = one.getByRole('region', { name: 'Set aside' });
    await aside.getByText('the run is over').waitFor();
    await one.getByRole('button', { name: 'Set aside Kestlemere Playhouse' }).click();
    await one.getByLabel('Why it is set aside').fill('no reason');
    await one.getByRole('button', { name: 'Set it aside' }).click();
    await one.getByText('was not set aside').waitFor();
    expect(await words(one.getByRole('main'))).toContain('SRV-004');
    await aside.getByRole('button', { name: 'Take back Winterferry' }).click();
    await one.getByRole('button', { name: 'Set aside Winterferry' }).waitFor();
  });
});
