/** Reasons for and against a set, as short sentences in the words and units of the house. */
import type { Reckoned } from '#findings';
import type { House } from '#house';
import { unreachable } from '#outcome';
import type {
  Against,
  BayFacts,
  BrickFacts,
  Gap,
  LookAt,
  NotKnown,
  Subject,
  Withheld,
  WorkNeeds,
} from '#placing';
import type { Rounding } from '#quantities';
import type { BrokenRule, SmallestChange } from '#sequence';
import { inHouseWords, sayFinding, sayMeasure } from '#sheets';
import { ENGLISH, message, phrase, type Voice } from '#texts';

export type Names = (item: string) => string;

const length = (valueM: number, house: House, round: Rounding = 'nearest'): string =>
  sayMeasure({ value: valueM, kind: 'length' }, house, { round });

const force = (valueN: number, house: House, round: Rounding): string =>
  sayMeasure({ value: valueN, kind: 'force' }, house, { round });

/** Nearer than a hair, there. */
const THERE_M = 1e-3;

export const sayOff = (offM: Reckoned<number> | null, house: House): string => {
  if (offM === null) return phrase(house, 'no place asked for');
  if (!offM.known) return phrase(house, 'not known');
  if (Math.abs(offM.value) < THERE_M) return phrase(house, 'there');
  const off = length(Math.abs(offM.value), house);
  return offM.value > 0
    ? phrase(house, '{off} upstage', { off })
    : phrase(house, '{off} downstage', { off });
};

export const sayGap = (gap: Gap, house: House): string => {
  switch (gap.is) {
    case 'open':
      return phrase(house, 'nothing hangs');
    case 'gap':
      return gap.gapM < -THERE_M
        ? phrase(house, '{over} too deep for set {set}', {
            over: length(-gap.gapM, house, 'up'),
            set: gap.set,
          })
        : phrase(house, '{room} to set {set}', {
            room: length(Math.max(0, gap.gapM), house, 'down'),
            set: gap.set,
          });
    case 'unknown':
      return phrase(house, 'not known');
    default:
      return unreachable(gap);
  }
};

const NO_MIX: Readonly<Record<string, string>> = {
  belowCarriage: message('the empty arbor is heavier than the piece needs'),
  stockTooSmall: message('the house has too few bricks'),
  rodTooShort: message('the rod is too short'),
  massLimitTooLow: message('the arbor would pass its mass limit'),
  severalLimits: message('several limits together stand in the way'),
  bricksTooCoarse: message('the bricks are too coarse for what the lock holds'),
};

type Placed<T extends Against['is']> = Extract<Against, { readonly is: T }>;

const sayFarOff = ({ offM, withinM }: Placed<'place'>, house: House): string => {
  const names = { off: length(Math.abs(offM), house), within: length(withinM, house) };
  return offM > 0
    ? phrase(house, 'Set {off} upstage of the wanted place; {within} was asked for at most.', names)
    : phrase(
        house,
        'Set {off} downstage of the wanted place; {within} was asked for at most.',
        names,
      );
};

const sayOverlap = ({ byM, set, side }: Placed<'overlap'>, house: House): string => {
  const names = { over: length(byM, house, 'up'), set };
  return side === 'upstage'
    ? phrase(house, '{over} too deep for set {set}, upstage.', names)
    : phrase(house, '{over} too deep for set {set}, downstage.', names);
};

export const sayAgainst = (against: Against, house: House, names: Names): string => {
  switch (against.is) {
    case 'place':
      return sayFarOff(against, house);
    case 'overlap':
      return sayOverlap(against, house);
    case 'pastBatten':
      return phrase(house, '{item} reaches {past} past the end of the batten.', {
        item: against.item,
        past: length(against.byM, house, 'up'),
      });
    case 'trim':
      return phrase(house, 'Trim {name}, {height}, is off the travel.', {
        name: against.name,
        height: length(against.heightM, house),
      });
    case 'noMix':
      return phrase(house, 'No mix of bricks keeps it within the lock: {why}.', {
        why: inHouseWords(NO_MIX[against.limit] ?? against.limit, house),
      });
    case 'pastLock':
      return phrase(house, '{worst} out of balance at a trim; the lock holds {lock}.', {
        worst: force(against.worstN, house, 'up'),
        lock: force(against.lockN, house, 'down'),
      });
    case 'stop':
      return `${sayFinding(against.finding, house, names).sentence} [${against.finding.code}]`;
    default:
      return unreachable(against);
  }
};

export const sayLook = (look: LookAt, house: House, names: Names): string => {
  switch (look.is) {
    case 'caution':
      return `${sayFinding(look.finding, house, names).sentence} [${look.finding.code}]`;
    case 'keptEmpty':
      return phrase(house, 'The show keeps it empty: {reason}.', { reason: look.reason });
    case 'stillOn':
      return phrase(house, 'The record still has on it: {items}.', {
        items: look.items.map(names).join(', '),
      });
    default:
      return unreachable(look);
  }
};

