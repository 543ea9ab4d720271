/** Why something is not taken, as one plain sentence in the units of the house. */
import type { Finding, Measure } from '#findings';
import type { House } from '#house';
import { formatImbalance, formatQuantity, newtons } from '#quantities';
import { type CallFinding, ruleOf } from '#rules';
import { imbalanceWords } from '#texts';
import type { WhyNot } from './desk-types.ts';
import { CALL_REFUSALS, type CallRefusalName } from './refusal-codes.ts';

const HOUR_S = 3600;

const sayMeasure = ({ value, kind }: Measure, house: House): string => {
  if (kind === 'imbalance') {
    return formatImbalance(newtons(value), house, { words: imbalanceWords(house), round: 'up' });
  }
  if (kind === 'duration') return `${Math.round((10 * value) / HOUR_S) / 10} h`;
  return formatQuantity(kind, value, house, { round: 'nearest' });
};

/** The sentence of a rule with its places filled. */
export const sayFinding = (finding: Finding, house: House): string => {
  const { at, measured, limit, facts } = finding;
  const known: Readonly<Record<string, Measure | string | null | undefined>> = {
    set: at.set,
    item: at.item,
    measured,
    limit,
    ...facts,
  };
  return (ruleOf(finding.code)?.says ?? finding.code).replace(/\{([^}]+)\}/g, (place, name) => {
    const fact = known[String(name)];
    if (fact === undefined || fact === null) return place;
    return typeof fact === 'string' ? fact : sayMeasure(fact, house);
  });
};

/** As long as words may be on the wire. */
const WORDS_MOST = 400;

const short = (words: string): string =>
  words.length <= WORDS_MOST ? words : `${words.slice(0, WORDS_MOST - 3)}...`;

/** The first rule in full, and the others by their code. */
export const whyNotOf = (
  [first, ...others]: readonly [CallFinding, ...CallFinding[]],
  house: House,
): WhyNot => {
  const { rule, says, finding } = first;
  const sentence = finding === null ? says : `${says}. ${sayFinding(finding, house)}`;
  const rest = [...new Set(others.map((each) => each.rule))].filter((each) => each !== rule);
  const also = rest.length === 0 ? '' : ` Also: ${rest.join(', ')}.`;
  return { code: rule, words: short(`${sentence}${also}`) };
};

export const refused = (name: CallRefusalName, more = ''): WhyNot => {
  const { code, meaning } = CALL_REFUSALS[name];
  return { code, words: short(more === '' ? meaning : `${meaning} ${more}`) };
};
