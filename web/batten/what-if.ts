/** A question about a batten: loads moved, one load tried, turnbuckles turned. Never a document. */
import { type PlacedLoad, reworked, type SetStructure, type StructureState } from '#assessment';
import type { BattenCase, LiftLine } from '#beam';
import { placeOfLoad } from '#drawings';
import { FOOT, INCH, type UnitSystem } from '#quantities';
import { message } from '#texts';

export type Tried = { readonly x: number; readonly massKg: number };

export type WhatIf = {
  /** New places of loads, by their place among the loads of the state. */
  readonly places: Readonly<Record<number, number>>;
  /** Metres by which each line is made shorter than it stands; longer is negative. */
  readonly turns: readonly number[];
  /** A load that does not hang there. */
  readonly tried: Tried | null;
};

export const NOTHING_CHANGED: WhatIf = { places: {}, turns: [], tried: null };

/** Its name on the drawing and in the list of loads. */
export const TRIED_NAME = message('load to try');

/** A turn under a nanometre is none: it is what rounding leaves of turns there and back. */
const NO_TURN_M = 1e-9;

export const isChanged = ({ places, turns, tried }: WhatIf): boolean =>
  Object.keys(places).length > 0 ||
  turns.some((turn) => Math.abs(turn) > NO_TURN_M) ||
  (tried !== null && tried.massKg > 0);

export type Steps = {
  /** Of one press at a turnbuckle. */
  readonly turnM: number;
  /** Of an arrow key, of one with Shift, and of Page Up or Down, along the batten. */
  readonly arrowM: number;
  readonly fineM: number;
  readonly pageM: number;
};

export const stepsIn = (units: UnitSystem): Steps =>
  units === 'customary'
    ? { turnM: INCH / 8, arrowM: 6 * INCH, fineM: INCH, pageM: 5 * FOOT }
    : { turnM: 0.001, arrowM: 0.1, fineM: 0.01, pageM: 1 };

/** The nearest whole step: a finger is no finer, and a place must read as a round figure. */
export const onStep = (valueM: number, stepM: number): number => Math.round(valueM / stepM) * stepM;

/** How far the middle of a load may go, so that no end of it leaves the batten. */
export const reachOf = (
  { left, right }: SetStructure,
  { load }: PlacedLoad,
): { readonly from: number; readonly to: number } => {
  const half = 'x' in load ? 0 : (load.to - load.from) / 2;
  return { from: left + half, to: right - half };
};

const clamped = (value: number, { from, to }: { readonly from: number; readonly to: number }) =>
  Math.min(Math.max(value, from), to);

const movedTo = (placed: PlacedLoad, x: number): PlacedLoad => {
  const { load } = placed;
  if ('x' in load) return { ...placed, load: { ...load, x } };
  const by = x - placeOfLoad(load);
  return { ...placed, load: { ...load, from: load.from + by, to: load.to + by } };
};

/** The loads as they would lie; the load to try is the last. */
export const loadsAfter = (
  structure: SetStructure,
  { loads }: StructureState,
  { places, tried }: WhatIf,
  triedName: string = TRIED_NAME,
): readonly PlacedLoad[] => {
  const moved = loads.map((placed, index) => {
    const x = places[index];
    return x === undefined ? placed : movedTo(placed, clamped(x, reachOf(structure, placed)));
  });
  return tried === null
    ? moved
    : [
        ...moved,
        {
          of: triedName,
          load: {
            x: clamped(tried.x, { from: structure.left, to: structure.right }),
            mass: tried.massKg,
          },
          uncertaintyKg: null,
        },
      ];
};

export const trimsAfter = ({ lines }: SetStructure, { turns }: WhatIf): readonly number[] =>
  lines.map(({ trim = 0 }, index) => trim + (turns[index] ?? 0));

export const stateAfter = (
  structure: SetStructure,
  state: StructureState,
  whatIf: WhatIf,
  triedName: string = TRIED_NAME,
): StructureState =>
  isChanged(whatIf) || whatIf.tried !== null
    ? reworked(structure, state, {
        loads: loadsAfter(structure, state, whatIf, triedName),
        trims: trimsAfter(structure, whatIf),
      })
    : state;

/** The same batten as the searches of the beam take it. */
export const caseAfter = (
  structure: SetStructure,
  state: StructureState,
  whatIf: WhatIf,
): BattenCase => {
  const trims = trimsAfter(structure, whatIf);
  const { pipe, left, right, splices } = structure;
  return {
    pipe,
    left,
    right,
    splices,
    lines: structure.lines.map((line, index): LiftLine => ({ ...line, trim: trims[index] ?? 0 })),
    loads: loadsAfter(structure, state, whatIf).map(({ load }) => load),
  };
};

export const withTurn = (whatIf: WhatIf, line: number, byM: number, count: number): WhatIf => ({
  ...whatIf,
  turns: Array.from(
    { length: count },
    (_, index) => (whatIf.turns[index] ?? 0) + (index === line ? byM : 0),
  ),
});

/** Turns as a person can make them, one by one, from those that a search asks for. */
export const withTurns = (whatIf: WhatIf, turns: readonly number[], stepM: number): WhatIf => ({
  ...whatIf,
  turns: turns.map((turn, index) => onStep((whatIf.turns[index] ?? 0) + turn, stepM)),
});

/** A load goes to a place; the last of the list is the load to try, where there is one. */
export const withPlace = (whatIf: WhatIf, index: number, x: number, count: number): WhatIf =>
  index >= count
    ? { ...whatIf, tried: whatIf.tried === null ? null : { ...whatIf.tried, x } }
    : { ...whatIf, places: { ...whatIf.places, [index]: x } };
