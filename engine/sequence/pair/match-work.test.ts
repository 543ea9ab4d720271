/** Work of two orders written by hand, matched: the piece, the galleries, and the run. */
import { describe, expect, it } from 'vitest';
import type { Step } from '#state';
import { clearItem, lb, setWith } from '../example-jobs.contract.ts';
import {
  add,
  ask,
  bare2,
  flown,
  fly,
  type Hand,
  light,
  off,
  on,
  remove,
  words,
} from './example-match.contract.ts';
import { pairWords, physicsOf } from './example-pairs.contract.ts';
import { pairTold } from './tell.ts';

describe('a piece on two sets', () => {
  const away = (fromFt: number, steps: readonly Step[]): Hand => ({ fromFt, steps });

  it('goes on both, one after the other', () => {
    expect(
      bare2({
        first: away(3, [add(), on, fly(20)]),
        second: away(3, [on, add(), fly(20)]),
        band: [-1, 1],
      }),
    ).toEqual([
      'A add 1 F upper',
      'A attach header',
      'B attach header',
      'B add 1 F upper',
      'A to 20, B to 20',
    ]);
  });

  it('has nothing else done while it is half on, neither on nor off', () => {
    const lamp: Step = { act: 'attach', item: 'lamp', as: 'flying' };
    const steps = [on, lamp];
    const found = bare2({
      first: away(3, steps),
      second: away(3, [...steps, add()]),
      band: [0, 0],
    });
    expect(found.slice(0, 2).toSorted()).toEqual(['A attach header', 'B attach header']);
    expect(found).toHaveLength(5);
    const unlamp: Step = { act: 'release', item: 'lamp' };
    const lit = (): Hand => ({ ...flown(3, [off, unlamp]), isOn: true });
    const back = bare2({
      first: lit(),
      second: { ...lit(), steps: [off, unlamp, remove()] },
      band: [0, 0],
    });
    expect(back.slice(0, 2).toSorted()).toEqual(['A release header', 'B release header']);
  });

  it('comes off both, one after the other', () => {
    const found = bare2({
      first: flown(3, [remove(), off, fly(30)]),
      second: flown(3, [off, remove()]),
      band: [-1, 1],
    });
    expect(found.slice(0, 1)).toEqual(['A remove 1 F upper']);
    expect(found.slice(1, 3).toSorted()).toEqual(['A release header', 'B release header']);
    expect(found).toContain('A to 30');
  });

  it('does not go on both out of the band', () => {
    const asked = { first: away(3, [on]), second: away(5, [on]), band: [-1, 1] } as const;
    expect(ask(asked).answer.is).toBe('none');
    expect(bare2({ ...asked, band: [-1, 2] })).toHaveLength(2);
  });

  it('keeps a set from flying while it is half on', () => {
    const asked = {
      first: away(3, [on, fly(5)]),
      second: away(3, [fly(5), on]),
      band: [-9, 9],
    } as const;
    // The second flies first, for nothing flies half on; and at the end it stays where it ends.
    expect(bare2(asked)).toEqual([
      'B to 5',
      'B attach header',
      'A attach header',
      'A to 5, B to 5',
    ]);
  });

  it('does not go on where one set would not hold all of it', () => {
    const heavy = setWith({ header: clearItem(40) }, { bareKg: 0, linesKgPerM: 0 });
    const physics = { first: physicsOf('A', heavy), second: physicsOf('B', heavy) };
    const asked = { first: away(5, [on]), second: away(5, [on]), band: [-1, 1] } as const;
    expect(ask({ ...asked, more: { physics } }).answer.is).toBe('none');
    expect(ask(asked).answer.is).toBe('matched');
    // The one on its stop has all of it first; the other way round it is not held.
    const low = { ...asked, first: away(3, [on]), band: [-1, 9] } as const;
    expect(bare2({ ...low, more: { physics } })).toEqual(['A attach header', 'B attach header']);
    const second = { ...asked, second: away(3, [on]), band: [-9, 1] } as const;
    expect(bare2({ ...second, more: { physics } })).toEqual(['B attach header', 'A attach header']);
  });

  it('comes off first where none of it would not be held', () => {
    // 60 lb arbor heavy without the header, and 40 lb with it.
    const low = setWith({ header: clearItem(20) }, { bareKg: -lb(60), linesKgPerM: 0 });
    const asked = { first: flown(5, [off]), second: flown(5, [off]), band: [0, 0] } as const;
    const [one, other] = [physicsOf('A', light), physicsOf('B', low)];
    const second = { ...asked, more: { physics: { first: one, second: other } } };
    expect(bare2(second)).toEqual(['B release header', 'A release header']);
    const first = {
      first: { ...other, set: 'A' },
      second: { ...one, set: 'B' },
    };
    expect(bare2({ ...asked, more: { physics: first } })).toEqual([
      'A release header',
      'B release header',
    ]);
  });

  it('has no hands at a batten where the other one would not hold all of it', () => {
    const lamp: Step = { act: 'attach', item: 'lamp', as: 'flying' };
    const heavy = setWith(
      { header: clearItem(40), lamp: clearItem(5) },
      { bareKg: 0, linesKgPerM: 0 },
    );
    const physics = { first: physicsOf('A', heavy), second: physicsOf('B', heavy) };
    const asked = { first: flown(5, [lamp]), second: flown(5, []), band: [0, 0] } as const;
    expect(ask(asked).answer.is).toBe('matched');
    expect(ask({ ...asked, more: { physics } }).answer.is).toBe('none');
    // Bricks are handled all the same, with the run closed.
    const bricks = { ...asked, first: flown(5, [add()]), more: { physics } } as const;
    expect(words(bricks).slice(0, 3)).toEqual(['close run', 'close upper', 'A add 1 F upper']);
  });

  it('lies beside a batten and is not on it', () => {
    const beside = { fromFt: 3, steps: [fly(20)], beside: true };
    expect(bare2({ first: beside, second: beside, band: [0, 0] })).toHaveLength(2);
  });

  it('goes by itself where it is on neither', () => {
    expect(
      bare2({ first: away(3, [fly(20)]), second: away(3, [fly(50)]), band: [-1, 1] }).toSorted(),
    ).toEqual(['A to 20', 'B to 50']);
  });
});

