/** Every case that runs anywhere; cases.test.ts holds the lists to the folders. */
import { balanceCases } from './balance/cases.ts';
import { beamCases } from './beam/cases.ts';
import { bricksCases } from './bricks/cases.ts';
import type { ValidationCase } from './form.ts';
import { houseCases } from './house/cases.ts';
import { linesCases } from './lines/cases.ts';
import { motionCases } from './motion/cases.ts';
import { pullTestCases } from './pull-test/cases.ts';
import { quantitiesCases } from './quantities/cases.ts';
import { takeoffCases } from './takeoff/cases.ts';

export type { Calculation, Comparison, ValidationCase } from './form.ts';
export { CALCULATIONS } from './form.ts';

export const CASES: readonly ValidationCase[] = [
  ...quantitiesCases,
  ...houseCases,
  ...takeoffCases,
  ...balanceCases,
  ...bricksCases,
  ...pullTestCases,
  ...beamCases,
  ...linesCases,
  ...motionCases,
];
