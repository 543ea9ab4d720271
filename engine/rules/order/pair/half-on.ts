/** Both go or neither; and a piece is on both or on neither before anything else is done (R10). */
import { unreachable } from '#outcome';
import type { Step } from '#state';
import { breach, unheld } from '../breach.ts';
import { gravest } from '../done.ts';
import { imbalanceOf, loadOf, shortOf } from '../scene.ts';
import type { Breach } from '../verdict.ts';
import { type Coupled, coupledIn, type Moment, sceneOf, setOf, sideOf, wholeOf } from './moment.ts';
import { otherOf, SIDES, type Side } from './pair-verdict.ts';
import { hasMoved } from './replay.ts';

export const aloneBreaches = (moment: Moment): readonly Breach[] => {
  const { pair, step, before, after } = moment;
  if (step === null || 'together' in step || step.step.act !== 'fly') return [];
  const { onBoth, onOne } = coupledIn(pair, before);
  return SIDES.filter(
    (side) =>
      hasMoved(before[side], after[side]) &&
      (onBoth.length > 0 || onOne.some(({ has }) => has === side)),
  ).map((side) =>
    breach(sceneOf(moment, side, before), {
      rule: 'ORD-041',
      facts: { partner: setOf(moment, otherOf(side)) },
    }),
  );
};

/** Zones and more holds are no work on the piece; nor are hands that finish what is half done. */
const isOfHalf = ({ onOne }: Coupled, side: Side, step: Step): boolean => {
  switch (step.act) {
    case 'close':
    case 'reopen':
    case 'rig':
      return true;
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
      return onOne.some(({ piece }) => piece[side] === step.item);
    case 'add':
    case 'remove':
    case 'fly':
    case 'unrig':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'ease':
      return false;
    default:
      return unreachable(step);
  }
};

export const otherWorkBreaches = (moment: Moment): readonly Breach[] => {
  const { pair, step, before } = moment;
  if (step === null) return [];
  const coupled = coupledIn(pair, before);
  const [half] = coupled.onOne;
  if (half === undefined) return [];
  const side = sideOf(moment, step);
  if (!('together' in step) && isOfHalf(coupled, side, step.step)) return [];
  return [
    breach(sceneOf(moment, side, before), {
      rule: 'ORD-042',
      item: half.piece[half.has],
      facts: { has: setOf(moment, half.has) },
    }),
  ];
};

/** Where its other end lies, nobody knows: the set has none of it or all of it, or any share. */
export const halfHeldBreaches = (moment: Moment): readonly Breach[] => {
  const { pair, before, after, index } = moment;
  const was = index < 0 ? [] : coupledIn(pair, before).onOne;
  const isNew = ({ piece, has }: Coupled['onOne'][number]): boolean =>
    !was.some((each) => each.piece === piece && each.has === has);
  const { onOne } = coupledIn(pair, after);
  return SIDES.flatMap((side) => {
    const mine = onOne.filter(({ has }) => has === side);
    return mine.some(isNew) ? notHeld(moment, side, mine) : [];
  });
};

const notHeld = (moment: Moment, side: Side, mine: Coupled['onOne']): readonly Breach[] => {
  const { after } = moment;
  const scene = sceneOf(moment, side, after);
  const { standing, physics } = scene;
  const away = Object.fromEntries(mine.map(({ piece }) => [piece[side], 'away' as const]));
  const none = { ...standing, items: { ...standing.items, ...away } };
  const { lowN, highN } = imbalanceOf(physics, none);
  const wholeN = wholeOf(
    moment,
    mine.map(({ piece }) => piece),
  );
  const { doubt } = loadOf(scene);
  const [item] = mine.map(({ piece }) => piece[side]);
  return gravest(
    [0, wholeN].flatMap((shareN) => {
      const load = { lowN: lowN + shareN, highN: highN + shareN, doubt };
      const short = shortOf(scene, load, physics.lockLimitN);
      const named = item === undefined ? {} : { item };
      return short === null ? [] : [unheld(scene, 'ORD-043', short, { ...named, after: none })];
    }),
  );
};
