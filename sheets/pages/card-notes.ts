/** What a card takes for granted, what nobody knows, and what has to be looked at first. */

import type { SetAssessment, SetPlan } from '#assessment';
import type { BalanceItem } from '#balance';
import { tradeWord } from '#drawings';
import type { Finding } from '#findings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import { phrase, told } from '#texts';
import type { SheetContext } from '../context.ts';
import { strong, type Words } from '../sheet.ts';
import { GRANTED } from '../words/engine-words.ts';
import { afterName, sayFinding } from '../words/say-finding.ts';
import { sayMeasure } from '../words/say-measure.ts';
import { sayMoment } from '../words/say-moment.ts';
import { inHouseWords } from '../words/trade-translation.ts';

const frictionWords = (set: SetAssessment, { friction }: SetPlan, house: House): string => {
  if (!friction.known) return phrase(house, 'friction not known');
  const size = sayMeasure({ value: friction.value.force, kind: 'force' }, house, { round: 'up' });
  const test = set.recorded.state.pullTest;
  return friction.value.measured && test !== null
    ? phrase(house, 'friction {size}, from the pull test of {at}', {
        size,
        at: sayMoment(test.at, house),
      })
    : phrase(house, 'friction {size}, assumed and not measured', { size });
};

const itemAssumption = (item: BalanceItem, house: House): string => {
  const deck = tradeWord(house, 'deck');
  switch (item.kind) {
    case 'clear':
      return phrase(house, 'what hangs clear leaves the {deck} in one piece', { deck });
    case 'cloth':
      return phrase(house, 'cloth dry, and even over its drop');
    case 'tipping':
      return phrase(house, 'the foot turns and does not slide');
    case 'standing':
      return phrase(house, 'the piece stands upright by itself on the {deck}', { deck });
    case 'loom':
    case 'deckLoom':
      return phrase(house, 'the loom hangs free');
    default:
      return unreachable(item);
  }
};

/** One paragraph: what the figures rest on besides the documents. */
export const assumedWords = (set: SetAssessment, plan: SetPlan, house: House): Words => {
  const { chosenBy, reason } = plan.stack;
  const bricks = tradeWord(house, 'bricks');
  const items = [...new Set(plan.set.items.map((item) => itemAssumption(item, house)))];
  const chosen =
    chosenBy === 'person'
      ? phrase(house, '{bricks} fixed by a person ({reason})', { bricks, reason })
      : phrase(house, '{bricks} chosen by the program ({reason})', {
          bricks,
          reason: GRANTED.has(reason) ? phrase(house, reason) : reason,
        });
  const words = [
    frictionWords(set, plan, house),
    ...items,
    inHouseWords('lift lines do not stretch', house),
    phrase(house, 'nothing snags'),
    chosen,
  ];
  return [strong(phrase(house, 'Assumed: ')), `${words.join('; ')}.`];
};

const UNKNOWN_RULE = 'UNK-001';

const ofSet = ({ findings }: SheetContext, id: string): readonly Finding[] =>
  findings.filter(({ at }) => at.set === id);

/** A card has no room for the path of a value in its document; the check of the set has. */
const shortened = (what: string): string =>
  what.replace(/\s*\([\w.[\]]+\)/g, '').replace(/: none given\b.*$/, '');

const unknownsOf = (context: SheetContext, set: SetAssessment): readonly string[] => {
  const listed = ofSet(context, set.lineSet.id)
    .filter(({ code }) => code === UNKNOWN_RULE)
    .map(({ facts }) => facts['what'])
    .filter((what) => typeof what === 'string')
    .flatMap((what) => what.split('; '));
  const unsaid = set.plan.known
    ? set.plan.value.doubtsUnsaid.map((what) =>
        phrase(context.house, 'tolerance of {what}', { what: told(context.house, what) }),
      )
    : [];
  const words = [...listed, ...unsaid].map((what) => afterName(shortened(what), context.house));
  return [...new Set(words)];
};

/**
 * What nobody has given, as much of it as `fits`; where more is missing the words say how much
 * and where it is listed, so that a short list is never taken for the whole one.
 */
export const unknownWords = (
  context: SheetContext,
  set: SetAssessment,
  fits: (words: Words) => boolean = () => true,
): Words => {
  const unknowns = unknownsOf(context, set);
  const head = strong(phrase(context.house, 'Not known: '));
  if (unknowns.length === 0)
    return [head, phrase(context.house, 'nothing that these figures need.')];
  const said = (count: number): Words => {
    const left = unknowns.length - count;
    const rest =
      left === 0
        ? ''
        : phrase(context.house, '; and {left} more, in the check of this set', { left });
    return [head, `${unknowns.slice(0, count).join('; ')}${rest}.`];
  };
  const counts = unknowns.map((_, index) => unknowns.length - index);
  return said(counts.find((count) => fits(said(count))) ?? 1);
};

/** The findings that somebody must act on, gravest first, as many as the card has room for. */
export const lookFirst = (
  context: SheetContext,
  set: SetAssessment,
  { most, saidAbove }: { readonly most: number; readonly saidAbove: readonly string[] },
): readonly Words[] => {
  const grave = ofSet(context, set.lineSet.id).filter(
    ({ code, level }) => level !== 'note' && code !== UNKNOWN_RULE && !saidAbove.includes(code),
  );
  const sorted = [
    ...grave.filter(({ level }) => level === 'stop'),
    ...grave.filter(({ level }) => level === 'caution'),
  ];
  const said = sorted.slice(0, most).map((finding): Words => {
    const { word, sentence } = sayFinding(finding, context.house);
    return [strong(`${word}: `), sentence];
  });
  const left = sorted.length - said.length;
  return left > 0
    ? [...said, [phrase(context.house, 'And {left} more, in the check of this set.', { left })]]
    : said;
};