describe('galleries of both', () => {
  it('serve both sets in one visit', () => {
    const steps = [add('upper'), add('mid')];
    const found = bare2({
      first: { fromFt: 3, steps },
      second: { fromFt: 3, steps },
      band: [0, 0],
    });
    expect(found.map((word) => word.split(' ').at(-1))).toEqual(['upper', 'upper', 'mid', 'mid']);
  });

  it('do not give what they have not', () => {
    const one = {
      ...light,
      galleries: light.galleries.map((each) => ({ ...each, stock: { F: 1, H: 0 } })),
    };
    const physics = { first: physicsOf('A', one), second: physicsOf('B', one) };
    const asked = {
      first: { fromFt: 3, steps: [add()] },
      second: { fromFt: 3, steps: [add()] },
      band: [0, 0],
      more: { physics },
    } as const;
    expect(ask(asked).answer.is).toBe('none');
    const back = { ...asked, second: { fromFt: 3, steps: [remove(), add()] } } as const;
    expect(bare2(back)[0]).toBe('B remove 1 F upper');
  });
});

describe('the run of both', () => {
  const hands = { fromFt: 3, steps: [on] };

  it('is closed where the order of the set at work has it closed', () => {
    const told = words({ first: { ...hands, closed: [0] }, second: hands, band: [0, 0] });
    expect(told).toContain('close run');
    expect(told.indexOf('close run')).toBe(told.indexOf('A attach header') - 1);
  });

  it('is closed where the other set stands so that it is never open', () => {
    const first = { fromFt: 3, steps: [add()], shut: [0, 1] };
    const told = words({
      first,
      second: { fromFt: 3, steps: [add()] },
      band: [0, 0],
      more: { shared: [] },
    });
    expect(told[0]).toBe('close upper');
    expect(told.filter((word) => word.endsWith('run'))).toEqual(['close run']);
    expect(told.indexOf('close run')).toBe(told.indexOf('B add 1 F upper') - 1);
  });

  it('is not closed for bricks where nothing needs it, and zones are as they were found', () => {
    const asked = {
      first: { fromFt: 3, steps: [add('upper'), add('mid')] },
      second: { fromFt: 3, steps: [add('mid')] },
      band: [0, 0],
    } as const;
    expect(words(asked)).toEqual([
      'close upper',
      'A add 1 F upper',
      'reopen upper',
      'close mid',
      'A add 1 F mid',
      'B add 1 F mid',
      'reopen mid',
    ]);
    const { match, start, answer } = ask(asked);
    if (answer.is !== 'matched') throw new Error('matched');
    const found = [{ zone: 'drop', gallery: 'upper' } as const];
    const told = pairTold(match, start, answer.path, found);
    expect(pairWords(told)).not.toContain('close upper');
    expect(pairWords(told)).not.toContain('reopen upper');
    expect(told.states.at(-1)?.second.closed).toEqual(found);
    expect(told.steps.at(-1)).toMatchObject({ set: 'B', step: { act: 'reopen' } });
    expect(pairTold(match, start, [], found).steps).toEqual([]);
  });

  it('is reopened for hands at a batten, and at the end where both may have it open', () => {
    const first = { fromFt: 20, steps: [fly(3), on] };
    const second = { fromFt: 3, steps: [on] };
    expect(words({ first, second, band: [0, 0] })).toEqual([
      'close run',
      'A to 3',
      'reopen run',
      'A attach header',
      'B attach header',
    ]);
    const moved = { first: flown(3, [fly(5)]), second: flown(3, [fly(5)]), band: [0, 0] } as const;
    expect(words(moved).at(-1)).toBe('reopen run');
    const shut = { ...moved, second: { ...moved.second, shut: [1] } };
    expect(words(shut).at(-1)).toBe('A to 5, B to 5');
  });
});
