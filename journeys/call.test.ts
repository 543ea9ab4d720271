/**
 * Four people on four devices run a whole load of set 11 of the demo, the tower flat, from both
 * galleries: with a count that differs, a STOP, a server that is started anew, and a device that
 * loses the house, whose holder writes down what was done.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isBrickStep, nextFor, platesOf } from '#call';
import { postOf } from '#rules';
import type { Step } from '#state';
import { violationsOf } from './axe.ts';
import {
  allClear,
  ask,
  asked,
  at,
  BARE,
  closeHouse,
  doStep,
  faults,
  find,
  HANDS,
  hold,
  houseNow,
  IN_SHOW,
  invite,
  leaveBare,
  makeOwner,
  nextStep,
  onePlate,
  openHouse,
  PEOPLE,
  PIPE,
  pageOf,
  press,
  report,
  SET,
  second,
  server,
  setNow,
  tellPlan,
  upTo,
} from './call-crew.ts';
import { DEVICES, faultsInViews } from './views.ts';

const [WITH_MOUSE, ON_PHONE] = DEVICES;
const looked = (page: Page, device: (typeof DEVICES)[number]): Promise<readonly string[]> =>
  faultsInViews(page, device);

beforeAll(openHouse);
afterAll(closeHouse);

describe('a load with the crew', () => {
  it('begins with people who have signed in, and are signed off for their work', async () => {
    await makeOwner();
    await leaveBare();
    for (const person of PEOPLE) await invite(person);
  });

  it('is opened by the head flyman, who lets each in at a post by a code', async () => {
    const head = pageOf('head');
    await head.goto(`/live${IN_SHOW}`);
    await head.getByText('No call is open.').waitFor();
    expect(await violationsOf(head)).toEqual([]);
    await head.getByRole('link', { name: 'Open a call' }).click();
    await press(head, 'Open the call as head flyman');
    await head.getByRole('heading', { level: 1, name: 'Overview of the call' }).waitFor();
    for (const person of PEOPLE) {
      if (person === 'head') continue;
      for (const [post, words] of HANDS[person].posts) {
        const code = { post, answersFor: false };
        const given = await asked<{ readonly link: string }>(head, 'POST', '/api/call/codes', code);
        const page = pageOf(person);
        await page.goto('/hang-list');
        await page.goto(given.link);
        await page.getByText(`Signed in on this device: ${HANDS[person].name}`).waitFor();
        expect(page.url()).not.toContain('#');
        await press(page, 'Take the post');
        await page.getByRole('heading', { level: 1, name: words }).waitFor();
      }
    }
    const { posts } = await houseNow();
    expect(Object.keys(posts)).toHaveLength(9);
    await pageOf('rail').getByText('Nothing for this post now').waitFor();
    expect(await looked(pageOf('rail'), WITH_MOUSE)).toEqual([]);
  });

  it('refuses whoever is not signed off for a post', async () => {
    const code = { post: 'bullLine', answersFor: false };
    const given = await asked<{ readonly link: string }>(
      pageOf('head'),
      'POST',
      '/api/call/codes',
      code,
    );
    const deck = pageOf('deck');
    await deck.goto('/hang-list');
    await deck.goto(given.link);
    await press(deck, 'Take the post');
    await deck.getByText('You are not signed off for this post.').waitFor();
    expect(await violationsOf(deck)).toEqual([]);
    await deck.goto(`/live/post/deck${IN_SHOW}`);
  });

  it('finds the set as it is before anything is planned from it', async () => {
    await find(BARE);
    await tellPlan();
    const step = await nextStep();
    expect(nextFor(await houseNow(), 'deck').next).toMatchObject([{ set: SET, step }]);
    const page = await at('deck');
    await page.getByText('Tie on Clock tower flat').waitFor();
    await page.getByText('beside it: 10 empty, 12 empty').waitFor();
    expect(await looked(page, WITH_MOUSE)).toEqual([]);
  });

  it('puts the set in doubt at every post where two counts differ', async () => {
    const step = await upTo(({ act }) => act === 'fly');
    const there = platesOf((await setNow()).standing?.stack ?? []);
    await ask(step);
    const head = await at('headFly');
    await head.getByText('Rail, Bo Lind, asks for your word.').waitFor();
    expect(await looked(head, WITH_MOUSE)).toEqual([]);
    await second(there + 1);
    expect(await setNow()).toMatchObject({ standing: null, leave: null, plan: null });
    for (const post of ['rail', 'deck', 'gallery:upper']) {
      const page = await at(post);
      await page.getByText('Set 11 is UNKNOWN').waitFor();
    }
    expect(await looked(pageOf('gallery'), ON_PHONE)).toEqual([]);
    expect(await looked(pageOf('rail'), WITH_MOUSE)).toEqual([]);
  });
});

describe('a set in doubt', () => {
  it('is found again by counting, and planned again from how it truly stands', async () => {
    const { last } = await setNow();
    const bricks = (kind: string): number =>
      (last?.stack ?? []).reduce(
        (sum, run) => sum + (run.kind === kind && run.tag === 'show' ? run.count : 0),
        0,
      );
    const plates = [PIPE, ['half, show', bricks('H')], ['full, show', bricks('F')]] as const;
    await find({ plates, flat: 'attached, slack' });
    await tellPlan();
    expect(await setNow()).toMatchObject({ held: 'held', doubt: null });
    expect(await pageOf('rail').getByText('Set 11 is UNKNOWN').count()).toBe(0);
  });
});

describe('while bricks are handled', () => {
  let step: Step;

  it('every post is told to STOP; who called it and the head flyman resume it', async () => {
    step = await upTo((each) => isBrickStep(each) && each.count > 3);
    const [rail, head, deck] = [pageOf('rail'), pageOf('head'), pageOf('deck')];
    await allClear();
    await ask(step);
    await second();
    await onePlate(step, 1);
    const gallery = await at(postOf(step));
    expect(await looked(gallery, ON_PHONE)).toEqual([]);
    await at('rail');
    await press(rail, /^STOP/);
    for (const page of [gallery, deck]) {
      await page.getByText('By Bo Lind, Rail').waitFor();
      expect(await page.getByRole('button', { name: /plate 2 on/ }).count()).toBe(0);
      await press(page, /I have heard it/);
    }
    await head.goto(`/live/head${IN_SHOW}`);
    await press(head, 'I have heard it');
    await rail.getByRole('button', { name: /^STOP heard by all 9/ }).waitFor();
    expect(await looked(gallery, ON_PHONE)).toEqual([]);
    expect(await looked(rail, WITH_MOUSE)).toEqual([]);
    await hold(rail, /Work may go on/);
    await hold(head, /lift this STOP/);
    await gallery.getByRole('button', { name: /plate 2 on/ }).waitFor();
    expect((await houseNow()).stops).toEqual([]);
  });

  it('a server that is started anew has every post go on where it was', async () => {
    await onePlate(step, 2);
    const gallery = await at(postOf(step));
    await server().halt();
    await gallery.getByText(/^not live since/).waitFor();
    await gallery.getByRole('button', { name: /^SHOUT STOP/ }).waitFor();
    expect(await gallery.getByRole('button', { name: /plate 3 on/ }).count()).toBe(0);
    await gallery.getByText('NOT LIVE.', { exact: true }).waitFor();
    await gallery.getByText('Leave had been given when this device last heard.').waitFor();
    expect(await gallery.getByText('do it now').count()).toBe(0);
    await server().begin();
    await gallery.getByRole('button', { name: /plate 3 on/ }).waitFor();
    for (let so = 3; isBrickStep(step) && so <= step.count; so += 1) await onePlate(step, so);
    await report(step);
  });

  it('a device that loses the house asks nothing, and its note waits for people', async () => {
    const deck = await at('watcher');
    await deck.context().setOffline(true);
    // The stream that stands is not cut by it: the page looks again, as after a sleep.
    await deck.evaluate(() => document.dispatchEvent(new Event('resume')));
    await deck.getByRole('button', { name: /^SHOUT STOP/ }).waitFor();
    await deck.getByText('NOT LIVE.', { exact: true }).waitFor();
    expect(await looked(deck, WITH_MOUSE)).toEqual([]);
    await deck.getByLabel('It is about').selectOption({ label: 'set 11' });
    await deck.getByLabel('Note', { exact: true }).fill('watched it out by eye, nothing touched');
    await press(deck, 'Write; it waits on this device');
    await press(deck, /^SHOUT STOP/);
    await deck.getByText('NOT SENT: shout it').waitFor();
    expect((await houseNow()).stops).toEqual([]);
    await deck.context().setOffline(false);
    await deck.evaluate(() => document.dispatchEvent(new Event('resume')));
    await deck.getByText('Live', { exact: true }).waitFor();
    // It was not sent by itself, and changes nothing until somebody sends it.
    await deck.getByRole('region', { name: 'Notes that wait on this device' }).waitFor();
    await press(deck, 'Send it');
    await deck
      .getByRole('region', { name: 'Notes that wait on this device' })
      .waitFor({ state: 'detached' });
  });

  it('a note of paper keeps the set from going on until two people have settled it', async () => {
    const next = await nextStep();
    await expect.poll(async () => (await setNow()).notes.length).toBe(1);
    const page = await at(postOf(next));
    await page.getByText('CAL-023').waitFor();
    const head = pageOf('head');
    await head.goto(`/live/set/${SET}${IN_SHOW}`);
    await head.getByText('watched it out by eye, nothing touched').first().waitFor();
    await head.getByLabel('What you both saw').fill('as the record has it');
    await head.getByLabel('Second person, by name').fill(HANDS.deck.name);
    await press(head, /Nothing changed: settle note/);
    await expect.poll(async () => (await setNow()).notes).toEqual([]);
  });

  it('and ends as it was planned, on both galleries, with nothing left closed', async () => {
    for (let limit = 0; limit < 40; limit += 1) {
      const { plan } = await setNow();
      expect(plan).not.toBeNull();
      if (plan === null || plan.done === plan.steps.length) break;
      await doStep(await nextStep());
    }
    // What was closed before the doubt no order opens again: its marshals do, on the lead's word.
    for (const { zone } of (await houseNow()).zones) {
      const step = { act: 'reopen', zone } as const;
      const page = await at(postOf(step));
      await page.getByText('It is opened on the word of the lead alone.').waitFor();
      await ask(step);
      await second();
      await hold(await at(postOf(step)), /done as told$/);
      const key = JSON.stringify(zone);
      const keys = async () => (await houseNow()).zones.map((each) => JSON.stringify(each.zone));
      await expect.poll(keys).not.toContain(key);
    }
    const now = await houseNow();
    const set = now.sets[SET];
    expect(set?.standing).toMatchObject({ items: { flat: 'flying' }, closed: [] });
    expect(platesOf(set?.standing?.stack ?? [])).toBe(3 + 26);
    const overrides = set?.overrides ?? [];
    expect(overrides.length).toBeGreaterThan(0);
    for (const { why, rules, second: by } of overrides) {
      expect({ why, rules }).toEqual({ why: 'weighed last season', rules: ['CAL-024'] });
      expect(by).toMatchObject({ is: 'device', post: 'headFly' });
    }
    expect(now.galleries).toMatchObject({
      upper: { stock: { F: 27, H: 11 } },
      mid: { stock: { F: 28, H: 12 } },
    });
    expect(now.zones).toEqual([]);
    expect(faults).toEqual([]);
  });
});
