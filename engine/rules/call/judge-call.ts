/** Whether a step of a call may have leave: every rule that it breaks, and whose word it needs. */
import type { HouseNow, PostId, SetNow, Standing } from '#state';
import { heldNow, judgeStep } from './by-order.ts';
import {
  type CallAsked,
  type CallCase,
  type CallFacts,
  type CallRule,
  isSameZone,
} from './call-case.ts';
import { type CallFinding, callFinding } from './finding.ts';
import { floorTakes, keptClear, planStands } from './house-rules.ts';
import { atTheirPost, secondFor, twoForMove } from './posts.ts';
import {
  collarSecured,
  countedInTime,
  goesAlong,
  knownPlant,
  knownToStand,
  lockedAndRinged,
  noPerson,
  noStop,
  noTag,
  notesSettled,
  oneStepAtATime,
  registered,
} from './set-rules.ts';
import {
  nobodyUnder,
  notAlone,
  notClearOf,
  nothingBeside,
  oneGallery,
  oneMove,
  zonesKept,
} from './zone-rules.ts';

/** What ends everything comes first. */
const CALL_RULES_IN_FORCE: readonly CallRule[] = [
  noPerson,
  noStop,
  knownToStand,
  oneStepAtATime,
  noTag,
  lockedAndRinged,
  collarSecured,
  notesSettled,
  atTheirPost,
  zonesKept,
  nobodyUnder,
  oneGallery,
  nothingBeside,
  oneMove,
  twoForMove,
  notAlone,
  goesAlong,
  registered,
  keptClear,
  floorTakes,
  planStands,
  countedInTime,
  knownPlant,
];

export type CallJudgement = {
  readonly findings: readonly CallFinding[];
  /** How the set stands after the step; null where that cannot be worked out. */
  readonly expects: Standing | null;
  /** Post whose word is needed besides; null where one person is enough. */
  readonly secondOf: PostId | null;
};

/**
 * Judges one step from how the house stands now. No finding means that no rule here is broken.
 *
 * Source  the-job.md 4.4 (V1 to V15) and 6.3; what a step does to one set, by `verifyOrder`
 * Omits   the plan area of a drop zone, which no document has; the band of two coupled sets, which
 *         do not move by these steps; loads on beams and wells between two steps (V14 in part)
 */
export const judgeCall = (now: HouseNow, asked: CallAsked, facts: CallFacts): CallJudgement => {
  const set = now.sets[asked.set];
  if (set === undefined) {
    const why = 'the house of this call has no such set';
    const finding = callFinding('CAL-004', { at: { set: asked.set }, facts: { why } });
    return { findings: [finding], expects: null, secondOf: null };
  }
  const the: CallCase = { now, asked, set, facts };
  const findings = CALL_RULES_IN_FORCE.flatMap((rule) => rule(the));
  const { standing } = set;
  const { physics } = facts;
  const secondOf = secondFor(now, asked, contactsOf(the));
  if (standing === null || physics === null) {
    return { findings, expects: closedOf(the), secondOf };
  }
  const step = judgeStep(asked.set, set, standing, { step: asked.step, physics });
  return { findings: [...findings, ...step.findings], expects: step.expects, secondOf };
};

/** Heights at which what hangs meets the deck. */
const contactsOf = ({ set, facts: { physics } }: CallCase): readonly number[] =>
  Object.entries(set.standing?.items ?? {}).flatMap(([id, phase]) => {
    const contactM = phase === 'flying' ? (physics?.contactM(id) ?? null) : null;
    return contactM === null ? [] : [contactM];
  });

/** A zone can be closed on a set of which nothing else is worked out. */
const closedOf = ({ asked: { step }, set }: CallCase): Standing | null => {
  const at = set.standing ?? set.last;
  if (step.act !== 'close' || at === null) return null;
  const others = at.closed.filter((each) => !isSameZone(each, step.zone));
  return { ...at, closed: [...others, step.zone] };
};

export type SetJudged = {
  readonly held: SetNow['held'];
  /** What it breaks; null where it breaks nothing. */
  readonly rule: string | null;
};

/**
 * How the rules judge a set as it stands, whatever is asked: held, or a rule that it breaks. Of a
 * set without an arbor nothing is reckoned, and it is not known to be held.
 */
export const judgeNow = (now: HouseNow, id: string, facts: CallFacts): SetJudged => {
  const set = now.sets[id];
  if (set === undefined || set.standing === null) return { held: 'unknown', rule: 'CAL-004' };
  if (facts.physics === null) return { held: 'unknown', rule: 'CAL-025' };
  const { leave } = set;
  if (leave === null && (set.lock === 'open' || set.ring === 'off')) {
    return { held: 'unheld', rule: 'CAL-006' };
  }
  if (leave === null && set.collar === 'loose') return { held: 'unheld', rule: 'CAL-007' };
  if (leave?.step.act === 'add' || leave?.step.act === 'remove') {
    const { gallery } = leave.step;
    const drop = { zone: 'drop', gallery } as const;
    const zone = now.zones.find((each) => each.set === id && isSameZone(each.zone, drop));
    if (zone === undefined || now.posts[zone.post] === undefined) {
      return { held: 'unheld', rule: 'CAL-008' };
    }
    if (notClearOf(now, facts.house, gallery).length > 0)
      return { held: 'unheld', rule: 'CAL-009' };
  }
  return heldNow(set, set.standing, facts.physics);
};
