import { describe, expect, it } from 'vitest';
import { CLOTH, exact, given, itemOf } from './example-items.ts';
import { takeOff } from './take-off.ts';

const RULES = { toleranceByBasis: {} };
const cloth = (changes: Partial<typeof CLOTH> = {}, drop = exact<never>(5)) =>
  takeOff(itemOf({ ...CLOTH, ...changes }, { kind: 'cloth', drop }), RULES);

describe('the take-off of a cloth', () => {
  it('multiplies area, mass per area and the shares added, and adds the ties', () => {
    // 0.4 × 10 × 5 × 1.5 × 1.1 = 33 kg; 30 ties of 0.02 kg = 0.6 kg.
    const { mass } = cloth();
    expect(mass.known && mass.value.massKg).toBeCloseTo(33.6, 12);
  });

  it('adds paint and moisture as shares of what is below them', () => {
    const { mass } = cloth({ paint: exact(0.2), moisture: exact(0.05), ties: null });
    expect(mass.known && mass.value.massKg).toBeCloseTo(33 * 1.2 * 1.05, 12);
  });

  it('keeps what is in the hem apart, along the finished width', () => {
    const { hem, total, mass, lines } = cloth();
    expect(lines.map(({ isHem }) => isHem)).toEqual([false, false, true]);
    expect(hem?.known && hem.value.massKg).toBeCloseTo(6, 12);
    expect(total.known && total.value.massKg).toBeCloseTo(39.6, 12);
    expect(mass.known && mass.value.massKg).toBeCloseTo(33.6, 12);
  });

  it('has no hem where the take-off says that there is none', () => {
    expect(cloth({ bottomMassPerLength: null })).toMatchObject({ hem: null, hemWorking: null });
  });

  it('is blocked where any share is not given, and says what to write', () => {
    const missing = { known: false } as const;
    const { mass, needs, lines } = cloth({ hemAllowance: missing, paint: missing });
    expect(mass.known).toBe(false);
    expect(needs).toEqual([
      'hems, facings and webbing, as a share of the cloth (takeoff.hemAllowance): not given; ' +
        'write 0 % if there is none',
      'paint, as a share of the cloth (takeoff.paint): not given; write 0 % if there is none',
    ]);
    expect(lines.map(({ totalKg }) => totalKg)).toEqual([null, 0.6, 6]);
  });

  it('counts a width that is off in the cloth and in the hem as one', () => {
    // Width alone is off by 1 of 10 m: 3.3 kg of cloth and 0.6 kg of chain.
    const { total } = cloth({ width: given(10, 'measured', 1) });
    expect(total).toMatchObject({ known: true });
    if (!total.known) return;
    expect(total.value.uncertaintyKg).toBeCloseTo(3.9, 12);
    expect(total.value.uncertaintyRssKg).toBeCloseTo(3.9, 12);
  });

  it('shows its working with every symbol of the formula', () => {
    const { working, hemWorking } = cloth();
    const symbols = working.terms.map(({ symbol }) => symbol);
    expect(symbols).toEqual(['σ', 'b', 'D', 'f', 'a', 'p', 'q', 'n', 't']);
    const inFormula = working.formula.split(' ').filter((token) => /^[^\d()·+]+$/.test(token));
    expect(inFormula).toEqual(symbols);
    expect(working.result.value).toMatchObject({ kind: 'mass' });
    expect(hemWorking).toMatchObject({ formula: 'u · b', result: { symbol: 'm_hem' } });
  });
});
