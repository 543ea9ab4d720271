import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf, workedOn } from './example-work.ts';
import { answerFrom, foundOf } from './found.ts';
import { type Asked, answerOf } from './question.ts';

const DOCUMENTS = documentsOf({ house: kestlemere, show: clockmaker, state: record });

const ASKED: readonly Asked[] = [
  { set: '9', job: 'strike', from: 'planned' },
  { set: '5', job: 'strike', from: 'planned' },
  { set: 'D3', job: 'strike', from: 'recorded' },
];

describe('an order found on another thread', () => {
  it.each(ASKED)('comes back whole, replayed again: %j', (asked) => {
    const worked = workedOn(DOCUMENTS, asked);
    const back = answerFrom(DOCUMENTS, asked, structuredClone(foundOf(worked)));
    if ('refusals' in back) throw new Error('refused');
    expect(back.plan).toEqual(worked.plan);
    expect(back.order.steps).toEqual(worked.order.steps);
    expect(back.order.verdict).toEqual(worked.order.verdict);
    expect(back.order.checked).toEqual(worked.order.checked);
    expect(back.order.assumed).toEqual(worked.order.assumed);
    expect(back.order.restraint).toEqual(worked.order.restraint);
    expect(back.question.doubt).toBe(worked.question.doubt);
  });

  it('says the same where none can be asked for', () => {
    const asked = { set: '4', job: 'strike', from: 'planned' } as const;
    const answer = answerOf(DOCUMENTS, asked);
    expect(answerFrom(DOCUMENTS, asked, structuredClone(foundOf(answer)))).toEqual(answer);
  });
});
