/** The screens without their server, and under a newer one: nothing is lost, nothing is made up. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { grid, rowOf, savedRevision, untilAllSaved, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { ownScreens, type Screens } from './next-build.ts';

let screens: Screens;
let server: HouseServer;
let browser: Browser;

beforeAll(async () => {
  screens = ownScreens();
  [server, browser] = await Promise.all([
    startHouseServer({ COUNTERPOISE_SCREENS: screens.folder }),
    openBrowser(),
  ]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  screens.remove();
});

const SHOW = 'show:vell';
const HOUR_MS = 3_600_000;

const nameCell = (page: Page, set: string) => rowOf(page, set).locator(':scope > td').nth(1);
const saving = (page: Page, words: string) => page.getByRole('status').filter({ hasText: words });

const rename = async (page: Page, set: string, name: string): Promise<void> => {
  await nameCell(page, set).focus();
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
};

/** Until this device has the screens and the documents: from then on it can do without. */
const untilKept = async (page: Page): Promise<void> => {
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  const copies = (): Promise<number> =>
    page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const opening = indexedDB.open('counterpoise-copies');
          opening.onsuccess = () => {
            const database = opening.result;
            if (!database.objectStoreNames.contains('documents')) {
              database.close();
              return resolve(0);
            }
            const count = database.transaction('documents').objectStore('documents').count();
            count.onsuccess = () => {
              database.close();
              resolve(count.result);
            };
          };
        }),
    );
  await expect.poll(copies).toBeGreaterThan(2);
};

/** A mark that is gone when the page is loaded anew. */
const mark = (page: Page): Promise<void> =>
  page.evaluate(() => {
    document.documentElement.dataset['mark'] = 'here';
  });
const isMarked = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.dataset['mark'] === 'here');

const buildOf = (page: Page): Promise<string | null> =>
  page.locator('meta[name="counterpoise-build"]').getAttribute('content');

/** What a page does when it comes back to the front. */
const wake = (page: Page): Promise<void> =>
  page.evaluate(() => void document.dispatchEvent(new Event('visibilitychange')));

const ourCaches = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => (await caches.keys()).filter((name) => /^counterpoise-/.test(name)));

describe('what a device may keep', () => {
  it('is an app with pictures of its own, and opens in a window of its own', async () => {
    const page = await openPage(browser, server.address);
    await goTo(page, '/hang-list');
    const path = await page.locator('link[rel="manifest"]').getAttribute('href');
    const manifest = await (await page.request.get(path ?? '')).json();
    expect(manifest).toMatchObject({ display: 'standalone', start_url: '/', scope: '/' });
    for (const { src, type } of manifest.icons) {
      const icon = await page.request.get(src);
      expect([icon.status(), icon.headers()['content-type']], src).toEqual([200, type]);
    }
    await page.context().close();
  });

  it('is kept by a worker that hurries nobody, and is asked for past every cache', async () => {
    const page = await openPage(browser, server.address, { startsOffline: true });
    await goTo(page, '/hang-list');
    const registered = await page.evaluate(async () => {
      const { updateViaCache, active, waiting, installing } = await navigator.serviceWorker.ready;
      return [updateViaCache, (active ?? waiting ?? installing)?.scriptURL];
    });
    expect(registered).toEqual(['none', `${server.address}/sw.js`]);
    const answer = await page.request.get('/sw.js');
    expect(answer.headers()['cache-control']).toBe('no-cache');
    expect(await answer.text()).not.toMatch(/skipWaiting|\bclaim\b/);
    await page.context().close();
  });
});

