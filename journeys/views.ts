/** One state of a screen in every size and light, looked at without loading it for each. */
import type { Page } from 'playwright-core';
import { ALL, COLOURS, violationsOf } from './axe.ts';
import { HEIGHTS, LIGHTS, type Light, type Width } from './browser.ts';

/**
 * A window with a mouse is opened narrow, drawn out wide and made narrow again, as a hand drags
 * its edge. The phone is touched, and its screens are opened as narrow as it is: some things are
 * looked up once, when a screen is opened.
 */
export const DEVICES = [
  { device: 'with a mouse', opened: 1024, widths: [1440, 1024] },
  { device: 'on a phone', opened: 390, widths: [390] },
] as const;

type Device = (typeof DEVICES)[number];

/** Drawings are as wide as the room they find, by the second frame after it has changed. */
const laidOut = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()));
      }),
  );

export const resized = async (page: Page, width: Width): Promise<void> => {
  await page.setViewportSize({ width, height: HEIGHTS[width] });
  await page.waitForFunction((wide) => window.innerWidth === wide, width);
  await laidOut(page);
};

/** As the choice of light does it. */
const lit = (page: Page, theme: Light): Promise<void> =>
  page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen;
  }, theme);

/** px; no screen is wider than the device. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const inLight = async (page: Page, light: Light): Promise<readonly string[]> => {
  await lit(page, light);
  // The dim light changes colours and nothing else: what goes by them is asked for again.
  const violations = await violationsOf(page, light === 'day' ? ALL : COLOURS);
  const wide = await tooWide(page);
  const lines = wide === 0 ? violations : [...violations, `${wide} px wider than the screen`];
  return lines.map((line) => `${light}: ${line}`);
};

/** What is wrong with the screen as it stands, in each width of the device and in each light. */
export const faultsInViews = async (page: Page, { widths }: Device): Promise<readonly string[]> => {
  const faults: string[] = [];
  for (const width of widths) {
    await resized(page, width);
    for (const light of LIGHTS) {
      const found = await inLight(page, light);
      faults.push(...found.map((line) => `${width} px, ${line}`));
    }
  }
  await lit(page, 'day');
  return faults;
};

/** Text twice as large, as a person sets it in the browser. */
export const enlarged = async (page: Page): Promise<void> => {
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await laidOut(page);
};
