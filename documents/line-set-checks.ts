/** What the fields of one line set say of one another, and what line sets say of the house. */
import type { Arbor, Batten, House, Known } from '#house';
import { purchaseOf } from '#house';
import { metresText } from './bounds.ts';
import type { Faults } from './faults.ts';
import type { WrittenHouse } from './house-shape.ts';
import { describe, pathTo } from './json.ts';
import { checkLift, checkPipe } from './lift-checks.ts';
import type { WrittenLineSet } from './line-set-shape.ts';
import type { Subject } from './line-set-subject.ts';
import type { PlacedSet } from './line-sets.ts';
import { whereWritten } from './line-sets.ts';
import { refuseUnknown } from './references.ts';

export const checkLineSets = (
  house: House,
  { placed, written }: { readonly placed: readonly PlacedSet[]; readonly written: WrittenHouse },
  faults: Faults,
): void => {
  for (const { set, index } of placed) {
    const at = (...keys: readonly string[]): string =>
      whereWritten(written.setTypes, written.lineSets[index], index, keys);
    const subject: Subject = { set, house, faults, at };
    checkTravel(subject);
    checkLines(subject);
    checkPipe(subject);
    checkLift(subject);
    checkArbor(subject);
    checkLock(subject, written.lineSets[index]);
    checkRail(subject);
  }
  checkPlaces(placed, faults);
};

const checkRail = ({ set, house, faults, at }: Subject): void => {
  if (faults.refusedAt('rails')) return;
  const known = house.rails.map(({ id }) => id);
  refuseUnknown('railUnknown', { found: set.railId ?? '', known, path: at('rail') }, faults);
};

const checkTravel = ({ set, faults, at }: Subject): void => {
  const { lowStop, highStop, workingHeight } = set;
  const low = numberOf(lowStop.height);
  const high = numberOf(highStop.height);
  if (low !== undefined && high !== undefined && low >= high) {
    faults.refuse('stopsReversed', at('lowStop', 'height'), {
      found: `${metresText(low)}, with the high stop at ${metresText(high)}`,
      accepted: 'a low stop below the high stop',
    });
    return;
  }
  const work = numberOf(workingHeight);
  if (work === undefined) return;
  if ((low !== undefined && work < low) || (high !== undefined && work > high)) {
    faults.refuse('workingOutside', at('workingHeight'), {
      found: metresText(work),
      accepted: `a height that the batten reaches, ${spanText(low, high)}`,
    });
  }
};

const spanText = (low: number | undefined, high: number | undefined): string =>
  [
    low === undefined ? '' : `from ${metresText(low)}`,
    high === undefined ? '' : `up to ${metresText(high)}`,
  ]
    .join(' ')
    .trim();

const numberOf = (value: Known<number>): number | undefined =>
  value.known ? value.value : undefined;

const checkLines = ({ set, faults, at }: Subject): void => {
  const { left, right } = set.batten;
  if (left.known && right.known && left.value >= right.value) {
    faults.refuse('battenReversed', at('batten', 'left'), {
      found: `${metresText(left.value)}, with the right end at ${metresText(right.value)}`,
      accepted: 'a left end (stage right, negative x) to the left of the right end',
    });
    return;
  }
  const path = at('lines');
  if (set.lineXs === null || !faults.sound(path)) return;
  for (const [index, x] of set.lineXs.entries()) {
    const before = set.lineXs[index - 1];
    if (before !== undefined && before >= x) {
      faults.refuse('linesDisordered', pathTo(path, index), {
        found: `${metresText(x)} after ${metresText(before)}`,
        accepted: 'places from stage right to stage left, each once',
      });
    }
    refuseOffBatten(x, set.batten, pathTo(path, index), faults);
  }
};

const refuseOffBatten = (
  x: number,
  { left, right }: Batten,
  path: string,
  faults: Faults,
): void => {
  const isOff = (left.known && x < left.value) || (right.known && x > right.value);
  if (!isOff) return;
  faults.refuse('lineOffBatten', path, {
    found: metresText(x),
    accepted: `a place on the batten, ${spanText(numberOf(left), numberOf(right))}`,
  });
};

