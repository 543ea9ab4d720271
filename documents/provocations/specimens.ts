/** One small, sound document of each kind, to be spoiled in one place at a time. */
export { house } from './house-specimen.ts';
export { order } from './order-specimen.ts';
export { plan, verify } from './plain-order.ts';

const given = { basis: 'measured', source: 'survey', by: 'house crew', on: '2026-05-04' } as const;

const trims = [
  { name: 'in', height: '24 ft', reference: 'batten' },
  { name: 'out', height: '58 ft', reference: 'batten' },
];

export const show = {
  format: 'counterpoise-show',
  version: 1,
  id: 'fair',
  name: 'Fair Day',
  house: 'marl',
  given,
  keptEmpty: {},
  hangs: [
    {
      set: '1',
      name: 'House curtain',
      family: 'soft',
      halfDepth: '6 in',
      trims,
      items: [
        {
          id: 'cloth',
          name: 'Cloth',
          kind: 'cloth',
          drop: '22 ft',
          pick: '0.5 ft',
          takeoff: { by: 'mass', mass: '200 lb', hem: '20 lb' },
          placement: { from: '-20 ft', to: '20 ft' },
        },
      ],
      bricks: { counts: { F: 6, H: 1 }, reason: 'loadable from the upper gallery' },
      coupledWith: ['2'],
    },
    {
      set: '2',
      name: 'Electric',
      family: 'electric',
      halfDepth: '12 in',
      trims,
      items: [
        {
          id: 'heads',
          name: 'Moving heads',
          kind: 'clear',
          drop: '3 ft',
          pick: '0 ft',
          takeoff: {
            by: 'units',
            units: [{ name: 'head', count: 2, each: '79 lb', xs: ['-4 ft', '4 ft'] }],
          },
        },
        {
          id: 'loom',
          name: 'Loom',
          kind: 'loom',
          takeoff: { by: 'loom', massPerLength: '3.1 lb/ft', length: '50 ft', fixedAt: '38 ft' },
        },
      ],
      coupledWith: ['1'],
    },
    {
      set: '3',
      name: 'Tower and silk',
      family: 'hard',
      halfDepth: '8 in',
      trims,
      items: [
        {
          id: 'tower',
          name: 'Tower',
          kind: 'tipping',
          drop: '22 ft',
          pick: '1 ft',
          centre: 0.46,
          takeoff: { by: 'mass', mass: '300 lb' },
          placement: { points: ['-4.5 ft', '4.5 ft'] },
          releases: [{ mass: '20 lb', how: 'the flag falls', cue: '2' }],
        },
        {
          id: 'silk',
          name: 'Silk',
          kind: 'cloth',
          drop: '20 ft',
          pick: '0.5 ft',
          takeoff: {
            by: 'cloth',
            width: '40 ft',
            areaMass: '6 oz/yd²',
            fullness: '50 %',
            hemAllowance: '5 %',
            paint: '0 %',
            moisture: '3 %',
            ties: { count: 40, each: '1 oz' },
          },
        },
        {
          id: 'flat',
          name: 'Flat',
          kind: 'standing',
          drop: '10 ft',
          pick: '1 ft',
          takeoff: {
            by: 'frame',
            members: [{ name: 'rail', count: 4, length: '8 ft', massPerLength: '0.6 lb/ft' }],
            sheets: [{ name: 'ply', count: 2, area: '32 ft²', massPerArea: '0.7 lb/ft²' }],
            allowance: '8 %',
          },
        },
      ],
    },
  ],
  cues: [
    { number: '1', set: '1', from: '24 ft', to: '58 ft', duration: '6 s' },
    { number: '2', set: '3', from: '24 ft', to: '24 ft', releases: true, note: 'the flag falls' },
  ],
  remarks: [] as string[],
};

