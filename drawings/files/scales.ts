/** Scales and units in which drawings of a house are handed on; common practice, no source. */
import type { House } from '#house';
import type { DxfUnit } from '../dxf/dxf-file.ts';

/** A quarter of an inch to the foot is 1:48. The middle one is what is usual. */
const SCALES = { customary: [24, 48, 96], metric: [25, 50, 100] } as const;

export const scalesFor = ({ units }: House): readonly number[] => SCALES[units];

export const usualScale = ({ units }: House): number => SCALES[units][1];

export const usualUnit = ({ units }: House): DxfUnit => (units === 'metric' ? 'mm' : 'inch');
