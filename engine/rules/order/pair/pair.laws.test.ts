/** Laws of the judge of a pair over random steps: it never throws, and is no kinder than of one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { PairStep, Step } from '#state';
import { add, attach, fly, RUN, release, remove, standingAt } from '../example-order.ts';
import { HEADER, setPhysics, triedPair } from './example-pair.ts';
import type { PairVerdict } from './pair-verdict.ts';

const SEED = 20_261_128;
const RUNS = { seed: SEED, numRuns: 400 };

const heights = fc.constantFrom(1, 2, 4, 5, 6, 9, 15);
const sets = fc.constantFrom('7', '8');
const zones = fc.constantFrom(
  RUN,
  { zone: 'drop', gallery: 'upper' } as const,
  { zone: 'drop', gallery: 'mid' } as const,
);
const counts = fc.integer({ min: 1, max: 3 });
const galleries = fc.constantFrom('upper', 'mid');
const own: fc.Arbitrary<Step> = fc.oneof(
  fc.constantFrom('header', 'lamp').map(attach),
  fc.constantFrom('header', 'lamp').map(release),
  fc.tuple(counts, galleries).map(([count, gallery]) => add(count, 'B', gallery)),
  fc.tuple(counts, galleries).map(([count, gallery]) => remove(count, 'B', gallery)),
  heights.map(fly),
  fc.tuple(fc.constantFrom('close', 'reopen'), zones).map(([act, zone]): Step => ({ act, zone })),
);
const steps: fc.Arbitrary<PairStep> = fc.oneof(
  fc.tuple(sets, own).map(([set, step]) => ({ set, step })),
  fc.tuple(heights, heights).map(
    ([to7, to8]): PairStep => ({
      together: [
        { set: '7', to: metres(to7) },
        { set: '8', to: metres(to8) },
      ],
    }),
  ),
);
const starts = fc
  .record({ m7: heights, m8: heights, isOn: fc.boolean(), isClosed: fc.boolean() })
  .map(({ m7, m8, isOn, isClosed }) => {
    const more = { items: isOn ? HEADER : {}, closed: isClosed ? [RUN] : [] };
    return [standingAt(m7, isOn ? 3 : 0, more), standingAt(m8, isOn ? 2 : 0, more)] as const;
  });
const trials = fc.record({ starts, steps: fc.array(steps, { maxLength: 8 }) });
type Trial = typeof trials extends fc.Arbitrary<infer T> ? T : never;

const WIDE = { leastM: -30, mostM: 30 };
const CHECKED = { doubt: 'worst', faults: 'check' } as const;

const rulesOf = ({ broken, alsoBroken }: PairVerdict): readonly string[] =>
  [...(broken === null ? [] : [broken]), ...alsoBroken].map(({ rule }) => rule);

const holds = (title: string, law: (trial: Trial) => void): void => {
  it(`${title} (seed ${SEED})`, () => {
    fc.assert(fc.property(trials, law), RUNS);
  });
};

describe('laws of the judge of a pair', () => {
  holds('breaks in order, with every step named in the order of the pair', (trial) => {
    const verdict = triedPair({ ...trial, options: CHECKED });
    const { broken, alsoBroken, refused } = verdict;
    const at = [...(broken === null ? [] : [broken]), ...alsoBroken].map(({ step }) => step);
    expect(at).toEqual(at.toSorted((one, other) => one - other));
    const last = refused?.step ?? trial.steps.length;
    for (const step of at) expect(step).toBeLessThanOrEqual(last);
  });

  holds('has all that the judge of one set finds in either', (trial) => {
    const verdict = triedPair({ ...trial, options: CHECKED });
    const alone = [verdict.sets.first, verdict.sets.second].flatMap(({ broken, alsoBroken }) => [
      ...(broken === null ? [] : [broken.rule]),
      ...alsoBroken.map(({ rule }) => rule),
    ]);
    for (const rule of alone) expect(rulesOf(verdict)).toContain(rule);
  });

  holds('is never kinder for a narrower band', (trial) => {
    const wide = rulesOf(triedPair({ ...trial, pair: pairWith(trial, WIDE) }));
    const narrow = rulesOf(triedPair(trial));
    for (const rule of wide) expect(narrow).toContain(rule);
    expect(wide.some((rule) => rule === 'ORD-039' || rule === 'ORD-040')).toBe(false);
  });

  holds('passes no order in which a pair that shares a piece leaves the band', (trial) => {
    const { broken, refused, sets: of } = triedPair(trial);
    if (broken !== null || refused !== null) return;
    const [one, other] = [of.first.states.at(-1), of.second.states.at(-1)].map(
      (state) => state?.standing,
    );
    const areOn = one?.items['header'] === 'flying' && other?.items['header'] === 'flying';
    if (!areOn || one === undefined || other === undefined) return;
    const apartM = other.height - one.height;
    expect(apartM).toBeGreaterThanOrEqual(-1);
    expect(apartM).toBeLessThanOrEqual(3);
  });
});

const pairWith = ({ starts: [one, other] }: Trial, band: typeof WIDE) => ({
  first: { physics: setPhysics('7', 300), start: one },
  second: { physics: setPhysics('8', 200), start: other },
  band,
});