describe('without its server', () => {
  let context: BrowserContext;
  let page: Page;
  const thrown: string[] = [];

  /** A page that is opened anew, as after the tablet was switched off. */
  const coldStart = async (path: string): Promise<Page> => {
    await page?.close();
    page = await context.newPage();
    page.on('pageerror', (fault) => thrown.push(fault.message));
    await goTo(page, path);
    return page;
  };

  beforeAll(async () => {
    page = await openPage(browser, server.address, { startsOffline: true });
    context = page.context();
    await goTo(page, '/hang-list');
  });
  afterAll(async () => context?.close());

  it('starts from what the device has kept, with the hang list and how old it is', async () => {
    await untilKept(page);
    await server.halt();
    await context.clock.setSystemTime(Date.now() + 3 * HOUR_MS + 10 * 60_000);
    await coldStart('/hang-list');
    await grid(page).getByRole('row').nth(45).waitFor();
    await page.getByText(/not live: as of .*\d\d:\d\d, 3 h 1[01] min ago/).waitFor();
    await page.getByText('The server is not reached. Shown is what this device read').waitFor();
    expect(await violationsOf(page)).toEqual([]);
  });

  it('opens every screen there, parts that were never looked at too', async () => {
    for (const path of ['/set/11', '/order/9', '/house', '/documents', '/set/11/what-if']) {
      await coldStart(path);
      await page.getByText('not live: as of').waitFor();
    }
  });

  it('prints a sheet from the screen, with its age on the paper', async () => {
    await coldStart('/sheets/balance-card/11');
    await page.getByRole('button', { name: 'Print what is on this screen' }).waitFor();
    expect(await page.getByRole('link', { name: 'PDF, A4' }).count()).toBe(0);
    const sheet = page.getByRole('article', { name: /11/ });
    await sheet.getByText('Clock tower flat').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText('not live: as of').isVisible()).toBe(true);
    expect(await sheet.isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Ask the server again' }).isVisible()).toBe(
      false,
    );
    const margins = await page.evaluate(() =>
      [...document.querySelectorAll('style')].map(({ textContent }) => textContent).join(''),
    );
    expect(margins).toMatch(/@top-left.*not live: as of .* 3 h 1[0-9] min ago/);
  });

  it('takes nothing that says how things stand, and says why', async () => {
    await coldStart('/house/found/11');
    await page.getByText('How things stand cannot be written down until then.').waitFor();
    const form = page.getByRole('form', { name: 'Pull test of set 11' });
    await form.getByLabel('Pull that takes it out').fill('60 N');
    await form.getByLabel('Pull that takes it in').fill('20 N');
    await form.getByLabel('With the batten at').fill('1.2 m');
    await form.getByLabel('Pulled by').fill('upper loader');
    await form.getByRole('button', { name: 'Write the pull test down' }).click();
    await form.getByText('a copy on this device, while the server is not reached').waitFor();
    expect(await form.getByLabel('Pull that takes it out').inputValue()).toBe('60 N');
  });

  it('keeps an edit of the plan as a draft, over a reload, and saves it when it may', async () => {
    await coldStart('/hang-list');
    await rename(page, '8', 'Legs, pair');
    await saving(page, 'server not reached: edits kept on this device').waitFor();
    await page.reload();
    await expect.poll(() => nameCell(page, '8').textContent()).toBe('Legs, pair');
    await server.begin();
    await untilSaved(page, SHOW, 2);
    await page.getByText('not live: as of').waitFor({ state: 'detached' });
    await saving(page, 'saved, revision 2').waitFor();
  });

  it('asks a person where somebody else has saved meanwhile', async () => {
    await untilKept(page);
    await context.setOffline(true);
    await coldStart('/hang-list');
    await page.getByText('not live: as of').waitFor();
    await rename(page, '9', 'Our harbour');
    await saving(page, 'server not reached').waitFor();
    const other = await openPage(browser, server.address, { selfCheck: 'never' });
    await goTo(other, '/hang-list');
    await rename(other, '9', 'Their harbour');
    await untilSaved(other, SHOW, 3);
    await other.context().close();
    await context.setOffline(false);
    await page.getByRole('alert').filter({ hasText: 'Nothing is merged by itself' }).waitFor();
    expect(await savedRevision(page, SHOW)).toBe(3);
    await page.getByRole('button', { name: /^Take theirs/ }).click();
    await expect.poll(() => nameCell(page, '9').textContent()).toBe('Their harbour');
    await untilAllSaved(page);
  });

  it('threw nothing on all that way', () => {
    expect(thrown).toEqual([]);
  });
});

