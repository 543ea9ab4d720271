/**
 * A call led from the desk: opened, joined by code from a second device, an order told, a set
 * doubted and found again, tagged and given back, pull-tested, counted; closed, and what the record
 * says after it. Looked at in every size and light on the way.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews } from './views.ts';

const IN_SHOW = '?house=kestlemere&show=vell';
const [DESK, PHONE] = DEVICES;

let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const faults: string[] = [];

const device = async (path: string, width: 1440 | 390 = 1440): Promise<Page> => {
  const page = await openPage(browser, server.address, { width });
  page.on('pageerror', ({ message }) => faults.push(message));
  await goTo(page, `${path}${IN_SHOW}`);
  return page;
};

const to = (page: Page, path: string): Promise<void> => goTo(page, `${path}${IN_SHOW}`);
const press = (page: Page | Locator, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).click();
const opened = async (page: Page, part: string): Promise<void> => {
  const box = page.locator('details').filter({ has: page.locator('summary', { hasText: part }) });
  if ((await box.getAttribute('open')) === null) await box.locator('summary').click();
};
/**
 * STOP stays in sight over what is scrolled beneath it, and a person scrolls on. For the look it is
 * laid where it stands at the end of the page, and covers nothing.
 */
const faultsAtRest = async (page: Page, views: (typeof DEVICES)[number]) => {
  await page
    .getByRole('button', { name: /STOP/ })
    .last()
    .evaluate((stop) => {
      stop.style.position = 'static';
    });
  return faultsInViews(page, views);
};
/** A key held until the button has taken it, or is no more. */
const hold = async (page: Page, name: RegExp): Promise<void> => {
  const button = page.getByRole('button', { name });
  await expect.poll(() => button.isEnabled()).toBe(true);
  await button.focus();
  await page.keyboard.down('Enter');
  const ways = () => button.evaluateAll((all) => all.map((each) => each.dataset['hold']).join());
  await expect.poll(ways).toMatch(/^(given)?$/);
  await page.keyboard.up('Enter');
};
const form = (page: Page, name: RegExp): Locator => page.getByRole('form', { name });
const recorded = (within: Locator): Promise<void> => within.getByText('Recorded, event').waitFor();
const onWall = (page: Page, set: string): Promise<string | null> =>
  page
    .getByRole('region', { name: 'The wall: every set as it stands in the call' })
    .locator(`[data-set="${set}"] a`)
    .getAttribute('aria-label');

let head: Page;
let rail: Page;

describe('a call led from the desk', () => {
  it('is opened on named documents, and says what is known and what is not', async () => {
    head = await device('/live/open');
    await head.getByText('It advises and records.').waitFor();
    await head.getByText('Show: The Clockmaker of Vell, revision 1').waitFor();
    await head.getByText('Set M1: not known is').waitFor();
    expect(await faultsAtRest(head, DESK)).toEqual([]);
    const open = head.getByRole('button', { name: 'Open the call as head flyman' });
    expect(await open.isDisabled()).toBe(true);
    await head.getByLabel('Your name').fill('Ada');
    await open.click();
    await head.getByRole('heading', { level: 1, name: 'Overview of the call' }).waitFor();
    await expect.poll(() => onWall(head, 'M1')).toContain('UNKNOWN');
  });

  it('is joined by a second device with a code, which is good once', async () => {
    await to(head, '/live/posts');
    await head.getByLabel('For the post').selectOption({ label: 'Rail' });
    await press(head, 'Make a joining code');
    const code = (await head.locator('.call-code-large').textContent()) ?? '';
    await head.getByRole('img', { name: 'Joining code of Rail as QR' }).waitFor();
    expect(await violationsOf(head)).toEqual([]);
    rail = await device('/live/join', 390);
    await rail.getByLabel('Code of the post').fill(code);
    await rail.getByLabel('Your name').fill('Bo');
    await press(rail, 'Take the post');
    await rail.getByRole('heading', { name: 'Rail' }).first().waitFor();
    const post = head.getByRole('listitem').filter({ has: head.getByText('Bo', { exact: true }) });
    await post.getByRole('heading', { name: 'Rail' }).waitFor();
    const late = await device('/live/join');
    await late.getByLabel('Code of the post').fill(code);
    await late.getByLabel('Your name').fill('Cy');
    await press(late, 'Take the post');
    await late.getByText('This code is not good').waitFor();
    await late.context().close();
  });

  it('has an order worked out from how the set truly stands, and told to all', async () => {
    await to(head, '/live/set/9');
    await opened(head, 'Order of work');
    await press(head, 'Work out the strike');
    await press(head, /Tell this order to all posts/);
    await head.getByText(/Step 1 of \d+: Close the run of set 9/).waitFor();
    await expect.poll(() => onWall(head, '9')).toMatch(/\d+ TO DO/);
    await to(rail, '/live/set/9');
    await rail.getByText(/Step 1 of \d+/).waitFor();
  });
});

