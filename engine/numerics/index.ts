export { crossing } from './crossing.ts';
export type { Factors } from './linear.ts';
export { factorise, solveWith } from './linear.ts';
export { studentWithin } from './student.ts';
