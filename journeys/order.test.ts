/**
 * The order of work of one set: found and drawn, walked through by keys, changed by hand into a
 * wrong one that is named at its step, and never printed.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews, resized } from './views.ts';

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

const STRIKE = '/order/9?job=strike';

const found = (on: Page): Locator => on.getByRole('list', { name: 'Steps of the found order' });
const byHand = (on: Page): Locator =>
  on.getByRole('list', { name: 'Steps of the order changed by hand' });
const whatIf = (on: Page): Locator => on.getByRole('region', { name: /^WHAT IF/ });
const step = (list: Locator, name: RegExp): Locator => list.getByRole('button', { name });

const open = async (on: Page, path = STRIKE): Promise<void> => {
  await goTo(on, path);
  await step(found(on), /^Step 1: /).waitFor();
};

/** As they are read, cell by cell: text content alone would run words together. */
const wordsOf = async (on: Locator): Promise<string> => {
  // biome-ignore lint/performance/useDomNodeTextContent: what a person sees, hidden words left out
  const text = await on.innerText();
  return text.replaceAll(/\s+/g, ' ');
};

/** The last step that takes bricks off, out of the copy: the cloth then comes off too early. */
const breakByHand = async (on: Page): Promise<void> => {
  await on.getByRole('button', { name: 'Change by hand' }).click();
  await step(byHand(on), /^Step \d+: Take off \d+ full, Upper/).click();
  await on.getByRole('button', { name: 'Take this step out' }).click();
};

