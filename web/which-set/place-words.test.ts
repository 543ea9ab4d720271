import { describe, expect, it } from 'vitest';
import { INCH, newtons, POUND, POUND_FORCE } from '#quantities';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf } from '../order/example-work.ts';
import {
  sayAgainst,
  sayBay,
  sayBricks,
  sayGap,
  sayNotKnown,
  sayOff,
  sayWithheld,
  sayWork,
} from './place-words.ts';

const { house } = documentsOf({ house: kestlemere, show: clockmaker, state: record });
const uk = { ...house, words: 'UK' as const };
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');
const known = <T>(value: T) => ({ known: true as const, value });
const noName = (id: string): string => id;

describe('reasons in words', () => {
  it('says on which side of the wanted place a set stands', () => {
    expect(plain(sayOff(known(9 * INCH), house))).toBe('0\'-9" upstage');
    expect(plain(sayOff(known(-9 * INCH), house))).toBe('0\'-9" downstage');
    expect(sayOff(known(0), house)).toBe('there');
    expect(sayOff({ known: false, needs: ['place'] }, house)).toBe('not known');
  });

  it('says room less and lack of room more than it is', () => {
    expect(plain(sayGap({ is: 'gap', set: '19', gapM: -7.5 * INCH }, house))).toBe(
      '0\'-7 1/2" too deep for set 19',
    );
    expect(plain(sayGap({ is: 'gap', set: '16', gapM: 11.4 * INCH }, house))).toBe(
      '0\'-11 3/8" to set 16',
    );
    expect(sayGap({ is: 'unknown', needs: [] }, house)).toBe('not known');
  });

  it('speaks in the words of the house', () => {
    const past = { is: 'pastBatten', item: 'Cloth', byM: 0.3 } as const;
    expect(sayAgainst(past, house, noName)).toContain('end of the batten');
    expect(sayAgainst(past, uk, noName)).toContain('end of the bar');
    expect(sayBricks(null, uk)).toBe('takes no weights');
    const mix = { is: 'noMix', limit: 'rodTooShort' } as const;
    expect(sayAgainst(mix, house, noName)).toBe(
      'No mix of bricks keeps it within the lock: the rod is too short.',
    );
  });

  it('never prints a share that is not known', () => {
    const bay = {
      bay: 'C',
      vertical: known(newtons(35_001)),
      verticalLimit: known(newtons(38_000)),
      horizontal: known(newtons(27_000)),
      horizontalLimit: { known: false as const, needs: ['limit'] },
    };
    // 35,001 of 38,000 is 92.1 %, and a load is never said less than it is.
    expect(sayBay(bay)).toBe('C: 93 % down, not known across');
    expect(sayNotKnown({ of: 'bay', needs: ['horizontal limit of bay C'] }, house)).toBe(
      'Bay: horizontal limit of bay C.',
    );
  });

  it('says what the work needs, and that a mass must be weighed first', () => {
    const restraint = { resists: 'out', ratedN: 195 * POUND_FORCE, fromM: 1, toM: 2 } as const;
    const words = sayWork({ is: 'order', restraint, asWritten: true }, house);
    expect(plain(words)).toBe('195 lbf against out, masses as written: weigh or pull-test first');
    expect(sayWork({ is: 'noOrder', rule: 'HOLD', change: 'stock' }, house)).toBe(
      'no order exists: nothing holds it on the way; more loose bricks would do',
    );
  });

  it('says why a set was not looked at', () => {
    expect(sayWithheld({ set: '20', is: 'lockedOut', tag: '7, hand line chafed' })).toBe(
      'locked out, tag 7, hand line chafed',
    );
    expect(sayWithheld({ set: '4', is: 'keptEmpty', reason: 'depth of 5' })).toBe(
      'kept empty: depth of 5',
    );
  });

  it('names bricks by kind, and the whole arbor', () => {
    const bricks = {
      counts: [{ kind: 'F', count: 3 }],
      showMassKg: 75 * POUND,
      arborMassKg: 270 * POUND,
      stackHeightM: 0.2,
      worstN: 100,
      lockN: known(200),
      reachedFrom: known('upper'),
    };
    expect(plain(sayBricks(known(bricks), house))).toBe('3F, arbor 270 lb');
  });
});
