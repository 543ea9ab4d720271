/**
 * A batten on lines that only pull as a quadratic program, for a general solver (npm quadprog, the
 * dual method of Goldfarb and Idnani). Nothing is solved beforehand: the unknowns are the bending
 * moments at every line, load and end of a patch; that forces balance at each of these places is a
 * constraint; and of all moment diagrams in balance the solver looks for the one of least energy
 *
 *     ∫ M² / (2·E·I) dx  +  Σ T² / (2·k)  −  Σ T·trim          where every T ≥ 0
 *
 * A line's pull is the jump of the shear at its place, less the load there. Castigliano's theorem
 * of least work, from memory, any text on the theory of structures.
 */
import { solveQP } from 'quadprog';
import type { BattenCase, Load } from '#beam';

const GRAVITY = 9.80665;

/** Lengths in `lengthM`, forces in `forceN`; E·I is then 1. */
type Frame = {
  readonly xs: readonly number[];
  /** Between neighbouring places. */
  readonly spreads: readonly number[];
  readonly points: readonly number[];
  readonly forceN: number;
  readonly lengthM: number;
  readonly bendM: number;
};

const frameOf = ({ pipe, left, right, lines, loads }: BattenCase): Frame => {
  const own = { from: left, to: right, mass: pipe.massPerLength * (right - left) };
  const all: readonly Load[] = [own, ...loads].filter(({ mass }) => mass > 0);
  const forceN = all.reduce((sum, { mass }) => sum + mass * GRAVITY, 0);
  const lengthM = right - left;
  const places = [
    left,
    right,
    ...lines.map(({ x }) => x),
    ...all.flatMap((load) => ('x' in load ? [load.x] : [load.from, load.to])),
  ];
  const metres = [...new Set(places)].toSorted((one, other) => one - other);
  const share = (load: Load): number => (load.mass * GRAVITY) / forceN;
  const points = metres.map((at) =>
    all.reduce((sum, load) => ('x' in load && load.x === at ? sum + share(load) : sum), 0),
  );
  const spreads = metres.slice(1).map((to, index) => {
    const from = metres[index] ?? to;
    return all.reduce((sum, load) => {
      if ('x' in load || load.from > from || load.to < to) return sum;
      return sum + (share(load) * lengthM) / (load.to - load.from);
    }, 0);
  });
  const bendM = (forceN * lengthM ** 3) / (pipe.elasticModulus * pipe.secondMoment);
  return { xs: metres.map((x) => x / lengthM), spreads, points, forceN, lengthM, bendM };
};

/** Pull at each place as a linear form of the moments: `at[j]` by node, and what loads need. */
type Pull = { readonly at: ReadonlyMap<number, number>; readonly constant: number };

const pullsOf = ({ xs, spreads, points }: Frame): readonly Pull[] =>
  xs.map((x, j) => {
    const at = new Map<number, number>();
    let constant = points[j] ?? 0;
    const add = (node: number, value: number): void => {
      // The moment is nothing at both ends, so those are no unknowns.
      if (node > 0 && node < xs.length - 1) at.set(node, (at.get(node) ?? 0) + value);
    };
    const [before, after] = [xs[j - 1], xs[j + 1]];
    if (after !== undefined) {
      const h = after - x;
      add(j + 1, 1 / h);
      add(j, -1 / h);
      constant += ((spreads[j] ?? 0) * h) / 2;
    }
    if (before !== undefined) {
      const h = x - before;
      add(j, -1 / h);
      add(j - 1, 1 / h);
      constant += ((spreads[j - 1] ?? 0) * h) / 2;
    }
    return { at, constant };
  });

type Program = { readonly D: number[][]; readonly d: number[] };

const bendingOf = ({ xs, spreads }: Frame): Program => {
  const size = xs.length - 2;
  const D = Array.from({ length: size + 1 }, () => Array<number>(size + 1).fill(0));
  const d = Array<number>(size + 1).fill(0);
  const add = (row: number, column: number, value: number): void => {
    const line = D[row];
    if (row < 1 || column < 1 || row > size || column > size || line === undefined) return;
    line[column] = (line[column] ?? 0) + value;
  };
  for (let j = 0; j + 1 < xs.length; j++) {
    const h = (xs[j + 1] ?? 0) - (xs[j] ?? 0);
    add(j, j, h / 3);
    add(j + 1, j + 1, h / 3);
    add(j, j + 1, h / 6);
    add(j + 1, j, h / 6);
    const sagging = ((spreads[j] ?? 0) * h ** 3) / 24;
    for (const node of [j, j + 1])
      if (node >= 1 && node <= size) d[node] = (d[node] ?? 0) - sagging;
  }
  return { D, d };
};

/** The whole program, ready for the solver, which uses it up. */
export const programOf = (the: BattenCase) => {
  const frame = frameOf(the);
  const { xs, forceN, lengthM, bendM } = frame;
  const pulls = pullsOf(frame);
  const { D, d } = bendingOf(frame);
  const nodes = the.lines.map(({ x }) => xs.indexOf(x / lengthM));
  for (const [index, { stiffness, trim = 0 }] of the.lines.entries()) {
    const pull = pulls[nodes[index] ?? -1];
    if (pull === undefined) throw new Error('a line is at none of the places');
    const softness = stiffness === null ? 0 : forceN / stiffness / bendM;
    for (const [row, a] of pull.at) {
      d[row] = (d[row] ?? 0) + a * (trim / bendM - softness * pull.constant);
      const line = D[row] ?? [];
      for (const [column, b] of pull.at) line[column] = (line[column] ?? 0) + softness * a * b;
    }
  }
  const bare = xs.map((_, node) => node).filter((node) => !nodes.includes(node));
  const held = [...bare, ...nodes];
  const A = D.map((_, row) =>
    row === 0 ? [] : [0, ...held.map((node) => pulls[node]?.at.get(row) ?? 0)],
  );
  const b = [0, ...held.map((node) => -(pulls[node]?.constant ?? 0))];
  return { D, d, A, b, equalities: bare.length, nodes, pulls, forceN };
};

/** Tensions by the solver, N, in the order of the lines. */
export const tensionsByQp = (the: BattenCase): readonly number[] => {
  const { D, d, A, b, equalities, nodes, pulls, forceN } = programOf(the);
  const { solution, message } = solveQP(D, d, A, b, equalities);
  if (message !== '') throw new Error(`the solver says: ${message}`);
  return nodes.map((node) => {
    const { at, constant } = pulls[node] ?? { at: new Map<number, number>(), constant: 0 };
    let pull = constant;
    for (const [row, a] of at) pull += a * (solution[row] ?? Number.NaN);
    return pull * forceN;
  });
};
