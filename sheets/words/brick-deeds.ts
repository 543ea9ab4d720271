/** Bricks on and off: one at a time, counted aloud, each handled by the loaders of one gallery. */

import type { House } from '#house';
import type { StepBetween } from '#orders';
import type { Step } from '#state';
import { phrase } from '#texts';
import { type Deed, deedOf } from './deed.ts';
import { filled } from './fill-words.ts';
import { height } from './say-set.ts';
import { bricksWords, galleryName, looksLikeWords, type OrderWords } from './say-standing.ts';

type BrickStep = Extract<Step, { readonly act: 'add' | 'remove' }>;

/** Height of the top of the stack above the floor that the loaders stand on, before and after. */
const reachWords = (
  { gallery }: BrickStep,
  { before, after }: StepBetween,
  { physics, house }: OrderWords,
): string => {
  const floorM = physics.galleries.find(({ id }) => id === gallery)?.floorM ?? 0;
  const [fromM, toM] = [before, after].map(({ standing }) =>
    Math.max(0, physics.topOfStackM(standing) - floorM),
  );
  return filled('top of the stack from {from} to {to} above its floor', house, {
    from: height(fromM ?? 0, house),
    to: height(toM ?? 0, house),
  });
};

/** Where a kind looks like another, the loader is told in the place where it is handled. */
const looksWords = (kind: string, house: House): string => {
  const others = looksLikeWords(kind, house);
  return others.length === 0
    ? ''
    : filled(' Look at each one: {others} looks like it.', house, {
        others: others.join(', '),
      });
};

export const brickDeed = (step: BrickStep, between: StepBetween, words: OrderWords): Deed => {
  const { house } = words;
  const isAdd = step.act === 'add';
  const bricks = bricksWords(step.count, step.kind, house);
  const said = isAdd
    ? phrase(house, '{bricks} on', { bricks })
    : phrase(house, '{bricks} off', { bricks });
  const looks = looksWords(step.kind, house);
  const deed = deedOf(
    {
      who: 'Lead and loaders of the {gallery}',
      where: '{reach}',
      does: isAdd
        ? 'Put on {bricks}, one at a time, each counted aloud.'
        : 'Take off {bricks}, one at a time, each counted aloud.',
      stopIf:
        'the set stirs, a plate is out of reach, a brick is not of its kind, or the count is not ' +
        '{count}',
      call: ['Gallery', 'Set {set}: {said}. Below clear? Locked and ringed?'],
      answer: [
        'Deck, then rail',
        'Set {set}: {said}, below clear. Set {set}: locked, ringed, rail clear.',
      ],
      done: isAdd
        ? 'Set {set}: counted {count} on, hands off, collar tight.'
        : 'Set {set}: counted {count} off, hands off, collar tight.',
      abandon:
        'Hands off, collar tight, say the count: it is held at every count on the way. Then ' +
        'back or on, as the lead says.',
    },
    words,
    {
      gallery: galleryName(step.gallery, words),
      reach: reachWords(step, between, words),
      bricks,
      said,
      count: `${step.count}`,
    },
  );
  return { ...deed, does: `${deed.does}${looks}` };
};