describe('under a newer version', () => {
  it('goes on, tells it, and is refused in words when it is too old', async () => {
    const page = await openPage(browser, server.address, { selfCheck: 'never' });
    await goTo(page, '/hang-list');
    await mark(page);
    const old = screens.build();
    expect(await buildOf(page)).toBe(old);
    await server.halt();
    const newer = screens.renew();
    await server.begin();
    await wake(page);
    await page.getByText('A newer version is on the server.').waitFor();
    expect(await violationsOf(page)).toEqual([]);
    // A part of the old build that this page has not loaded yet.
    await page.getByRole('link', { name: 'Sheets', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Sheets' }).waitFor();
    await page.getByRole('link', { name: 'Hang list', exact: true }).click();
    const revision = await savedRevision(page, SHOW);
    await rename(page, '10', 'Net');
    await untilSaved(page, SHOW, revision + 1);
    expect(await isMarked(page)).toBe(true);
    await server.halt();
    await server.begin({ COUNTERPOISE_OLDEST_BUILD: 'newest' });
    await rename(page, '12', 'Not taken');
    await page.getByText('this page is too old for the server').waitFor();
    await saving(page, 'not saved: the server refused it').waitFor();
    expect(await savedRevision(page, SHOW)).toBe(revision + 1);
    expect(await isMarked(page)).toBe(true);
    expect(await violationsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Load the newer version now' }).click();
    await untilSaved(page, SHOW, revision + 2);
    expect(await buildOf(page)).toBe(newer);
    await expect.poll(() => nameCell(page, '12').textContent()).toBe('Not taken');
    await page.context().close();
  });

  it('lets a newer worker wait while a page of the older is open', async () => {
    await server.halt();
    await server.begin();
    const page = await openPage(browser, server.address, { startsOffline: true });
    await goTo(page, '/hang-list');
    await untilKept(page);
    await goTo(page, '/hang-list');
    await mark(page);
    const [kept] = await ourCaches(page);
    screens.renew();
    const isWaiting = async (): Promise<boolean> => {
      // The page itself looks whether there is a newer one.
      await wake(page);
      return page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        return registration?.waiting != null;
      });
    };
    await expect.poll(isWaiting).toBe(true);
    expect(await isMarked(page)).toBe(true);
    expect(await ourCaches(page)).toContain(kept);
    // What the page has not loaded yet it has from there, with no server at all.
    await page.context().setOffline(true);
    await page.getByRole('link', { name: 'Sheets', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Sheets' }).waitFor();
    await page.context().close();
  });
});

describe('the worker that takes itself away', () => {
  const goneFrom = (page: Page): Promise<number> =>
    page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length);

  it.each([
    ['leaves a page alone that holds unsaved edits', true],
    ['loads a page anew that holds none', false],
  ])('removes what was kept, and %s', async (_words, isUnsaved) => {
    await server.halt();
    await server.begin();
    const page = await openPage(browser, server.address, { startsOffline: true });
    await goTo(page, '/hang-list');
    await untilKept(page);
    await goTo(page, '/hang-list');
    await mark(page);
    if (isUnsaved) {
      await page.route('**/api/documents/*', (route) =>
        route.request().method() === 'PUT' ? route.abort() : route.continue(),
      );
      await rename(page, '14', 'Held here');
      await saving(page, 'server not reached').waitFor();
    }
    await server.halt();
    await server.begin({ COUNTERPOISE_STARTS_OFFLINE: 'no' });
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    await expect.poll(() => ourCaches(page)).toEqual([]);
    await expect.poll(() => isMarked(page)).toBe(isUnsaved);
    await expect.poll(() => goneFrom(page)).toBe(0);
    await goTo(page, '/set/11');
    await page.context().close();
  });

  it('leaves a browser alone that has no workers', async () => {
    const page = await openPage(browser, server.address);
    const thrown: string[] = [];
    page.on('pageerror', (fault) => thrown.push(fault.message));
    await page.addInitScript(() => {
      // As on plain HTTP from another machine.
      Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
      Reflect.deleteProperty(Navigator.prototype, 'storage');
      Reflect.deleteProperty(window, 'caches');
    });
    await goTo(page, '/hang-list');
    const revision = await savedRevision(page, SHOW);
    await rename(page, '15', 'On plain HTTP');
    await untilSaved(page, SHOW, revision + 1);
    expect(await page.evaluate(() => 'serviceWorker' in navigator)).toBe(false);
    expect(thrown).toEqual([]);
    await page.context().close();
  });
});
