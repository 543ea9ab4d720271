/**
 * Screens against axe-core, the reference engine for WCAG checks by machine, in every size and
 * light; that no screen is wider than the device; and that nothing is cut off where the text is
 * twice as large. (WCAG 2.2, success criterion 1.4.4, resize text, from memory.)
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { SCREENS } from './screens.ts';
import { DEVICES, enlarged, faultsInViews, tooWide } from './views.ts';

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

describe.each(DEVICES)('$device', (device) => {
  let page: Page;
  beforeAll(async () => {
    page = await openPage(browser, server.address, { width: device.opened });
  });
  afterAll(() => page.context().close());

  it.each(SCREENS)('%s, by day and dim, and in large text', async (path) => {
    await goTo(page, path);
    expect(await faultsInViews(page, device)).toEqual([]);
    await enlarged(page);
    const size = await page.evaluate(() => getComputedStyle(document.body).fontSize);
    expect(size).toBe('32px');
    expect(await tooWide(page), 'pixels wider than the screen in large text').toBe(0);
    expect(await cutOff(page)).toEqual([]);
  });
});
