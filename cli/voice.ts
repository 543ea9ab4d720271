import type { Refusal } from '#outcome';

/** Where the program speaks: answers go to `out`, everything about the work goes to `err`. */
export type Voice = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether progress may overwrite its own line. */
  readonly live: boolean;
};

export const processVoice: Voice = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  live: process.stderr.isTTY === true,
};

/** One line a fault: where, what was found, what is accepted. */
export const sayRefusals = (voice: Voice, source: string, refusals: readonly Refusal[]): void => {
  for (const { code, path, found, accepted } of refusals) {
    const place = path === '' ? source : `${source}: ${path}`;
    voice.err(`${place}: found ${found}; accepted: ${accepted} [${code}]\n`);
  }
};

/** Progress on long work: one line written over, or a line each tenth where it cannot be. */
export const progress = (voice: Voice, what: string, total: number): ((done: number) => void) => {
  let said = -1;
  return (done) => {
    if (voice.live) {
      voice.err(`\r${what}: ${done} of ${total}${done === total ? '\n' : ''}`);
      return;
    }
    const tenth = Math.floor((done * 10) / Math.max(total, 1));
    if (tenth > said) voice.err(`${what}: ${done} of ${total}\n`);
    said = tenth;
  };
};
