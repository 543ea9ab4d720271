/** What the screens of the desk say of a set, a post and a moment. */
import type { House } from '#house';
import { unreachable } from '#outcome';
import { metres } from '#quantities';
import { ruleOf } from '#rules';
import { stepTitle, type TitleWords } from '#sheets';
import type { Actor, HouseNow, Knowledge, PostId, SetNow, Step } from '#state';
import { message, phrase, phraseCount, type Voice } from '#texts';
import { sayAge } from '../offline/age-words.ts';

/** Names of persons of the house by their id. */
export type Names = Readonly<Record<string, string>>;

const PLAIN_POSTS: Readonly<Record<string, string>> = {
  headFly: message('Head flyman'),
  caller: message('Caller'),
  rail: message('Rail'),
  deck: message('Deck'),
  watcher: message('Watcher'),
  bullLine: message('Bull line or winch'),
  motor: message('Motor'),
  pinRail: message('Pin rail'),
  'marshal:run': message('Marshal of the run'),
};

const galleryNamed = (id: string, house: Pick<House, 'galleries'>): string =>
  house.galleries.find((each) => each.id === id)?.name ?? id;

/** `house` gives the words and the names of its galleries. */
export const postWords = (post: PostId, house: Pick<House, 'galleries'> & Voice): string => {
  const plain = PLAIN_POSTS[post];
  if (plain !== undefined) return phrase(house, plain);
  const [kind, ...rest] = post.split(':');
  const gallery = galleryNamed(rest.at(-1) ?? '', house);
  return kind === 'marshal' ? phrase(house, 'Marshal under the {gallery}', { gallery }) : gallery;
};

/** Every post that a house can have, in the order in which a call is set up. */
export const postsOf = ({ galleries }: Pick<House, 'galleries'>): readonly PostId[] => [
  'headFly',
  'rail',
  'deck',
  ...galleries.map(({ id }) => `gallery:${id}`),
  'marshal:run',
  ...galleries.map(({ id }) => `marshal:drop:${id}`),
  'watcher',
  'caller',
  'bullLine',
  'motor',
  'pinRail',
];

const two = (number: number): string => String(number).padStart(2, '0');

/** By the clock on the wall where this device is. */
export const clockWords = (atMs: number): string => {
  const date = new Date(atMs);
  return `${two(date.getHours())}:${two(date.getMinutes())}`;
};

/** Clocks of server and device differ a little; what is a moment ahead has just been. */
const APART_MS = 60_000;

export const agoWords = (atMs: number, nowMs: number, voice: Voice): string => {
  const ageMs = nowMs - atMs;
  return sayAge(ageMs < 0 && ageMs > -APART_MS ? 0 : ageMs, voice);
};

/** `14:06, 12 min ago`. */
export const momentWords = (atMs: number, nowMs: number, voice: Voice): string =>
  phrase(voice, '{time}, {ago}', { time: clockWords(atMs), ago: agoWords(atMs, nowMs, voice) });

/** A name as people use it: of the post they stand at, of the house, or that there is none. */
export const actorWords = (
  { by, device }: Actor,
  { posts }: Pick<HouseNow, 'posts'>,
  { names, voice }: { readonly names: Names; readonly voice: Voice },
): string => {
  const there = Object.values(posts).find((post) =>
    by === null ? post.device === device && post.by === null : post.by === by,
  );
  if (there !== undefined) return there.name;
  return by === null ? phrase(voice, 'a device without sign-in') : (names[by] ?? by);
};

const BASES: Readonly<Record<Knowledge['basis'], string>> = {
  counted: message('counted'),
  weighed: message('weighed'),
  pullTested: message('pull-tested'),
  carriedOver: message('carried over from an older record'),
  unknown: message('not known'),
};

/** `counted 14:06, 12 min ago, by Ada; second person Bo`. */
export const knowledgeWords = (
  { basis, at, by, second }: Knowledge,
  nowMs: number,
  { names, voice }: { readonly names: Names; readonly voice: Voice },
): string => {
  const how = phrase(voice, BASES[basis]);
  if (at === null) return how;
  const atMs = Date.parse(at);
  const told = {
    how,
    when: Number.isNaN(atMs) ? at : momentWords(atMs, nowMs, voice),
    by: by === null || by === '' ? phrase(voice, 'nobody named') : (names[by] ?? by),
    second: second ?? '',
  };
  return second === null
    ? phrase(voice, '{how} {when}, by {by}; no second person', told)
    : phrase(voice, '{how} {when}, by {by}; second person {second}', told);
};

/** The word that goes before all else; null where it is known and held. */
export const stateWord = ({ held, standing }: SetNow, voice: Voice): string | null => {
  if (standing === null) return phrase(voice, 'UNKNOWN');
  if (held === 'unheld') return phrase(voice, 'NOT HELD');
  return held === 'unknown' ? phrase(voice, 'NOT JUDGED') : null;
};

const isMove = ({ act }: Step): boolean => act === 'fly' || act === 'ease';

/** What is done on it at this moment, in few words; null where nothing is. */
export const workWord = ({ leave, asked, plan }: SetNow, voice: Voice): string | null => {
  if (leave !== null) {
    return isMove(leave.step) ? phrase(voice, 'MOVING') : phrase(voice, 'AT WORK');
  }
  if (asked !== null) return phrase(voice, 'LEAVE ASKED');
  return plan !== null && plan.done < plan.steps.length ? phrase(voice, 'ORDER BEGUN') : null;
};

export type StepContext = {
  readonly house: House;
  readonly set: string;
  readonly nameOf: (item: string) => string;
};

export const titleWordsOf = ({ house, set, nameOf }: StepContext): TitleWords => ({
  house,
  nameOf,
  physics: { set, galleries: house.galleries },
});

/** A step from where the set stands; where that is not known a move says only its height. */
export const stepWords = (
  step: Step,
  from: Pick<NonNullable<SetNow['standing']>, 'height'> | null,
  context: StepContext,
): string => {
  const height = from?.height;
  if (height === undefined && step.act === 'fly') return phrase(context.house, 'Move it');
  const standing = { height: height ?? (step.act === 'fly' ? step.to : NO_HEIGHT) };
  return stepTitle({ step, before: { standing } }, titleWordsOf(context));
};

/** No step but a move looks at it. */
const NO_HEIGHT = metres(0);

export const platesCounted = (count: number, voice: Voice): string =>
  phraseCount(voice, count, ['{count} plate', '{count} plates']);

const JOBS = {
  load: message('load'),
  strike: message('strike'),
  change: message('change'),
} as const;

export const jobWords = (job: keyof typeof JOBS, voice: Voice): string => {
  switch (job) {
    case 'load':
    case 'strike':
    case 'change':
      return phrase(voice, JOBS[job]);
    default:
      return unreachable(job);
  }
};

/** `CAL-024: A move without its two people`; a code of a later build stands by itself. */
export const ruleWords = (code: string, voice: Voice): string => {
  const rule = ruleOf(code);
  return rule === undefined
    ? code
    : phrase(voice, '{code}: {title}', { code, title: phrase(voice, rule.title) });
};

export const rulesWords = (codes: readonly string[], voice: Voice): string =>
  codes.map((code) => ruleWords(code, voice)).join('; ');
