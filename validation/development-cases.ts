/**
 * Cases that need a development tool, such as a general solver from the registry, and so run only
 * where the program is developed. cases.test.ts holds this list to the folders.
 */
import type { Calculation } from './form.ts';

export const DEVELOPMENT_CASES: Readonly<Record<Calculation, readonly string[]>> = {
  quantities: [],
  house: [],
  takeoff: [],
  balance: ['VAL-BAL-13'],
  bricks: ['VAL-BRK-01', 'VAL-BRK-02'],
  'pull-test': [],
  beam: ['VAL-BEM-14'],
  lines: [],
  motion: ['VAL-MOT-08'],
};
