/** What each kind of step asks of a crew: who, where, what, the words called, when to stop. */

import type { StepBetween } from '#orders';
import { unreachable } from '#outcome';
import type { Step } from '#state';
import { message, phrase } from '#texts';
import { brickDeed } from './brick-deeds.ts';
import { AS_BEFORE, type Deed, deedOf } from './deed.ts';
import { easeDeed, flyDeed } from './move-deeds.ts';
import { restraintDeed, steelDeed } from './restraint-deeds.ts';
import { height } from './say-set.ts';
import { type OrderWords, zoneName } from './say-standing.ts';

export const stepDeed = (between: StepBetween, words: OrderWords): Deed => {
  const { step } = between;
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
      return itemDeed(step, between, words);
    case 'add':
    case 'remove':
      return brickDeed(step, between, words);
    case 'fly':
      return flyDeed(step, between, words);
    case 'rig':
    case 'unrig':
      return restraintDeed(step, words);
    case 'hangOnSteel':
    case 'takeOffSteel':
      return steelDeed(step.act, words);
    case 'close':
    case 'reopen':
      return zoneDeed(step, words);
    case 'ease':
      return easeDeed(step, between, words);
    default:
      return unreachable(step);
  }
};

type ItemStep = Extract<Step, { readonly act: 'attach' | 'takeUp' | 'rest' | 'release' }>;
type ItemWords = Pick<Deed, 'does' | 'stopIf' | 'abandon'> & { readonly said: string };

const ON: Readonly<Record<Extract<ItemStep, { act: 'attach' }>['as'], string>> = {
  attachedSlack: message(
    'Tie {item} to the batten with its picks slack; it stays lying on the deck.',
  ),
  attachedResting: message(
    'Tie {item} to the batten with its picks tight; it stays on what it rests on.',
  ),
  flying: message('Tie {item} to the batten so that it hangs.'),
};

const itemWords = (step: ItemStep): ItemWords => {
  switch (step.act) {
    case 'attach':
      return {
        does: ON[step.as],
        said: message('{item} on'),
        stopIf: message('the batten stirs, or a pick is not where its card has it'),
        abandon: message('Take {item} off again and bring it away: {before}.'),
      };
    case 'takeUp':
      return {
        does: message('Draw the picks of {item} tight; it stays on what it rests on.'),
        said: message('picks of {item} tight'),
        stopIf: message('{item} lifts or slides, or the batten stirs'),
        abandon: message('Let the picks off slack again: {before}.'),
      };
    case 'rest':
      return {
        does: message('Put rated rests under {item} where it stands, and man them.'),
        said: message('{item} on its rest'),
        stopIf: message('the rest gives or rolls, or {item} slides'),
        abandon: message('Leave {item} hanging, lock closed, ring on: {before}.'),
      };
    case 'release':
      return {
        does: message('Hold {item}, then untie it from the batten and bring it away.'),
        said: message('{item} off'),
        stopIf: message('{item} is not held by itself, or the batten lifts'),
        abandon: message('Leave {item} tied on, and tie again what is open: {before}.'),
      };
    default:
      return unreachable(step);
  }
};

const itemDeed = (step: ItemStep, { before }: StepBetween, words: OrderWords): Deed => {
  const { does, said, stopIf, abandon } = itemWords(step);
  return deedOf(
    {
      who: 'Deck lead with riggers; rail operator at the lock',
      where: 'on the deck, batten at {at}; hands beside the tube, not below it',
      does,
      stopIf,
      call: ['Lead', 'Set {set}: {said}.'],
      answer: ['Deck lead', 'Set {set}: {said}. Locked and ringed.'],
      done: 'Set {set}: {said}, hands off.',
      abandon,
    },
    words,
    {
      item: words.nameOf(step.item),
      at: height(before.standing.height, words.house),
      said: phrase(words.house, said, { item: words.nameOf(step.item) }),
      before: phrase(words.house, AS_BEFORE),
    },
  );
};

type ZoneStep = Extract<Step, { readonly act: 'close' | 'reopen' }>;

const zoneDeed = ({ act, zone }: ZoneStep, words: OrderWords): Deed => {
  const names = { zone: zoneName(zone, words) };
  if (act === 'close') {
    return deedOf(
      {
        who: 'A marshal named for it, who takes no other job',
        where: 'at the edge of it',
        does: message('Clear {zone}, close it, keep it closed.'),
        stopIf: message('anybody is still in it, or comes into it'),
        call: ['Lead', 'Set {set}: close {zone}.'],
        answer: ['Marshal', 'Set {set}: close {zone}. Closed, nobody in it.'],
        done: 'Set {set}: marshal at the edge.',
        abandon: 'Reopen it: the set has not moved.',
      },
      words,
      names,
    );
  }
  return deedOf(
    {
      who: 'Its marshal, on the word of the lead and of nobody else',
      where: 'at the edge of it',
      does: message('Reopen {zone}.'),
      stopIf: message('a brick is in hand, the set moves, or the lock is not closed and ringed'),
      call: ['Lead', 'Set {set}: reopen {zone}.'],
      answer: ['Marshal', 'Set {set}: reopen {zone}. Open.'],
      done: 'Set {set}: marshal free.',
      abandon: 'Keep it closed: the set has not moved.',
    },
    words,
    names,
  );
};
