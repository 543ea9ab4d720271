import pdfmake from 'pdfmake';
import { describe, expect, it } from 'vitest';
import type { Block, Sheet } from '#sheets';
import { PAPERS, renderPdf, renderSheets } from './index.ts';
import { readBack } from './read-back.ts';
import { drawingOf, sampleSheet } from './sample-sheet.ts';
import { bodyWords, edgeWords } from './sheet-words.ts';

const FRAME = 'DEMO: an invented house and show';

const pagesOf = async (sheet: Sheet, paper: 'letter' | 'a4' = 'letter') =>
  readBack(await renderPdf(sheet, paper));

const textOf = async (sheet: Sheet): Promise<string> =>
  (await pagesOf(sheet)).map(({ text }) => text).join('');

const table = (rows: readonly string[][], isGrouped = false): Block => ({
  kind: 'table',
  columns: [
    { head: 'Item', align: 'left', share: 2 },
    { head: 'Mass', unit: 'lb', align: 'right', share: 1 },
  ],
  rows: rows.map((cells, index) => ({
    cells: cells.map((cell) => [cell]),
    rule: 'hair' as const,
    isGroup: isGrouped && index === 0,
  })),
});

describe.each(['letter', 'a4'] as const)('a sheet on %s', (paper) => {
  const sheet = sampleSheet({ frame: FRAME });

  it('says everything that the sheet says', async () => {
    const text = (await pagesOf(sheet, paper)).map((page) => page.text).join('');
    for (const words of bodyWords(sheet)) expect(text).toContain(words);
  });

  it('carries header, footer, frame and its number on every page', async () => {
    const pages = await pagesOf(sheet, paper);
    expect(pages.length).toBeGreaterThan(1);
    pages.forEach(({ text }, index) => {
      for (const words of edgeWords(sheet)) expect(text).toContain(words);
      const place = `page${index + 1}of${pages.length}`;
      expect(text).toContain(`4,${place}`);
      expect(text.split(place)).toHaveLength(3);
    });
  });

  it.each(['portrait', 'landscape'] as const)(
    'lies on the paper asked for, %s',
    async (orientation) => {
      const [page] = await pagesOf(sampleSheet({ orientation }), paper);
      const { width, height } = PAPERS[paper];
      const [across, down] = orientation === 'portrait' ? [width, height] : [height, width];
      expect(page?.width).toBeCloseTo(across, 1);
      expect(page?.height).toBeCloseTo(down, 1);
    },
  );

  it('is the same file twice', async () => {
    const [one, other] = [await renderPdf(sheet, paper), await renderPdf(sheet, paper)];
    expect(Buffer.compare(one, other)).toBe(0);
  });
});

describe('several sheets in one file', () => {
  it('begin a page each and count their own', async () => {
    const sheets = [
      sampleSheet({ name: 'First', frame: FRAME }),
      sampleSheet({ name: 'Second', orientation: 'landscape' }),
      sampleSheet({ name: 'Third', blocks: [{ kind: 'text', words: ['short'] }] }),
    ];
    const pages = readBack(await renderSheets(sheets, 'letter'));
    const alone = await Promise.all(sheets.map((sheet) => pagesOf(sheet)));
    expect(pages).toEqual(alone.flat());
  });

  it('are at least one', async () => {
    await expect(renderSheets([], 'letter')).rejects.toThrow('at least one sheet');
  });
});

