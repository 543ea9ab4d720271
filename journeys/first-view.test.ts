/** What a browser fetches before the hang list can be read: script and style, compressed. */
import { gzipSync } from 'node:zlib';
import type { Browser, Response } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from './browser.ts';
import { grid } from './hang-list.ts';
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

/** bytes; a house's tablet on a weak network has it within some seconds. */
const MOST = 250_000;

describe('the first useful view', () => {
  it('takes at most 250 kB of script and style, compressed', async () => {
    // A page that is never idle: what idle time is for comes after the list stands.
    const page = await openPage(browser, server.address, { selfCheck: 'never' });
    const bodies: Promise<readonly [string, number]>[] = [];
    const count = (response: Response): void => {
      const type = response.request().resourceType();
      if (type !== 'script' && type !== 'stylesheet') return;
      bodies.push(
        response.body().then((body) => [response.url(), gzipSync(body, { level: 9 }).length]),
      );
    };
    page.on('response', count);
    await page.goto('/hang-list');
    await grid(page).getByRole('row').nth(45).waitFor();
    // What comes from here on is for later, and may be cut off by the end of the journey.
    page.off('response', count);
    const sizes = await Promise.all(bodies);
    const kilobytes = sizes.map(([url, size]) => `${url.split('/').pop()} ${size}`);
    const total = sizes.reduce((sum, [, size]) => sum + size, 0);
    expect(sizes.length).toBeGreaterThan(1);
    expect(total, kilobytes.join(', ')).toBeLessThanOrEqual(MOST);
    await page.context().close();
  });
});
