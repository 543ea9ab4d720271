/** The linter and formatter, its report read into our one line a fault. */
import { join, relative } from 'node:path';
import { ROOT, runNode, TOOLS } from '../running/program.ts';
import type { Fault } from './fault.ts';

const REPORTED = /^::(?:error|warning) title=([^,]+),file=(.+?),line=(\d+),[^:]*::(.*)$/;

const WANTED: Readonly<Record<string, string>> = {
  format: 'run "npm run tidy -- --fix"',
  'assist/source/organizeImports': 'run "npm run tidy -- --fix"',
};

export const faultOfReport = (line: string): Fault | undefined => {
  const found = REPORTED.exec(line);
  if (found === null) return undefined;
  const [, rule = '', path = '', number = '1', message = ''] = found;
  const what =
    rule === 'format' ? 'is not formatted' : message.replace(/(%0A)+/g, ' ').replace(/\.$/, '');
  return {
    file: relative(ROOT, join(ROOT, relative(ROOT, path))),
    line: Number(number),
    what,
    wanted: WANTED[rule] ?? `see ${rule}`,
  };
};

const ARGS = ['check', '--reporter=github', '--diagnostic-level=warn', '--max-diagnostics=none'];

export const biome = async (fix: boolean): Promise<readonly Fault[]> => {
  if (fix) await runNode([TOOLS.biome, 'check', '--write'], { shown: false });
  const { code, output } = await runNode([TOOLS.biome, ...ARGS], { shown: false });
  const faults = output.split('\n').flatMap((line) => faultOfReport(line) ?? []);
  if (code !== 0 && faults.length === 0) {
    return [{ file: 'biome.json', line: 1, what: output.trim(), wanted: 'a linter that runs' }];
  }
  return faults;
};