export const state = {
  format: 'counterpoise-state',
  version: 1,
  house: 'marl',
  at: '2026-11-25T14:31:00Z',
  by: 'head flyperson',
  sets: {
    '1': {
      height: '24 ft',
      lock: 'closed',
      ring: 'on',
      collar: 'secured',
      stack: [
        { kind: 'F', count: 4, tag: 'pipe' },
        { kind: 'plate', count: 1, tag: 'spreader' },
        { kind: 'H', count: 1, tag: 'show' },
      ],
      items: { cloth: 'flying' },
      restraints: [
        { kind: 'bullLine', resists: 'out', rating: '450 lbf', from: '3 ft', to: '10 ft' },
      ],
      service: 'in',
      knowledge: {
        basis: 'counted',
        at: '2026-11-25T14:00:00Z',
        by: 'head flyperson',
        second: 'loader lead',
      },
      pullTest: {
        out: '47 lbf',
        in: '-11 lbf',
        height: '4 ft',
        at: '2026-11-25T13:00:00Z',
        by: 'head flyperson',
      },
    },
    '2': { height: ['29 ft', '31 ft'], service: 'lockedOut', tag: { number: '7', reason: 'rope' } },
    '3': { items: { tower: 'beside', silk: 'away' } },
  },
  galleries: {
    upper: {
      stock: { F: 28, H: 6 },
      reserved: [{ kind: 'F', count: 9, for: 'set 3' }],
      countedAt: '2026-11-25T12:00:00Z',
      countedBy: 'loader lead',
    },
  },
};

const bareSet = {
  purchase: 1,
  lines: 6,
  lineMassPerLength: 0.164,
  batten: 76.7,
  carriage: 43.1,
  lowStop: 0.9144,
  highStop: 18.5928,
  arborTopAtLow: 20.2692,
  wireEndAbove: 0.6096,
  items: [
    { kind: 'cloth', mass: 236, drop: 9.1, tie: 0.15, hem: 10 },
    { kind: 'tipping', mass: 290, drop: 6.7, pick: 0.3, centre: 0.46 },
    { kind: 'loom', massPerLength: 4.6, length: 15, fixedAt: 11.6 },
  ],
};

const bricks = [
  { id: 'F', mass: 11.34, thickness: 0.0305, stock: 60 },
  { id: 'H', mass: 5.67, thickness: 0.0152, stock: 10 },
];

export const balance = { ...bareSet, bricks: 273.7, heights: [0.9144, 1.2192, 9.144] };

export const brickTask = { target: 316, carriage: 43, bricks, stackHeight: 1.68, tolerance: 2 };

export const mix = {
  balance: bareSet,
  from: 9,
  to: 18,
  bricks,
  stackHeight: 1.68,
  holds: { in: 222, out: 222 },
};

export const takeoff = {
  kind: 'units',
  basis: 'published',
  units: [{ name: 'head', count: 2, each: { value: 35.8, relative: 0.02 }, xs: [-1.2, 1.2] }],
  placement: { from: -1.2, to: 1.2 },
};

export const pullTest = { out: 209, in: -49, handLinePerBatten: 1 };

export const reach = {
  lowStop: 0.9144,
  highStop: 18.6,
  panAtLow: 18.14,
  panThickness: 0.0762,
  purchase: 1,
  stack: 0.3,
  galleryFloor: 17.68,
  reachLow: 0.0762,
  reachHigh: 1.676,
};

export const batten = {
  pipe: {
    massPerLength: 4.05,
    secondMoment: 1.29e-7,
    elasticModulus: 2e11,
    sectionModulus: 5.35e-6,
    plasticModulus: 7.34e-6,
    yieldStrength: 2.413e8,
  },
  left: -6,
  right: 6,
  lines: [
    { x: -5, stiffness: 60_000, trim: 0.002 },
    { x: 0, stiffness: null },
    { x: 5, stiffness: 50_000 },
  ],
  loads: [
    { x: -2, mass: 30 },
    { from: 1, to: 4, mass: 45 },
  ],
  tensionOnly: true,
  supports: [{ x: -5.5, stiffness: 1e6, height: -0.02 }],
  splices: [{ x: 2, strength: 0.8 }],
  pieces: [
    {
      bendingStiffness: null,
      loads: [{ from: -2, to: 2, mass: 60 }],
      picks: [
        { x: -1.5, stiffness: 1e5 },
        { x: 0.1, stiffness: 1e5, trim: 0.001 },
        { x: 1.5, stiffness: null },
      ],
    },
  ],
};

