/**
 * One house on several devices: each says whether it is live, hears of the other's edit, is stale
 * when it slept, and stops for a person where the record is not the one it knew.
 */
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews } from './views.ts';

const IN_SHOW = '?house=kestlemere&show=vell';
const SET = `/set/11${IN_SHOW}`;
/** A name in the house's network: over plain HTTP a browser withholds much from it. */
const NAME = 'flies.home.arpa';
const NAMED = `MAP ${NAME} 127.0.0.1`;

let folder: string;
let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-live-'));
  [server, browser] = await Promise.all([
    startHouseServer({ COUNTERPOISE_DATA: folder }),
    openBrowser([`--host-resolver-rules=${NAMED}`]),
  ]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const word = (page: Page) => page.locator('.live-word');
const said = async (page: Page): Promise<string> => (await word(page).textContent()) ?? '';
const untilLive = (page: Page) => expect.poll(() => said(page)).toMatch(/^live since \d\d:\d\d/);
const nameOf = (page: Page) => page.getByLabel('What hangs on set 11');
const note = (page: Page) => page.getByRole('textbox', { name: 'Note' });
const signing = (page: Page) =>
  page.getByRole('button', { name: 'Sign the balance card as shown' });
const notes = (page: Page) => page.getByRole('region', { name: 'Notes and sign-off' });

const rename = async (page: Page, name: string): Promise<void> => {
  await nameOf(page).fill(name);
  await page.keyboard.press('Enter');
};

/** Four times as long as a heartbeat is good for. */
const SLEEP_MS = 60_000;

/** A page on set 11, on a device of its own. */
const device = async (address = server.address, path = SET): Promise<Page> => {
  const page = await openPage(browser, address);
  const faults: string[] = [];
  page.on('pageerror', ({ message }) => faults.push(message));
  Object.assign(page, { faults });
  await goTo(page, path);
  await untilLive(page);
  // All parts of the screen are there, those on threads of their own too.
  await page.getByText(/Searching for an order|An order is searched for/).waitFor({
    state: 'detached',
  });
  return page;
};

const faultsOf = (page: Page): readonly string[] =>
  (page as unknown as { readonly faults: readonly string[] }).faults;

/** Every word that the strip says from now on, and whether anything could be signed with it. */
const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(globalThis, { heard });
    const strip = document.querySelector('.strip');
    if (strip === null) throw new Error('no strip');
    new MutationObserver(() => {
      const words = document.querySelector('.live-word')?.textContent ?? '';
      const buttons = [...document.querySelectorAll('button')];
      const sign = buttons.find((each) => each.textContent.startsWith('Sign the balance card'));
      heard.push(`${words} / ${sign?.disabled === false ? 'may sign' : 'may not sign'}`);
    }).observe(strip, { subtree: true, childList: true, characterData: true });
  });
const heardBy = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (globalThis as unknown as { readonly heard: readonly string[] }).heard);

describe('two devices', () => {
  it('see each other’s edits, notes and sign-offs; an edit voids a sign-off', async () => {
    const [one, other] = [await device(), await device()];
    await rename(one, 'Clock tower');
    await expect.poll(() => nameOf(other).inputValue()).toBe('Clock tower');
    await rename(other, 'Clock tower, new');
    await expect.poll(() => nameOf(one).inputValue()).toBe('Clock tower, new');

    await note(one).fill('Hand line frayed above the lock.');
    await one.getByRole('button', { name: 'Write the note' }).click();
    await notes(other).getByText('Hand line frayed above the lock.').waitFor();

    await signing(other).click();
    await notes(other).getByText('Recorded, event').waitFor();
    await notes(one).getByText('It stands').waitFor();
    expect(await violationsOf(one)).toEqual([]);
    await rename(one, 'Clock tower flat');
    await notes(other).getByText('Void: what it rests on has changed since').waitFor();
    await goTo(one, `/notes${IN_SHOW}`);
    await one.getByText('Hand line frayed above the lock.').waitFor();
    expect(await violationsOf(one)).toEqual([]);
    for (const page of [one, other]) {
      expect(faultsOf(page)).toEqual([]);
      await page.context().close();
    }
  });
});

const withdrawing = (page: Page | Locator) => page.getByRole('button', { name: 'Withdraw …' });
const whyBox = (page: Page | Locator) => page.getByRole('textbox', { name: 'Why it is withdrawn' });
const SENT = 'Withdraw it';

