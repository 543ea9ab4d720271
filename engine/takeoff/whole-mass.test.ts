import { describe, expect, it } from 'vitest';
import { itemOf, massOfKg } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: { weighed: 0.02 } };

describe('a mass given whole', () => {
  it('is the mass, under the name of the item, on its own basis', () => {
    const { mass, lines } = takeOff(itemOf(massOfKg(50), { name: 'Great dial' }), RULES);
    expect(mass).toEqual({
      known: true,
      value: { massKg: 50, uncertaintyKg: 1, uncertaintyRssKg: 1 },
    });
    expect(lines).toMatchObject([{ name: 'Great dial', basis: 'weighed', totalKg: 50 }]);
  });

  it('keeps what is in the hem apart', () => {
    const cloth = itemOf(massOfKg(50, 10), { kind: 'cloth' });
    const { mass, hem, total, lines } = takeOff(cloth, RULES);
    expect(lines.map(({ isHem }) => isHem)).toEqual([false, true]);
    expect(mass.known && mass.value.massKg).toBe(50);
    expect(hem?.known && hem.value.massKg).toBe(10);
    expect(total).toMatchObject({ known: true, value: { massKg: 60 } });
    expect(total.known && total.value.uncertaintyKg).toBeCloseTo(1.2, 12);
  });

  it('is unknown where nobody has said, and so is a hem', () => {
    const item = itemOf({
      by: 'mass',
      mass: { known: false, why: 'builder has not weighed it' },
      hem: { known: false },
    });
    const { mass, hem, needs, working } = takeOff(item, RULES);
    expect(mass.known || hem?.known).toBe(false);
    expect(needs).toEqual([
      'mass (takeoff.mass): builder has not weighed it',
      'pipe or chain in the hem (takeoff.hem): not given; write 0 kg if there is none',
    ]);
    expect(working.result.value).toBeNull();
  });
});
