import { describe, expect, it } from 'vitest';
import { openDesk } from '#call';
import { metres } from '#quantities';
import type { SetNow } from '#state';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { foundOf } from '../order/found.ts';
import { answerOf } from '../order/question.ts';
import { openedOn, setOf, withSets } from './opened-for-tests.ts';
import { caseInCall, planFound, startOf } from './plan-in-call.ts';

const { example: EXAMPLE, now: OPENED } = openedOn({
  house: kestlemere,
  show: clockmaker,
  state: record,
});

const NOW = OPENED;
const ASKED = { set: '9', job: 'strike', from: 'recorded' } as const;

const DESK = openDesk(EXAMPLE);

const orderFrom = (part: Partial<SetNow>) => {
  const now = withSets(NOW, { '9': part });
  const inCall = caseInCall(EXAMPLE, DESK, { now, set: '9' });
  if (inCall === null) throw new Error('set 9 can be planned');
  return planFound(inCall, ASKED, foundOf(answerOf(inCall.documents, ASKED, inCall)));
};

describe('an order of work in a call', () => {
  const { standing } = setOf(NOW, '9');
  if (standing === null) throw new Error('set 9 of the demo is known');

  it('begins where the set truly stands, and not where a document has it', () => {
    const order = orderFrom({});
    expect(order.is).toBe('order');
    if (order.is !== 'order' || 'refusals' in order.answer) throw new Error('no order');
    const [first] = order.answer.order.verdict.states;
    expect(first?.standing).toEqual(standing);
    // Another height in the call, whatever the record of the demo says.
    const lower = { ...standing, height: metres(standing.height - 1) };
    const other = orderFrom({ standing: lower });
    if ('refusals' in other.answer) throw new Error('no answer');
    expect(other.answer.order.verdict.states[0]?.standing.height).toBe(lower.height);
  });

  it('does not close a zone again that the call has closed', () => {
    const closed = orderFrom({ standing: { ...standing, closed: [{ zone: 'run' }] } });
    if (closed.is !== 'order') throw new Error('no order');
    const closes = closed.steps.filter(({ act }) => act === 'close');
    expect(closes).not.toContainEqual({ act: 'close', zone: { zone: 'run' } });
  });

  it('reckons with what was weighed in the call, and not with what the show has', () => {
    const [item = ''] = Object.keys(standing.items);
    const written = orderFrom({});
    // Twice of what the show has of the cloth and its hem.
    const weighed = orderFrom({ weighed: { [item]: 158.8 } });
    const firstN = ({ answer }: typeof written): number => {
      if ('refusals' in answer) throw new Error('no answer');
      return answer.order.verdict.states[0]?.imbalance.highN ?? Number.NaN;
    };
    // 79.4 kg more where all of it hangs: 79.4 kg × 9.80665 m/s² = 778.6 N at most.
    const moreN = firstN(weighed) - firstN(written);
    expect(moreN).toBeGreaterThan(0);
    expect(moreN).toBeLessThanOrEqual(779);
  });

  it('is not asked for from a set that nobody knows, or with leave out on it', () => {
    const set = setOf(NOW, '9');
    expect(startOf(set)).toBe(standing);
    expect(startOf({ ...set, standing: null })).toBe(null);
    const asked = {
      ...{ seq: 3, post: 'rail', by: null, device: null, atMs: 1, override: null },
      ...{ step: { act: 'takeOffSteel' } as const, secondOf: 'headFly' },
    };
    expect(startOf({ ...set, asked })).toBe(null);
    const lost = withSets(NOW, { '9': { standing: null } });
    expect(caseInCall(EXAMPLE, DESK, { now: lost, set: '9' })).toBe(null);
  });
});
