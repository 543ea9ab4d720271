/** Makes sure of Node and of the packages, runs a script on them, and ends with its exit code. */
import { waitFor } from './child.mjs';
import { ensurePackages } from './packages.mjs';
import { ensureNode, pathFor } from './runtime.mjs';
import { say, Trouble } from './speak.mjs';

const run = async (script, args) => {
  const node = ensureNode();
  ensurePackages(node);
  return waitFor(node, [script, ...args], { env: { ...process.env, PATH: pathFor(node) } });
};

/** 2 for what the person can mend, 3 for a fault of ours; else what the script said. */
const endWith = async (work) => {
  try {
    process.exitCode = await work();
  } catch (trouble) {
    const mendable = trouble instanceof Trouble;
    say(mendable ? trouble.message : String(trouble?.stack));
    process.exitCode = mendable ? 2 : 3;
  }
};

export const enter = (script, args) => endWith(() => run(script, args));
