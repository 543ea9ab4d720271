/** From the demo to a house of one's own, filled a little, and back. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const HOUSE = 'house:house';
const BEGIN = 'Put the demo aside and start a blank house';

const demoWords = (): Promise<number> => page.getByText(/DEMO/).count();

describe('a house of one’s own', () => {
  it('is asked what must not be guessed, and says what is missing', async () => {
    await goTo(page, '/house/limits');
    expect(await page.getByRole('radio', { checked: true }).count()).toBe(0);
    const begin = page.getByRole('button', { name: BEGIN });
    expect(await begin.isDisabled()).toBe(true);
    await page.getByLabel('Name of the house').fill('Lower Yard Hall');
    await page.getByRole('radio', { name: 'metres and kilograms' }).check();
    await page.getByRole('radio', { name: /^UK/ }).check();
    expect(await page.getByText('Still to say: its operating side.').isVisible()).toBe(true);
    expect(await begin.isDisabled()).toBe(true);
    await page.getByRole('radio', { name: 'stage left' }).check();
    expect(await begin.isEnabled()).toBe(true);
  });

  it('begins blank in one step, without the word DEMO, and lists what is unknown', async () => {
    await page.getByRole('button', { name: BEGIN }).click();
    await page.getByRole('heading', { level: 1, name: 'Lower Yard Hall' }).waitFor();
    expect(await demoWords()).toBe(0);
    const unknown = page.getByRole('region', { name: 'Still unknown', exact: true });
    expect(await unknown.textContent()).toContain('limit of the rope lock');
  });

  it('takes a document as text, or refuses it in place and leaves the old one', async () => {
    const section = page.getByRole('region', { name: 'Documents as text' });
    await section.getByText('House and show as text').click();
    const text = section.getByLabel('Text of the house');
    const save = section.getByRole('button', { name: 'Read and save the house' });
    const written = JSON.parse(await text.inputValue()) as Record<string, unknown>;
    const given = { basis: 'houseRule', source: 'sheet of limits by the rail' };
    await text.fill(JSON.stringify({ ...written, rules: { given, lockLimit: '220' } }));
    await save.click();
    const refusal = section.getByRole('alert');
    expect(await refusal.textContent()).toMatch(/rules\.lockLimit[\s\S]*220[\s\S]*Accepted/);
    expect(await savedRevision(page, HOUSE)).toBe(1);
    await text.fill(JSON.stringify({ ...written, rules: { given, lockLimit: '220 N' } }));
    await save.click();
    await untilSaved(page, HOUSE, 2);
    const row = page.getByRole('row', { name: /rope lock, most/ });
    expect(await row.textContent()).toMatch(/220.N[\s\S]*house rule[\s\S]*sheet of limits/);
  });

  it('opens the demo again, and the own house after it, each as it was', async () => {
    await page.getByRole('button', { name: 'Open the demo' }).click();
    await page.getByRole('heading', { level: 1, name: 'Kestlemere Playhouse' }).waitFor();
    expect(await demoWords()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Open our house' }).click();
    await page.getByRole('heading', { level: 1, name: 'Lower Yard Hall' }).waitFor();
    expect(await demoWords()).toBe(0);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Lower Yard Hall' }).waitFor();
  });
});
