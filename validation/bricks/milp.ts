/**
 * The brick problems as mixed-integer linear programs, for HiGHS (npm `highs`), a general solver
 * that knows nothing of bricks. Thickness is in millimetres here, to keep the matrix well scaled.
 */
import loadHighs, { type Highs } from 'highs';
import type { MixTask, StackInput } from '#balance';
import { GRAVITY } from '#quantities';

/**
 * The package's types call themselves CommonJS while its import entry is a module, so that the
 * compiler looks for the function one `default` deeper than it is.
 */
const load = loadHighs as unknown as typeof loadHighs.default;

export const openHighs = (): Promise<Highs> => load();

type Column = { cost: number; lower: number; upper: number; integer: boolean };
type Row = { lower: number; upper: number; terms: readonly (readonly [number, number])[] };
type Program = { columns: readonly Column[]; rows: readonly Row[] };

const { NEGATIVE_INFINITY, POSITIVE_INFINITY } = Number;

/** The optimum's columns, with integers rounded, or null when the program has no solution. */
const solve = (highs: Highs, { columns, rows }: Program): number[] | null => {
  const starts = [0];
  for (const { terms } of rows) starts.push((starts.at(-1) ?? 0) + terms.length);
  const data = {
    numCols: columns.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ lower }) => lower),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: columns.map(({ integer }) => (integer ? 1 : 0) as 0 | 1),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices: rows.flatMap(({ terms }) => terms.map(([column]) => column)),
      values: rows.flatMap(({ terms }) => terms.map(([, value]) => value)),
    },
  };
  return highs.withModel(data, (model) => {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-9 });
    const { modelStatus } = model.run();
    if (modelStatus === highs.constants.modelStatus.infeasible) return null;
    if (modelStatus !== highs.constants.modelStatus.optimal) {
      throw new Error(`the solver ended with model status ${modelStatus}`);
    }
    const values = Array.from(model.getSolution().colValue);
    return values.map((value, at) => (columns[at]?.integer ? Math.round(value) : value));
  });
};

type Kinds = MixTask['kinds'];

type Stacking = {
  readonly kinds: Kinds;
  readonly spreader: StackInput['spreader'];
  readonly baseThickness: number;
  readonly stackHeight: number;
};

const MM = 1000;
const PLATES_MAX = 100;

/** mm. Sizes lie on half millimetres, so that "less than a spacing" leaves at least this much. */
const STRICT_MM = 0.25;

/** Bricks of each kind, then plates, then one continuous column for the caller's objective. */
const columnsOf = ({ kinds, spreader }: Stacking): Column[] => [
  ...kinds.map(({ stock }) => ({ cost: 0, lower: 0, upper: stock, integer: true })),
  { cost: 0, lower: 0, upper: spreader === undefined ? 0 : PLATES_MAX, integer: true },
  { cost: 1, lower: 0, upper: POSITIVE_INFINITY, integer: false },
];

/** The rod, and the plates as the floor or the ceiling of thickness over spacing. */
const stackRows = ({ kinds, spreader, baseThickness, stackHeight }: Stacking): Row[] => {
  const thickness = kinds.map(({ thickness: m }, at) => [at, m * MM] as const);
  const plates = kinds.length;
  const room = (stackHeight - baseThickness) * MM;
  if (spreader === undefined) return [{ lower: NEGATIVE_INFINITY, upper: room, terms: thickness }];
  const every = spreader.every * MM;
  const base = baseThickness * MM;
  const [lower, upper] =
    spreader.rule === 'floor' ? [0, every - STRICT_MM] : [-every + STRICT_MM, 0];
  return [
    {
      lower: NEGATIVE_INFINITY,
      upper: room,
      terms: [...thickness, [plates, spreader.thickness * MM]],
    },
    // lower ≤ base + Σ τ·x − every·plates ≤ upper
    { lower: lower - base, upper: upper - base, terms: [...thickness, [plates, -every]] },
  ];
};

const massTerms = ({ kinds, spreader }: Stacking, scale: number): (readonly [number, number])[] => [
  ...kinds.map(({ mass }, at) => [at, mass * scale] as const),
  [kinds.length, (spreader?.mass ?? 0) * scale],
];

const dot = (terms: readonly (readonly [number, number])[], values: readonly number[]): number =>
  terms.reduce((sum, [at, factor]) => sum + factor * (values[at] ?? 0), 0);

/** Slack for a later stage that must keep what an earlier one found; data lie on coarser steps. */
const KEEP_KG = 1e-3;
const KEEP_N = 1e-3;

export type StackOptimum = { readonly error: number; readonly bricks: number };

const stackProgram = (input: StackInput): { program: Program; error: (x: number[]) => number } => {
  const stacking: Stacking = {
    kinds: input.bricks,
    spreader: input.spreader,
    baseThickness: 0,
    stackHeight: input.stackHeight,
  };
  const mass = massTerms(stacking, 1);
  const want = input.target - input.carriage;
  const off = input.bricks.length + 1;
  const rows: Row[] = [
    ...stackRows(stacking),
    { lower: NEGATIVE_INFINITY, upper: want, terms: [...mass, [off, -1]] },
    { lower: want, upper: POSITIVE_INFINITY, terms: [...mass, [off, 1]] },
  ];
  return {
    program: { columns: columnsOf(stacking), rows },
    error: (x) => Math.abs(dot(mass, x) - want),
  };
};

