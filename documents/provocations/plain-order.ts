/** Plain numbers of a set with an order of work, sound, to be spoiled in one place at a time. */
const uncertainty = 1;

const set = {
  id: '9',
  purchase: 1,
  lines: 6,
  lineMassPerLength: 0.1637,
  batten: 76.66,
  carriage: 43.09,
  lowStop: 0.9144,
  highStop: 18.5928,
  arborTopAtLow: 20.2692,
  wireEndAbove: 0.6096,
  battenUncertainty: 1.5,
  carriageUncertainty: 0.9,
  items: {
    cloth: {
      kind: 'cloth',
      mass: 54,
      drop: 8.5,
      tie: 0.08,
      hem: 25.4,
      uncertainty,
      hemUncertainty: 1,
    },
  },
  lowStopRated: 6227,
  highStopRated: 6227,
  workingHeight: 1.2192,
  lockLimit: 222.4,
  hands: { brief: 711, steady: 444 },
  friction: { share: 0.05, constant: 17.8 },
  panAtLow: 18.1356,
  panThickness: 0.0762,
  usableRod: 1.6764,
  arborMassLimit: 544,
  bricks: [
    { id: 'F', mass: 11.34, thickness: 0.03048, uncertainty: 0.23 },
    { id: 'O', mass: 9.98, thickness: 0.03175, uncertainty: 0.36, looksLike: ['F'] },
  ],
  spreader: { mass: 0, thickness: 0.00635, every: 0.6096, rule: 'floor' },
  galleries: [
    { id: 'upper', floor: 17.6784, reachLow: 0.0762, reachHigh: 1.6764, stock: { F: 40 } },
    { id: 'mid', floor: 11.5824, reachLow: 0.0762, reachHigh: 1.6764, stock: { F: 12, O: 0 } },
  ],
};

const start = {
  height: 0.9144,
  stack: [{ kind: 'O', count: 3, tag: 'pipe' }],
  items: { cloth: 'beside' },
  restraints: [
    { kind: 'bullLine', resists: 'out', rating: 900, from: 3, to: 9, owner: 'deck', tag: null },
  ],
  service: 'in',
  closed: [{ zone: 'run' }, { zone: 'drop', gallery: 'mid' }],
};

export const plan = {
  set,
  start,
  goal: { items: { cloth: 'on' }, bricks: { F: 7 }, height: 18, service: 'in' },
  doubt: 'none',
  lock: 'planning',
  restraint: 'out',
  steel: 9000,
  rests: ['cloth'],
  spare: { F: 2 },
  callHeights: 0.0762,
};

export const verify = {
  set,
  start,
  doubt: 'worst',
  lock: 'nominal',
  steps: [
    { act: 'attach', item: 'cloth', as: 'flying' },
    { act: 'rest', item: 'cloth' },
    { act: 'add', kind: 'F', count: 4, gallery: 'upper' },
    { act: 'fly', to: 7.5 },
    { act: 'unrig', restraint: { ...start.restraints[0], rating: null, from: null, to: null } },
    { act: 'hangOnSteel' },
    { act: 'close', zone: { zone: 'drop', gallery: 'upper' } },
    { act: 'ease', pull: 200, lifted: false },
  ],
};
