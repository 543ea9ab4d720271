/**
 * A drill in a real browser: a planted miscount ends in doubt where who learns counts, and lets the
 * set go where they read it off; the record of the house has no event of either.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

const DRILL = '/drill?house=kestlemere&show=vell';

let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const headOfRecord = async (page: Page): Promise<number> => {
  const answer = await page.request.get('/api/events');
  const { heartbeat } = (await answer.json()) as { heartbeat: { seq: number } };
  return heartbeat.seq;
};

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** Set 9 of the demo, two bricks fewer at the upper gallery than are counted aloud. */
const begin = async (page: Page): Promise<void> => {
  await goTo(page, DRILL);
  await page.getByLabel('Set', { exact: true }).selectOption('9');
  await page.getByLabel('Who learns is at the post').selectOption('headFly');
  const fault = page.getByLabel('Fault that is planted');
  const wanted = fault.locator('option', { hasText: /step 4,.*2 bricks fewer/ });
  await fault.selectOption((await wanted.getAttribute('value')) ?? '');
  await button(page, 'Begin the drill').click();
};

const TURNS = 60;

/** Lets the crew go on, and does what is told, until a count is asked for. */
const untilCount = async (page: Page): Promise<void> => {
  const asked = page.getByLabel(/Bricks on the arbor as you counted/);
  for (let turn = 0; turn < TURNS && (await asked.count()) === 0; turn++) {
    await page.locator('.drill-next').click();
  }
  await asked.waitFor();
};

describe('a drill', () => {
  it('shows a miscount to who counts, and stands in its frame, with nothing recorded', async () => {
    const page = await openPage(browser, server.address, { selfCheck: 'never' });
    const sent: string[] = [];
    page.on('request', (request) => {
      if (request.method() !== 'GET') sent.push(`${request.method()} ${request.url()}`);
    });
    await begin(page);
    const before = await headOfRecord(page);
    await untilCount(page);
    await button(page, 'Go and look').click();
    await page.getByText('5 plates: 3 old cast of pipe weight; 2 full').waitFor();
    await page.getByLabel(/Bricks on the arbor as you counted/).fill('5');
    await button(page, 'Give this count').click();
    const ended = page.getByRole('region', { name: 'How the drill ended' });
    await ended.getByText(/Caught by the count, Head flyman, at step 5/).waitFor();
    await ended.getByText('7 bricks are told to be on the arbor, and 5 are on it.').waitFor();
    await ended.getByText(/nothing would have held it at step 5.*kJ, as 1 full let fall/).waitFor();
    const frame = page.getByRole('region', { name: /^DRILL/ });
    expect(await frame.locator('.drill-practice').count()).toBe(1);
    expect(await violationsOf(page)).toEqual([]);
    expect(await headOfRecord(page)).toBe(before);
    expect(sent.filter((each) => !each.includes('/api/self-check'))).toEqual([]);
    await page.context().close();
  });

  it('lets the set go where the count is read off, and says what it set free', async () => {
    const page = await openPage(browser, server.address, { width: 390, selfCheck: 'never' });
    await begin(page);
    await untilCount(page);
    await button(page, 'Give the count of the record, 7').click();
    const ended = page.getByRole('region', { name: 'How the drill ended' });
    for (let turn = 0; turn < TURNS && (await ended.count()) === 0; turn++) {
      await page.locator('.drill-next').click();
    }
    await ended.getByText(/Danger: not held: the batten ran in at step 5/).waitFor();
    await ended.getByText(/It set free 1\.\d+\skJ, as 1 full let fall/).waitFor();
    await page.context().close();
  });

  it('has a STOP at first touch that tells nobody in the house', async () => {
    const page = await openPage(browser, server.address, { width: 390, selfCheck: 'never' });
    await begin(page);
    const stop = button(page, /^STOP/);
    expect((await stop.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(100);
    await stop.click();
    await page.getByText(/Nothing was wrong, and the lead lifted it/).waitFor();
    await page.context().close();
  });
});
