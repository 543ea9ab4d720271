/** Reads what the mutation tool wrote about one folder. */

/** The parts of the tool's JSON that we read. */
export type ToolReport = {
  readonly files: Readonly<
    Record<string, { readonly source: string; readonly mutants: readonly ToolMutant[] }>
  >;
};

type ToolMutant = {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: { readonly start: Spot; readonly end: Spot };
};

type Spot = { readonly line: number; readonly column: number };

export type Tally = {
  readonly folder: string;
  readonly mutants: number;
  readonly killed: number;
  readonly timeouts: number;
  readonly survived: number;
  readonly noCoverage: number;
};

/** A mutant that no test noticed: the code it stands for, and what it puts there. */
export type Survivor = {
  readonly file: string;
  readonly line: number;
  /** The line of the file on which it begins, and the text replaced, spaces drawn together. */
  readonly on: string;
  readonly code: string;
  readonly becomes: string;
};

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** Lines and columns count from one; the end is the first character that stays. */
const textBetween = (source: string, start: Spot, end: Spot): string => {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.at(-1) ?? '';
  const cut = [...lines.slice(0, -1), last.slice(0, end.column - 1)].join('\n');
  return cut.slice(start.column - 1);
};

const mutantsOf = (report: ToolReport): readonly ToolMutant[] =>
  Object.values(report.files).flatMap(({ mutants }) => mutants);

/** A mutant that does not even load was not tried, and counts neither way. */
export const tallyOf = (folder: string, report: ToolReport): Tally => {
  const count = (status: string): number =>
    mutantsOf(report).filter((mutant) => mutant.status === status).length;
  const [killed, timeouts] = [count('Killed'), count('Timeout')];
  const [survived, noCoverage] = [count('Survived'), count('NoCoverage')];
  const mutants = killed + timeouts + survived + noCoverage;
  return { folder, mutants, killed, timeouts, survived, noCoverage };
};

export const survivorsOf = (report: ToolReport): readonly Survivor[] =>
  Object.entries(report.files).flatMap(([file, { source, mutants }]) =>
    mutants
      .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
      .map(({ location: { start, end }, replacement = '' }) => ({
        file,
        line: start.line,
        on: oneLine(source.split('\n')[start.line - 1] ?? ''),
        code: oneLine(textBetween(source, start, end)),
        becomes: oneLine(replacement),
      })),
  );

/** Share of the mutants that a test noticed, in per cent; null where there is none. */
export const scoreOf = ({ mutants, killed, timeouts }: Tally): number | null =>
  mutants === 0 ? null : (100 * (killed + timeouts)) / mutants;
