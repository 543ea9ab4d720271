/** What is asked about the order of work on one set that is in no document: plain SI numbers. */
import type { BalanceItem, BalanceSet, SpreaderPlates } from '#balance';
import type { OrderGoal } from '#sequence';
import type { Standing, Step } from '#state';

/** A value as a program outside writes it: every quantity a plain number. */
type Plain<T> = T extends number
  ? number
  : T extends string | boolean | null
    ? T
    : { readonly [K in keyof T]: Plain<T[K]> };

export type PlainSet = Omit<BalanceSet, 'items' | 'bricks' | 'brickUncertainty'> & {
  readonly id: string;
  readonly items: Readonly<Record<string, BalanceItem>>;
  readonly lowStopRated: number;
  readonly highStopRated: number;
  readonly workingHeight: number;
  readonly lockLimit: number;
  readonly hands: { readonly brief: number; readonly steady: number };
  readonly friction: { readonly share: number; readonly constant: number };
  readonly panAtLow: number;
  readonly panThickness: number;
  readonly usableRod: number;
  readonly arborMassLimit?: number;
  readonly bricks: readonly {
    readonly id: string;
    readonly mass: number;
    readonly thickness: number;
    readonly uncertainty?: number;
    readonly looksLike?: readonly string[];
  }[];
  readonly spreader?: SpreaderPlates;
  readonly galleries: readonly {
    readonly id: string;
    readonly floor: number;
    readonly reachLow: number;
    readonly reachHigh: number;
    readonly stock: Readonly<Record<string, number>>;
  }[];
};

export type PlainStanding = Plain<Standing>;
export type PlainStep = Plain<Step>;

export type Asked = {
  readonly set: PlainSet;
  readonly start: PlainStanding;
  readonly doubt: 'worst' | 'none';
  readonly lock: 'planning' | 'nominal';
};

export type PlanAsked = Asked & {
  readonly goal: Plain<OrderGoal>;
  readonly restraint: 'either' | 'in' | 'out' | 'none';
  readonly steel?: number;
  readonly rests?: readonly string[];
  readonly spare?: Readonly<Record<string, number>>;
  readonly callHeights?: number;
};

export type VerifyAsked = Asked & { readonly steps: readonly PlainStep[] };
