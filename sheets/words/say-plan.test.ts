/** What a search says of itself, what carries a line, and why a sheet is not printed. */
import { describe, expect, it } from 'vitest';
import type { Finding } from '#findings';
import { kilograms, metres, newtons } from '#quantities';
import type { OrderPlan, SmallestChange } from '#sequence';
import { openExample } from '../../examples/open-example.ts';
import { dropOut, RIGHT, strikeOf, WRONG, withOrders } from '../example-orders.ts';
import { exampleContext } from '../example-sheets.ts';
import { sayBearing } from './say-bearing.ts';
import { sayPlan } from './say-plan.ts';
import { sayWhyNoOrder } from './why-no-order.ts';
import { whyWords } from './why-words.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const { house: us } = kestlemere;
const uk = openExample('skelderwick').house;
const start = dropOut(kestlemere);
const plain = (sentences: readonly string[]): string =>
  sentences.join(' ').replaceAll('\u00A0', ' ');

type None = Extract<OrderPlan, { readonly none: unknown }>['none'];

const none = (more: Partial<None>): OrderPlan => ({
  none: {
    searched: 12,
    exhaustive: true,
    rule: 'HOLD',
    atHeight: null,
    byN: null,
    smallestChange: null,
    ...more,
  },
});

const RULES = ['HOLD', 'REACH', 'STOCK', 'ROD', 'MASS', 'TRAVEL', 'SERVICE', 'GOAL'] as const;

