/**
 * Brick problems from a seed. Masses are multiples of 50 g and sizes of half a millimetre, as a
 * house would write them down, so that two different answers differ by more than any tolerance.
 */
import type { MixTask, StackInput } from '#balance';
import { GRAVITY } from '#quantities';
import { type Draw, drawFrom } from '../draw.ts';

/** Steps of 50 g and of half a millimetre, written so that the decimals are exact. */
const mass = (steps: number): number => steps / 20;
const length = (steps: number): number => steps / 2000;

/** Full, half and quarter bricks and their kin: multiples of 1.25 kg, which often tie. */
const kinFrom = (draw: Draw): { readonly mass: number; readonly thickness: number } => {
  const quarters = draw.whole(2, 12);
  return { mass: mass(25 * quarters), thickness: length(quarters * draw.whole(6, 8)) };
};

/** 3 to 8 kg for a centimetre of thickness, each kind for itself. */
const strangerFrom = (draw: Draw): { readonly mass: number; readonly thickness: number } => {
  const halves = draw.whole(24, 80);
  return { mass: mass(Math.round((halves * draw.whole(30, 80)) / 10)), thickness: length(halves) };
};

const kindsFrom = (draw: Draw): MixTask['kinds'] => {
  const one = draw.chance(0.5) ? kinFrom : strangerFrom;
  return Array.from({ length: draw.whole(1, 4) }, (_, at) => ({
    id: `k${at}`,
    ...one(draw),
    stock: draw.chance(0.1) ? 0 : draw.whole(1, 40),
  }));
};

type Spreader = NonNullable<StackInput['spreader']>;

const spreaderFrom = (draw: Draw): { readonly spreader?: Spreader } =>
  draw.chance(0.35)
    ? {}
    : {
        spreader: {
          mass: mass(draw.whole(0, 40)),
          thickness: length(draw.whole(4, 16)),
          every: length(draw.whole(400, 1300)),
          rule: draw.chance(0.5) ? 'floor' : 'ceil',
        },
      };

export const stackCases = (seed: number, number: number): readonly StackInput[] => {
  const draw = drawFrom(seed);
  return Array.from({ length: number }, () => {
    const carriage = mass(draw.whole(400, 2000));
    return {
      target: carriage + mass(draw.whole(-400, 8000)) + draw.whole(0, 4) / 100,
      carriage,
      bricks: kindsFrom(draw),
      stackHeight: length(draw.whole(600, 3600)),
      ...spreaderFrom(draw),
    };
  });
};

export const mixCases = (seed: number, number: number): readonly MixTask[] => {
  const draw = drawFrom(seed);
  return Array.from({ length: number }, () => {
    const purchase = draw.chance(0.3) ? 2 : 1;
    const newtons = (kg: number): number => (kg * GRAVITY) / purchase;
    const middle = mass(draw.whole(-400, 7000));
    const variants = Array.from({ length: draw.whole(1, 3) }, () => {
      const from = middle - mass(draw.whole(0, 600));
      return { minN: newtons(from), maxN: newtons(from + mass(2 * draw.whole(0, 400))) };
    });
    const baseMass = mass(draw.whole(800, 3000));
    return {
      purchase,
      variants,
      kinds: kindsFrom(draw),
      baseMass,
      baseThickness: length(draw.whole(0, 600)),
      stackHeight: length(draw.whole(900, 3600)),
      ...spreaderFrom(draw),
      ...(draw.chance(0.5) ? { massLimit: baseMass + mass(draw.whole(1000, 9000)) } : {}),
      holds: Array.from({ length: draw.chance(0.5) ? draw.whole(1, 2) : 0 }, (_, at) => ({
        heightM: 3 + 4 * at,
        baselineN: newtons(middle + mass(draw.whole(-400, 400))),
        inN: newtons(mass(draw.whole(100, 1200))),
        outN: newtons(mass(draw.whole(100, 1200))),
      })),
    };
  });
};
