import { describe, expect, it } from 'vitest';
import { exact, FRAME } from './example-items.ts';
import { frameCentre } from './frame-centre.ts';

describe('the centre of built scenery', () => {
  it('is the mean height of its parts by mass, as a share of the drop', () => {
    // Moments: stiles 2 × 1, top rail 0.5 × 2, skin 8 × 1 = 11 kg·m over 13 kg × 2 m.
    const { centre } = frameCentre(FRAME, exact(2));
    expect(centre.known && centre.value).toBeCloseTo(11 / 26, 12);
  });

  it('does not move with the allowance, which lies as the parts do', () => {
    const plain = frameCentre(FRAME, exact(2)).centre;
    expect(frameCentre({ ...FRAME, allowance: exact(1) }, exact(2)).centre).toEqual(plain);
  });

  it('needs the drop, and more than none of it', () => {
    expect(frameCentre(FRAME, { known: false }).centre).toEqual({
      known: false,
      needs: ['drop, from its top to its lowest point (drop): not given'],
    });
    expect(frameCentre(FRAME, exact(0)).centre.known).toBe(false);
  });

  it('needs parts with mass', () => {
    const weightless = { ...FRAME, members: [], sheets: [], hardware: [] };
    expect(frameCentre(weightless, exact(2)).centre.known).toBe(false);
  });

  it('is refused above the top of the piece: a height or the drop is wrong', () => {
    const { centre, faults } = frameCentre(FRAME, exact(0.8));
    expect(centre.known).toBe(false);
    expect(faults.map(({ code }) => code)).toEqual(['TKO-005']);
    const onTop = frameCentre(FRAME, exact(11 / 13)).centre;
    expect(onTop.known && onTop.value).toBeCloseTo(1, 12);
  });

  it('shows the height it stands for', () => {
    const { working } = frameCentre(FRAME, exact(2));
    expect(working.terms[0]?.value?.value).toBeCloseTo(11 / 13, 12);
    expect(working.formula).toBe('Z / D');
    expect(frameCentre(FRAME, { known: false }).working.result.value).toBeNull();
  });
});
