/** Everything that is asked of a batten once it is known what its lines carry. */
import { type Bar, bentAt } from './bars.ts';
import { hold, type Model, modelOf } from './model.ts';
import {
  type Bent,
  bentBatten,
  deflectionExtremes,
  momentExtremes,
  sagBetween,
  shearExtremes,
  stationAt,
} from './segments.ts';
import { allowableMoment, utilisationOf } from './strength.ts';
import { changeOf, type Held, type Tie } from './ties.ts';
import type {
  Allowable,
  BattenCase,
  BattenSolution,
  Extremes,
  Place,
  Shared,
  Station,
  Utilisation,
} from './types.ts';
import { whyLoose } from './why-unstable.ts';

const isSlack = (held: Held, index: number): boolean =>
  !held.tight.includes(index) && (held.tensions[index] ?? 0) === 0;

const sharedBy = (the: BattenCase, held: Held): Shared => ({
  tensions: the.lines.map((_, index) => held.tensions[index] ?? 0),
  slack: the.lines.map((_, index) => isSlack(held, index)),
});

/** The same batten with lines that do not stretch; null where that is not one answer. */
const rigidOf = (the: BattenCase): Shared | null => {
  const rigid = { ...the, lines: the.lines.map((line) => ({ ...line, stiffness: null })) };
  const model = modelOf(rigid);
  const held = hold(rigid, model);
  if (held === null || whyLoose(rigid, model, held) !== null) return null;
  return sharedBy(rigid, held);
};

export const solutionOf = (the: BattenCase, held: Held, { bars, ties }: Model): BattenSolution => {
  const [bar] = bars;
  const line = held.lines[0];
  if (bar === undefined || line === undefined) throw new Error('defect: no batten');
  assertBalance(the, held);
  const { origin } = held.scaled;
  return new Solution(the, held, () =>
    bentBatten(underAll(bar, ties, held), the, { ...line, origin }),
  );
};

/**
 * Tensions at once; bending, deflection and sag when they are first read, since a search over many
 * loads or states of a set asks for tensions alone. A class, since an object with accessors of its
 * own keeps a shape of its own, and thousands of these fill the memory.
 */
