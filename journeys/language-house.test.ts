/** The house in German: what is typed into its forms, and how the record calls a lock. */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violationsOf } from './axe.ts';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, untilSaved, wordsOf } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

const HOUSE = 'house:kestlemere';

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
  page.on('pageerror', ({ message }) => thrown.push(message));
  await goTo(page, '/house/enter/rules');
  await page.getByLabel('language').selectOption('de');
  await page.getByRole('heading', { name: 'Regeln des Hauses', level: 2 }).waitFor();
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const row = (name: string): Locator => page.getByRole('group', { name, exact: true });

const value = (name: string): Locator => page.getByLabel(`Wert: ${name}`, { exact: true });

const enter = async (name: string, text: string): Promise<void> => {
  await value(name).fill(text);
  await page.keyboard.press('Enter');
};

const LOCK = 'Seilklemme, größtes Ungleichgewicht';
const SHEAVE = 'Rolle, Durchmesser durch den ihres Seils';

const rules = async (): Promise<unknown> => {
  const answer = await page.request.get(`/api/documents/${HOUSE}`);
  return ((await answer.json()) as { readonly document: Record<string, never> }).document['rules'];
};

describe('the forms of a house in German', () => {
  it('are told to a screen reader without a fault', async () => {
    expect(await violationsOf(page)).toEqual([]);
  });

  it('read a measure and a plain number with a comma, and keep the point', async () => {
    const before = await savedRevision(page, HOUSE);
    await enter(LOCK, '49,5 lbf');
    await untilSaved(page, HOUSE, before + 1);
    await enter(SHEAVE, '30,5');
    await untilSaved(page, HOUSE, before + 2);
    expect(JSON.stringify(await rules())).toMatch(/"49\.5 lbf".*30\.5[^"]/);
    expect(await value(LOCK).inputValue()).toBe('49,5 lbf');
    expect(await value(SHEAVE).inputValue()).toBe('30,5');
  });

  it('refuse what reads two ways, in their own words', async () => {
    for (const [name, text] of [
      [LOCK, '1,250 lbf'],
      [SHEAVE, '1,250'],
    ] as const) {
      await enter(name, text);
      const refusal = row(name).getByRole('alert');
      expect(await wordsOf(refusal)).toMatch(/nicht angenommen, nichts geändert.*QTY-011/);
      await page.keyboard.press('Escape');
    }
    expect(JSON.stringify(await rules())).toMatch(/"49\.5 lbf".*30\.5[^"]/);
  });

  it('lead from what is unknown to its field', async () => {
    await goTo(page, '/house/enter');
    const unknown = page.getByRole('region', { name: 'Noch unbekannt', exact: true });
    await unknown.getByRole('link', { name: /^Höhe des Schnürbodens/ }).click();
    await page.getByRole('heading', { name: 'Bühne', level: 2 }).waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Wert: Schnürboden, Höhe');
  });
});

describe('the house as found in German', () => {
  it('tells a closed lock from a set that is locked out', async () => {
    await goTo(page, '/house/found/20');
    const form = page.getByRole('form', { name: 'Zug 20 wie vorgefunden' });
    const chosen = (label: string): Promise<string> =>
      form
        .getByLabel(label)
        .evaluate((it) => (it as HTMLSelectElement).selectedOptions[0]?.label ?? '');
    expect(await chosen('Seilklemme')).toBe('geschlossen');
    expect(await chosen('In Benutzung')).toBe('gesperrt');
  });

  it('reads the pulls of a test with a comma', async () => {
    await goTo(page, '/house/found/5');
    const form = page.getByRole('form', { name: 'Zugprobe an Zug 5' });
    await form.getByLabel('Zugkraft, die ihn auffährt').fill('24,5 lbf');
    await form.getByLabel('Zugkraft, die ihn abfährt').fill('10,5 lbf');
    await form.getByLabel('Mit der Laststange auf').fill('36 ft');
    await form.getByLabel('Gezogen von').fill('Seil 1');
    await form.getByRole('button', { name: 'Die Zugprobe aufschreiben' }).click();
    // Half of 24.5 - 10.5 is out of balance, 7 lbf; half of 24.5 + 10.5 is friction, 17.5 lbf.
    await expect.poll(() => wordsOf(form)).toMatch(/7.lb stangenlastig, Reibung 1[78].lbf/);
  });
});
