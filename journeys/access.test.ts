/**
 * Screens against axe-core, the reference engine for WCAG checks by machine, in every size and
 * light; and that no screen is wider than the device.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, LIGHTS, openBrowser, openPage, WIDTHS } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const SCREENS = [
  '/hang-list',
  '/set/11',
  '/set/M1',
  '/sheets/balance-card/11',
  '/house?at=trim%3Aplaying',
  '/house/plan',
  '/house/limits',
  '/house/enter',
  '/house/enter/bricks',
  '/house/enter/sets?field=lineSets.11.arbor.panAtLow',
  '/house/found',
  '/house/found/11',
  '/which-set?piece=9',
  '/set/11/what-if?if=%5B%5B%5B%22items%22%2C0%2C%22takeoff%22%2C%22mass%22%2C%22value%22%5D%2C%22700%20lb%22%5D%5D',
  '/set/11/beside?other=36',
  '/another-house?to=skelderwick',
  '/self-check',
  '/documents/bring-in',
  '/documents/take-out?at=trim%3Aplaying',
  '/documents',
  '/documents/state%3Akestlemere',
];

const VIEWS = WIDTHS.flatMap((width) => LIGHTS.map((light) => ({ width, light })));

describe.each(VIEWS)('$width px, $light', (view) => {
  let page: Page;
  beforeAll(async () => {
    page = await openPage(browser, server.address, view);
  });
  afterAll(() => page.context().close());

  it.each(SCREENS)('%s', async (path) => {
    await goTo(page, path);
    expect(await violationsOf(page)).toEqual([]);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide, 'pixels that the page is wider than the screen').toBe(0);
  });
});
