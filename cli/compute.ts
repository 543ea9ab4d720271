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
import { fail, ok, type Refusal, type Result } from '#outcome';
import { takeOffNumbers } from '#takeoff';
import { OUTPUTS } from './compute-outputs.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { textOf } from './open-documents.ts';
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
};

export type ComputeOptions = {
  readonly name?: string;
  readonly list?: boolean;
  readonly schema?: boolean;
  readonly input: string;
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
  return answerFrom(voice, name, options.input);
};

const answerFrom = async (voice: Voice, name: ComputeName, file: string): Promise<ExitCode> => {
  const text = await textOf(file);
  const value = text.ok ? readJson(text.value) : text;
  const answer = value.ok ? answerAll(name, value.value) : value;
  if (!answer.ok) {
    sayRefusals(voice, 'input', answer.error);
    return EXIT.badInput;
  }
  voice.out(`${JSON.stringify(answer.value, null, 2)}\n`);
  return EXIT.clear;
};

const answerAll = (name: ComputeName, value: unknown): Result<unknown, readonly Refusal[]> => {
  if (!Array.isArray(value)) return answerOne(name, value);
  const answers = value.map((one) => answerOne(name, one));
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
    : ok(answers.map((answer) => (answer.ok ? answer.value : null)));
};

const answerOne = <N extends ComputeName>(
  name: N,
  value: unknown,
): Result<unknown, readonly Refusal[]> => {
  const read = computeInput(name).read(value);
  return read.ok ? ANSWERS[name](read.value) : read;
};
