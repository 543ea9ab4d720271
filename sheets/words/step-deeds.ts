/** What each kind of step asks of a crew: who, where, what, the words called, when to stop. */

import type { StepBetween } from '#orders';
import { unreachable } from '#outcome';
import type { Step } from '#state';
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
  attachedSlack: 'Tie {item} to the batten with its picks slack; it stays lying on the deck.',
  attachedResting: 'Tie {item} to the batten with its picks tight; it stays on what it rests on.',
  flying: 'Tie {item} to the batten so that it hangs.',
};

const itemWords = (step: ItemStep): ItemWords => {
  switch (step.act) {
    case 'attach':
      return {
        does: ON[step.as],
        said: '{item} on',
        stopIf: 'the batten stirs, or a pick is not where its card has it',
        abandon: `Take {item} off again and bring it away: ${AS_BEFORE}.`,
      };
    case 'takeUp':
      return {
        does: 'Draw the picks of {item} tight; it stays on what it rests on.',
        said: 'picks of {item} tight',
        stopIf: '{item} lifts or slides, or the batten stirs',
        abandon: `Let the picks off slack again: ${AS_BEFORE}.`,
      };
    case 'rest':
      return {
        does: 'Put rated rests under {item} where it stands, and man them.',
        said: '{item} on its rest',
        stopIf: 'the rest gives or rolls, or {item} slides',
        abandon: `Leave {item} hanging, lock closed, ring on: ${AS_BEFORE}.`,
      };
    case 'release':
      return {
        does: 'Hold {item}, then untie it from the batten and bring it away.',
        said: '{item} off',
        stopIf: '{item} is not held by itself, or the batten lifts',
        abandon: `Leave {item} tied on, and tie again what is open: ${AS_BEFORE}.`,
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
      call: ['Lead', `Set {set}: ${said}.`],
      answer: ['Deck lead', `Set {set}: ${said}. Locked and ringed.`],
      done: `Set {set}: ${said}, hands off.`,
      abandon,
    },
    words,
    { item: words.nameOf(step.item), at: height(before.standing.height, words.house) },
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
        does: 'Clear {zone}, close it, keep it closed.',
        stopIf: 'anybody is still in it, or comes into it',
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
      does: 'Reopen {zone}.',
      stopIf: 'a brick is in hand, the set moves, or the lock is not closed and ringed',
      call: ['Lead', 'Set {set}: reopen {zone}.'],
      answer: ['Marshal', 'Set {set}: reopen {zone}. Open.'],
      done: 'Set {set}: marshal free.',
      abandon: 'Keep it closed: the set has not moved.',
    },
    words,
    names,
  );
};
