import { describe, expect, it } from 'vitest';
import { showOrders } from '#orders';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { documentsOf, workedOn } from './example-work.ts';
import { ordersOf } from './order-source.ts';
import { orderMemory } from './remembered.ts';

const DOCUMENTS = documentsOf({ house: kestlemere, show: clockmaker, state: record });
const { house, show, state } = DOCUMENTS;

describe('orders for the sheets', () => {
  it('are those of the show, asked for just as a sheet on paper asks for them', () => {
    const [mine, theirs] = [ordersOf(DOCUMENTS, orderMemory()), showOrders(house, show, state)];
    expect(mine.jobs).toEqual(theirs.jobs);
    for (const kind of ['load', 'strike'] as const) {
      const [one, other] = [mine.of('9', kind), theirs.of('9', kind)];
      if ('refusals' in one || 'refusals' in other) throw new Error('refused');
      expect(one.order.steps).toEqual(other.order.steps);
    }
  });

  it('are not searched for again where the order screen found them, and the other way', () => {
    const memory = orderMemory();
    const asked = { set: '9', job: 'strike', from: 'planned' } as const;
    const found = workedOn(DOCUMENTS, asked);
    memory.keep(DOCUMENTS, asked, found);
    const source = ordersOf(DOCUMENTS, memory);
    expect(source.of('9', 'strike')).toBe(found);
    const load = source.of('9', 'load');
    expect(memory.find(DOCUMENTS, { set: '9', job: 'load', from: 'bare' })).toBe(load);
  });
});
