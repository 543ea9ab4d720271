/**
 * A house gets an owner, who lets a second person in on a device of their own; what is not of that
 * person's role is refused; and what they may is taken away at once.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { massCell, openItems, savedRevision, typeInto, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { resized } from './views.ts';

const OWNER = { name: 'Ada Frost', passphrase: 'seven lanterns over the weir' };
const HAND = { name: 'Cyra Bell', passphrase: 'a colder morning by the mill' };

const STALE = {
  status: 403,
  contentType: 'application/problem+json',
  body: JSON.stringify({ refusals: [{ code: 'ACC-007', path: '', found: '', accepted: '' }] }),
};

const SET = '/set/11?house=kestlemere&show=vell';

let folder: string;
let server: HouseServer;
let browser: Browser;
let owner: Page;
let hand: Page;
let link = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-people-'));
  [server, browser] = await Promise.all([
    startHouseServer({ COUNTERPOISE_DATA: folder }),
    openBrowser(),
  ]);
  owner = await openPage(browser, server.address, { selfCheck: 'never' });
  hand = await openPage(browser, server.address, { selfCheck: 'never', width: 390, light: 'dim' });
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

const signedIn = async (page: Page, { name, passphrase }: typeof OWNER): Promise<void> => {
  await page.getByLabel('Your name').fill(name);
  await page.getByLabel('Your passphrase').fill(passphrase);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
  await page.getByRole('link', { name: /^Signed in as/ }).waitFor();
};

const nameOn = (page: Page) => page.getByLabel('What hangs on set 11');

const rename = async (page: Page, name: string): Promise<void> => {
  await nameOn(page).fill(name);
  await page.keyboard.press('Enter');
};

const savedBy = async (revision: number): Promise<string | undefined> => {
  const answer = await owner.request.get('/api/documents/show:vell/revisions');
  const { revisions } = (await answer.json()) as {
    readonly revisions: readonly { readonly revision: number; readonly savedBy: string }[];
  };
  return revisions.find((each) => each.revision === revision)?.savedBy;
};

/** As if so many seconds had passed since anybody gave a secret; the server looks each time. */
const signedInAges = (seconds: number): void => {
  const database = new DatabaseSync(join(folder, 'demo.sqlite'));
  database.prepare('UPDATE session SET proved_at_ms = proved_at_ms - ?').run(seconds * 1000);
  database.close();
};

const status = async (page: Page, method: string, path: string, data?: object): Promise<number> =>
  (await page.request.fetch(path, { method, ...(data === undefined ? {} : { data }) })).status();

