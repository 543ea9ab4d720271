/** What goes and what does not, of two orders written by hand. */
import { describe, expect, it } from 'vitest';
import type { Step } from '#state';
import { clearItem, lb, setWith } from '../example-jobs.contract.ts';
import { add, ask, bare2, flown, fly, type Hand, on } from './example-match.contract.ts';
import { physicsOf } from './example-pairs.contract.ts';
import { pairTold } from './tell.ts';

const away = (fromFt: number, steps: readonly Step[]): Hand => ({ fromFt, steps });

describe('a set that goes along', () => {
  it('is over the other one by no less and no more than the band, whoever goes', () => {
    // Three feet over before, and so after; the band begins at two.
    const goes = [fly(20), add('mid'), fly(3)];
    expect(bare2({ first: flown(3, goes), second: flown(6, []), band: [2, 4] })).toEqual([
      'A to 20, B to 23',
      'A add 1 F mid',
      'A to 3, B to 6',
    ]);
    expect(bare2({ first: flown(6, []), second: flown(3, goes), band: [-4, -2] })).toEqual([
      'A to 23, B to 20',
      'B add 1 F mid',
      'A to 6, B to 3',
    ]);
  });

  it('does not fly on from there where it would not be held', () => {
    // 10 lb batten heavy and a header of 20 at 3 ft, 2 lb less a foot: −50 lb at 43 ft.
    const steep = setWith(
      { header: clearItem(20) },
      { bareKg: lb(10), linesKgPerM: lb(1) / 0.3048 },
    );
    const flat = setWith({ header: clearItem(20) }, { bareKg: 0, linesKgPerM: 0 });
    const physics = { first: physicsOf('A', flat), second: physicsOf('B', steep) };
    const to = (heightFt: number) =>
      bare2({
        first: flown(3, [fly(20), add('mid'), fly(heightFt)]),
        second: flown(3, [fly(heightFt)]),
        band: [-1, 1],
        more: { physics },
      });
    const work = ['A to 20, B to 20', 'A add 1 F mid'];
    expect(to(42)).toEqual([...work, 'A to 42, B to 42']);
    // Its own order may have a line on for the flight from 3 ft; nobody has said so from 20.
    expect(to(44)).toEqual([...work, 'A to 3, B to 3', 'A to 44, B to 44']);
  });

  it('is not flown where it already is', () => {
    const { answer } = ask({
      first: away(3, [fly(20), add('mid')]),
      second: away(3, [fly(20), add('mid')]),
      band: [-1, 1],
    });
    // Start; A or B up, or both; then each with bricks on one, the other or both.
    expect(answer.searched).toBe(12);
  });
});

describe('a piece that is half on', () => {
  it('has no flight looked at', () => {
    const { answer } = ask({
      first: away(3, [on, fly(5)]),
      second: away(3, [fly(5), on]),
      band: [-9, 9],
    });
    expect(answer.is).toBe('matched');
    expect(answer.searched).toBe(9);
  });
});

describe('hands at a batten', () => {
  const heavy = setWith(
    { header: clearItem(40), lamp: clearItem(5) },
    { bareKg: 0, linesKgPerM: 0 },
  );
  const physics = { first: physicsOf('A', heavy), second: physicsOf('B', heavy) };
  const done = (step: Step) =>
    ask({ first: flown(5, [step]), second: flown(5, []), band: [0, 0], more: { physics } }).answer
      .is;

  it('tie on, let go, take up and rest only where the other set would hold all of a piece', () => {
    // 80 lb on a lock of 50.
    expect(done({ act: 'attach', item: 'lamp', as: 'flying' })).toBe('none');
    expect(done({ act: 'release', item: 'lamp' })).toBe('none');
    expect(done({ act: 'takeUp', item: 'lamp' })).toBe('none');
    expect(done({ act: 'rest', item: 'lamp' })).toBe('none');
    expect(done({ act: 'hangOnSteel' })).toBe('matched');
  });
});

describe('steps of the second set', () => {
  it('have zones that are written to it', () => {
    const { match, start, answer } = ask({
      first: away(3, []),
      second: away(3, [add()]),
      band: [-1, 1],
    });
    if (answer.is !== 'matched') throw new Error(answer.is);
    const { steps } = pairTold(match, start, answer.path, []);
    expect(steps).toEqual([
      { set: 'B', step: { act: 'close', zone: { zone: 'drop', gallery: 'upper' } } },
      { set: 'B', step: add() },
      { set: 'B', step: { act: 'reopen', zone: { zone: 'drop', gallery: 'upper' } } },
    ]);
  });
});
