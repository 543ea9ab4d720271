import type { Candidate, LookAt } from './types.ts';
import type { CandidateWork, WorkNeeds } from './work.ts';

/** Nothing against it; nothing against it that is known; something against it. */
export const STANDINGS = ['possible', 'unknown', 'cannot'] as const;
export type Standing = (typeof STANDINGS)[number];

export type Ranked = {
  readonly candidate: Candidate;
  readonly standing: Standing;
  /** Null where nobody asked yet what the work needs. */
  readonly work: CandidateWork | null;
  /** What is to be looked at here and not on every other candidate too. */
  readonly ownLooks: readonly LookAt[];
};

/** How the places are put in order; `within`: all places that are near enough count as one. */
type RankBy = { readonly within: boolean };

/** By rail order, and best first; `docs/why/0014` argues each step of the order. */
export const rank = (
  candidates: readonly Candidate[],
  works: ReadonlyMap<string, CandidateWork>,
  { within }: RankBy,
): readonly Ranked[] => {
  const onAll = codesOnAll(candidates);
  const ranked = candidates.map((candidate): Ranked => {
    const work = works.get(candidate.set) ?? null;
    const ownLooks = candidate.lookAt.filter((look) => !onAll.has(lookKey(look)));
    return { candidate, standing: standingOf(candidate, work), work, ownLooks };
  });
  // The sort is stable: what nothing tells apart stays in rail order.
  return ranked.toSorted((one, other) => {
    const [first, second] = [keysOf(one, within), keysOf(other, within)];
    return first.reduce((sofar, key, index) => sofar || compare(key, second[index] ?? 0), 0);
  });
};

/** Two that are both endless differ by no number. */
const compare = (one: number, other: number): number => (one === other ? 0 : one < other ? -1 : 1);

/** Cautions that every candidate raises are of the piece and tell no set from another. */
export const codesOnAll = (candidates: readonly Candidate[]): ReadonlySet<string> => {
  const [first, ...rest] = candidates;
  if (first === undefined || rest.length === 0) return new Set();
  const keys = first.lookAt.map(lookKey);
  return new Set(
    keys.filter((key) => rest.every(({ lookAt }) => lookAt.some((look) => lookKey(look) === key))),
  );
};

/** Two sets kept empty have each a reason of their own. */
export const lookKey = (look: LookAt): string =>
  look.is === 'caution' ? look.finding.code : `${look.is} ${JSON.stringify(look)}`;

/** That no order of work exists is known only once it was asked for. */
const standingOf = ({ against, notKnown }: Candidate, work: CandidateWork | null): Standing => {
  const jobs = work === null ? [] : [work.load, work.strike];
  if (against.length > 0 || jobs.some(({ is }) => is === 'noOrder')) return 'cannot';
  return notKnown.length > 0 || jobs.some(({ is }) => is === 'notFound' || is === 'refused')
    ? 'unknown'
    : 'possible';
};

/** Each smaller the better. */
const keysOf = ({ candidate, standing, work, ownLooks }: Ranked, within: boolean) => {
  const { offM, against, notKnown, bricks } = candidate;
  const place = offM?.known ? Math.abs(offM.value) : offM === null ? 0 : Infinity;
  const looks = ownLooks.length;
  const restraint = restraintKey(work);
  const nearness = within ? [looks, restraint, place] : [place, looks, restraint];
  return [
    STANDINGS.indexOf(standing),
    standing === 'cannot' ? against.length : notKnown.length,
    ...nearness,
    -leastGapM(candidate),
    bricks?.known ? bricks.value.showMassKg : 0,
  ];
};

/** Between a restraint that is known to do and none that does: not asked, or not found. */
const NOT_ASKED = Number.MAX_VALUE;

const ratedOf = (needs: WorkNeeds): number => {
  if (needs.is === 'noOrder') return Infinity;
  return needs.is === 'order' ? (needs.restraint?.ratedN ?? 0) : NOT_ASKED;
};

const restraintKey = (work: CandidateWork | null): number =>
  work === null ? NOT_ASKED : Math.max(ratedOf(work.load), ratedOf(work.strike));

const leastGapM = ({ space }: Candidate): number =>
  Math.min(
    ...[space.downstage, space.upstage].map((gap) => {
      if (gap.is === 'open') return Infinity;
      return gap.is === 'gap' ? gap.gapM : -Infinity;
    }),
  );
