/**
 * How long the screens take to answer a hand, measured in the page. These run alone, after the
 * other journeys: what else the machine does can only add to a time.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
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

const FRAME_MS = 1000 / 60;
const ROUNDS = 3;

const median = (times: readonly number[]): number =>
  times.toSorted((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;

/** The least of the medians of some rounds, printed with the worst of all times. */
const middleOf = async (what: string, round: () => Promise<readonly number[]>): Promise<number> => {
  const rounds: (readonly number[])[] = [];
  for (let turn = 0; turn < ROUNDS; turn += 1) rounds.push(await round());
  const middle = Math.min(...rounds.map(median));
  const times = rounds.flat();
  process.stdout.write(
    `${what}: ${middle.toFixed(1)} ms to the new picture, ` +
      `${Math.max(...times).toFixed(1)} ms at most of ${times.length}\n`,
  );
  return middle;
};

/** Runs in the page: from the event to the new picture laid out, in milliseconds, many times. */
const KEY_TIMES = async (): Promise<readonly number[]> => {
  const strip = document.querySelector('[role="slider"]');
  if (strip === null) throw new Error('no slider');
  const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));
  const times: number[] = [];
  for (let step = 0; step < 30; step++) {
    await frame();
    const said = strip.getAttribute('aria-valuetext');
    const from = performance.now();
    const key = step % 2 === 0 ? 'ArrowRight' : 'ArrowLeft';
    strip.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    await Promise.resolve();
    strip.getBoundingClientRect();
    times.push(performance.now() - from);
    if (strip.getAttribute('aria-valuetext') === said) throw new Error('no answer to the key');
  }
  return times;
};

/** Notes in the page, for each answer that a drag gives, how old the pointer's move is by then. */
const NOTE_DRAG_TIMES = (): void => {
  const strip = document.querySelector('[role="slider"]');
  if (strip === null) throw new Error('no slider');
  const times: number[] = [];
  Object.assign(globalThis, { dragTimes: times });
  let movedAt = Number.NaN;
  strip.addEventListener('pointermove', () => {
    movedAt = performance.now();
  });
  new MutationObserver(() => {
    strip.getBoundingClientRect();
    times.push(performance.now() - movedAt);
  }).observe(strip, { attributeFilter: ['aria-valuetext'] });
};

const dragTimes = (): readonly number[] =>
  (globalThis as unknown as { readonly dragTimes: readonly number[] }).dragTimes;

/** Runs in the page: out and back again, from the press to the new picture laid out. */
const CHANGE_TIMES = async (): Promise<readonly number[]> => {
  const button = (name: string): HTMLButtonElement => {
    const all = [...document.querySelectorAll('button')];
    const found = all.find(({ textContent }) => textContent === name);
    if (found === undefined) throw new Error(`no button ${name}`);
    return found;
  };
  const times: number[] = [];
  for (let turn = 0; turn < 10; turn++) {
    for (const name of ['Take this step out', 'Undo the last change']) {
      const from = performance.now();
      button(name).click();
      await Promise.resolve();
      document.body.getBoundingClientRect();
      times.push(performance.now() - from);
    }
  }
  return times;
};

describe('a load on the batten', () => {
  const part = (): Locator => page.getByRole('region', { name: 'Batten and its lines' });
  const slider = (): Locator => part().getByRole('slider');

  beforeAll(async () => {
    await goTo(page, '/set/5');
    await slider().waitFor();
  });

  /** Along the batten by 120 px in twelve moves, and the times of the answers. */
  const drag = async (): Promise<readonly number[]> => {
    await page.evaluate(NOTE_DRAG_TIMES);
    const box = await slider().boundingBox();
    const thumb = await part().locator('.load-thumb').boundingBox();
    if (box === null || thumb === null) throw new Error('no load to drag');
    const x = thumb.x + thumb.width / 2;
    const y = box.y + box.height - 12;
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 120, y, { steps: 12 });
    await page.mouse.up();
    const times = await page.evaluate(dragTimes);
    expect(times.length).toBeGreaterThan(4);
    return times;
  };

  it('is reckoned and drawn within one frame of a key', async () => {
    const middle = await middleOf('A key on the load', () => page.evaluate(KEY_TIMES));
    expect(middle).toBeLessThan(FRAME_MS);
  });

  it('follows the pointer that drags it', async () => {
    await part().scrollIntoViewIfNeeded();
    const middle = await middleOf('A drag', drag);
    // The pointer is answered at the next frame, and the work must be done within it.
    expect(middle).toBeLessThan(2 * FRAME_MS);
  });
});

describe('a change of an order by hand', () => {
  it('is judged and drawn before a hand can wonder', async () => {
    await goTo(page, '/order/9?job=strike');
    const step = (list: string): Locator =>
      page.getByRole('list', { name: list }).getByRole('button', { name: /^Step 1: / });
    await step('Steps of the found order').waitFor();
    await page.getByRole('button', { name: 'Change by hand' }).click();
    await step('Steps of the order changed by hand').click();
    await page.getByRole('button', { name: 'Take this step out' }).waitFor();
    const middle = await middleOf('A step out and back', () => page.evaluate(CHANGE_TIMES));
    // The judging alone is bounded in the unit tests; here a busy machine draws the pictures too.
    expect(middle).toBeLessThan(250);
  });
});
