/** Section and plan: moved by keys and hands, and shown at a trim, a cue and a step of an order. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address, { selfCheck: 'never' });
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const field = () => page.getByRole('group', { name: 'Drawing of the house' });
const inHand = (set: string) => page.getByRole('region', { name: `Set ${set} in hand` });
/** Places on the page of the two ends of a drawn thing: how near it is seen. */
const heightOf = async (part: string): Promise<number> =>
  (await field().locator(`[data-part="${part}"]`).boundingBox())?.height ?? 0;

describe('the section', () => {
  it('stands plain as recorded, and a set is taken in hand by a touch', async () => {
    await goTo(page, '/house');
    const box = await field().locator('[data-part="set 11"]').boundingBox();
    if (box === null) throw new Error('set 11 is drawn');
    const frame = await field().boundingBox();
    if (frame === null) throw new Error('the field is drawn');
    expect(await page.getByText('PLANNED').count()).toBe(0);
    // Far below its flat there is only its place upstage to go by.
    const position = { x: box.x + box.width / 2 - frame.x, y: frame.height * 0.7 };
    await field().click({ position });
    await inHand('11').waitFor();
    expect(await inHand('11').textContent()).toContain('Clock tower flat');
  });

  it('comes nearer and goes back by keys, and by a wheel once it is in hand', async () => {
    await field().focus();
    const whole = await heightOf('set 11');
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    expect(await heightOf('set 11')).toBeGreaterThan(whole * 1.3);
    await page.keyboard.press('0');
    expect(await heightOf('set 11')).toBeCloseTo(whole, 1);
    await field().hover();
    await page.mouse.wheel(0, -200);
    await page.waitForFunction(
      ([part, before]) =>
        (document.querySelector(`.field [data-part="${part}"]`)?.getBoundingClientRect().height ??
          0) >
        Number(before) * 1.2,
      ['set 11', whole] as const,
    );
    await page.getByRole('button', { name: 'Whole stage' }).click();
    expect(await heightOf('set 11')).toBeCloseTo(whole, 1);
  });

  it('has a cue in the frame that says PLANNED, and the address names it', async () => {
    await page.getByLabel('a cue').selectOption({ index: 2 });
    await page.getByText('PLANNED').waitFor();
    expect(new URL(page.url()).searchParams.get('at')).toBe('cue:1');
    await page.getByText('The same as a table').click();
    const row = page
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: '1', exact: true }) });
    // Cue 1 takes the house curtain out to 60'-6".
    expect((await row.textContent())?.replaceAll('\u00A0', ' ')).toContain('60\'-6"');
  });

  it('goes step by step through an order of work, and says where it ends', async () => {
    await goTo(page, '/house?at=order%3A9%3Astrike%3Aplanned%3A0');
    await page
      .getByRole('heading', { name: /before the first step of taking down set 9/ })
      .waitFor();
    await page.getByRole('button', { name: 'Next step' }).click();
    await page.getByRole('heading', { name: /after step 1 of taking down set 9/ }).waitFor();
    await goTo(page, '/house?at=order%3A9%3Astrike%3Aplanned%3A99');
    await page.getByText(/and no step 99/).waitFor();
  });

  it('does not guess at a moment that it does not know', async () => {
    await goTo(page, '/house?at=yesterday');
    await page.getByText(/Found yesterday\. Accepted/).waitFor();
    await page.getByRole('link', { name: 'Show the house as recorded' }).click();
    await field().waitFor();
  });
});

describe('the plan', () => {
  it('has the same sets, and the moment stays when one goes there', async () => {
    await goTo(page, '/house?at=trim%3Aplaying');
    await page.getByRole('link', { name: 'Plan', exact: true }).click();
    await page.getByRole('heading', { name: /Plan, upstage up, trim playing/ }).waitFor();
    expect(await field().locator('[data-part="set 11"]').count()).toBe(1);
  });
});
