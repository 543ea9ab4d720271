import { describe, expect, it } from 'vitest';
import { isAccepted } from '#orders';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf, workedOn } from './example-work.ts';
import { answerOf, likelyJob, startFor } from './question.ts';
import { orderMemory } from './remembered.ts';

const DOCUMENTS = documentsOf({ house: kestlemere, show: clockmaker, state: record });

describe('the order that a screen asks for', () => {
  it('means a start that makes sense for the job, whatever the address says', () => {
    expect(startFor('load', null)).toBe('bare');
    expect(startFor('load', 'recorded')).toBe('bare');
    expect(startFor('strike', null)).toBe('planned');
    expect(startFor('strike', 'recorded')).toBe('recorded');
    expect(startFor('change', 'planned')).toBe('recorded');
  });

  it('strikes what the record says hangs, and hangs what is bare or not recorded', () => {
    const sets = DOCUMENTS.state?.sets ?? {};
    expect(likelyJob(sets['9'])).toBe('strike');
    expect(likelyJob(sets['4'])).toBe('load');
    expect(likelyJob(undefined)).toBe('load');
  });

  it('is found for set 9, and the judge accepts it, from the plan and from the record', () => {
    for (const from of ['planned', 'recorded'] as const) {
      const { order, question } = workedOn(DOCUMENTS, { set: '9', job: 'strike', from });
      expect(isAccepted(order)).toBe(true);
      expect(order.steps.length).toBeGreaterThan(3);
      expect(order.verdict.states[0]?.standing).toEqual(question.start.standing);
    }
  });

  it('says why none can be asked for: coupled, unknown, nothing recorded', () => {
    const refused = (set: string, documents = DOCUMENTS) => {
      const answer = answerOf(documents, { set, job: 'strike', from: 'planned' });
      return 'refusals' in answer ? answer.refusals.map(({ code }) => code) : [];
    };
    expect(refused('23')).not.toEqual([]);
    expect(refused('4')).not.toEqual([]);
    expect(refused('9', { ...DOCUMENTS, state: null })).not.toEqual([]);
  });
});

describe('orders that were found', () => {
  const asked = { set: '9', job: 'strike', from: 'planned' } as const;

  it('are remembered for the same documents, set, job and start, and for no other', () => {
    const memory = orderMemory();
    const answer = workedOn(DOCUMENTS, asked);
    memory.keep(DOCUMENTS, asked, answer);
    expect(memory.find(DOCUMENTS, { ...asked })).toBe(answer);
    expect(memory.find({ ...DOCUMENTS }, asked)).toBe(answer);
    expect(memory.find(DOCUMENTS, { ...asked, from: 'recorded' })).toBeNull();
    expect(memory.find(DOCUMENTS, { ...asked, set: '5' })).toBeNull();
    expect(memory.find({ ...DOCUMENTS, show: { ...DOCUMENTS.show } }, asked)).toBeNull();
    expect(memory.find({ ...DOCUMENTS, state: null }, asked)).toBeNull();
  });

  it('are forgotten when four other states of the documents have been worked on', () => {
    const memory = orderMemory();
    const answer = { refusals: [] };
    const states = Array.from({ length: 5 }, () => ({
      ...DOCUMENTS,
      show: { ...DOCUMENTS.show },
    }));
    for (const documents of states) memory.keep(documents, asked, answer);
    const known = states.map((documents) => memory.find(documents, asked) !== null);
    expect(known).toEqual([false, true, true, true, true]);
  });
});
