import { setFreeAt } from '#assessment';
import { readOrder } from '#documents';
import { ok } from '#outcome';
import { type OrderOptions, type OrderVerdict, verifyOrder } from '#rules';
import type { CheckedOrder } from '#sheets';
import type { OrderPhysics, Standing, Step } from '#state';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments, textOf } from './open-documents.ts';
import { type OrderStart, openJob, recordedStart } from './order-job.ts';
import { orderText, verdictText } from './order-text.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type VerifyOptions = {
  readonly house: string;
  readonly show: string;
  readonly order: string;
  readonly state: string;
  readonly doubt: boolean;
  readonly lock: 'planning' | 'nominal';
  readonly json?: boolean;
};

/** With `nominal` nobody is ever in the way of a fault, so none is tried. */
export const judgeOptions = ({ doubt, lock }: Pick<VerifyOptions, 'doubt' | 'lock'>) =>
  ({
    doubt: doubt ? 'worst' : 'none',
    faults: lock === 'planning' ? 'check' : 'skip',
  }) as const satisfies OrderOptions;

/** The judge, with what each standing would set free. */
export const judgeOrder = (
  physics: OrderPhysics,
  start: Standing,
  steps: readonly Step[],
  checked: OrderOptions,
): OrderVerdict =>
  verifyOrder(physics, start, steps, {
    ...checked,
    releasableJ: (standing) => setFreeAt(physics, standing).energy,
  });

/** Replays an order of work, and names the first rule that it breaks. */
export const verify = async (voice: Voice, options: VerifyOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, options);
  if (opened === null) return EXIT.badInput;
  const { house } = opened.house;
  const { show } = opened.show;
  const text = await textOf(options.order);
  const read = text.ok ? readOrder(text.value, house, show) : text;
  if (!read.ok) {
    sayRefusals(voice, options.order, read.error);
    return EXIT.badInput;
  }
  const { set, start: written, steps } = read.value.order;
  const job = openJob({ house, show, state: opened.state?.state ?? null }, set);
  if (!job.ok) {
    sayRefusals(voice, `set ${set}`, job.error);
    return EXIT.badInput;
  }
  const start = written === null ? recordedStart(job.value) : asWritten(set, written);
  if (!start.ok) {
    sayRefusals(voice, options.state, start.error);
    return EXIT.badInput;
  }
  const checked = judgeOptions(options);
  const { physics } = job.value;
  const verdict = judgeOrder(physics, start.value.standing, steps, checked);
  const order: CheckedOrder = { set, job: 'change', physics, steps, verdict, checked };
  const said = () => [
    ...orderText(job.value, order, start.value.assumed),
    '',
    ...verdictText(job.value, order),
  ];
  voice.out(
    options.json === true
      ? `${JSON.stringify({ set, start: start.value, steps, verdict }, null, 2)}\n`
      : `${said().join('\n')}\n`,
  );
  if (verdict.refused !== null) return sayNotReplayed(voice, options.order, verdict.refused);
  return verdict.broken === null ? EXIT.clear : EXIT.stop;
};

const asWritten = (set: string, standing: Standing) =>
  ok<OrderStart>({
    standing,
    assumed: [`Set ${set} stands as the order itself writes it, whatever the record says.`],
  });

/** A step that makes no sense is bad input: nothing after it was replayed. */
const sayNotReplayed = (
  voice: Voice,
  file: string,
  { step, refusal }: NonNullable<OrderVerdict['refused']>,
): ExitCode => {
  const path = step < 0 ? 'start' : `steps[${step}]`;
  sayRefusals(voice, file, [{ ...refusal, path }]);
  return EXIT.badInput;
};
