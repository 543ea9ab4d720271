/**
 * A Node that is new enough. Where the running one is too old, Node 24 is fetched once, as an npm
 * package, into `.runtime/`; nothing outside the checkout is changed.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { npm } from './npm.mjs';
import { ROOT, RUNTIME } from './places.mjs';
import { Trouble, timed } from './speak.mjs';

const WANTED_MAJOR = 24;

/** The version that the checks were last run on. Moved by hand, as any other dependency. */
const PINNED = '24.21.0';

const majorOf = (version) => Number(String(version).replace(/^v/, '').split('.')[0]);

const ownNode = () => {
  const folder = join(RUNTIME, 'node_modules', 'node', 'bin');
  return join(folder, process.platform === 'win32' ? 'node.exe' : 'node');
};

const versionOf = (program) => {
  const run = spawnSync(program, ['--version'], { encoding: 'utf8' });
  return run.status === 0 ? run.stdout.trim() : 'none';
};

const installNode = () => {
  mkdirSync(RUNTIME, { recursive: true });
  const manifest = {
    private: true,
    allowScripts: { node: true },
    dependencies: { node: PINNED },
  };
  writeFileSync(join(RUNTIME, 'package.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  npm(['install', '--prefix', RUNTIME, '--no-fund', '--no-audit', '--loglevel=error'], {
    node: process.execPath,
    cwd: RUNTIME,
    what: `install Node ${PINNED}`,
  });
};

/** The path of a Node that is new enough. Throws a Trouble when there is none to be had. */
export const ensureNode = () => {
  if (majorOf(process.version) >= WANTED_MAJOR) return process.execPath;
  const node = ownNode();
  if (existsSync(node)) return node;
  timed(
    `This is Node ${process.version}; Counterpoise needs Node ${WANTED_MAJOR}. ` +
      `Fetching Node ${PINNED} into .runtime (10 to 60 s, once) ...`,
    installNode,
  );
  if (majorOf(versionOf(node)) < WANTED_MAJOR) {
    throw new Trouble(
      `Node ${PINNED} was fetched but does not run here (${versionOf(node)}). ` +
        `Install Node ${WANTED_MAJOR} yourself, delete the folder .runtime and run it again.`,
    );
  }
  return node;
};

/** PATH with that Node first, then the tools of this project. */
export const pathFor = (node) =>
  [dirname(node), join(ROOT, 'node_modules', '.bin'), process.env.PATH || ''].join(delimiter);
