import { writeFile } from 'node:fs/promises';
import { orderDocument, readOrderValue, readState, writeDocument } from '#documents';
import type { Refusal, Result } from '#outcome';
import { assert, fail, ok } from '#outcome';
import { FOOT, type Metres, metres, parseQuantity } from '#quantities';
import { type OrderGoal, type OrderPlan, planOrder } from '#sequence';
import type { CheckedOrder } from '#sheets';
import type { Step } from '#state';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments, textOf } from './open-documents.ts';
import { goalWords, loadGoal, stateGoal, strikeGoal } from './order-goal.ts';
import {
  bareStart,
  type OrderJob,
  type OrderStart,
  openJob,
  recordedStart,
  stockWords,
} from './order-job.ts';
import { isAccepted, orderText, verdictText } from './order-text.ts';
import { outcomeText } from './plan-words.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { judgeOptions, judgeOrder } from './verify.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type PlanOptions = {
  readonly house: string;
  readonly show: string;
  readonly set: string;
  readonly state?: string;
  readonly from?: 'bare';
  /** `load`, `strike`, or a file with the state that is wanted. */
  readonly to: string;
  readonly at?: string;
  readonly steel?: string;
  readonly doubt: boolean;
  readonly lock: 'planning' | 'nominal';
  readonly out?: string;
  readonly json?: boolean;
};

type Asked = {
  readonly job: OrderJob;
  readonly start: OrderStart;
  readonly goal: OrderGoal;
  readonly steelN: number | null;
};

/** Heights that a crew can call: a quarter foot, or five centimetres. */
const NEAT_M = { customary: FOOT / 4, metric: 0.05 } as const;

/** Finds an order of work for one set, has it replayed by the judge, and says both. */
export const plan = async (voice: Voice, options: PlanOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const read = await askedOf(options, {
    house: opened.house.house,
    show: opened.show.show,
    state: opened.state?.state ?? null,
  });
  if (!read.ok) {
    sayRefusals(voice, 'plan', read.error);
    return EXIT.badInput;
  }
  const asked = read.value;
  const { job, start, goal } = asked;
  const answer = planOrder(job.physics, start.standing, goal, {
    doubtShare: options.doubt ? 1 : 0,
    lock: options.lock,
    rests: rigidItems(job),
    steelN: asked.steelN,
    neatM: NEAT_M[job.house.units],
  });
  const steps = 'found' in answer ? answer.found.steps : [];
  const { text, order } = judged(asked, steps, options);
  const { verdict } = order;
  const whole = { set: options.set, assumed: assumedOf(asked), goal, plan: answer, verdict };
  voice.out(
    options.json === true
      ? `${JSON.stringify(whole, null, 2)}\n`
      : `${said(asked, answer, order).join('\n')}\n`,
  );
  if (!('found' in answer) || !isAccepted(order)) return EXIT.stop;
  return options.out === undefined || (await isWritten(voice, options.out, text))
    ? EXIT.clear
    : EXIT.badInput;
};

const askedOf = async (
  options: PlanOptions,
  documents: Parameters<typeof openJob>[0],
): Promise<Result<Asked, readonly Refusal[]>> => {
  const job = openJob(documents, options.set);
  if (!job.ok) return job;
  const start = options.from === 'bare' ? bareStart(job.value) : recordedStart(job.value);
  if (!start.ok) return start;
  const at = measureOf('length', '--at', options.at);
  if (!at.ok) return at;
  const steel = measureOf('force', '--steel', options.steel);
  if (!steel.ok) return steel;
  const height = at.value === null ? null : metres(at.value);
  const goal = await goalOf(options.to, job.value, start.value, height);
  if (!goal.ok) return goal;
  return ok({ job: job.value, start: start.value, goal: goal.value, steelN: steel.value });
};

const measureOf = (
  dimension: 'length' | 'force',
  path: string,
  text: string | undefined,
): Result<number | null, readonly Refusal[]> => {
  if (text === undefined) return ok(null);
  const read = parseQuantity(dimension, text);
  if (read.ok) return read;
  const { found, accepted } = read.error;
  return fail([{ code: COMMAND_REFUSALS.noMeasure.code, path, found, accepted }]);
};

const goalOf = async (
  to: string,
  job: OrderJob,
  { standing }: OrderStart,
  at: Metres | null,
): Promise<Result<OrderGoal, readonly Refusal[]>> => {
  if (to === 'load') return loadGoal(job, at);
  if (to === 'strike') return strikeGoal(job, standing, at);
  const text = await textOf(to);
  const wanted = text.ok ? readState(text.value, job.house, job.show) : text;
  return wanted.ok ? stateGoal(job, wanted.value.state, at) : wanted;
};

/** Built pieces stand on horses with their picks tight; cloth and cable do not. */
const rigidItems = ({ set }: OrderJob): readonly string[] =>
  (set.hang?.items ?? []).filter(({ kind }) => kind === 'tipping').map(({ id }) => id);

/** The order as it will be written, read back, and judged: what is printed is what was replayed. */
const judged = (
  { job, start }: Asked,
  found: readonly Step[],
  options: PlanOptions,
): { readonly text: string; readonly order: CheckedOrder } => {
  const { house, show, physics } = job;
  const set = options.set;
  const own = { houseId: house.id, showId: show.id, set, start: start.standing, steps: found };
  const raw = orderDocument(own, house.units);
  const read = readOrderValue(raw, house, show);
  assert(read.ok, `an order that was written reads back: ${JSON.stringify(read)}`);
  const { start: written, steps } = read.value.order;
  const checked = judgeOptions(options);
  const verdict = judgeOrder(physics, written ?? start.standing, steps, checked);
  const kind = options.to === 'load' || options.to === 'strike' ? options.to : 'change';
  return {
    text: writeDocument(raw),
    order: { set, job: kind, physics, steps, verdict, checked },
  };
};

const NOT_ACCEPTED = 'NOT TO BE USED: the judge does not accept what was found. Stop and ask.';

const assumedOf = ({ job, start, goal }: Asked): readonly string[] => [
  ...start.assumed,
  ...goalWords(job, goal),
  ...stockWords(job),
];

const said = (asked: Asked, answer: OrderPlan, order: CheckedOrder): readonly string[] => {
  const { job, start } = asked;
  const head = orderText(job, order, assumedOf(asked));
  const outcome = outcomeText(answer, job, start.standing);
  if (!('found' in answer)) return [...head, '', ...outcome];
  const warning = isAccepted(order) ? [] : [NOT_ACCEPTED];
  return [...head, '', ...outcome, ...warning, ...verdictText(job, order)];
};

const isWritten = async (voice: Voice, file: string, text: string): Promise<boolean> => {
  try {
    await writeFile(file, text);
    return true;
  } catch (fault) {
    const { code } = fault as { code?: string };
    const found = `it could not be written (${code})`;
    const accepted = 'a file that can be written';
    sayRefusals(voice, file, [
      { code: COMMAND_REFUSALS.notWritten.code, path: '', found, accepted },
    ]);
    return false;
  }
};
