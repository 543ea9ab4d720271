/** Events of a call on the plain set 7, built one by one, for tests of the fold. */
import type { EventKind, EventOf, HouseEvent, Payload } from '#events';
import { metres } from '#quantities';
import type { HouseNow, SetNow, Standing, Step } from '#state';
import { foldEvent, NOTHING_OPEN } from './index.ts';

export const CALL = 'call-1';
export const SET = 'set:house/7';

export const LOW: Standing = {
  height: metres(1),
  stack: [{ kind: 'B', count: 2, tag: 'pipe' }],
  items: {},
  restraints: [],
  service: 'in',
  closed: [],
};

let seq = 0;

/** Kind and payload come together from whoever calls. */
export const event = <K extends EventKind>(
  kind: K,
  target: string,
  payload: Payload<K>,
  more: Partial<Pick<HouseEvent, 'by' | 'device'>> = {},
): HouseEvent => {
  seq += 1;
  const place = { seq, id: `ev_${seq}`, atMs: 1000 * seq, commandId: null };
  const said = { by: 'pers_a', device: 'dev_a', previous: '', hash: '', ...more };
  return { ...place, ...said, kind, target, payload } as unknown as EventOf<K> & HouseEvent;
};

export const onSet = <K extends EventKind>(kind: K, payload: Omit<Payload<K>, 'call'>) =>
  // The rest of the payload is that of the kind.
  event(kind, SET, { call: CALL, ...payload } as unknown as Payload<K>);

export const onHouse = <K extends EventKind>(
  kind: K,
  payload: Omit<Payload<K>, 'call'>,
  more?: Partial<Pick<HouseEvent, 'by' | 'device'>>,
) => event(kind, 'house', { call: CALL, ...payload } as unknown as Payload<K>, more);

export const counted = {
  basis: 'counted',
  at: '2026-11-28T09:00:00Z',
  by: 'loader',
  second: null,
} as const;

export const opened = (standing: Standing | null = LOW): HouseNow =>
  foldEvent(
    NOTHING_OPEN,
    onHouse('call opened', {
      ...{ house: 'house', show: 'show', isDrill: false, documents: [] },
      sets: {
        7: {
          standing,
          doubt: standing === null ? 'no record' : null,
          knowledge: counted,
          tag: null,
        },
      },
      galleries: { upper: { stock: { B: 10 }, countedMs: 5, by: 'loader' } },
    }),
  );

export const seven = ({ sets }: HouseNow): SetNow => {
  const set = sets['7'];
  if (set === undefined) throw new Error('set 7 is of this house');
  return set;
};

export const ADD: Step = { act: 'add', kind: 'B', count: 3, gallery: 'upper' };
export const FLY: Step = { act: 'fly', to: metres(9) };

export const after = (step: Step, from: Standing): Standing => {
  if (step.act === 'fly') return { ...from, height: step.to };
  if (step.act === 'close') return { ...from, closed: [...from.closed, step.zone] };
  if (step.act === 'reopen') return { ...from, closed: [] };
  if (step.act !== 'add') return from;
  const run = { kind: step.kind, count: step.count, tag: 'show' } as const;
  return { ...from, stack: [...from.stack, run] };
};

/** Asked and given: the state, and the number of the leave. */
export const given = (
  now: HouseNow,
  step: Step,
  post = 'rail',
): { readonly now: HouseNow; readonly leave: number } => {
  const asking = onSet('leave asked', { post, step, paper: null, override: null });
  const asked = foldEvent(now, asking);
  const from = seven(asked).standing ?? seven(asked).last ?? LOW;
  const leave = onSet('leave given', {
    ...{ post, asked: asking.seq, step, expects: after(step, from), second: null, override: null },
  });
  posts.set(leave.seq, post);
  return { now: foldEvent(asked, leave), leave: leave.seq };
};

/** Of every leave given here, the post that has it. */
const posts = new Map<number, string>();

/** From the post that has the leave. */
export const reportOf = (leave: number, more: Partial<Payload<'step reported'>> = {}): HouseEvent =>
  onSet('step reported', {
    ...{
      post: posts.get(leave) ?? 'rail',
      leave,
      as: 'done',
      plates: null,
      height: null,
      words: '',
    },
    ...more,
  });

export const findOf = (standing: Standing, more: Partial<Payload<'set found'>> = {}): HouseEvent =>
  onSet('set found', {
    ...{ post: 'deck', standing, lock: 'closed', ring: 'on', collar: 'secured' },
    ...{ basis: 'counted', second: null, settles: [], ...more },
  });

export const looseIn = ({ galleries }: Pick<HouseNow, 'galleries'>, id = 'upper') =>
  galleries[id]?.stock;

export const clearIn = ({ posts }: HouseNow, id = 'rail') => posts[id]?.isClear;
