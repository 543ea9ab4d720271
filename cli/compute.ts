import { answerBalance, answerMix, answerPullTest, stackToTarget } from '#balance';
import { answerBatten } from '#beam';
import {
  COMPUTE_NAMES,
  type ComputeInputs,
  type ComputeName,
  computeInput,
  isComputeName,
  readJson,
} from '#documents';
import { reachWindow } from '#house';
import { answerLines, answerTotals } from '#lines';
import { answerReleasable, answerRunaway, dropped } from '#motion';
import { answerPlan, answerVerify } from '#orders';
import { fail, ok, type Refusal, type Result } from '#outcome';
import type { UnitSystem } from '#quantities';
import { takeOffNumbers } from '#takeoff';
import { OUTPUTS } from './compute-outputs.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { textOf } from './open-documents.ts';
import { planWords, verifyWords } from './plain-order-text.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

type Answers = {
  readonly [N in ComputeName]: (input: ComputeInputs[N]) => Result<unknown, readonly Refusal[]>;
};

/** Each calculation behind its name. The same functions serve the screens and the sheets. */
const ANSWERS: Answers = {
  balance: (input) => ok(answerBalance(input, input)),
  bricks: (input) => ok(stackToTarget(input)),
  takeoff: (input) => takeOffNumbers(input),
  pullTest: (input) => ok(answerPullTest(input)),
  mix: (input) => ok(answerMix(input)),
  reach: (input) =>
    ok({
      window: reachWindow(
        {
          panAtLowM: input.panAtLow,
          panThicknessM: input.panThickness,
          lowStopM: input.lowStop,
          highStopM: input.highStop ?? Number.MAX_VALUE,
          purchase: input.purchase,
          galleryFloorM: input.galleryFloor,
          reachLowM: input.reachLow,
          reachHighM: input.reachHigh,
        },
        input.stack,
      ),
    }),
  batten: answerBatten,
  lines: (input) => answerLines(input),
  totals: (input) => ok(answerTotals(input)),
  releasable: answerReleasable,
  runaway: answerRunaway,
  dropped: (input) => ok({ levels: dropped(input) }),
  plan: answerPlan,
  verify: answerVerify,
};

/** Calculations that also answer in words; each answer is lines. */
const WORDS: {
  readonly [N in ComputeName]?: (
    input: ComputeInputs[N],
    units: UnitSystem,
  ) => Result<readonly string[], readonly Refusal[]>;
} = { plan: planWords, verify: verifyWords };

export type ComputeOptions = {
  readonly name?: string;
  readonly list?: boolean;
  readonly schema?: boolean;
  readonly input: string;
  /** In words of this system of units instead of JSON. */
  readonly words?: UnitSystem;
};

/** One calculation: an object in, an object out; a list in, a list out in the same order. */
export const compute = async (voice: Voice, options: ComputeOptions): Promise<ExitCode> => {
  const { name } = options;
  if (options.list === true) {
    voice.out(`${COMPUTE_NAMES.join('\n')}\n`);
    return EXIT.clear;
  }
  if (name === undefined || !isComputeName(name)) {
    const found = name === undefined ? 'no name' : `"${name}"`;
    const accepted = COMPUTE_NAMES.join(', ');
    sayRefusals(voice, 'compute', [
      { code: COMMAND_REFUSALS.noCalculation.code, path: '', found, accepted },
    ]);
    return EXIT.badInput;
  }
  if (options.schema === true) {
    const schemas = { input: computeInput(name).schema, output: OUTPUTS[name] };
    voice.out(`${JSON.stringify(schemas, null, 2)}\n`);
    return EXIT.clear;
  }
  return answerFrom(voice, name, options);
};

const answerFrom = async <N extends ComputeName>(
  voice: Voice,
  name: N,
  { input, words }: ComputeOptions,
): Promise<ExitCode> => {
  const say = words === undefined ? null : WORDS[name];
  if (say === undefined) {
    const accepted = `words for ${Object.keys(WORDS).join(' and ')}; JSON for all`;
    sayRefusals(voice, 'compute', [
      { code: COMMAND_REFUSALS.noWords.code, path: '--words', found: name, accepted },
    ]);
    return EXIT.badInput;
  }
  const text = await textOf(input);
  const value = text.ok ? readJson(text.value) : text;
  const answerOf = (one: ComputeInputs[N]): Result<unknown, readonly Refusal[]> =>
    say === null || words === undefined ? ANSWERS[name](one) : say(one, words);
  const answer = value.ok ? answerAll(name, value.value, answerOf) : value;
  if (!answer.ok) {
    sayRefusals(voice, 'input', answer.error);
    return EXIT.badInput;
  }
  const { many, answers } = answer.value;
  voice.out(
    say === null
      ? `${JSON.stringify(many ? answers : answers[0], null, 2)}\n`
      : `${answers.map((lines) => [lines].flat().join('\n')).join('\n\n')}\n`,
  );
  return EXIT.clear;
};

type Answered = { readonly many: boolean; readonly answers: readonly unknown[] };

const answerAll = <N extends ComputeName>(
  name: N,
  value: unknown,
  answerOf: (one: ComputeInputs[N]) => Result<unknown, readonly Refusal[]>,
): Result<Answered, readonly Refusal[]> => {
  const answerOne = (one: unknown): Result<unknown, readonly Refusal[]> => {
    const read = computeInput(name).read(one);
    return read.ok ? answerOf(read.value) : read;
  };
  if (!Array.isArray(value)) {
    const answer = answerOne(value);
    return answer.ok ? ok({ many: false, answers: [answer.value] }) : answer;
  }
  const answers = value.map(answerOne);
  const refusals = answers.flatMap((answer, index) =>
    answer.ok
      ? []
      : answer.error.map((fault) => ({
          ...fault,
          path: fault.path === '' ? `[${index}]` : `[${index}].${fault.path}`,
        })),
  );
  return refusals.length > 0
    ? fail(refusals)
    : ok({ many: true, answers: answers.map((answer) => (answer.ok ? answer.value : null)) });
};
