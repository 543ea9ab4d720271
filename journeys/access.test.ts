/**
 * Screens against axe-core, the reference engine for WCAG checks by machine, in every size and
 * light; and that no screen is wider than the device.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { COLOURS, violationsOf } from './axe.ts';
import { goTo, type Light, openBrowser, openPage, WIDTHS } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { SCREENS } from './screens.ts';

let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** As the choice of light does it, without loading the screen a second time. */
const lit = (page: Page, theme: Light): Promise<void> =>
  page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen;
  }, theme);

describe.each(WIDTHS)('%i px', (width) => {
  let page: Page;
  beforeAll(async () => {
    page = await openPage(browser, server.address, { width });
  });
  afterAll(() => page.context().close());

  it.each(SCREENS)('%s, by day and dim', async (path) => {
    await goTo(page, path);
    await lit(page, 'day');
    expect(await violationsOf(page), 'by day').toEqual([]);
    await lit(page, 'dim');
    expect(await violationsOf(page, COLOURS), 'dim').toEqual([]);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide, 'pixels that the page is wider than the screen').toBe(0);
  });
});
