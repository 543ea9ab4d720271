import type { House } from '#house';
import {
  type CheckedOrder,
  isAccepted,
  type OrderJob,
  type StepBetween,
  stepsBetween,
} from '#orders';
import { formatLength, metres } from '#quantities';
import { type Breach, ruleOf } from '#rules';
import {
  balanceWords,
  energyWords,
  heldWords,
  inHouseWords,
  type OrderWords,
  platesWords,
  sayAssumption,
  sayFinding,
  sayForce,
  sayStep,
} from '#sheets';

/** What the judge said of the steps, wherever they come from. */
type Judged = Pick<CheckedOrder, 'steps' | 'verdict' | 'checked'>;

type Plant = Pick<OrderJob, 'house' | 'physics'> & Partial<Pick<OrderJob, 'set'>>;

/** What the show calls an item; its id where it is not of this hang. */
export const namesIn =
  ({ hang }: OrderJob['set']) =>
  (item: string): string =>
    hang?.items.find(({ id }) => id === item)?.name ?? item;

export const wordsOf = (
  { house, set, physics }: OrderJob,
  { checked }: CheckedOrder,
): OrderWords => ({
  house,
  physics,
  nameOf: namesIn(set),
  isDoubtTried: checked.doubt === 'worst',
  areFaultsTried: checked.faults === 'check',
});

/** What is worked on, what is taken for granted, how it stands, and each step as a crew does it. */
export const orderText = (job: OrderJob, order: CheckedOrder): readonly string[] => [
  ...headText(job, order),
  ...stepsText(order, wordsOf(job, order)),
];

/** What is worked on, and what is taken for granted. */
export const headText = ({ house, set }: OrderJob, order: CheckedOrder): readonly string[] => {
  const name = set.hang === null ? '' : `, ${set.hang.name}`;
  return [
    ...(house.demo ? ['DEMO: an invented house and show'] : []),
    `Set ${set.lineSet.id}${name}`,
    ...assumedText(order, house),
  ];
};

/** How the set stands, and each step as a crew does it, or of a refused order as it was judged. */
export const stepsText = (order: Judged, words: OrderWords): readonly string[] => [
  ...standsText(order, words),
  ...stepsBetween(order).flatMap((between) =>
    isAccepted(order) ? stepText(between, words) : judgedText(between, words, order),
  ),
];

/** How the set stands before the first step. */
export const standsText = (
  { verdict: { states } }: Pick<Judged, 'verdict'>,
  words: OrderWords,
): readonly string[] => {
  const { house } = words;
  const [first] = states;
  if (first === undefined) return [];
  return [
    '',
    ` 0  ${inHouseWords('As it stands: batten at', house)} ` +
      `${heightWords(first.standing.height, words)}; ${platesWords(first.standing, house)}.`,
    `    Balance: ${balanceWords(first, words)}. ${heldWords(first, house)}`,
  ];
};

/** What stops a crew first: an order that holds only if every mass is as it is written. */
const assumedText = ({ assumed }: CheckedOrder, house: House): readonly string[] => [
  ...assumed.filter(({ is }) => is === 'massesAsWritten').map((each) => sayAssumption(each, house)),
  ...assumed
    .filter(({ is }) => is !== 'massesAsWritten')
    .map((each) => `Assumed: ${sayAssumption(each, house)}`),
];

const numbered = (number: number): string => String(number).padStart(2);

/** One step of an order that is accepted, as a crew does it. */
const stepText = (between: StepBetween, words: OrderWords): readonly string[] => {
  const said = sayStep(between, words);
  return [
    `${numbered(said.number)}  ${said.who}: ${said.does}`,
    `    Then: ${said.expect.join(' ')}${freeWords(between.after.releasableJ, words)}`,
    `    Stop if ${said.stopIf}. To give it up: ${said.abandon}`,
  ];
};

