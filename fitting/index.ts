export { fitShow, remapped } from './fit.ts';
export type { Named } from './fitted-show.ts';
export { leastCost, type Places } from './least-cost.ts';
export { type Proposal, propose } from './propose.ts';
export {
  type AskedOf,
  groupedQuestions,
  questionLetter,
  sayBar,
  sayChange,
  sayDiffers,
  saySide,
  sayWhat,
} from './say-fit.ts';
export type {
  Bar,
  Differs,
  Fit,
  FitAsked,
  FitChange,
  Mapping,
  PieceFit,
  Question,
} from './types.ts';
