/** Runs npm, and turns its failures into advice. */
import { spawnSync } from 'node:child_process';
import { delimiter, dirname } from 'node:path';
import { Trouble } from './speak.mjs';

/**
 * npm tells the scripts it starts about its own project. Passed on to a second npm, those
 * settings would make it install into the wrong folder. Install scripts must run on the Node that
 * will load what they build, so that one leads on PATH; npm lies beside the Node that started us.
 */
const environmentFor = (node) => {
  const folders = [dirname(node), process.env.PATH || '', dirname(process.execPath)];
  const PATH = folders.join(delimiter);
  const env = { ...process.env, PATH };
  for (const name of ['npm_config_local_prefix', 'npm_config_prefix', 'npm_package_json']) {
    delete env[name];
  }
  return env;
};

const commandFor = (node, args) => {
  const own = process.env.npm_execpath || '';
  if (/npm-cli\.c?js$/.test(own)) return { program: node, args: [own, ...args] };
  return { program: process.platform === 'win32' ? 'npm.cmd' : 'npm', args };
};

const ADVICE = [
  [
    /E(NOTFOUND|AI_AGAIN|CONNREFUSED|CONNRESET|TIMEDOUT|HOSTUNREACH|NETUNREACH)|network/i,
    'The package registry cannot be reached. Check the network (or the proxy) and run it again.',
  ],
  [/ENOSPC/, 'The disk is full. Free some space and run it again.'],
  [/EACCES|EPERM|EROFS/, 'This folder cannot be written. Check who owns it and run it again.'],
  [
    /package-lock\.json|in sync/,
    'package.json and package-lock.json do not agree. Run "npm install" and keep both files.',
  ],
];

const adviceOn = (text) => {
  const found = ADVICE.find(([pattern]) => pattern.test(text));
  return found ? found[1] : 'npm says above what is wrong.';
};

/** `what` ends the sentence "npm could not ...". */
export const npm = (args, { node, cwd, what }) => {
  const { program, args: full } = commandFor(node, args);
  const run = spawnSync(program, full, {
    cwd,
    env: environmentFor(node),
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    maxBuffer: 64 * 1024 * 1024,
    shell: program === 'npm.cmd',
  });
  if (run.error && run.error.code === 'ENOENT') {
    throw new Trouble('npm is missing. It comes with Node: install Node 24 and run it again.');
  }
  if (run.signal === 'SIGINT') throw new Trouble('Stopped.');
  if (run.status === 0) return;
  process.stderr.write(`${run.stdout || ''}${run.stderr || ''}\n`);
  throw new Trouble(`npm could not ${what}. ${adviceOn(`${run.stderr || ''}`)}`);
};