const SUBJECTS: Readonly<Record<Subject, string>> = {
  place: message('Place'),
  trims: message('Trims'),
  space: message('Room in depth'),
  bricks: message('Bricks'),
  lock: message('Lock'),
  bay: message('Bay'),
  service: message('Service'),
  rules: message('For the rules'),
};

export const sayNotKnown = ({ of, needs }: NotKnown, house: House): string =>
  `${phrase(house, SUBJECTS[of])}: ${inHouseWords(needs.join('; '), house)}.`;

export const sayWithheld = (withheld: Withheld, voice: Voice = ENGLISH): string => {
  switch (withheld.is) {
    case 'used':
      return phrase(voice, 'hangs {by}', { by: withheld.by });
    case 'keptEmpty':
      return phrase(voice, 'kept empty: {reason}', { reason: withheld.reason });
    case 'lockedOut':
      return withheld.tag === null
        ? phrase(voice, 'locked out')
        : phrase(voice, 'locked out, tag {tag}', { tag: withheld.tag });
    case 'notInService':
      return withheld.service === 'paused'
        ? phrase(voice, 'work on it is paused')
        : phrase(voice, 'held by steel');
    default:
      return unreachable(withheld);
  }
};

export const sayBricks = (bricks: Reckoned<BrickFacts> | null, house: House): string => {
  if (bricks === null) return phrase(house, 'takes no bricks');
  if (!bricks.known) return phrase(house, 'none known');
  const { counts, arborMassKg } = bricks.value;
  const mix = counts.map(({ kind, count }) => `${count}${kind}`).join(' + ');
  const mass = sayMeasure({ value: arborMassKg, kind: 'mass' }, house, { round: 'up' });
  return phrase(house, '{mix}, arbor {mass}', {
    mix: mix === '' ? phrase(house, 'none') : mix,
    mass,
  });
};

export const sayWorst = (bricks: Reckoned<BrickFacts> | null, house: House): string => {
  if (bricks === null) return '';
  if (!bricks.known) return phrase(house, 'not known');
  const { worstN, lockN } = bricks.value;
  const worst = force(worstN, house, 'up');
  return lockN.known
    ? phrase(house, '{worst}, lock {lock}', { worst, lock: force(lockN.value, house, 'down') })
    : phrase(house, '{worst}, lock not known', { worst });
};

const share = (part: Reckoned<number>, limit: Reckoned<number>, voice: Voice): string =>
  part.known && limit.known
    ? `${Math.ceil((100 * part.value) / limit.value - 1e-9)} %`
    : phrase(voice, 'not known');

export const sayBay = (bay: BayFacts | null, voice: Voice = ENGLISH): string =>
  bay === null
    ? phrase(voice, 'in no bay')
    : phrase(voice, '{bay}: {down} down, {across} across', {
        bay: bay.bay,
        down: share(bay.vertical, bay.verticalLimit, voice),
        across: share(bay.horizontal, bay.horizontalLimit, voice),
      });

const NO_ORDER: Readonly<Record<BrokenRule, string>> = {
  HOLD: message('nothing holds it on the way'),
  REACH: message('no gallery reaches the bricks on the way'),
  STOCK: message('too few loose bricks as counted'),
  ROD: message('the rod is too short on the way'),
  MASS: message('the arbor would pass its mass limit on the way'),
  TRAVEL: message('the travel is too short'),
  SERVICE: message('it cannot go on its steel'),
  GOAL: message('it cannot stand as it is wanted'),
};

const CHANGE: Readonly<Record<SmallestChange['change'], string>> = {
  restraint: message('a restraint would do'),
  tolerances: message('masses known closer would do'),
  higher: message('a higher travel would do'),
  lower: message('a lower travel would do'),
  stock: message('more loose bricks would do'),
  gallery: message('a gallery that reaches elsewhere would do'),
  rod: message('a longer rod would do'),
  arbor: message('an arbor rated for more would do'),
};

type Ordered = Extract<WorkNeeds, { readonly is: 'order' }>;

const sayRestraint = (restraint: Ordered['restraint'], house: House): string => {
  if (restraint === null) return phrase(house, 'no restraint');
  const rated = force(restraint.ratedN, house, 'up');
  return restraint.resists === 'out'
    ? phrase(house, '{rated} against out', { rated })
    : phrase(house, '{rated} against in', { rated });
};

export const sayWork = (needs: WorkNeeds, house: House): string => {
  switch (needs.is) {
    case 'order': {
      const written = needs.asWritten
        ? phrase(house, ', masses as written: weigh or pull-test first')
        : '';
      return `${sayRestraint(needs.restraint, house)}${written}`;
    }
    case 'noOrder': {
      const change = needs.change === null ? '' : `; ${phrase(house, CHANGE[needs.change])}`;
      const why = phrase(house, NO_ORDER[needs.rule]);
      return `${phrase(house, 'no order exists: {why}', { why })}${change}`;
    }
    case 'notFound':
      return phrase(house, 'none found: stop and ask');
    case 'refused':
      return inHouseWords(needs.refusals.map(({ accepted }) => accepted).join('; '), house);
    default:
      return unreachable(needs);
  }
};