const checkArbor = (subject: Subject): void => {
  const { set, faults, at } = subject;
  if (!faults.sound(at('suspension'), at('type'))) return;
  const isPurchase = purchaseOf(set.suspension) !== null;
  if (set.arbor === null) {
    if (!isPurchase) return;
    faults.refuse('arborMissing', at('arbor'), {
      found: `nothing, with suspension ${set.suspension}`,
      accepted: 'an arbor, of which each field may be unknown',
    });
  } else if (!isPurchase) {
    faults.refuse('arborUnwanted', at('arbor'), {
      found: `an arbor, with suspension ${set.suspension}`,
      accepted: 'no arbor, or suspension singlePurchase or doublePurchase',
    });
  } else {
    checkRod(set.arbor, subject);
    checkPipeWeight(set.arbor, subject);
  }
};

/** Only a set that is balanced has a lock to hold what is left of it. */
const checkLock = ({ set, faults, at }: Subject, written: WrittenLineSet | undefined): void => {
  const isRead = faults.sound(at('suspension'), at('type')) && !faults.refusedAt('setTypes');
  if (written?.lock === undefined || !isRead || purchaseOf(set.suspension) !== null) return;
  faults.refuse('lockUnwanted', at('lock'), {
    found: `a rope lock, with suspension ${set.suspension}`,
    accepted: 'no lock, or suspension singlePurchase or doublePurchase',
  });
};

const checkRod = ({ usableRod, length }: Arbor, { faults, at }: Subject): void => {
  if (!usableRod.known || !length.known || usableRod.value <= length.value) return;
  faults.refuse('rodTooLong', at('arbor', 'usableRod'), {
    found: `${metresText(usableRod.value)}, in an arbor of ${metresText(length.value)}`,
    accepted: 'at most the length of the arbor',
  });
};

const checkPipeWeight = ({ pipeWeight }: Arbor, { house, faults, at }: Subject): void => {
  const known = house.brickKinds.map(({ id }) => id);
  const path = at('arbor', 'pipeWeight');
  for (const [index, { kind }] of (pipeWeight ?? []).entries()) {
    const here = pathTo(pathTo(path, index), 'kind');
    if (faults.refusedAt('brickKinds')) continue;
    if (refuseUnknown('kindUnknown', { found: kind, known, path: here }, faults)) continue;
    const brick = house.brickKinds.findIndex(({ id }) => id === kind);
    const serves = house.brickKinds[brick]?.serves;
    if (!serves || serves.pipeWeight || !faults.sound(pathTo('brickKinds', brick))) continue;
    faults.refuse('notPipeWeight', here, {
      found: describe(kind),
      accepted: `a kind that serves pipeWeight, or "serves" of ${kind} changed`,
    });
  }
};

/** A millimetre: two battens nearer than that are one batten typed twice. */
const ONE_PLACE = 0.001;

/** Neighbours in rail order are enough, since sets at one distance stand beside one another. */
const checkPlaces = (placed: readonly PlacedSet[], faults: Faults): void => {
  for (const [order, { set, index }] of placed.entries()) {
    const before = placed[order - 1]?.set;
    if (!before?.y.known || !set.y.known || set.y.value - before.y.value > ONE_PLACE) continue;
    if (!overlaps(before.batten, set.batten)) continue;
    faults.refuse('onePlace', pathTo(pathTo('lineSets', index), 'y'), {
      found: `${metresText(set.y.value)}, where line set ${before.id} is`,
      accepted: 'a distance of its own, or battens that do not overlap',
    });
  }
};

/** Battens whose ends are not known may be anywhere, so they are not said to overlap. */
const overlaps = (one: Batten, other: Batten): boolean =>
  one.left.known &&
  one.right.known &&
  other.left.known &&
  other.right.known &&
  one.left.value < other.right.value &&
  other.left.value < one.right.value;
