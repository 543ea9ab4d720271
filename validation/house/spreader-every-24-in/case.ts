import { spreaderCount } from '#house';
import { INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';
import { unlike } from '../../unlike.ts';

export const theCase: ValidationCase = {
  id: 'VAL-HSE-03',
  title: 'A spreader plate every 24 inches of stack',
  calculation: 'house',
  unit: 'stacks miscounted',
  tolerance: 0,
  run: () =>
    [1, 2, 3, 4].flatMap((halfInches) => {
      const errors: number[] = [];
      let [stackM, stackHalves, plates] = [0, 0, 0];
      while (stackHalves + halfInches <= 192) {
        const before = Math.floor(stackHalves / 48);
        stackM += (halfInches / 2) * INCH;
        stackHalves += halfInches;
        if (Math.floor(stackHalves / 48) > before) plates += 1;
        errors.push(unlike(spreaderCount(stackM, 24 * INCH), plates));
      }
      return errors;
    }),
};
