/** A commit's title is a room, then the change as an order: `balance: count spreader plates`. */
import { spawnSync } from 'node:child_process';
import { ROOT } from '../running/program.ts';
import type { Fault } from './fault.ts';
import { OUTBUILDINGS, ROOMS } from './floors.ts';

const LAST = 50;
const TITLE_LIMIT = 100;

/** Papers and settings have no room of their own. */
const OTHERS = ['engine', 'docs', 'tidy', 'papers', 'packages', 'all'];
const PLACES = [...ROOMS.map(({ name }) => name), ...OUTBUILDINGS, ...OTHERS];

/** `counts`, `counted` and `counting` report; `count` orders. */
const isOrder = (word: string): boolean =>
  !/(ed|ing)$/.test(word) || /^(need|feed|speed|bring|string|ring|shed|embed)$/.test(word);
const isThirdPerson = (word: string): boolean => /[^su]s$/.test(word);

export const faultOfTitle = (title: string): string | undefined => {
  const found = /^([a-z-]+): (([a-z]+)\b.*)$/.exec(title);
  if (found === null) return 'room, colon, then the change as an order in small letters';
  const [, place = '', , verb = ''] = found;
  if (!PLACES.includes(place)) return `a room that exists, not "${place}"`;
  if (!isOrder(verb) || isThirdPerson(verb)) return `an order, not "${verb}"`;
  if (title.endsWith('.')) return 'no full stop';
  return title.length > TITLE_LIMIT ? `at most ${TITLE_LIMIT} letters` : undefined;
};

type Commit = { readonly id: string; readonly title: string };

export const faultsOfCommits = (commits: readonly Commit[]): readonly Fault[] =>
  commits.flatMap(({ id, title }) => {
    const wanted = faultOfTitle(title);
    return wanted === undefined
      ? []
      : [{ file: `commit ${id}`, line: 1, what: `"${title}"`, wanted }];
  });

/** The last commits. None in a copy without a history, where there is nothing to judge. */
export const recentCommits = (): readonly Commit[] => {
  const args = ['log', '--no-merges', `-${LAST}`, '--format=%h%x09%s'];
  const { status, stdout } = spawnSync('git', args, { cwd: ROOT, encoding: 'utf8' });
  if (status !== 0) return [];
  return stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => {
      const [id = '', title = ''] = line.split('\t');
      return { id, title };
    });
};
