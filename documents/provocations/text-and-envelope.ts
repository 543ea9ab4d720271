/** Texts that are no documents, and documents of another kind or version. */
import { FAULTS_TOLD } from '../faults.ts';
import type { Provocations } from './spoil.ts';
import { asText, instead, omit, put } from './spoil.ts';

const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`;

const looped = (): unknown => {
  const loop: unknown[] = [];
  loop.push(loop);
  return loop;
};

const told = (code: string): readonly string[] => Array(FAULTS_TOLD).fill(code);

const numbered = (count: number, entry: unknown): object =>
  Object.fromEntries(Array.from({ length: count }, (_, at) => [`n${at}`, entry]));

const MANY_TYPES = numbered(50, { suspension: 'motor', lines: Array(40).fill(1) });
const MANY_SETS = numbered(10, { items: numbered(200, 'hanging') });
const BAD_CUE = { number: 'a b', set: '1', from: '24 ft', to: '58 ft' };

export const TEXT_PROVOCATIONS: Provocations = {
  'DOC-001': [
    asText('house', 'a number', () => 12),
    asText('show', 'null', () => null),
    asText('state', 'bytes', () => new Uint8Array([123, 125])),
  ],
  'DOC-002': [
    asText('house', 'spaces of 9 MB', (sound) => sound + ' '.repeat(9e6)),
    asText('show', 'a remark of 10 MB', () => `{"remarks":["${'x'.repeat(1e7)}"]}`),
    asText('state', '50 MB of opening brackets', () => '['.repeat(5e7)),
  ],
  'DOC-003': [
    asText('house', 'nothing', () => ''),
    asText('show', 'spaces and lines', () => ' \n\t\r\n '),
    asText('state', 'a byte order mark alone', () => '\uFEFF'),
  ],
  'DOC-004': [
    asText('house', 'words', () => 'the house is in the post'),
    asText('show', 'single quotes', (sound) => sound.replaceAll('"', "'")),
    asText('state', 'a missing colon', (sound) => sound.replace('"by":', '"by"')),
    asText('house', 'a number that begins with a plus', (sound) => sound.replace(': 1,', ': +1,')),
    asText('show', 'a raw line end in a text', (sound) => sound.replace('Fair Day', 'Fair\nDay')),
  ],
  'DOC-005': [
    asText('house', 'half of it', (sound) => sound.slice(0, sound.length / 2)),
    asText('show', 'all but the last brace', (sound) => sound.trimEnd().slice(0, -1)),
    asText('state', 'an open text', () => '{"format": "counterpoise-sta'),
    asText('house', 'half a word', () => '{"demo": tru'),
  ],
  'DOC-006': [
    asText('house', 'a second document', (sound) => sound + sound),
    asText('show', 'a word after it', (sound) => `${sound} end`),
    asText('state', 'a brace too many', (sound) => `${sound}}`),
  ],
  'DOC-007': [
    asText('house', '41 lists', () => nested(41)),
    asText('show', 'a hundred thousand lists', () => nested(1e5)),
    instead('state', 'a list that holds itself', looped(), '[0]'.repeat(40)),
    put('house', 'remarks', [JSON.parse(nested(39))], { at: `remarks[0]${'[0]'.repeat(38)}` }),
  ],
  'DOC-008': [
    asText('house', 'id', (sound) => sound.replace('"id"', '"id": "x", "id"'), 'id'),
    asText(
      'show',
      'mass of an item',
      (sound) => sound.replace('"mass": "200 lb"', '"mass": "200 lb", "mass": "200 kg"'),
      'hangs[0].items[0].takeoff.mass',
    ),
    asText(
      'state',
      'one set twice',
      (sound) => sound.replace('"2": {', '"1": {}, "2": {'),
      'sets.1',
    ),
  ],
  'DOC-009': [
    asText(
      'house',
      '__proto__',
      (sound) => sound.replace('"rules": {', '"rules": { "__proto__": { "lockLimit": 1 },'),
      'rules.__proto__',
    ),
    put('show', 'keptEmpty', { constructor: 'depth' }, { at: 'keptEmpty.constructor' }),
    put('state', 'sets.prototype', {}),
    put('house', 'setTypes.toString', {}),
  ],
  'DOC-010': [
    asText('house', 'a comment before', (sound) => `// the house\n${sound}`),
    asText('show', 'a comment inside', (sound) => sound.replace('{', '{ /* draft */')),
    asText('state', 'an open comment', (sound) => `${sound} /* draft`),
  ],
  'DOC-011': [
    asText('house', 'before a brace', (sound) => `${sound.trimEnd().slice(0, -1)},}`),
    asText('show', 'before a bracket', () => '{"cues": [1,]}'),
    asText('state', 'after an object', () => '{"sets": {"1": {},}}'),
  ],
  'DOC-012': [
    asText(
      'house',
      '1e999',
      (sound) => sound.replace('"count": 2', '"count": 1e999'),
      'equipment[0].count',
    ),
    put('show', 'hangs[2].items[0].centre', Number.NaN),
    put('state', 'galleries.upper.stock.F', Number.POSITIVE_INFINITY),
    put('balance', 'batten', Number.NaN),
  ],
  'DOC-013': [
    put('house', 'setTypes', MANY_TYPES, { at: '', with: told('DOC-050') }),
    put('show', 'cues', Array(1500).fill(BAD_CUE), { at: '', with: told('DOC-043') }),
    put('state', 'sets', MANY_SETS, { at: '', with: told('DOC-033') }),
  ],
};

export const ENVELOPE_PROVOCATIONS: Provocations = {
  'DOC-020': [
    instead('house', 'a list', []),
    instead('show', 'a text in quotes', 'counterpoise-show'),
    asText('state', 'null', () => 'null'),
  ],
  'DOC-021': [omit('house', 'format'), omit('show', 'format'), omit('state', 'format')],
  'DOC-022': [
    put('house', 'format', 'counterpoise-show'),
    put('show', 'format', 'counterpoise-shwo'),
    put('state', 'format', 7),
  ],
  'DOC-023': [omit('house', 'version'), omit('show', 'version'), omit('state', 'version')],
  'DOC-024': [
    put('house', 'version', '1'),
    put('show', 'version', 1.5),
    put('state', 'version', null),
  ],
  'DOC-025': [
    put('house', 'version', 2),
    put('show', 'version', 99),
    put('state', 'version', 2),
    put('order', 'version', 2),
  ],
  'DOC-026': [
    put('house', 'version', -1),
    put('show', 'version', -7),
    put('state', 'version', -1),
    put('order', 'version', 0),
  ],
};
