/** The columns of both tables: heading, other words for it, where it stands and how it reads. */

import type { Dimension } from '#quantities';
import { HANG_FAMILIES, ITEM_KINDS, TAKEOFF_KINDS } from '#show';
import { message } from '#texts';

export type TableName = 'schedule' | 'takeoff';

export type Reads =
  /** A measure with its unit, or a plain number, that somebody stands behind. */
  | { readonly is: 'measure'; readonly dimension: Dimension }
  | { readonly is: 'number' }
  | { readonly is: 'text' }
  | { readonly is: 'choice'; readonly choices: readonly string[] };

export type Field = {
  readonly field: string;
  readonly heading: string;
  /** Other headings for it, US and UK, lower case; common practice, no source. */
  readonly words: readonly string[];
  readonly reads: Reads;
  /** Where in the hang or the item it stands; absent where it is read by code of its own. */
  readonly at?: readonly string[];
  /** Takeoffs that have it. */
  readonly by?: readonly string[];
};

const TEXT: Reads = { is: 'text' };
const measure = (dimension: Dimension): Reads => ({ is: 'measure', dimension });

type More = Pick<Field, 'at' | 'by'>;

const field = (
  name: string,
  heading: string,
  words: readonly string[],
  reads: Reads,
  more: More = {},
): Field => ({ field: name, heading, words, reads, ...more });

const inTakeoff = (
  name: string,
  heading: string,
  words: readonly string[],
  dimension: Dimension,
  by: readonly string[],
): Field => field(name, heading, words, measure(dimension), { at: ['takeoff', name], by });

const SET_WORDS = ['line set', 'lineset', 'line', 'bar', 'bar no', 'set no', 'set number', 'no'];
const SET = field('set', message('Set'), [...SET_WORDS, 'batten', 'line no', 'pipe', '#'], TEXT);
const REMARK_WORDS = ['remarks', 'notes', 'note', 'comment', 'comments'];
const REMARK = field('remark', message('Remark'), REMARK_WORDS, TEXT, { at: ['remark'] });
const KNOWN_BY = field('knownBy', message('Known by'), ['basis', 'how known'], TEXT);

/** Columns of trims and bricks come after the family; there are as many as the show needs. */
export const SCHEDULE_FIELDS: readonly Field[] = [
  SET,
  field(
    'name',
    message('Name'),
    ['piece', 'what', 'scenery', 'goods', 'description', 'use'],
    TEXT,
    {
      at: ['name'],
    },
  ),
  field(
    'family',
    message('Family'),
    ['kind', 'type'],
    { is: 'choice', choices: HANG_FAMILIES },
    {
      at: ['family'],
    },
  ),
  field('bricksWhy', message('Bricks: why'), ['why these bricks'], TEXT),
  field('halfDepth', message('Half depth'), ['half width up and down stage'], measure('length'), {
    at: ['halfDepth'],
  }),
  field(
    'deadHungAt',
    message('Dead hung at'),
    ['dead hang', 'dead hung', 'dead'],
    measure('length'),
    {
      at: ['deadHungAt'],
    },
  ),
  field('coupledWith', message('Coupled with'), ['married to', 'ganged with', 'linked with'], TEXT),
  field('keptEmpty', message('Kept empty'), ['reason empty', 'blocked', 'blocked by'], TEXT),
  REMARK,
  KNOWN_BY,
];

const ADDED = ['cloth'];

