/** A command run as a person runs it, with all that it says kept; for the tests of this room. */
import { run } from './program.ts';
import type { Voice } from './voice.ts';

export const heard = async (...args: readonly string[]) => {
  let [out, err] = ['', ''];
  const voice: Voice = {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    live: false,
  };
  return { code: await run(args, voice), out, err };
};
