import type { ValidationCase } from '../form.ts';
import { theCase as birchPly } from './birch-ply/case.ts';
import { theCase as controlCable } from './control-cable/case.ts';
import { theCase as drape24By20 } from './drape-24-by-20/case.ts';
import { theCase as drapeOnDeck } from './drape-on-deck/case.ts';
import { theCase as drapeWithChain } from './drape-with-chain/case.ts';
import { theCase as electricCentre } from './electric-centre/case.ts';
import { theCase as frameCentre } from './frame-centre/case.ts';
import { theCase as hardFlat } from './hard-flat/case.ts';
import { theCase as metricTube } from './metric-tube/case.ts';
import { theCase as rollsOfCloth } from './rolls-of-cloth/case.ts';
import { theCase as snowBag } from './snow-bag/case.ts';
import { theCase as stageBraces } from './stage-braces/case.ts';
import { theCase as steelPipe } from './steel-pipe/case.ts';
import { theCase as timber } from './timber/case.ts';
import { theCase as uncertainty } from './uncertainty/case.ts';
import { theCase as woolSerge } from './wool-serge/case.ts';

export const takeoffCases: readonly ValidationCase[] = [
  birchPly,
  controlCable,
  drape24By20,
  drapeOnDeck,
  drapeWithChain,
  electricCentre,
  frameCentre,
  hardFlat,
  metricTube,
  rollsOfCloth,
  snowBag,
  stageBraces,
  steelPipe,
  timber,
  uncertainty,
  woolSerge,
];
