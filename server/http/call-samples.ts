/** One command of each kind of a call, sound in its form: for tests of who may send it. */
import type { CallCommandKind, Payload } from '#events';
import { metres, newtons } from '#quantities';
import type { Standing } from '#state';

/** Bare, on its low stop, as set 4 of the demo stands. */
export const BARE: Standing = {
  height: metres(0.9144),
  stack: [{ kind: 'O', count: 3, tag: 'pipe' }],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

const STEP = { act: 'close', zone: { zone: 'run' } } as const;
const post = 'rail';

type Samples = { readonly [K in CallCommandKind]: Omit<Payload<K>, 'call'> };

export const CALL_SAMPLES: Samples = {
  'post left': { post },
  'post said': { post, isClear: true },
  'plan told': { job: 'load', steps: [STEP] },
  'leave asked': { post, step: STEP, paper: null, override: null },
  'leave seconded': { post, asked: 1, plates: null },
  'leave returned': { asked: 1, words: '' },
  'plates counted': { post, leave: 1, count: 1 },
  'step reported': {
    post,
    leave: 1,
    as: 'otherwise',
    plates: null,
    height: null,
    words: 'slipped',
  },
  'set found': {
    ...{ post, standing: BARE, lock: 'closed', ring: 'on', collar: 'secured' },
    ...{ basis: 'counted', second: null, settles: [] },
  },
  'set doubted': { why: 'another crew was at it' },
  'lock doubted': { why: 'the rope is wet' },
  'gallery counted': { post, gallery: 'upper', stock: { F: 100 }, second: null },
  'pull tested': { post, out: newtons(200), in: newtons(-60), height: metres(3) },
  'item weighed': { post, item: 'flat', mass: 290 },
  'stop called': { post: null, set: null, words: '' },
  'stop heard': { post, stop: 1 },
  'stop agreed': { stop: 1 },
  'stop lifted': { post: 'headFly', stop: 1, substitute: null },
  'tag placed': { tag: { number: 'T1', reason: 'rope worn' }, service: 'lockedOut' },
  'tag returned': { number: 'T1', repairedBy: 'a rigger', words: 'rope changed' },
  'note settled': { note: 1, words: 'it was the set beside it' },
};

const OF_HOUSE: ReadonlySet<CallCommandKind> = new Set([
  'post left',
  'post said',
  'gallery counted',
  'stop called',
  'stop heard',
  'stop agreed',
  'stop lifted',
]);

/** Targets as a device names them: the house, or one set of it. */
export const sampleTarget = (kind: CallCommandKind): string =>
  OF_HOUSE.has(kind) ? 'house' : 'set:kestlemere/4';
