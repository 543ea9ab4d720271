/** What each line of a set carries in one state, and what is left of its strength and its block. */
import type { BattenSolution } from '#beam';
import { blocked, type Reckoned, reckoned } from '#findings';
import type { LineSet } from '#house';
import {
  bendingEfficiency,
  type Efficiency,
  lineFactor,
  loftBlockForce,
  sheaveRatio,
  tensionsAtRest,
  terminationEfficiency,
} from '#lines';
import { GRAVITY, metres, newtons, newtonsPerMetre } from '#quantities';
import type { BattenModel } from './batten-model.ts';
import { gather } from './plant.ts';
import type { LineState, LineStrength, PlacedLoad } from './structure-types.ts';

/** What is the same for every line and state of a set. */
export type LinePlant = {
  readonly perLengthKg: Reckoned<number>;
  readonly ends: Reckoned<{
    readonly breakingN: number;
    readonly termination: Efficiency;
    readonly bending: Efficiency;
  }>;
};

export const linePlantOf = ({ lift, lineMassPerLength }: LineSet): LinePlant => {
  const wire = gather();
  const perLengthKg = wire.number(lineMassPerLength, 'mass per length of a lift line');
  const got = gather();
  const { breakingStrength, diameter, termination } = lift.cable;
  const breakingN = got.number(breakingStrength, 'breaking strength of the lift lines');
  const lineDiameterM = got.number(diameter, 'diameter of the lift lines');
  const loftM = got.number(lift.loftBlock.sheaveDiameter, 'sheave of the loft blocks');
  const headM = got.number(lift.headBlock.sheaveDiameter, 'sheave of the head block');
  if (termination === null) got.need('how the ends of the lift lines are made');
  const end = termination === null ? null : terminationEfficiency(termination, lineDiameterM);
  // The smaller sheave bends harder.
  const sheaveDiameterM = Math.min(loftM, headM);
  const bending = bendingEfficiency(sheaveRatio({ sheaveDiameterM, lineDiameterM }));
  if (got.needs.length === 0 && end === null) got.need('a published figure for such line ends');
  if (got.needs.length === 0 && bending === null) got.need('a sheave larger than its line');
  return {
    perLengthKg: wire.give(() => perLengthKg),
    ends:
      end === null || bending === null || got.needs.length > 0
        ? blocked(got.needs)
        : reckoned({ breakingN, termination: end, bending }),
  };
};

type Scene = { readonly height: number; readonly loads: readonly PlacedLoad[] };

export const lineStatesOf = (
  model: BattenModel,
  plant: LinePlant,
  scene: Scene,
  beam: BattenSolution,
): readonly LineState[] => {
  const runs = model.runsAt(scene.height);
  const doubts = doubtsOf(model, scene.loads, beam);
  const sensitivity = beam.sensitivity();
  return model.lines.map(({ x, stiffness }, index): LineState => {
    const tensionN = beam.tensions[index] ?? 0;
    const run = runs[index];
    const along =
      run === undefined || !plant.perLengthKg.known
        ? null
        : tensionsAtRest(run, tensionN, plant.perLengthKg.value);
    const unknown = plant.perLengthKg.known ? ['the run of the line'] : plant.perLengthKg.needs;
    const block = run === undefined || along === null ? null : loftBlockForce(run, along.loft);
    return {
      x: metres(x),
      tension: newtons(tensionN),
      slack: beam.slack[index] ?? false,
      uncertainty: doubts === null ? null : newtons(doubts[index] ?? 0),
      top: along === null ? blocked(unknown) : reckoned(along.loft),
      stretch: stiffness === null ? null : metres(tensionN / stiffness),
      strength: along === null ? blocked(unknown) : strengthOf(plant.ends, along.most),
      loftBlock: block === null ? blocked(unknown) : reckoned(block),
      perTrim: newtonsPerMetre(sensitivity[index]?.[index] ?? 0),
    };
  });
};

const strengthOf = (ends: LinePlant['ends'], tensionN: number): Reckoned<LineStrength> => {
  if (!ends.known) return ends;
  const { breakingN, termination, bending } = ends.value;
  const factor = lineFactor({
    breakingN,
    termination: termination.value,
    bending: bending.value,
    tensionN,
  });
  return reckoned({ breaking: newtons(breakingN), termination, bending, factor });
};

/**
 * Doubt of each tension, every mass at its worst for that line: the sum of what each doubtful mass
 * does to it, whichever way. Null where the doubt of one mass is unsaid.
 *
 *     ΔT_i = g · Σ |∂T_i / ∂F(x)| · Δm
 *
 * Source  superposition, while no line changes between tight and slack
 * Omits   that near slack a line cannot lose more than it has (this then errs high)
 */
const doubtsOf = (
  model: BattenModel,
  loads: readonly PlacedLoad[],
  beam: BattenSolution,
): readonly number[] | null => {
  const { battenUncertaintyKg, left, right } = model;
  if (battenUncertaintyKg === null) return null;
  const own = { load: { from: left, to: right, mass: 0 }, uncertaintyKg: battenUncertaintyKg };
  const sumsN = model.lines.map(() => 0);
  for (const { load, uncertaintyKg } of [own, ...loads]) {
    if (uncertaintyKg === null) return null;
    if (uncertaintyKg === 0) continue;
    for (const [index, share] of beam.influence('x' in load ? load.x : load).entries()) {
      sumsN[index] = (sumsN[index] ?? 0) + Math.abs(share) * GRAVITY * uncertaintyKg;
    }
  }
  return sumsN;
};
