/** The screens without a mouse, and what becomes of edits when the network or another person is. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RETRY_MS } from '../web/keeping/keeper-parts.ts';
import { goTo, openBrowser, openPage, type Width } from './browser.ts';
import { grid, rowOf, savedRevision, untilAllSaved, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews } from './views.ts';

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

describe('how things stand, when the server does not answer', () => {
  const RECORD = 'state:kestlemere';
  const FOUND = '/house/found/11?house=kestlemere&show=vell';
  const ofRecord = (url: URL): boolean => decodeURIComponent(url.pathname).endsWith(RECORD);
  const form = (on: Page) => on.getByRole('form', { name: 'Set 11 as found' });
  const notice = (on: Page) => on.getByText('how things stand was not recorded');

  type Written = { readonly sets: { readonly '11': { readonly height?: string } } };

  /** A page whose entries of the record do not arrive, and how often it sent them. */
  const cutOff = async (width: Width) => {
    const on = await openPage(browser, server.address, { width, selfCheck: 'never' });
    await goTo(on, FOUND);
    let sent = 0;
    await on.route(ofRecord, (route) => {
      if (route.request().method() !== 'PUT') return route.continue();
      sent += 1;
      return route.abort();
    });
    return { on, sent: () => sent };
  };

  const writeDown = async (on: Page, height: string): Promise<void> => {
    await form(on).getByLabel('Height of the batten now').fill(height);
    await form(on).getByLabel('Looked at by').fill('upper loader');
    await form(on).getByRole('button', { name: 'Write it down', exact: true }).click();
  };
  const heightKept = async (on: Page): Promise<string | undefined> => {
    const answer = await on.request.get(`/api/documents/${RECORD}`);
    const { sets } = ((await answer.json()) as { readonly document: Written }).document;
    return sets['11'].height;
  };

  it('sends nothing later by itself; a person says that it is still so', async () => {
    const { on, sent } = await cutOff(1440);
    const before = await savedRevision(on, RECORD);
    await writeDown(on, '9 ft');
    await notice(on).waitFor();
    const word = on.getByRole('status').filter({ hasText: 'not recorded: the server did not' });
    await word.waitFor();
    // A plan would have been sent three times by now.
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS[0] + RETRY_MS[1] + 1000));
    expect(sent()).toBe(1);
    await on.unroute(ofRecord);
    let again = 0;
    on.on('request', (request) => {
      if (request.method() === 'PUT' && ofRecord(new URL(request.url()))) again += 1;
    });
    // Nor is it sent after it is looked at anew, or where another entry is tried.
    await goTo(on, FOUND);
    await notice(on).waitFor();
    await writeDown(on, '10 ft');
    await form(on).getByText('after that one is sent or dropped').waitFor();
    expect(again).toBe(0);
    expect(await savedRevision(on, RECORD)).toBe(before);
    await on.getByRole('button', { name: 'It is still so: send it' }).click();
    await untilSaved(on, RECORD, before + 1);
    expect(await heightKept(on)).toBe('9 ft');
    await notice(on).waitFor({ state: 'detached' });
    expect(again).toBe(1);
    await on.context().close();
  });

  it('drops it at the word of a person, and shows what the server has', async () => {
    const { on } = await cutOff(1440);
    const before = await savedRevision(on, RECORD);
    const height = form(on).getByLabel('Height of the batten now');
    const shown = await height.inputValue();
    await writeDown(on, '8 ft');
    await on.getByRole('button', { name: 'Drop it; show what the server has' }).click();
    await notice(on).waitFor({ state: 'detached' });
    await on.unroute(ofRecord);
    expect(await height.inputValue()).toBe(shown);
    expect(await savedRevision(on, RECORD)).toBe(before);
    await on.context().close();
  });

  it.each(DEVICES)('says so on every screen $device, in each light', async (device) => {
    const { on } = await cutOff(device.opened);
    await writeDown(on, '7 ft');
    await notice(on).waitFor();
    expect(await faultsInViews(on, device)).toEqual([]);
    await on.context().close();
  });
});
