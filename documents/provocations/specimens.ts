/** One small, sound document of each kind, to be spoiled in one place at a time. */

const given = { basis: 'measured', source: 'survey', by: 'house crew', on: '2026-05-04' } as const;

const brick = (id: string, name: string, mass: string, serves: readonly string[]) => ({
  id,
  name,
  mass: { value: mass, tolerance: '0.5 lb', basis: 'weighed', source: 'sample of 24' },
  thickness: '1.2 in',
  serves,
  looksLike: [] as string[],
  owned: 60,
});

const single = {
  suspension: 'singlePurchase',
  lines: ['-20 ft', '0 ft', '20 ft'],
  lineMassPerLength: '0.110 lb/ft',
  lineLimit: '875 lbf',
  wireEndAbove: '2 ft',
  batten: { left: '-22 ft', right: '22 ft', mass: '150 lb', massPerLength: '2.72 lb/ft' },
  liveLimit: '1000 lb',
  lowStop: { height: '3 ft', rated: '1400 lbf' },
  highStop: { height: '60 ft', rated: '1400 lbf' },
  workingHeight: '4 ft',
  arbor: {
    carriageMass: '95 lb',
    pipeWeight: [{ kind: 'F', count: 4 }],
    length: '7 ft',
    usableRod: '66 in',
    panAtLow: '59.5 ft',
    panThickness: '0.25 ft',
    attachAbovePan: '7 ft',
    massLimit: '1500 lb',
    topClearance: '6 in',
    bottomClearance: '6 in',
  },
  handLinePerBatten: 1,
  rail: 'deck',
};

export const house = {
  format: 'counterpoise-house',
  version: 1,
  id: 'marl',
  name: 'Marl Street Hall',
  demo: true,
  units: 'customary',
  words: 'US',
  given,
  stage: { openingWidth: '40 ft', operatingSide: 'stageRight', operatingX: '-30 ft' },
  rules: {
    given: { basis: 'houseRule' },
    lockLimit: '50 lbf',
    handLineLimit: '650 lbf',
    pullBrief: '80 lbf',
    pullSteady: '50 lbf',
    peoplePerHandLine: 2,
    frictionShare: '5 %',
    frictionConstant: '4 lbf',
    clipsForbidden: true,
    staleAfter: '4 h',
    toleranceByBasis: { weighed: '2 %', estimated: '25 %' },
  },
  brickKinds: [
    brick('F', 'full', '25 lb', ['pipeWeight', 'show']),
    brick('H', 'half', '12.5 lb', ['show']),
    brick('O', 'old cast', '22 lb', ['pipeWeight']),
  ],
  spreader: { mass: '2 lb', thickness: '0.25 in', every: '24 in', inCarriage: true },
  galleries: [
    { id: 'upper', name: 'Upper gallery', floor: '58 ft', reachLow: '3 in', reachHigh: '5.5 ft' },
    { id: 'mid', name: 'Mid gallery', floor: '38 ft', reachLow: '3 in', reachHigh: '5.5 ft' },
  ],
  rails: [{ id: 'deck', name: 'Deck rail', floor: '0 ft' }],
  bays: [
    { id: 'A', sets: ['1', '2'], verticalLimit: '36 kN' },
    { id: 'B', sets: ['3'], verticalLimit: '36 kN' },
  ],
  eyes: [{ id: 'front', name: 'Front row', x: '0 ft', y: '-12 ft', z: '0.5 ft' }],
  keepOuts: [
    { id: 'curtain', name: 'Fire curtain', y: ['0 in', '12 in'] },
    { id: 'vent', name: 'Smoke vent', x: ['-6 ft', '6 ft'], z: ['67 ft', null] },
  ],
  openings: [{ id: 'T1', name: 'Trap', x: ['-4 ft', '4 ft'], y: ['200 in', '248 in'] }],
  equipment: [{ id: 'bull', name: 'Bull line', count: 2, rating: '450 lbf' }],
  setTypes: {
    single,
    long: { extends: 'single', batten: { left: '-29 ft', right: '29 ft' } },
    electric: { suspension: 'motor', batten: { left: '-22 ft', right: '22 ft', mass: '150 lb' } },
  },
  lineSets: [
    { id: '1', type: 'single', y: '18 in' },
    { id: '2', type: 'single', y: '27 in' },
    { id: '3', type: 'long', y: '36 in', remark: 'reeved anew in spring' },
    { id: 'M1', type: 'electric', y: '45 in' },
  ],
  remarks: ['a house for tests'],
};

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
