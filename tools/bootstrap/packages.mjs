/**
 * The packages of package-lock.json, installed when they are missing or differ, and otherwise
 * left alone: the second run of a command must start at once.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { npm } from './npm.mjs';
import { ROOT } from './places.mjs';
import { Trouble, timed } from './speak.mjs';

const LOCK = join(ROOT, 'package-lock.json');
const MODULES = join(ROOT, 'node_modules');

/** Inside node_modules, so that it goes when they go. Written only after a good install. */
const STAMP = join(MODULES, '.lock-hash');

const hashOf = (text) => createHash('sha256').update(text).digest('hex');

const readOr = (file, otherwise) => (existsSync(file) ? readFileSync(file, 'utf8') : otherwise);

/**
 * Whether a person's own `npm install` already put in place what the lock asks for. Optional
 * packages are for other machines too, so their absence says nothing.
 */
export const alreadyInstalled = (lockText, installedText) => {
  const wanted = JSON.parse(lockText).packages || {};
  const installed = JSON.parse(installedText).packages || {};
  return Object.keys(wanted)
    .filter((place) => place.startsWith('node_modules/'))
    .every((place) => {
      const found = installed[place];
      if (!found) return wanted[place].optional === true;
      return found.version === wanted[place].version;
    });
};

const installPackages = (node) => {
  npm(['ci', '--prefix', ROOT, '--no-fund', '--no-audit', '--loglevel=error'], {
    node,
    cwd: ROOT,
    what: 'install the packages',
  });
};

export const packagesAreThere = () => readOr(STAMP, '') === hashOf(readOr(LOCK, ''));

export const ensurePackages = (node) => {
  if (!existsSync(LOCK)) {
    throw new Trouble('package-lock.json is missing. Take a fresh copy of the project.');
  }
  if (packagesAreThere()) return;
  const lock = readFileSync(LOCK, 'utf8');
  const installed = readOr(join(MODULES, '.package-lock.json'), '{}');
  if (!alreadyInstalled(lock, installed)) {
    timed('Installing the packages (20 s to 2 min, once) ...', () => installPackages(node));
  }
  writeFileSync(STAMP, hashOf(lock));
};
