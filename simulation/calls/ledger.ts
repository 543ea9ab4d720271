/**
 * The witness's own reading of a call, from the events alone. It shares no code with the fold that
 * server and devices use, so that either shows the other's mistakes.
 */
import type { EventOf, HouseEvent } from '#events';
import type { OrderPhysics, Standing, Step } from '#state';
import type { Demo } from './demo-call.ts';
import type { Seen } from './held.ts';
import { pulled } from './pulls.ts';
import { afterStep, platesIn, withPlates, zoneKey } from './steps-done.ts';

/** Who acted: a person's id, or null at a machine that needs no sign-in. */
export type Hand = { readonly by: string | null; readonly device: string | null };

type Wish = Hand & { readonly seq: number; readonly post: string; readonly step: Step };
export type Leave = Wish & { readonly before: Standing; readonly told: number };

export type SetRecord = {
  readonly standing: Standing | null;
  /** How it was last known to stand. */
  readonly last: Standing | null;
  readonly lock: 'closed' | 'open';
  readonly ring: 'on' | 'off';
  readonly collar: 'secured' | 'loose';
  readonly lockDoubted: boolean;
  readonly tag: string | null;
  readonly wish: Wish | null;
  readonly leave: Leave | null;
  /** Bricks or items changed since it was last moved or eased. */
  readonly changed: boolean;
  /** Galleries whose first bricks of this visit two people have seen to. */
  readonly visited: readonly string[];
  /** What pulls on a stop have shown of its doubt since it was last found. */
  readonly seen: Seen | null;
};

/** As the ledger writes it on. */
type Open = { -readonly [K in keyof SetRecord]: SetRecord[K] };

export type Zone = { readonly key: string; readonly set: string; readonly post: string };
type Post = Hand & { readonly isClear: boolean };
type Stop = {
  readonly seq: number;
  readonly set: string | null;
  readonly by: string | null;
};

/** Half a foot, as the fold reads a height. */
const READ_M = 0.15;

type On<K extends HouseEvent['kind']> = EventOf<K>['payload'];

type Handlers<H> = { readonly [K in HouseEvent['kind']]?: H };

const isBricks = (step: Step): step is Extract<Step, { readonly act: 'add' | 'remove' }> =>
  step.act === 'add' || step.act === 'remove';

const isMove = ({ act }: Step): boolean => act === 'fly' || act === 'ease';

export class Ledger {
  readonly #demo: Demo;
  readonly sets = new Map<string, Open>();
  readonly posts = new Map<string, Post>();
  readonly stock = new Map<string, Map<string, number>>();
  zones: readonly Zone[] = [];
  stops: readonly Stop[] = [];

  constructor(demo: Demo) {
    this.#demo = demo;
  }

  of(set: string): Open {
    const found = this.sets.get(set);
    if (found === undefined) throw new Error(`no set ${set} in the call`);
    return found;
  }

  /** The set that an event is about; null for what is about the house. */
  setOf({ target }: HouseEvent): string | null {
    const [, set] = /^set:[^/]+\/(.+)$/.exec(target) ?? [];
    return set !== undefined && this.sets.has(set) ? set : null;
  }

  note(event: HouseEvent): void {
    if (event.kind === 'call opened') this.#open(event.payload);
    const set = this.setOf(event);
    // Each handler is of the kind that it is found by; the compiler cannot follow that.
    const known = event as never;
    if (set === null) this.#onHouse[event.kind]?.(known);
    else this.#onSet[event.kind]?.(this.of(set), known, set);
  }

