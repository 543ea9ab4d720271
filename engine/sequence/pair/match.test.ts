/** Flights of two orders written by hand, matched: only the band says what goes. */
import { describe, expect, it } from 'vitest';
import type { Step } from '#state';
import { add, ask, bare2, flown, fly, light, remove } from './example-match.contract.ts';
import { physicsOf } from './example-pairs.contract.ts';

describe('flights of both', () => {
  it('end where both orders end, if that is in the band', () => {
    expect(
      bare2({ first: flown(3, [fly(20)]), second: flown(3, [fly(22)]), band: [0, 2] }),
    ).toEqual(['A to 20, B to 22']);
  });

  it('take the other one along as far apart as they are', () => {
    expect(
      bare2({
        first: flown(3, [fly(20), add('mid'), fly(40)]),
        second: flown(4, [fly(41)]),
        band: [-5, 5],
      }),
    ).toEqual(['A to 20, B to 21', 'A add 1 F mid', 'A to 40, B to 41']);
    expect(
      bare2({
        first: flown(3, [fly(40)]),
        second: flown(4, [fly(20), add('mid'), fly(41)]),
        band: [-5, 5],
      }),
    ).toEqual(['A to 19, B to 20', 'B add 1 F mid', 'A to 40, B to 41']);
  });

  it('stop for each where one height does not do for both', () => {
    expect(
      bare2({
        first: flown(3, [fly(20), add('mid'), fly(40)]),
        second: flown(3, [fly(30), add('upper'), fly(40)]),
        band: [-1, 1],
      }),
    ).toEqual([
      'A to 20, B to 20',
      'A add 1 F mid',
      'A to 30, B to 30',
      'B add 1 F upper',
      'A to 40, B to 40',
    ]);
  });

  it('go along no farther than the band and the stops let them', () => {
    // As far apart as before would be above the high stop at 61 ft.
    expect(
      bare2({
        first: flown(30, [fly(60), add(), fly(30)]),
        second: flown(34, [fly(34)]),
        band: [0, 4],
      })[0],
    ).toBe('A to 60, B to 60');
  });

  it('bring back who went along before its own work', () => {
    const found = bare2({
      first: flown(3, [fly(20), add('mid')]),
      second: flown(3, [add('upper'), fly(20)]),
      band: [-1, 1],
    });
    expect(found).toEqual(['B add 1 F upper', 'A to 20, B to 20', 'A add 1 F mid']);
  });

  it('take the whole of a band that is one height', () => {
    expect(
      bare2({ first: flown(3, [fly(20)]), second: flown(5, [fly(22)]), band: [2, 2] }),
    ).toEqual(['A to 20, B to 22']);
    expect(
      bare2({
        first: flown(5, [fly(22)]),
        second: flown(3, [fly(10), add('mid'), fly(20)]),
        band: [-2, -2],
      }),
    ).toEqual(['A to 12, B to 10', 'B add 1 F mid', 'A to 22, B to 20']);
  });

  it('go as near to as far apart as before as the band has it', () => {
    // 3 ft below before; the band lets no more than a foot.
    const lower = { first: flown(20, [fly(40), add('mid'), fly(3)]), second: flown(19, [fly(3)]) };
    expect(bare2({ ...lower, band: [-1, 1] })[0]).toBe('A to 40, B to 39');
    const second = { first: flown(19, [fly(3)]), second: flown(20, [fly(40), add('mid'), fly(3)]) };
    expect(bare2({ ...second, band: [-1, 1] })[0]).toBe('A to 39, B to 40');
  });

  it('bring back who went along to where its own work is', () => {
    // The second has bricks only when the first has given them back, 17 ft higher.
    const none = {
      ...light,
      galleries: light.galleries.map((each) => ({ ...each, stock: { F: 0, H: 0 } })),
    };
    const physics = { first: physicsOf('A', none), second: physicsOf('B', none) };
    const second = flown(3, [add()]);
    const found = (steps: readonly Step[]) =>
      bare2({ first: flown(3, steps), second, band: [-1, 1], more: { physics } });
    expect(found([fly(20), remove(), fly(4)])).toEqual([
      'A to 20, B to 20',
      'A remove 1 F upper',
      'A to 4, B to 3',
      'B add 1 F upper',
    ]);
  });

  it('are none where the band does not let them', () => {
    const { answer } = ask({
      first: flown(3, [fly(20)]),
      second: flown(3, [fly(30)]),
      band: [-1, 1],
    });
    expect(answer.is).toBe('none');
    // Each has flown where it ends, and the other one could not stay.
    expect(answer).toMatchObject({ furthest: { done: { first: 1, second: 1 } } });
  });

  it('are looked for in so many spots and no more', () => {
    const asked = {
      first: flown(3, [fly(20), add('mid'), fly(40)]),
      second: flown(3, [fly(40)]),
      band: [-1, 1],
    } as const;
    const { answer } = ask(asked);
    expect(answer.is).toBe('matched');
    expect(ask({ ...asked, most: answer.searched }).answer.is).toBe('matched');
    expect(ask({ ...asked, most: answer.searched - 1 }).answer).toEqual({
      is: 'stopped',
      searched: answer.searched - 1,
    });
  });
});
