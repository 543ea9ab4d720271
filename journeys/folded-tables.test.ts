/**
 * A table that is laid out as blocks on a phone is a table still to who hears it: its rows, heads
 * and cells, by the accessibility tree of the browser and not by the marks in the page.
 */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { goTo, openBrowser, openPage } from './browser.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { HEAVIER } from './screens.ts';

const WITH_FOLDED = [
  '/which-set?piece=9',
  '/another-house?to=skelderwick',
  `/set/11/what-if?if=${encodeURIComponent(HEAVIER)}`,
  '/house/limits',
  '/house/found',
];

/** What a part of a table must be, by its element. */
const ROLES = {
  table: ['table'],
  tbody: ['rowgroup'],
  tr: ['row'],
  'th[scope=col]': ['columnheader'],
  'th[scope=row]': ['rowheader'],
  td: ['cell', 'gridcell'],
} as const;

const FOLDED = ':is(.folds, .folds-early, .stacked)';

let server: HouseServer;
let browser: Browser;
let page: Page;
let tools: CDPSession;

beforeAll(async () => {
  [server, browser] = await Promise.all([startHouseServer(), openBrowser()]);
  page = await openPage(browser, server.address, { width: 390 });
  tools = await page.context().newCDPSession(page);
  await tools.send('Accessibility.enable');
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** Role that the browser tells for each node of the page, by the node's own number. */
const toldRoles = async (): Promise<ReadonlyMap<number, string>> => {
  const { nodes } = await tools.send('Accessibility.getFullAXTree');
  return new Map(
    nodes.flatMap(({ backendDOMNodeId, role, ignored }) =>
      backendDOMNodeId === undefined || ignored ? [] : [[backendDOMNodeId, String(role?.value)]],
    ),
  );
};

const nodesOf = async (selector: string): Promise<readonly number[]> => {
  const { root } = await tools.send('DOM.getDocument', { depth: 0 });
  const { nodeIds } = await tools.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector });
  const described = await Promise.all(
    nodeIds.map((nodeId) => tools.send('DOM.describeNode', { nodeId })),
  );
  return described.map(({ node }) => node.backendNodeId);
};

/** Parts of folded tables themselves, and not of a table within a cell. */
const selectorOf = (part: string): string => {
  if (part === 'table') return `table${FOLDED}`;
  if (part === 'tbody') return `${FOLDED} > tbody`;
  const rows = `${FOLDED} > :is(thead, tbody) > tr`;
  return part === 'tr' ? rows : `${rows} > ${part}`;
};

describe('tables folded on a phone', () => {
  it.each(WITH_FOLDED)('%s keeps its rows, heads and cells', async (path) => {
    await goTo(page, path);
    await page.locator(FOLDED).first().waitFor();
    const display = await page
      .locator(`${FOLDED} > tbody > tr`)
      .first()
      .evaluate((row) => getComputedStyle(row).display);
    expect(display, 'the table is folded here').toMatch(/^(grid|flex)$/);
    const told = await toldRoles();
    for (const [part, roles] of Object.entries(ROLES)) {
      const nodes = await nodesOf(selectorOf(part));
      expect(nodes.length, part).toBeGreaterThan(0);
      const others = nodes
        .map((node) => told.get(node))
        // A cell with nothing in it is not laid out, and not told.
        .filter((role) => role !== undefined && !(roles as readonly string[]).includes(role));
      expect(others, `${part} told as something else`).toEqual([]);
      expect(nodes.some((node) => told.has(node))).toBe(true);
    }
  });
});
