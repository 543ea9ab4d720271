/**
 * Lists of parts in one cell, one part a line:
 *
 *     6 × moving head | each: 79 lb ± 2 % | at: -20 ft; -12 ft
 *     member: 4 × stile | length: 22 ft | weight: 0.9 lb/ft | z: 11 ft
 *
 * A line of a frame says first which list it belongs to.
 */
import type { Json, JsonObject } from '#documents';
import { type Dimension, parseQuantity } from '#quantities';
import {
  escaped,
  type Given,
  givenIn,
  isObject,
  listOf,
  readTyped,
  splitAt,
  unescaped,
  valueIn,
  valueText,
  wholeValue,
} from './notation.ts';

type Figure = readonly [word: string, key: string, dimension: Dimension];

type PartList = {
  readonly by: string;
  readonly key: string;
  /** What a line of it begins with, where the takeoff has several lists. */
  readonly word: string;
  readonly figures: readonly Figure[];
  /** Whether its parts may have places along the batten. */
  readonly placed: boolean;
};

const Z: Figure = ['z', 'z', 'length'];
const EACH: Figure = ['each', 'each', 'mass'];

const LISTS: readonly PartList[] = [
  {
    by: 'units',
    key: 'units',
    word: '',
    figures: [EACH, ['clamp', 'clampEach', 'mass']],
    placed: true,
  },
  { by: 'hardware', key: 'lines', word: '', figures: [EACH], placed: false },
  {
    by: 'frame',
    key: 'members',
    word: 'member: ',
    figures: [['length', 'length', 'length'], ['weight', 'massPerLength', 'massPerLength'], Z],
    placed: false,
  },
  {
    by: 'frame',
    key: 'sheets',
    word: 'sheet: ',
    figures: [['area', 'area', 'area'], ['weight', 'massPerArea', 'massPerArea'], Z],
    placed: false,
  },
  { by: 'frame', key: 'hardware', word: 'fitting: ', figures: [EACH, Z], placed: false },
];

export const PLACES = '; ';

const partText = (part: Json, list: PartList, above: Given, row: Given): string => {
  if (!isObject(part)) return '';
  const given = givenIn(part, above);
  const figures = list.figures
    .filter(([, key]) => part[key] !== undefined)
    .map(([word, key]) => `${word}: ${valueText(valueIn(part[key], given), row)}`);
  const places = part['xs'] === undefined ? [] : [`at: ${listOf(part['xs']).join(PLACES)}`];
  const head = `${list.word}${String(part['count'])} × ${escaped(String(part['name']))}`;
  return [head, ...figures, ...places].join(' | ');
};

/** All lists of a takeoff as text; `given` is what holds inside the takeoff. */
export const partsText = (takeoff: JsonObject, given: Given, row: Given): string =>
  LISTS.filter(({ by, key }) => by === takeoff['by'] && takeoff[key] !== undefined)
    .flatMap((list) => listOf(takeoff[list.key]).map((part) => partText(part, list, given, row)))
    .join('\n');

export type PartsFault = { readonly found: string; readonly accepted: string };
/** Lists by their key, every value whole; or the first line that is not read. */
export type PartsRead =
  | { readonly ok: true; readonly lists: JsonObject }
  | { readonly ok: false; readonly fault: PartsFault };

const figureJson = (text: string, dimension: Dimension, row: Given): Json | PartsFault => {
  const typed = readTyped(text);
  if (typed === undefined) return { found: text, accepted: '79 lb ± 2 % [weighed]' };
  if ('unknown' in typed) return wholeValue(typed);
  const parsed = parseQuantity(dimension, typed.value, { signed: true });
  if (!parsed.ok) return { found: text, accepted: parsed.error.accepted };
  const given = typed.own ?? row;
  if (given === null) return { found: text, accepted: 'how it is known, in brackets: [weighed]' };
  const { value, tolerance } = typed;
  return wholeValue(tolerance === null ? { value, given } : { value, tolerance, given });
};

const isFault = (read: Json | PartsFault): read is PartsFault =>
  isObject(read) && 'found' in read && 'accepted' in read;

const listFor = (line: string, by: string): PartList | undefined =>
  LISTS.find((list) => list.by === by && line.startsWith(list.word));

