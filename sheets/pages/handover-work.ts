/** What goes on at the moment of a handover: stops, sets that nothing holds, work under way. */
import type { House } from '#house';
import { ruleOf } from '#rules';
import type { Restraint, StackRun, Standing } from '#state';
import { phrase, phraseCount } from '#texts';
import type { SheetContext } from '../context.ts';
import type { Block, Notice, Words } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { postWords } from '../words/post-words.ts';
import { sayMoment } from '../words/say-moment.ts';
import { height } from '../words/say-set.ts';
import { platesWords, restraintName } from '../words/say-standing.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import { type Doubt, personName, type SetOnRecord } from './handover-record.ts';

const momentOf = (ms: number, house: House): string => sayMoment(new Date(ms).toISOString(), house);

export const stopNotices = (context: SheetContext): readonly Notice[] =>
  (context.now?.stops ?? []).map(({ set, post, by, words, atMs }) => {
    const { house } = context;
    const who = personName(by, context) ?? (post === null ? null : postWords(post, house));
    const names = { at: momentOf(atMs, house), who: who ?? phrase(house, 'not named') };
    return {
      kind: 'notice',
      degree: 'caution',
      heading:
        set === null
          ? phrase(house, 'STOP NOT LIFTED: EVERYTHING')
          : phrase(house, 'STOP NOT LIFTED: SET {set}', { set }),
      words: [
        phrase(house, 'Called at {at} by {who}. ', names),
        ...(words === '' ? [] : [strong(`${words} `)]),
        phrase(house, 'No leave is given until it is lifted by two people.'),
      ],
    };
  });

const ruleWords = (rule: string | null, house: House): string => {
  if (rule === null) return '';
  const declared = ruleOf(rule);
  return declared === undefined
    ? phrase(house, 'It breaks {rule}. ', { rule })
    : phrase(house, 'It breaks {rule}: {title}. ', { rule, title: phrase(house, declared.title) });
};

export const unheldNotices = (sets: readonly SetOnRecord[], house: House): readonly Notice[] =>
  sets
    .filter(({ held, standing }) => held === 'unheld' && standing !== null)
    .map(({ set, rule, standing }) => ({
      kind: 'notice',
      degree: 'danger',
      heading: phrase(house, 'NOT HELD: SET {set}', { set: set.lineSet.id }),
      words: [
        ruleWords(rule, house),
        ...(standing === null ? [] : [`${standingWords(standing, house)} `]),
        strong(phrase(house, 'Keep clear of it. Only what makes it held is to be done on it.')),
      ],
    }));

const RUNS = (stack: readonly StackRun[], house: House): string => platesWords({ stack }, house);

const restraintsWords = (restraints: readonly Restraint[], house: House): string =>
  restraints.length === 0
    ? ''
    : `, ${restraints.map((each) => restraintName(each, house)).join(', ')}`;

/** `batten at 23'-0", 12 plates: 3 old cast of pipe weight; 9 full, bull line`. */
export const standingWords = (standing: Standing, house: House): string =>
  phrase(house, 'Batten at {at}, {plates}{restraints}.', {
    at: height(standing.height, house),
    plates: RUNS(standing.stack, house),
    restraints: restraintsWords(standing.restraints, house),
  });

export const unknownNotice = (sets: readonly SetOnRecord[], house: House): readonly Notice[] => {
  const unknown = sets.filter(({ standing }) => standing === null);
  if (unknown.length === 0) return [];
  return [
    {
      kind: 'notice',
      degree: 'caution',
      heading: phraseCount(
        house,
        unknown.length,
        ['NOT KNOWN: SET {sets}', 'NOT KNOWN: SETS {sets}'],
        {
          sets: unknown.map(({ set }) => set.lineSet.id).join(', '),
        },
      ),
      words: [
        ...unknown.flatMap(
          ({ set, doubts, last }): Words => [
            strong(phrase(house, 'Set {set}: ', { set: set.lineSet.id })),
            `${doubts.map((doubt) => doubtWords(doubt, house)).join('; ')}. `,
            ...(last === null
              ? []
              : [
                  phrase(house, 'Last known: {standing} ', {
                    standing: standingWords(last, house),
                  }),
                ]),
          ],
        ),
        phrase(house, 'Measure, count, or make it held; nothing else.'),
      ],
    },
  ];
};

/** What the program says is turned as its other words are; what a person said is theirs. */
const doubtWords = ({ words, isOurs }: Doubt, house: House): string =>
  isOurs || house.tongue !== undefined ? inHouseWords(words, house) : words;

/** Leave that was given or asked for, and zones that are closed at this moment. */
export const workBlocks = (
  { now, house }: SheetContext,
  sets: readonly SetOnRecord[],
): readonly Block[] => {
  const work = sets.flatMap(({ set, live }): readonly Words[] => {
    const under = live?.leave ?? live?.asked ?? null;
    if (live === null || under === null) return [];
    const names = { post: postWords(under.post, house), at: momentOf(under.atMs, house) };
    return [
      [
        strong(phrase(house, 'Set {set}: ', { set: set.lineSet.id })),
        live.leave === null
          ? phrase(house, 'a step was asked for, {post}, {at}.', names)
          : phrase(house, 'a step has leave and is not reported, {post}, {at}.', names),
      ],
    ];
  });
  const zones = (now?.zones ?? []).map(
    ({ set, post, sinceMs }): Words => [
      strong(phrase(house, 'Set {set}: ', { set })),
      phrase(house, 'closed since {at}, kept by the {post}.', {
        at: momentOf(sinceMs, house),
        post: postWords(post, house),
      }),
    ],
  );
  return [
    ...(work.length === 0
      ? []
      : [{ kind: 'list' as const, heading: phrase(house, 'Work under way'), items: work }]),
    ...(zones.length === 0
      ? []
      : [{ kind: 'list' as const, heading: phrase(house, 'Zones that are closed'), items: zones }]),
  ];
};
