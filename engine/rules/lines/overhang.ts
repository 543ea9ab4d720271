import type { PlacedLoad, StructureState } from '#assessment';
import { measure } from '#findings';
import { raise } from '../raise.ts';
import { type StructuredCase, whenStructured } from '../rule.ts';
import { worstBy } from '../worst.ts';

/** A load beyond the last line with the next line in slack. */
type Overhang = {
  readonly state: StructureState;
  readonly end: 'stage right' | 'stage left';
  readonly lastNumber: number;
  readonly slackNumber: number;
  readonly beyondKg: number;
  /** Of the furthest of it, beyond the last line. */
  readonly furthestM: number;
};

/**
 * LFT-004: what hangs beyond the last line lifts the batten like a see-saw, and the next line in
 * goes slack (C33).
 */
export const overhangSlack = whenStructured((the) => {
  const all = the.structure.states.flatMap((state) => overhangs(the, state));
  const worst = worstBy(all, ({ beyondKg }) => beyondKg);
  if (worst === undefined) return [];
  const { state, end, lastNumber, slackNumber, beyondKg, furthestM } = worst;
  const states = new Set(all.map(({ state: { name } }) => name));
  return [
    raise('LFT-004', {
      at: { set: the.set.lineSet.id, heightM: state.height },
      measured: measure(beyondKg, 'mass'),
      facts: {
        end,
        last: measure(lastNumber, 'count'),
        slack: measure(slackNumber, 'count'),
        furthest: measure(furthestM, 'length'),
        height: measure(state.height, 'length'),
        states: [...states].join(', '),
      },
    }),
  ];
});

/** Loads beyond a last line with the next line in slack, at either end. */
export const overhangs = (
  { structure }: StructuredCase,
  state: StructureState,
): readonly Overhang[] => {
  const count = state.lines.length;
  return [
    { end: 'stage right' as const, last: 0, next: 1, outward: -1 },
    { end: 'stage left' as const, last: count - 1, next: count - 2, outward: 1 },
  ].flatMap(({ end, last, next, outward }) => {
    const lastX = structure.lines[last]?.x;
    const isSlack = state.lines[next]?.slack ?? false;
    if (lastX === undefined || !isSlack || count < 2) return [];
    const parts = state.loads.map((placed) => beyond(placed, lastX, outward));
    const beyondKg = parts.reduce((sum, { massKg }) => sum + massKg, 0);
    if (beyondKg <= 0) return [];
    const furthestM = Math.max(...parts.map(({ furthestM: outM }) => outM));
    const numbers = { lastNumber: last + 1, slackNumber: next + 1 };
    return [{ state, end, ...numbers, beyondKg, furthestM }];
  });
};

type Beyond = { readonly massKg: number; readonly furthestM: number };

const NOTHING: Beyond = { massKg: 0, furthestM: 0 };

/** How much of a load lies beyond the last line; `outward` is −1 to stage right, else 1. */
const beyond = ({ load }: PlacedLoad, lastX: number, outward: number): Beyond => {
  const outM = (x: number) => outward * (x - lastX);
  if ('x' in load) {
    return outM(load.x) > 0 ? { massKg: load.mass, furthestM: outM(load.x) } : NOTHING;
  }
  const nearM = Math.min(outM(load.from), outM(load.to));
  const farM = Math.max(outM(load.from), outM(load.to));
  if (farM <= 0) return NOTHING;
  const share = farM === nearM ? 1 : (farM - Math.max(0, nearM)) / (farM - nearM);
  return { massKg: share * load.mass, furthestM: farM };
};
