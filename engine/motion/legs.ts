/** The way of one set, stretch by stretch, with all that acts on it and all that moves. */
import { GRAVITY } from '#quantities';
import { driveOver, over, type Straight, type Stretch, stretchesAlong } from './along.ts';
import type { Piece } from './piece.ts';
import type { BrokenLine, Moving, Travel, Way } from './types.ts';

export type Leg = {
  readonly stretch: Stretch;
  readonly drive: Straight;
  readonly friction: Straight;
  readonly net: Straight;
  readonly hangingKg: Straight;
  readonly movingKg: Straight;
};

export const legsOf = (
  the: Travel & { readonly moves: Moving; readonly hold: number },
  way: Way,
): readonly Leg[] => {
  const { curve, moves } = the;
  const hanging: BrokenLine =
    typeof moves.hanging === 'number'
      ? [{ height: the.lowStop, below: moves.hanging, above: moves.hanging }]
      : moves.hanging;
  const restKg = moves.arbor / moves.purchase ** 2 + moves.lineMass + moves.blockMass;
  return stretchesAlong(the, way, [curve, hanging]).map((stretch) => {
    const drive = driveOver(curve, stretch, way);
    const hangingKg = over(hanging, stretch, way);
    const friction = both(hangingKg, (kg) => frictionN(moves, kg));
    return {
      stretch,
      drive,
      friction,
      hangingKg,
      net: {
        first: drive.first - friction.first - the.hold,
        last: drive.last - friction.last - the.hold,
      },
      movingKg: both(hangingKg, (kg) => kg + restKg),
    };
  });
};

const both = ({ first, last }: Straight, f: (value: number) => number): Straight => ({
  first: f(first),
  last: f(last),
});

const frictionN = ({ friction, arbor, purchase }: Moving, hangingKg: number): number => {
  const arborKg = friction.of === 'both' ? arbor / purchase : 0;
  return friction.share * GRAVITY * (hangingKg + arborKg) + friction.constant;
};

export const pieceOf = ({ stretch, net, movingKg }: Leg): Piece => ({
  lengthM: stretch.lengthM,
  netN: net.first,
  netSlope: (net.last - net.first) / stretch.lengthM,
  massKg: movingKg.first,
  massSlope: (movingKg.last - movingKg.first) / stretch.lengthM,
});
