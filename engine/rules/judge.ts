import type { Assessment } from '#assessment';
import type { Finding } from '#findings';
import type { House } from '#house';
import type { Show } from '#show';
import type { HouseState } from '#state';
import { HOUSE_RULES, SET_RULES } from './in-force.ts';
import { type HouseCase, isLack, type Lack, type Opinion } from './rule.ts';
import { raiseUnknown, unknownOf } from './unknown/unknown-values.ts';

/**
 * Every finding on one house, what hangs in it and how it stands: first those of the whole house,
 * then set by set in rail order. It judges the numbers of the assessment and works out no physics
 * of its own; what was not known is a finding too (UNK-001), so that no limit passes in silence.
 *
 * `nowMs` is the moment to judge the age of records at, in milliseconds since 1970; without it no
 * record is out of date.
 *
 * Source  the-job.md section 3; the source of each rule stands beside it in RULES
 */
export const judge = (
  house: House,
  show: Show | null,
  state: HouseState | null,
  assessment: Assessment,
  options: { readonly nowMs?: number } = {},
): readonly Finding[] => {
  const the: HouseCase = { house, show, state, assessment, nowMs: options.nowMs ?? null };
  const ofHouse = HOUSE_RULES.flatMap((rule) => rule(the));
  const ofSets = assessment.sets.map((set) => ({
    id: set.lineSet.id,
    missing: unknownOf(set),
    opinions: SET_RULES.flatMap((rule) => rule({ ...the, set })),
  }));
  const all = [...ofHouse, ...ofSets.flatMap(({ opinions }) => opinions)];
  return [
    ...findingsIn(ofHouse),
    ...raiseUnknown(all.filter(isLack).filter(({ of }) => of === 'house')),
    ...ofSets.flatMap(({ id, missing, opinions }) => [
      ...findingsIn(opinions),
      ...raiseUnknown([...missing, ...lacksOfSet(opinions)], id),
    ]),
  ];
};

const isFinding = (opinion: Opinion): opinion is Finding => !isLack(opinion);

const findingsIn = (opinions: readonly Opinion[]): readonly Finding[] => opinions.filter(isFinding);

const lacksOfSet = (opinions: readonly Opinion[]): readonly Lack[] =>
  opinions.filter(isLack).filter(({ of }) => of === 'set');
