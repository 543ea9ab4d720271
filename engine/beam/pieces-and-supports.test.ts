import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { solved, twoSpans } from './example-battens.ts';
import { solveBatten } from './solve-batten.ts';
import type { BattenCase, HungPiece, Support } from './types.ts';

/** 100 N/m along the batten. */
const EVEN = { from: 0, to: 6, mass: 600 / GRAVITY };
const EI = 1.289867e-7 * 2e11;

/** Lines at both ends alone. */
const oneSpan = (changes: Partial<BattenCase>): BattenCase => ({
  ...twoSpans([EVEN], changes),
  lines: [0, 6].map((x) => ({ x, stiffness: null })),
});

const onStand = (height: number, stiffness: number | null = null): BattenCase =>
  oneSpan({ supports: [{ x: 3, stiffness, height }] satisfies readonly Support[] });

describe('a stand under the middle of a batten', () => {
  it('takes what a line there would take: 5/4 of the load on one span', () => {
    const { supports, tensions } = solved(onStand(0));
    expect(supports[0]).toBeCloseTo(375, 7);
    expect(tensions[0]).toBeCloseTo(112.5, 7);
  });

  it('takes less where it is low, by 6·E·I·d/L³, and nothing where it is not reached', () => {
    // Two-span beam with its middle support lower by d (check-values 4.7, computed).
    expect(solved(onStand(-0.01)).supports[0]).toBeCloseTo(375 - (6 * EI * 0.01) / 27, 6);
    const slackAt = (5 * 100 * 81) / (24 * EI);
    expect(solved(onStand(-slackAt * 1.001)).supports).toEqual([0]);
    expect(solved(onStand(-slackAt * 0.999)).supports[0]).toBeGreaterThan(0);
  });

  it('that gives shares with the pipe as two springs do', () => {
    const k = 5e4;
    const wanted = (5 * 100 * 81) / (24 * EI) / (27 / (6 * EI) + 1 / k);
    expect(solved(onStand(0, k)).supports[0]).toBeCloseTo(wanted, 6);
  });

  it('can lift the batten off its lines until it tips, and then has no numbers', () => {
    const high = { ...onStand(0.5), loads: [EVEN, { x: 5, mass: 1 }] };
    const { slack, supports } = solved(high);
    expect(slack).toEqual([true, false]);
    expect(supports[0]).toBeGreaterThan(500);
  });

  it('in the place of a rigid line is one too many to say which carries', () => {
    const both = twoSpans([EVEN], { supports: [{ x: 3, stiffness: null, height: 0 }] });
    expect(solveBatten(both)).toMatchObject({
      ok: true,
      value: { unstable: { code: 'notDetermined' } },
    });
  });
});

const onPiece = (piece: HungPiece, changes: Partial<BattenCase> = {}): BattenCase => ({
  ...twoSpans([], { pieces: [piece], ...changes }),
});
const rigidPipe = { massPerLength: 0, secondMoment: 1, elasticModulus: 1e13 };
const picks = (xs: readonly number[], stiffness: number | null = 1e5) =>
  xs.map((x) => ({ x, stiffness }));

describe('a piece below the batten', () => {
  it('on two picks is two point loads by the lever, stiff or not, and whatever their trim', () => {
    const load = { x: 2, mass: 90 };
    const points = solved(
      twoSpans([
        { x: 1, mass: 60 },
        { x: 4, mass: 30 },
      ]),
    );
    for (const bendingStiffness of [null, 500]) {
      const hung = solved(
        onPiece({
          bendingStiffness,
          loads: [load],
          picks: [
            { x: 1, stiffness: 1e4, trim: 0.01 },
            { x: 4, stiffness: null },
          ],
        }),
      );
      expect(hung.picks[0]?.[0]).toBeCloseTo(60 * GRAVITY, 8);
      expect(hung.picks[0]?.[1]).toBeCloseTo(30 * GRAVITY, 8);
      for (const [i, each] of points.tensions.entries()) {
        expect(hung.tensions[i]).toBeCloseTo(each, 8);
      }
      expect(hung.moment.max.value).toBeCloseTo(points.moment.max.value, 8);
      expect(hung.at(2.2).deflection).toBeCloseTo(points.at(2.2).deflection, 12);
    }
  });

  it('that is stiff shares by the lever of three equal springs', () => {
    // Rigid bar on springs at −1, 0, 1: T = W/3 + W·e·x/2, from memory, any text on statics.
    const piece = {
      bendingStiffness: null,
      loads: [{ x: 3.2, mass: 90 }],
      picks: picks([2, 3, 4]),
    };
    const { picks: shared } = solved(onPiece(piece, { pipe: rigidPipe }));
    const weight = 90 * GRAVITY;
    for (const [i, x] of [-1, 0, 1].entries()) {
      expect(shared[0]?.[i]).toBeCloseTo(weight / 3 + (weight * 0.2 * x) / 2, 3);
    }
  });

  it('that is stiff hangs on its short pick: W/3 and two thirds of k·trim', () => {
    const shortest = picks([2, 3, 4]).map((pick) => ({ ...pick, trim: pick.x === 3 ? 0.002 : 0 }));
    const piece = { bendingStiffness: null, loads: [{ x: 3, mass: 90 }], picks: shortest };
    const { picks: shared } = solved(onPiece(piece, { pipe: rigidPipe }));
    expect(shared[0]?.[1]).toBeCloseTo(30 * GRAVITY + (2 / 3) * 1e5 * 0.002, 3);
    const shorter = shortest.map((pick) => ({ ...pick, trim: 5 * pick.trim }));
    expect(solveBatten(onPiece({ ...piece, picks: shorter }, { pipe: rigidPipe }))).toMatchObject({
      value: { unstable: { code: 'pieceTips' } },
    });
  });

  it('that bends, on rigid picks under a stiff batten, is a beam of two spans', () => {
    // 3/8, 5/4, 3/8 of the load on one span: check-values 4.1.
    const piece = {
      bendingStiffness: 1e4,
      loads: [{ from: 2, to: 4, mass: 80 }],
      picks: picks([2, 3, 4], null),
    };
    const { picks: shared } = solved(onPiece(piece, { pipe: rigidPipe }));
    const span = 40 * GRAVITY;
    for (const [i, share] of [3 / 8, 5 / 4, 3 / 8].entries()) {
      expect(shared[0]?.[i]).toBeCloseTo(share * span, 3);
    }
  });

  it('as a second pipe shares bending with the batten: two alike bend half as much', () => {
    // Both pipes tied at a load between two lines: each takes half, and so bends half as much.
    const load = { x: 3, mass: 50 };
    const alone = solved({ ...oneSpan({}), loads: [load] });
    const tied = solved({
      ...oneSpan({}),
      loads: [],
      pieces: [{ bendingStiffness: EI, loads: [load], picks: picks([0, 3, 6], null) }],
    });
    expect(tied.at(3).deflection).toBeCloseTo(alone.at(3).deflection / 2, 9);
    expect(tied.picks[0]?.[1]).toBeCloseTo(25 * GRAVITY, 6);
  });

  it('whose weight is beyond its picks tips, and has no numbers', () => {
    const piece = { bendingStiffness: null, loads: [{ x: 5, mass: 9 }], picks: picks([2, 3, 4]) };
    expect(solveBatten(onPiece(piece))).toMatchObject({
      value: { unstable: { code: 'pieceTips' } },
    });
    expect(solveBatten(onPiece({ ...piece, loads: [] }))).toMatchObject({
      value: { unstable: { code: 'noLoad' } },
    });
  });
});
