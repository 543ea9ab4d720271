import type { Assessment, SetAssessment } from '#assessment';
import type { Finding } from '#findings';
import type { House } from '#house';
import type { Show } from '#show';
import type { HouseState } from '#state';
import { AMONG_RULES, HOUSE_RULES, PLAN_RULES, STANDING_RULES } from './in-force.ts';
import { type HouseCase, isLack, type Lack, type Opinion, type SetCase } from './rule.ts';
import { raiseUnknown, unknownOf } from './unknown/unknown-values.ts';

/**
 * Every finding on one house, what hangs in it and how it stands: first those of the whole house,
 * then set by set in rail order. It judges the numbers of the assessment and works out no physics
 * of its own; what was not known is a finding too (UNK-001), so that no limit passes in silence.
 *
 * `nowMs` is the moment to judge the age of records at, in milliseconds since 1970; without it no
 * record is out of date. With a `memory` of its own, a set that is the same object as in an earlier
 * call, in the same house, with the same cues, record and moment, is not judged again by itself.
 *
 * Source  the-job.md section 3; the source of each rule stands beside it in RULES
 */
export const judge = (
  house: House,
  show: Show | null,
  state: HouseState | null,
  assessment: Assessment,
  options: { readonly nowMs?: number; readonly memory?: JudgeMemory } = {},
): readonly Finding[] => {
  const { nowMs = null, memory = new WeakMap() } = options;
  const the: HouseCase = { house, show, state, assessment, nowMs };
  const ofHouse = HOUSE_RULES.flatMap((rule) => rule(the));
  const ofSets = assessment.sets.map((set) => verdictOn(set, the, memory));
  return [
    ...findingsIn(ofHouse),
    ...raiseUnknown([...lacksIn(ofHouse, 'house'), ...ofSets.flatMap((each) => each.ofHouse)]),
    ...ofSets.flatMap(({ findings }) => findings),
  ];
};

/** What `judge` says of one set of the house, for who asks of no other. */
export const judgeSet = (
  set: SetAssessment,
  of: Omit<HouseCase, 'assessment'>,
  memory: JudgeMemory,
): readonly Finding[] => verdictOn(set, of, memory).findings;

/** What a set comes to, and what it misses of the house. */
type Verdict = { readonly findings: readonly Finding[]; readonly ofHouse: readonly Lack[] };

/** What was said of a set by itself, and in which case. */
type Said = {
  readonly of: SetCase;
  readonly standing: readonly Opinion[];
  readonly plan: readonly Opinion[];
  readonly missing: readonly Lack[];
  /** Where the other sets of the show add nothing. */
  readonly alone: Verdict;
};

export type JudgeMemory = WeakMap<SetAssessment, Said>;

const verdictOn = (
  set: SetAssessment,
  { house, show, state, nowMs }: Omit<HouseCase, 'assessment'>,
  memory: JudgeMemory,
): Verdict => {
  const of: SetCase = { house, show, state, set, nowMs };
  const before = memory.get(set);
  const said = before !== undefined && isSameCase(before.of, of) ? before : saidOf(of);
  memory.set(set, said);
  const among = AMONG_RULES.flatMap((rule) => rule({ ...of, show }));
  return among.length === 0 ? said.alone : verdictOf(said, among);
};

const saidOf = (of: SetCase): Said => {
  const said = {
    of,
    standing: STANDING_RULES.flatMap((rule) => rule(of)),
    plan: PLAN_RULES.flatMap((rule) => rule(of)),
    missing: unknownOf(of.set),
  };
  return { ...said, alone: verdictOf(said, []) };
};

const verdictOf = (
  { of, standing, plan, missing }: Omit<Said, 'alone'>,
  among: readonly Opinion[],
): Verdict => {
  const opinions = [...standing, ...among, ...plan];
  const lacks = [...missing, ...lacksIn(opinions, 'set')];
  return {
    findings: [...findingsIn(opinions), ...raiseUnknown(lacks, of.set.lineSet.id)],
    ofHouse: lacksIn(opinions, 'house'),
  };
};

const isSameCase = (one: SetCase, other: SetCase): boolean =>
  one.house === other.house &&
  one.show?.cues === other.show?.cues &&
  one.state === other.state &&
  one.nowMs === other.nowMs;

const isFinding = (opinion: Opinion): opinion is Finding => !isLack(opinion);

const findingsIn = (opinions: readonly Opinion[]): readonly Finding[] => opinions.filter(isFinding);

const lacksIn = (opinions: readonly Opinion[], what: Lack['of']): readonly Lack[] =>
  opinions.filter(isLack).filter(({ of }) => of === what);
