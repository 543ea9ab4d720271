/** The lift test at its edges: which pulls count, what they add up to, and what they prove. */
import { describe, expect, it } from 'vitest';
import type { Newtons } from '#quantities';
import type { Step } from '#state';
import { add, DROPS, ease, RUN, rulesOf, standingAt, type Trial, tried } from './example-order.ts';

const closed = [RUN, ...DROPS];
/** A header of 1000 N, give or take 250; friction is 50 N. */
const header = (weightN = 1000) => ({ pieces: { header: { weightN, doubtN: 250 } } });
const on = (heightM: number, bricks: number, more: Partial<Trial> = {}): Trial => ({
  plant: header(),
  start: standingAt(heightM, bricks, { items: { header: 'flying' }, closed }),
  options: { doubt: 'worst' },
  ...more,
});
const LEFT = true;
const STAYED = false;

describe('a pull that can be read', () => {
  it('[ORD-110] is a number of newtons, and an end to it', () => {
    const found = (pull: number) =>
      tried({ steps: [{ act: 'ease', pull: pull as Newtons, lifted: false }] }).refused?.refusal;
    expect(found(Number.NaN)).toMatchObject({ code: 'ORD-110', found: 'NaN' });
    expect(found(Number.POSITIVE_INFINITY)).toMatchObject({ code: 'ORD-110', found: 'Infinity' });
  });

  it('is to be done twice before the set is flown, where anything is in doubt', () => {
    const proofs = (trial: Trial) =>
      tried({ ...trial, steps: [ease(10, STAYED)] }).proofsDue.map(({ proof }) => proof);
    expect(proofs(on(1, 7))).toEqual([
      'two steady pulls with a gauge, out and in, before it is flown',
    ]);
    expect(proofs(on(1, 7, { options: { doubt: 'none' } }))).toEqual([]);
    expect(proofs(on(3, 9))).toEqual([]);
  });

  it('shows nothing where no mass is in doubt', () => {
    const { broken, assumed } = tried(
      on(1, 7, { options: { doubt: 'none' }, steps: [ease(641, STAYED), ease(1, LEFT)] }),
    );
    expect(broken).toBeNull();
    expect(assumed).toEqual([]);
  });

  it('[ORD-026] is taken to the rating of the stop, and to where nothing is left on it', () => {
    // 40 + 1000 + 250 N on the low stop.
    const rated = { ...header(), more: { lowStop: { heightM: 1, ratedN: 1290 } } };
    expect(rulesOf(on(1, 0, { plant: rated, steps: [ease(10, STAYED)] }))).toEqual([]);
    // 40 + 1010 − 250 − 800 = 0 N at its lightest.
    expect(rulesOf(on(1, 8, { plant: header(1010), steps: [ease(10, LEFT)] }))).toEqual([]);
    expect(rulesOf(on(1, 8, { plant: header(1009), steps: [ease(10, LEFT)] }))).toEqual([
      'ORD-026',
    ]);
  });
});

describe('pulls one after the other', () => {
  const pulled = (heightM: number, bricks: number, steps: readonly Step[]) =>
    rulesOf(on(heightM, bricks, { steps }));

  it('[ORD-027] are held against each other on the low stop, to the newton', () => {
    // 340 N as listed. Stayed under 450: 400 N at least. Left under 400: 400 N at most.
    expect(pulled(1, 7, [ease(450, STAYED), ease(400, LEFT)])).toEqual([]);
    expect(pulled(1, 7, [ease(450, STAYED), ease(399, LEFT)])).toEqual(['ORD-027']);
    expect(pulled(1, 7, [ease(400, LEFT), ease(450, STAYED)])).toEqual([]);
    expect(pulled(1, 7, [ease(400, LEFT), ease(451, STAYED)])).toEqual(['ORD-027']);
  });

  it('[ORD-027] are held against each other on the high stop, to the newton', () => {
    // −340 N as listed. Stayed under 450: 400 N at least. Left under 400: 400 N at most.
    expect(pulled(19, 12, [ease(450, STAYED), ease(400, LEFT)])).toEqual([]);
    expect(pulled(19, 12, [ease(450, STAYED), ease(399, LEFT)])).toEqual(['ORD-027']);
    expect(pulled(19, 12, [ease(400, LEFT), ease(450, STAYED)])).toEqual([]);
    expect(pulled(19, 12, [ease(400, LEFT), ease(451, STAYED)])).toEqual(['ORD-027']);
  });

  it('[ORD-027] keep what the sharpest showed, whatever a duller one shows after it', () => {
    for (const [heightM, bricks] of [
      [1, 7],
      [19, 12],
    ] as const) {
      const of = (...steps: readonly Step[]) => pulled(heightM, bricks, steps);
      expect(of(ease(450, STAYED), ease(10, STAYED), ease(399, LEFT))).toEqual(['ORD-027']);
      expect(of(ease(400, LEFT), ease(580, LEFT), ease(451, STAYED))).toEqual(['ORD-027']);
    }
  });

  it('[ORD-027] leave out the one that cannot be so', () => {
    const steps = [ease(450, STAYED), ease(399, LEFT), ease(400, LEFT)];
    expect(pulled(1, 7, steps)).toEqual(['ORD-027']);
    expect(pulled(19, 12, steps)).toEqual(['ORD-027']);
  });

  it('[ORD-025] still count for the next brick after a duller one', () => {
    // Stayed under 150: 100 N at least, which is a brick.
    expect(pulled(1, 7, [ease(150, STAYED), ease(10, STAYED), add(1)])).toEqual([]);
    expect(pulled(1, 7, [ease(149, STAYED), ease(10, STAYED), add(1)])).toEqual(['ORD-025']);
  });
});

describe('friction of what hangs', () => {
  it('[ORD-025] is not shared with an item that lies elsewhere', () => {
    // A crate of 1000 N, give or take 300, rubs with a tenth: 180 N at its heaviest.
    const plant = {
      pieces: { crate: { weightN: 1000, doubtN: 300 }, spare: { weightN: 1000 } },
      more: { frictionN: (items: object) => ('crate' in items ? 150 : 50) },
    };
    const items = { crate: 'flying', spare: 'away' } as const;
    const drilled = (pullN: number) =>
      rulesOf({
        plant,
        start: standingAt(1, 7, { items, closed }),
        steps: [ease(pullN, STAYED), add(1)],
        options: { doubt: 'worst' },
      });
    expect(drilled(280)).toEqual([]);
    expect(drilled(279)).toEqual(['ORD-025']);
  });
});
