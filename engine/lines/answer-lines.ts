import { fail, ok, type Refusal, type Result, unreachable } from '#outcome';
import type { Metres, Newtons, NewtonsPerMetre } from '#quantities';
import type { AskedCable, AskedLine, AskedMove, LinesAsked } from './asked.ts';
import {
  headBlockForce,
  loftBlockForce,
  muleBlockForces,
  turningBlockForce,
} from './block-force.ts';
import { type Restrained, restrainedForce } from './both-sides.ts';
import { type BridleLeg, bridle } from './bridle.ts';
import { publishedAxialStiffness } from './construction.ts';
import { dropPeak, type Peak, steadyPeak, suddenStopPeak } from './dynamics.ts';
import { fleetAngle, keepsFleetRule } from './fleet.ts';
import { refuse } from './refusal-codes.ts';
import { blockPlaces, freeLength } from './run.ts';
import { bendingEfficiency, lineFactor, sheaveRatio, terminationEfficiency } from './strength.ts';
import { lineStiffness, lineStretch } from './stretch.ts';
import { type RunTension, tensionAlongRun } from './tension.ts';
import type { BlockForce, Efficiency, LineRun } from './types.ts';

type InDegrees = Omit<BlockForce, 'turn'> & { readonly turn: number };

type LegAnswer = Omit<BridleLeg, 'angle'> & { readonly angle: number };

export type LineAnswer = {
  readonly x: number;
  readonly freeLength: Metres;
  readonly tension: RunTension;
  readonly loftBlock: InDegrees;
  readonly muleBlocks: readonly InDegrees[];
  readonly stiffness?: NewtonsPerMetre;
  readonly stretch?: Metres;
  /** Breaking strength after end and bend over the largest tension; null on a slack line. */
  readonly factor?: number | null;
  readonly fleet?: { readonly angle: number; readonly keepsRule: boolean };
};

export type LinesAnswer = {
  readonly lines: readonly LineAnswer[];
  readonly headBlock: { readonly block: InDegrees; readonly steel: InDegrees };
  readonly strength?: {
    readonly termination: Efficiency;
    readonly bending: Efficiency;
    readonly sheaveRatio: number;
  };
  readonly held?: Restrained;
  readonly moves?: readonly Peak[];
  readonly bridles?: readonly {
    readonly left: LegAnswer;
    readonly right: LegAnswer;
    readonly thrust: Newtons;
  }[];
  readonly turningBlocks?: readonly Newtons[];
};

const DEGREE = Math.PI / 180;

const inDegrees = (force: BlockForce): InDegrees => ({ ...force, turn: force.turn / DEGREE });

type Strength = NonNullable<LinesAnswer['strength']>;

/** Everything that `compute lines` says of the lines and blocks of one set. Angles in degrees. */
export const answerLines = (asked: LinesAsked): Result<LinesAnswer, readonly Refusal[]> => {
  const strength = asked.cable === undefined ? ok(undefined) : strengthOf(asked.cable);
  if (!strength.ok) return strength;
  const lines = asked.lines.map((line) => answerLine(asked, line, strength.value));
  const head = headBlockForce({
    lines: asked.lines.map((line, index) => ({
      run: runOf(asked, line),
      tension: lines[index]?.tension.head ?? line.tension,
    })),
    handLineMass: asked.handLineMass ?? 0,
    handLineTension: asked.handLineTension ?? 0,
  });
  return ok({
    lines,
    headBlock: { block: inDegrees(head.block), steel: inDegrees(head.steel) },
    ...(strength.value === undefined ? {} : { strength: strength.value }),
    ...alsoAsked(asked),
  });
};

const alsoAsked = (
  asked: LinesAsked,
): Pick<LinesAnswer, 'held' | 'moves' | 'bridles' | 'turningBlocks'> => ({
  ...(asked.held === undefined ? {} : { held: heldOf(asked, asked.held) }),
  ...(asked.moves === undefined ? {} : { moves: asked.moves.map(peakOf) }),
  ...(asked.bridles === undefined ? {} : { bridles: asked.bridles.map(bridleOf) }),
  ...(asked.turningBlocks === undefined
    ? {}
    : {
        turningBlocks: asked.turningBlocks.map(({ tension, turn }) =>
          turningBlockForce({ tensionN: tension, turnRad: turn * DEGREE }),
        ),
      }),
});

const runOf = (asked: LinesAsked, line: AskedLine): LineRun => ({
  purchase: asked.purchase,
  lineX: line.x,
  headX: asked.headX,
  loftZ: asked.loftHeight,
  headZ: asked.headHeight,
  wireEndZ: asked.wireEndHeight,
  attachZ: asked.attachHeight,
  ...(line.muleBlocks === undefined ? {} : { mules: line.muleBlocks }),
});

