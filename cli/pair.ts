import { openPair, whyNotBorne, workOutPairBest } from '#orders';
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import { parseQuantity } from '#quantities';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { openDocuments } from './open-documents.ts';
import { pairText } from './pair-text.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

export type PairOptions = {
  readonly house: string;
  readonly show: string;
  readonly set: string;
  /** The set that it is coupled with. */
  readonly with: string;
  readonly least?: string;
  readonly most?: string;
  readonly state?: string;
  readonly from?: 'bare';
  readonly to: string;
  readonly doubt: boolean;
  readonly lock: 'planning' | 'nominal';
  readonly json?: boolean;
};

/** One order for two coupled sets, judged, or why none was found. */
export const pair = async (voice: Voice, options: PairOptions): Promise<ExitCode> => {
  const opened = await openDocuments(voice, { ...options, state: options.state });
  if (opened === null) return EXIT.badInput;
  const asked = askedOf(options);
  const documents = {
    house: opened.house.house,
    show: opened.show.show,
    state: opened.state?.state ?? null,
  };
  const question = asked.ok ? openPair(documents, asked.value) : asked;
  if (!question.ok) {
    sayRefusals(voice, 'plan', question.error);
    return EXIT.badInput;
  }
  const worked = workOutPairBest(question.value);
  const { plan, verdict, bearing } = worked;
  const isBorne = whyNotBorne(bearing.first) === null && whyNotBorne(bearing.second) === null;
  voice.out(
    options.json === true
      ? `${JSON.stringify({ sets: [options.set, options.with], plan, verdict }, null, 2)}\n`
      : `${pairText(worked).join('\n')}\n`,
  );
  return 'found' in plan && verdict.broken === null && isBorne ? EXIT.clear : EXIT.stop;
};

const askedOf = (
  options: PairOptions,
): Result<Parameters<typeof openPair>[1], readonly Refusal[]> => {
  const least = heightOf('--least', options.least);
  const most = heightOf('--most', options.most);
  if (!least.ok) return least;
  if (!most.ok) return most;
  if (options.to !== 'load' && options.to !== 'strike') {
    return fail([
      {
        code: COMMAND_REFUSALS.noMeasure.code,
        path: '--to',
        found: options.to,
        accepted: 'load or strike, for two sets at once',
      },
    ]);
  }
  return ok({
    sets: [options.set, options.with],
    kind: options.to,
    from: options.from === 'bare' ? 'bare' : 'recorded',
    band: { leastM: least.value, mostM: most.value },
    doubt: options.doubt ? 'worst' : 'none',
    lock: options.lock,
  });
};

/** Nobody has written the band down: it is asked for, and has no default. */
const heightOf = (path: string, text: string | undefined): Result<number, readonly Refusal[]> => {
  const isLower = text?.startsWith('-') === true;
  const read = text === undefined ? null : parseQuantity('length', isLower ? text.slice(1) : text);
  if (read?.ok === true) return ok(isLower ? -read.value : read.value);
  return fail([
    {
      code: COMMAND_REFUSALS.noMeasure.code,
      path,
      found: text ?? 'nothing',
      accepted:
        'a height with its unit: how much higher the second batten may be than the first while ' +
        'the piece is on both, with a minus where it is lower',
    },
  ]);
};
