import { measure } from '#findings';
import type { Lift } from '#house';
import { byKnown, lack } from '../known-values.ts';
import { isAbove } from '../limits.ts';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { term, workedOut } from '../show-working.ts';
import { worstBy } from '../worst.ts';
import {
  type LoadedLine,
  lineFacts,
  loadedLines,
  otherLines,
  toleranceFact,
} from './loaded-lines.ts';
import { timesWords } from './times-words.ts';

/**
 * LFT-005: what the ends and the sheaves leave of the strength of a line is as many times the
 * worst that it carries as the house asks for. Judged as forces, so that rounding hides nothing.
 */
export const designFactor = whenStructured((the) => {
  // What the lines are made of is missed for the house.
  const isMissed = isPlantUnknown(the.set.lineSet.lift);
  const needs = (isMissed ? [] : the.structure.states).flatMap(({ lines }) =>
    lines.flatMap(({ strength }) => (strength.known ? [] : strength.needs)),
  );
  const lacks = [...new Set(needs)].map((need) => lack(need, BLOCKS));
  const { lineDesignFactor } = the.house.rules;
  const found = byKnown(
    lineDesignFactor,
    'design factor of the lift lines',
    BLOCKS,
    (factor, source) => judgeBy(the, factor, source),
    'house',
  );
  return [...lacks, ...found];
});

const BLOCKS = 'design factor of the lines';

const isPlantUnknown = ({ cable, loftBlock, headBlock }: Lift): boolean =>
  !cable.breakingStrength.known ||
  !cable.diameter.known ||
  cable.termination === null ||
  !loftBlock.sheaveDiameter.known ||
  !headBlock.sheaveDiameter.known;

type StrongLine = LoadedLine & {
  readonly breakingN: number;
  readonly termination: { readonly value: number; readonly source: string };
  readonly bending: { readonly value: number; readonly source: string };
  readonly leftN: number;
  readonly carriedN: number;
};

const strongLines = (the: StructuredCase): readonly StrongLine[] =>
  loadedLines(the).flatMap((loaded) => {
    const { strength } = loaded.line;
    if (!strength.known) return [];
    const { breaking: breakingN, termination, bending, factor } = strength.value;
    if (factor === null) return [];
    const leftN = breakingN * termination.value * bending.value;
    // The factor is of the largest tension along the run, which may lie beyond the loft block.
    const carriedN = leftN / factor + loaded.toleranceN;
    return [{ ...loaded, breakingN, termination, bending, leftN, carriedN }];
  });

const judgeBy = (the: StructuredCase, factor: number, source: string) => {
  const below = strongLines(the).filter(({ carriedN, leftN }) => isAbove(carriedN * factor, leftN));
  const worst = worstBy(below, ({ carriedN, leftN }) => carriedN / leftN);
  if (worst === undefined) return [];
  const { breakingN, termination, bending, leftN, carriedN } = worst;
  const limit = measure(leftN / factor, 'force');
  return [
    raise('LFT-005', {
      at: { set: the.set.lineSet.id, heightM: worst.state.height },
      measured: measure(carriedN, 'force'),
      limit,
      limitSource: source,
      facts: {
        ...lineFacts(worst),
        tolerance: toleranceFact(worst),
        left: measure(leftN, 'force'),
        times: timesWords(leftN / carriedN),
        catalogue: timesWords(breakingN / carriedN),
        asked: timesWords(factor),
        others: otherLines(below, worst),
      },
      working: workedOut(
        `what line ${worst.number} may carry by its strength`,
        'F · e · b / n',
        [
          term('F', 'breaking strength in the catalogue', breakingN, 'force'),
          term('e', 'left by its ends', termination.value, 'ratio', termination.source),
          term('b', 'left by its sheaves', bending.value, 'ratio', bending.source),
          term('n', 'design factor of the house', factor, 'count', source),
        ],
        term('T', 'may carry', leftN / factor, 'force'),
        {
          source: 'definition of a design factor; efficiencies multiplied, which errs low',
          limit: { value: measure(carriedN, 'force'), source: 'worst that it carries' },
          omits: 'wear, rust and broken wires, which leave less',
        },
      ),
    }),
  ];
};
