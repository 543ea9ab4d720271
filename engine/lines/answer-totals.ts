import type { NewtonsPerMetre, Pascals } from '#quantities';
import { type BricksOnFloor, floorLoad, floorRow } from './floor.ts';
import {
  type BayForces,
  bayTotals,
  type Well,
  type WellForces,
  wellTotals,
  worstOver,
} from './totals.ts';
import type { SetOnSteel, Total } from './types.ts';

/** A set as it is asked about: what is left out is none. */
export type AskedSet = {
  readonly set: string;
  /** Left out where it stands on steel of its own. */
  readonly bay?: string;
  readonly purchase: 1 | 2;
  readonly arborMass: number;
  readonly handLineMass: number;
  readonly arborWireMass?: number;
  readonly lines: readonly { readonly x: number; readonly tension: number }[];
  readonly moving?: boolean;
};

export type TotalsAsked = {
  readonly bays: readonly string[];
  readonly wells: readonly Well[];
  /** Added to the loads of sets that move, as a share. */
  readonly movingShare?: number;
  /** One or more moments, such as the steps of an order of work. */
  readonly states: readonly { readonly name: string; readonly sets: readonly AskedSet[] }[];
  readonly floors?: readonly {
    readonly id: string;
    readonly length: number;
    readonly width: number;
    readonly peopleAndTools: number;
    readonly bricks: readonly {
      readonly count: number;
      readonly mass: number;
      readonly floorLength: number;
    }[];
  }[];
};

export type TotalsAnswer = {
  readonly states: readonly (WellForces & {
    readonly name: string;
    readonly bays: readonly BayForces[];
  })[];
  /** The largest over all states, with the name of the state. */
  readonly worst: {
    readonly vertical: readonly Worst[];
    readonly horizontal: readonly Worst[];
    readonly wells: readonly Worst[];
  };
  readonly floors: readonly {
    readonly id: string;
    readonly pressure: Pascals;
    readonly courses: number;
    readonly lineLoad: NewtonsPerMetre;
  }[];
};

type Worst = { readonly state: string; readonly total: Total };

/** Everything that `compute totals` says: bays, loft wells and gallery floors. */
export const answerTotals = (asked: TotalsAsked): TotalsAnswer => {
  const { bays, wells, movingShare = 0 } = asked;
  const states = asked.states.map(({ name, sets: given }) => {
    const sets = given.map(onSteel);
    return {
      name,
      bays: bayTotals(sets, { bays, movingShare }),
      ...wellTotals(sets, { wells, movingShare }),
    };
  });
  const worst = (totalsOf: (state: (typeof states)[number]) => readonly Total[]) =>
    worstOver(states.map((state) => ({ state: state.name, totals: totalsOf(state) })));
  return {
    states,
    worst: {
      vertical: worst((state) => state.bays.map(({ vertical }) => vertical)),
      horizontal: worst((state) => state.bays.map(({ horizontal }) => horizontal)),
      wells: worst((state) => state.wells),
    },
    floors: (asked.floors ?? []).map(onFloor),
  };
};

const onSteel = (asked: AskedSet): SetOnSteel => ({
  ...asked,
  bay: asked.bay ?? null,
  arborWireMass: asked.arborWireMass ?? 0,
  moving: asked.moving ?? false,
});

const onFloor = (
  floor: NonNullable<TotalsAsked['floors']>[number],
): TotalsAnswer['floors'][number] => {
  const kinds = floor.bricks.map(
    ({ count, mass, floorLength }): BricksOnFloor => ({
      count,
      massKg: mass,
      floorLengthM: floorLength,
    }),
  );
  return {
    id: floor.id,
    pressure: floorLoad({
      bricksKg: kinds.reduce((sum, { count, massKg }) => sum + count * massKg, 0),
      peopleAndToolsKg: floor.peopleAndTools,
      lengthM: floor.length,
      widthM: floor.width,
    }),
    ...floorRow(kinds, floor.length),
  };
};
