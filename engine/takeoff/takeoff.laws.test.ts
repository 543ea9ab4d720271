import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Known } from '#house';
import type { ClothTakeoff, FrameTakeoff, HardwareTakeoff, Placement, Takeoff } from '#show';
import { given, itemOf } from './example-items.ts';
import { loadsAlongBatten } from './loads-along-batten.ts';
import { takeOff } from './take-off.ts';

const SEED = 31_607;
const RUNS = { seed: SEED, numRuns: 200 };
const RULES = { toleranceByBasis: { published: 0.05 } };

const number = (max: number) => fc.double({ min: 0, max, noNaN: true });
const value = <Quantity extends number>(max: number): fc.Arbitrary<Known<Quantity>> =>
  fc
    .tuple(number(max), fc.option(number(max / 10)))
    .map(([size, tolerance]) =>
      tolerance === null ? given(size, 'published') : given(size, 'measured', tolerance),
    );

const cloth: fc.Arbitrary<ClothTakeoff> = fc.record({
  by: fc.constant('cloth' as const),
  width: value(20),
  areaMass: value(1),
  fullness: value(1),
  hemAllowance: value(0.2),
  paint: value(1),
  moisture: value(0.5),
  bottomMassPerLength: fc.option(value(3)),
  ties: fc.option(
    fc.record({ count: fc.nat(60).map((n) => given<never>(n, 'published')), each: value(0.1) }),
  ),
});

const part = { name: fc.constant('part'), count: fc.nat(9), z: value<never>(3) };
const frame: fc.Arbitrary<FrameTakeoff> = fc.record({
  by: fc.constant('frame' as const),
  members: fc.array(fc.record({ ...part, length: value(6), massPerLength: value(5) }), {
    maxLength: 4,
  }),
  sheets: fc.array(fc.record({ ...part, area: value(3), massPerArea: value(17) }), {
    maxLength: 3,
  }),
  hardware: fc.array(fc.record({ ...part, each: value(4) }), { minLength: 1, maxLength: 3 }),
  allowance: value(0.3),
});

const hardware: fc.Arbitrary<HardwareTakeoff> = fc.record({
  by: fc.constant('hardware' as const),
  lines: fc.array(fc.record({ name: fc.constant('shackle'), count: fc.nat(20), each: value(2) }), {
    minLength: 2,
    maxLength: 8,
  }),
});

const anyTakeoff: fc.Arbitrary<Takeoff> = fc.oneof(cloth, frame, hardware);

const weigh = (takeoff: Takeoff) =>
  takeOff(itemOf(takeoff, { drop: given(3, 'published') }), RULES);
const massOf = (takeoff: Takeoff) => {
  const { total } = weigh(takeoff);
  if (!total.known) throw new Error(total.needs.join('; '));
  return total.value;
};
const close = (found: number | null, wanted: number): void => {
  expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(1e-9 * (1 + wanted));
};

/** Every known value below a take-off, with what puts another in its place. */
const knownsIn = (takeoff: Takeoff): readonly string[] => {
  const paths: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (typeof node !== 'object' || node === null) return;
    if ('known' in node) paths.push(path);
    else for (const [key, inner] of Object.entries(node)) walk(inner, `${path}/${key}`);
  };
  walk(takeoff, '');
  return paths.filter((path) => !path.endsWith('/z'));
};

const without = (takeoff: Takeoff, path: string): Takeoff => {
  const copy = structuredClone(takeoff) as unknown as Record<string, unknown>;
  const keys = path.split('/').slice(1);
  const last = keys.pop() ?? '';
  const owner = keys.reduce((node, key) => node[key] as Record<string, unknown>, copy);
  owner[last] = { known: false };
  return copy as unknown as Takeoff;
};