describe('the order of work of the harbour drop', () => {
  it('is opened from the set, and stays in hand beside it', async () => {
    await goTo(page, '/set/9');
    await page.getByRole('link', { name: 'The order of work of this set' }).click();
    await page.getByRole('heading', { level: 1, name: /set 9.*Harbour drop/ }).waitFor();
    // The record says that it hangs, so a strike is meant.
    await step(found(page), /^Step 1: /).waitFor();
    const job = page.getByRole('navigation', { name: 'Job' });
    expect(await job.getByRole('link', { name: 'Strike' }).getAttribute('aria-current')).toBe(
      'page',
    );
  });

  it('has its steps in words and pictures, its size and energy, and the search', async () => {
    await open(page);
    const count = await found(page).getByRole('listitem').count();
    expect(count).toBeGreaterThan(6);
    const summary = await wordsOf(page.locator('.order-sum'));
    expect(summary).toMatch(/^\d+ steps, 2 galleries\. Replayed to its end, nothing broken\./);
    expect(summary).toMatch(/\d+ J, as 1 full let fall .* Searched \d+ states/);
    const frame = page.getByRole('region', { name: /^PLANNED/ });
    expect(await wordsOf(frame)).toContain('every mass at its worst');
    const untie = found(page).getByRole('listitem').filter({ hasText: 'Untie Harbour drop' });
    const words = await wordsOf(untie);
    expect(words).toMatch(/lb batten heavy/);
    expect(words).toContain('low stop');
    expect(words).toMatch(/\d+ J/);
  });

  it('opens a step whole: what to do, expect, say, and when to stop', async () => {
    await open(page);
    await step(found(page), /^Step \d+: Take off \d+ full, Upper/).click();
    const whole = page.getByRole('region', { name: /^Step \d+: Take off \d+ full, Upper/ });
    const words = await wordsOf(whole);
    for (const term of ['who', 'do', 'expect', 'stop if', 'give it up', 'closed', 'proofs due']) {
      expect(words).toContain(term);
    }
    expect(words).toMatch(/Gallery: “Set 9: \d full off\. Below clear\? Locked and ringed\?”/);
    expect(await whole.getByRole('img').getAttribute('aria-label')).toMatch(/^Set 9, batten at 3'/);
  });

  it('is walked through by keys, from the page and from a step, and closed again', async () => {
    await open(page);
    await page.keyboard.press('ArrowRight');
    await page.getByRole('region', { name: 'Now: how it stands' }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.getByRole('region', { name: /^Step 2: / }).waitFor();
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    expect(await focused()).toMatch(/^Step 2: /);
    await page.keyboard.press('End');
    expect(await focused()).toContain('Untie Harbour drop');
    await page.keyboard.press('Home');
    expect(await focused()).toContain('How it stands');
    await page.keyboard.press('Escape');
    expect(await page.getByRole('region', { name: 'Now: how it stands' }).count()).toBe(0);
  });

  it('is there as a table, row by row', async () => {
    await open(page);
    await page.getByText('The order as a table').click();
    const rows = page.getByRole('region', { name: 'The found order, table' }).getByRole('row');
    expect(await rows.count()).toBe((await found(page).getByRole('listitem').count()) + 1);
    expect(await wordsOf(rows.last())).toContain('Untie Harbour drop');
  });

  it('leads to its strike sheet', async () => {
    await open(page);
    await page.getByRole('link', { name: 'Print strike sheet' }).click();
    await page.waitForURL('**/sheets/strike-sheet/9*');
    await page.getByRole('article', { name: /^Strike sheet, order .*, 9$/ }).waitFor();
  });

  it('names what is asked for in its address, and the wall keeps to orders', async () => {
    await open(page);
    await page.getByRole('link', { name: 'as recorded' }).click();
    await page.waitForURL('**/order/9?job=strike&from=recorded*');
    await step(found(page), /^Step 1: /).waitFor();
    expect(await page.getByRole('link', { name: 'Print strike sheet' }).count()).toBe(0);
    await page
      .getByRole('region', { name: /^The wall/ })
      .getByRole('link', { name: /^16\b|set 16\b/i })
      .click();
    await page.waitForURL('**/order/16*');
  });
});

describe('changed by hand', () => {
  it('names the broken rule at its step, and lays both orders beside each other', async () => {
    await open(page);
    await breakByHand(page);
    const status = whatIf(page).getByRole('status');
    expect(await wordsOf(status)).toMatch(/^Broken at step \d+ .*ORD-\d{3}.*If nothing held it: /);
    const beside = await wordsOf(whatIf(page).locator('.beside-orders'));
    expect(beside).toMatch(
      /found Replayed to its end, nothing broken\. .* by hand Breaks ORD-\d{3}/,
    );
    const untie = byHand(page).getByRole('listitem').filter({ hasText: 'Untie Harbour drop' });
    expect(await wordsOf(untie)).toMatch(/ORD-005: .*arbor heavy.*holds 50 lbf/);
    expect(await wordsOf(untie)).toMatch(/kJ 4 full let fall/);
    // The found one stands as it was, and is the only one that leads to paper.
    expect(
      await found(page)
        .getByText(/ORD-005/)
        .count(),
    ).toBe(0);
    expect(await whatIf(page).getByRole('link').count()).toBe(0);
  });

  it('says of a wrong order where it leads, and not how it is done', async () => {
    await open(page);
    await breakByHand(page);
    await step(byHand(page), /: Untie Harbour drop/).click();
    const whole = whatIf(page).getByRole('region', { name: /: Untie Harbour drop/ });
    const words = await wordsOf(whole);
    expect(words).toContain('An item comes off that leaves the arbor to run down (ORD-005)');
    expect(words).not.toContain('Lead: “');
  });

  it('is taken back, by a button and by a key, and the documents keep their own undo', async () => {
    await open(page);
    await breakByHand(page);
    await whatIf(page).getByRole('button', { name: 'Undo the last change' }).click();
    const status = whatIf(page).getByRole('status');
    expect(await wordsOf(status)).toContain('Nothing is changed yet');
    await step(byHand(page), /^Step 1: /).click();
    await page.getByRole('button', { name: 'Take this step out' }).click();
    expect(await wordsOf(status)).toMatch(/^Broken at step/);
    await page.keyboard.press('Control+z');
    expect(await wordsOf(status)).toContain('Nothing is changed yet');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  it('takes a step in: a height in any unit, refused in place where it is none', async () => {
    await open(page);
    await page.getByRole('button', { name: 'Change by hand' }).click();
    await step(byHand(page), /^Step 1: /).click();
    await page.getByRole('button', { name: 'Put a step after it' }).click();
    await page.getByLabel('the step').selectOption({ label: 'fly to a height' });
    await page.getByLabel('to', { exact: true }).fill('4');
    await page.getByRole('button', { name: 'Put it in' }).click();
    expect(await wordsOf(whatIf(page).getByRole('alert'))).toMatch(/^Found 4\. Accepted: .*ft/);
    await page.getByLabel('to', { exact: true }).fill('1.2192 m');
    await page.getByRole('button', { name: 'Put it in' }).click();
    await step(byHand(page), /^Step 2: In to 4'-0"/).waitFor();
    expect(await wordsOf(whatIf(page).getByRole('status'))).toMatch(
      /^Broken at step 2 .*ORD-0\d\d/,
    );
  });

  it('shows what cannot be replayed in words, and mends it there', async () => {
    await open(page);
    await page.getByRole('button', { name: 'Change by hand' }).click();
    await step(byHand(page), /^Now: /).click();
    await page.getByRole('button', { name: 'Put a step first' }).click();
    await page.getByLabel('the step').selectOption({ label: 'take bricks off' });
    await page.getByLabel('how many').fill('90');
    await page.getByRole('button', { name: 'Put it in' }).click();
    expect(await wordsOf(whatIf(page).getByRole('status'))).toContain('step 1 cannot be replayed');
    await page.getByRole('button', { name: 'Take step 1 out' }).click();
    expect(await wordsOf(whatIf(page).getByRole('status'))).toContain('Nothing is changed yet');
  });
});

describe('where there is none to draw', () => {
  it('says why it cannot be asked for', async () => {
    await goTo(page, '/order/4?job=strike');
    await page.getByText('Caution: no order of work can be asked for').waitFor();
    await page.goto('/order/nine');
    await page.getByText('this house has no set nine').waitFor();
  });

  it('says large that none exists and what is missing, and lets one be tried by hand', async () => {
    await goTo(page, '/order/D3?job=load');
    await page.getByText('Caution: no order of work').waitFor();
    expect(await wordsOf(page.locator('.order-none'))).toMatch(/steel of which no rating is given/);
    await page.getByRole('button', { name: 'Try one by hand' }).waitFor();
    expect(await page.getByRole('link', { name: 'Print strike sheet' }).count()).toBe(0);
  });
});

/** px; all that is pressed in the order changed by hand, but the cards, which are tall as a row. */
const lowest = (on: Page): Promise<number> =>
  whatIf(on)
    .getByRole('button')
    .evaluateAll((buttons) =>
      Math.min(
        ...buttons
          .filter(({ className }) => className !== 'card-name')
          .map((button) => button.getBoundingClientRect().height),
      ),
    );

describe.each(DEVICES)('$device', (device) => {
  it('passes axe-core, found and broken by hand, fits the screen and a finger', async () => {
    const own = await openPage(browser, server.address, {
      width: device.opened,
      selfCheck: 'never',
    });
    await open(own);
    await step(found(own), /^Step 2: /).click();
    expect(await faultsInViews(own, device)).toEqual([]);
    await breakByHand(own);
    await own.getByRole('button', { name: 'Put a step after it' }).click();
    await own.getByText('Both orders as a table').click();
    expect(await faultsInViews(own, device)).toEqual([]);
    for (const width of device.widths) {
      await resized(own, width);
      expect(await lowest(own), `px, the lowest button at ${width}`).toBeGreaterThanOrEqual(48);
    }
    await own.context().close();
  });
});
