/**
 * What is chosen from a list of ours, by its field. In English it stands as it is written, with
 * `houseRule` read as `house rule`; another language has words for it.
 */
import { message, phrase, type Voice } from '#texts';
import { spaced } from './field-words.ts';

type Words = Readonly<Record<string, string>>;

const TRAVEL: Words = { in: message('in'), out: message('out'), both: message('both ways') };

const BASES: Words = {
  assumption: message('assumption'),
  calculated: message('calculated'),
  carriedOver: message('carried over'),
  commonPractice: message('common practice'),
  counted: message('counted'),
  estimated: message('estimated'),
  houseRule: message('house rule'),
  invented: message('invented'),
  measured: message('measured'),
  published: message('published'),
  pullTested: message('pull-tested'),
  unknown: message('unknown'),
  weighed: message('weighed'),
};

const CHOSEN: Readonly<Record<string, Words>> = {
  basis: BASES,
  bearing: { plain: message('plain bearing'), rolling: message('rolling bearing') },
  collar: { loose: message('collar loose'), secured: message('collar secured') },
  family: {
    electric: message('electric'),
    hard: message('hard'),
    other: message('other'),
    soft: message('soft'),
  },
  kind: {
    arborSling: message('sling on the arbor'),
    bullLine: message('bull line'),
    choke: message('choke on the hand line'),
    clear: message('hangs clear'),
    cloth: message('cloth, piles on the deck'),
    deadHangSteel: message('dead-hang steel'),
    deckLoom: message('cable, to the deck'),
    loom: message('cable, far end fixed'),
    pinnedPiece: message('pinned piece'),
    standing: message('stands on the deck'),
    stands: message('stands under the batten'),
    tipping: message('tips up from its foot'),
    winch: message('winch'),
  },
  knowledge: BASES,
  lock: { closed: message('lock closed'), open: message('lock open') },
  operatingSide: { stageLeft: message('stage left'), stageRight: message('stage right') },
  reference: {
    batten: message('batten'),
    lens: message('lens'),
    lowestPoint: message('lowest point'),
  },
  resists: TRAVEL,
  ring: { on: message('ring on the handle'), off: message('ring off the handle') },
  serves: { pipeWeight: message('pipe weight'), show: message('show') },
  service: {
    in: message('in service'),
    paused: message('paused'),
    lockedOut: message('locked out'),
    deadHung: message('dead-hung'),
  },
  suspension: {
    singlePurchase: message('single purchase'),
    doublePurchase: message('double purchase'),
    motor: message('motor'),
    hemp: message('hemp'),
    deadHung: message('dead-hung'),
  },
  tag: {
    pipe: message('pipe weight'),
    show: message('show'),
    spreader: message('spreader plate'),
  },
  termination: {
    clips: message('clips'),
    compressionSleeve: message('compression sleeve'),
    handTuckedSplice: message('hand-tucked splice'),
    mechanicalSplice: message('mechanical splice'),
    spelterSocket: message('spelter socket'),
    swagedSocket: message('swaged socket'),
    wedgeSocket: message('wedge socket'),
  },
  wall: { design: message('least wall'), nominal: message('wall as named') },
};

/** Stand as they are written in English. */
const ELSEWHERE: Readonly<Record<string, Words>> = {
  state: {
    flying: message('flying'),
    resting: message('resting'),
    attachedResting: message('tied on, resting'),
    attachedSlack: message('tied on, slack'),
    away: message('away'),
    beside: message('beside it'),
    heldElsewhere: message('held elsewhere'),
  },
  units: { customary: message('feet and pounds'), metric: message('metric') },
};

const ownWord = (table: Readonly<Record<string, Words>>, name: string, value: string) =>
  Object.hasOwn(table, name) && Object.hasOwn(table[name] ?? {}, value)
    ? table[name]?.[value]
    : undefined;

/** The value of a field as a person reads it; undefined where it is free text. */
export const chosenWords = (voice: Voice, name: string, value: string): string | undefined => {
  const isOfList = Object.hasOwn(CHOSEN, name) && /^[a-zA-Z]+$/.test(value);
  if (voice.tongue === undefined) return isOfList ? spaced(value) : undefined;
  const ours = ownWord(CHOSEN, name, value) ?? ownWord(ELSEWHERE, name, value);
  if (ours !== undefined) return phrase(voice, ours);
  return isOfList ? spaced(value) : undefined;
};
