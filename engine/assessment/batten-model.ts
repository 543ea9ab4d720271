/** The batten of a set as the beam takes it, and where its lines run. */
import type { LiftLine, Load, Pipe, Splice } from '#beam';
import type { Reckoned } from '#findings';
import { type House, type LineSet, purchaseOf } from '#house';
import { freeLength, type LineRun, lineStiffness } from '#lines';
import { type Metres, metres } from '#quantities';
import { gather, uncertaintyOf } from './plant.ts';
import type { PlacedLoad } from './structure-types.ts';

export type BattenModel = {
  readonly pipe: Pipe;
  readonly left: Metres;
  readonly right: Metres;
  readonly lines: readonly LiftLine[];
  readonly splices: readonly Splice[];
  /** Fittings at each line; the pipe itself is in `pipe`. */
  readonly fittings: readonly PlacedLoad[];
  readonly battenMassKg: number;
  readonly battenUncertaintyKg: number | null;
  readonly freeLengths: readonly Metres[];
  /** Of each line at one height of the batten. */
  readonly runsAt: (heightM: number) => readonly LineRun[];
};

type Got = ReturnType<typeof gather>;

/**
 * All that a beam check needs of the plant, or what is missing for it. The mass of the batten is
 * what was weighed: fittings are taken out of it line by line, and the rest is spread evenly along
 * the pipe, so that the whole is never more or less than the scale said.
 */
export const battenModelOf = (lineSet: LineSet, house: House): Reckoned<BattenModel> => {
  const { batten, lift, lineXs } = lineSet;
  const got = gather();
  if (lineXs === null) got.need('lift lines');
  const count = lineXs?.length ?? 0;
  const leftM = got.number(batten.left, 'left end of the batten');
  const rightM = got.number(batten.right, 'right end of the batten');
  const battenKg = got.number(batten.mass, 'mass of the batten with its fittings');
  const fittingKg = got.number(batten.fittingsPerLine, 'fittings at each line');
  const pipeKg = battenKg - count * fittingKg;
  if (pipeKg < 0) got.need('a mass of the batten that is more than its fittings');
  const pipe = pipeOf(lineSet, pipeKg / (rightM - leftM), got);
  const stretchN = got.number(lift.cable.axialStiffness, 'stretch of the lift lines (EA)');
  const runsAt = runsOf(lineSet, house, got);
  return got.give(() => {
    const lowM = lineSet.lowStop.height.known ? lineSet.lowStop.height.value : 0;
    // All that stretches, from the batten to the arbor: the trim chain is reckoned as wire, which
    // makes a line a fortieth too soft at most.
    const lengths = runsAt(lowM).map((run) => freeLength({ ...run, wireEndZ: lowM }));
    const lines = (lineXs ?? []).map((x, index): LiftLine => {
      const trim = lift.lineTrims?.[index];
      const stiffness = lineStiffness({
        axialStiffnessN: stretchN,
        freeLengthM: lengths[index] ?? 0,
      });
      return { x, stiffness, ...(trim === undefined ? {} : { trim }) };
    });
    const uncertaintyKg = uncertaintyOf(batten.mass, house.rules);
    return {
      pipe,
      left: metres(leftM),
      right: metres(rightM),
      lines,
      splices: (batten.splices ?? []).flatMap(({ x, strength }): readonly Splice[] =>
        strength.known ? [{ x, strength: strength.value }] : [],
      ),
      fittings: (lineXs ?? []).map((x, index) => ({
        of: `fittings at line ${index + 1}`,
        load: { x, mass: fittingKg } satisfies Load,
        uncertaintyKg: 0,
      })),
      battenMassKg: battenKg,
      battenUncertaintyKg: uncertaintyKg,
      freeLengths: lengths,
      runsAt,
    };
  });
};

const pipeOf = ({ batten }: LineSet, massPerLength: number, got: Got): Pipe => {
  const { secondMoment, elasticModulus, sectionModulus, plasticModulus, yieldStrength } =
    batten.pipe;
  return {
    massPerLength,
    secondMoment: got.number(secondMoment, 'second moment of the pipe'),
    elasticModulus: got.number(elasticModulus, 'elastic modulus of the pipe'),
    ...(sectionModulus.known ? { sectionModulus: sectionModulus.value } : {}),
    ...(plasticModulus.known ? { plasticModulus: plasticModulus.value } : {}),
    ...(yieldStrength.known ? { yieldStrength: yieldStrength.value } : {}),
  };
};

/** Heights of the batten and the arbor move together, so the length of a line never changes. */
const runsOf = (
  lineSet: LineSet,
  house: House,
  got: Got,
): ((heightM: number) => readonly LineRun[]) => {
  const { arbor, lift, lineXs } = lineSet;
  const purchase = purchaseOf(lineSet.suspension);
  if (purchase === null || arbor === null) {
    got.need('an arbor, to which lines of a known length run');
    return () => [];
  }
  const headX = got.number(house.stage.operatingX, 'place of the head blocks');
  const loftZ = got.number(house.stage.loftBlockHeight, 'height of the loft blocks');
  const headZ = got.number(house.stage.headBlockHeight, 'height of the head blocks');
  const endM = got.number(lineSet.wireEndAbove, 'length of the trim chain');
  const lowM = got.number(lineSet.lowStop.height, 'height of the low stop');
  const attachLowM =
    got.number(arbor.panAtLow, 'height of the arbor with the batten in') +
    got.number(arbor.attachAbovePan, 'where the lines meet the arbor');
  return (heightM) =>
    (lineXs ?? []).map((lineX, index): LineRun => {
      const mules = lift.muleBlocks.filter(({ line }) => line === index + 1);
      return {
        purchase,
        lineX,
        headX,
        loftZ,
        headZ,
        wireEndZ: heightM + endM,
        attachZ: attachLowM - (heightM - lowM) / purchase,
        ...(mules.length === 0 ? {} : { mules: mules.map(({ x, z }) => ({ x, z })) }),
      };
    });
};