describe('what was wrong', () => {
  it('is withdrawn with a reason, by keys alone, and stays to be read', async () => {
    const [one, other] = [await device(), await device()];
    await note(one).fill('Cable clamp loose on set 12.');
    await one.getByRole('button', { name: 'Write the note' }).click();
    const wrong = notes(other).getByRole('listitem').filter({ hasText: 'Cable clamp loose' });
    await withdrawing(wrong).focus();
    await other.keyboard.press('Enter');
    expect(await whyBox(wrong).evaluate((box) => box === document.activeElement)).toBe(true);
    // Nothing is withdrawn without a reason.
    await other.keyboard.type('   ');
    const send = wrong.getByRole('button', { name: SENT });
    expect(await send.isDisabled()).toBe(true);
    await other.keyboard.type('It was another set.');
    await other.keyboard.press('Tab');
    expect(await violationsOf(other)).toEqual([]);
    await other.keyboard.press('Enter');
    const words = /^Withdrawn by this machine, \d\d:\d\d:\d\d: It was another set\.$/;
    await wrong.getByText(words).waitFor();
    expect(await wrong.getByText(words).evaluate((it) => it === document.activeElement)).toBe(true);
    expect(await withdrawing(wrong).count()).toBe(0);
    // The other device hears of it; what was written is there to be read, struck.
    await notes(one).getByText(words).waitFor();
    expect(await one.locator('s', { hasText: 'Cable clamp loose on set 12.' }).count()).toBe(1);
    for (const page of [one, other]) await page.context().close();
  });

  it('is withdrawn on the page of all notes too, and says so there', async () => {
    const page = await device(server.address, `/notes${IN_SHOW}`);
    await note(page).fill('Seen in the wrong house.');
    await page.getByRole('button', { name: 'Write the note' }).click();
    const wrong = page.getByRole('listitem').filter({ hasText: 'Seen in the wrong house.' });
    await withdrawing(wrong).click();
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await withdrawing(wrong).evaluate((it) => it === document.activeElement)).toBe(true);
    await withdrawing(wrong).click();
    await whyBox(wrong).fill('A rehearsal.');
    await wrong.getByRole('button', { name: SENT }).click();
    await wrong.getByText(/^Withdrawn by this machine, .*: A rehearsal\.$/).waitFor();
    await page.getByText(/^Withdrawn by this machine, .*: It was another set\.$/).waitFor();
    expect(await violationsOf(page)).toEqual([]);
    await page.context().close();
  });

  it('voids a sign-off, with who withdrew it and why', async () => {
    const page = await device();
    await signing(page).click();
    const signed = notes(page).getByRole('listitem').filter({ hasText: 'It stands' });
    await withdrawing(signed).click();
    await whyBox(page).fill('Read the card of another set.');
    await page.getByRole('button', { name: SENT }).click();
    await notes(page).getByText('Void: withdrawn by event').waitFor();
    await notes(page)
      .getByText(/^Withdrawn by .*: Read the card of another set\.$/)
      .waitFor();
    expect(await notes(page).getByText('It stands: nothing').count()).toBe(0);
    expect(await violationsOf(page)).toEqual([]);
    expect(faultsOf(page)).toEqual([]);
    await page.context().close();
  });

  it.each(DEVICES)('is legible $device, in each light, form and words', async (way) => {
    const page = await openPage(browser, server.address, { width: way.opened });
    await goTo(page, SET);
    await untilLive(page);
    await note(page).fill('Left open.');
    await page.getByRole('button', { name: 'Write the note' }).click();
    await withdrawing(notes(page).getByRole('listitem').filter({ hasText: 'Left open.' }))
      .first()
      .click();
    await whyBox(page).fill('x'.repeat(60));
    expect(await faultsInViews(page, way)).toEqual([]);
    await page.context().close();
  });
});

/** The processes in which this browser draws its pages. */
const renderers = async (): Promise<readonly number[]> => {
  const protocol = await browser.newBrowserCDPSession();
  const { processInfo } = await protocol.send('SystemInfo.getProcessInfo');
  await protocol.detach();
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
};

describe('a device that slept', () => {
  it('is stale at once, signs nothing meanwhile, and is live with all of it (4.9, 1)', async () => {
    const awake = await device();
    const before = new Set(await renderers());
    const asleep = await device();
    // A lid that is shut: nothing of the page runs, and its connection stays open.
    const own = (await renderers()).filter((id) => !before.has(id));
    expect(own.length).toBeGreaterThan(0);
    await listen(asleep);
    for (const id of own) process.kill(id, 'SIGSTOP');
    try {
      await rename(awake, 'Changed in the night');
      await new Promise((resolve) => setTimeout(resolve, SLEEP_MS));
    } finally {
      for (const id of own) process.kill(id, 'SIGCONT');
    }
    await expect.poll(() => nameOf(asleep).inputValue()).toBe('Changed in the night');
    await untilLive(asleep);
    const heard = (await heardBy(asleep)).filter((each, at, all) => each !== all[at - 1]);
    // Whatever was in its buffers: the first thing it says of itself is that it is stale.
    expect(heard[0], heard.join(', ')).toMatch(/^stale since .* \/ may not sign$/);
    expect(heard.at(-1)).toMatch(/^live since .* \/ may sign$/);
    for (const page of [awake, asleep]) await page.context().close();
  });
});

