import { type Assessment, assess, type SetAssessment } from '#assessment';
import { blocked, type Finding, type Reckoned, reckoned } from '#findings';
import { type LineSet, lockHoldOf } from '#house';
import { judge } from '#rules';
import { bayFacts, brickFacts, trimFacts } from './facts.ts';
import { pastBatten } from './on-batten.ts';
import { newlyUnknown, raisedBy } from './raised.ts';
import { isOverlap, spaceAt } from './space.ts';
import { showWith, showWithout } from './trial.ts';
import type {
  Against,
  BayFacts,
  BrickFacts,
  Candidate,
  LookAt,
  NotKnown,
  PlacingAsked,
  Space,
  TrimFact,
} from './types.ts';

/** Said here by name of the trim or of the limit, so that a finding would say it twice. */
const SAID_HERE: ReadonlySet<string> = new Set(['TRV-003', 'BAL-001', 'BAL-006']);

/** What the rules say of the house while the piece hangs nowhere: made once for all candidates. */
export const findingsWithout = (asked: PlacingAsked): readonly Finding[] =>
  judgedWith(asked, showWithout(asked)).findings;

/**
 * The plan is judged without the record: a pull test or a stack that was recorded there belongs to
 * what hung there then.
 */
const judgedWith = ({ house, nowMs }: PlacingAsked, show: PlacingAsked['show']) => {
  const assessment = assess(house, show, null);
  const findings = judge(house, show, null, assessment, nowMs === undefined ? {} : { nowMs });
  return { assessment, findings };
};

/**
 * The piece put on one set of the show, worked through the engine and judged by every rule.
 *
 * Source  the-job.md C69, C73, C14, C6, C7, C41, by the engine that works a show
 * Omits   what the record has on the set; heights of neighbours; order of work (see `workOn`)
 * Check   examples/kestlemere/which-set.test.ts
 */
export const candidateOn = (
  asked: PlacingAsked,
  lineSet: LineSet,
  before: readonly Finding[],
): Candidate => {
  const show = showWith(asked, lineSet.id);
  const { assessment, findings } = judgedWith(asked, show);
  const set = setIn(assessment, lineSet.id);
  const work: Work = {
    asked,
    set,
    raised: raisedBy(lineSet.id, before, findings),
    unknown: newlyUnknown(lineSet.id, before, findings),
    offM: offOf(asked, lineSet),
    trims: trimFacts(set),
    space: spaceAt(asked.house, show, lineSet, asked.piece.hang.halfDepth),
    bricks: brickFacts(set, asked.house),
    bay: bayFacts(asked.house, assessment, lineSet.id),
  };
  const { offM, trims, space, bricks, bay } = work;
  return {
    set: lineSet.id,
    suspension: lineSet.suspension,
    offM,
    trims,
    space,
    bricks,
    bay,
    against: againstOf(work),
    lookAt: lookAtOf(work),
    notKnown: notKnownOf(work),
  };
};

type Work = {
  readonly asked: PlacingAsked;
  readonly set: SetAssessment;
  readonly raised: readonly Finding[];
  readonly unknown: readonly string[];
  readonly offM: Reckoned<number> | null;
  readonly trims: Reckoned<readonly TrimFact[]>;
  readonly space: Space;
  readonly bricks: Reckoned<BrickFacts> | null;
  readonly bay: BayFacts | null;
};

const setIn = ({ sets }: Assessment, id: string): SetAssessment => {
  const set = sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`defect: set ${id} is not in its own house`);
  return set;
};

const offOf = ({ wanted }: PlacingAsked, { id, y }: LineSet): Work['offM'] => {
  if (wanted === null) return null;
  return y.known ? reckoned(y.value - wanted.y) : blocked([`place of set ${id}`]);
};

/** Two places typed in feet and in inches differ in the last binary place. */
const SAME_PLACE_M = 1e-6;

const againstOf = (work: Work): readonly Against[] => [
  ...againstPlace(work),
  ...pastBatten(work.asked.piece.hang.items, work.set.lineSet.batten).map(
    (past): Against => ({ is: 'pastBatten', ...past }),
  ),
  ...againstTrims(work),
  ...againstSpace(work),
  ...againstBricks(work),
  ...work.raised
    .filter(({ level, code }) => level === 'stop' && !SAID_HERE.has(code))
    .map((finding): Against => ({ is: 'stop', finding })),
];

const againstPlace = ({ asked: { wanted }, offM }: Work): readonly Against[] => {
  const within = wanted?.within ?? null;
  if (within === null || offM === null || !offM.known) return [];
  return Math.abs(offM.value) > within + SAME_PLACE_M
    ? [{ is: 'place', offM: offM.value, withinM: within }]
    : [];
};

