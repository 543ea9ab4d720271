/** A bar of true length, in halves, so that a print that was shrunk still tells its scale. */
import { FOOT, NO_BREAK_SPACE, type UnitSystem } from '#quantities';
import type { Shape } from './shape.ts';
import { group, lettering, point, rect } from './shape.ts';

const THICKNESS = 4;
const GAP = 6;

/** Lengths a person can count with, in feet or metres. */
const STEPS = [1, 2, 5, 10, 20, 50, 100] as const;

/** The longest round length that is no longer than `room` units. */
const stepsFor = (room: number, perUnit: number): number =>
  STEPS.filter((steps) => steps * perUnit <= room).at(-1) ?? STEPS[0];

/** The bar with its length in words, the left end of its top edge at (x, y). */
export const scaleBar = ({
  x,
  y,
  room,
  perMetre,
  units,
  letter,
}: {
  readonly x: number;
  readonly y: number;
  readonly room: number;
  readonly perMetre: number;
  readonly units: UnitSystem;
  readonly letter: number;
}): Shape => {
  const perUnit = perMetre * (units === 'customary' ? FOOT : 1);
  const steps = stepsFor(room, perUnit);
  const width = steps * perUnit;
  const outline = { stroke: 'ink', weight: 'thin' } as const;
  const words = `${steps}${NO_BREAK_SPACE}${units === 'customary' ? 'ft' : 'm'}`;
  return group(
    [
      rect(0, 0, width / 2, THICKNESS, { ...outline, fill: 'solid' }),
      rect(width / 2, 0, width / 2, THICKNESS, { ...outline, fill: 'paper' }),
      lettering(width + GAP, THICKNESS + letter * 0.25, words, letter, {
        pen: 'ink2',
      }),
    ],
    { at: point(x, y), part: 'scale bar' },
  );
};