/** What a crew has to know of a set that seems to stand quietly. */
const freeWords = (energyJ: number | null, { physics, house }: OrderWords): string =>
  energyJ === null ? '' : ` If nothing held it: ${energyWords(energyJ, physics, house)}.`;

/** Of an order that nobody is to work by: what it does and where that leads, not how to do it. */
const judgedText = (
  between: StepBetween,
  words: OrderWords,
  { verdict }: Judged,
): readonly string[] => {
  const { house } = words;
  const { number, after } = between;
  const { holdInN, holdOutN, standing } = after;
  const broken = [verdict.broken, ...verdict.alsoBroken].flatMap((each) =>
    each?.step === number - 1 ? [each.rule] : [],
  );
  const holds =
    `Against coming in ${sayForce(holdInN, house, 'down')} is held, ` +
    `against going out ${sayForce(holdOutN, house, 'down')}.`;
  const batten = inHouseWords('Batten at', house);
  return [
    `${numbered(number)}  ${sayStep(between, words).does}`,
    `    Then: ${balanceWords(after, words)}. ` +
      `${batten} ${formatLength(standing.height, house.units)}. ${holds}` +
      freeWords(after.releasableJ, words),
    ...(broken.length === 0 ? [] : [`    BROKEN here: ${[...new Set(broken)].join(', ')}`]),
  ];
};

export const heightWords = (heightM: number, { house }: Pick<Plant, 'house'>): string =>
  formatLength(metres(heightM), house.units);

const CHECKED_WORDS = {
  worst: 'every mass at its worst',
  none: 'every mass as it is written',
  check: 'people in the path, so each single fault is tried',
  skip: 'nobody in the path of any fault, so none is tried',
} as const;

/** What the judge says of the order, first the first rule that it breaks. */
export const verdictText = (job: Plant, order: Judged): readonly string[] => {
  const { verdict, checked, steps } = order;
  const how = `${CHECKED_WORDS[checked.doubt]}; ${CHECKED_WORDS[checked.faults]}`;
  return [
    `Replayed with ${how}.`,
    ...(verdict.broken === null ? [] : [`BROKEN ${breachWords(verdict.broken, job)}`]),
    ...verdict.alsoBroken.map((each) => `Also broken ${breachWords(each, job)}`),
    ...(isAccepted(order)
      ? [
          steps.length === 0
            ? 'Nothing is left to do: it stands as it is wanted.'
            : `No rule of the order of work is broken by ${steps.length} steps.`,
        ]
      : []),
    ...verdict.cautions.map((each) => `Caution ${breachWords(each, job)}`),
    ...verdict.assumed.map((line) => `Assumed: ${inHouseWords(line, job.house)}.`),
    ...verdict.proofsDue.map(
      ({ step, proof }) =>
        `Still to be proved ${placeOf(step)}: ${inHouseWords(proof, job.house)}.`,
    ),
    'Energies take every mass as it is written.',
    'On paper only. Who leads the work decides on the day, and stops it when anything is not so.',
  ];
};

export const placeOf = (step: number): string =>
  step < 0 ? 'before the first step' : `at step ${step + 1}`;

export const breachWords = (breach: Breach, job: Plant): string => {
  const { rule, step, where, byN, releasableJ, finding } = breach;
  const cites = ruleOf(rule)?.cites;
  const id = cites === undefined ? rule : `${rule}: ${cites}`;
  const past = byN === null ? '' : `, past by ${sayForce(byN, job.house, 'up')}`;
  const place = `${placeOf(step)}, batten at ${heightWords(where, job)}`;
  const { sentence } = sayFinding(
    finding,
    job.house,
    job.set === undefined ? undefined : namesIn(job.set),
  );
  const free =
    releasableJ === null
      ? ''
      : ` It would set free ${energyWords(releasableJ, job.physics, job.house)}.`;
  return `${inHouseWords(place, job.house)}${past}: ${sentence}${free} [${id}]`;
};
