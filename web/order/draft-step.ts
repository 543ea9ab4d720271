/** A step as a person fills it in, before it is one. */

import { fail, ok, type Result, unreachable } from '#outcome';
import { metres, newtons, parseQuantity } from '#quantities';
import { RESTRAINT_KINDS, type Restraint, type Standing, type Step } from '#state';
import { ENGLISH, phrase, type Voice } from '#texts';

export const DRAFT_ACTS = [
  'close',
  'reopen',
  'remove',
  'add',
  'fly',
  'attach',
  'release',
  'rest',
  'takeUp',
  'rig',
  'unrig',
] as const;
export type DraftAct = (typeof DRAFT_ACTS)[number];

export const ATTACH_AS = ['flying', 'attachedResting', 'attachedSlack'] as const;
export const RESISTS = ['out', 'in', 'both'] as const;

/** Every field as it stands in its box; which of them count depends on the act. */
export type Draft = {
  readonly act: DraftAct;
  /** `run`, or the id of a gallery. */
  readonly zone: string;
  readonly count: string;
  readonly kind: string;
  readonly gallery: string;
  readonly to: string;
  readonly item: string;
  readonly as: (typeof ATTACH_AS)[number];
  readonly restraint: Restraint['kind'];
  readonly resists: (typeof RESISTS)[number];
  readonly rating: string;
  readonly rigFrom: string;
  readonly rigTo: string;
  /** Place among the restraints that are rigged there. */
  readonly rigged: string;
};

export type DraftField = keyof Draft;

export type DraftFault = {
  readonly field: DraftField;
  readonly found: string;
  readonly accepted: string;
  readonly code: string | null;
};

type Answer<T> = Result<T, DraftFault>;

const RUN = 'run';

/** What there is to choose from: first things first, so that a draft is never empty. */
export type Choices = {
  readonly galleries: readonly string[];
  readonly kinds: readonly string[];
  readonly items: readonly string[];
};

export const firstDraft = ({ galleries, kinds, items }: Choices): Draft => ({
  act: 'close',
  zone: RUN,
  count: '1',
  kind: kinds[0] ?? '',
  gallery: galleries[0] ?? '',
  to: '',
  item: items[0] ?? '',
  as: 'flying',
  restraint: RESTRAINT_KINDS[0],
  resists: 'out',
  rating: '',
  rigFrom: '',
  rigTo: '',
  rigged: '0',
});

const measured = (
  dimension: 'length' | 'force',
  field: DraftField,
  text: string,
  { tongue }: Voice,
): Answer<number> => {
  const read = parseQuantity(dimension, text, { decimalMark: tongue?.decimalMark ?? '.' });
  if (read.ok) return read;
  const { found, accepted, code } = read.error;
  return fail({ field, found, accepted, code });
};

/** More than any arbor takes is a slip of the hand. */
const COUNT_MOST = 200;

const counted = (text: string, voice: Voice): Answer<number> => {
  const count = Number(text.trim());
  return /^\d+$/.test(text.trim()) && count >= 1 && count <= COUNT_MOST
    ? ok(count)
    : fail({
        field: 'count',
        found: text.trim() === '' ? phrase(voice, 'nothing') : text,
        accepted: phrase(voice, 'a whole number from 1 to {most}', { most: COUNT_MOST }),
        code: null,
      });
};

/** The step of a draft where the set stands like this, or the field that is not understood. */
export const readDraft = (
  draft: Draft,
  standing: Pick<Standing, 'restraints'>,
  voice: Voice = ENGLISH,
): Answer<Step> => {
  const { act } = draft;
  switch (act) {
    case 'close':
    case 'reopen':
      return ok({
        act,
        zone: draft.zone === RUN ? { zone: 'run' } : { zone: 'drop', gallery: draft.zone },
      });
    case 'add':
    case 'remove': {
      const count = counted(draft.count, voice);
      const { kind, gallery } = draft;
      return count.ok ? ok({ act, kind, count: count.value, gallery }) : count;
    }
    case 'fly': {
      const to = measured('length', 'to', draft.to, voice);
      return to.ok ? ok({ act, to: metres(to.value) }) : to;
    }
    case 'attach':
      return ok({ act, item: draft.item, as: draft.as });
    case 'release':
    case 'rest':
    case 'takeUp':
      return ok({ act, item: draft.item });
    case 'rig':
      return readRig(draft, voice);
    case 'unrig': {
      const restraint = standing.restraints[Number(draft.rigged)];
      const accepted = phrase(voice, 'a restraint that is rigged before this step; none is');
      return restraint === undefined
        ? fail({ field: 'rigged', found: phrase(voice, 'none'), accepted, code: null })
        : ok({ act, restraint });
    }
    default:
      return unreachable(act);
  }
};

const readRig = (draft: Draft, voice: Voice): Answer<Step> => {
  const rating = measured('force', 'rating', draft.rating, voice);
  if (!rating.ok) return rating;
  const from = measured('length', 'rigFrom', draft.rigFrom, voice);
  if (!from.ok) return from;
  const to = measured('length', 'rigTo', draft.rigTo, voice);
  if (!to.ok) return to;
  const ends = [from.value, to.value].toSorted((one, other) => one - other);
  const [low = 0, high = 0] = ends;
  return ok({
    act: 'rig',
    restraint: {
      kind: draft.restraint,
      resists: draft.resists,
      rating: newtons(rating.value),
      from: metres(low),
      to: metres(high),
      // Nobody has rigged it yet: the judge says what it lacks.
      owner: null,
      tag: null,
    },
  });
};
