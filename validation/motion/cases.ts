import type { ValidationCase } from '../form.ts';
import { theCase as fallOfTheSet } from './fall-of-the-set/case.ts';
import { theCase as fallWithDrag } from './fall-with-drag/case.ts';
import { theCase as freeFallTable } from './free-fall-table/case.ts';
import { theCase as heapAndLeak } from './heap-and-leak/case.ts';
import { theCase as runawayTable } from './runaway-table/case.ts';
import { theCase as stopsAndSnatches } from './stops-and-snatches/case.ts';
import { theCase as swingsAndGrowth } from './swings-and-growth/case.ts';
import { theCase as textbookAtwood } from './textbook-atwood/case.ts';
import { theCase as twoSheaves } from './two-sheaves/case.ts';

export const motionCases: readonly ValidationCase[] = [
  textbookAtwood,
  runawayTable,
  swingsAndGrowth,
  fallOfTheSet,
  heapAndLeak,
  freeFallTable,
  stopsAndSnatches,
  fallWithDrag,
  twoSheaves,
];
