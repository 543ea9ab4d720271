import type { ValidationCase } from '../form.ts';
import { theCase as clothPile } from './cloth-pile/case.ts';
import { theCase as drapeOnDeck } from './drape-on-deck/case.ts';
import { theCase as exactFractions } from './exact-fractions/case.ts';
import { theCase as fifteenOrSixteen } from './fifteen-or-sixteen/case.ts';
import { theCase as handLineGap } from './hand-line-gap/case.ts';
import { theCase as loomCatenary } from './loom-catenary/case.ts';
import { theCase as loomHalf } from './loom-half/case.ts';
import { theCase as loomLoopEnergy } from './loom-loop-energy/case.ts';
import { theCase as restHeights } from './rest-heights/case.ts';
import { theCase as ropeMigration } from './rope-migration/case.ts';
import { theCase as tiltingPieceMoments } from './tilting-piece-moments/case.ts';
import { theCase as tiltingPieceWork } from './tilting-piece-work/case.ts';
import { theCase as twoMasses } from './two-masses/case.ts';
import { theCase as twoToOne } from './two-to-one/case.ts';
import { theCase as wholeSetDouble } from './whole-set-double/case.ts';
import { theCase as wholeSetSingle } from './whole-set-single/case.ts';
import { theCase as worstBetweenHeights } from './worst-between-heights/case.ts';

export const balanceCases: readonly ValidationCase[] = [
  clothPile,
  drapeOnDeck,
  exactFractions,
  fifteenOrSixteen,
  handLineGap,
  loomCatenary,
  loomHalf,
  loomLoopEnergy,
  restHeights,
  ropeMigration,
  tiltingPieceMoments,
  tiltingPieceWork,
  twoMasses,
  twoToOne,
  wholeSetDouble,
  wholeSetSingle,
  worstBetweenHeights,
];
