import type {
  Kilograms,
  Metres,
  Newtons,
  NewtonsPerMetre,
  Pascals,
  Radians,
  UnitSystem,
} from '#quantities';
import type { Language, Tongue } from '#texts';
import type { BrickKind, Spreader } from './brick.ts';
import type { Basis, Known } from './known.ts';
import type { LineSet } from './line-set.ts';

export type Stage = {
  readonly openingWidth: Known<Metres>;
  readonly openingHeight: Known<Metres>;
  readonly backWall: Known<Metres>;
  readonly gridHeight: Known<Metres>;
  readonly loftBlockHeight: Known<Metres>;
  readonly headBlockHeight: Known<Metres>;
  readonly operatingSide: 'stageRight' | 'stageLeft';
  readonly operatingX: Known<Metres>;
};

export type Gallery = {
  readonly id: string;
  readonly name: string;
  readonly floor: Known<Metres>;
  /** Lowest and highest next plate a loader can handle, above the floor. */
  readonly reachLow: Known<Metres>;
  readonly reachHigh: Known<Metres>;
  readonly length: Known<Metres>;
  readonly width: Known<Metres>;
  readonly floorLimit: Known<Pascals>;
  readonly lineLoadLimit: Known<NewtonsPerMetre>;
  readonly coursesAllowed: Known<number>;
  /** People and their tools who stand on it while it is loaded, together. */
  readonly peopleAndTools: Known<Kilograms>;
};

export type Rail = { readonly id: string; readonly name: string; readonly floor: Known<Metres> };

/** A bay of the head-block beam, with the sets whose head blocks stand on it. */
export type Bay = {
  readonly id: string;
  readonly sets: readonly string[];
  readonly verticalLimit: Known<Newtons>;
  readonly horizontalLimit: Known<Newtons>;
};

/** A slot in the grid over which the loft blocks of many sets stand, one behind the other. */
export type LoftWell = {
  readonly id: string;
  readonly x: Metres;
  /** Lines within half of it on either side stand on this well. */
  readonly width: Metres;
  readonly limit: Known<Newtons>;
};

export type Eye = {
  readonly id: string;
  readonly name: string;
  readonly x: Metres;
  readonly y: Metres;
  readonly z: Metres;
};

/** A box that nothing may enter; a missing bound means that it goes on. */
export type KeepOut = {
  readonly id: string;
  readonly name: string;
  readonly x?: readonly [Metres, Metres];
  readonly y?: readonly [Metres, Metres];
  readonly z?: readonly [Metres | null, Metres | null];
  readonly remark?: string;
};

/** A trap, lift or pit in the deck; people may be below it. */
export type Opening = {
  readonly id: string;
  readonly name: string;
  readonly x?: readonly [Metres, Metres];
  readonly y: readonly [Metres, Metres];
  readonly remark?: string;
};

export type Equipment = {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly rating: Known<Newtons>;
  readonly remark?: string;
};

/** Values that the house sets for itself. None has a default. */
export type HouseRules = {
  readonly lockLimit: Known<Newtons>;
  /** Age at which the grip test of a lock is due again. */
  readonly lockTestEverySeconds: Known<number>;
  readonly handLineLimit: Known<Newtons>;
  readonly pullBrief: Known<Newtons>;
  readonly pullSteady: Known<Newtons>;
  readonly peoplePerHandLine: Known<number>;
  /** Friction until measured: a share of what hangs (batten and all on it) and a constant. */
  readonly frictionShare: Known<number>;
  readonly frictionConstant: Known<Newtons>;
  readonly clipsForbidden: Known<boolean>;
  /** Breaking strength of a lift line over what it may carry. */
  readonly lineDesignFactor: Known<number>;
  /** Least diameter of a sheave over that of its line. */
  readonly sheaveRatio: Known<number>;
  readonly fleetAngleLimit: Known<Radians>;
  /** Added to the loads of a set that moves, for starts and stops, as a share. */
  readonly movingShare: Known<number>;
  /** Largest sag between two lines, as a share of their distance. */
  readonly sagLimit: Known<number>;
  readonly staleAfterSeconds: Known<number>;
  /** Tolerance by basis, as a share, where an item does not give its own. */
  readonly toleranceByBasis: Readonly<Partial<Record<Basis, number>>>;
};

export type House = {
  readonly id: string;
  readonly name: string;
  readonly demo: boolean;
  readonly units: UnitSystem;
  readonly words: 'US' | 'UK';
  /** Tag of the language that its sheets are printed in; absent is English. */
  readonly language?: Language | undefined;
  /** Of whoever looks or prints: never written in a document. Absent is English. */
  readonly tongue?: Tongue | undefined;
  readonly stage: Stage;
  readonly rules: HouseRules;
  readonly brickKinds: readonly BrickKind[];
  readonly spreader: Spreader | null;
  readonly galleries: readonly Gallery[];
  readonly rails: readonly Rail[];
  readonly bays: readonly Bay[];
  readonly loftWells: readonly LoftWell[];
  readonly eyes: readonly Eye[];
  readonly keepOuts: readonly KeepOut[];
  readonly openings: readonly Opening[];
  readonly equipment: readonly Equipment[];
  /** In rail order, from the plaster line upstage. */
  readonly lineSets: readonly LineSet[];
  readonly remarks: readonly string[];
};
