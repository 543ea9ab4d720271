/**
 * A whole load-in of the example house, every step of every set that has an order and every brick
 * of it told aloud, folded from its events: here, in a real browser, and in one whose processor is
 * slowed to a quarter, as an old tablet's. The design gives 100 ms, so that a device which wakes up
 * shows how the house stands before a thumb is down. Beside it, in the same run, `JSON.parse` of
 * the same events: nothing can show them sooner than they are read. Run it by itself:
 * `node bench/call.bench.ts`.
 */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { foldAll } from '#call';
import type { HouseEvent } from '#events';
import { openBrowser } from '../journeys/browser.ts';
import { wholeLoadIn } from './load-in.ts';
import { atShare } from './main-thread.ts';

/** ms. */
const MOST = 100;
const RUNS = 200;
/** A device that has just been woken has run nothing yet: the first of all is told apart. */
type Times = { readonly fold: readonly number[]; readonly parse: readonly number[] };

const tell = (where: string, { fold, parse }: Times): number => {
  const [first = Number.NaN, ...warm] = fold;
  const [foldMs, parseMs] = [atShare(warm, 0.5), atShare(parse.slice(1), 0.5)];
  const late = atShare(warm, 0.99);
  const figures = [first, foldMs, late, parseMs].map((ms) => `${ms.toFixed(1)} ms`.padStart(11));
  console.log(
    `${where.padEnd(34)}${figures.join('')}${(foldMs / parseMs).toFixed(1).padStart(8)} x`,
  );
  return Math.max(first, late);
};

const timed = (work: () => unknown): number => {
  const from = performance.now();
  work();
  return performance.now() - from;
};

const here = (events: readonly HouseEvent[], text: string): Times => {
  const runs = Array.from({ length: RUNS }, () => ({
    fold: timed(() => foldAll(events)),
    parse: timed(() => JSON.parse(text)),
  }));
  return { fold: runs.map(({ fold }) => fold), parse: runs.map(({ parse }) => parse) };
};

/** The fold as a script of a page, made small as the screens are. */
const foldScript = async (): Promise<string> => {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    root: join(import.meta.dirname, '..'),
    build: {
      write: false,
      lib: { entry: 'call/fold.ts', formats: ['iife'], name: 'fold' },
    },
  });
  const [bundle] = Array.isArray(made) ? made : [made];
  if (bundle === undefined || !('output' in bundle)) throw new Error('the fold was not built');
  const [chunk] = bundle.output;
  return chunk.code;
};

/** Runs in the page. */
const TIMES = ({ text, runs }: { text: string; runs: number }): Times => {
  const { foldAll: folded } = (globalThis as unknown as { fold: { foldAll: typeof foldAll } }).fold;
  const times: { fold: number[]; parse: number[] } = { fold: [], parse: [] };
  for (let run = 0; run < runs; run++) {
    const from = performance.now();
    const events: HouseEvent[] = JSON.parse(text);
    const parsed = performance.now();
    const now = folded(events);
    const done = performance.now();
    if (now.seq !== events.length) throw new Error('not all was folded');
    times.parse.push(parsed - from);
    times.fold.push(done - parsed);
  }
  return times;
};

const inPage = async (page: Page, script: string, slow: number, text: string): Promise<Times> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slow });
  await page.goto('about:blank');
  await page.addScriptTag({ content: script });
  return page.evaluate(TIMES, { text, runs: RUNS });
};

export const run = async (): Promise<void> => {
  const { events, done, left, steps } = wholeLoadIn();
  const text = JSON.stringify(events);
  const plates = events.filter(({ kind }) => kind === 'plates counted').length;
  console.log(`${events.length} events of ${done.length} sets: ${steps} steps, ${plates} bricks`);
  for (const [set, why] of left) console.log(`not loaded: set ${set}, ${why}`);
  const heads = ['first', 'median', '99th', 'JSON.parse'].map((head) => head.padStart(11));
  console.log(`${'folded'.padEnd(34)}${heads.join('')}   ratio`);
  const slowest = [tell('  Node', here(events, text))];
  const [script, browser] = await Promise.all([foldScript(), openBrowser()]);
  try {
    const page = await browser.newPage();
    slowest.push(tell('  Chromium', await inPage(page, script, 1, text)));
    slowest.push(tell('  Chromium, slowed four times', await inPage(page, script, 4, text)));
  } finally {
    await browser.close();
  }
  if (Math.max(...slowest) > MOST) {
    console.error(`folded in more than ${MOST} ms`);
    process.exitCode = 1;
  }
};

if (import.meta.main) await run();
