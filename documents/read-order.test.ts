import { describe, expect, it } from 'vitest';
import { FOOT, metres, newtons, POUND_FORCE } from '#quantities';
import type { Restraint, Step } from '#state';
import type { OrderOfWork } from './order-of-work.ts';
import { house as houseSpecimen, order, show as showSpecimen } from './provocations/specimens.ts';
import { readHouseValue } from './read-house.ts';
import { readOrder, readOrderValue } from './read-order.ts';
import { readShowValue } from './read-show.ts';
import { writeDocument } from './write-document.ts';
import { orderDocument } from './write-order.ts';

const plant = readHouseValue(houseSpecimen);
const house = plant.ok ? plant.value.house : undefined;
const hung = readShowValue(showSpecimen, house);
const show = hung.ok ? hung.value.show : undefined;

const read = (raw: unknown): OrderOfWork => {
  const answer = readOrderValue(raw, house, show);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error.slice(0, 3)));
  return answer.value.order;
};

const SLING: Restraint = {
  kind: 'arborSling',
  resists: 'out',
  // One pound-force is 4.4482216152605 N, exactly.
  rating: newtons(200 * 4.4482216152605),
  from: null,
  to: null,
  owner: null,
  tag: null,
};

describe('an order of work', () => {
  it('reads as the steps of one set, in SI', () => {
    expect(read(order).steps).toEqual([
      { act: 'attach', item: 'cloth', as: 'flying' },
      { act: 'add', kind: 'F', count: 4, gallery: 'upper' },
      { act: 'reopen', zone: { zone: 'drop', gallery: 'upper' } },
      // 24 ft of 0.3048 m, exactly.
      { act: 'fly', to: 24 * 0.3048 },
      { act: 'rig', restraint: SLING },
      { act: 'ease', pull: 40 * 4.4482216152605, lifted: false },
      { act: 'hangOnSteel' },
      { act: 'close', zone: { zone: 'run' } },
      { act: 'remove', kind: 'H', count: 1, gallery: 'upper' },
    ]);
  });

  it('begins where it says, or nowhere of its own', () => {
    expect(read(order).start).toMatchObject({
      height: 3 * 0.3048,
      items: { cloth: 'away' },
      service: 'in',
      closed: [{ zone: 'run' }, { zone: 'drop', gallery: 'upper' }],
    });
    const { start: _, ...rest } = order;
    expect(read(rest).start).toBeNull();
  });

  it('has no zone closed that nobody closed', () => {
    const { closed: _, ...start } = order.start;
    expect(read({ ...order, start }).start?.closed).toEqual([]);
  });

  it('may be read alone, where nothing can be looked up', () => {
    const answer = readOrderValue({ ...order, set: '77', show: 'market' });
    expect(answer.ok && answer.value.order.set).toBe('77');
  });
});

const EVERY_ACT: readonly Step[] = [
  ...read(order).steps,
  { act: 'takeUp', item: 'cloth' },
  { act: 'rest', item: 'cloth' },
  { act: 'release', item: 'cloth' },
  { act: 'takeOffSteel' },
  // Heights that no few digits of a foot say: the search works in metres.
  { act: 'fly', to: metres(7.65) },
  { act: 'fly', to: metres(Math.PI) },
  { act: 'unrig', restraint: { ...SLING, rating: newtons(Math.E * 100), tag: '7', owner: 'lead' } },
  { act: 'rig', restraint: { ...SLING, rating: null, from: metres(3 * FOOT), to: metres(5.5) } },
  { act: 'ease', pull: newtons(0), lifted: true },
];

describe('a written order', () => {
  it.each(['customary', 'metric'] as const)('reads back to the same steps in %s', (units) => {
    const whole = { ...read(order), steps: EVERY_ACT };
    const answer = readOrder(writeDocument(orderDocument(whole, units)), house, show);
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    const back = answer.value.order;
    expect(back.steps.map(({ act }) => act)).toEqual(EVERY_ACT.map(({ act }) => act));
    for (const [index, step] of back.steps.entries()) {
      const own = EVERY_ACT[index];
      // A thousandth of a micrometre is what the writing of feet may lose.
      if (step.act === 'fly' && own?.act === 'fly') expect(step.to).toBeCloseTo(own.to, 9);
      else if ('restraint' in step && own !== undefined && 'restraint' in own) {
        expect(step.restraint.rating ?? -1).toBeCloseTo(own.restraint.rating ?? -1, 9);
        expect({ ...step.restraint, rating: 0, from: 0 }).toEqual({
          ...own.restraint,
          rating: 0,
          from: 0,
        });
      } else expect(step).toEqual(own);
    }
    expect(back.start).toEqual(whole.start);
  });

  it('says feet and pounds where the house does, and SI where they need too many digits', () => {
    const steps: readonly Step[] = [
      { act: 'fly', to: metres(24.5 * FOOT) },
      { act: 'fly', to: metres(7.65) },
      { act: 'ease', pull: newtons(40 * POUND_FORCE), lifted: false },
    ];
    const raw = orderDocument({ ...read(order), steps, start: null }, 'customary');
    expect(raw['steps']).toEqual([
      { act: 'fly', to: '24.5 ft' },
      { act: 'fly', to: '7.65 m' },
      { act: 'ease', pull: '40 lbf', lifted: false },
    ]);
    expect(raw).not.toHaveProperty('start');
  });
});
