/** Reasons for and against a set, as short sentences in the words and units of the house. */
import { tradeWord } from '#drawings';
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

export type Names = (item: string) => string;

const length = (valueM: number, house: House, round: Rounding = 'nearest'): string =>
  sayMeasure({ value: valueM, kind: 'length' }, house, { round });

const force = (valueN: number, house: House, round: Rounding): string =>
  sayMeasure({ value: valueN, kind: 'force' }, house, { round });

/** Nearer than a hair, there. */
const THERE_M = 1e-3;

export const sayOff = (offM: Reckoned<number> | null, house: House): string => {
  if (offM === null) return 'no place asked for';
  if (!offM.known) return 'not known';
  if (Math.abs(offM.value) < THERE_M) return 'there';
  const side = offM.value > 0 ? 'upstage' : 'downstage';
  return `${length(Math.abs(offM.value), house)} ${side}`;
};

export const sayGap = (gap: Gap, house: House): string => {
  switch (gap.is) {
    case 'open':
      return 'nothing hangs';
    case 'gap':
      return gap.gapM < -THERE_M
        ? `${length(-gap.gapM, house, 'up')} too deep for set ${gap.set}`
        : `${length(Math.max(0, gap.gapM), house, 'down')} to set ${gap.set}`;
    case 'unknown':
      return 'not known';
    default:
      return unreachable(gap);
  }
};

const NO_MIX: Readonly<Record<string, string>> = {
  belowCarriage: 'the empty arbor is heavier than the piece needs',
  stockTooSmall: 'the house has too few bricks',
  rodTooShort: 'the rod is too short',
  massLimitTooLow: 'the arbor would pass its mass limit',
  severalLimits: 'several limits together stand in the way',
  bricksTooCoarse: 'the bricks are too coarse for what the lock holds',
};

export const sayAgainst = (against: Against, house: House, names: Names): string => {
  switch (against.is) {
    case 'place':
      return (
        `Set ${length(Math.abs(against.offM), house)} ` +
        `${against.offM > 0 ? 'upstage' : 'downstage'} of the wanted place; ` +
        `${length(against.withinM, house)} was asked for at most.`
      );
    case 'overlap': {
      const over = length(against.byM, house, 'up');
      return `${over} too deep for set ${against.set}, ${against.side}.`;
    }
    case 'pastBatten': {
      const past = length(against.byM, house, 'up');
      return `${against.item} reaches ${past} past the end of the ${tradeWord(house, 'batten')}.`;
    }
    case 'trim':
      return `Trim ${against.name}, ${length(against.heightM, house)}, is off the travel.`;
    case 'noMix':
      return inHouseWords(
        `No mix of bricks keeps it within the lock: ${NO_MIX[against.limit] ?? against.limit}.`,
        house,
      );
    case 'pastLock':
      return (
        `${force(against.worstN, house, 'up')} out of balance at a trim; ` +
        `the lock holds ${force(against.lockN, house, 'down')}.`
      );
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
      return `The show keeps it empty: ${look.reason}.`;
    case 'stillOn':
      return `The record still has on it: ${look.items.map(names).join(', ')}.`;
    default:
      return unreachable(look);
  }
};

const SUBJECTS: Readonly<Record<Subject, string>> = {
  place: 'Place',
  trims: 'Trims',
  space: 'Room in depth',
  bricks: 'Bricks',
  lock: 'Lock',
  bay: 'Bay',
  service: 'Service',
  rules: 'For the rules',
};

export const sayNotKnown = ({ of, needs }: NotKnown, house: House): string =>
  `${SUBJECTS[of]}: ${inHouseWords(needs.join('; '), house)}.`;

export const sayWithheld = (withheld: Withheld): string => {
  switch (withheld.is) {
    case 'used':
      return `hangs ${withheld.by}`;
    case 'keptEmpty':
      return `kept empty: ${withheld.reason}`;
    case 'lockedOut':
      return withheld.tag === null ? 'locked out' : `locked out, tag ${withheld.tag}`;
    case 'notInService':
      return withheld.service === 'paused' ? 'work on it is paused' : 'held by steel';
    default:
      return unreachable(withheld);
  }
};

export const sayBricks = (bricks: Reckoned<BrickFacts> | null, house: House): string => {
  if (bricks === null) return inHouseWords('takes no bricks', house);
  if (!bricks.known) return 'none known';
  const { counts, arborMassKg } = bricks.value;
  const mix = counts.map(({ kind, count }) => `${count}${kind}`).join(' + ');
  const mass = sayMeasure({ value: arborMassKg, kind: 'mass' }, house, { round: 'up' });
  return `${mix === '' ? 'none' : mix}, ${tradeWord(house, 'arbor')} ${mass}`;
};

export const sayWorst = (bricks: Reckoned<BrickFacts> | null, house: House): string => {
  if (bricks === null) return '';
  if (!bricks.known) return 'not known';
  const { worstN, lockN } = bricks.value;
  const lock = lockN.known ? `lock ${force(lockN.value, house, 'down')}` : 'lock not known';
  return `${force(worstN, house, 'up')}, ${lock}`;
};

const share = (part: Reckoned<number>, limit: Reckoned<number>): string =>
  part.known && limit.known
    ? `${Math.ceil((100 * part.value) / limit.value - 1e-9)} %`
    : 'not known';

export const sayBay = (bay: BayFacts | null): string =>
  bay === null
    ? 'in no bay'
    : `${bay.bay}: ${share(bay.vertical, bay.verticalLimit)} down, ` +
      `${share(bay.horizontal, bay.horizontalLimit)} across`;

const NO_ORDER: Readonly<Record<BrokenRule, string>> = {
  HOLD: 'nothing holds it on the way',
  REACH: 'no gallery reaches the bricks on the way',
  STOCK: 'too few loose bricks as counted',
  ROD: 'the rod is too short on the way',
  MASS: 'the arbor would pass its mass limit on the way',
  TRAVEL: 'the travel is too short',
  SERVICE: 'it cannot go on its steel',
  GOAL: 'it cannot stand as it is wanted',
};

const CHANGE: Readonly<Record<SmallestChange['change'], string>> = {
  restraint: 'a restraint would do',
  tolerances: 'masses known closer would do',
  higher: 'a higher travel would do',
  lower: 'a lower travel would do',
  stock: 'more loose bricks would do',
  gallery: 'a gallery that reaches elsewhere would do',
  rod: 'a longer rod would do',
  arbor: 'an arbor rated for more would do',
};

export const sayWork = (needs: WorkNeeds, house: House): string => {
  switch (needs.is) {
    case 'order': {
      const written = needs.asWritten ? ', masses as written: weigh or pull-test first' : '';
      if (needs.restraint === null) return `no restraint${written}`;
      const { ratedN, resists } = needs.restraint;
      return `${force(ratedN, house, 'up')} against ${resists}${written}`;
    }
    case 'noOrder': {
      const change = needs.change === null ? '' : `; ${CHANGE[needs.change]}`;
      return inHouseWords(`no order exists: ${NO_ORDER[needs.rule]}${change}`, house);
    }
    case 'notFound':
      return 'none found: stop and ask';
    case 'refused':
      return inHouseWords(needs.refusals.map(({ accepted }) => accepted).join('; '), house);
    default:
      return unreachable(needs);
  }
};
