/**
 * `docs/mutation.md`: a table of the folders and the survivors that somebody has looked at. A
 * folder that was not measured this time keeps its row, so that one folder can be run alone.
 */
import { isLookedAt, type LookedAt } from './looked-at.ts';
import { type Survivor, scoreOf, type Tally } from './result.ts';

const HEAD = `# Mutation score

Written by \`npm run mutation\`; see \`docs/why/0010-mutation-tests.md\`. A mutant is a small change
of the code. It is killed when a test fails on it, or when the test no longer ends (timeouts). The
score is the share that is killed so. Only the tests beside the code try a mutant, without laws on
random input; so the score is a lower bound. Declarations of rules and refusals are not mutated:
\`RULES.md\` is made from them and compared on every \`npm test\`.

| folder | mutants | killed | timeouts | survived | no coverage | score |
| --- | --: | --: | --: | --: | --: | --: |`;

const ROW = /^\| (`[^`]+`|\*\*[^*]+\*\*) \| (\d+) \| (\d+) \| (\d+) \| (\d+) \| (\d+) \|/;

/** The rows of folders that a report already has. */
export const talliesIn = (text: string): readonly Tally[] =>
  text.split('\n').flatMap((line) => {
    const [, name = '', ...numbers] = ROW.exec(line) ?? [];
    if (!name.startsWith('`')) return [];
    const [mutants = 0, killed = 0, timeouts = 0, survived = 0, noCoverage = 0] =
      numbers.map(Number);
    return [{ folder: name.slice(1, -1), mutants, killed, timeouts, survived, noCoverage }];
  });

/** The old rows with the new ones in their place, in the order of their folders. */
export const merged = (old: readonly Tally[], fresh: readonly Tally[]): readonly Tally[] => {
  const rows = new Map([...old, ...fresh].map((tally) => [tally.folder, tally]));
  return [...rows.values()].toSorted((one, other) => (one.folder < other.folder ? -1 : 1));
};

const sumOf = (folder: string, tallies: readonly Tally[]): Tally => {
  const sum = (field: 'mutants' | 'killed' | 'timeouts' | 'survived' | 'noCoverage'): number =>
    tallies.reduce((total, tally) => total + tally[field], 0);
  return {
    folder,
    mutants: sum('mutants'),
    killed: sum('killed'),
    timeouts: sum('timeouts'),
    survived: sum('survived'),
    noCoverage: sum('noCoverage'),
  };
};

/** Rounded down, so that nothing reads as reached that is not. */
const percent = (score: number | null): string =>
  score === null ? '-' : `${(Math.floor(score * 10) / 10).toFixed(1)} %`;

const row = (name: string, tally: Tally): string => {
  const { mutants, killed, timeouts, survived, noCoverage } = tally;
  const cells = [name, mutants, killed, timeouts, survived, noCoverage, percent(scoreOf(tally))];
  return `| ${cells.join(' | ')} |`;
};

/** A room and the folders below it, as one line. */
const roomOf = ({ folder }: Tally): string => folder.split('/').slice(0, 2).join('/');

const totals = (tallies: readonly Tally[]): readonly string[] =>
  [...new Set(tallies.map(roomOf))].map((room) =>
    row(
      `**${room}, these together**`,
      sumOf(
        room,
        tallies.filter((tally) => roomOf(tally) === room),
      ),
    ),
  );

/** The reasons of one file below its name: a table of them would be too wide to read. */
const seen = (lookedAt: readonly LookedAt[]): readonly string[] =>
  [...new Set(lookedAt.map(({ file }) => file))].flatMap((name) => [
    `- \`${name}\``,
    ...lookedAt
      .filter(({ file }) => file === name)
      .map(({ mutants, reason }) => `  - ${mutants.length}: ${reason}`),
  ]);

const section = (lookedAt: readonly LookedAt[]): readonly string[] =>
  lookedAt.length === 0
    ? []
    : [
        '',
        '## Survivors that change nothing',
        '',
        'Somebody has looked at each of these: no input tells it from the code. They count as',
        'survivors all the same. How many, and why; `tools/mutation/looked-at.json` has each.',
        '',
        ...seen(lookedAt),
      ];

/** Names of folders without a row, one a line, so that a sum is not taken for the whole. */
const missing = (tallies: readonly Tally[], folders: readonly string[]): readonly string[] => {
  const left = folders.filter((name) => !tallies.some(({ folder }) => folder === name));
  return left.length === 0
    ? []
    : ['', 'Not measured yet:', '', ...left.map((name) => `- \`${name}\``)];
};

/** `folders` are all that are to be measured. */
export const reportText = (
  tallies: readonly Tally[],
  lookedAt: readonly LookedAt[],
  folders: readonly string[] = [],
): string =>
  `${[
    HEAD,
    ...tallies.map((tally) => row(`\`${tally.folder}\``, tally)),
    ...totals(tallies),
    ...missing(tallies, folders),
    ...section(lookedAt),
  ].join('\n')}\n`;

/** Survivors that nobody has looked at yet, one a line, for the terminal. */
export const notLookedAt = (
  survivors: readonly Survivor[],
  lookedAt: readonly LookedAt[],
): readonly string[] =>
  survivors
    .filter((survivor) => !isLookedAt(survivor, lookedAt))
    .map(({ file, line, code, becomes }) => `${file}:${line} ${code} => ${becomes}`);
