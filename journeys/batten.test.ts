/**
 * The batten on its lines: what each pulls, and what becomes of it when a load is moved or a
 * turnbuckle turned. Pulls against the golden table of the demo house, in pounds, computed for it
 * apart from this program with beam elements of half a foot.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, wordsOf } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews } from './views.ts';

let server: HouseServer;
let browser: Browser;
let page: Page;
const thrown: string[] = [];

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address, { selfCheck: 'never' });
  page.on('pageerror', ({ message }) => thrown.push(message));
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
  expect(thrown).toEqual([]);
});

const AS_PLANNED = [171, 183, 183, 187, 189, 87];
const THIRD_ONE_INCH_SHORT = [179, 148, 234, 154, 196, 87];
const AT_THE_END = [23, 32, 36, 1, 0, 327];

const part = (on: Page) => on.getByRole('region', { name: 'Batten and its lines' });
const slider = (on: Page) => part(on).getByRole('slider');

/** Pounds as the table says them, from stage right; a slack line carries none. */
const pulls = async (on: Page): Promise<readonly number[]> => {
  const rows = part(on)
    .getByRole('table', { name: /^Lift lines/ })
    .getByRole('row');
  const texts = await rows.filter({ has: on.getByRole('rowheader') }).allTextContents();
  return texts.map((text) =>
    text.includes('SLACK') ? 0 : Number(/(\d+)\u00A0lbf/.exec(text)?.[1] ?? Number.NaN),
  );
};

/** The screen rounds a pull up to the next pound, and the golden table to the nearest. */
const expectPulls = async (on: Page, golden: readonly number[]): Promise<void> => {
  const shown = await pulls(on);
  expect(shown).toHaveLength(golden.length);
  for (const [index, pounds] of golden.entries()) {
    expect((shown[index] ?? 0) - pounds, `line ${index + 1}`).toBeGreaterThanOrEqual(0);
    expect((shown[index] ?? 0) - pounds, `line ${index + 1}`).toBeLessThanOrEqual(1);
  }
};

const open = async (on: Page, path = '/set/5'): Promise<void> => {
  await goTo(on, path);
  await slider(on).waitFor();
};

const hangAtEnd = async (on: Page, mass: string): Promise<void> => {
  await part(on).getByRole('button', { name: 'bare batten' }).click();
  await part(on)
    .getByLabel(/^a load to try/)
    .fill(mass);
  await on.keyboard.press('Enter');
  await slider(on).focus();
  await on.keyboard.press('End');
};

