/**
 * How a set was found in a call, as it is entered. Nothing is taken for granted: what nobody has
 * entered is asked for by name, and nothing is sent until all of it is there.
 */
import type { Payload } from '#events';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { type DecimalMark, metres, newtons } from '#quantities';
import type { HouseNow, ItemPhase, Restraint, SetNow, StackRun, Standing } from '#state';
import { message } from '#texts';
import { readMeasure, readOrNull } from './measures.ts';

export type RestraintDraft = {
  readonly kind: Restraint['kind'] | '';
  readonly resists: Restraint['resists'] | '';
  readonly rating: string;
  readonly from: string;
  readonly to: string;
  readonly owner: string;
  readonly tag: string;
};

export type FindDraft = {
  readonly height: string;
  /** Null where nobody has counted; bare is an empty list. */
  readonly stack: readonly StackRun[] | null;
  /** Of each piece that may hang there; one that is absent was not looked at. */
  readonly items: Readonly<Record<string, ItemPhase>>;
  readonly lock: 'closed' | 'open' | '';
  readonly ring: 'on' | 'off' | '';
  readonly collar: 'secured' | 'loose' | '';
  readonly service: 'in' | 'deadHung' | '';
  /** Null where nobody has looked; that nothing else holds it is an empty list. */
  readonly restraints: readonly RestraintDraft[] | null;
  readonly basis: 'counted' | 'weighed' | 'pullTested' | '';
  readonly second: string;
  /** Notes of paper that this find answers. */
  readonly settles: readonly number[];
};

export const NOTHING_FOUND: FindDraft = {
  height: '',
  stack: null,
  items: {},
  lock: '',
  ring: '',
  collar: '',
  service: '',
  restraints: null,
  basis: '',
  second: '',
  settles: [],
};

export const BLANK_RESTRAINT: RestraintDraft = {
  kind: '',
  resists: '',
  rating: '',
  from: '',
  to: '',
  owner: '',
  tag: '',
};

export type FindAsked = {
  /** Pieces that may hang there, by the show and by what was known last. */
  readonly items: readonly string[];
  readonly set: SetNow;
  readonly mark: DecimalMark;
};

const isRestraintWhole = ({ kind, resists }: RestraintDraft): boolean =>
  kind !== '' && resists !== '';

/** What is still to be entered, in sentences to be said. */
export const missingOf = (draft: FindDraft, { items, set }: FindAsked): readonly string[] => [
  ...(draft.height.trim() === '' ? [message('the height of the batten')] : []),
  ...(draft.stack === null ? [message('what is on the arbor, counted')] : []),
  ...(items.some((item) => draft.items[item] === undefined) ? [message('what hangs')] : []),
  ...(draft.lock === '' ? [message('the rope lock')] : []),
  ...(draft.ring === '' ? [message('the ring of the lock')] : []),
  ...(draft.collar === '' ? [message('the collar')] : []),
  ...(draft.service === '' && set.tag === null ? [message('what carries it')] : []),
  ...(draft.restraints === null ? [message('what else holds it')] : []),
  ...((draft.restraints ?? []).every(isRestraintWhole)
    ? []
    : [message('what each restraint is, and which way it holds')]),
  ...(draft.basis === '' ? [message('how it is known')] : []),
];

/** A tag stays until it is given back: a find takes none away. */
const serviceOf = ({ service }: FindDraft, { tag, last }: SetNow): Standing['service'] | null => {
  if (tag === null) return service === '' ? null : service;
  return last?.service === 'paused' ? 'paused' : 'lockedOut';
};

const restraintOf = (draft: RestraintDraft, mark: DecimalMark): Result<Restraint, Refusal> => {
  const { kind, resists, owner, tag } = draft;
  const rating = readOrNull('force', draft.rating, { mark, path: message('rating') });
  const from = readOrNull('length', draft.from, { mark, path: message('holds from') });
  const to = readOrNull('length', draft.to, { mark, path: message('holds to') });
  if (!rating.ok) return rating;
  if (!from.ok) return from;
  if (!to.ok) return to;
  if (kind === '' || resists === '') throw new Error('defect: a restraint without kind or way');
  return ok({
    kind,
    resists,
    rating: rating.value === null ? null : newtons(rating.value),
    from: from.value === null ? null : metres(from.value),
    to: to.value === null ? null : metres(to.value),
    owner: owner.trim() === '' ? null : owner.trim(),
    tag: tag.trim() === '' ? null : tag.trim(),
  });
};

/** Zones of the set that are closed now: closing and opening them is their marshals' and stays. */
export const closedNow = ({ zones }: Pick<HouseNow, 'zones'>, set: string): Standing['closed'] =>
  zones.filter((each) => each.set === set).map(({ zone }) => zone);

export type Found = Omit<Payload<'set found'>, 'call' | 'post'>;

/** Whole, in SI; or what was not understood. Asked only where nothing is missing. */
export const foundOf = (
  draft: FindDraft,
  asked: FindAsked,
  closed: Standing['closed'],
): Result<Found, readonly Refusal[]> => {
  const { mark, set } = asked;
  const { stack, lock, ring, collar, basis } = draft;
  const service = serviceOf(draft, set);
  const isWhole = missingOf(draft, asked).length === 0;
  if (!isWhole || stack === null || service === null || basis === '') {
    throw new Error('defect: a find that is not whole');
  }
  if (lock === '' || ring === '' || collar === '') throw new Error('defect: not whole');
  const height = readMeasure('length', draft.height, { mark, path: message('height') });
  const restraints = (draft.restraints ?? []).map((each) => restraintOf(each, mark));
  const refusals = [height, ...restraints].flatMap((each) => (each.ok ? [] : [each.error]));
  if (!height.ok || refusals.length > 0) return fail(refusals);
  return ok({
    standing: {
      height: metres(height.value),
      stack: [...stack],
      items: Object.fromEntries(
        Object.entries(draft.items).filter(([, phase]) => phase !== 'away'),
      ),
      restraints: restraints.flatMap((each) => (each.ok ? [each.value] : [])),
      service,
      closed: [...closed],
    },
    lock,
    ring,
    collar,
    basis,
    second: draft.second.trim() === '' ? null : draft.second.trim(),
    settles: [...draft.settles],
  });
};