const CHANGES: readonly (readonly [SmallestChange, RegExp])[] = [
  [
    {
      change: 'restraint',
      resists: 'out',
      rated: newtons(240),
      from: metres(3.048),
      to: metres(6.096),
    },
    /resists the batten going out, rated 54 lbf or more, .* from 10'-0" to 20'-0"\.$/,
  ],
  [{ change: 'tolerances', share: 0.509 }, /masses known to 50 % of their tolerances/],
  [{ change: 'higher', to: metres(3.048) }, /riggers who reach the batten up to 10'-0"/],
  [{ change: 'lower', to: metres(3.048) }, /riggers who reach the batten down to 10'-0"/],
  [{ change: 'stock' }, /enough bricks at the galleries/],
  [
    { change: 'gallery', from: metres(3.048), to: metres(6.096) },
    /bricks handled with the batten from 10'-0" to 20'-0", where no gallery reaches now/,
  ],
  [{ change: 'rod', by: metres(0.3048) }, /rods that take 1'-0" more/],
  [{ change: 'arbor', by: kilograms(5) }, /an arbor that may weigh 12 lb more/],
];

describe('what a search says', () => {
  it('keeps none found and none exists apart', () => {
    const stopped = plain(sayPlan({ stopped: { searched: 9 } }, us, start));
    expect(stopped).toBe('None found in 9 states: stop and ask.');
    const all = plain(sayPlan(none({}), us, start));
    expect(all).toMatch(/^None exists \(all 12 states searched\)\. Somewhere on every way nothing/);
    expect(all).toMatch(/\[HOLD\] No small change was found after which one exists\.$/);
  });

  it.each(RULES)('has words for %s in either house', (rule) => {
    const said = plain(sayPlan(none({ rule }), us, start));
    expect(said).toContain(`[${rule}]`);
    expect(plain(sayPlan(none({ rule }), uk, start))).not.toMatch(/\b(batten|bricks?)\b/i);
  });

  it('says where and by how much it is short, and that a set is not held as it stands', () => {
    const { height } = start;
    const short = none({ searched: 1, atHeight: height, byN: newtons(36) });
    expect(plain(sayPlan(short, us, start))).toMatch(
      /Nothing rated holds the set as it stands\. .* With the batten at 60'-6"\. Short by 9 lbf\./,
    );
    const cannot = plain(sayPlan(none({ searched: 0, rule: 'GOAL' }), us, start));
    expect(cannot).toMatch(/^No order: what is asked for cannot be\./);
  });

  it.each(CHANGES)('names the smallest change: %j', (smallestChange, words) => {
    const said = plain(sayPlan(none({ smallestChange }), us, start));
    expect(said).toContain('Smallest change after which one exists: ');
    expect(said).toMatch(words);
    const abroad = plain(sayPlan(none({ smallestChange }), uk, start));
    expect(abroad).not.toMatch(/\b(batten|bricks?|arbor)\b|\d'-\d|lbf/i);
  });

  it('asks for a restraint as a wish, and says what it did not search', () => {
    const restraint = {
      resists: 'out',
      rated: newtons(240),
      from: metres(3.048),
      to: metres(6.096),
      refutedStates: 41,
    } as const;
    const found = {
      steps: [],
      states: [],
      restraint,
      exposedJ: null,
      searched: 50,
      optimal: false,
    };
    const said = plain(sayPlan({ found }, us, start));
    expect(said).toMatch(/^RESTRAINT NEEDED: something that resists .* A wish and not a leave/);
    expect(said).toMatch(
      /\(41 states searched\)\. Searched 50 states: a better order may exist\.$/,
    );
  });
});

describe('what carries a line', () => {
  const borne = { at: [metres(-1.3716), metres(1.3716)], stops: [], lacks: [] };

  it('is said with the places, and what is not reckoned', () => {
    expect(plain([sayBearing(borne, us)])).toMatch(
      /^Reckoned: batten, lift lines .* at 4'-6" each side\. Arbor, anchor, .* not reckoned\.$/,
    );
    expect(sayBearing(null, uk)).toMatch(/^A wish .* bar, suspension wires, blocks, cradle and/);
  });

  it('is refused where it stops, or where something is not known', () => {
    const code = 'LIN-001';
    const stop: Finding = {
      code,
      level: 'stop',
      at: {},
      measured: null,
      limit: null,
      limitSource: 'house rule',
      facts: {},
      working: null,
    };
    expect(sayBearing({ ...borne, stops: [stop, stop] }, us)).toMatch(
      /^NOT TO BE RIGGED: batten, lift lines or blocks do not bear the line .*: LIN-001\.$/,
    );
    expect(sayBearing({ needs: ['Batten cloth: mass'] }, uk)).toBe(
      'NOT TO BE RIGGED: whether bar, suspension wires and blocks bear the line is not known: ' +
        'Batten cloth: mass.',
    );
    expect(whyWords('the batten', uk)).toBe('the bar');
  });
});

describe('why no order is printed', () => {
  const worked = (order: ReturnType<typeof strikeOf>) => {
    const asked = withOrders(kestlemere, [order]).orders?.of('9', 'strike');
    if (asked === undefined) throw new Error('it is asked for');
    return asked;
  };

  it('is nothing where it may be', () => {
    expect(sayWhyNoOrder(worked(strikeOf(kestlemere, RIGHT)), us)).toEqual([]);
  });

  it('is what the judge said, where and by which rule', () => {
    expect(plain(sayWhyNoOrder(worked(strikeOf(kestlemere, WRONG)), us))).toMatch(
      /^An order was found, and the judge refuses it at step 1: .* \[ORD-008\]$/,
    );
    const gone = strikeOf(kestlemere, [{ act: 'remove', kind: 'Z', count: 1, gallery: 'mid' }]);
    expect(plain(sayWhyNoOrder(worked(gone), us))).toMatch(
      /^The judge cannot replay it at step 1: Z; wanted is/,
    );
  });

  it('is that nothing is left to do, or that its line is not borne', () => {
    expect(sayWhyNoOrder(worked(strikeOf(kestlemere, [])), us)).toEqual([
      'Nothing is left to do: it stands as it is wanted.',
    ]);
    const order = { ...strikeOf(kestlemere, RIGHT), bearing: { needs: ['live limit'] } };
    expect(plain(sayWhyNoOrder(worked(order), us))).toMatch(
      /^An order was found, and it is not printed: whether batten, .* not known: live limit\.$/,
    );
  });

  it('is what was asked wrongly, or is not known', () => {
    const refusals = [
      { code: 'WRK-003', path: 'sets.9', found: 'unknown', accepted: 'pipe weight' },
      { code: 'WRK-003', path: 'sets.9', found: 'unknown', accepted: 'Batten cloth: mass' },
      { code: 'WRK-001', path: '', found: 'no record', accepted: 'a state document' },
    ];
    expect(sayWhyNoOrder({ refusals }, uk)).toEqual([
      'Not known: bar weight; Batten cloth: mass.',
      'no record; wanted is a state document.',
    ]);
  });
});
