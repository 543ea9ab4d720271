import type { PlacedLoad, SetAssessment, SetStructure, StructureState } from '#assessment';
import type { Finding } from '#findings';
import { reckoned } from '#findings';
import type { House } from '#house';
import { GRAVITY, type Metres, metres } from '#quantities';
import { bending } from '../batten/bending.ts';
import { tipsOver } from '../batten/tips-over.ts';
import { blockLoad } from '../lines/block-load.ts';
import { designFactor } from '../lines/design-factor.ts';
import { lineTension } from '../lines/line-tension.ts';
import { isLack, type Opinion, type SetCase, type SetRule } from '../rule.ts';

/** What batten, lift lines and blocks say to lines that hold the batten down. */
export type LineBearing = {
  /** Where the batten is held, across the stage: at lift lines, the same on both sides. */
  readonly at: readonly Metres[];
  /** Why it must not be held so; none where all that is asked passes. */
  readonly stops: readonly Finding[];
  /** What nobody knows, so that something was not asked. */
  readonly lacks: readonly string[];
};

const ASKED: readonly SetRule[] = [tipsOver, bending, lineTension, designFactor, blockLoad];

/**
 * Whether batten, lift lines and blocks bear a batten that is held down by `heldN` in all, at two
 * lift lines the same on both sides of the centre, or at the one on it. Of such places the first
 * that passes everything is taken, else the one with the fewest faults. The state is that of the
 * set low on its travel, where what hangs lies mostly on the deck and the arbor weighs most.
 *
 * Source  the-job.md C37 (batten held down), C32, X4; superposition by the beam itself
 * Omits   the anchor, the line and what it is tied with; the snatch of a line that runs into it
 */
export const bearsLine = (
  house: House,
  of: SetAssessment,
  heldN: number,
): LineBearing | { readonly needs: readonly string[] } => {
  const { structure } = of;
  if (!structure.known) return { needs: structure.needs };
  const [state] = structure.value.states.toSorted((one, other) => order(one) - order(other));
  if (state === undefined) return { needs: ['a state of the batten'] };
  const tried = placesOf(structure.value).map((at) =>
    heldAt(house, of, structure.value, state, { at, heldN }),
  );
  const [first, ...others] = tried;
  if (first === undefined) return { needs: ['lift lines, the same on both sides'] };
  return others.reduce(
    (best, each) => (each.stops.length < best.stops.length ? each : best),
    first,
  );
};

/** Hung states before the bare one, the lowest first. */
const order = ({ kind, height }: StructureState): number => (kind === 'hung' ? 0 : 1000) + height;

const NEAR_M = 0.05;

const placesOf = ({ lines }: SetStructure): readonly (readonly Metres[])[] => {
  const xs = lines.map(({ x }) => x);
  return xs
    .filter((x) => x >= -NEAR_M)
    .flatMap((x): readonly (readonly Metres[])[] => {
      if (Math.abs(x) < NEAR_M) return [[metres(x)]];
      const other = xs.find((each) => Math.abs(each + x) < NEAR_M);
      return other === undefined ? [] : [[metres(other), metres(x)]];
    })
    .toSorted((one, other) => other.length - one.length);
};

const heldAt = (
  house: House,
  of: SetAssessment,
  structure: SetStructure,
  state: StructureState,
  { at, heldN }: { readonly at: readonly Metres[]; readonly heldN: number },
): LineBearing => {
  const mass = heldN / at.length / GRAVITY;
  const lines = at.map(
    (x): PlacedLoad => ({ of: 'line that holds it down', load: { x, mass }, uncertaintyKg: 0 }),
  );
  const held = structure.rework(state, { loads: [...state.loads, ...lines] });
  const set: SetAssessment = {
    ...of,
    structure: reckoned({
      ...structure,
      states: [{ ...held, name: 'held down' }],
      headBlock: structure.headBlockIn(held),
    }),
  };
  const the: SetCase = { house, show: null, state: null, set, nowMs: null };
  const opinions = ASKED.flatMap((rule): readonly Opinion[] => rule(the));
  const isStop = (each: Opinion): each is Finding => !isLack(each) && each.level === 'stop';
  return {
    at,
    stops: opinions.filter(isStop),
    lacks: [...new Set(opinions.flatMap((each) => (isLack(each) ? [each.lacks] : [])))],
  };
};
