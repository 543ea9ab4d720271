/**
 * Pictures of every screen in every size and light, to be looked at:
 * `node journeys/look.ts FOLDER [PART-OF-NAME]`.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { goTo, HEIGHTS, LIGHTS, openBrowser, openPage, WIDTHS } from './browser.ts';
import { startHouseServer } from './house-server.ts';
import { HEAVIER } from './screens.ts';

const SCREENS: Readonly<Record<string, string>> = {
  'hang-list': '/hang-list',
  'set-5': '/set/5',
  'set-11': '/set/11',
  'set-M1': '/set/M1',
  'set-D3': '/set/D3',
  'set-4-empty': '/set/4',
  'order-9-strike': '/order/9?job=strike',
  'order-11-load': '/order/11?job=load',
  'order-D3-none': '/order/D3?job=load',
  sheets: '/sheets',
  'sheets-card-11': '/sheets/balance-card/11',
  'sheets-hanging-card-5': '/sheets/hanging-card/5',
  'sheets-tickets': '/sheets/brick-tickets',
  'sheets-handover': '/sheets/handover',
  'sheets-preset-check': '/sheets/preset-check',
  drill: '/drill',
  section: '/house',
  'section-planned': '/house?at=cue%3A5',
  plan: '/house/plan',
  'which-set': '/which-set?piece=9',
  house: '/house/limits',
  'house-enter': '/house/enter',
  'house-enter-sets': '/house/enter/sets',
  'house-found': '/house/found',
  'what-if': `/set/11/what-if?if=${encodeURIComponent(HEAVIER)}`,
  'another-house': '/another-house?to=skelderwick',
  documents: '/documents',
  'documents-show': '/documents/show%3Avell',
  'bring-in': '/documents/bring-in',
  'take-out': '/documents/take-out?at=trim%3Aplaying',
  'self-check': '/self-check',
  'sheets-self-check': '/sheets/self-check',
  'skelderwick-hang-list': '/hang-list?house=skelderwick',
  'skelderwick-house': '/house/limits?house=skelderwick',
};

const [folder, part = ''] = process.argv.slice(2);
if (folder === undefined) {
  process.stderr.write('Say where: node journeys/look.ts FOLDER [PART-OF-NAME]\n');
  process.exit(2);
}
mkdirSync(folder, { recursive: true });

const server = await startHouseServer();
const browser = await openBrowser();
try {
  for (const width of WIDTHS) {
    for (const light of LIGHTS) {
      const page = await openPage(browser, server.address, { width, light });
      page.on('pageerror', (fault) => process.stderr.write(`${fault.message}\n`));
      for (const [name, path] of Object.entries(SCREENS)) {
        if (!name.includes(part)) continue;
        await goTo(page, path);
        // An order is searched for on another thread, and the picture waits for it.
        await page.waitForFunction(() => document.querySelector('.order-sum[role]') === null);
        await page.evaluate(() => document.fonts.ready.then(() => undefined));
        // A frame that stays in sight would else be drawn across the middle of a long picture.
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width, height });
        const file = join(folder, `${name}-${width}-${light}.png`);
        await page.screenshot({ path: file, fullPage: true });
        await page.setViewportSize({ width, height: HEIGHTS[width] });
        process.stdout.write(`${file}\n`);
      }
      await page.context().close();
    }
  }
} finally {
  await browser.close();
  await server.stop();
}