const answerLine = (
  asked: LinesAsked,
  line: AskedLine,
  strength: Strength | undefined,
): LineAnswer => {
  const run = runOf(asked, line);
  const { friction, cable } = asked;
  const tension = tensionAlongRun({
    run,
    tensionN: line.tension,
    massPerLengthKg: asked.lineMassPerLength,
    ...(friction === undefined ? {} : { friction }),
  });
  const atMules = tension.blocks.filter(({ block }) => block === 'mule');
  const lengthM = freeLength(run);
  return {
    x: line.x,
    freeLength: lengthM,
    tension,
    loftBlock: inDegrees(loftBlockForce(run, tension.loft)),
    muleBlocks: muleBlockForces(
      run,
      atMules.map(({ before }) => before),
    ).map(inDegrees),
    ...(cable === undefined ? {} : springOf(cable, line.tension, lengthM)),
    ...(cable === undefined || strength === undefined
      ? {}
      : {
          factor: lineFactor({
            breakingN: cable.breakingStrength,
            termination: strength.termination.value,
            bending: strength.bending.value,
            tensionN: tension.most,
          }),
        }),
    ...(line.fleetOffset === undefined ? {} : { fleet: fleetOf(run, line.fleetOffset) }),
  };
};

const springOf = (
  cable: AskedCable,
  tensionN: number,
  lengthM: number,
): Pick<LineAnswer, 'stiffness' | 'stretch'> => {
  const axialStiffnessN =
    cable.axialStiffness ??
    (cable.construction === undefined
      ? undefined
      : publishedAxialStiffness(cable.construction, cable.diameter));
  if (axialStiffnessN === undefined) return {};
  return {
    stiffness: lineStiffness({ axialStiffnessN, freeLengthM: lengthM }),
    stretch: lineStretch({ tensionN, axialStiffnessN, lengthM }),
  };
};

/** From the loft block to the next block, which is where the offset is measured. */
const fleetOf = (run: LineRun, offsetM: number): NonNullable<LineAnswer['fleet']> => {
  const [loft, next] = blockPlaces(run);
  const distanceM =
    loft === undefined || next === undefined ? 0 : Math.hypot(next.x - loft.x, next.z - loft.z);
  return {
    angle: fleetAngle({ offsetM, distanceM }) / DEGREE,
    keepsRule: keepsFleetRule({ offsetM, distanceM }),
  };
};

const strengthOf = (cable: AskedCable): Result<Strength, readonly Refusal[]> => {
  const { termination, diameter, smallestSheave } = cable;
  const ratio = sheaveRatio({ sheaveDiameterM: smallestSheave, lineDiameterM: diameter });
  const ending = terminationEfficiency(termination, diameter);
  const bending = bendingEfficiency(ratio);
  if (ending !== null && bending !== null) {
    return ok({ termination: ending, bending, sheaveRatio: ratio });
  }
  const refusals: Refusal[] = [];
  if (ending === null) {
    refusals.push(
      refuse('noFigure', 'cable.termination', {
        found: `a mechanical splice on a rope of ${diameter} m`,
        accepted: 'one on a rope of at most 1 in (0.0254 m), or another end',
      }),
    );
  }
  if (bending === null) {
    refusals.push(
      refuse('noFigure', 'cable.smallestSheave', {
        found: `${smallestSheave} m for a rope of ${diameter} m`,
        accepted: 'a sheave no smaller than the rope',
      }),
    );
  }
  return fail(refusals);
};

const heldOf = (asked: LinesAsked, held: NonNullable<LinesAsked['held']>): Restrained =>
  restrainedForce(
    {
      purchase: asked.purchase,
      lines: asked.lines.length,
      massPerLength: asked.lineMassPerLength,
      headZ: asked.headHeight,
      wireEndZ: asked.wireEndHeight,
      attachZ: asked.attachHeight,
    },
    { battenSideKg: held.battenSide, arborMassKg: held.arbor },
  );

const peakOf = (move: AskedMove): Peak => {
  switch (move.kind) {
    case 'steady':
      return steadyPeak({ massKg: move.mass, accelerationMs2: move.acceleration });
    case 'suddenStop':
      return suddenStopPeak({
        massKg: move.mass,
        stiffnessNPerM: move.stiffness,
        speedMs: move.speed,
      });
    case 'drop':
      return dropPeak({ massKg: move.mass, stiffnessNPerM: move.stiffness, dropM: move.drop });
    default:
      return unreachable(move);
  }
};

const bridleOf = (
  asked: NonNullable<LinesAsked['bridles']>[number],
): NonNullable<LinesAnswer['bridles']>[number] => {
  const { left, right, thrust } = bridle({
    loadN: asked.load,
    leftM: asked.left,
    rightM: asked.right,
    heightM: asked.height,
  });
  const turned = (leg: BridleLeg): LegAnswer => ({ ...leg, angle: leg.angle / DEGREE });
  return { left: turned(left), right: turned(right), thrust };
};
