/**
 * The house as it stands while a call runs, folded from what was said and done. What nobody knows
 * is null; a set whose standing is not known may only be measured or made safe.
 */
import type { Standing, Step, WorkZone } from './order.ts';
import type { Knowledge, PullTest } from './state.ts';

/** Who acted: a person of the house, or null at a machine that needs no sign-in. */
export type Actor = { readonly by: string | null; readonly device: string | null };

/**
 * A post of a call: `headFly`, `caller`, `rail`, `deck`, `watcher`, `bullLine`, `motor`, `pinRail`,
 * `gallery:<id>`, `marshal:run` or `marshal:drop:<gallery>`.
 */
export type PostId = string;

export type PostNow = Actor & {
  readonly name: string;
  readonly sinceMs: number;
  /** Whoever answers for them by name, where their own competence does not reach. */
  readonly answeredBy: string | null;
  /** They and theirs stand out of every drop zone, hands off bricks. */
  readonly isClear: boolean;
};

/** The second of a two-person step: from a device of their own, or named on paper. */
export type SecondNow =
  | (Actor & { readonly is: 'device'; readonly post: PostId })
  | { readonly is: 'paper'; readonly name: string };

export type OverrideNow = {
  readonly why: string;
  readonly rules: readonly string[];
};

/** Leave that waits for its second person. */
export type AskedNow = Actor & {
  readonly seq: number;
  readonly post: PostId;
  readonly step: Step;
  readonly atMs: number;
  readonly override: OverrideNow | null;
  /** Post whose word it waits for. */
  readonly secondOf: PostId;
};

/** Leave that was given for one step, until the step is reported. */
export type LeaveNow = Actor & {
  readonly seq: number;
  readonly post: PostId;
  readonly step: Step;
  readonly atMs: number;
  readonly second: SecondNow | null;
  readonly before: Standing;
  /** As the rules worked it out when leave was given. */
  readonly expects: Standing;
  /** Bricks moved so far, as counted aloud one by one; 0 before the first. */
  readonly plates: number;
};

export type PlanNow = {
  readonly seq: number;
  readonly job: 'load' | 'strike' | 'change';
  readonly steps: readonly Step[];
  /** Steps of it that were done, in their order. */
  readonly done: number;
};

export type SetNow = {
  readonly standing: Standing | null;
  /** What was last known of it, where it is not known now; for the eye, never for a sum. */
  readonly last: Standing | null;
  /** Why it is not known, in words; null where it is. */
  readonly doubt: string | null;
  readonly knowledge: Knowledge;
  /** As the rules judged it last; `rule` is what it breaks. */
  readonly held: 'held' | 'unheld' | 'unknown';
  readonly rule: string | null;
  readonly lock: 'closed' | 'open';
  readonly ring: 'on' | 'off';
  readonly collar: 'secured' | 'loose';
  /** Why its lock is not to be trusted: wet, oily, slipped; null where nobody said so. */
  readonly lockDoubt: string | null;
  readonly tag: { readonly number: string; readonly reason: string } | null;
  readonly asked: AskedNow | null;
  readonly leave: LeaveNow | null;
  readonly plan: PlanNow | null;
  /** Since it was last found: how it stood, and what was done as told. */
  readonly since: { readonly start: Standing; readonly steps: readonly Step[] } | null;
  /** Bricks or items changed since the set was last moved or eased: unlocking needs a second. */
  readonly changed: boolean;
  /** Notes of paper that nobody has settled, by number. */
  readonly notes: readonly number[];
  /** Who wrote each of them, by its number: another settles it. */
  readonly noteBy: Readonly<Record<string, Actor>>;
  readonly overrides: readonly (OverrideNow & {
    readonly seq: number;
    readonly first: Actor;
    readonly second: SecondNow;
  })[];
  readonly pullTest: PullTest | null;
  /** How it stood when it was pulled; null where that was not known. */
  readonly pulledAs: Standing | null;
  /** Weighed in this call, kg by item. */
  readonly weighed: Readonly<Record<string, number>>;
};

export type GalleryNow = {
  /** Loose bricks by kind; a kind that is absent was not counted. */
  readonly stock: Readonly<Record<string, number>>;
  readonly countedMs: number | null;
  readonly countedBy: string | null;
};

/** A zone that is closed, and who keeps it; without a marshal at their post it is not clear. */
export type ZoneNow = {
  readonly zone: WorkZone;
  readonly set: string;
  readonly post: PostId;
  readonly sinceMs: number;
};

export type StopNow = Actor & {
  readonly seq: number;
  readonly post: PostId | null;
  /** The set that was named; null is everything. */
  readonly set: string | null;
  readonly words: string;
  readonly atMs: number;
  readonly heard: Readonly<Record<PostId, number>>;
  /** Whoever called it says that work may go on. */
  readonly isAgreed: boolean;
};

export type CallNow = {
  readonly id: string;
  readonly seq: number;
  readonly house: string;
  readonly show: string;
  readonly openedMs: number;
  readonly isDrill: boolean;
  /** The documents that it was opened on, with their revisions. */
  readonly documents: readonly { readonly id: string; readonly revision: number }[];
};

export type HouseNow = {
  /** Number of the last event that was folded in. */
  readonly seq: number;
  /** Null where no call is open. */
  readonly call: CallNow | null;
  /** By id of the set; one that is absent is not of this house. */
  readonly sets: Readonly<Record<string, SetNow>>;
  readonly galleries: Readonly<Record<string, GalleryNow>>;
  readonly posts: Readonly<Record<PostId, PostNow>>;
  readonly zones: readonly ZoneNow[];
  /** Not lifted yet. While there is one for a set, or for everything, no leave is given there. */
  readonly stops: readonly StopNow[];
};
