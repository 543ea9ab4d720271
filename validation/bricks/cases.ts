import type { ValidationCase } from '../form.ts';
import { theCase as doublePurchase } from './double-purchase/case.ts';
import { theCase as fifteenOrSixteen } from './fifteen-or-sixteen/case.ts';
import { theCase as steelBrickMasses } from './steel-brick-masses/case.ts';

export const bricksCases: readonly ValidationCase[] = [
  doublePurchase,
  fifteenOrSixteen,
  steelBrickMasses,
];
