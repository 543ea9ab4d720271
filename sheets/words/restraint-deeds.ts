/** Restraints on and off, and a set hung on steel or taken off it: always two people's word. */
import type { Restraint, Step } from '#state';
import { message, phrase } from '#texts';
import { AS_BEFORE, type Deed, deedOf } from './deed.ts';
import { type OrderWords, restraintName, restraintWords } from './say-standing.ts';

type RestraintStep = Extract<Step, { readonly act: 'rig' | 'unrig' }>;

type Crew = { readonly who: string; readonly where: string };

const CREWS: Readonly<Record<Restraint['kind'], Crew>> = {
  bullLine: {
    who: message('Bull line leader and crew'),
    where: message('on the deck, out of the line of its pull'),
  },
  arborSling: {
    who: message('Gallery lead'),
    where: message('at the gallery where the arbor stands'),
  },
  stands: { who: message('Deck lead'), where: message('on the deck, under the lift lines') },
  winch: { who: message('Winch leader'), where: message('at the rail') },
  choke: { who: message('Rail operator'), where: message('at the rail; it is never left') },
  deadHangSteel: { who: message('Lead rigger'), where: message('at the steel above') },
  pinnedPiece: { who: message('Deck lead'), where: message('on the deck, at the piece') },
};

export const restraintDeed = ({ act, restraint }: RestraintStep, words: OrderWords): Deed => {
  const { house } = words;
  const { who, where } = CREWS[restraint.kind];
  const names = {
    name: restraintName(restraint, house),
    whole: restraintWords(restraint, house),
    who: phrase(house, who),
    before: phrase(house, AS_BEFORE),
  };
  if (act === 'rig') {
    return deedOf(
      {
        who: '{who}, with the lead',
        where,
        does: 'Rig the {whole}. Write its owner and its tag in the register, and tag the lock.',
        stopIf: 'it, its anchor or what it is made fast to is not rated for that',
        call: ['Lead', 'Set {set}: {name} on.'],
        answer: [who, 'Set {set}: {name} on. Going on.'],
        done: 'Set {set}: {name} on, tagged at the rail.',
        abandon: 'Take the {name} off again: {before}.',
      },
      words,
      names,
    );
  }
  return deedOf(
    {
      who: '{who}, with the lead',
      where,
      does: 'Take the {name} off, owner and lead together, and cross it out in the register.',
      stopIf: 'the batten or the arbor stirs as it is eased: make it fast again',
      call: ['Lead', 'Set {set}: {name} off. Locked and ringed?'],
      answer: [who, 'Set {set}: {name} off. Locked, ringed.'],
      done: 'Set {set}: {name} off, tag returned.',
      abandon: 'Leave the {name} on: {before}.',
    },
    words,
    names,
  );
};

export const steelDeed = (act: 'hangOnSteel' | 'takeOffSteel', words: OrderWords): Deed =>
  act === 'hangOnSteel'
    ? deedOf(
        {
          who: 'Lead rigger with riggers, and the lead',
          where: 'at the steel above, and on the deck',
          does: 'Hang what the batten carries on rated steel, every leg tight; tag the lock.',
          stopIf: 'a leg stays slack, or steel or anchor is not rated for its share',
          call: ['Lead', 'Set {set}: onto the steel.'],
          answer: ['Lead rigger', 'Set {set}: onto the steel. Locked, ringed.'],
          done: 'Set {set}: on the steel, every leg tight, tagged.',
          abandon: 'Take the steel off leg by leg, arbor and lock untouched: {before}.',
        },
        words,
        { before: phrase(words.house, AS_BEFORE) },
      )
    : deedOf(
        {
          who: 'Lead rigger with riggers, and the lead',
          where: 'at the steel above, and on the deck',
          does: 'Ease the load off the steel onto the batten, then take the steel off.',
          stopIf: 'a leg goes slack before it is eased, or the batten moves',
          call: ['Lead', 'Set {set}: off the steel. Locked and ringed?'],
          answer: ['Lead rigger', 'Set {set}: off the steel. Locked, ringed.'],
          done: 'Set {set}: off the steel, tag returned.',
          abandon: 'Shackle the steel again before anything else: {before}.',
        },
        words,
        { before: phrase(words.house, AS_BEFORE) },
      );