export const TAKEOFF_FIELDS: readonly Field[] = [
  SET,
  field('item', message('Item'), ['item id', 'id'], TEXT),
  field('name', message('Name'), ['piece', 'what', 'description', 'item name'], TEXT, {
    at: ['name'],
  }),
  field(
    'kind',
    message('Kind'),
    ['type', 'loads as'],
    { is: 'choice', choices: ITEM_KINDS },
    {
      at: ['kind'],
    },
  ),
  field('by', message('Weighed by'), ['taken off by', 'method'], {
    is: 'choice',
    choices: TAKEOFF_KINDS,
  }),
  inTakeoff('mass', message('Mass'), ['weight', 'wt', 'total weight', 'total mass'], 'mass', [
    'mass',
  ]),
  inTakeoff('hem', message('Hem'), ['hem weight', 'chain', 'hem mass'], 'mass', ['mass']),
  inTakeoff('width', message('Width'), ['finished width', 'cloth width'], 'length', ADDED),
  inTakeoff(
    'areaMass',
    message('Cloth weight'),
    ['fabric weight', 'area mass'],
    'massPerArea',
    ADDED,
  ),
  inTakeoff('fullness', message('Fullness'), ['gather'], 'ratio', ADDED),
  inTakeoff('hemAllowance', message('Hem allowance'), ['hems'], 'ratio', ADDED),
  inTakeoff('paint', message('Paint'), [], 'ratio', ADDED),
  inTakeoff('moisture', message('Moisture'), ['damp'], 'ratio', ADDED),
  inTakeoff(
    'bottomMassPerLength',
    message('Bottom weight'),
    ['bottom pipe'],
    'massPerLength',
    ADDED,
  ),
  field(
    'tiesCount',
    message('Ties'),
    ['number of ties'],
    { is: 'number' },
    {
      at: ['takeoff', 'ties', 'count'],
      by: ADDED,
    },
  ),
  field('tiesEach', message('Tie each'), ['weight of one tie'], measure('mass'), {
    at: ['takeoff', 'ties', 'each'],
    by: ADDED,
  }),
  inTakeoff('length', message('Length'), ['cable length', 'pipe length'], 'length', [
    'loom',
    'pipe',
  ]),
  inTakeoff(
    'massPerLength',
    message('Mass per length'),
    ['weight per foot', 'weight per metre'],
    'massPerLength',
    ['loom', 'pipe'],
  ),
  inTakeoff('fixedAt', message('Fixed at'), ['far end at'], 'length', ['loom']),
  inTakeoff('fittings', message('Fittings'), ['clamps'], 'mass', ['pipe']),
  inTakeoff('allowance', message('Allowance'), ['extra'], 'ratio', ['frame']),
  field('parts', message('Parts'), ['list of parts', 'units'], TEXT),
  field('drop', message('Drop'), ['height', 'piece height'], measure('length'), { at: ['drop'] }),
  field('pick', message('Pick'), ['pick length', 'sling', 'tie length'], measure('length'), {
    at: ['pick'],
  }),
  field(
    'centre',
    message('Centre'),
    ['center', 'centre of gravity', 'center of gravity', 'cg'],
    {
      is: 'number',
    },
    { at: ['centre'] },
  ),
  field(
    'placement',
    message('Where along the batten'),
    ['placement', 'position', 'pick points'],
    TEXT,
  ),
  field('releases', message('Releases'), ['leaves in view'], TEXT),
  field('carriesPerson', message('Carries a person'), [], { is: 'choice', choices: ['yes', 'no'] }),
  REMARK,
  KNOWN_BY,
];

export const fieldsOf = (table: TableName): readonly Field[] =>
  table === 'schedule' ? SCHEDULE_FIELDS : TAKEOFF_FIELDS;

/** Names of the fields of a table, in the order of its columns. */
export const fieldNames = (table: TableName): readonly string[] =>
  fieldsOf(table).map((one) => one.field);

export const TRIM_REFERENCES = ['batten', 'lowestPoint', 'lens'] as const;
export type TrimReference = (typeof TRIM_REFERENCES)[number];

export const REFERENCE_WORDS: Readonly<Record<TrimReference, string>> = {
  batten: message('batten'),
  lowestPoint: message('lowest point'),
  lens: message('lens'),
};

export const trimHeading = (name: string, reference: TrimReference): string =>
  `Trim: ${name} (${REFERENCE_WORDS[reference]})`;

export const bricksHeading = (kind: string): string => `Bricks: ${kind}`;
