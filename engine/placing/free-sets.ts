import type { LineSet } from '#house';
import type { PlacingAsked, Withheld } from './types.ts';

/**
 * Which sets are free for the piece, in rail order, and why each other one is not. A lock-out tag
 * withholds a set whatever else is asked for. A set that nobody has recorded is free as far as the
 * show says; that its service is unknown is said of the candidate.
 */
export const freeSets = (
  asked: PlacingAsked,
): { readonly free: readonly LineSet[]; readonly withheld: readonly Withheld[] } => {
  const withheld: Withheld[] = [];
  const free: LineSet[] = [];
  for (const lineSet of asked.house.lineSets) {
    const why = whyNot(asked, lineSet.id);
    if (why === null) free.push(lineSet);
    else withheld.push(why);
  }
  return { free, withheld };
};

const whyNot = ({ show, state, keptEmptyToo }: PlacingAsked, set: string): Withheld | null => {
  const hang = show.hangs.find((each) => each.set === set);
  if (hang !== undefined) return { set, is: 'used', by: hang.name };
  const recorded = state?.sets[set];
  const service = recorded?.service ?? null;
  const tag = recorded?.tag ?? null;
  if (service === 'lockedOut' || tag !== null) {
    return { set, is: 'lockedOut', tag: tag === null ? null : `${tag.number}, ${tag.reason}` };
  }
  if (service === 'paused' || service === 'deadHung') return { set, is: 'notInService', service };
  const reason = show.keptEmpty[set];
  return reason === undefined || keptEmptyToo ? null : { set, is: 'keptEmpty', reason };
};
