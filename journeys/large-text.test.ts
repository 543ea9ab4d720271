/**
 * Text twice as large, as a person sets it in the browser: nothing is cut off, and no screen is
 * wider than the device. (WCAG 2.2, success criterion 1.4.4, resize text, from memory.)
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
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

/** Words in a box that hides what does not fit into it, with no way to scroll there. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
    return [...document.querySelectorAll<HTMLElement>('main *, header *')].flatMap((box) => {
      // What only a screen reader reads lies in a box of one pixel.
      const isForEyes = box.checkVisibility() && box.clientWidth > 1 && box.clientHeight > 1;
      // A field shows the rest of a long text when it is gone into.
      if (box.matches('input')) return [];
      const { overflowX, overflowY } = getComputedStyle(box);
      const isCut =
        (hides(overflowX) && box.scrollWidth > box.clientWidth + 2) ||
        (hides(overflowY) && box.scrollHeight > box.clientHeight + 2);
      if (!isForEyes || !isCut || box.closest('svg') !== null) return [];
      return [`${box.tagName} ${box.className}: ${box.textContent?.slice(0, 40)}`];
    });
  });

/** On the narrowest, where there is least room for it. */
const WIDTH = 390;

describe(`at ${WIDTH} px`, () => {
  let page: Page;
  beforeAll(async () => {
    page = await openPage(browser, server.address, { width: WIDTH });
    await page.addInitScript(() => {
      addEventListener('DOMContentLoaded', () => {
        document.documentElement.style.fontSize = '200%';
      });
    });
  });
  afterAll(() => page.context().close());

  it.each(SCREENS)('%s', async (path) => {
    await goTo(page, path);
    const size = await page.evaluate(() => getComputedStyle(document.body).fontSize);
    expect(size).toBe('32px');
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide, 'pixels that the page is wider than the screen').toBe(0);
    expect(await cutOff(page)).toEqual([]);
  });
});