export const lines = {
  purchase: 1,
  lines: [
    { x: -4, tension: 800, fleetOffset: 0.05 },
    { x: 4, tension: 900, muleBlocks: [{ x: 0, z: 20.2 }] },
  ],
  headX: -10.97,
  loftHeight: 20.12,
  headHeight: 20.73,
  wireEndHeight: 11.6,
  attachHeight: 12.2,
  lineMassPerLength: 0.164,
  cable: {
    diameter: 0.00635,
    breakingStrength: 31_137,
    termination: 'compressionSleeve',
    smallestSheave: 0.2032,
    construction: '7x19 galvanized',
  },
  handLineMass: 9.25,
  handLineTension: 100,
  friction: { bearing: 'rolling', batten: 'out' },
  held: { battenSide: 180, arbor: 190 },
  moves: [
    { kind: 'steady', mass: 200, acceleration: 5 },
    { kind: 'suddenStop', mass: 200, stiffness: 90_000, speed: 1.2 },
    { kind: 'drop', mass: 20, stiffness: 90_000, drop: 0.1 },
  ],
  bridles: [{ load: 1000, left: 1, right: 2, height: 1.5 }],
  turningBlocks: [{ tension: 2000, turn: 90 }],
};

export const totals = {
  bays: ['A', 'B'],
  wells: [
    { id: 'W1', x: -4, width: 0.5 },
    { id: 'W2', x: 4, width: 0.5 },
  ],
  movingShare: 0.25,
  states: [
    {
      name: 'bare',
      sets: [
        {
          set: '1',
          bay: 'A',
          purchase: 1,
          arborMass: 73,
          handLineMass: 9.25,
          arborWireMass: 2,
          lines: [
            { x: -4, tension: 350 },
            { x: 4, tension: 360 },
          ],
          moving: true,
        },
        { set: 'M1', purchase: 2, arborMass: 0, handLineMass: 0, lines: [] },
      ],
    },
  ],
  floors: [
    {
      id: 'upper',
      length: 21.3,
      width: 1.07,
      peopleAndTools: 360,
      bricks: [{ count: 480, mass: 11.34, floorLength: 0.1524 }],
    },
  ],
};

const curve = [
  { height: 0.9144, below: -1300, above: -1300 },
  { height: 7.0104, below: -1420, above: 110, contact: { low: -1420, high: 110 } },
  { height: 18.5928, below: -110, above: -110 },
];

export const releasable = { curve, lowStop: 0.9144, highStop: 18.5928, height: 4, hold: 222 };

export const runaway = {
  ...releasable,
  moves: {
    purchase: 1,
    arbor: 362,
    hanging: [
      { height: 0.9144, below: 210, above: 210 },
      { height: 7.0104, below: 210, above: 366 },
      { height: 18.5928, below: 366, above: 366 },
    ],
    lineMass: 33,
    blockMass: 8,
    friction: { share: 0.05, of: 'batten', constant: 18 },
  },
  already: { way: 'out', speed: 0.2 },
  liftLines: { stiffness: 180_000, largestShare: 0.2, breakingStrength: 31_137 },
  stop: { distance: 0.05 },
};

export const dropped = {
  mass: 11.34,
  from: 17.6784,
  speed: 1,
  air: { dragCoefficient: 1.2, area: 0.03, density: 1.2 },
  bounce: { least: 2, shareOfFall: 0.25 },
  levels: [
    { name: 'mid gallery', height: 11.5824 },
    { name: 'deck', height: 0 },
    { name: 'trap', height: -3 },
  ],
};
