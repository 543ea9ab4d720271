/** Tables, documents, drawings and archives in and out of the built program. */
import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeXlsx } from '#exchange';
import { goTo, openBrowser, openPage } from './browser.ts';
import { savedRevision, untilSaved } from './hang-list.ts';
import { type HouseServer, startHouseServer } from './house-server.ts';
import { DEVICES, faultsInViews } from './views.ts';

let server: HouseServer;
let fresh: HouseServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  [server, fresh, browser] = await Promise.all([
    startHouseServer(),
    startHouseServer(),
    openBrowser(),
  ]);
  page = await openPage(browser, server.address, { selfCheck: 'never' });
});
afterAll(async () => {
  await browser?.close();
  await Promise.all([server?.stop(), fresh?.stop()]);
});

const SHOW = 'show:vell';

type File = { readonly name: string; readonly buffer: Buffer };

const file = (name: string, bytes: Uint8Array): File => ({ name, buffer: Buffer.from(bytes) });

/** On the screen that takes files, whatever it took before. */
const handOver = (on: Page, { name, buffer }: File): Promise<void> =>
  on.getByLabel(/^A file:/).setInputFiles({ name, buffer, mimeType: 'application/octet-stream' });

const bringIn = async (on: Page, given: File): Promise<void> => {
  await goTo(on, '/documents/bring-in');
  await handOver(on, given);
};

const bytesOf = async (download: Download): Promise<Uint8Array> =>
  new Uint8Array(readFileSync(await download.path()));