describe('people', () => {
  it('one person on the machine needs no sign-in, and can make themselves the owner', async () => {
    await goTo(owner, '/hang-list');
    await owner.getByRole('link', { name: 'People' }).click();
    await owner.getByText('needs no sign-in').waitFor();
    await owner.getByRole('link', { name: 'Make an owner' }).click();
    await expect.poll(() => owner.getByLabel('Code of this start').inputValue()).toMatch(/-/);
    expect(await violationsOf(owner)).toEqual([]);
    await owner.getByLabel('Your name').fill(OWNER.name);
    await owner.getByLabel('A passphrase').fill('short');
    await press(owner, 'Make me the owner');
    await owner.getByRole('alert').getByText('Too easy to guess').waitFor();
    await owner.getByLabel('A passphrase').fill(OWNER.passphrase);
    await press(owner, 'Make me the owner');
    await owner.getByRole('article', { name: OWNER.name }).waitFor();
    await goTo(owner, '/hang-list');
    await owner.getByRole('link', { name: `Signed in as ${OWNER.name}` }).waitFor();
  });

  it('then shows nothing to who has not signed in, not on the same machine either', async () => {
    await hand.goto('/hang-list');
    await hand.getByRole('heading', { level: 2, name: 'By name and passphrase' }).waitFor();
    expect(await hand.getByText('Harbour drop').count()).toBe(0);
    expect(await status(hand, 'GET', '/api/documents')).toBe(401);
    expect(await violationsOf(hand)).toEqual([]);
  });

  it('an invitation is a code for a camera and a link, and is good once', async () => {
    await owner.goto('/people');
    await owner.getByLabel('For whom').fill('the new rail hand');
    await owner
      .getByRole('radio', { name: /^Viewer/ })
      .last()
      .check();
    await press(owner, 'Make an invitation');
    await owner.getByRole('img', { name: 'Invitation as a code for a camera' }).waitFor();
    link = (await owner.getByText(/\/join#/).textContent()) ?? '';
    expect(link).toMatch(/\/join#[\w-]{43}$/);
    expect(await violationsOf(owner)).toEqual([]);
    await hand.goto(link);
    await hand.getByText('sees and prints everything').waitFor();
    await hand.getByLabel('Your name').fill(HAND.name);
    await hand.getByLabel('A passphrase').fill(HAND.passphrase);
    await press(hand, 'Join');
    await hand.getByRole('link', { name: /^Signed in as/ }).waitFor();
    await hand.getByRole('link', { name: HAND.name }).waitFor();
    await owner.goto(link);
    await owner.getByRole('alert').getByText('This invitation is not good').waitFor();
  });

  it('a role that only sees can save nothing, and lets nobody in', async () => {
    const asked = await hand.request.get('/api/documents/show:vell');
    const { document, revision } = await asked.json();
    const save = { kind: 'show', expectedRevision: revision, document, savedBy: 'x', why: 'x' };
    expect(await status(hand, 'PUT', '/api/documents/show:vell', save)).toBe(403);
    const invite = { name: 'a friend', role: 'own' };
    expect(await status(hand, 'POST', '/api/people/invitations', invite)).toBe(403);
    await hand.goto('/people');
    await hand.getByRole('article', { name: HAND.name }).waitFor();
    expect(await hand.getByRole('button', { name: /Role, devices/ }).count()).toBe(0);
    await hand.getByRole('article', { name: HAND.name }).getByText('Sign off for a task').click();
    await hand.getByRole('button', { name: 'Sign off', exact: true }).click();
    await hand.getByRole('alert').getByText('never for oneself').waitFor();
    expect(await violationsOf(hand)).toEqual([]);
  });

  it('a role that plans saves under its own name, from the moment it is given', async () => {
    await owner.goto('/people');
    const person = owner.getByRole('article', { name: HAND.name });
    await person.getByRole('button', { name: /Role, devices/ }).click();
    await person.getByRole('radio', { name: /^Planner/ }).click();
    await owner.getByText(`${HAND.name} has the role Planner now.`).waitFor();
    const asked = await hand.request.get('/api/documents/show:vell');
    const { document, revision } = await asked.json();
    const save = { kind: 'show', expectedRevision: revision, document, savedBy: 'x', why: 'x' };
    const saved = await hand.request.put('/api/documents/show:vell', { data: save });
    expect(await saved.json()).toMatchObject({ savedBy: HAND.name });
  });

  it('a sign-off says in words until when it holds, and is revoked in one tap', async () => {
    const person = owner.getByRole('article', { name: HAND.name });
    await person.getByRole('button', { name: /Sign off for a task/ }).click();
    await person
      .getByLabel('Task you have seen done')
      .selectOption({ label: 'Rail: flies balanced sets' });
    await person.getByRole('button', { name: 'Sign off', exact: true }).click();
    await person.getByText(/holds to the end of \d+ \w+ \d{4}/).waitFor();
    expect(await violationsOf(owner)).toEqual([]);
    await person.getByRole('button', { name: /^Revoke Rail/ }).click();
    await person.getByText('Signed off for no task.').waitFor();
  });

  it('a PIN is enough on a device that is known', async () => {
    await hand.goto('/people/devices');
    await hand.getByLabel('A new PIN').fill('270914');
    await press(hand, 'Set the PIN');
    await hand.getByText('You have a PIN on this device.').waitFor();
    await press(hand, 'Sign out on this device');
    await hand.getByRole('heading', { level: 2, name: HAND.name }).waitFor();
    await hand.getByLabel('PIN', { exact: true }).fill('111222');
    await press(hand, 'Sign in by PIN');
    await hand.getByRole('alert').getByText('does not go together').waitFor();
    await hand.getByLabel('PIN', { exact: true }).fill('270914');
    await press(hand, 'Sign in by PIN');
    await hand.getByRole('link', { name: /^Signed in as/ }).waitFor();
  });

  it('two people see each other’s edits, each saved under the own name', async () => {
    for (const page of [owner, hand]) await goTo(page, SET);
    const before = await savedRevision(owner, 'show:vell');
    await rename(owner, 'Clock tower, by the owner');
    await expect.poll(() => nameOn(hand).inputValue()).toBe('Clock tower, by the owner');
    await rename(hand, 'Clock tower, by the hand');
    await expect.poll(() => nameOn(owner).inputValue()).toBe('Clock tower, by the hand');
    expect(await savedBy(before + 1)).toBe(OWNER.name);
    expect(await savedBy(before + 2)).toBe(HAND.name);
    // Each device says by whom the other's is, as its history does.
    await goTo(hand, '/documents/show%3Avell?house=kestlemere&show=vell');
    await hand.getByText(OWNER.name).first().waitFor();
    // A planner signs nothing and withdraws nothing.
    await goTo(hand, SET);
    await hand.getByRole('button', { name: 'Sign the balance card as shown' }).click();
    await hand.getByText('Not recorded (LIV-001)').waitFor();
  });

  it('a sign-off asks who is there, where nobody has said so in the last minute', async () => {
    await owner.goto('/people/devices');
    await owner.getByLabel('A new PIN').fill('806152');
    await press(owner, 'Set the PIN');
    await owner.getByText('You have a PIN on this device.').waitFor();
    await goTo(owner, SET);
    signedInAges(61);
    const sign = owner.getByRole('button', { name: 'Sign the balance card as shown' });
    await sign.click();
    await owner.getByText(`the PIN or passphrase of ${OWNER.name}`).waitFor();
    expect(await owner.getByText('It stands: nothing').count()).toBe(0);
    for (const width of [1440, 390] as const) {
      await resized(owner, width);
      expect(await violationsOf(owner)).toEqual([]);
    }
    await resized(owner, 1440);
    const pin = owner.getByLabel('Your passphrase or PIN');
    await pin.fill('111222');
    await press(owner, 'Go on');
    await owner.getByRole('alert').getByText('does not go together').waitFor();
    await pin.fill('806152');
    await pin.press('Enter');
    await owner.getByText('It is you.').waitFor();
    // The PIN signs nothing: the person looks once more and signs.
    expect(await owner.getByText('It stands: nothing').count()).toBe(0);
    await sign.click();
    await owner.getByText(`Signed by ${OWNER.name} (own)`).waitFor();
    await owner.getByText('It stands: nothing').waitFor();
  });

  it('so does withdrawing one', async () => {
    signedInAges(61);
    await owner.getByRole('button', { name: 'Withdraw …' }).click();
    await owner.getByLabel('Why it is withdrawn').fill('Read too soon.');
    await press(owner, 'Withdraw it');
    await owner.getByText('To withdraw is a person’s word').waitFor();
    expect(await violationsOf(owner)).toEqual([]);
    await owner.getByLabel('Your passphrase or PIN').fill(OWNER.passphrase);
    await press(owner, 'Go on');
    await owner.getByText('It is you.').waitFor();
    await press(owner, 'Withdraw it');
    await owner.getByText(/^Withdrawn by Ada Frost, .*: Read too soon\.$/).waitFor();
  });

  it('signing a person out everywhere, and taking them out, holds at once', async () => {
    expect(await status(hand, 'GET', '/api/documents')).toBe(200);
    await owner.goto('/people');
    const person = owner.getByRole('article', { name: HAND.name });
    await person.getByRole('button', { name: /Role, devices/ }).click();
    await press(owner, `Sign ${HAND.name} out everywhere`);
    await owner.getByText('All those devices are signed out.').waitFor();
    expect(await status(hand, 'GET', '/api/documents')).toBe(401);
    await hand.goto('/hang-list');
    await signedIn(hand, HAND);
    await press(owner, `Take ${HAND.name} out`);
    await press(owner, `Yes, take ${HAND.name} out at once`);
    await person.waitFor({ state: 'detached' });
    expect(await status(hand, 'GET', '/api/documents')).toBe(401);
    await hand.goto('/hang-list');
    await hand.getByLabel('Your name').fill(HAND.name);
    await hand.getByLabel('Your passphrase').fill(HAND.passphrase);
    await hand.getByRole('button', { name: 'Sign in', exact: true }).click();
    await hand.getByRole('alert').getByText('does not go together').waitFor();
  });

  it('what is typed after a sign-in has ended is kept, and saved when one is back', async () => {
    await goTo(owner, '/hang-list?house=kestlemere&show=vell');
    const before = await savedRevision(owner, 'show:vell');
    await owner.request.delete('/api/session');
    const items = await openItems(owner, '11');
    await typeInto(owner, massCell(items, 'Clock tower flat'), '310 lb');
    await owner.keyboard.press('Enter');
    await owner.getByText('Nobody is signed in on this device any more').waitFor();
    await owner.getByRole('link', { name: 'Sign in' }).click();
    await signedIn(owner, OWNER);
    await untilSaved(owner, 'show:vell', before + 1);
  });

  it('a program asks with its token, until it is revoked', async () => {
    await owner.goto('/people/programs');
    await owner.getByLabel('Name of the program').fill('call sheet');
    await press(owner, 'Make a token');
    const token = (await owner.getByText(/^[\w-]{43}$/).textContent()) ?? '';
    const asks = async () =>
      (
        await hand.request.get('/api/documents', { headers: { authorization: `Bearer ${token}` } })
      ).status();
    expect(await asks()).toBe(200);
    expect(await violationsOf(owner)).toEqual([]);
    await press(owner, 'Revoke call sheet');
    await owner.getByText('good no longer').waitFor();
    expect(await asks()).toBe(401);
  });

  it('the machine is kept open where its owner says anew who they are', async () => {
    const fresh = await openPage(browser, server.address, { selfCheck: 'never' });
    expect(await status(fresh, 'GET', '/api/documents')).toBe(401);
    await owner.goto('/people');
    // What the server answers ten minutes after a sign-in; from then on it answers itself.
    await owner.route('**/api/people/this-machine', (route) => route.fulfill(STALE), { times: 1 });
    await press(owner, 'Keep it open: this machine is mine');
    await owner.getByLabel('Your passphrase or PIN').fill('not this one at all');
    await press(owner, 'Go on');
    await owner.getByRole('alert').getByText('does not go together').waitFor();
    expect(await violationsOf(owner)).toEqual([]);
    await owner.getByLabel('Your passphrase or PIN').fill(OWNER.passphrase);
    await press(owner, 'Go on');
    await owner.getByText('It is kept open').waitFor();
    expect(await status(fresh, 'GET', '/api/documents')).toBe(200);
    await fresh.context().close();
  });
});