describe(`laws of the take-off, seed ${SEED}`, () => {
  it('a cloth of twice the width weighs twice, its ties apart', () => {
    fc.assert(
      fc.property(cloth, (one) => {
        const bare = { ...one, ties: null };
        const width = bare.width.known ? bare.width.value : 0;
        const twice = { ...bare, width: given<never>(2 * width, 'published') };
        close(massOf(twice).massKg, 2 * massOf(bare).massKg);
      }),
      RUNS,
    );
  });

  it('a list weighs what its two parts weigh, and is off by what both are off by', () => {
    fc.assert(
      fc.property(hardware, fc.nat(7), ({ by, lines }, cut) => {
        const at = 1 + (cut % (lines.length - 1));
        const head = massOf({ by, lines: lines.slice(0, at) });
        const tail = massOf({ by, lines: lines.slice(at) });
        const whole = massOf({ by, lines });
        close(whole.massKg, head.massKg + tail.massKg);
        close(whole.uncertaintyKg, (head.uncertaintyKg ?? 0) + (tail.uncertaintyKg ?? 0));
      }),
      RUNS,
    );
  });

  it('the order of a list changes nothing', () => {
    fc.assert(
      fc.property(frame, (one) => {
        const other = {
          ...one,
          members: one.members.toReversed(),
          sheets: one.sheets.toReversed(),
          hardware: one.hardware.toReversed(),
        };
        close(massOf(other).massKg, massOf(one).massKg);
        close(massOf(other).uncertaintyKg, massOf(one).uncertaintyKg ?? Number.NaN);
        close(massOf(other).uncertaintyRssKg, massOf(one).uncertaintyRssKg ?? Number.NaN);
      }),
      RUNS,
    );
  });

  it('the lines of the sheet add up to the total and to its uncertainty', () => {
    fc.assert(
      fc.property(anyTakeoff, (takeoff) => {
        const { lines } = weigh(takeoff);
        const total = massOf(takeoff);
        close(
          lines.reduce((sum, { totalKg }) => sum + (totalKg ?? Number.NaN), 0),
          total.massKg,
        );
        close(
          lines.reduce((sum, { uncertaintyKg }) => sum + (uncertaintyKg ?? Number.NaN), 0),
          total.uncertaintyKg ?? Number.NaN,
        );
      }),
      RUNS,
    );
  });

  it('any one value unknown leaves the total unknown and is named', () => {
    fc.assert(
      fc.property(anyTakeoff, fc.nat(), (takeoff, which) => {
        const paths = knownsIn(takeoff);
        const path = paths[which % paths.length] ?? '';
        const { total, needs } = weigh(without(takeoff, path));
        expect(total.known).toBe(false);
        const field = path.replace(/\/(\d+)/g, '[$1]').replaceAll('/', '.');
        expect(needs.join('\n')).toContain(`(takeoff${field})`);
      }),
      RUNS,
    );
  });

  it('more of a thing never weighs less: masses grow with every value', () => {
    fc.assert(
      fc.property(anyTakeoff, fc.nat(), (takeoff, which) => {
        const paths = knownsIn(takeoff).filter((path) => !path.endsWith('/count'));
        const path = paths[which % paths.length] ?? '';
        const less = structuredClone(takeoff);
        const keys = path.split('/').slice(1);
        const at = keys.reduce<unknown>((node, key) => (node as never)[key], less);
        (at as { value: number }).value /= 2;
        expect(massOf(less).massKg).toBeLessThanOrEqual(massOf(takeoff).massKg);
      }),
      RUNS,
    );
  });
});

const placement: fc.Arbitrary<Placement> = fc.oneof(
  fc
    .array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 1, maxLength: 5 })
    .map((xs): Placement => ({ at: 'points', xs: xs as never })),
  fc
    .tuple(
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.double({ min: -10, max: 10, noNaN: true }),
    )
    .map(([from, to]): Placement => ({ at: 'spread', from: from as never, to: to as never })),
);

const mirrored = (it: Placement): Placement =>
  it.at === 'points'
    ? { at: 'points', xs: it.xs.map((x) => -x) as never }
    : { at: 'spread', from: -it.from as never, to: -it.to as never };

describe(`laws of loads along the batten, seed ${SEED}`, () => {
  it('loads add up to the mass, wherever they lie', () => {
    fc.assert(
      fc.property(anyTakeoff, placement, (takeoff, where) => {
        const item = itemOf(takeoff, { drop: given(3, 'published'), placement: where });
        const loads = loadsAlongBatten(item, takeOff(item, RULES));
        const sum = loads.known ? loads.value.reduce((kg, { massKg }) => kg + massKg, 0) : null;
        close(sum, massOf(takeoff).massKg);
      }),
      RUNS,
    );
  });

  it('seen from the other side, the centre is as far on the other side', () => {
    fc.assert(
      fc.property(anyTakeoff, placement, (takeoff, where) => {
        const changes = { drop: given<never>(3, 'published') };
        const one = takeOff(itemOf(takeoff, { ...changes, placement: where }), RULES).centreX;
        const other = takeOff(
          itemOf(takeoff, { ...changes, placement: mirrored(where) }),
          RULES,
        ).centreX;
        expect(one.known && other.known).toBe(true);
        if (one.known && other.known) expect(one.value + other.value).toBeCloseTo(0, 9);
      }),
      RUNS,
    );
  });
});
