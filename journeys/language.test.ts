/** Another language on this device: the list, the wall, a sheet and what is typed, and back. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { grid, massCell, savedRevision, typeInto, untilSaved, wordsOf } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

const SHOW = 'show:vell';
beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
  page.on('pageerror', ({ message }) => thrown.push(message));
  await goTo(page, '/hang-list');
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const languageOfPage = (): Promise<string> => page.evaluate(() => document.documentElement.lang);

const items = async (): Promise<Locator> => {
  await grid(page)
    .getByRole('button', { name: /von Zug 7$/ })
    .click();
  return page.getByRole('table', { name: /Was an Zug 7 hängt\./ });
};

describe('German', () => {
  it('is chosen in the title strip, and the page says so to a screen reader', async () => {
    expect(await languageOfPage()).toBe('en');
    await page.getByLabel('language').selectOption('de');
    await expect.poll(languageOfPage).toBe('de');
    await page.getByRole('heading', { level: 1, name: 'Zugbelegungsplan' }).waitFor();
    await page.getByRole('link', { name: 'Hängeliste' }).waitFor();
    expect(await violationsOf(page)).toEqual([]);
  });

  it('is read in the hang list and on the wall', async () => {
    const heads = await grid(page).locator('thead').getByRole('columnheader').allTextContents();
    for (const head of ['Zug', 'Stück', 'Art', 'Befunde']) {
      expect(heads.map((text) => text.trim())).toContain(head);
    }
    expect(heads.join()).toMatch(/Balance\s*schlittenlastig/);
    await page.getByRole('button', { name: 'Die Zugwand als Tabelle' }).click();
    const wall = page.getByRole('region', { name: 'Die Zugwand als Tabelle' });
    await wall.getByRole('columnheader', { name: 'gehalten von' }).waitFor();
    expect(await wordsOf(wall)).toMatch(/stangenlastig|schlittenlastig/);
  });

  it('reads 12,5 kg as twelve and a half, and English reads the same later', async () => {
    const before = await savedRevision(page, SHOW);
    const cell = massCell(await items(), 'Border 1');
    await typeInto(page, cell, '12,5 kg');
    await page.getByText('gelesen als').waitFor();
    await page.keyboard.press('Enter');
    await untilSaved(page, SHOW, before + 1);
    expect(await wordsOf(cell)).toBe('12,5 kg');
    const kept = await page.request.get(`/api/documents/${SHOW}`);
    expect(await kept.text()).toContain('12.5 kg');
  });

  it('refuses what it could read two ways', async () => {
    const table = page.getByRole('table', { name: /Was an Zug 7 hängt\./ });
    const cell = massCell(table, 'Border 1');
    await typeInto(page, cell, '1,250 kg');
    await page.keyboard.press('Enter');
    await page.getByText('nicht angenommen, nichts geändert').waitFor();
    await page.getByText('QTY-011').waitFor();
    await page.keyboard.press('Escape');
    expect(await wordsOf(cell)).toBe('12,5 kg');
  });

  it('is on a sheet, and its print is asked for in the same language', async () => {
    await goTo(page, '/sheets/balance-card/9');
    const leaf = page.getByRole('region', { name: 'Vorschau des Blatts' });
    await leaf.getByText('Harbour drop').first().waitFor();
    expect(await wordsOf(leaf)).toContain('Rückhaltung:');
    const href = await page.getByRole('link', { name: 'PDF, A4' }).getAttribute('href');
    expect(href).toContain('language=de');
    const pdf = await page.request.get(href ?? '');
    expect(pdf.status()).toBe(200);
    expect(pdf.headers()['content-type']).toBe('application/pdf');
  });

  it('stays on this device, and English comes back', async () => {
    await goTo(page, '/hang-list');
    await expect.poll(languageOfPage).toBe('de');
    await page.getByLabel('Sprache').selectOption('en');
    await expect.poll(languageOfPage).toBe('en');
    await page.getByRole('heading', { level: 1, name: 'Line set schedule' }).waitFor();
  });
});
