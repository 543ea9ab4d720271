/**
 * The floors and doors, judged by the dependency checker. It also counts what was read: a checker
 * that cannot read TypeScript finds nothing, and must not pass for it.
 */
import { join } from 'node:path';
import { ROOT, runNode, TOOLS } from '../running/program.ts';
import type { Fault, Source } from './fault.ts';
import { isCode } from './sources.ts';

/** The parts of the checker's JSON that we read. */
type Report = {
  readonly modules: readonly { readonly source: string }[];
  readonly summary: { readonly violations: readonly Violation[] };
};

type Violation = {
  readonly from: string;
  readonly to: string;
  readonly unresolvedTo?: string;
  readonly rule: { readonly name: string };
  readonly comment?: string;
  readonly cycle?: readonly { readonly name: string }[];
};

export type Tree = { readonly root: string; readonly sources: readonly Source[] };

const isCruised = ({ path }: Source): boolean => isCode(path) && path.includes('/');

const topFolders = (sources: readonly Source[]): readonly string[] => [
  ...new Set(sources.map(({ path }) => path.slice(0, path.indexOf('/')))),
];

/** The line that opens the other module. The checker knows the module, not the line. */
const lineOfImport = (text: string, specifier: string): number => {
  const index = text.split('\n').findIndex((line) => /['"]/.test(line) && line.includes(specifier));
  return index + 1 || 1;
};

const faultOf = (violation: Violation, sources: readonly Source[]): Fault => {
  const { from, to, cycle, rule } = violation;
  const text = sources.find(({ path }) => path === from)?.text ?? '';
  const way = cycle === undefined ? to : cycle.map(({ name }) => name).join(' -> ');
  return {
    file: from,
    line: lineOfImport(text, violation.unresolvedTo ?? to),
    what: `opens ${way} (${rule.name})`,
    wanted: violation.comment ?? 'another way in',
  };
};

const unread = (report: Report, cruised: readonly Source[]): readonly Fault[] => {
  const read = new Set(report.modules.map(({ source }) => source));
  return cruised
    .filter(({ path }) => !read.has(path))
    .map(({ path }) => ({
      file: path,
      line: 1,
      what: 'was not read by the dependency checker',
      wanted: 'a checker that reads every source file',
    }));
};

const noReport = (output: string): readonly Fault[] => [
  { file: '.dependency-cruiser.mjs', line: 1, what: output.trim(), wanted: 'a checker that runs' },
];

export const dependencies = async ({ root, sources }: Tree): Promise<readonly Fault[]> => {
  const cruised = sources.filter(isCruised);
  const settings = join(ROOT, '.dependency-cruiser.mjs');
  const args = ['--config', settings, '--output-type', 'json', ...topFolders(cruised)];
  const { output } = await runNode([join(ROOT, TOOLS.depcruise), ...args], {
    shown: false,
    cwd: root,
  });
  if (!output.startsWith('{')) return noReport(output);
  const report = JSON.parse(output) as Report;
  if (report.modules.length === 0) return noReport('the dependency checker read no module');
  return [
    ...report.summary.violations.map((violation) => faultOf(violation, sources)),
    ...unread(report, cruised),
  ];
};
