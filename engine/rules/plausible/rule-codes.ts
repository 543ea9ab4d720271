import type { RuleDeclaration } from '../rule.ts';

export const PLAUSIBLE_RULES = [
  {
    code: 'UNI-001',
    title: 'Mass outside the band for its kind',
    levels: ['caution'],
    source: 'bands of plausible-bands.ts, each with its reason',
    cites: 'C87',
    says:
      '{what}: {measured}. Usual is {low} to {high} ({why}). Ask: is it the right unit? ' +
      'Nothing was converted.',
  },
  {
    code: 'UNI-002',
    title: 'Two masses in the ratio of pound and kilogram',
    levels: ['caution'],
    source: 'exact ratio of pound and kilogram',
    cites: 'C87',
    says:
      '{what} is {measured} and {other} is {against}: one is 2.2046 times the other. Ask: was ' +
      'one typed in the wrong unit? Nothing was converted.',
  },
] as const satisfies readonly RuleDeclaration[];
