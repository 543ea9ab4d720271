/** Where everything of a loaded batten lies on the paper, and how large its bend is drawn. */
import type { SetStructure, StructureState } from '#assessment';
import type { BattenSolution } from '#beam';
import type { House } from '#house';

export type BattenLoadsOptions = {
  readonly width: number;
  readonly letter: number;
  /** What one line may carry; null where nobody has said. */
  readonly lineLimitN: number | null;
  /** Names of what hangs. Loads of other names are fittings: reckoned with, and not drawn. */
  readonly items: readonly string[];
  /** How it was before a change: drawn thin behind it, its tensions beneath the new ones. */
  readonly before?: StructureState;
  /** Which load a person has in hand, by its place in the state's loads. */
  readonly inHand?: number;
};

/** All that a part of the drawing needs to know. */
export type BattenSubject = BattenLoadsOptions & {
  readonly structure: SetStructure;
  readonly state: StructureState;
  readonly house: House;
  readonly isNarrow: boolean;
  readonly xOf: (acrossM: number) => number;
  readonly perMetre: number;
};

/** Narrower than this is a phone: fewer words, and more rows. */
const NARROW = 600;
const MARGIN_LETTERS = 2.2;

export const solvedOf = ({ beam }: StructureState): BattenSolution | null =>
  'unstable' in beam ? null : beam;

export const battenSubject = (
  structure: SetStructure,
  state: StructureState,
  house: House,
  options: BattenLoadsOptions,
): BattenSubject => {
  const { width, letter } = options;
  const halfM = Math.max(Math.abs(structure.left), Math.abs(structure.right));
  const perMetre = (width - 2 * letter * MARGIN_LETTERS) / (2 * halfM);
  return {
    ...options,
    structure,
    state,
    house,
    isNarrow: width < NARROW,
    perMetre,
    xOf: (acrossM) => width / 2 + acrossM * perMetre,
  };
};

/** Round numbers, so that a reader can divide by them. */
const ROUND = [1, 2, 5] as const;
const DECADES = 7;

/** Every 1, 2 and 5 times a power of ten from 1 upward. */
const roundNumbers: readonly number[] = Array.from({ length: DECADES }, (_, decade) =>
  ROUND.map((each) => each * 10 ** decade),
).flat();

/** A batten that gives way is drawn smaller than it bends. */
const PARTS = [0.1, 0.2, 0.5] as const;

const roundAtMost = (value: number): number =>
  [...PARTS, ...roundNumbers].filter((each) => each <= value).at(-1) ?? PARTS[0];

export const roundAtLeast = (value: number): number =>
  roundNumbers.find((each) => each >= value) ?? value;

/** How far the pipe may be drawn from its true place, up or down. */
export const BEND_ROOM = 28;

/**
 * How many times the bend is drawn larger than it is. With a state before it, the smaller scale of
 * the two, so that both stand on one scale.
 */
export const timesDrawn = ({ state, before, perMetre }: BattenSubject): number => {
  const sizes = [state, before ?? state].flatMap((each) => {
    const solved = solvedOf(each);
    if (solved === null) return [];
    const { max, min } = solved.deflection;
    return [Math.max(Math.abs(max.value), Math.abs(min.value))];
  });
  const most = Math.max(0, ...sizes) * perMetre;
  return most === 0 ? 1 : roundAtMost(BEND_ROOM / most);
};

const STEPS = 96;

/** Even places along the batten, with those where a curve has a corner. */
export const placesAlong = ({ left, right }: SetStructure, corners: readonly number[]): number[] =>
  [
    ...Array.from({ length: STEPS + 1 }, (_, step) => left + ((right - left) * step) / STEPS),
    ...corners.filter((x) => x > left && x < right),
  ].toSorted((one, other) => one - other);