const againstTrims = ({ trims }: Work): readonly Against[] =>
  trims.known
    ? trims.value.flatMap(({ name, heightM, isOnTravel }): readonly Against[] =>
        isOnTravel ? [] : [{ is: 'trim', name, heightM }],
      )
    : [];

const againstSpace = ({ space }: Work): readonly Against[] =>
  (['downstage', 'upstage'] as const).flatMap((side): readonly Against[] => {
    const gap = space[side];
    return gap.is === 'gap' && isOverlap(gap.gapM)
      ? [{ is: 'overlap', side, set: gap.set, byM: -gap.gapM }]
      : [];
  });

/** That the search for a mix gave up is not that there is none. */
const noMixIn = ({ set: { choice } }: Work): string | null =>
  choice.known && 'infeasible' in choice.value && choice.value.infeasible.code !== 'notFound'
    ? choice.value.infeasible.code
    : null;

const againstBricks = (work: Work): readonly Against[] => {
  const limit = noMixIn(work);
  if (limit !== null) return [{ is: 'noMix', limit }];
  if (work.bricks === null || !work.bricks.known) return [];
  const { worstN, lockN } = work.bricks.value;
  return lockN.known && worstN > lockN.value
    ? [{ is: 'pastLock', worstN, lockN: lockN.value }]
    : [];
};

const lookAtOf = ({ asked, set, raised }: Work): readonly LookAt[] => {
  const { id } = set.lineSet;
  const kept = asked.show.keptEmpty[id];
  const stillOn = (asked.state?.sets[id]?.items ?? [])
    .filter(({ phase }) => phase !== 'away' && phase !== 'beside')
    .map(({ item }) => item);
  return [
    ...(kept === undefined ? [] : [{ is: 'keptEmpty', reason: kept } as const]),
    ...(stillOn.length === 0 ? [] : [{ is: 'stillOn', items: stillOn } as const]),
    ...raised
      .filter(({ level, code }) => level === 'caution' && !SAID_HERE.has(code))
      .map((finding): LookAt => ({ is: 'caution', finding })),
  ];
};

const needsOf = (answer: Reckoned<unknown>): readonly string[] =>
  answer.known ? [] : answer.needs;

const notKnownOf = (work: Work): readonly NotKnown[] => {
  const { asked, set, unknown, offM, trims, space, bay } = work;
  const { lineSet } = set;
  const sides = [space.downstage, space.upstage];
  const all: readonly NotKnown[] = [
    { of: 'place', needs: offM === null ? [] : needsOf(offM) },
    { of: 'trims', needs: trimNeeds(work, trims) },
    { of: 'space', needs: sides.flatMap((gap) => (gap.is === 'unknown' ? gap.needs : [])) },
    { of: 'bricks', needs: brickNeeds(work) },
    { of: 'lock', needs: lockNeeds(work) },
    { of: 'bay', needs: bay === null ? [] : bayNeeds(bay) },
    { of: 'service', needs: serviceNeeds(asked, lineSet.id) },
    { of: 'rules', needs: unknown.filter((need) => !isOurDoing(work, need)) },
  ];
  // Where no mix exists, what rests on one is not unknown: it is ruled out.
  const isMissed = (need: string): boolean =>
    noMixIn(work) === null || !need.includes('a mix of bricks: ');
  return all
    .map(({ of, needs }) => ({ of, needs: [...new Set(needs)].filter(isMissed) }))
    .filter(({ needs }) => needs.length > 0);
};

/** Places that were taken away, since the batten ends before them, are no value to look for. */
const isOurDoing = ({ asked, set }: Work, need: string): boolean =>
  pastBatten(asked.piece.hang.items, set.lineSet.batten).length > 0 && need.includes('(placement)');

/** A piece without a trim would pass every travel. */
const trimNeeds = ({ asked }: Work, trims: Work['trims']): readonly string[] => {
  const { hang } = asked.piece;
  if (hang.trims.length === 0 && hang.deadHungAt === null) return ['a trim'];
  return needsOf(trims);
};

const brickNeeds = (work: Work): readonly string[] => {
  if (work.bricks === null || noMixIn(work) !== null) return [];
  if (!work.bricks.known) return work.bricks.needs;
  return needsOf(work.bricks.value.reachedFrom);
};

const lockNeeds = ({ asked, set, bricks }: Work): readonly string[] =>
  bricks === null || lockHoldOf(set.lineSet, asked.house.rules).known
    ? []
    : ['what the rope lock holds'];

const bayNeeds = (bay: BayFacts): readonly string[] =>
  [bay.vertical, bay.verticalLimit, bay.horizontal, bay.horizontalLimit].flatMap(needsOf);

const serviceNeeds = ({ state }: PlacingAsked, set: string): readonly string[] =>
  (state?.sets[set]?.service ?? null) === null ? [`whether set ${set} is in service`] : [];
