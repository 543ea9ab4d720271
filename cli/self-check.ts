import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { thisInstallation } from '#installation';
import { localMoment, type Paper, renderPdf } from '#print';
import {
  CASES,
  type SelfCheckProgress,
  type SelfCheckRecord,
  type SelfCheckState,
  selfCheckSteps,
  type ValidationCase,
} from '#selfcheck';
import { selfCheckSheet } from '#sheets';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { selfCheckText } from './self-check-text.ts';
import { progress, sayRefusals, type Voice } from './voice.ts';

export type SelfCheckOptions = {
  readonly pdf?: string;
  readonly paper: Paper;
  readonly by: string;
  readonly json?: boolean;
};

/** Reruns every case that needs no development tool; 3 where one is not within its tolerance. */
export const selfCheck = async (
  voice: Voice,
  options: SelfCheckOptions,
  cases: readonly ValidationCase[] = CASES,
): Promise<ExitCode> => {
  const say = progress(voice, 'Self-check', cases.length);
  const record: SelfCheckRecord = {
    installation: thisInstallation(),
    state: checkedNow({ cases, onProgress: ({ done }) => say(done) }),
  };
  if (options.pdf !== undefined && !(await isWritten(voice, options.pdf, record, options))) {
    return EXIT.badInput;
  }
  voice.out(options.json === true ? `${JSON.stringify(record, null, 2)}\n` : selfCheckText(record));
  const { state } = record;
  return state.is === 'done' && state.report.failed.length === 0 ? EXIT.clear : EXIT.fault;
};

type Run = {
  readonly cases?: readonly ValidationCase[];
  /** Left off, and said not to be run, when it takes longer. */
  readonly mostMs?: number;
  readonly onProgress?: (progress: SelfCheckProgress) => void;
};

/** All cases one after the other, since a terminal has nothing else to do meanwhile. */
export const checkedNow = ({
  cases = CASES,
  mostMs = Number.POSITIVE_INFINITY,
  onProgress = () => {},
}: Run): SelfCheckState => {
  const beganMs = Date.now();
  const steps = selfCheckSteps(cases);
  let step = steps.next();
  while (step.done !== true) {
    onProgress(step.value);
    if (Date.now() - beganMs > mostMs) return { is: 'notRun' };
    step = steps.next();
  }
  return { is: 'done', at: localMoment(new Date()), report: step.value };
};

const isWritten = async (
  voice: Voice,
  file: string,
  record: SelfCheckRecord,
  { paper, by }: SelfCheckOptions,
): Promise<boolean> => {
  const stamp = { printedAt: localMoment(new Date()), printedBy: by };
  const bytes = await renderPdf(selfCheckSheet(record, stamp), paper);
  try {
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, bytes);
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
