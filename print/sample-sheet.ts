/** A sheet with every kind of block on it, for the tests of this room. */
import { type Drawing, lettering, rect } from '#drawings';
import type { Block, Inline, Sheet } from '#sheets';

const strong = (text: string): Inline => ({ strong: text });
const blank = (letters: number): Inline => ({ blank: letters });
const box: Inline = { box: true };

export const drawingOf = (words: string, width = 240, height = 120): Drawing => ({
  width,
  height,
  title: words,
  shapes: [
    rect(1, 1, width - 2, height - 2, { stroke: 'ink', hatch: 'lock' }),
    lettering(10, 30, words, 14, { backed: true }),
  ],
});

export const everyBlock: readonly Block[] = [
  { kind: 'notice', degree: 'plain', heading: 'PLAIN NOTICE', words: ['plain words'] },
  { kind: 'notice', degree: 'note', heading: 'Noted', words: ['note words'] },
  { kind: 'notice', degree: 'caution', heading: 'Look first', words: ['caution words'] },
  { kind: 'notice', degree: 'danger', heading: 'Not held', words: ['danger words'] },
  {
    kind: 'columns',
    shares: [0.5, 0.5],
    columns: [
      [{ kind: 'drawing', drawing: drawingOf('drawn words') }],
      [
        {
          kind: 'table',
          columns: [
            { head: 'At', unit: 'ft', align: 'left', share: 1 },
            { head: 'Imbalance', unit: 'lb', align: 'right', share: 1 },
          ],
          rows: [
            { cells: [['out trim'], [strong('24 lb'), ' arbor heavy']], rule: 'hair' },
            { cells: [['working'], [strong('296 lb'), ' arbor heavy']], rule: 'thick' },
            { cells: [['empty row'], ['nothing']], rule: 'hair', isMuted: true },
          ],
        },
      ],
    ],
  },
  { kind: 'heading', text: 'A heading' },
  { kind: 'text', words: ['Said in ', strong('running'), ' words.'] },
  { kind: 'text', words: ['Said as a note.'], isNote: true },
  {
    kind: 'table',
    columns: [
      { head: 'Item', align: 'left', share: 2 },
      { head: 'Signed', align: 'left', share: 1, isWritten: true },
    ],
    rows: [
      { cells: [['Group one']], rule: 'hair', isGroup: true },
      { cells: [['First of one'], [blank(6)]], rule: 'hair' },
      { cells: [['Group two']], rule: 'hair', isGroup: true },
      { cells: [['First of two'], [blank(6)]], rule: 'thick' },
    ],
  },
  { kind: 'list', heading: 'Remarks', items: [['remark one'], ['remark two']] },
  {
    kind: 'proofs',
    items: [
      [box, strong(' Inch test'), ' counted aloud by two'],
      ['again ', box, ' later'],
    ],
  },
  {
    kind: 'tickets',
    perRow: 2,
    tickets: [[{ kind: 'heading', text: 'Ticket A' }], [{ kind: 'text', words: ['Ticket B'] }]],
  },
  { kind: 'inkLines', count: 3 },
];

export const sampleSheet = (changes: Partial<Sheet> = {}): Sheet => ({
  id: 'take-off',
  kind: 'take-off',
  title: 'Sample sheet',
  number: '11',
  name: 'Clock tower flat',
  beside: 'beside it: 10 empty, 12 empty',
  orientation: 'portrait',
  facts: [
    { term: 'house', value: 'Kestlemere Playhouse' },
    { term: 'show', value: 'The Clockmaker of Vell' },
    { term: 'revision', value: '4' },
    { term: 'printed', value: '25 Nov 2026, 18:55, head flyperson' },
    { term: 'units', value: 'ft, in, lb, lbf' },
  ],
  blocks: everyBlock,
  footer: {
    voidIf: 'Void if the set is touched after 14:31.',
    code: '7F3K-Q2MX',
    qr: drawingOf('', 41, 41),
    cautions: ['It certifies nothing.', 'The competent person comes first.'],
  },
  frame: null,
  printedAt: '2026-11-25T18:55:00+01:00',
  data: null,
  ...changes,
});
