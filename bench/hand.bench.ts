/**
 * How soon a screen follows a hand, measured in a real browser: a key and a drag on a load of the
 * batten, and a step taken out of an order and put back. From the event to the new picture laid
 * out, beside a plain page on which a script of three lines moves a line of a drawing by that key.
 * Run it by itself: `node bench/hand.bench.ts`.
 */
import type { Browser, Locator, Page } from 'playwright-core';
import { goTo, openBrowser, openPage } from '../journeys/browser.ts';
import { startHouseServer } from '../journeys/house-server.ts';
import { buildWeb } from '../tools/running/web-build.ts';
import { atShare } from './main-thread.ts';

const ROUNDS = 3;
/** ms, one picture of sixty a second. */
const FRAME = 1000 / 60;

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

const PLAIN = `<svg><line id="line" x1="0" x2="0" y2="9" stroke="black"/></svg>
  <div role="slider" tabindex="0" aria-valuetext="0"></div><script>
  const strip = document.querySelector('div');
  strip.onkeydown = ({ key }) => {
    const x = Number(strip.ariaValueText) + (key === 'ArrowRight' ? 1 : -1);
    line.setAttribute('x2', x);
    strip.ariaValueText = String(x);
  };</script>`;

/** Times of some rounds together. */
const rounds = async (round: () => Promise<readonly number[]>): Promise<readonly number[]> => {
  const all: number[] = [];
  for (let turn = 0; turn < ROUNDS; turn += 1) all.push(...(await round()));
  return all;
};

const plainKeys = async (browser: Browser): Promise<readonly number[]> => {
  const page = await browser.newPage();
  await page.setContent(PLAIN);
  const times = await rounds(() => page.evaluate(KEY_TIMES));
  await page.close();
  return times;
};

const batten = (page: Page): Locator => page.getByRole('region', { name: 'Batten and its lines' });

/** Along the batten by 120 px in twelve moves, and the times of the answers. */
const drag = async (page: Page): Promise<readonly number[]> => {
  await page.evaluate(NOTE_DRAG_TIMES);
  const box = await batten(page).getByRole('slider').boundingBox();
  const thumb = await batten(page).locator('.load-thumb').boundingBox();
  if (box === null || thumb === null) throw new Error('no load to drag');
  const x = thumb.x + thumb.width / 2;
  const y = box.y + box.height - 12;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 120, y, { steps: 12 });
  await page.mouse.up();
  return page.evaluate(dragTimes);
};

const onBatten = async (page: Page) => {
  await goTo(page, '/set/5');
  await batten(page).getByRole('slider').waitFor();
  const keys = await rounds(() => page.evaluate(KEY_TIMES));
  await batten(page).scrollIntoViewIfNeeded();
  return { keys, drags: await rounds(() => drag(page)) };
};

const onOrder = async (page: Page): Promise<readonly number[]> => {
  await goTo(page, '/order/9?job=strike');
  const step = (list: string): Locator =>
    page.getByRole('list', { name: list }).getByRole('button', { name: /^Step 1: / });
  await step('Steps of the found order').waitFor();
  await page.getByRole('button', { name: 'Change by hand' }).click();
  await step('Steps of the order changed by hand').click();
  await page.getByRole('button', { name: 'Take this step out' }).waitFor();
  return rounds(() => page.evaluate(CHANGE_TIMES));
};

const line = (what: string, ...values: readonly string[]): void => {
  console.log(`${what.padEnd(44)}${values.map((value) => value.padStart(13)).join('')}`);
};

const tell = (what: string, times: readonly number[], plain: number): void => {
  const [median, late] = [atShare(times, 0.5), atShare(times, 0.99)];
  const ratios = [`${(median / plain).toFixed(1)} x`, (median / FRAME).toFixed(2)];
  line(`  ${what}`, `${median.toFixed(1)} ms`, `${late.toFixed(1)} ms`, ...ratios);
};

export const run = async (): Promise<void> => {
  if ((await buildWeb()) !== 0) throw new Error('the screens could not be built');
  const [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  try {
    const plain = await plainKeys(browser);
    const reference = atShare(plain, 0.5);
    line('from the hand to the new picture laid out', 'median', '99th', 'plain page', 'frames');
    tell('a key on a plain page', plain, reference);
    const page = await openPage(browser, server.address);
    const { keys, drags } = await onBatten(page);
    tell('a key on a load of the batten', keys, reference);
    // A move of the pointer waits for the next picture before it is heard.
    tell('a drag of that load', drags, reference);
    tell('a step of an order out and back', await onOrder(page), reference);
  } finally {
    await browser.close();
    await server.stop();
  }
};

if (import.meta.main) await run();
