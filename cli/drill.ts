import {
  bareStart,
  type CheckedOrder,
  isDrill,
  type OrderQuestion,
  openJob,
  recordedStart,
  type WorkedDrill,
  workOutDrill,
} from '#orders';
import type { Refusal, Result } from '#outcome';
import { drillText, noDrillText } from './drill-text.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments } from './open-documents.ts';
import { headText, orderText, stepsText, verdictText, wordsOf } from './order-text.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type DrillOptions = {
  readonly house: string;
  readonly show: string;
  readonly set: string;
  readonly state?: string;
  readonly from?: 'bare';
  readonly json?: boolean;
};

/** The drill for masses that nobody knows, judged, or why it cannot be done. */
export const drill = async (voice: Voice, options: DrillOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const answer = workedOf(options, {
    house: opened.house.house,
    show: opened.show.show,
    state: opened.state?.state ?? null,
  });
  if (!answer.ok) {
    sayRefusals(voice, 'plan', answer.error);
    return EXIT.badInput;
  }
  const { plan, order } = answer.value;
  const { assumed, verdict } = order;
  const whole = { set: options.set, assumed, ...plan, verdict };
  voice.out(
    options.json === true
      ? `${JSON.stringify(whole, null, 2)}\n`
      : `${said(answer.value).join('\n')}\n`,
  );
  return isDrill(answer.value) ? EXIT.clear : EXIT.stop;
};

const workedOf = (
  { set, from }: DrillOptions,
  documents: Parameters<typeof openJob>[0],
): Result<WorkedDrill, readonly Refusal[]> => {
  const job = openJob(documents, set);
  if (!job.ok) return job;
  const start = from === 'bare' ? bareStart(job.value) : recordedStart(job.value);
  // Who asks for the drill has it, whether the lock would hold the doubt or not.
  return start.ok ? workOutDrill(job.value, start.value, { anyway: true }) : start;
};

const NOT_ACCEPTED = 'NOT TO BE USED: the judge does not accept this drill. Stop and ask.';

const said = (worked: WorkedDrill): readonly string[] => {
  const { job, order, plan } = worked;
  if (!('drill' in plan)) return [...headText(job, order), '', ...noDrillText(plan.none, worked)];
  // Nobody is told how to work by a drill that is refused.
  return isDrill(worked)
    ? [...drillText(worked, plan.drill), '', ...verdictText(job, order)]
    : [...orderText(job, order), '', NOT_ACCEPTED, ...verdictText(job, order)];
};

/** An order in words; where it takes masses as they are written, first how to weigh them. */
export const orderWithHint = (question: OrderQuestion, order: CheckedOrder): readonly string[] => {
  const { job } = question;
  const hint = order.assumed.some(({ is }) => is === 'massesAsWritten') ? hintOf(question) : [];
  return [...headText(job, order), ...hint, ...stepsText(order, wordsOf(job, order))];
};

const hintOf = ({ job, start }: OrderQuestion): readonly string[] => {
  const worked = workOutDrill(job, start, { anyway: false });
  return worked.ok && isDrill(worked.value)
    ? ['It can be weighed on its low stop, brick by brick with a pull after each: --drill.']
    : [];
};