/** First stage alone: least error in kg. What the bench measures. */
export const leastErrorByMilp = (highs: Highs, input: StackInput): number => {
  const { program, error } = stackProgram(input);
  const x = solve(highs, program);
  if (x === null) throw new Error('a stack of no bricks always exists');
  return error(x);
};

/** Least error in kg, then fewest bricks. */
export const stackByMilp = (highs: Highs, input: StackInput): StackOptimum => {
  const error = leastErrorByMilp(highs, input);
  const { program } = stackProgram(input);
  const off = input.bricks.length + 1;
  const columns = program.columns.map((column, at) => ({
    ...column,
    cost: at < input.bricks.length ? 1 : 0,
    upper: at === off ? error + KEEP_KG : column.upper,
  }));
  const x = solve(highs, { ...program, columns });
  if (x === null) throw new Error('the first stage has a solution and the second has none');
  return { error, bricks: x.slice(0, input.bricks.length).reduce((sum, n) => sum + n, 0) };
};

export type MixOptimum = {
  readonly leastWorstN: number;
  readonly kinds: number;
  readonly bricks: number;
  readonly plates: number;
  readonly worstN: number;
};

/** Adds one used-or-not column for each kind: x ≤ stock · used. */
const withKindsUsed = ({ columns, rows }: Program, kinds: Kinds): Program => ({
  columns: [...columns, ...kinds.map(() => ({ cost: 0, lower: 0, upper: 1, integer: true }))],
  rows: [
    ...rows,
    ...kinds.map(({ stock }, at) => ({
      lower: NEGATIVE_INFINITY,
      upper: 0,
      terms: [
        [at, 1],
        [columns.length + at, -stock],
      ] as const,
    })),
  ],
});

const mixProgram = (task: MixTask): { program: Program; worst: (x: number[]) => number } => {
  const stacking: Stacking = { ...task, spreader: task.spreader };
  const shift = massTerms(stacking, GRAVITY / task.purchase);
  const worst = task.kinds.length + 1;
  const rows: Row[] = [
    ...stackRows(stacking),
    ...task.variants.flatMap(({ minN, maxN }): Row[] => [
      { lower: maxN, upper: POSITIVE_INFINITY, terms: [...shift, [worst, 1]] },
      { lower: NEGATIVE_INFINITY, upper: minN, terms: [...shift, [worst, -1]] },
    ]),
    ...(task.holds ?? []).map(
      ({ baselineN, inN, outN }): Row => ({
        lower: baselineN - inN,
        upper: baselineN + outN,
        terms: shift,
      }),
    ),
    {
      lower: NEGATIVE_INFINITY,
      upper: (task.massLimit ?? POSITIVE_INFINITY) - task.baseMass,
      terms: massTerms(stacking, 1),
    },
  ];
  const worstOf = (x: number[]): number => {
    const s = dot(shift, x);
    return Math.max(...task.variants.map(({ minN, maxN }) => Math.max(maxN - s, s - minN)));
  };
  return { program: { columns: columnsOf(stacking), rows }, worst: worstOf };
};

/** The chosen mix by stages: least worst; then in its band bricks, kinds, plates, worst. */
export const mixByMilp = (highs: Highs, task: MixTask): MixOptimum | null => {
  const { program, worst } = mixProgram(task);
  const least = solve(highs, program);
  if (least === null) return null;
  const leastWorstN = worst(least);
  const smallest = Math.min(...task.kinds.filter(({ stock }) => stock > 0).map(({ mass }) => mass));
  const bandN = Number.isFinite(smallest) ? (smallest * GRAVITY) / (2 * task.purchase) : 0;
  const staged = withKindsUsed(program, task.kinds);
  const count = task.kinds.length;
  const used = program.columns.length;
  const measures = [
    (at: number): boolean => at < count,
    (at: number): boolean => at >= used,
    (at: number): boolean => at === count,
    (at: number): boolean => at === count + 1,
  ];
  const rows: Row[] = [
    ...staged.rows,
    { lower: 0, upper: leastWorstN + bandN + KEEP_N, terms: [[count + 1, 1]] },
  ];
  let x: number[] = least;
  for (const counts of measures) {
    const columns = staged.columns.map((column, at) => ({ ...column, cost: counts(at) ? 1 : 0 }));
    const next = solve(highs, { columns, rows });
    if (next === null) throw new Error('an earlier stage has a solution and a later one has none');
    x = next;
    const terms = columns.flatMap(({ cost }, at) => (cost > 0 ? [[at, 1] as const] : []));
    rows.push({ lower: 0, upper: dot(terms, x) + KEEP_N, terms });
  }
  const total = (from: number, to: number): number =>
    x.slice(from, to).reduce((sum, n) => sum + n, 0);
  return {
    leastWorstN,
    kinds: total(used, used + count),
    bricks: total(0, count),
    plates: x[count] ?? 0,
    worstN: worst(x),
  };
};
