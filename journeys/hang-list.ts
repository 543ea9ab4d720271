/** How a person works on the hang list: by the words that stand there, not by our class names. */

import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

export const grid = (page: Page): Locator => page.getByRole('grid');

/** The row of one set, found by the link that opens it. */
export const rowOf = (page: Page, set: string): Locator =>
  grid(page)
    .getByRole('link', { name: `Set ${set}, open it`, exact: true })
    .locator('xpath=ancestor::*[self::tr or @role="row"][1]');

/** Number of the column under a head, among the cells of a whole row. */
const columnUnder = async (page: Page, head: RegExp): Promise<number> => {
  const heads = await grid(page).locator('thead').getByRole('columnheader').allTextContents();
  const column = heads.findIndex((text) => head.test(text));
  expect(column, `a column for ${head} among ${heads.join(' | ')}`).toBeGreaterThan(0);
  return column;
};

export const textUnder = async (page: Page, set: string, head: RegExp): Promise<string> => {
  const column = await columnUnder(page, head);
  const cells = rowOf(page, set).locator(':scope > th, :scope > td');
  return wordsOf(cells.nth(column));
};

export const openItems = async (page: Page, set: string): Promise<Locator> => {
  await rowOf(page, set)
    .getByRole('button', { name: new RegExp(`items? of set ${set}$`) })
    .click();
  return page.getByRole('table', { name: new RegExp(`What hangs on set ${set}\\.`) });
};

/** Selects a cell, opens it as in a sheet, and types; Enter is the caller's. */
export const typeInto = async (page: Page, cell: Locator, text: string): Promise<Locator> => {
  await cell.focus();
  await page.keyboard.press('Enter');
  const field = cell.getByRole('textbox');
  await field.fill(text);
  return field;
};

/** The cell of an item that holds its mass: the first of three under "mass", by its place. */
export const massCell = (items: Locator, item: string): Locator =>
  items
    .getByRole('row')
    .filter({ hasText: item })
    .first()
    .locator(':scope > th, :scope > td')
    .nth(2);

export const savedRevision = async (page: Page, document: string): Promise<number> => {
  const answer = await page.request.get(`/api/documents/${document}`);
  return ((await answer.json()) as { readonly revision: number }).revision;
};

export const untilSaved = async (page: Page, document: string, revision: number): Promise<void> => {
  await expect.poll(() => savedRevision(page, document)).toBe(revision);
};

/** Nothing that was done on this page is still on its way to the server. */
export const untilAllSaved = async (page: Page): Promise<void> => {
  const unsaved = page.getByRole('status').filter({ hasText: /^not saved|^server not reached/ });
  await expect.poll(() => unsaved.count(), { message: 'edits not saved' }).toBe(0);
};

/** What stands there, in one line. */
export const wordsOf = async (place: Locator): Promise<string> =>
  ((await place.textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();
