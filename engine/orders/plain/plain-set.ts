/** A set of plain numbers as search and judge take it. */
import { physicsOfPlant } from '#assessment';
import { unreachable } from '#outcome';
import { metres, newtons } from '#quantities';
import type { OrderPhysics, Restraint, Standing, Step } from '#state';
import type { PlainSet, PlainStanding, PlainStep } from './asked.ts';

/** A mass of which nobody has said how far off it is counts as exact; see `doubt` of the input. */
export const physicsOf = (set: PlainSet): OrderPhysics => {
  const { purchase, lines, lineMassPerLength, batten, carriage, lowStop, highStop } = set;
  const { arborTopAtLow, wireEndAbove, battenUncertainty = 0, carriageUncertainty = 0 } = set;
  const plate = set.spreader;
  return physicsOfPlant({
    set: set.id,
    balance: {
      ...{ purchase, lines, lineMassPerLength, batten, carriage, lowStop, highStop },
      ...{ arborTopAtLow, wireEndAbove, battenUncertainty, carriageUncertainty },
      bricks: 0,
      items: [],
    },
    items: new Map(Object.entries(set.items)),
    bricks: set.bricks.map(({ id, mass, thickness, uncertainty = 0, looksLike = [] }) => {
      return { id, massKg: mass, thicknessM: thickness, looksLike, doubtKg: uncertainty };
    }),
    spreader:
      plate === undefined
        ? null
        : {
            massKg: plate.mass,
            thicknessM: plate.thickness,
            everyM: plate.every,
            rule: plate.rule,
          },
    lowStop: { heightM: lowStop, ratedN: set.lowStopRated },
    highStop: { heightM: highStop, ratedN: set.highStopRated },
    workingM: set.workingHeight,
    lockLimitN: set.lockLimit,
    handsBriefN: set.hands.brief,
    handsSteadyN: set.hands.steady,
    friction: { share: set.friction.share, constantN: set.friction.constant },
    panAtLowM: set.panAtLow,
    panThicknessM: set.panThickness,
    rodM: set.usableRod,
    arborMassLimitKg: set.arborMassLimit ?? null,
    galleries: set.galleries.map(({ id, floor, reachLow, reachHigh, stock }) => ({
      id,
      name: id,
      floorM: floor,
      reachFromM: floor + reachLow,
      reachToM: floor + reachHigh,
      stock,
    })),
  });
};

export const standingOf = (start: PlainStanding): Standing => ({
  ...start,
  height: metres(start.height),
  restraints: start.restraints.map(restraintOf),
});

const restraintOf = (restraint: PlainStanding['restraints'][number]): Restraint => {
  const { rating, from, to } = restraint;
  return {
    ...restraint,
    rating: rating === null ? null : newtons(rating),
    from: from === null ? null : metres(from),
    to: to === null ? null : metres(to),
  };
};

export const stepOf = (step: PlainStep): Step => {
  switch (step.act) {
    case 'attach':
    case 'takeUp':
    case 'rest':
    case 'release':
    case 'add':
    case 'remove':
    case 'hangOnSteel':
    case 'takeOffSteel':
    case 'close':
    case 'reopen':
      return step;
    case 'fly':
      return { act: step.act, to: metres(step.to) };
    case 'rig':
    case 'unrig':
      return { act: step.act, restraint: restraintOf(step.restraint) };
    case 'ease':
      return { act: step.act, pull: newtons(step.pull), lifted: step.lifted };
    default:
      return unreachable(step);
  }
};
