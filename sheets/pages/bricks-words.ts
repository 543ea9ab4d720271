/** The stack in words and numbers, pipe weight always apart from show bricks. */

import type { PlannedStack, SetAssessment } from '#assessment';
import { countWords, tradeWord } from '#drawings';
import type { House } from '#house';
import type { StackRun } from '#state';
import { phrase, phraseCount } from '#texts';
import type { Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { brickMass, stackLength } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';

export const countsOf = (
  runs: readonly StackRun[],
  tag: StackRun['tag'],
): readonly { readonly kind: string; readonly count: number }[] =>
  runs.filter((run) => run.tag === tag && run.count > 0);

/** `3 old cast` or, of nothing, `no show bricks`. */
export const kindsWords = (
  runs: readonly StackRun[],
  tag: 'pipe' | 'show',
  house: House,
): string => {
  const counts = countsOf(runs, tag);
  const none = tag === 'pipe' ? tradeWord(house, 'pipeWeight') : phrase(house, 'show bricks');
  return counts.length === 0 ? phrase(house, 'no {none}', { none }) : countWords(counts, house);
};

/** `29 bricks, 1 spreader plate, stack 34 5/8 in of 66 in.` */
export const stackWords = (
  stack: PlannedStack,
  { lineSet }: SetAssessment,
  house: House,
): string => {
  const rod = lineSet.arbor?.usableRod;
  const of =
    rod?.known === true
      ? phrase(house, ' of {stackLength}', { stackLength: stackLength(rod.value, house, 'down') })
      : phrase(house, ', rod not known');
  const plates =
    stack.spreaders === 0
      ? ''
      : phraseCount(house, stack.spreaders, [
          ', {count} spreader plate',
          ', {count} spreader plates',
        ]);
  const bricks = tradeWord(house, 'bricks');
  return phrase(house, '{plates} {bricks}{spreaders}, stack {stackLength}{of}.', {
    plates: stack.plates,
    bricks,
    spreaders: plates,
    stackLength: stackLength(stack.height, house),
    of,
  });
};

/** What must match at the gallery beside the kinds, which stand at the drawing of the stack. */
export const totalsWords = (stack: PlannedStack, set: SetAssessment, house: House): Words => [
  `${stackWords(stack, set, house)} ${inHouseWords('Whole arbor', house)} `,
  strong(`${brickMass(stack.arborMass, house)}.`),
];

/** The same with the kinds and masses, where no drawing stands beside it. */
export const bricksParagraph = (stack: PlannedStack, set: SetAssessment, house: House): Words => [
  strong(`${kindsWords(stack.runs, 'show', house)}: ${brickMass(stack.showMass, house)}.`),
  ` ${inHouseWords('Pipe weight', house)} ${kindsWords(stack.runs, 'pipe', house)}, `,
  phrase(house, '{pipeMass}, stays. ', { pipeMass: brickMass(stack.pipeMass, house) }),
  ...totalsWords(stack, set, house),
];
