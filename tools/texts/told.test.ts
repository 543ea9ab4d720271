/** What a tongue lists of the engine is what the engine says, and the examples say nothing else. */
import { describe, expect, it } from 'vitest';
import type { SetAssessment } from '#assessment';
import { structureWorkingsOf, workingsOf } from '#assessment';
import { fetchTongue } from '#languages';
import { type OrderSource, showOrders, whyNotPrinted } from '#orders';
import { type Dimension, parseQuantity } from '#quantities';
import { judge } from '#rules';
import { told } from '#texts';
import { type Example, openExample } from '../../examples/open-example.ts';
import { isProgram, readSources } from '../tidy/sources.ts';

const german = await fetchTongue('de');
if (german === undefined) throw new Error('German is there');
const VOICE = { words: 'US', tongue: german } as const;
const TOLD = german.told ?? [];

/** The code as it is said: sums of texts are one text, and a line break is a space. */
const SAID = readSources()
  .filter(({ path }) => isProgram(path) && !/^(tools|languages|texts)\//.test(path))
  .map(({ text }) => text.replaceAll(/['`] \+\s*['`]/g, ''))
  .join('\n')
  .replaceAll(/\s*\n\s*/g, ' ')
  .replaceAll("\\'", "'");

/** From the left, as much at a time as stands in the code. */
const piecesOf = (words: readonly string[]): number => {
  if (words.length === 0) return 0;
  for (let taken = words.length; taken > 0; taken -= 1) {
    if (SAID.includes(words.slice(0, taken).join(' '))) return 1 + piecesOf(words.slice(taken));
  }
  return Number.POSITIVE_INFINITY;
};

/** Some texts the engine puts together of two or three of its own. */
const MOST_PIECES = 3;

const isSaid = (part: string): boolean => {
  const words = part.trim().split(/\s+/);
  return piecesOf(words) <= Math.min(MOST_PIECES, Math.ceil(words.length / 2));
};

/** Put together word by word: each is asked of the engine itself below, or is a parser's word. */
const WORD_BY_WORD =
  /\{units\}|measures an?|^(invalid|unexpected) | expected$|is flying$|^\w+, \{source\}$/;

describe('a text of the engine in a tongue', () => {
  it('stands in the code, or its parts do', () => {
    const gone = TOLD.filter(
      (text) =>
        !WORD_BY_WORD.test(text) &&
        !text.split(/\{\w+\}/).every((part) => part.trim() === '' || isSaid(part)),
    );
    expect(gone).toEqual([]);
  });

  it('that the code has not is found', () => {
    expect(isSaid('height of the low stop of the moon')).toBe(false);
    expect(isSaid('height of the low stop')).toBe(true);
  });
});

type Source = (example: Example, orders: OrderSource) => readonly string[];

const needsOf = (set: SetAssessment): readonly string[] =>
  [set.bare, set.plan, set.hung, set.choice, set.structure].flatMap((each) =>
    each.known ? [] : each.needs,
  );

const allWorkings = ({ house, assessment }: Example) =>
  assessment.sets.flatMap((set) => {
    const { plant, states, whole } = structureWorkingsOf(set, house);
    const ofTakeoff = set.takeoffs.flatMap(({ working, hemWorking, centreWorking }) =>
      [working, hemWorking, centreWorking].filter((each) => each !== null),
    );
    return [
      ...workingsOf(set, house),
      ...ofTakeoff,
      ...plant,
      ...whole,
      ...states.flatMap(({ workings }) => workings),
    ];
  });

const SOURCES: Readonly<Record<string, Source>> = {
  needs: ({ assessment }) => assessment.sets.flatMap(needsOf),
  titles: (example) => allWorkings(example).map(({ title }) => title),
  'sources of formulas': (example) => allWorkings(example).map(({ source }) => source),
  'what is left out': (example) => allWorkings(example).flatMap(({ omits }) => omits ?? []),
  'meanings of results': (example) => allWorkings(example).map(({ result }) => result.meaning),
  'unknowns of findings': ({ house, show, state, assessment }) =>
    judge(house, show, state, assessment, { nowMs: 0 }).flatMap(({ facts }) =>
      ['what', 'blocks', 'why', 'when'].flatMap((name) => {
        const fact = facts[name];
        return typeof fact === 'string' ? [fact] : [];
      }),
    ),
  'why no order is printed': (_, orders) =>
    orders.jobs.flatMap(({ set, kind }) => {
      const asked = orders.of(set, kind);
      if ('refusals' in asked)
        return asked.refusals.flatMap(({ found, accepted }) => [found, accepted]);
      return whyNotPrinted(asked.order) ?? [];
    }),
};

/** Letters of a sign alone are the same in every language. */
const hasWords = (text: string): boolean => /[a-z]{3}/.test(text);

/** Sources and reasons that people wrote in the documents are theirs. */
const valuesIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(valuesIn) : [];
};

describe.each(['kestlemere', 'skelderwick'] as const)(
  'all that %s makes the engine say',
  (name) => {
    const example = openExample(name);
    const { house, show, state } = example;
    if (show === null) throw new Error('the example has a show');
    const orders = showOrders(house, show, state);
    it.each(Object.entries(SOURCES))('%s are there in German', (_, source) => {
      const theirs = new Set(valuesIn({ house, show, state }));
      const all = source(example, orders).filter((text) => !theirs.has(text));
      const texts = [...new Set(all)].filter(hasWords);
      expect(texts.filter((text) => told(VOICE, text) === text)).toEqual([]);
    });
  },
);

describe('a measure that is not taken', () => {
  const DIMENSIONS: readonly Dimension[] = [
    'length',
    'mass',
    'force',
    'massPerLength',
    'massPerArea',
    'energy',
    'duration',
    'speed',
    'pressure',
    'forcePerLength',
    'moment',
    'area',
    'sectionModulus',
    'secondMoment',
    'angle',
  ];
  const TYPED = ['', '3', '3 moons', '3 ft', '3 lb', '1,234 ft', '1.2.3 ft', '-3 ft', '6 3/2 in'];
  const refused = DIMENSIONS.flatMap((dimension) =>
    TYPED.flatMap((text) => {
      const read = parseQuantity(dimension, text);
      return read.ok ? [] : [read.error];
    }),
  );

  it('says in German what is accepted', () => {
    expect(refused.length).toBeGreaterThan(DIMENSIONS.length);
    const texts = [...new Set(refused.map(({ accepted }) => accepted))];
    expect(texts.filter((text) => told(VOICE, text) === text)).toEqual([]);
  });

  it('says in German what was found where it says more than what was typed', () => {
    const texts = [...new Set(refused.map(({ found }) => found))];
    const ours = texts.filter((text) => !TYPED.includes(text));
    expect(ours.length).toBeGreaterThan(0);
    expect(ours.filter((text) => told(VOICE, text) === text)).toEqual([]);
  });
});
