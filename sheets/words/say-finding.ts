/** What a rule said of the assessment, as a sentence in the house's words and units. */

import type { Finding, Level, Measure } from '#findings';
import type { House } from '#house';
import { assert, unreachable } from '#outcome';
import { GRAVITY } from '#quantities';
import { ruleOf } from '#rules';
import { ENGLISH, message, phrase, told, toldEach, toldRuns, type Voice } from '#texts';
import { postWords } from './post-words.ts';
import { sayMeasure } from './say-measure.ts';
import { isMoment, sayMoment } from './say-moment.ts';
import { inHouseWords } from './trade-translation.ts';

export type SaidFinding = {
  readonly title: string;
  readonly sentence: string;
  /** `Caution`, `Danger`; empty for a note, which has neither mark nor word. */
  readonly word: string;
  readonly level: Level;
};

export const levelWord = (level: Level, voice: Voice = ENGLISH): string => {
  switch (level) {
    case 'note':
      return '';
    case 'caution':
      return phrase(voice, 'Caution');
    case 'stop':
      return phrase(voice, 'Danger');
    default:
      return unreachable(level);
  }
};

/** How far past its limit, as a size; an imbalance is held against a force by its size. */
const excessOf = ({ measured, limit }: Finding): Measure | null => {
  if (measured === null || limit === null) return null;
  const past = Math.abs(Math.abs(measured.value) - Math.abs(limit.value));
  return measured.kind === 'imbalance'
    ? { value: past / GRAVITY, kind: 'mass' }
    : { value: past, kind: measured.kind };
};

/** Facts that a rule says in our own words. All others are names that somebody gave. */
const OUR_WORDS: ReadonlySet<string> = new Set([
  'basis',
  'blocks',
  'lower',
  'stop',
  'suspension',
  'tag',
  'upper',
  'what',
  'when',
  'where',
]);

/** Facts that the engine says in words which are the same in every English. */
const ENGINE_WORDS: ReadonlySet<string> = new Set([
  'best',
  'confirmed',
  'least',
  'method',
  'missing',
  'purchase',
  'rate',
  'sets',
  'stack',
  'wire',
  'why',
]);

/** What the engine says where nobody has given a name. */
const NOBODY: ReadonlySet<string> = new Set([
  message('as recorded'),
  message('every height'),
  message('not known'),
  message('not recorded'),
  message('no reason recorded'),
  message('nobody recorded'),
  message('what lies on the deck'),
]);

/** All of a piece or none of it, as a figure, which stands in any sentence. */
const WHOLE: Readonly<Record<string, string>> = { all: '100 %', none: '0 %' };

/** Ids of posts in a row, as people call them. */
const sayPosts = (posts: string, house: House): string =>
  posts
    .split(', ')
    .map((post) => postWords(post, house))
    .join(', ');

const factWords = (name: string, fact: Measure | string, house: House): string => {
  if (typeof fact !== 'string') return sayMeasure(fact, house);
  if (isMoment(fact)) return sayMoment(fact, house);
  if (OUR_WORDS.has(name)) return afterName(fact, house);
  if (name === 'share' && house.tongue !== undefined) return WHOLE[fact] ?? fact;
  if (name === 'sets' && !/^sets? /.test(fact)) return toldRuns(house, fact);
  if (name === 'state' || name === 'states') return toldEach(house, fact);
  if (name === 'post' || name === 'posts') return sayPosts(fact, house);
  return ENGINE_WORDS.has(name) || NOBODY.has(fact) ? told(house, fact) : fact;
};

/** `Border 1: tolerance of the trim`: what stands before the colon is a name. */
export const afterName = (words: string, house: Voice): string => {
  const said = told(house, words);
  if (said !== words) return said;
  const colon = words.indexOf(': ') + 1;
  return `${words.slice(0, colon)}${inHouseWords(words.slice(colon), house)}`;
};

const wordsFor = (
  finding: Finding,
  house: House,
  nameOf: (item: string) => string,
): ReadonlyMap<string, string> => {
  const { measured, limit, at, facts } = finding;
  const excess = excessOf(finding);
  const said = Object.entries(facts).map(([name, fact]): readonly [string, string] => [
    name,
    factWords(name, fact, house),
  ]);
  return new Map([
    ...(at.set === undefined ? [] : [['set', at.set] as const]),
    ...(at.item === undefined ? [] : [['item', nameOf(at.item)] as const]),
    ...(measured === null
      ? []
      : [['measured', sayMeasure(measured, house, { round: 'up' })] as const]),
    ...(limit === null ? [] : [['limit', sayMeasure(limit, house, { round: 'down' })] as const]),
    ...(excess === null ? [] : [['excess', sayMeasure(excess, house, { round: 'up' })] as const]),
    ...said,
  ]);
};

/**
 * Fills the sentence of the finding's rule. A code without a rule, or a place in the sentence
 * that the finding does not fill, is a defect: a sheet must not go out with a hole in it.
 * An item is called by its id where the caller knows no name for it.
 */
export const sayFinding = (
  finding: Finding,
  house: House,
  nameOf: (item: string) => string = (item) => item,
): SaidFinding => {
  const rule = ruleOf(finding.code);
  assert(rule !== undefined, `rule ${finding.code} is declared`);
  const words = wordsFor(finding, house, nameOf);
  const sentence = inHouseWords(rule.says, house).replace(
    /(^|\. )?\{([^}]+)\}/g,
    (_, begins: string | undefined, name: string) => {
      const said = words.get(name);
      assert(said !== undefined, `finding ${finding.code} says {${name}}`);
      // Names that people gave keep their letters wherever they stand.
      const isOurs = begins === '. ' && OUR_WORDS.has(name);
      return `${begins ?? ''}${isOurs ? `${said.charAt(0).toUpperCase()}${said.slice(1)}` : said}`;
    },
  );
  return {
    title: inHouseWords(rule.title, house),
    sentence,
    word: levelWord(finding.level, house),
    level: finding.level,
  };
};