/** What a press of a button gives. */
const taken = async (on: Page, name: string): Promise<{ name: string; bytes: Uint8Array }> => {
  const [download] = await Promise.all([
    on.waitForEvent('download'),
    on.getByRole('button', { name, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
};

const documentOf = async (address: string, id: string): Promise<Record<string, unknown>> => {
  const response = await fetch(`${address}/api/documents/${encodeURIComponent(id)}`);
  return ((await response.json()) as { document: Record<string, unknown> }).document;
};

describe('a foreign list', () => {
  const list = [
    'Hung for the tour;;;;',
    'Bar;Piece;Out;Weigh;Colour',
    '2;Red valance;38;12;red',
    '9;Harbour drop;60;;blue',
  ].join('\r\n');

  it('is guessed by its headings, and asks for the unit of bare numbers', async () => {
    await bringIn(page, file('tour list.csv', strToU8(list)));
    await page.getByRole('heading', { name: 'tour list.csv is a table' }).waitFor();
    expect(await page.getByLabel('Piece is').inputValue()).toContain('name');
    expect(await page.getByLabel('Colour is').inputValue()).toBe('');
    const change = page.getByRole('region', { name: 'What would change' });
    expect(await change.textContent()).toMatch(/1 question open[\s\S]*Columns left out: Weigh, Co/);
    expect(await change.textContent()).toContain('2 bare numbers, the first "38"');
    expect(await change.getByRole('button', { name: /take/i }).isDisabled()).toBe(true);
    const unit = page.getByLabel('Unit of Out', { exact: true });
    expect(await unit.inputValue()).toBe('');
    expect(await unit.locator('option').allTextContents()).toEqual(
      expect.arrayContaining(['ft', 'm', 'mm']),
    );
  });

  it('shows what each cell would become, in the unit that a person said', async () => {
    await page.getByLabel('Unit of Out', { exact: true }).selectOption('ft');
    await page.getByLabel('Out is').selectOption({ label: 'Trim: playing (batten)' });
    // Another field: the unit of the first says nothing of it.
    expect(await page.getByLabel('Unit of Out', { exact: true }).inputValue()).toBe('');
    await page.getByLabel('Unit of Out', { exact: true }).selectOption('ft');
    const refused = page.getByRole('region', { name: 'Refused cells' });
    await refused.waitFor();
    await expect.poll(() => refused.textContent()).toMatch(/tour list!C3[\s\S]*EXC-037/);
    await page.getByLabel('Basis').selectOption('estimated');
    await page.getByLabel('Source').fill('list of the tour');
    const row = page.getByRole('row', { name: /Set 2, Trim: playing/ });
    await row.waitFor();
    await expect.poll(() => row.textContent()).toMatch(/tour list!C3[\s\S]*38 ft/);
  });

  it('refuses a cell with its place while another column is mapped wrongly', async () => {
    await page.getByLabel('Colour is').selectOption({ label: 'Family' });
    const refused = page.getByRole('region', { name: 'Refused cells' });
    await refused.waitFor();
    await expect
      .poll(() => refused.textContent())
      .toMatch(/tour list!E3[\s\S]*"red"[\s\S]*EXC-036/);
    await page.getByLabel('Colour is').selectOption('');
    await refused.waitFor({ state: 'detached' });
  });

  it('is taken as one edit, and undone as one', async () => {
    const before = await documentOf(server.address, SHOW);
    const take = page.getByRole('button', { name: /^Take \d changes$/ });
    await take.click();
    await page.getByText(/changes taken as one edit/).waitFor();
    await untilSaved(page, SHOW, 2);
    expect(JSON.stringify(await documentOf(server.address, SHOW))).toContain('Red valance');
    await page.getByRole('button', { name: 'Undo' }).click();
    await untilSaved(page, SHOW, 3);
    expect(await documentOf(server.address, SHOW)).toEqual(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  });

  it('keeps the mapping on this device, and offers it for the same headings', async () => {
    await page.getByText('Keep this mapping on this device').click();
    await page.getByLabel('under the name').fill('the tour');
    await page.getByRole('button', { name: 'Keep it' }).click();
    await bringIn(page, file('tour list 2.csv', strToU8(list)));
    await page.getByRole('button', { name: 'Map them as the tour' }).click();
    expect(await page.getByLabel('Unit of Out', { exact: true }).inputValue()).toBe('ft');
    expect(await page.getByLabel('Out is').inputValue()).toContain('playing');
    await page.getByRole('button', { name: 'Forget the tour' }).click();
    await page.getByRole('button', { name: 'Map them as the tour' }).waitFor({ state: 'detached' });
  });
});

const partText = (parts: Readonly<Record<string, Uint8Array>>, path: string): string => {
  const part = parts[path];
  if (part === undefined) throw new Error(`no ${path} in it`);
  return strFromU8(part);
};

/** Our own workbook with one cell made a formula. */
const withFormula = (): Uint8Array => {
  const parts = unzipSync(
    writeXlsx({
      name: 'Plot',
      rows: [
        ['Set', 'Name'],
        ['2', 'Valance'],
      ],
    }),
  );
  const path = 'xl/worksheets/sheet1.xml';
  const xml = partText(parts, path).replace(
    /<c r="B2"[^>]*>.*?<\/c>/s,
    '<c r="B2"><f>HYPERLINK("http://127.0.0.1:1/x","Valance")</f><v>0</v></c>',
  );
  return zipSync({ ...parts, [path]: strToU8(xml) });
};

/** 64 MiB of noughts in a few kB, as the sheet of a workbook. */
const bomb = (): Uint8Array =>
  zipSync({
    'xl/workbook.xml': strToU8('<workbook/>'),
    'xl/worksheets/sheet1.xml': new Uint8Array(64 * 1024 * 1024),
  });

const PNG = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d);

describe('a file that means no good', () => {
  beforeAll(() => goTo(page, '/documents/bring-in'));

  it('with a formula is shown as one, and refused by the name of its cell', async () => {
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await bringIn(page, file('plot.xlsx', withFormula()));
    const refused = page.getByRole('region', { name: 'Refused cells' });
    await refused.waitFor();
    await expect.poll(() => refused.textContent()).toMatch(/Plot!B2[\s\S]*formula[\s\S]*HYPERLINK/);
    expect(await page.getByRole('button', { name: 'Nothing to take' }).isDisabled()).toBe(true);
    expect(asked.filter((url) => !url.startsWith(server.address))).toEqual([]);
  });

  it.each([
    ['bomb.xlsx', bomb(), /EXC-008/, /bytes opened/],
    ['photo.xlsx', PNG, /EXC-002/, /a picture/],
    ['page.csv', strToU8('<html><script>alert(1)</script>'), /EXC-002/, /a page in HTML/],
    ['list.csv', Uint8Array.of(0xff, 0xfe, 0x53, 0, 0x65, 0), /EXC-002/, /UTF-16/],
    ['list.csv', strToU8('Set,Name\n1,a\u0000b'), /EXC-002/, /bytes that are no text/],
    ['wide.csv', strToU8(`Set${','.repeat(500)}x`), /EXC-011/, /column 151/],
    ['long.csv', strToU8('1\n'.repeat(6000)), /EXC-010/, /row 5001/],
    ['huge.csv', new Uint8Array(5 * 1024 * 1024).fill(0x31), /EXC-003/, /5242880 bytes/],
    ['show.json', strToU8('{"__proto__": {"format": "counterpoise-show"}}'), /DOC-0/, /__proto__/],
    ['some.zip', zipSync({ 'a.txt': strToU8('a') }), /ARC-001/, /no manifest.json/],
    ['what.exe', strToU8('MZ'), /EXC-001/, /what\.exe/],
  ])('%s is refused, and everything stays', async (name, bytes, code, words) => {
    const revision = await savedRevision(page, SHOW);
    expect(revision).toBeGreaterThan(0);
    await handOver(page, file(name, bytes));
    const notice = page.getByRole('alert');
    // The file before it was refused here too: its notice goes when this one is read.
    await expect.poll(() => notice.textContent()).toMatch(words);
    const text = await notice.textContent();
    expect(text).toContain('was not understood');
    expect(text).toMatch(code);
    expect(await savedRevision(page, SHOW)).toBe(revision);
  });

  it('that takes too long is given up, by a person or by the clock', async () => {
    const there = await openPage(browser, server.address, { selfCheck: 'never' });
    await there.clock.install();
    // The thread that reads never starts, as if it never came to an end.
    await there.route('**/read.worker-*.js', () => {});
    await bringIn(there, file('slow.csv', strToU8('Set,Name\n2,Valance')));
    await there.getByText('Reading slow.csv …').waitFor();
    await there.getByRole('button', { name: 'Cancel' }).click();
    await there.getByText('The reading was given up. Nothing was changed.').waitFor();
    await bringIn(there, file('slow.csv', strToU8('Set,Name\n2,Valance')));
    await there.getByText('Reading slow.csv …').waitFor();
    await there.clock.fastForward(31_000);
    await there.getByText('It was not read within 30 s. Nothing was changed.').waitFor();
    await there.context().close();
  });

  it('has its markup and its turning signs shown as what they are', async () => {
    const list = 'Set,Name\r\n2,<img src=x onerror=alert(1)>\u202Egnp\r\n';
    await bringIn(page, file('odd.csv', strToU8(list)));
    const columns = page.getByRole('region', { name: 'Columns of the table' });
    expect(await columns.textContent()).toContain('<img src=x onerror=alert(1)');
    expect(await page.locator('main img').count()).toBe(0);
    await page.getByRole('region', { name: 'Refused cells' }).waitFor();
    expect(await page.getByRole('region', { name: 'Refused cells' }).textContent()).toMatch(
      /U\+202E[\s\S]*DOC-/,
    );
  });
});

describe.each(DEVICES)('the steps of bringing in, $device', (device) => {
  let there: Page;
  beforeAll(async () => {
    there = await openPage(browser, server.address, { width: device.opened, selfCheck: 'never' });
  });
  afterAll(() => there.context().close());

  it('are clear of faults that axe knows: a table with questions, refusals, changes', async () => {
    const list = 'Bar,Piece,Out,Family\r\n2,=Valance,38,red\r\n';
    await bringIn(there, file('list.csv', strToU8(list)));
    await there.getByRole('region', { name: 'Questions' }).waitFor();
    expect(await faultsInViews(there, device)).toEqual([]);
    await there.getByLabel('Unit of Out', { exact: true }).selectOption('ft');
    await there.getByRole('region', { name: 'Refused cells' }).waitFor();
    expect(await faultsInViews(there, device)).toEqual([]);
    await there.getByLabel('Family is').selectOption('');
    await there.getByLabel('Basis').selectOption('estimated');
    await there.getByRole('region', { name: 'Changes' }).waitFor();
    expect(await faultsInViews(there, device)).toEqual([]);
  });

  it('are clear of faults that axe knows: a document and what differs in it', async () => {
    const show = { ...(await documentOf(server.address, SHOW)), name: 'Another name' };
    await bringIn(there, file('show.json', strToU8(JSON.stringify(show))));
    await there.getByText('one place differs').click();
    expect(await faultsInViews(there, device)).toEqual([]);
  });
});

describe('what is taken out', () => {
  it('has section and plan as SVG and DXF, at the moment of the address', async () => {
    await goTo(page, '/documents/take-out?at=trim%3Aplaying');
    const svg = await taken(page, 'Section as SVG');
    expect(svg.name).toBe('vell-section-trim-playing-1-48.svg');
    expect(strFromU8(svg.bytes)).toMatch(/^<\?xml[\s\S]*PLANNED[\s\S]*<\/svg>\s*$/);
    await page.getByLabel('Unit of the model (DXF)').selectOption('mm');
    const dxf = await taken(page, 'Plan as DXF');
    expect(dxf.name).toBe('vell-plan-trim-playing-mm.dxf');
    expect(strFromU8(dxf.bytes)).toMatch(/AC1009[\s\S]*BATTENS[\s\S]*EOF\r\n$/);
    const previews = page.getByRole('img', { name: /as it will be on paper/ });
    expect(await previews.count()).toBe(2);
    expect(
      await previews.first().evaluate((image) => (image as HTMLImageElement).naturalWidth),
    ).toBeGreaterThan(0);
  });

  it('is a table that changes nothing when it is brought in again', async () => {
    for (const name of ['Hang list as CSV', 'Take-off as XLSX']) {
      await goTo(page, '/documents/take-out');
      const table = await taken(page, name);
      await bringIn(page, file(table.name, table.bytes));
      await page.getByText('The table says nothing that is not in the show already.').waitFor();
    }
  });
});

describe('a document as JSON', () => {
  it('is taken in the place of the show in hand, or as one of its own', async () => {
    await goTo(page, '/documents/take-out');
    const json = await taken(page, 'The show, The Clockmaker of Vell as JSON');
    expect(json.name).toMatch(/^show-vell-revision-\d+\.json$/);
    const show = JSON.parse(strFromU8(json.bytes)) as Record<string, unknown>;
    const copy = { ...show, id: 'vell-tour', name: 'Vell on tour' };
    await bringIn(page, file('tour.json', strToU8(JSON.stringify(copy))));
    await page.getByText('not here yet').waitFor();
    await page.getByLabel('Vell on tour is meant as').selectOption('next');
    await page.getByText('one place differs').waitFor();
    await page.getByLabel('Vell on tour is meant as').selectOption('new');
    await page.getByLabel('Vell on tour as a new document').check();
    await page.getByRole('button', { name: 'Take what is ticked' }).click();
    await page.getByText('1 of 1 taken.').waitFor();
    expect(await documentOf(server.address, 'show:vell-tour')).toEqual(copy);
    await page.getByText('the same', { exact: true }).waitFor();
  });
});

describe('an archive', () => {
  let archive: { name: string; bytes: Uint8Array };

  it('has every revision, tables and drawings, and says so', async () => {
    await goTo(page, '/documents/take-out');
    archive = await taken(page, 'Make the archive');
    expect(archive.name).toMatch(/^counterpoise-\d{4}-.*\.zip$/);
    const names = Object.keys(unzipSync(archive.bytes));
    expect(names).toEqual(
      expect.arrayContaining([
        'manifest.json',
        'documents/show-vell/revision-0001.json',
        'documents/show-vell/revision-0003.json',
        'shows/kestlemere/vell/schedule.xlsx',
        'shows/kestlemere/vell/section-as-recorded.svg',
      ]),
    );
    await page.getByText(/was made: \d+ files/).waitFor();
    expect(await page.getByText('Not in it: sheets (not asked for).').isVisible()).toBe(true);
  });

  it('brought into a fresh database gives the same schedule', async () => {
    await bringIn(page, file('more.csv', strToU8('Set,Name\n2,Valance of the archive\n')));
    const next = (await savedRevision(page, SHOW)) + 1;
    await page.getByRole('button', { name: 'Take 1 change' }).click();
    await untilSaved(page, SHOW, next);
    await goTo(page, '/documents/take-out');
    archive = await taken(page, 'Make the archive');
    const ours = strFromU8((await taken(page, 'Hang list as CSV')).bytes);
    expect(ours).toContain('Valance of the archive');

    const there = await openPage(browser, fresh.address, { selfCheck: 'never' });
    await goTo(there, '/documents/take-out');
    expect(strFromU8((await taken(there, 'Hang list as CSV')).bytes)).not.toBe(ours);
    await bringIn(there, file(archive.name, archive.bytes));
    await there.getByText(/An archive of .* files, each as it was packed/).waitFor();
    await there.getByLabel('The Clockmaker of Vell as the next revision').check();
    await there.getByRole('button', { name: 'Take what is ticked' }).click();
    await there.getByText('1 of 1 taken.').waitFor();
    await untilSaved(there, SHOW, 2);
    await goTo(there, '/documents/take-out');
    expect(strFromU8((await taken(there, 'Hang list as CSV')).bytes)).toBe(ours);
    await there.context().close();
  });

  it('that is damaged is refused by the name of the file', async () => {
    const parts = unzipSync(archive.bytes);
    const path = 'documents/house-kestlemere/revision-0001.json';
    const text = partText(parts, path).replace('Kestlemere', 'Kestlemare');
    await bringIn(page, file('damaged.zip', zipSync({ ...parts, [path]: strToU8(text) })));
    const notice = page.getByRole('alert');
    await notice.waitFor();
    expect(await notice.textContent()).toContain(`${path}: found`);
    expect(await notice.textContent()).toContain('ARC-008');
  });

  it('is asked for sheets only by who wants to wait, and can be given up', async () => {
    await goTo(page, '/documents/take-out');
    await page.getByLabel('Sheets as PDF').selectOption('a4');
    await page.getByRole('button', { name: 'Make the archive' }).click();
    await page.getByText(/^Sheets of /).waitFor();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('It was given up. Nothing was kept of it.').waitFor();
  });
});
