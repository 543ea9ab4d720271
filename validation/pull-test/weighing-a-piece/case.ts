import { correctedMass, pullTest } from '#balance';
import { POUND, POUND_FORCE } from '#quantities';
import { drawn, type Make } from '../../draw.ts';
import {
  asNumber,
  exact,
  GRAVITY_EXACTLY,
  minus,
  POUND_EXACTLY,
  plus,
  times,
} from '../../exact.ts';
import type { ValidationCase } from '../../form.ts';

const SEED = 20_407;

/** As typed, in pounds and pounds-force. */
type Piece = {
  readonly listed: string;
  readonly truly: string;
  readonly part: string;
  readonly friction: string;
};

const piece: Make<Piece> = ({ whole }) => ({
  listed: (whole(500, 9000) / 10).toFixed(1),
  truly: (whole(500, 9000) / 10).toFixed(1),
  part: (whole(5, 100) / 100).toFixed(2),
  friction: String(whole(5, 90)),
});

export const theCase: ValidationCase = {
  id: 'VAL-PUL-07',
  title: 'The mass of a piece from a pull test',
  calculation: 'pull-test',
  unit: 'relative',
  tolerance: 1e-11,
  run: () => {
    const poundForce = times(POUND_EXACTLY, GRAVITY_EXACTLY);
    return drawn(piece, { seed: SEED, count: 300 }).flatMap(({ listed, truly, part, friction }) => {
      const excess = times(minus(exact(truly), exact(listed)), exact(part));
      const found = pullTest({
        outN: asNumber(times(plus(exact(friction), excess), poundForce)),
        inN: asNumber(times(minus(exact(friction), excess), poundForce)),
        handLinePerBatten: 1,
      });
      const massKg = correctedMass({
        listedKg: Number(listed) * POUND,
        carriedShare: Number(part),
        measuredN: found.imbalance,
        listedN: 0,
      });
      return [
        Math.abs(massKg / asNumber(times(exact(truly), POUND_EXACTLY)) - 1),
        Math.abs(found.friction / (Number(friction) * POUND_FORCE) - 1),
      ];
    });
  },
};