class Solution implements BattenSolution {
  readonly tensions: readonly number[];
  readonly slack: readonly boolean[];
  readonly supports: readonly number[];
  readonly picks: readonly (readonly number[])[];
  readonly rigid = (): Shared | null => rigidOf(this.#the);
  readonly sensitivity = (): readonly (readonly number[])[] =>
    this.#the.lines.map((_, row) => trimChange(this.#the, this.#held, row));
  readonly at = (x: number): Station => stationAt(this.#bent, x);
  readonly influence = (place: Place): readonly number[] =>
    influenceAt(this.#the, this.#held, place);
  readonly #the: BattenCase;
  readonly #held: Held;
  readonly #bend: () => Bent;
  #keptBent: Bent | null = null;
  #keptBending: Bending | null = null;
  #keptShear: Extremes | null = null;
  #keptDeflection: BattenSolution['deflection'] | null = null;
  #keptSag: { readonly sag: BattenSolution['sag'] } | null = null;

  constructor(the: BattenCase, held: Held, bend: () => Bent) {
    this.#the = the;
    this.#held = held;
    this.#bend = bend;
    const { tensions, slack } = sharedBy(the, held);
    this.tensions = tensions;
    this.slack = slack;
    const { lines, supports = [] } = the;
    this.supports = held.tensions.slice(lines.length, lines.length + supports.length);
    this.picks = picksOf(the, held);
  }

  get #bent(): Bent {
    this.#keptBent ??= this.#bend();
    return this.#keptBent;
  }

  get #bending(): Bending {
    this.#keptBending ??= bendingOf(this.#the, this.#bent);
    return this.#keptBending;
  }

  get moment(): Extremes {
    return this.#bending.moment;
  }

  get stress(): number | null {
    return this.#bending.stress;
  }

  get allowable(): Allowable | null {
    return this.#bending.allowable;
  }

  get utilisation(): Utilisation | null {
    return this.#bending.utilisation;
  }

  get shear(): Extremes {
    this.#keptShear ??= shearExtremes(this.#bent);
    return this.#keptShear;
  }

  get deflection(): BattenSolution['deflection'] {
    this.#keptDeflection ??= {
      ...deflectionExtremes(this.#bent),
      atLines: this.#the.lines.map(({ x }) => stationAt(this.#bent, x).deflection),
    };
    return this.#keptDeflection;
  }

  get sag(): BattenSolution['sag'] {
    this.#keptSag ??= {
      sag: largestSag(this.#the, this.slack, (from, to) => sagBetween(this.#bent, from, to)),
    };
    return this.#keptSag.sag;
  }
}

type Bending = Pick<BattenSolution, 'moment' | 'stress' | 'allowable' | 'utilisation'>;

const bendingOf = ({ pipe, splices = [] }: BattenCase, bent: Bent): Bending => {
  const moment = momentExtremes(bent);
  const largestNm = Math.max(moment.max.value, -moment.min.value);
  const allowable = allowableMoment(pipe);
  const atSplices = splices.map((splice) => ({
    ...splice,
    moment: stationAt(bent, splice.x).moment,
  }));
  const { sectionModulus } = pipe;
  return {
    moment,
    stress: sectionModulus === undefined ? null : largestNm / sectionModulus,
    allowable,
    utilisation: utilisationOf(allowable, [moment.max, moment.min], atSplices),
  };
};

/** The batten's own loads, its lines and supports as forces upward, and picks downward. */
const underAll = (bar: Bar, ties: readonly Tie[], held: Held): Bar => {
  const pointXs = [...bar.pointXs];
  const pointForces = [...bar.pointForces];
  for (const [index, { lifts, hangsOn }] of ties.entries()) {
    const tensionN = held.tensions[index] ?? 0;
    // A tie that only just touches carries nothing, and still is a place to measure from.
    if (tensionN === 0 && !held.tight.includes(index)) continue;
    if (lifts.bar === 0) {
      pointXs.push(lifts.x);
      pointForces.push(-tensionN);
    } else if (hangsOn !== null) {
      pointXs.push(hangsOn.x);
      pointForces.push(tensionN);
    }
  }
  return { ...bar, pointXs, pointForces };
};

const picksOf = (the: BattenCase, held: Held): readonly (readonly number[])[] => {
  let next = the.lines.length + (the.supports ?? []).length;
  return (the.pieces ?? []).map(({ picks }) =>
    picks.map(() => {
      next += 1;
      return held.tensions[next - 1] ?? 0;
    }),
  );
};

/** What nobody may see: forces that do not add up to the loads, or numbers that are none. */
const assertBalance = (the: BattenCase, { tensions, scaled }: Held): void => {
  const lifting = the.lines.length + (the.supports ?? []).length;
  let [heldN, largestN] = [0, scaled.force];
  for (let index = 0; index < tensions.length; index++) {
    const each = tensions[index] ?? Number.NaN;
    if (index < lifting) heldN += each;
    largestN = Math.max(largestN, Math.abs(each));
  }
  // A hundred roundings of numbers of the size of the largest force, and no more.
  if (!(Math.abs(heldN - scaled.loadN) <= 1e-8 * largestN)) {
    throw new Error(`defect: lines carry ${heldN} N of ${scaled.loadN} N`);
  }
};

const largestSag = (
  { lines }: BattenCase,
  slack: readonly boolean[],
  sag: (from: number, to: number) => { readonly x: number; readonly value: number },
): BattenSolution['sag'] => {
  const xs = lines
    .filter((_, index) => slack[index] === false)
    .map(({ x }) => x)
    .toSorted((one, other) => one - other);
  let worst: BattenSolution['sag'] = null;
  for (let index = 0; index + 1 < xs.length; index++) {
    const [from, to] = [xs[index] ?? 0, xs[index + 1] ?? 0];
    const each = { ...sag(from, to), span: to - from };
    if (worst === null || each.value / each.span > worst.value / worst.span) worst = each;
  }
  return worst;
};

const trimChange = (the: BattenCase, held: Held, row: number): readonly number[] => {
  const gaps = (tie: number): number => (tie === row ? 1 : 0);
  return changeOf(held, { gaps, force: 0, moment: 0 }, the.lines.length);
};

/** One newton at a place, or spread over a stretch, by what it bends and where it pulls. */
const influenceAt = (the: BattenCase, held: Held, place: Place): readonly number[] => {
  const { bars, ties, origin } = held.scaled;
  const flexibility = bars[0]?.flexibility ?? 0;
  const isPoint = typeof place === 'number' || place.from === place.to;
  const { from, to } = typeof place === 'number' ? { from: place, to: place } : place;
  const unit: Bar = {
    pointXs: isPoint ? [from] : [],
    pointForces: isPoint ? [1] : [],
    patches: isPoint ? [] : [{ from, to, perM: 1 / (to - from) }],
    flexibility,
  };
  const gaps = (tie: number): number => {
    const { lifts, hangsOn } = ties[tie] ?? {};
    const isLifting = lifts?.bar === 0;
    const at = isLifting ? lifts.x : (hangsOn?.x ?? 0);
    return (isLifting ? flexibility : -flexibility) * bentAt(unit, at);
  };
  const change = { gaps, force: 1, moment: (from + to) / 2 - origin };
  return changeOf(held, change, the.lines.length);
};