  #open({ sets, galleries }: On<'call opened'>): void {
    for (const [id, { standing, tag }] of Object.entries(sets)) {
      const tagged = tag?.number ?? null;
      this.sets.set(id, { ...NEW_SET, standing, last: standing, tag: tagged });
    }
    for (const [id, { stock }] of Object.entries(galleries)) {
      this.stock.set(id, new Map(Object.entries(stock)));
    }
  }

  readonly #onHouse: Handlers<(event: never) => void> = {
    'post taken': ({ payload: { post }, by, device }: EventOf<'post taken'>) =>
      this.posts.set(post, { by, device, isClear: false }),
    'post left': ({ payload }: EventOf<'post left'>) => this.posts.delete(payload.post),
    'post said': ({ payload: { post, isClear } }: EventOf<'post said'>) => {
      const held = this.posts.get(post);
      if (held !== undefined) this.posts.set(post, { ...held, isClear });
    },
    'gallery counted': ({ payload: { gallery, stock } }: EventOf<'gallery counted'>) =>
      this.stock.set(gallery, new Map(Object.entries(stock))),
    'stop called': ({ seq, by, payload: { set } }: EventOf<'stop called'>) => {
      this.stops = [...this.stops, { seq, set, by }];
    },
    'stop lifted': ({ payload: { stop } }: EventOf<'stop lifted'>) => {
      this.stops = this.stops.filter(({ seq }) => seq !== stop);
    },
  };

  readonly #onSet: Handlers<(set: Open, event: never, id: string) => void> = {
    'leave asked': (set, { seq, by, device, payload }: EventOf<'leave asked'>) => {
      set.wish = { seq, by, device, post: payload.post, step: payload.step };
    },
    'leave seconded': (set, { payload }: EventOf<'leave seconded'>) => this.#seconded(set, payload),
    'leave given': (set, event: EventOf<'leave given'>) => this.#given(set, event),
    'leave returned': (set, { payload: { asked } }: EventOf<'leave returned'>) => {
      if (set.leave?.seq === asked && set.leave.told > 0) this.#uncounted(set);
      returned(set, asked);
    },
    'plates counted': (set, { payload }: EventOf<'plates counted'>) => this.#counted(set, payload),
    'step reported': (set, { payload }: EventOf<'step reported'>, id) =>
      this.#reported(id, set, payload),
    'set found': (set, { payload }: EventOf<'set found'>, id) => {
      const { standing, lock, ring, collar } = payload;
      this.#uncounted(set);
      this.#zonesFound(id, standing);
      Object.assign(set, { ...CLEAN, standing, lock, ring, collar, changed: true });
    },
    'set doubted': (set) => {
      this.#uncounted(set);
      doubt(set);
    },
    'lock doubted': (set, { payload: { why } }: EventOf<'lock doubted'>) => {
      set.lockDoubted = why !== null;
    },
    'tag placed': (set, { payload: { tag, service } }: EventOf<'tag placed'>) => {
      set.tag = tag.number;
      set.wish = null;
      serve(set, service);
    },
    'tag returned': (set, { payload }: EventOf<'tag returned'>) => {
      if (set.tag !== payload.number) return;
      set.tag = null;
      serve(set, 'in');
    },
  };

  #given(set: Open, { seq, payload }: EventOf<'leave given'>): void {
    const { wish } = set;
    const { step, post } = payload;
    const before = set.standing ?? (step.act === 'close' ? set.last : null);
    if (before === null || wish?.seq !== payload.asked) return;
    set.leave = { ...wish, seq, step, post, before, told: 0 };
    set.wish = null;
    if (isBricks(step)) {
      set.collar = 'loose';
      set.visited = [...set.visited, step.gallery];
    }
    if (isMove(step)) Object.assign(set, { lock: 'open', ring: 'off' });
    const held = this.posts.get(post);
    const isHandsOn = !isBricks(step) && step.act !== 'close' && step.act !== 'reopen';
    if (held !== undefined && isHandsOn) this.posts.set(post, { ...held, isClear: false });
  }

  #seconded(set: Open, { plates }: On<'leave seconded'>): void {
    if (plates === null || set.standing === null) return;
    if (plates !== platesIn(set.standing.stack)) doubt(set);
  }

  /** Bricks that lie loose at the gallery go down by what went onto the arbor. */
  #stocked({ leave, standing }: Open, was: Standing | null): void {
    if (leave === null || standing === null || was === null || !isBricks(leave.step)) return;
    const { gallery, kind } = leave.step;
    const loose = this.stock.get(gallery);
    const before = loose?.get(kind);
    const more = platesIn(standing.stack) - platesIn(was.stack);
    if (before === undefined) return;
    if (more > before) loose?.delete(kind);
    else loose?.set(kind, before - more);
  }

  /** Nobody knows how many of the kind lie there, once nobody knows how many were moved. */
  #uncounted({ leave }: SetRecord): void {
    if (leave === null || !isBricks(leave.step)) return;
    this.stock.get(leave.step.gallery)?.delete(leave.step.kind);
  }

  /** What is found says which zones are closed for it. */
  #zonesFound(id: string, { closed }: Standing): void {
    const found = closed.map((zone): Zone => {
      const key = zoneKey(zone);
      const kept = this.zones.find((each) => each.set === id && each.key === key);
      return kept ?? { key, set: id, post: `marshal:${key}` };
    });
    this.zones = [...this.zones.filter(({ set }) => set !== id), ...found];
  }

  #counted(set: Open, payload: On<'plates counted'>): void {
    const { leave, standing: was } = set;
    if (!isOn(leave, payload) || !isBricks(leave.step)) {
      this.#uncounted(set);
      doubt(set);
      return;
    }
    const stack = moreOrLess(leave, payload.count);
    if (stack === null) {
      this.#uncounted(set);
      doubt(set);
      return;
    }
    set.standing = { ...leave.before, stack };
    this.#stocked(set, was);
    set.leave = { ...leave, told: payload.count };
  }

  #reported(id: string, set: Open, payload: On<'step reported'>): void {
    const { leave, standing: was } = set;
    const physics = this.#demo.sets.get(id)?.physics ?? null;
    if (isOn(leave, payload) && was === null) {
      if (payload.as === 'done') this.#isDone(id, set, { leave, next: leave.before, physics });
      set.leave = null;
      return;
    }
    if (!isOn(leave, payload) || payload.as === 'otherwise') {
      this.#uncounted(set);
      doubt(set);
      if (isOn(leave, payload)) Object.assign(set, fast(leave.step));
      return;
    }
    if (isBricks(leave.step)) {
      this.#bricksReported(set, leave, payload.plates);
      return;
    }
    const next =
      payload.as === 'done' ? afterStep(physics, leave.before, leave.step) : leave.before;
    if (next === null || isElsewhere(leave, payload, next)) {
      doubt(set);
      return;
    }
    if (payload.as === 'done') this.#isDone(id, set, { leave, next, physics });
    Object.assign(set, { ...fast(leave.step), standing: next, leave: null });
    this.#stocked(set, was);
  }

  #isDone(
    id: string,
    set: Open,
    { leave, next, physics }: { leave: Leave; next: Standing; physics: OrderPhysics | null },
  ): void {
    const { step } = leave;
    if (isMove(step)) set.changed = false;
    else if (CHANGES.has(step.act)) set.changed = true;
    if (physics !== null)
      set.seen = pulled(physics, { before: leave.before, step, next }, set.seen);
    if (step.act !== 'close' && step.act !== 'reopen') return;
    const key = zoneKey(step.zone);
    const others = this.zones.filter((zone) => zone.key !== key || zone.set !== id);
    this.zones = step.act === 'close' ? [...others, { key, set: id, post: leave.post }] : others;
    if (step.act === 'close') set.visited = set.visited.filter((each) => key !== `drop:${each}`);
  }

  #bricksReported(set: Open, leave: Leave, plates: number | null): void {
    const was = set.standing;
    const isTwoCounts = leave.told > 0 && plates !== leave.told;
    const stack = plates === null || isTwoCounts ? null : moreOrLess(leave, plates);
    if (stack === null || plates === null) {
      this.#uncounted(set);
      doubt(set);
      if (isTwoCounts) set.collar = 'secured';
      return;
    }
    set.standing = { ...leave.before, stack };
    this.#stocked(set, was);
    if (plates > 0) set.changed = true;
    Object.assign(set, { collar: 'secured', leave: null, seen: plates > 0 ? null : set.seen });
  }
}

