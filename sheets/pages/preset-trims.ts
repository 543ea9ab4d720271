/** The height at which a set stands when the house opens, as the show has it. */
import type { SetAssessment } from '#assessment';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type { Show } from '#show';
import { message, phrase } from '#texts';
import { height } from '../words/say-set.ts';

/** A height that somebody wrote twice is the same one. */
const SAME_M = 0.001;
/** Half a foot: how far a height read off at the rail may be off. */
const READ_M = 0.15;

export type NamedHeight = { readonly name: string | null; readonly heightM: number };

/** Heights of the batten at the trims of the show, lowest first; on steel, that of the steel. */
export const trimHeights = ({ hang, plan }: SetAssessment): readonly NamedHeight[] => {
  if (hang === null) return [];
  if (hang.deadHungAt?.known === true) return [{ name: null, heightM: hang.deadHungAt.value }];
  const trims = plan.known
    ? plan.value.trims.map((each) => ({ name: each.trim.name, heightM: each.height }))
    : // Without a plan only a trim of the batten itself is a height of the batten.
      hang.trims.flatMap(({ name, height: at, reference }) =>
        at.known && reference === 'batten' ? [{ name, heightM: at.value }] : [],
      );
  return trims.toSorted((one, other) => one.heightM - other.heightM);
};

export type Preset =
  /** Where its first cue takes it from, or its only trim. */
  | { readonly is: 'at'; readonly at: NamedHeight; readonly cue: string | null }
  /** More than one trim and no cue: a person says which. */
  | { readonly is: 'oneOf'; readonly trims: readonly NamedHeight[] }
  | { readonly is: 'empty' }
  | { readonly is: 'notKnown' };

export const presetOf = (set: SetAssessment, show: Show | null): Preset => {
  if (set.hang === null) return { is: 'empty' };
  const trims = trimHeights(set);
  const cue = show?.cues.find((each) => each.set === set.lineSet.id);
  if (cue !== undefined) {
    const named = trims.find(({ heightM }) => Math.abs(heightM - cue.from) <= SAME_M);
    const at = { name: named?.name ?? null, heightM: cue.from };
    return { is: 'at', at, cue: cue.number };
  }
  const [only, ...more] = trims;
  if (only === undefined) return { is: 'notKnown' };
  return more.length === 0 ? { is: 'at', at: only, cue: null } : { is: 'oneOf', trims };
};

/** The names of trims are the show's own and are never turned. */
export const namedHeight = ({ name, heightM }: NamedHeight, house: House): string =>
  name === null ? height(heightM, house) : `${name} ${height(heightM, house)}`;

const NOT_SAID = message('not said');

export const presetWords = (preset: Preset, house: House): string => {
  switch (preset.is) {
    case 'at':
      return namedHeight(preset.at, house);
    case 'oneOf':
      return phrase(house, 'which one: {trims}', {
        trims: preset.trims.map((each) => namedHeight(each, house)).join(', '),
      });
    case 'empty':
      return phrase(house, 'empty');
    case 'notKnown':
      return phrase(house, NOT_SAID);
    default:
      return unreachable(preset);
  }
};

export const isAt = (nowM: number, wanted: readonly NamedHeight[]): boolean =>
  wanted.some(({ heightM }) => Math.abs(heightM - nowM) <= READ_M);
