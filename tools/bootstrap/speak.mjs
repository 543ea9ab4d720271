/**
 * Words to the person who typed the command. They go to standard error, so that the answer of a
 * command line tool on standard output stays clean.
 */

/** A trouble the person can mend. Its message says what to do, and no stack is printed. */
export class Trouble extends Error {}

export const say = (sentence) => {
  process.stderr.write(`${sentence}\n`);
};

/** Says what begins and about how long it takes, does it, then says how long it took. */
export const timed = (sentence, work) => {
  say(sentence);
  const began = Date.now();
  const answer = work();
  say(`  done in ${Math.max(1, Math.round((Date.now() - began) / 1000))} s`);
  return answer;
};