const CLEAN = { wish: null, leave: null, visited: [], seen: null } as const;
const AT_REST = { lock: 'closed', ring: 'on', collar: 'secured' } as const;
const NEW_SET: SetRecord = {
  ...CLEAN,
  ...AT_REST,
  standing: null,
  last: null,
  lockDoubted: false,
  tag: null,
  changed: true,
};

const CHANGES: ReadonlySet<Step['act']> = new Set([
  'attach',
  'takeUp',
  'rest',
  'release',
  'hangOnSteel',
  'takeOffSteel',
]);

/** What the work on it had opened. */
const fast = (step: Step): Partial<SetRecord> => {
  if (isBricks(step)) return { collar: 'secured' };
  return isMove(step) ? { lock: 'closed', ring: 'on' } : {};
};

const doubt = (set: Open): void => {
  const last = set.standing ?? set.last;
  Object.assign(set, { ...CLEAN, last, standing: null, changed: true });
};

const serve = (set: Open, service: Standing['service']): void => {
  if (set.standing !== null && set.standing.service !== 'deadHung')
    set.standing = { ...set.standing, service };
};

const returned = (set: Open, seq: number): void => {
  if (set.wish?.seq === seq) set.wish = null;
  else if (set.leave?.seq === seq) {
    if (set.leave.told > 0) doubt(set);
    else Object.assign(set, { ...fast(set.leave.step), leave: null });
  }
};

/** Whether it speaks of this leave, from the post that has it. */
const isOn = (
  leave: Leave | null,
  said: { readonly leave: number; readonly post: string },
): leave is Leave => leave?.seq === said.leave && leave.post === said.post;

const moreOrLess = ({ before, step }: Leave, count: number) =>
  isBricks(step)
    ? withPlates(before.stack, step.kind, step.act === 'add' ? count : -count)
    : before.stack;

const isElsewhere = (
  { step, before }: Leave,
  { as, height }: On<'step reported'>,
  next: Standing,
): boolean => {
  if (!isMove(step)) return false;
  if (height === null) return as === 'notDone';
  return Math.abs(height - (as === 'done' ? next : before).height) > READ_M;
};
