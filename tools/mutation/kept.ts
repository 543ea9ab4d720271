/**
 * What was measured of each file, kept so that a folder can be measured in parts. A result counts
 * as long as the file has the text that was mutated.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { BUILD, ROOT } from '../running/program.ts';
import type { ToolReport } from './result.ts';

const fileOf = (source: string): string => join(BUILD, 'mutation', 'kept', `${source}.json`);

/** The tool leaves out a file in which there is nothing to change; that is a result as well. */
export const keep = (report: ToolReport, measured: readonly string[]): void => {
  for (const source of measured) {
    const nothing = { source: readFileSync(join(ROOT, source), 'utf8'), mutants: [] };
    mkdirSync(dirname(fileOf(source)), { recursive: true });
    const part: ToolReport = { files: { [source]: report.files[source] ?? nothing } };
    writeFileSync(fileOf(source), JSON.stringify(part));
  }
};

const keptOf = (source: string): ToolReport | null => {
  if (!existsSync(fileOf(source))) return null;
  const kept = JSON.parse(readFileSync(fileOf(source), 'utf8')) as ToolReport;
  const now = readFileSync(join(ROOT, source), 'utf8');
  return kept.files[source]?.source === now ? kept : null;
};

/** All of `sources` as one report, or those of them that were not measured as they are now. */
export const keptReport = (
  sources: readonly string[],
): { readonly report: ToolReport } | { readonly missing: readonly string[] } => {
  const kept = sources.map((source) => ({ source, report: keptOf(source) }));
  const missing = kept.filter(({ report }) => report === null).map(({ source }) => source);
  if (missing.length > 0) return { missing };
  return { report: { files: Object.assign({}, ...kept.map(({ report }) => report?.files)) } };
};
