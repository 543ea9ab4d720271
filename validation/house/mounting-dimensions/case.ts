import { travelRoom } from '#house';
import { FOOT, INCH } from '#quantities';
import type { ValidationCase } from '../../form.ts';

const [ABOVE_IN, BELOW_IN] = [18, 24];

export const theCase: ValidationCase = {
  id: 'VAL-HSE-06',
  title: 'Room above and below the arbor in a wall built to mounting dimensions',
  calculation: 'house',
  unit: 'in',
  tolerance: 1e-7,
  run: () =>
    [30, 48.5, 68, 80].flatMap((beamFt) =>
      [5, 7, 8.25, 10].flatMap((arborFt) =>
        ([1, 2] as const).flatMap((purchase) => {
          const arborTravelIn = beamFt * 12 - ABOVE_IN - arborFt * 12 - BELOW_IN;
          const room = (extraIn: number) =>
            travelRoom({
              panAtLowM: beamFt * FOOT - ABOVE_IN * INCH - arborFt * FOOT,
              arborLengthM: arborFt * FOOT,
              headBlockM: beamFt * FOOT,
              lowStopM: 3 * FOOT,
              highStopM: 3 * FOOT + purchase * (arborTravelIn + extraIn) * INCH,
              purchase,
            });
          return [
            Math.abs(room(0).above / INCH - ABOVE_IN),
            Math.abs(room(0).below / INCH - BELOW_IN),
            Math.abs(room(1).below / INCH - (BELOW_IN - 1)),
          ];
        }),
      ),
    ),
};
