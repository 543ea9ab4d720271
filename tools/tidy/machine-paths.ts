/** No file knows the machine it was written on: neither its folders nor its package registry. */
import { homedir } from 'node:os';
import { ROOT } from '../running/program.ts';
import type { Check, Fault, Source } from './fault.ts';

/** Folders only a machine has. Written in pieces: this file must pass its own check. */
const FOLDERS = ['work', 'root', 'tmp', 'farm', 'home/\\w+', 'Users/\\w+'].join('|');
const MACHINE_PATH = new RegExp(`(?<![\\w.:/*)-])/(${FOLDERS})(?![\\w-])`);
const HOSTS = ['registry', 'verdaccio', 'artifactory'].join('|');
const REGISTRY = new RegExp(`\\b(${HOSTS})\\.[a-z0-9-]+\\.[a-z]+`);
const RESOLVED = /"resolved": "https?:/;

const isTelling = (folder: string): boolean => folder.split('/').length > 2;

const faultOfLine = (path: string, line: string): string | undefined => {
  if ([ROOT, homedir()].some((folder) => isTelling(folder) && line.includes(folder))) {
    return 'a path of this machine';
  }
  if (path !== 'package-lock.json' && MACHINE_PATH.test(line)) return 'a path of a machine';
  return REGISTRY.test(line) || RESOLVED.test(line) ? 'the name of a registry' : undefined;
};

const faultsOf = ({ path, text }: Source): readonly Fault[] =>
  text.split('\n').flatMap((line, index) => {
    const what = faultOfLine(path, line);
    if (what === undefined) return [];
    return [{ file: path, line: index + 1, what, wanted: 'nothing that only one machine has' }];
  });

export const machinePaths: Check = (sources) => sources.flatMap(faultsOf);