describe('a set that was touched by another crew', () => {
  it('is unknown from then on, on every device, and no order stands', async () => {
    await opened(rail, 'Doubt it');
    await form(rail, /Doubt it/)
      .getByLabel('Why')
      .selectOption({ label: 'touched by another crew' });
    await press(rail, 'It is not known any more');
    await head.getByText('touched by another crew.').waitFor();
    await head.getByText('Only finding it again').waitFor();
    await expect.poll(() => onWall(head, '9')).toContain('UNKNOWN');
    await opened(head, 'Order of work');
    await head.getByText('An order begins from a set that is known').waitFor();
    expect(await head.getByRole('button', { name: 'Work out the strike' }).isDisabled()).toBe(true);
    expect(await faultsAtRest(rail, PHONE)).toEqual([]);
    await to(head, '/live/head');
    await head.getByRole('region', { name: 'Unknown' }).getByText('Harbour drop').waitFor();
    expect(await faultsAtRest(head, DESK)).toEqual([]);
  });

  it('is found again as a whole, by two people, with nothing filled in from before', async () => {
    await to(head, '/live/set/9');
    const find = form(head, /Found: how set 9 stands now/);
    const send = find.getByRole('button', { name: 'Record how it was found' });
    await find.getByText('Still to say: the height of the batten').waitFor();
    for (const plate of ['old cast, pipe weight', 'old cast, pipe weight', 'old cast, pipe weight'])
      await press(find, `One ${plate}`);
    for (let full = 0; full < 5; full++) await press(find, 'One full, show');
    await press(find, 'One half, show');
    await find.getByLabel('Height of the batten now').fill('28 ft 3 in');
    await find.getByLabel('Rope lock').selectOption({ label: 'closed' });
    await find.getByLabel('Ring of the lock').selectOption({ label: 'on' });
    await find.getByLabel('Collar on the rods').selectOption({ label: 'secured' });
    await find.getByLabel('What carries it').selectOption({ label: 'its arbor, in use' });
    await press(find, 'All of it hangs in the air');
    await press(find, 'Nothing else holds it');
    expect(await send.isDisabled()).toBe(true);
    await find.getByLabel('How all this is known').selectOption({ label: 'counted' });
    await find.getByLabel('Second person who counted').fill('Bo');
    await send.click();
    const stands = head.getByRole('region', { name: 'How it stands' });
    await stands.getByText('9 plates: 3 old cast of pipe weight; 5 full, 1 half').waitFor();
    await stands.getByText(/^counted .* by .*; second person Bo$/).waitFor();
    // One full brick fewer than the show has on set 9: the tally says so (C85).
    await to(head, '/live/close');
    await head.getByText('9 plates on, 10 by the show').waitFor();
  });
});

