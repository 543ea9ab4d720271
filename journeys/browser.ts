/** A browser of this machine, and pages of it in a given size and light. */
import { type Browser, chromium, type Page } from 'playwright-core';
import { CHROMIUM_ADVICE, ensureChromium } from '../tools/running/chromium.ts';

export const WIDTHS = [1440, 1024, 390] as const;
export const LIGHTS = ['day', 'dim'] as const;

export type Width = (typeof WIDTHS)[number];
export type Light = (typeof LIGHTS)[number];

export const HEIGHTS: Readonly<Record<Width, number>> = { 1440: 900, 1024: 768, 390: 844 };

/** `more`: arguments of the browser itself, such as a name that leads to this machine. */
export const openBrowser = async (more: readonly string[] = []): Promise<Browser> => {
  const executablePath = await ensureChromium();
  if (executablePath === undefined) throw new Error(CHROMIUM_ADVICE);
  return chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-dev-shm-usage', ...more],
  });
};

/** What is right is asked here, not how soon: a slow or busy machine takes its time. */
const PATIENCE_MS = 60_000;

export type SelfCheckTime = 'inIdleTime' | 'never' | 'atOnce';

type PageOptions = {
  readonly width?: Width;
  readonly light?: Light;
  /**
   * When the page finds time for its self-check, a second of work after each load: as the browser
   * gives it, and on a busy machine that is late; or never, in journeys that load many screens and
   * are not about it; or at once, in those that wait for what it says.
   */
  readonly selfCheck?: SelfCheckTime;
  /** Whether the browser keeps the screens: what it keeps, no journey can see on its way. */
  readonly startsOffline?: boolean;
};

/** A page with a memory of its own; a narrow one is touched. What it throws ends the journey. */
export const openPage = async (
  browser: Browser,
  address: string,
  {
    width = 1440,
    light = 'day',
    selfCheck = 'inIdleTime',
    startsOffline = false,
  }: PageOptions = {},
): Promise<Page> => {
  const context = await browser.newContext({
    baseURL: address,
    viewport: { width, height: HEIGHTS[width] },
    hasTouch: width === 390,
    colorScheme: light === 'dim' ? 'dark' : 'light',
    reducedMotion: 'reduce',
    serviceWorkers: startsOffline ? 'allow' : 'block',
  });
  context.setDefaultTimeout(PATIENCE_MS);
  if (selfCheck === 'never') {
    await context.addInitScript(() => {
      window.requestIdleCallback = () => 0;
    });
  }
  if (selfCheck === 'atOnce') {
    await context.addInitScript(() => {
      const idle = { didTimeout: false, timeRemaining: () => 50 };
      window.requestIdleCallback = (call) => window.setTimeout(() => call(idle), 0);
    });
  }
  return context.newPage();
};

/** Stands where a part of a screen will be whose script is not here yet. */
const FETCHING = 'Fetching this screen …';

/** The screen is there when its head and its parts are: documents are read and reckoned by then. */
export const goTo = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.getByText(FETCHING).first().waitFor({ state: 'detached' });
};
