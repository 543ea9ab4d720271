/** With hands on one of a pair a piece may be let go there: the other one then has all of it. */
import { unheld } from '../breach.ts';
import { isRunClosed } from '../holds.ts';
import { imbalanceOf, loadOf, shortOf } from '../scene.ts';
import type { Breach } from '../verdict.ts';
import { coupledIn, type Moment, sceneOf, setOf, sideOf, wholeOf } from './moment.ts';
import { otherOf, type Side } from './pair-verdict.ts';

type LetGo = {
  readonly breaches: readonly Breach[];
  /** It is not held, while nobody is in its path. */
  readonly leansOnZone: boolean;
};

const NOTHING: LetGo = { breaches: [], leansOnZone: false };

export const letGo = (moment: Moment): LetGo => {
  const { step, options, after } = moment;
  if (step === null || 'together' in step || options.faults === 'skip') return NOTHING;
  const { act } = step.step;
  if (act === 'close' || act === 'reopen' || act === 'fly') return NOTHING;
  const at = sideOf(moment, step);
  const breaches = onTheOther(moment, otherOf(at));
  return isRunClosed(after[at])
    ? { breaches: [], leansOnZone: breaches.length > 0 }
    : { breaches, leansOnZone: false };
};

/** One piece is let go at a time, and each by itself. */
const onTheOther = (moment: Moment, side: Side): readonly Breach[] => {
  const { pair, after } = moment;
  const scene = sceneOf(moment, side, after);
  const { standing, physics } = scene;
  const { doubt } = loadOf(scene);
  return coupledIn(pair, after).onBoth.flatMap((piece) => {
    const away = { ...standing.items, [piece[side]]: 'away' as const };
    const { lowN, highN } = imbalanceOf(physics, { ...standing, items: away });
    const wholeN = wholeOf(moment, [piece]);
    const load = { lowN: lowN + wholeN, highN: highN + wholeN, doubt };
    const short = shortOf(scene, load, physics.lockLimitN);
    const facts = { partner: setOf(moment, otherOf(side)) };
    return short === null ? [] : [unheld(scene, 'ORD-046', short, { item: piece[side], facts })];
  });
};