type PartRead = { readonly list: PartList; readonly part: JsonObject } | PartsFault;

const readPart = (line: string, by: string, row: Given): PartRead => {
  const list = listFor(line, by);
  const [head = '', ...more] = splitAt(line.slice(list?.word.length ?? 0), '|');
  const [, count, name] = /^(\d+)\s*[×x*]\s*(.+)$/is.exec(head) ?? [];
  if (list === undefined || count === undefined || name === undefined) {
    return { found: line, accepted: '6 × name | each: 79 lb, one part a line' };
  }
  const part: Record<string, Json> = { name: unescaped(name), count: Number(count) };
  for (const piece of more) {
    const [, word = '', text = ''] = /^(\w+):\s*(.+)$/s.exec(piece) ?? [];
    const figure = list.figures.find(([one]) => one === word);
    if (list.placed && word === 'at') part['xs'] = splitAt(text, ';');
    else if (figure === undefined || text === '') {
      const words = list.figures.map(([one]) => `${one}: …`).join(', ');
      return { found: piece, accepted: list.placed ? `${words}, at: …` : words };
    } else {
      const read = figureJson(text, figure[2], row);
      if (isFault(read)) return read;
      part[figure[1]] = read;
    }
  }
  return { list, part };
};

export const readParts = (text: string, by: string, row: Given): PartsRead => {
  const lists: Record<string, Json[]> = {};
  for (const list of LISTS) if (list.by === by) lists[list.key] = [];
  for (const line of text.split(/\r\n|\r|\n/).map((one) => one.trim())) {
    if (line === '') continue;
    const read = readPart(line, by, row);
    if ('found' in read) return { ok: false, fault: read as PartsFault };
    lists[read.list.key]?.push(read.part);
  }
  return { ok: true, lists };
};

const PLACE = 'from -24 ft to 24 ft, or at -4.5 ft; 4.5 ft';

export const placementText = (placement: Json | undefined): string => {
  if (!isObject(placement)) return '';
  return placement['points'] === undefined
    ? `from ${String(placement['from'])} to ${String(placement['to'])}`
    : `at ${listOf(placement['points']).join(PLACES)}`;
};

const isLength = (text: string): boolean => parseQuantity('length', text, { signed: true }).ok;

export const readPlacement = (text: string): JsonObject | PartsFault => {
  const [, from, to] = /^from\s+(.+?)\s+to\s+(.+)$/i.exec(text) ?? [];
  const [, at] = /^at\s+(.+)$/i.exec(text) ?? [];
  const points = at === undefined ? [] : splitAt(at, ';');
  const lengths = from === undefined || to === undefined ? points : [from, to];
  if (lengths.length === 0 || !lengths.every(isLength)) return { found: text, accepted: PLACE };
  return from === undefined || to === undefined ? { points } : { from, to };
};

export const releasesText = (releases: Json | undefined, above: Given, row: Given): string =>
  listOf(releases)
    .filter(isObject)
    .map((release) => {
      const mass = valueText(valueIn(release['mass'], givenIn(release, above)), row);
      const cue = release['cue'] === undefined ? [] : [`cue: ${String(release['cue'])}`];
      const weight = mass === '' ? [] : [`mass: ${mass}`];
      return [escaped(String(release['how'])), ...weight, ...cue].join(' | ');
    })
    .join('\n');

export const readReleases = (text: string, row: Given): readonly JsonObject[] | PartsFault => {
  const releases: JsonObject[] = [];
  for (const line of text.split(/\r\n|\r|\n/).map((one) => one.trim())) {
    if (line === '') continue;
    const [how = '', ...more] = splitAt(line, '|');
    const release: Record<string, Json> = { how: unescaped(how) };
    for (const piece of more) {
      const [, word, words = ''] = /^(mass|cue):\s*(.+)$/s.exec(piece) ?? [];
      if (word === undefined) return { found: piece, accepted: 'mass: 40 lb, or cue: 12' };
      const read = word === 'mass' ? figureJson(words, 'mass', row) : words;
      if (isFault(read)) return read;
      release[word] = read;
    }
    releases.push(release);
  }
  return releases;
};
