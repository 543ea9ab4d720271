/**
 * A finding in full as plain lines, for the tests that read every word and number of one. Numbers
 * are SI, to nine figures: what differs later is the last binary places only.
 */
import type { Finding, Measure, Term, Working } from '#findings';
import type { RuleCode } from './declared.ts';
import { found, type Scene } from './example-assessment.ts';

const COLUMNS = 86;

const numberOf = (value: number): string => String(Number(value.toPrecision(9)));

const measured = (value: Measure | string | null): string => {
  if (value === null) return 'none';
  return typeof value === 'string' ? value : `${numberOf(value.value)} ${value.kind}`;
};

const placeOf = (at: Finding['at']): string =>
  Object.entries(at)
    .map(([name, value]) => `${name} ${typeof value === 'number' ? numberOf(value) : value}`)
    .join(', ') || 'the house';

const termLine = ({ symbol, meaning, value, source }: Term): string =>
  `  ${symbol} = ${measured(value)}: ${meaning}${source === undefined ? '' : ` (${source})`}`;

const workingLines = (working: Working): readonly string[] => [
  `${working.title}: ${working.formula}`,
  ...working.terms.map(termLine),
  termLine(working.result),
  ...(working.limit === null
    ? []
    : [`  limit ${measured(working.limit.value)} (${working.limit.source})`]),
  `  by ${working.source}`,
  ...(working.omits === undefined ? [] : [`  leaves out ${working.omits}`]),
];

/** Breaks a long line between words, and sets the rest in. */
const broken = (line: string): readonly string[] => {
  if (line.length <= COLUMNS) return [line];
  const at = line.lastIndexOf(' ', COLUMNS);
  return at < 5 ? [line] : [line.slice(0, at), ...broken(`    ${line.slice(at + 1)}`)];
};

export const inFull = (finding: Finding): string => {
  const { code, level, at, measured: found, limit, limitSource, facts, working } = finding;
  return [
    `${code} ${level} at ${placeOf(at)}`,
    `measured ${measured(found)}, limit ${measured(limit)} (${limitSource})`,
    ...Object.entries(facts).map(([name, value]) => `- ${name}: ${measured(value)}`),
    ...(working === null ? [] : workingLines(working)),
  ]
    .flatMap(broken)
    .join('\n');
};

/** What one rule finds in a scene, each finding in full. */
export const full = (code: RuleCode, scene: Scene = {}): string =>
  found(code, scene).map(inFull).join('\n\n');

/** What a scene leaves unknown, and after a bar what that blocks: one line a finding. */
export const missed = (scene: Scene): string =>
  found('UNK-001', scene)
    .map(({ facts }) => `${facts['what']} | ${facts['blocks']}`)
    .join('\n');
