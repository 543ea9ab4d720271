/**
 * A trial over plain HTTP under a name of the LAN. The browser then withholds what it gives to
 * secure pages alone; every screen does without, and nothing can be signed off.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { SCREENS } from './screens.ts';

const NAME = 'flies.home.arpa';
/** Those of a call too, which its own journeys look at as a whole. */
const ALL = [...SCREENS, '/live', '/live/open', '/drill'];

let folder = '';
let server: HouseServer;
let browser: Browser;
let page: Page;
const faults: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-plain-'));
  writeFileSync(join(folder, 'lan.json'), JSON.stringify({ listen: 'plain', names: [NAME] }));
  server = await startHouseServer({ COUNTERPOISE_DATA: folder });
  browser = await openBrowser([`--host-resolver-rules=MAP ${NAME} 127.0.0.1`]);
  const address = `http://${NAME}:${new URL(server.address).port}`;
  page = await openPage(browser, address, { selfCheck: 'never' });
  // Under a name of the network nobody is let in unasked, so an owner signs in.
  const session = await (await fetch(`${server.address}/api/session`)).json();
  const { ownerCode: code } = session as { readonly ownerCode: string };
  const owner = { name: 'Ada Frost', passphrase: 'seven lanterns over the weir', code };
  await page.goto('/trust');
  const status = await page.evaluate(async (body) => {
    const headers = { 'content-type': 'application/json' };
    return (await fetch('/api/people/owner', { method: 'POST', headers, body })).status;
  }, JSON.stringify(owner));
  expect(status).toBe(200);
  page.on('pageerror', (fault) => faults.push(fault.message));
});
afterAll(async () => {
  await browser?.close();
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('over plain HTTP', () => {
  it.each(ALL)('%s opens in a context that is not secure', async (path) => {
    await goTo(page, path);
    expect(await page.evaluate(() => [isSecureContext, 'caches' in window])).toEqual([
      false,
      false,
    ]);
    expect(await page.locator('h1').first().textContent()).not.toBe('');
    expect(await page.getByText('This screen could not be drawn').count()).toBe(0);
    expect(faults).toEqual([]);
  });

  it('says that nothing is signed off, and why', async () => {
    await goTo(page, '/this-server');
    const main = page.locator('main');
    await expect.poll(() => main.textContent()).toContain('off: over plain HTTP');
    expect(await main.textContent()).toContain('this server is on plain HTTP');
  });
});
