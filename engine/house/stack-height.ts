import { type Metres, metres } from '#quantities';

/**
 * How many spreader plates a stack takes (C7).
 *
 *     n = ⌊ Σ τ / every ⌋   (or ⌈ ⌉, as the house counts)
 *
 * Source  one plate every 2 ft (610 mm) of stack: check-values.md A1, an operating guide's
 *         excerpt and a school's crew guide; common practice
 * Check   VAL-HSE-03
 */
export const spreaderCount = (
  brickThicknessM: number,
  everyM: number,
  rule: 'floor' | 'ceil' = 'floor',
): number => {
  // A stack that is a whole number of spacings must not gain or lose a plate by rounding.
  const spacings = brickThicknessM / everyM;
  const whole = Math.round(spacings);
  if (Math.abs(spacings - whole) < 1e-9) return whole;
  return rule === 'floor' ? Math.floor(spacings) : Math.ceil(spacings);
};

/**
 * Height of a stack of bricks with its spreader plates (C6).
 *
 * Source  the-job.md C6: Σ τ + spreaders, held against the usable rod
 * Check   VAL-HSE-04, VAL-HSE-05
 */
export const stackHeight = ({
  brickThicknessM,
  spreader,
}: {
  readonly brickThicknessM: number;
  readonly spreader: {
    readonly thicknessM: number;
    readonly everyM: number;
    readonly rule?: 'floor' | 'ceil';
  } | null;
}): Metres =>
  metres(
    spreader === null
      ? brickThicknessM
      : brickThicknessM +
          spreaderCount(brickThicknessM, spreader.everyM, spreader.rule) * spreader.thicknessM,
  );
