import { describe, expect, it } from 'vitest';
import { exact, FRAME, given, itemOf } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: { estimated: 0.25 } };
const frame = (changes: Partial<typeof FRAME> = {}) =>
  takeOff(itemOf({ ...FRAME, ...changes }), RULES);

describe('the take-off of built scenery', () => {
  it('adds members, sheets and hardware, and the allowance on all of them', () => {
    // 2 × 2 × 0.5 + 0.5 + 0.5 + 2 × 4 + 2 × 1 = 13 kg, and a tenth more.
    const { mass } = frame();
    expect(mass.known && mass.value.massKg).toBeCloseTo(14.3, 12);
  });

  it('has a line for each part and one for the allowance, which add up to the mass', () => {
    const { lines } = frame();
    expect(lines.map(({ name, count, totalKg }) => [name, count, totalKg])).toEqual([
      ['stile', 2, 2],
      ['bottom rail', 1, 0.5],
      ['top rail', 1, 0.5],
      ['skin', 1, 8],
      ['foot iron', 2, 2],
      ['paint, glue and fixings', 1, expect.closeTo(1.3, 12)],
    ]);
  });

  it('takes the tolerance of one part also in the allowance on it', () => {
    const hardware = [
      { name: 'iron', count: 2, z: exact<never>(0), each: given<never>(1, 'estimated') },
    ];
    const { mass } = frame({ hardware });
    // 2 irons off by 0.25 kg each, and a tenth of that.
    expect(mass.known && mass.value.uncertaintyKg).toBeCloseTo(0.55, 12);
    expect(mass.known && mass.value.uncertaintyRssKg).toBeCloseTo(0.55, 12);
  });

  it('names the part and the field that is missing', () => {
    const { needs } = frame({
      sheets: [
        { name: 'skin', count: 1, z: exact(1), area: exact(2), massPerArea: { known: false } },
      ],
    });
    expect(needs).toEqual(['mass per area of skin (takeoff.sheets[0].massPerArea): not given']);
  });

  it('needs no height of a part for the mass', () => {
    const { mass, centre } = frame({
      hardware: [{ name: 'iron', count: 2, z: { known: false }, each: exact(1) }],
    });
    expect(mass.known).toBe(true);
    expect(centre).toEqual({
      known: false,
      needs: ['height of the centre of iron above the foot (takeoff.hardware[0].z): not given'],
    });
  });

  it('does not weigh nothing where nothing is listed', () => {
    const { mass } = frame({ members: [], sheets: [], hardware: [] });
    expect(mass).toEqual({
      known: false,
      needs: ['lines of the take-off (takeoff): found no line, wanted one line or more'],
    });
  });

  it('shows each part as a term', () => {
    const { working } = frame();
    expect(working.formula).toBe('( m1 + m2 + m3 + m4 + m5 ) · ( 1 + a )');
    expect(working.terms.map(({ symbol }) => symbol)).toEqual(['m1', 'm2', 'm3', 'm4', 'm5', 'a']);
    expect(working.terms[0]).toMatchObject({ meaning: 'stile, 2 of them' });
  });
});
