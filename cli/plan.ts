import { writeFile } from 'node:fs/promises';
import { orderDocument, readOrderValue, readState, writeDocument } from '#documents';
import {
  bareStart,
  type CheckedOrder,
  isAccepted,
  judgedOrder,
  loadGoal,
  type OrderJob,
  type OrderQuestion,
  type OrderStart,
  openJob,
  recordedStart,
  stateGoal,
  strikeGoal,
  type WorkedOrder,
  workOut,
  workOutBest,
} from '#orders';
import type { Refusal, Result } from '#outcome';
import { assert, fail, ok } from '#outcome';
import { type Metres, metres, parseQuantity } from '#quantities';
import type { OrderGoal } from '#sequence';
import { sayBearing, sayPlan } from '#sheets';
import { orderWithHint } from './drill.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments, textOf } from './open-documents.ts';
import { verdictText } from './order-text.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
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
  const question = read.value;
  const worked = options.doubt ? workOutBest(question) : workOut(question);
  const { plan: answer } = worked;
  const { text, order } = judged(worked);
  const { assumed, verdict } = order;
  const whole = { set: options.set, assumed, goal: question.goal, plan: answer, verdict };
  voice.out(
    options.json === true
      ? `${JSON.stringify(whole, null, 2)}\n`
      : `${said(worked, order).join('\n')}\n`,
  );
  if (!('found' in answer) || !isAccepted(order) || isRefused(order)) return EXIT.stop;
  return options.out === undefined || (await isWritten(voice, options.out, text))
    ? EXIT.clear
    : EXIT.badInput;
};

const askedOf = async (
  options: PlanOptions,
  documents: Parameters<typeof openJob>[0],
): Promise<Result<OrderQuestion, readonly Refusal[]>> => {
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
  return ok({
    job: job.value,
    start: start.value,
    goal: goal.value,
    kind: options.to === 'load' || options.to === 'strike' ? options.to : 'change',
    doubt: options.doubt ? 'worst' : 'none',
    lock: options.lock,
    restraint: 'either',
    steelN: steel.value,
  });
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

/** The order as it will be written, read back, and judged: what is printed is what was replayed. */
const judged = ({
  question,
  order,
}: WorkedOrder): { readonly text: string; readonly order: CheckedOrder } => {
  const { job, start, kind } = question;
  const { house, show } = job;
  const { set, steps: found, checked, assumed, restraint } = order;
  const own = { houseId: house.id, showId: show.id, set, start: start.standing, steps: found };
  const raw = orderDocument(own, house.units);
  const read = readOrderValue(raw, house, show);
  assert(read.ok, `an order that was written reads back: ${JSON.stringify(read)}`);
  const { start: written, steps } = read.value.order;
  const asRead = { ...start, standing: written ?? start.standing };
  const again = judgedOrder(job, asRead, steps, kind, checked);
  return { text: writeDocument(raw), order: { ...again, assumed, restraint } };
};

const NOT_ACCEPTED = 'NOT TO BE USED: the judge does not accept what was found. Stop and ask.';

const said = ({ question, plan: answer }: WorkedOrder, order: CheckedOrder): readonly string[] => {
  const { job, start } = question;
  const head = orderWithHint(question, order);
  const outcome = sayPlan(answer, job.house, start.standing);
  if (!('found' in answer)) return [...head, '', ...outcome];
  const warning = isAccepted(order) ? [] : [NOT_ACCEPTED];
  const borne = order.bearing === null ? [] : [sayBearing(order.bearing, job.house)];
  return [...head, '', ...outcome, ...borne, ...warning, ...verdictText(job, order)];
};

/** What would have to carry the line that the order rigs does not. */
const isRefused = ({ bearing }: CheckedOrder): boolean =>
  bearing !== null && 'stops' in bearing && bearing.stops.length > 0;

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
