import { readOrder } from '#documents';
import { judgeAsked, judgedOrder, openJob, recordedStart, writtenStart } from '#orders';
import { ok } from '#outcome';
import type { OrderVerdict } from '#rules';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments, textOf } from './open-documents.ts';
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
  const start = written === null ? recordedStart(job.value) : ok(writtenStart(job.value, written));
  if (!start.ok) {
    sayRefusals(voice, options.state, start.error);
    return EXIT.badInput;
  }
  const checked = judgeAsked({ doubt: options.doubt ? 'worst' : 'none', lock: options.lock });
  const order = judgedOrder(job.value, start.value, steps, 'change', checked);
  const { verdict } = order;
  const said = () => [...orderText(job.value, order), '', ...verdictText(job.value, order)];
  voice.out(
    options.json === true
      ? `${JSON.stringify({ set, start: start.value, steps, verdict }, null, 2)}\n`
      : `${said().join('\n')}\n`,
  );
  if (verdict.refused !== null) return sayNotReplayed(voice, options.order, verdict.refused);
  return verdict.broken === null ? EXIT.clear : EXIT.stop;
};

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
