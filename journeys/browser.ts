/** A browser of this machine, and pages of it in a given size and light. */
import { type Browser, chromium, type Page } from 'playwright-core';
import { CHROMIUM_ADVICE, ensureChromium } from '../tools/running/chromium.ts';

export const WIDTHS = [1440, 1024, 390] as const;
export const LIGHTS = ['day', 'dim'] as const;

export type Width = (typeof WIDTHS)[number];
export type Light = (typeof LIGHTS)[number];

export const HEIGHTS: Readonly<Record<Width, number>> = { 1440: 900, 1024: 768, 390: 844 };

export const openBrowser = async (): Promise<Browser> => {
  const executablePath = await ensureChromium();
  if (executablePath === undefined) throw new Error(CHROMIUM_ADVICE);
  return chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-dev-shm-usage'] });
};

type PageOptions = { readonly width?: Width; readonly light?: Light };

/** A page with a memory of its own; a narrow one is touched. What it throws ends the journey. */
export const openPage = async (
  browser: Browser,
  address: string,
  { width = 1440, light = 'day' }: PageOptions = {},
): Promise<Page> => {
  const context = await browser.newContext({
    baseURL: address,
    viewport: { width, height: HEIGHTS[width] },
    hasTouch: width === 390,
    colorScheme: light === 'dim' ? 'dark' : 'light',
    reducedMotion: 'reduce',
  });
  context.setDefaultTimeout(10_000);
  return context.newPage();
};

/** The screen is there when its head is: documents are read and reckoned by then. */
export const goTo = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
};