describe('what a file is', () => {
  it('says nothing of a frame on a sheet of a real house', async () => {
    expect(await textOf(sampleSheet())).not.toContain('DEMO');
  });

  it('bears the date of the stamp and no other', async () => {
    const file = Buffer.from(await renderPdf(sampleSheet(), 'letter')).toString('latin1');
    expect(file).toContain('(D:20261125175500Z)');
    await expect(renderPdf(sampleSheet({ printedAt: 'today' }), 'letter')).rejects.toThrow(
      'ISO date',
    );
  });

  it('changes with the sheet', async () => {
    const one = await renderPdf(sampleSheet(), 'letter');
    const other = await renderPdf(sampleSheet({ beside: 'beside it: 10 empty' }), 'letter');
    expect(Buffer.compare(one, other)).not.toBe(0);
  });

  it('holds each weight of the face that it uses once', async () => {
    const file = Buffer.from(await renderPdf(sampleSheet(), 'letter')).toString('latin1');
    const names = [...file.matchAll(/\/FontName \/\w+\+(\S+)/g)].map(([, name]) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual([
      'EncodeSans-Bold',
      'EncodeSansSemiCondensed-Regular',
      'EncodeSansSemiCondensed-SemiBold',
    ]);
  });
});

describe('letters', () => {
  it('prints the names of Europe and Vietnam as they are, on drawings too', async () => {
    const name = 'Příběh Łódź Ștefan Đặng Győr';
    const blocks: readonly Block[] = [{ kind: 'drawing', drawing: drawingOf(name) }];
    const text = await textOf(sampleSheet({ name, blocks }));
    expect(text.split(name.replaceAll(' ', ''))).toHaveLength(4);
  });

  it('prints the number of a letter that the face has not, on drawings too', async () => {
    const blocks: readonly Block[] = [
      { kind: 'text', words: ['Ωmega'] },
      { kind: 'drawing', drawing: drawingOf('снег') },
    ];
    const text = await textOf(sampleSheet({ blocks }));
    expect(text).toContain('[U+03A9]mega');
    expect(text).toContain('[U+0441][U+043D][U+0435][U+0433]');
  });

  it('reads back a hyphen as the hyphen that was written', async () => {
    const blocks: readonly Block[] = [{ kind: 'text', words: ['a\u2011b c-d'] }];
    expect(await textOf(sampleSheet({ blocks }))).toContain('a\u2011bc-d');
  });
});

const COUNTED = (count: number, word: string): string =>
  Array.from({ length: count }, (_, index) => `${word}${index}`).join(' ');

describe('nothing is lost', () => {
  const long = COUNTED(900, 'w');
  const cases: readonly (readonly [string, readonly Block[]])[] = [
    [
      'a cell longer than a page',
      [
        table([
          ['short', '1'],
          [long, '2'],
          ['after', '3'],
        ]),
      ],
    ],
    [
      'the first cell of a table',
      [
        table([
          [long, '1'],
          ['after', '2'],
        ]),
      ],
    ],
    [
      'a group longer than a page',
      [
        table(
          [['Group', ''], ...Array.from({ length: 90 }, (_, row) => [`row ${row}`, `${row}`])],
          true,
        ),
      ],
    ],
    [
      'a cell of a group longer than a page',
      [
        table(
          [
            ['Group', ''],
            [long, '1'],
            ['after', '2'],
          ],
          true,
        ),
      ],
    ],
    [
      'a notice longer than a page',
      [{ kind: 'notice', degree: 'danger', heading: 'Not held', words: [long] }],
    ],
    ['a heading before a long table', [{ kind: 'heading', text: 'Above' }, table([[long, '1']])]],
    [
      'a list whose first item is longer than a page',
      [{ kind: 'list', heading: 'Remarks', items: [[long], ['after']] }],
    ],
    [
      'a ticket longer than a page',
      [
        {
          kind: 'tickets',
          perRow: 2,
          tickets: [[{ kind: 'text', words: [long] }], [{ kind: 'text', words: ['after'] }]],
        },
      ],
    ],
    [
      'columns longer than a page',
      [
        {
          kind: 'columns',
          shares: [0.5, 0.5],
          columns: [[{ kind: 'text', words: [long] }], [{ kind: 'text', words: ['after'] }]],
        },
      ],
    ],
    ['a word longer than a line', [{ kind: 'text', words: ['W'.repeat(400)] }]],
  ];

  it.each(cases)('of %s', async (_name, blocks) => {
    for (const orientation of ['portrait', 'landscape'] as const) {
      const sheet = sampleSheet({ blocks, orientation });
      const pages = await pagesOf(sheet);
      // What stands round a body that runs over a page stands between its words.
      const edges = pages.map(
        ({ text }, index) => text.slice(0, text.indexOf('Samplesheet11')) + index,
      );
      const body = edges.map((text, index) => text.slice(0, -`${index}`.length)).join('');
      const wanted = bodyWords(sheet).flatMap(
        (words) => words.match(/w\d+(?=w|$)|^[^w].*$|W+/g) ?? [],
      );
      expect(wanted.length).toBeGreaterThan(0);
      for (const word of new Set(wanted)) expect(body).toContain(word);
    }
  });

  it('of a long name, and the body begins below it', async () => {
    const name = COUNTED(40, 'name');
    const facts = [
      { term: 'house', value: COUNTED(30, 'house') },
      { term: 'revision', value: COUNTED(20, 'rev') },
    ];
    const sheet = sampleSheet({ name, facts, beside: COUNTED(30, 'beside') });
    const pages = await pagesOf(sheet);
    for (const { text } of pages) {
      for (const words of edgeWords(sheet)) expect(text).toContain(words);
    }
  });
});

describe('what a sheet says opens nothing', () => {
  const paths = [
    '/etc/hostname',
    'file:///etc/hostname',
    'http://localhost:1/x.png',
    'data:image/png;base64,AA',
  ];

  it.each(paths)('%s stays words', async (path) => {
    const blocks: readonly Block[] = [
      { kind: 'text', words: [path, { strong: path }] },
      { kind: 'drawing', drawing: drawingOf(`<image href="${path}"/>`) },
      table([[path, path]]),
    ];
    const text = await textOf(sampleSheet({ name: path, blocks }));
    expect(text).toContain(`${path}${path}`);
    expect(text).toContain(`<imagehref="${path}"/>`);
  });

  it.each(['/etc/hostname', '../package.json', 'EncodeSans-Bold.woff'])(
    'a picture of the path %s is refused',
    async (image) => {
      await renderPdf(sampleSheet(), 'letter');
      await expect(pdfmake.createPdf({ content: [{ image }] }).getBuffer()).rejects.toThrow(
        'denied by resource access policy',
      );
    },
  );

  it('a picture of an address is refused before it is asked for', async () => {
    const content = [{ image: 'far' }];
    const images = { far: 'http://localhost:1/x.png' };
    await expect(pdfmake.createPdf({ content, images }).getBuffer()).rejects.toThrow(
      'Access to URL denied',
    );
  });
});