describe('what people measure and tag', () => {
  it('is recorded, and a tag is given back by another than who repaired', async () => {
    await to(head, '/live/set/9');
    await opened(head, 'Pull test and weighing');
    const pull = form(head, /Pull test of set 9/);
    await pull.getByLabel('Pull that takes it out').fill('30 lbf');
    await pull.getByLabel('Pull that takes it in').fill('10');
    await pull.getByLabel('With the batten at').fill('28 ft 3 in');
    await press(pull, 'Record the pull test');
    // A bare number has no unit: nothing is guessed, and nothing was sent.
    await pull.getByText('not understood, nothing was sent').waitFor();
    await pull.getByLabel('Pull that takes it in').fill('10 lbf');
    await press(pull, 'Record the pull test');
    await recorded(pull);
    await pull.getByText('In this call: 30 lbf out, 10 lbf in').waitFor();

    await to(head, '/live/set/17');
    await opened(head, 'Tag');
    const place = form(head, /Tag on set 17/);
    await place.getByLabel('Number of the tag').fill('31');
    await place.getByLabel('Reason on the tag').fill('rope frayed');
    await place.getByLabel('What it means').selectOption({ index: 1 });
    await press(place, 'The tag is on it');
    await expect.poll(() => onWall(head, '17')).toContain('LOCKED OUT, tag 31');
    const back = form(head, /Give the tag back/);
    await back.getByLabel('Number on the tag').fill('31');
    await back.getByLabel('Repaired by').fill('Ada');
    await back.getByLabel('What was done and tried').fill('new hand line, tried with a brick');
    await press(back, 'I have looked: the tag comes off');
    await back.getByText('Not recorded').waitFor();
    await back.getByLabel('Repaired by').fill('Cy');
    await press(back, 'I have looked: the tag comes off');
    await form(head, /Tag on set 17/).waitFor();
    await expect.poll(() => onWall(head, '17')).not.toContain('LOCKED OUT');
    await head.getByText(/Tag 31 given back, repaired by Cy/).waitFor();
    expect(await violationsOf(head)).toEqual([]);
  });

  it('counts the loose bricks of a gallery anew; a kind left empty is not known', async () => {
    await to(head, '/live/head');
    const galleries = head.getByRole('region', { name: 'Loose bricks on the galleries' });
    await galleries.locator('summary').last().click();
    const count = form(head, /Count the Mid loading gallery anew/);
    await count.getByLabel('full, loose').fill('18');
    await count.getByLabel('half, loose').fill('12');
    await press(count, 'Record the count');
    await galleries.getByText('full: 18; half: 12; old cast: not counted').waitFor();
  });

  it('is stopped by anybody, and goes on by the head flyman and whoever called it', async () => {
    await to(rail, '/live/head');
    await press(rail, /^STOP/);
    await head.getByRole('alert').filter({ hasText: 'By Bo, Rail' }).waitFor();
    const lift = head.getByRole('button', { name: /lift this STOP/ });
    expect(await lift.isDisabled()).toBe(true);
    await press(head, 'I have heard it');
    await hold(rail, /as far as I am concerned/);
    await head.getByText('Bo, who called it, says that work may go on.').waitFor();
    // Without sign-in nobody can tell the two apart, so somebody stands in by name.
    expect(await lift.isDisabled()).toBe(true);
    await head.getByLabel('A substitute for them, by name').fill('Cy');
    await head.getByLabel('and the reason').fill('two devices without sign-in');
    expect(await faultsAtRest(head, DESK)).toEqual([]);
    await hold(head, /lift this STOP/);
    await head.getByRole('alert').filter({ hasText: 'By Bo, Rail' }).waitFor({ state: 'detached' });
  });
});

type StateDocument = {
  readonly by: string;
  readonly sets: Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>;
  readonly galleries: Readonly<Record<string, { readonly stock: unknown } | undefined>>;
};

describe('the call closed', () => {
  it('leaves a record of how the sets stand, and what it does not know as unknown', async () => {
    await to(head, '/live/set/11');
    await opened(head, 'Doubt it');
    await form(head, /Doubt it/)
      .getByLabel('or in your words')
      .fill('somebody was at it');
    await press(head, 'It is not known any more');
    await head.getByText('somebody was at it.').waitFor();
    await to(head, '/live/close');
    await head.getByText('9 plates on, 10 by the show').waitFor();
    expect(await faultsAtRest(head, DESK)).toEqual([]);
    await head.getByLabel('In your words').fill('set 9 is a brick short');
    await press(head, 'Close the call and write the record');
    await head.getByRole('heading', { level: 1, name: 'Open a call' }).waitFor();
    const answer = await head.request.get('/api/documents/state:kestlemere');
    const { document } = (await answer.json()) as { readonly document: StateDocument };
    const { sets, galleries } = document;
    expect(sets['9']).toMatchObject({
      stack: [
        { kind: 'O', count: 3, tag: 'pipe' },
        { kind: 'F', count: 5, tag: 'show' },
        { kind: 'H', count: 1, tag: 'show' },
      ],
      knowledge: { basis: 'counted', second: 'Bo' },
    });
    expect(sets['9']?.['pullTest']).not.toBe(undefined);
    expect(sets['11']?.['stack'] ?? null).toBe(null);
    expect(sets['17']?.['tag'] ?? null).toBe(null);
    expect(galleries['mid']?.stock).toEqual({ F: 18, H: 12 });
    // The wall is of the record again, which now has it.
    await head.getByRole('region', { name: 'The wall: every set as recorded' }).waitFor();
    expect(faults).toEqual([]);
    for (const page of [head, rail]) await page.context().close();
  });
});
