/** The drill for masses that nobody knows, as a crew does it. */
import type { House } from '#house';
import { type StepBetween, stepsBetween, type WorkedDrill } from '#orders';
import { unreachable } from '#outcome';
import { GRAVITY } from '#quantities';
import type { Drill, DrillEase, MassRange, NoDrill, PlateLimit } from '#sequence';
import { filled, inHouseWords, type OrderWords, sayForce, sayMeasure, sayStep } from '#sheets';
import type { OrderPhysics } from '#state';
import { headText, standsText, wordsOf } from './order-text.ts';

/** What is worked on, every step with both answers of each pull, and what the pulls weigh. */
export const drillText = (worked: WorkedDrill, drill: Drill): readonly string[] => {
  const { job, order } = worked;
  const words = wordsOf(job, order);
  return [
    ...headText(job, order),
    ...drillHead(drill, worked),
    ...standsText(order, words),
    ...stepsBetween(order).flatMap((between) => {
      const index = between.number - 1;
      const ease = drill.eases.find(({ step }) => step === index);
      if (ease !== undefined) return easeText(between, ease, { drill, house: job.house });
      const next = drill.eases.find(({ step }) => step > index);
      return workText(between, words, between.step.act === 'add' ? next : undefined);
    }),
    '',
    ...weighedText(worked, drill),
  ];
};

/** After a brick the list says little: what the pulls have shown is what is known. */
const workText = (
  between: StepBetween,
  words: OrderWords,
  ease: DrillEase | undefined,
): readonly string[] => {
  const said = sayStep(between, words);
  const then = ease === undefined ? said.expect.join(' ') : knownWords(ease, words);
  return [
    `${String(said.number).padStart(2)}  ${said.who}: ${said.does}`,
    `    Then: ${then}`,
    `    Stop if ${said.stopIf}. To give it up: ${said.abandon}`,
  ];
};

const knownWords = ({ bricks, knownN }: DrillEase, { house }: OrderWords): string => {
  const most = sayMeasure({ value: knownN.most, kind: 'imbalance' }, house);
  return inHouseWords(
    `${bricks} on for the drill. Batten heavy even at its lightest, by all that is known; at its ` +
      `heaviest ${most}. The low stop holds it.`,
    house,
  );
};

const drillHead = (
  { doubtN, pull, baseBricks, mostBricks, frictionN }: Drill,
  { job: { house, physics } }: WorkedDrill,
): readonly string[] => {
  const say = (text: string): string => inHouseWords(text, house);
  const force = (forceN: number): string => sayForce(forceN, house, 'up');
  return [
    say(
      `DRILL FOR MASSES THAT NOBODY KNOWS. They are in doubt by ${force(doubtN)}; the lock holds ` +
        `${sayForce(physics.lockLimitN, house, 'down')}.`,
    ),
    say(
      `Written for the heaviest that it may be: ${baseBricks} bricks, then up to ${mostBricks}. ` +
        'It ends at the first pull that lifts the set.',
    ),
    say(
      `Each pull rises slowly to ${force(pull)} at most, on a gauge. Friction is taken to be no ` +
        `more than ${force(frictionN)}: where it is more, a set that stays says too much.`,
    ),
  ];
};

const massOf = (massKg: number, house: House): string =>
  sayMeasure({ value: massKg, kind: 'mass' }, house);

const rangeOf = ({ leastKg, mostKg }: MassRange, house: House): string =>
  `${massOf(leastKg, house)} to ${massOf(mostKg, house)}`;

const PULL =
  'Rail operator, with the lead watching the gauge: Ring off, unlock, pull out slowly up to ' +
  '{pull} and no harder, an inch at most.';
const STAYS = 'it weighs {range}. Lock closed, ring on; go on with step {next}.';
const NOTHING =
  'nothing within the tolerances does. Lock closed, ring on. Stop and ask: count again.';
const LIFTS =
  'it weighs {range}. STOP HERE, no brick more: take the two pulls, let it back on its stop, ' +
  'lock closed, ring on. Then open the zones.';

const easeText = (
  { number }: StepBetween,
  { ifItStays, ifItLifts }: DrillEase,
  { drill: { pull }, house }: { readonly drill: Drill; readonly house: House },
): readonly string[] => {
  const say = (text: string, names: Readonly<Record<string, string>> = {}): string =>
    filled(text, house, names);
  const next = `${number + 1}`;
  const stays =
    ifItStays === null ? say(NOTHING) : say(STAYS, { range: rangeOf(ifItStays, house), next });
  return [
    `${String(number).padStart(2)}  ${say(PULL, { pull: sayForce(pull, house, 'up') })}`,
    `    If it stays: ${stays}`,
    `    If it lifts: ${say(LIFTS, { range: rangeOf(ifItLifts, house) })}`,
  ];
};

/**
 * What to work out at the rail, one row for each pull at which the drill may end.
 *
 *     m = k · (F_out − F_in) / 2 / g + m_listed − U_listed / g
 */
