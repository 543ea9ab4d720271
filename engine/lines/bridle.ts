import { type Newtons, newtons, type Radians, radians } from '#quantities';

export type BridleLeg = {
  readonly tension: Newtons;
  /** Its share of the load, straight up. */
  readonly vertical: Newtons;
  /** Above the horizontal. */
  readonly angle: Radians;
};

export type Bridle = {
  readonly left: BridleLeg;
  readonly right: BridleLeg;
  /** By which the legs pull their ends towards each other. */
  readonly thrust: Newtons;
};

/**
 * Two legs that meet in one point and hold a load there.
 *
 *     V_l = W·b/(a + b)      V_r = W·a/(a + b)      H = W·a·b / ((a + b)·c)
 *     T = √(V² + H²) = V / sin α
 *
 *     W     N  loadN
 *     a, b  m  leftM, rightM  from below each upper end to the point where the legs meet
 *     c     m  heightM        of the upper ends above that point
 *     α        angle of a leg above the horizontal: at 30° it carries twice its share
 *
 * Source  equilibrium of the point; the-job.md C36
 * Holds   upper ends at one height, a + b > 0, c > 0; the point between them, so neither leg pushes
 * Omits   the weight and stretch of the legs
 * Check   bridle.test.ts: legs at 30° and 45°, uneven legs by hand, equilibrium of any
 */
export const bridle = ({
  loadN,
  leftM,
  rightM,
  heightM,
}: {
  readonly loadN: number;
  readonly leftM: number;
  readonly rightM: number;
  readonly heightM: number;
}): Bridle => {
  const spanM = leftM + rightM;
  const legOf = (reachM: number, otherM: number): BridleLeg => {
    const verticalN = (loadN * otherM) / spanM;
    return {
      tension: legTension({ shareN: verticalN, angleRad: Math.atan2(heightM, reachM) }),
      vertical: newtons(verticalN),
      angle: radians(Math.atan2(heightM, reachM)),
    };
  };
  return {
    left: legOf(leftM, rightM),
    right: legOf(rightM, leftM),
    thrust: newtons((loadN * leftM * rightM) / (spanM * heightM)),
  };
};

/**
 * Tension of a leg that holds its share at an angle.
 *
 *     T = V / sin α
 *
 * Source  equilibrium; the-job.md C36
 * Holds   0 < α ≤ 90°
 */
export const legTension = ({
  shareN,
  angleRad,
}: {
  readonly shareN: number;
  readonly angleRad: number;
}): Newtons => newtons(shareN / Math.sin(angleRad));
