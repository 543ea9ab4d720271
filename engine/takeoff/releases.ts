import type { Reckoned } from '#findings';
import { blocked, reckoned } from '#findings';
import type { HouseRules, Known } from '#house';
import { unreachable } from '#outcome';
import type { CarriedItem, Item } from '#show';
import { carriedItem } from './carried-item.ts';
import type { Figure, ToleranceByBasis } from './figure.ts';
import { figureOf } from './figure.ts';
import type { ItemTakeoff } from './take-off.ts';

export type ReleaseState = {
  /** What has left so far, in the words of each release; empty before the first. */
  readonly released: readonly string[];
  readonly carried: CarriedItem;
};

/**
 * An item before anything leaves it in view, and after each release in the order of the list.
 * A release that fails leaves the state before it, so each of these must be within limits. Any
 * other order of leaving has a mass between the first and the last of them.
 *
 *     m_k  = m − Σ r          Δm_k = Δm + Σ Δr
 *
 *     r  kg  mass of a release; it comes off the cloth first, then off what is in the hem
 *
 * Source  the-job.md C24
 * Holds   Σ r <= m, up to rounding
 * Omits   the time that it takes to leave, and its momentum (either way)
 * Check   VAL-TKO-14
 */
export const withReleases = (
  item: Item,
  takeoff: ItemTakeoff,
  { toleranceByBasis }: Pick<HouseRules, 'toleranceByBasis'>,
): Reckoned<readonly ReleaseState[]> => {
  const whole = carriedItem(item, takeoff);
  const figures = item.releases.map((release, index) =>
    releaseFigure(release.mass, `releases[${index}].mass`, toleranceByBasis),
  );
  const needs = [...(whole.known ? [] : whole.needs), ...figures.flatMap((figure) => figure.needs)];
  if (!whole.known || needs.length > 0) return blocked(needs);
  const states: ReleaseState[] = [{ released: [], carried: whole.value }];
  for (const [index, figure] of figures.entries()) {
    const before = states[index]?.carried ?? whole.value;
    const after = reduced(before, figure);
    if (!after.known) return after;
    const released = item.releases.slice(0, index + 1).map(({ how }) => how);
    states.push({ released, carried: after.value });
  }
  return reckoned(states);
};

const releaseFigure = (
  mass: Known<number>,
  field: string,
  toleranceByBasis: ToleranceByBasis,
): Figure =>
  figureOf(
    mass,
    { symbol: 'r', meaning: 'mass that leaves in view', kind: 'mass', field },
    toleranceByBasis,
  );

const reduced = (carried: CarriedItem, release: Figure): Reckoned<CarriedItem> => {
  const releasedKg = release.value ?? 0;
  switch (carried.kind) {
    case 'clear':
    case 'tipping':
    case 'standing': {
      const { uncertainty, ...rest } = carried;
      const leftKg = leftOf(carried.mass, releasedKg);
      if (leftKg === null) return blocked([tooMuch(release, carried.mass)]);
      return reckoned({ ...rest, mass: leftKg, ...widened(uncertainty, release) });
    }
    case 'cloth': {
      const { uncertainty, ...rest } = carried;
      const leftKg = leftOf(carried.mass + carried.hem, releasedKg);
      if (leftKg === null) return blocked([tooMuch(release, carried.mass + carried.hem)]);
      const hem = Math.min(carried.hem, leftKg);
      return reckoned({ ...rest, mass: leftKg - hem, hem, ...widened(uncertainty, release) });
    }
    case 'loom':
    case 'deckLoom':
      return blocked([`another kind of item (${release.field}): nothing leaves a loom in view`]);
    default:
      return unreachable(carried);
  }
};

/** Null where more leaves than hangs. Sums in feet and pounds leave a trace of rounding. */
const leftOf = (massKg: number, releasedKg: number): number | null => {
  const leftKg = massKg - releasedKg;
  if (Math.abs(leftKg) <= 1e-9 * massKg) return 0;
  return leftKg < 0 ? null : leftKg;
};

const tooMuch = ({ meaning, field, value }: Figure, massKg: number): string =>
  `${meaning} (${field}): found ${value} kg, and no more than ${massKg} kg hangs`;

/** What left was itself not known exactly, and what is left even less so. */
const widened = (
  uncertaintyKg: number | undefined,
  { tolerance }: Figure,
): { readonly uncertainty?: number } =>
  uncertaintyKg === undefined || tolerance === null
    ? {}
    : { uncertainty: uncertaintyKg + tolerance };