const weighedText = (
  { job: { house, set, physics }, handLinePerBatten }: WorkedDrill,
  { eases, weighs }: Drill,
): readonly string[] => {
  const share = handLinePerBatten === 1 ? 'half of' : `${handLinePerBatten / 2} times`;
  const names = weighs.map((id) => set.hang?.items.find((item) => item.id === id)?.name ?? id);
  return [
    filled(TWO_PULLS, house),
    `Weighed with them: ${names.join(', ')}${weighs.length > 1 ? ', together' : ''}.`,
    ...eases.map(({ bricks, listedN }) => {
      const restKg = listedMassKg(weighs, physics) - listedN / GRAVITY;
      return `  lifted with ${bricks} on: ${massOf(restKg, house)} and ${share} (out less in)`;
    }),
    filled(RECORD, house),
  ];
};

const TWO_PULLS =
  'Two steady pulls on a gauge where it lifted, out and in, lock open, hands on both legs. Where ' +
  'it comes back in by itself, in is below nothing: what checks it, as a minus.';
const RECORD =
  'Record it as pull-tested, with who and when; then ask for the load anew. Where no pull lifts ' +
  'it, the masses are not as listed.';

const listedMassKg = (items: readonly string[], physics: OrderPhysics): number =>
  items.reduce((sum, id) => sum + (physics.itemMostN(id) + physics.itemLeastN(id)) / 2, 0) /
  GRAVITY;

/** Why no drill can be done, or why none is needed, in sentences. */
export const noDrillText = (none: readonly NoDrill[], worked: WorkedDrill): readonly string[] =>
  none.map((each) => {
    const { says, names } = whyOf(each, worked);
    return `No drill: ${filled(says, worked.job.house, names)}`;
  });

const WHY = {
  notOnLowStop: 'the set is not on its low stop, where alone it is held while it is weighed.',
  outOfUse: 'the set is out of use.',
  restrained: 'something else holds the set: take that off first.',
  nothingToWeigh: 'nothing hangs in full on the stop.',
  noBricks: 'the house has no bricks for it, or no gallery.',
  notOfSet: '{item} is no item of this set.',
  notHanging: '{item} is attached and does not hang, or is held elsewhere.',
  inContact: '{item} touches the deck with the batten on its low stop.',
  hangsInPart:
    'only a part of {items} hangs on the low stop, and the whole is in doubt by {doubt}. Weigh ' +
    'it another way.',
  notNeeded: 'the masses are in doubt by {doubt} only, and the lock holds {lock}.',
  arborHeavy: 'with what is on the arbor it may be too arbor heavy by {by}.',
  stopNotRated: 'the low stop is rated for {rated}, and {most} may come to stand on it.',
  pulledTooHard:
    'with {kind} from the {gallery} it takes a pull of {pull}, and hands pull {hands} steadily.',
  tooFewBricks:
    'of {kind} from the {gallery} {fit} can be put on ({limit}), and the heaviest that it may be ' +
    'needs more.',
} as const satisfies Readonly<Record<NoDrill['why'], string>>;

type Why = { readonly says: string; readonly names: Readonly<Record<string, string>> };

const whyOf = (none: NoDrill, { job: { house, set, physics } }: WorkedDrill): Why => {
  const says = WHY[none.why];
  const most = (forceN: number): string => sayForce(forceN, house, 'up');
  const least = (forceN: number): string => sayForce(forceN, house, 'down');
  const nameOf = (id: string): string => set.hang?.items.find((item) => item.id === id)?.name ?? id;
  const from = ({ kind, gallery }: { readonly kind: string; readonly gallery: string }) => ({
    kind: house.brickKinds.find(({ id }) => id === kind)?.name ?? kind,
    gallery: physics.galleries.find(({ id }) => id === gallery)?.name ?? gallery,
  });
  switch (none.why) {
    case 'notOnLowStop':
    case 'outOfUse':
    case 'restrained':
    case 'nothingToWeigh':
    case 'noBricks':
      return { says, names: {} };
    case 'notOfSet':
    case 'notHanging':
    case 'inContact':
      return { says, names: { item: nameOf(none.item) } };
    case 'hangsInPart': {
      const items = none.items.map(nameOf).join(', ');
      return { says, names: { items, doubt: most(none.doubtN) } };
    }
    case 'notNeeded':
      return { says, names: { doubt: most(none.doubtN), lock: least(none.lockN) } };
    case 'arborHeavy':
      return { says, names: { by: most(none.byN) } };
    case 'stopNotRated':
      return { says, names: { rated: least(none.ratedN), most: most(none.mostN) } };
    case 'pulledTooHard':
      return { says, names: { ...from(none), pull: most(none.pull), hands: least(none.hands) } };
    case 'tooFewBricks':
      return { says, names: { ...from(none), fit: `${none.fit}`, limit: LIMITS[none.limit] } };
    default:
      return unreachable(none);
  }
};

const LIMITS = {
  stock: 'that is all there are',
  reach: 'the next is out of reach',
  rod: 'the rods take no more',
  mass: 'the arbor may weigh no more',
} as const satisfies Readonly<Record<PlateLimit, string>>;
