/**
 * What the engine gives as words, in a tongue. The engine speaks English and puts names and
 * figures in itself; a tongue lists its texts with holes, and what fits none stays English whole.
 * In a text of the engine `{…Words}` is said in turn, `{…Figure}` takes the decimal mark of the
 * tongue, `{…Runs}` lists sets as `1 to 8, 10`, and every other hole is a name and stays as it is.
 */
import type { Tongue, Voice } from './voice.ts';

const HOLE = /\{(\w+)\}/g;

type Pattern = {
  readonly text: string;
  /** What stands between the holes, in order; the first and the last may be empty. */
  readonly between: readonly string[];
  readonly fits: RegExp;
  readonly names: readonly string[];
};

type Known = {
  readonly listed: ReadonlySet<string>;
  /** The most literal text first: it says the most about what it fits. */
  readonly patterns: readonly Pattern[];
  readonly said: Map<string, string | undefined>;
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const patternOf = (text: string): Pattern => {
  const names = [...text.matchAll(HOLE)].map(([, name]) => name ?? '');
  const parts = text.split(HOLE);
  const fits = parts.map((part, at) => (at % 2 === 0 ? escaped(part) : '(.+?)')).join('');
  const between = parts.filter((_, at) => at % 2 === 0);
  return { text, between, fits: new RegExp(`^${fits}$`, 's'), names };
};

/** Most patterns fall out here; to try each of a thousand on a long text takes seconds. */
const mayFit = ({ between }: Pattern, text: string): boolean => {
  if (!text.startsWith(between[0] ?? '') || !text.endsWith(between.at(-1) ?? '')) return false;
  let from = 0;
  for (const part of between) {
    const at = text.indexOf(part, from);
    if (at < 0) return false;
    from = at + part.length;
  }
  return true;
};

const lettersIn = (text: string): number => text.replace(HOLE, '').length;

const KNOWN = new WeakMap<Tongue, Known>();

const knownOf = (tongue: Tongue): Known => {
  const kept = KNOWN.get(tongue);
  if (kept !== undefined) return kept;
  const told = tongue.told ?? [];
  const known = {
    listed: new Set(told),
    patterns: told
      .filter((text) => text.includes('{'))
      .toSorted((one, other) => lettersIn(other) - lettersIn(one))
      .map(patternOf),
    said: new Map<string, string | undefined>(),
  };
  KNOWN.set(tongue, known);
  return known;
};

const textIn = (tongue: Tongue, text: string): string | undefined => {
  const said = Object.hasOwn(tongue.texts, text) ? tongue.texts[text] : undefined;
  return typeof said === 'string' ? said : undefined;
};

/** Between a number and its decimals. */
const POINT = /(?<=\d)\.(?=\d)/g;

/** How a tongue says that sets stand in a row. */
const RUN = '{from} to {to}';

/** `1 to 8, 10`: sets in a row, and sets alone. */
const runsIn = (tongue: Tongue, list: string): string =>
  list
    .split(', ')
    .map((run) => {
      const [from = run, to] = run.split(' to ');
      const sentence = textIn(tongue, RUN);
      if (to === undefined || sentence === undefined) return run;
      return sentence.replace('{from}', from).replace('{to}', to);
    })
    .join(', ');

/** Between the parts of a list that the engine makes. */
const LIST = '; ';

/** What people wrote in their own words is left whatever stands in it. */
const FREE: ReadonlySet<string> = new Set([
  'example',
  'found',
  'names',
  'source',
  'text',
  'value',
  'why',
]);

/** What stands in one hole; undefined where it is to be said in turn and cannot. */
const inHole = (tongue: Tongue, name: string, found: string): string | undefined => {
  if (name.endsWith('Words')) return saidIn(tongue, found);
  if (name.endsWith('Runs')) return runsIn(tongue, found);
  if (name.endsWith('Figure')) return found.replace(POINT, tongue.decimalMark);
  return FREE.has(name) || !/; |: | \(/.test(found) ? found : undefined;
};

const byPattern = (tongue: Tongue, text: string): string | undefined => {
  for (const pattern of knownOf(tongue).patterns) {
    const { text: template, fits, names } = pattern;
    const found = mayFit(pattern, text) ? fits.exec(text) : null;
    const sentence = found === null ? undefined : textIn(tongue, template);
    if (found === null || sentence === undefined) continue;
    const holes = new Map(
      names.map((name, at) => [name, inHole(tongue, name, found[at + 1] ?? '')]),
    );
    if (![...holes.values()].includes(undefined)) {
      return sentence.replace(HOLE, (hole, name: string) => holes.get(name) ?? hole);
    }
  }
  return undefined;
};

/** Apart at the separator, but not inside brackets, where a person's own words may stand. */
const apart = (text: string, separator: string): readonly string[] => {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    if (text[at] === ')') depth -= 1;
    if (depth > 0 || !text.startsWith(separator, at)) continue;
    parts.push(text.slice(from, at));
    from = at + separator.length;
  }
  return [...parts, text.slice(from)];
};

const byList = (tongue: Tongue, text: string, separator: string): string | undefined => {
  const parts = apart(text, separator);
  if (parts.length < 2) return undefined;
  const said = parts.map((part) => saidIn(tongue, part));
  return said.includes(undefined) ? undefined : said.join(separator);
};

/** `height of the low stop (not surveyed)`: in the brackets stands what somebody gave as why. */
const byBracket = (tongue: Tongue, text: string): string | undefined => {
  if (!text.endsWith(')')) return undefined;
  for (let at = text.lastIndexOf(' ('); at > 0; at = text.lastIndexOf(' (', at - 1)) {
    const said = saidIn(tongue, text.slice(0, at));
    const why = text.slice(at + 2, -1);
    if (said !== undefined) return `${said} (${saidIn(tongue, why) ?? why})`;
  }
  return undefined;
};

/** `finished width (takeoff.width)`: a value of an item with its place in the document. */
const WITH_FIELD = /^.+ \([\w.[\]]+\)$/;

/**
 * `Border 1: tolerance of the trim`: before the colon stands a name, or a text of the engine.
 * After a value with its field stands what people wrote of it, which may be any words.
 */
const byColon = (tongue: Tongue, text: string): string | undefined => {
  for (let at = text.indexOf(': '); at > 0; at = text.indexOf(': ', at + 1)) {
    const [before, rest] = [text.slice(0, at), text.slice(at + 2)];
    const [said, after] = [saidIn(tongue, before), saidIn(tongue, rest)];
    if (after !== undefined) return `${said ?? before}: ${after}`;
    if (said !== undefined && WITH_FIELD.test(before)) return `${said}: ${rest}`;
  }
  return undefined;
};

/** Lists first: a name in a text must not swallow what is said after it. */
const workedOut = (tongue: Tongue, text: string): string | undefined =>
  (knownOf(tongue).listed.has(text) ? textIn(tongue, text) : undefined) ??
  byList(tongue, text, LIST) ??
  byList(tongue, text, ', ') ??
  byPattern(tongue, text) ??
  byBracket(tongue, text) ??
  byColon(tongue, text);

/** Undefined where this tongue has no words for it. */
export const saidIn = (tongue: Tongue, text: string): string | undefined => {
  const { said } = knownOf(tongue);
  if (said.has(text)) return said.get(text);
  const words = workedOut(tongue, text);
  said.set(text, words);
  return words;
};

/** Words of the engine as they are in English of either kind; in a tongue what it has for them. */
export const told = ({ tongue }: Voice, text: string): string =>
  tongue === undefined ? text : (saidIn(tongue, text) ?? text);

/** Sets as a rule lists them, `1 to 8, 10`. */
export const toldRuns = ({ tongue }: Voice, list: string): string =>
  tongue === undefined ? list : runsIn(tongue, list);

/** Names beside names of the engine, as a state has them: `playing, high stop`. */
export const toldEach = (voice: Voice, list: string): string =>
  list
    .split(', ')
    .map((each) => told(voice, each))
    .join(', ');
