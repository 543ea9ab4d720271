import { expect, it } from 'vitest';
import { spreaderCount } from '#house';
import { INCH } from '#quantities';
import { record } from '../../record.ts';

it('VAL-HSE-03 counts a plate as the stack reaches each 24 in, not before', () => {
  let [asked, wrong] = [0, 0];
  for (const halfInches of [1, 2, 3, 4]) {
    let [stackM, stackHalves, plates] = [0, 0, 0];
    while (stackHalves + halfInches <= 192) {
      const before = Math.floor(stackHalves / 48);
      stackM += (halfInches / 2) * INCH;
      stackHalves += halfInches;
      if (Math.floor(stackHalves / 48) > before) plates += 1;
      asked += 1;
      if (spreaderCount(stackM, 24 * INCH) !== plates) wrong += 1;
    }
    expect(plates).toBe(4);
  }
  record({ id: 'VAL-HSE-03', worst: wrong, tolerance: 0, unit: 'stacks miscounted', cases: asked });
  expect(asked).toBe(192 + 96 + 64 + 48);
});
