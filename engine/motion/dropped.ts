import {
  GRAVITY,
  type Joules,
  joules,
  type Metres,
  type MetresPerSecond,
  metres,
  metresPerSecond,
  type Seconds,
  seconds,
} from '#quantities';

export type DroppedCase = {
  readonly mass: number;
  /** Height that it falls from, above the deck. */
  readonly from: number;
  /** Across, as it leaves; 0 where it is let fall. */
  readonly speed: number;
  readonly air?: Air;
  /** The house's own rule for what bounces, rolls or splinters. */
  readonly bounce: BounceRule;
  /** Whatever lies below, with people on it or not: galleries, deck, trap, pit. */
  readonly levels: readonly Level[];
};

export type Air = {
  readonly dragCoefficient: number;
  readonly area: number;
  readonly density: number;
};

/** At least so far, and at least so much of the fall. */
export type BounceRule = { readonly least: number; readonly shareOfFall: number };

export type Level = { readonly name: string; readonly height: number };

export type Fall = {
  readonly time: Seconds;
  readonly speed: MetresPerSecond;
  readonly energy: Joules;
  /** How far across it lands. */
  readonly reach: Metres;
};

export type FallOn = {
  readonly name: string;
  readonly height: number;
  readonly fall: Metres;
  readonly free: Fall;
  readonly inAir?: Fall;
  /** To keep clear beyond the edge that it falls from; the allowance is the house's own rule. */
  readonly zone: {
    readonly reach: Metres;
    readonly allowance: { readonly distance: Metres; readonly basis: 'houseRule' };
    readonly distance: Metres;
  };
};

/**
 * A brick or tool that falls from a gallery, onto every level below it, lowest last.
 *
 * Source  calculations.md section 6, the-job.md C79 and C80
 * Omits   what it strikes on the way: a ricochet off an arbor or a lower gallery goes further
 * Check   VAL-MOT-06; 25 lb from 58 ft: 18.6 m/s, 1966 J, 1.9 s
 */
export const dropped = (the: DroppedCase): readonly FallOn[] =>
  the.levels
    .filter(({ height }) => height < the.from)
    .toSorted((one, other) => other.height - one.height)
    .map(({ name, height }) => {
      const fallM = the.from - height;
      const free = freeFall({ massKg: the.mass, fallM, speedMs: the.speed });
      const inAir =
        the.air === undefined
          ? undefined
          : fallInAir({ massKg: the.mass, fallM, speedMs: the.speed }, the.air);
      const reachM = Math.max(free.reach, inAir?.reach ?? 0);
      const allowanceM = Math.max(the.bounce.least, the.bounce.shareOfFall * fallM);
      return {
        name,
        height,
        fall: metres(fallM),
        free,
        ...(inAir === undefined ? {} : { inAir }),
        zone: {
          reach: metres(reachM),
          allowance: { distance: metres(allowanceM), basis: 'houseRule' },
          distance: metres(reachM + allowanceM),
        },
      };
    });

type Thrown = { readonly massKg: number; readonly fallM: number; readonly speedMs: number };

/**
 * Without air.
 *
 *     t = √(2·z/g)    v = √(2·g·z + u²)    E = m·(g·z + u²/2)    reach = u·t
 *
 *     z  m  fallM    u  m/s  speedMs  across
 *
 * Source  Galileo's law of fall
 * Check   check-values 8.1
 */
export const freeFall = ({ massKg, fallM, speedMs }: Thrown): Fall => {
  const timeS = Math.sqrt((2 * fallM) / GRAVITY);
  const square = 2 * GRAVITY * fallM + speedMs ** 2;
  return {
    time: seconds(timeS),
    speed: metresPerSecond(Math.sqrt(square)),
    energy: joules((massKg * square) / 2),
    reach: metres(speedMs * timeS),
  };
};

/**
 * With drag that grows with the square of the speed.
 *
 *     c = √(2·m·g / (ρ·C·S))      v = c·√(1 − e^(−2·g·z/c²))      t = (c/g)·arcosh(e^(g·z/c²))
 *
 *     C  -      dragCoefficient    S  m²  area, across the fall    ρ  kg/m³  density
 *     c  m/s    the speed at which drag is the weight
 *
 * Source  m·v·dv/dz = m·g − ρ·C·S·v²/2, integrated once and twice; textbooks, from memory
 * Omits   drag on the speed across, and what that speed adds to the drag of the fall: the energy
 *         and the reach are those of a piece that keeps its speed across (both too high)
 * Check   VAL-MOT-08, against an integrator; little air is a free fall
 */
export const fallInAir = ({ massKg, fallM, speedMs }: Thrown, air: Air): Fall => {
  const square = (2 * massKg * GRAVITY) / (air.density * air.dragCoefficient * air.area);
  const depth = (GRAVITY * fallM) / square;
  const downSquare = -square * Math.expm1(-2 * depth);
  // arcosh(e^d) = ln(e^d + √(e^2d − 1)) = d + ln(1 + √(1 − e^−2d)), without loss for a small d.
  const timeS =
    (Math.sqrt(square) / GRAVITY) * (depth + Math.log1p(Math.sqrt(-Math.expm1(-2 * depth))));
  const speedSquare = downSquare + speedMs ** 2;
  return {
    time: seconds(timeS),
    speed: metresPerSecond(Math.sqrt(speedSquare)),
    energy: joules((massKg * speedSquare) / 2),
    reach: metres(speedMs * timeS),
  };
};
