/** Items for the tests of this room: each number says what it rests on. */
import type { Basis, Known } from '#house';
import { known } from '#house';
import { metres } from '#quantities';
import type {
  ClothTakeoff,
  FrameTakeoff,
  HardwareTakeoff,
  Item,
  MassTakeoff,
  Takeoff,
  UnitsTakeoff,
} from '#show';

/** A value given on a basis; the brand follows from where it is put. */
export const given = <Quantity extends number>(
  value: number,
  basis: Basis = 'measured',
  tolerance?: number,
): Known<Quantity> => known(value as Quantity, { basis }, tolerance);

export const exact = <Quantity extends number>(value: number): Known<Quantity> =>
  given(value, 'measured', 0);

export const itemOf = (takeoff: Takeoff, changes: Partial<Item> = {}): Item => ({
  id: 'piece',
  name: 'Piece',
  kind: 'clear',
  takeoff,
  drop: exact(2),
  pick: exact(0.5),
  centre: { known: false },
  placement: null,
  releases: [],
  carriesPerson: false,
  ...changes,
});

export const massOfKg = (massKg: number, hemKg?: number): MassTakeoff => ({
  by: 'mass',
  mass: given(massKg, 'weighed'),
  hem: hemKg === undefined ? null : given(hemKg, 'weighed'),
});

/** 10 m of 0.4 kg/m² at half fullness, a tenth for hems, dry and unpainted. */
export const CLOTH: ClothTakeoff = {
  by: 'cloth',
  width: exact(10),
  areaMass: exact(0.4),
  fullness: exact(0.5),
  hemAllowance: exact(0.1),
  paint: exact(0),
  moisture: exact(0),
  bottomMassPerLength: exact(0.6),
  ties: { count: exact(30), each: exact(0.02) },
};

/** Two stiles, two rails, a skin and four corner irons, 2 m high. */
export const FRAME: FrameTakeoff = {
  by: 'frame',
  members: [
    { name: 'stile', count: 2, z: exact(1), length: exact(2), massPerLength: exact(0.5) },
    { name: 'bottom rail', count: 1, z: exact(0), length: exact(1), massPerLength: exact(0.5) },
    { name: 'top rail', count: 1, z: exact(2), length: exact(1), massPerLength: exact(0.5) },
  ],
  sheets: [{ name: 'skin', count: 1, z: exact(1), area: exact(2), massPerArea: exact(4) }],
  hardware: [{ name: 'foot iron', count: 2, z: exact(0), each: exact(1) }],
  allowance: exact(0.1),
};

export const UNITS: UnitsTakeoff = {
  by: 'units',
  units: [
    {
      name: 'profile',
      count: 2,
      each: exact(8),
      clampEach: exact(0.5),
      xs: [metres(-3), metres(3)],
    },
    { name: 'flood', count: 3, each: exact(5), clampEach: null, xs: null },
  ],
};

export const HARDWARE: HardwareTakeoff = {
  by: 'hardware',
  lines: [
    { name: 'shackle', count: 4, each: exact(0.25) },
    { name: 'turnbuckle', count: 2, each: exact(0.75) },
  ],
};

export const LOOM = {
  by: 'loom',
  massPerLength: exact(0.59),
  length: exact(15),
  fixedAt: exact(11),
} satisfies Takeoff;

export const PIPE = {
  by: 'pipe',
  length: exact(10),
  massPerLength: exact(4),
  fittings: exact(1.5),
} satisfies Takeoff;
