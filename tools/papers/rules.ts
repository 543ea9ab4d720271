/** RULES.md: each safety rule, where its limit comes from, and the tests that hold it. */
import { type CitedCode, citedCodes } from '../tidy/cited-codes.ts';
import { readSources } from '../tidy/sources.ts';
import { declaredEntries, type Entry, textOf } from './entries.ts';
import { CannotMake, HEAD, type Paper, page } from './paper.ts';

/** A rule has one level, or the levels it may take, gravest last. */
const levelOf = ({ code, file, fields }: Entry): string => {
  const { level, levels } = fields;
  if (typeof level === 'string') return level;
  if (Array.isArray(levels)) return levels.join(' or ');
  if (Array.isArray(level)) return level.join(' or ');
  throw new CannotMake([`${file}: ${code} has no level`]);
};

const testsOf = (code: string, cited: readonly CitedCode[]): readonly string[] => {
  const lines = cited
    .filter((citation) => citation.code === code)
    .map(({ title, file }) => `  - \`${file}\`: ${title.replace(/^\[[^\]]*\]\s*/, '')}`);
  if (lines.length === 0) throw new CannotMake([`no test names ${code}`]);
  return [...new Set(lines)];
};

const make = async (): Promise<string> => {
  const entries = await declaredEntries('rule-codes.ts');
  const cited = citedCodes(readSources());
  const sections = entries.flatMap((entry) => [
    '',
    `### ${entry.code} ${textOf(entry, 'title')}`,
    '',
    `- Level: ${levelOf(entry)}`,
    `- Source: ${textOf(entry, 'source')}`,
    `- Says: ${textOf(entry, 'says')}`,
    '- Tests:',
    ...testsOf(entry.code, cited),
  ]);
  return page([
    HEAD,
    '',
    '# Rules',
    '',
    `The ${entries.length} rules a house and a show are held against. A limit is only as good as`,
    'its source. Local codes, the rules of the house and licensed or competent persons come first.',
    ...sections,
  ]);
};

export const rules: Paper = { path: 'RULES.md', make };
