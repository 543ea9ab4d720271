/** What is asked of a set that nothing holds, as plain SI numbers. */
import type { Kilograms, Metres, MetresPerSecond, Newtons } from '#quantities';

/** Which way the batten goes: in is down, out is up. */
export type Way = 'in' | 'out';

/** A quantity along the travel: straight between nodes, and two values where it jumps. */
export type BrokenLine = readonly {
  readonly height: number;
  readonly below: number;
  readonly above: number;
}[];

/**
 * The imbalance over the travel, N at the batten, positive batten heavy. The nodes of a balance
 * curve are this as they are.
 */
export type ImbalanceNode = {
  readonly height: number;
  readonly below: number;
  readonly above: number;
  /** What deck and batten may share at the height itself, where a piece rests with taut picks. */
  readonly contact?: { readonly low: number; readonly high: number };
};

export type Travel = {
  readonly curve: readonly ImbalanceNode[];
  readonly lowStop: number;
  readonly highStop: number;
  /** Where the batten is when it is let go. */
  readonly height: number;
};

/**
 * Friction at the batten: a share of the weights that hang at the moment, and a constant.
 * `batten` counts the batten and all on it, `both` the pull of the arbor too.
 */
export type FrictionRule = {
  readonly share: number;
  readonly of: 'batten' | 'both';
  readonly constant: number;
};

/** What moves with the batten, and what slows it. */
export type Moving = {
  readonly purchase: 1 | 2;
  /** The whole arbor with its bricks. */
  readonly arbor: number;
  /** Mass on the batten with the batten itself; a line where pieces land on the way. */
  readonly hanging: number | BrokenLine;
  /** Lift lines that run with the batten, all of them; the dead leg of double purchase rests. */
  readonly lineMass: number;
  /** All blocks that turn, as mass at the rim, J/R². */
  readonly blockMass: number;
  readonly friction: FrictionRule;
};

/** A height at which a piece leaves the batten or joins it at once. */
export type Contact = {
  readonly height: Metres;
  readonly is: 'landing' | 'pickingUp';
  readonly mass: Kilograms;
  readonly speedBefore: MetresPerSecond;
  readonly speedAfter: MetresPerSecond;
};

export type Pull = { readonly batten: Newtons; readonly arbor: Newtons };
