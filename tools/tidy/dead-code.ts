/** The dead-code finder: files, exports and packages that nobody uses. */
import { runNode, TOOLS } from '../running/program.ts';
import type { Fault } from './fault.ts';

type Named = { readonly name: string; readonly line?: number };
type Issue = { readonly file: string } & Readonly<Record<string, unknown>>;

const WORDS: Readonly<Record<string, readonly [what: string, wanted: string]>> = {
  files: ['is used by nobody', 'delete it, or open it from somewhere'],
  exports: ['is exported and used by nobody', 'keep it in its file, or delete it'],
  types: ['is exported and used by nobody', 'keep it in its file, or delete it'],
  duplicates: ['is exported twice', 'one name'],
  dependencies: ['is installed and used by nobody', 'npm uninstall it'],
  devDependencies: ['is installed and used by nobody', 'npm uninstall it'],
  unlisted: ['is used and not listed in package.json', 'npm install it'],
  unresolved: ['does not resolve', 'a module that exists'],
  binaries: ['is called and not listed in package.json', 'npm install it'],
};

export const faultsOfIssue = (issue: Issue): readonly Fault[] =>
  Object.entries(WORDS).flatMap(([kind, [what, wanted]]) =>
    (issue[kind] as readonly Named[]).map(({ name, line = 1 }) => ({
      file: issue.file,
      line,
      what: `${name} ${what}`,
      wanted,
    })),
  );

export const deadCode = async (): Promise<readonly Fault[]> => {
  const { code, output } = await runNode([TOOLS.knip, '--reporter', 'json'], { shown: false });
  const start = output.indexOf('{"issues"');
  if (start === -1) {
    return code === 0
      ? []
      : [{ file: 'knip.json', line: 1, what: output.trim(), wanted: 'a finder that runs' }];
  }
  const report = JSON.parse(output.slice(start)) as { readonly issues: readonly Issue[] };
  return report.issues.flatMap(faultsOfIssue);
};