describe('a server that is started anew', () => {
  it('is offline meanwhile: nothing is signed, a note waits until a person sends it', async () => {
    const page = await device();
    await withdrawing(page).first().click();
    await whyBox(page).fill('Not now.');
    expect(await page.getByRole('button', { name: SENT }).isDisabled()).toBe(false);
    await server.halt();
    await expect.poll(() => said(page)).toMatch(/^offline since \d\d:\d\d:\d\d$/);
    expect(await signing(page).isDisabled()).toBe(true);
    expect(await page.getByRole('button', { name: SENT }).isDisabled()).toBe(true);
    await page.getByText('Not live: nothing can be withdrawn now.').waitFor();
    await note(page).fill('Written while the server was away.');
    await page.getByRole('button', { name: 'Write; it waits on this device' }).click();
    await notes(page).getByText('not yet sent: waits on this device').waitFor();
    await server.begin();
    await untilLive(page);
    // It is not sent by itself: a person says whether it still holds.
    await notes(page).getByRole('button', { name: 'Send it' }).click();
    await notes(page).getByText('Recorded, event').waitFor();
    await expect.poll(() => notes(page).getByText('not yet sent').count()).toBe(0);
    await notes(page)
      .getByText(/^Written while/)
      .waitFor();
    expect(
      await notes(page)
        .getByText(/^Written while/)
        .count(),
    ).toBe(1);
    await page.context().close();
  });
});

describe('a restored database', () => {
  it('is noticed: the device stops for a person and says why (4.9, 12)', async () => {
    const page = await device();
    await server.halt();
    const file = join(folder, 'demo.sqlite');
    copyFileSync(file, `${file}.yesterday`);
    await server.begin();
    await untilLive(page);
    await note(page).fill('Of today.');
    await page.getByRole('button', { name: 'Write the note' }).click();
    await notes(page).getByText('Recorded, event').waitFor();
    await server.halt();
    copyFileSync(`${file}.yesterday`, file);
    await server.begin();
    await page.getByText('the record of this house went backwards').waitFor();
    expect(await said(page)).toMatch(/^stale since/);
    expect(await signing(page).isDisabled()).toBe(true);
    expect(await violationsOf(page)).toEqual([]);
    // It is so after the page is loaded anew, and on a page that was not open.
    await goTo(page, SET);
    await page.getByText('the record of this house went backwards').waitFor();
    await page.getByRole('button', { name: 'I have asked: go on' }).click();
    await untilLive(page);
    expect(await page.getByText('went backwards').count()).toBe(0);
    await page.context().close();
  });
});

/** Runs in the page, whose cookies are those of the device. */
const MAKE_OWNER = async (owner: Readonly<Record<string, string>>): Promise<number> => {
  const headers = { 'content-type': 'application/json' };
  const init = { method: 'POST', headers, body: JSON.stringify(owner) };
  return (await fetch('/api/people/owner', init)).status;
};

describe('plain HTTP under a name of the house', () => {
  it('lacks what browsers withhold, and seven tabs answer (4.9, 10 and 11)', async () => {
    const own = mkdtempSync(join(tmpdir(), 'counterpoise-plain-'));
    writeFileSync(join(own, 'lan.json'), JSON.stringify({ listen: 'plain', names: [NAME] }));
    const plain = await startHouseServer({ COUNTERPOISE_DATA: own });
    const address = plain.address.replace('127.0.0.1', NAME);
    try {
      const first = await openPage(browser, address);
      const faults: string[] = [];
      first.context().on('weberror', (fault) => faults.push(String(fault.error())));
      let streams = 0;
      first.context().on('request', (request) => {
        if (request.resourceType() === 'eventsource') streams += 1;
      });
      const session = await (await fetch(`${plain.address}/api/session`)).json();
      const { ownerCode: code } = session as { readonly ownerCode: string };
      const owner = { name: 'Ada', passphrase: 'seven lines out of balance', code, device: 'rail' };
      await first.goto('/');
      expect(await first.evaluate(MAKE_OWNER, owner)).toBe(200);
      await goTo(first, SET);
      await untilLive(first);
      expect(await first.evaluate(() => isSecureContext)).toBe(false);
      const tabs = [first];
      while (tabs.length < 7) {
        const tab = await first.context().newPage();
        await goTo(tab, SET);
        await untilLive(tab);
        tabs.push(tab);
      }
      const last = tabs.at(-1) ?? first;
      await rename(last, 'From the seventh tab');
      for (const tab of tabs) {
        await expect.poll(() => nameOf(tab).inputValue()).toBe('From the seventh tab');
      }
      await note(last).fill('From the seventh tab.');
      await last.getByRole('button', { name: 'Write the note' }).click();
      await notes(first).getByText('From the seventh tab.').waitFor();
      expect(await signing(first).isDisabled()).toBe(true);
      await notes(first).getByText('Sign-offs are off').waitFor();
      expect(streams).toBeLessThan(6);
      expect(faults).toEqual([]);
      await first.context().close();
    } finally {
      await plain.stop();
      rmSync(own, { recursive: true, force: true });
    }
  });
});
