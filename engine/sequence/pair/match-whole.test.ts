/** Whole orders of two written by hand, step by step, and in how many spots they were found. */
import { describe, expect, it } from 'vitest';
import type { Step } from '#state';
import {
  add,
  ask,
  flown,
  fly,
  type Hand,
  off,
  on,
  remove,
  words,
} from './example-match.contract.ts';

const BAND = [-1, 1] as const;
const low = (...steps: readonly Step[]): Hand => ({ fromFt: 3, steps });
const both = (first: Hand, second: Hand) => ({ first, second, band: BAND });

const searched = (first: Hand, second: Hand): number => ask(both(first, second)).answer.searched;

describe('how many spots are looked at', () => {
  it('is the one where nothing is to do, and nothing is told', () => {
    const { answer } = ask(both(flown(3, []), flown(3, [])));
    expect(answer).toEqual({ is: 'matched', path: [], searched: 1 });
  });

  it('is both ends of a flight', () => {
    expect(searched(flown(3, [fly(20)]), flown(3, [fly(20)]))).toBe(2);
  });

  it('is one bricks on, or the other, before both', () => {
    // The loaders come for 10; over to the other set is 1 more: start, A, B, both.
    expect(searched(low(add()), low(add()))).toBe(4);
  });

  it('is no spot twice where two ways come to it at one cost', () => {
    expect(searched(low(add('upper'), add('mid')), low(add('upper'), add('mid')))).toBe(10);
    expect(searched(low(add(), add('upper', 'H'), add()), low(add()))).toBe(9);
    expect(searched(low(fly(20), add('mid')), low(fly(20), add('mid')))).toBe(12);
  });

  it('is all of them where there is no way, and says where it first came farthest', () => {
    // At 20 ft, the second goes out to 30 and takes the first along: both have done their flight.
    const flights = ask(both(flown(3, [fly(20)]), flown(3, [fly(30)]))).answer;
    const thirty = expect.closeTo(30 * 0.3048, 9);
    expect(flights).toMatchObject({
      is: 'none',
      furthest: { done: { first: 1, second: 1 }, heightM: { first: thirty, second: thirty } },
      searched: 15,
    });
    const { answer } = ask(both(flown(3, [add(), fly(20), add('mid')]), flown(3, [fly(30)])));
    expect(answer).toMatchObject({
      is: 'none',
      furthest: { done: { first: 3, second: 1 } },
      searched: 37,
    });
  });
});

describe('fewest visits', () => {
  it('has one gallery done with both before the next comes, whoever is there last', () => {
    expect(words(both(low(add('upper'), add('mid')), low(add('upper'), add('mid'))))).toEqual([
      'close upper',
      'A add 1 F upper',
      'B add 1 F upper',
      'reopen upper',
      'close mid',
      'B add 1 F mid',
      'A add 1 F mid',
      'reopen mid',
    ]);
  });

  it('has one of two galleries come twice where the orders cross', () => {
    expect(words(both(low(add('upper'), add('mid')), low(add('mid'), add('upper'))))).toEqual([
      'close upper',
      'A add 1 F upper',
      'reopen upper',
      'close mid',
      'A add 1 F mid',
      'B add 1 F mid',
      'reopen mid',
      'close upper',
      'B add 1 F upper',
      'reopen upper',
    ]);
  });

  it('stays with one set until it is done', () => {
    expect(words(both(low(add(), add('upper', 'H'), add()), low(add())))).toEqual([
      'close upper',
      'A add 1 F upper',
      'A add 1 H upper',
      'A add 1 F upper',
      'B add 1 F upper',
      'reopen upper',
    ]);
  });

  it('has riggers at both battens before the loaders come', () => {
    const lamp: Step = { act: 'attach', item: 'lamp', as: 'flying' };
    expect(words(both(low(lamp, add()), low(lamp, add())))).toEqual([
      'A attach lamp',
      'B attach lamp',
      'close upper',
      'B add 1 F upper',
      'A add 1 F upper',
      'reopen upper',
    ]);
  });

  it('flies both before the loaders come where nothing ties them', () => {
    expect(words(both(low(fly(20), add('mid')), low(fly(20), add('mid'))))).toEqual([
      'close run',
      'A to 20',
      'B to 20',
      'close mid',
      'B add 1 F mid',
      'A add 1 F mid',
      'reopen mid',
      'reopen run',
    ]);
  });
});

describe('a piece on both', () => {
  it('is put on in the middle of what each has to do', () => {
    expect(words(both(low(add(), on, fly(20)), low(on, add(), fly(20))))).toEqual([
      'close upper',
      'A add 1 F upper',
      'reopen upper',
      'A attach header',
      'B attach header',
      'close upper',
      'B add 1 F upper',
      'close run',
      'A to 20, B to 20',
      'reopen upper',
      'reopen run',
    ]);
  });

  it('comes in, is stripped of bricks by one visit, and comes off', () => {
    const strike = flown(20, [fly(3), remove(), off]);
    expect(words(both(strike, strike))).toEqual([
      'close run',
      'A to 3, B to 3',
      'close upper',
      'A remove 1 F upper',
      'B remove 1 F upper',
      'reopen upper',
      'reopen run',
      'B release header',
      'A release header',
    ]);
  });

  it('goes along for the other one\u2019s work and back on its way', () => {
    expect(
      words(
        both(flown(3, [fly(20), add('mid'), fly(40)]), flown(3, [fly(30), add('upper'), fly(40)])),
      ),
    ).toEqual([
      'close run',
      'A to 20, B to 20',
      'close mid',
      'A add 1 F mid',
      'A to 30, B to 30',
      'reopen mid',
      'close upper',
      'B add 1 F upper',
      'A to 40, B to 40',
      'reopen upper',
      'reopen run',
    ]);
  });
});
