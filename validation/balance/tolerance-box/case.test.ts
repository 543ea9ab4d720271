import { expect, it } from 'vitest';
import type { BalanceItem, BalanceSet } from '#balance';
import { imbalanceAt, imbalanceUncertainty } from '#balance';
import { GRAVITY } from '#quantities';
import { openHighs } from '../../bricks/milp.ts';
import { type Draw, drawn, type Make } from '../../draw.ts';
import { record } from '../../record.ts';
import { anySet } from '../random-sets.ts';

const SEED = 20_273;
const TOLERANCE = 1e-5;

/** One unknown mass: how much of it pulls on the batten, and between which masses it lies. */
type Unknown = { readonly share: number; readonly massKg: number; readonly doubtKg: number };

const sizesOf = ({ toEnds }: Draw) => ({
  mass: toEnds(20, 400),
  drop: toEnds(2, 8),
  pick: toEnds(0, 1),
  uncertainty: toEnds(0, 20),
});
const tipping: Make<BalanceItem> = (draw) => ({
  kind: 'tipping',
  ...sizesOf(draw),
  centre: draw.toEnds(0.1, 0.9),
});
const standing: Make<BalanceItem> = (draw) => ({ kind: 'standing', ...sizesOf(draw) });
const cloth: Make<BalanceItem> = ({ toEnds }) => ({
  kind: 'cloth',
  mass: toEnds(20, 200),
  drop: toEnds(2, 8),
  tie: toEnds(0, 1),
  hem: toEnds(1, 30),
  uncertainty: toEnds(0, 10),
  hemUncertainty: toEnds(0, 1),
});
const loom: Make<BalanceItem> = ({ toEnds }) => ({
  kind: 'loom',
  massPerLength: toEnds(1, 5),
  length: toEnds(25, 40),
  fixedAt: toEnds(8, 12),
  uncertainty: toEnds(0, 10),
});
const item: Make<BalanceItem> = (draw) =>
  draw.oneOf<Make<BalanceItem>>([tipping, standing, cloth, loom])(draw);

/** What hangs, by the geometry of the piece alone. */
const unknownsOf = (one: BalanceItem, heightM: number): readonly Unknown[] => {
  const doubtKg = one.uncertainty ?? 0;
  switch (one.kind) {
    case 'tipping': {
      const share = heightM < one.pick ? 0 : heightM < one.pick + one.drop ? one.centre : 1;
      return [{ share, massKg: one.mass, doubtKg }];
    }
    case 'standing':
      return [{ share: heightM < one.pick + one.drop ? 0 : 1, massKg: one.mass, doubtKg }];
    case 'cloth': {
      const share = Math.min(1, Math.max(0, (heightM - one.tie) / one.drop));
      const hem = { massKg: one.hem, doubtKg: one.hemUncertainty ?? 0 };
      return [
        { share, massKg: one.mass, doubtKg },
        { share: share === 1 ? 1 : 0, ...hem },
      ];
    }
    case 'loom': {
      const lowM = Math.max(0, (one.fixedAt + heightM - one.length) / 2);
      const massKg = one.massPerLength * one.length;
      return [{ share: (heightM - lowM) / one.length, massKg, doubtKg }];
    }
    default:
      throw new Error(`no piece of kind ${one.kind} was drawn`);
  }
};

const doubtful = (draw: Draw) => {
  const bare = anySet(draw);
  const set = {
    ...bare,
    items: draw.several(1, 4, item),
    battenUncertainty: draw.toEnds(0, 4),
    carriageUncertainty: draw.toEnds(0, 3),
    brickUncertainty: draw.toEnds(0, 10),
  } satisfies BalanceSet;
  return { set, heightM: draw.toEnds(bare.lowStop, bare.highStop) };
};

const problemOf = (direction: 'Maximize' | 'Minimize', unknowns: readonly Unknown[]): string => {
  const sum = unknowns
    .map(({ share }, index) => `${share < 0 ? '-' : '+'} ${Math.abs(share)} m${index}`)
    .join(' ');
  const bounds = unknowns.map(
    ({ massKg, doubtKg }, index) => `${massKg - doubtKg} <= m${index} <= ${massKg + doubtKg}`,
  );
  return [direction, ` u: ${sum}`, 'Subject To', ' c: m0 >= 0', 'Bounds', ...bounds, 'End'].join(
    '\n',
  );
};

it(`VAL-BAL-13 a solver finds no worse corner and no better bound (seed ${SEED})`, async () => {
  const highs = await openHighs();
  const solve = (direction: 'Maximize' | 'Minimize', unknowns: readonly Unknown[]): number => {
    const result = highs.solve(problemOf(direction, unknowns), { output_flag: false });
    expect(result.Status).toBe('Optimal');
    return result.ObjectiveValue;
  };
  const errors = drawn(doubtful, { seed: SEED, count: 120 }).flatMap(({ set, heightM }) => {
    const arbor = { share: -1 / set.purchase };
    const unknowns: readonly Unknown[] = [
      { share: 1, massKg: set.batten, doubtKg: set.battenUncertainty },
      { ...arbor, massKg: set.carriage, doubtKg: set.carriageUncertainty },
      { ...arbor, massKg: set.bricks, doubtKg: set.brickUncertainty },
      ...set.items.flatMap((one) => unknownsOf(one, heightM)),
    ];
    const bare = { ...set, batten: 0, carriage: 0, bricks: 0, items: [] };
    const linesKg = imbalanceAt(bare, heightM) / GRAVITY;
    const nominalKg = imbalanceAt(set, heightM) / GRAVITY;
    const doubtKg = imbalanceUncertainty(set, heightM) / GRAVITY;
    return [
      Math.abs(nominalKg + doubtKg - linesKg - solve('Maximize', unknowns)),
      Math.abs(nominalKg - doubtKg - linesKg - solve('Minimize', unknowns)),
    ];
  });
  const worst = Math.max(...errors);
  record({ id: 'VAL-BAL-13', worst, tolerance: TOLERANCE, unit: 'kg', cases: errors.length });
  expect(worst).toBeLessThanOrEqual(TOLERANCE);
});