describe('Electric 1 on its six lines', () => {
  it('shows the pull of each line, with number and name in the picture too', async () => {
    await open(page);
    await expectPulls(page, AS_PLANNED);
    const picture = await part(page).getByRole('img').first().getAttribute('aria-label');
    expect(picture).toMatch(/line 1 171\u00A0lbf.*line 6 87\u00A0lbf/);
  });

  it('answers a load moved by the keys, as a question that changes no document', async () => {
    await open(page);
    const revision = await savedRevision(page, 'show:vell');
    const before = await pulls(page);
    await slider(page).focus();
    await page.keyboard.press('PageUp');
    expect(await slider(page).getAttribute('aria-valuetext')).toContain('15\'-0" stage right');
    const after = await pulls(page);
    expect(after[0]).toBeLessThan(before[0] ?? 0);
    await expect.poll(() => part(page).getByText('WHAT IF').isVisible()).toBe(true);
    await page.keyboard.press('Shift+ArrowLeft');
    expect(await slider(page).getAttribute('aria-valuetext')).toContain('15\'-1" stage right');
    await part(page).getByRole('button', { name: 'Back to how it is' }).click();
    expect(await pulls(page)).toEqual(before);
    expect(await part(page).getByText('WHAT IF').count()).toBe(0);
    await page.waitForTimeout(1000);
    expect(await savedRevision(page, 'show:vell')).toBe(revision);
  });

  it('moves about 50 lb when line 3 is made one inch shorter, an eighth at a press', async () => {
    await open(page);
    const press = part(page).getByRole('button', { name: /^Line 3 shorter by 1\/8/ });
    await press.focus();
    for (let eighth = 0; eighth < 8; eighth++) await page.keyboard.press('Enter');
    await expectPulls(page, THIRD_ONE_INCH_SHORT);
    expect(await wordsOf(part(page).getByRole('list', { name: 'What to turn' }))).toBe(
      'line 3 1\u00A0in shorter'.replaceAll('\u00A0', ' '),
    );
    const longer = part(page).getByRole('button', { name: /^Line 3 longer/ });
    for (let eighth = 0; eighth < 8; eighth++) await longer.click();
    await expectPulls(page, AS_PLANNED);
    expect(await part(page).getByText('WHAT IF').count()).toBe(0);
  });

  it('shows the slack line of a load at the end, by word and by a bow', async () => {
    await open(page);
    await hangAtEnd(page, '250 lb');
    await expectPulls(page, AT_THE_END);
    expect(await slider(page).getAttribute('aria-valuetext')).toContain('line 5 slack');
    const drawn = (line: number) => part(page).locator(`[data-part="line ${line}"] path`).count();
    expect([await drawn(4), await drawn(5)]).toEqual([0, 1]);
  });

  it('says that it tips over, and gives no figure for a line', async () => {
    await open(page);
    await hangAtEnd(page, '2500 lb');
    const picture = await part(page).getByRole('img').first().getAttribute('aria-label');
    expect(picture).toContain('TIPS OVER');
    expect(picture).not.toMatch(/\d/);
    expect(await part(page).getByRole('img').first().textContent()).not.toContain('lbf');
    expect(
      await part(page)
        .getByRole('table', { name: /^Lift lines/ })
        .count(),
    ).toBe(0);
  });

  it('opens the working of a figure in the flow, with its formula, limit and source', async () => {
    await open(page);
    await part(page)
      .getByText(/^Worked out, each with its working/)
      .click();
    await part(page)
      .getByRole('button', { name: /^Tension of line \d, the most loaded/ })
      .click();
    const working = await wordsOf(part(page).locator('.working'));
    expect(working).toMatch(/T_L = T \+ w.*limit 875\.0.lbf.*Source: equilibrium/);
  });

  it('refuses a load without a unit in place', async () => {
    await open(page);
    await part(page)
      .getByLabel(/^a load to try/)
      .fill('250');
    await page.keyboard.press('Enter');
    expect(await wordsOf(part(page).getByRole('alert'))).toMatch(/250.*Accepted.*lb/);
    expect(await part(page).getByText('WHAT IF').count()).toBe(0);
  });

  it('lists the turns that level the batten, and the heaviest load for a place', async () => {
    await open(page);
    await part(page).getByRole('button', { name: 'Level the batten' }).click();
    const turns = part(page).getByRole('list', { name: 'What to turn' });
    expect(await wordsOf(turns)).toMatch(/line \d .* in (shorter|longer)/);
    await part(page).getByRole('button', { name: 'Heaviest load here' }).click();
    // 830 lb of the 1,000 lb live limit hang at this trim, all of it along the batten.
    expect(await wordsOf(part(page).locator('.heaviest'))).toMatch(
      /At 20'-0" stage right 1\d\d lb more may hang; then all that hangs is what the batten may/,
    );
  });
});

describe('by mouse', () => {
  it('is dragged, and the picture follows the pointer', async () => {
    await open(page);
    await part(page).scrollIntoViewIfNeeded();
    const box = await slider(page).boundingBox();
    const thumb = await part(page).locator('.load-thumb').boundingBox();
    if (box === null || thumb === null) throw new Error('no load to drag');
    const x = thumb.x + thumb.width / 2;
    const y = box.y + box.height - 12;
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 120, y, { steps: 12 });
    await page.mouse.up();
    const said = await slider(page).getAttribute('aria-valuetext');
    expect(said).toMatch(/^1[3-6]'-\d+" stage right/);
    await expect.poll(() => part(page).getByText('WHAT IF').isVisible()).toBe(true);
  });
});

describe('on a phone', () => {
  it('is dragged by a finger, and a turnbuckle is as large as one', async () => {
    const phone = await openPage(browser, server.address, { width: 390 });
    await open(phone, '/set/11');
    await slider(phone).scrollIntoViewIfNeeded();
    const before = await slider(phone).getAttribute('aria-valuetext');
    const box = await part(phone).locator('.load-thumb').boundingBox();
    if (box === null) throw new Error('no load to drag');
    const [x, y] = [box.x + box.width / 2, box.y + box.height - 10];
    const touch = await phone.context().newCDPSession(phone);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', dx: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx, y }],
      });
    await send('touchStart', 0);
    for (let dx = 6; dx <= 60; dx += 6) await send('touchMove', dx);
    await send('touchEnd', 60);
    await expect.poll(() => slider(phone).getAttribute('aria-valuetext')).not.toBe(before);
    const size = await part(phone)
      .getByRole('button', { name: /^Line 1 shorter/ })
      .boundingBox();
    expect(size?.width).toBeGreaterThanOrEqual(48);
    expect(size?.height).toBeGreaterThanOrEqual(48);
    await phone.context().close();
  });
});

describe.each(DEVICES)('a question on the batten, $device', (device) => {
  it('passes axe-core with a slack line and when it tips, and fits the screen', async () => {
    const own = await openPage(browser, server.address, {
      width: device.opened,
      selfCheck: 'never',
    });
    await open(own);
    await hangAtEnd(own, '250 lb');
    expect(await faultsInViews(own, device)).toEqual([]);
    await hangAtEnd(own, '2500 lb');
    expect(await faultsInViews(own, device)).toEqual([]);
    await own.context().close();
  });
});
