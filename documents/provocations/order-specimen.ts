/** A small, sound order of work in form; nobody says that it may be done. */
export const order = {
  format: 'counterpoise-order',
  version: 1,
  house: 'marl',
  show: 'fair',
  set: '1',
  start: {
    height: '3 ft',
    stack: [
      { kind: 'F', count: 4, tag: 'pipe' },
      { kind: 'plate', count: 1, tag: 'spreader' },
    ],
    items: { cloth: 'away' },
    restraints: [
      { kind: 'bullLine', resists: 'out', rating: '450 lbf', from: '3 ft', to: '10 ft' },
    ],
    service: 'in',
    closed: [{ zone: 'run' }, { zone: 'drop', gallery: 'upper' }],
  },
  steps: [
    { act: 'attach', item: 'cloth', as: 'flying' },
    { act: 'add', kind: 'F', count: 4, gallery: 'upper' },
    { act: 'reopen', zone: 'drop', gallery: 'upper' },
    { act: 'fly', to: '24 ft' },
    { act: 'rig', restraint: { kind: 'arborSling', resists: 'out', rating: '200 lbf' } },
    { act: 'ease', pull: '40 lbf', lifted: false },
    { act: 'hangOnSteel' },
    { act: 'close', zone: 'run' },
    { act: 'remove', kind: 'H', count: 1, gallery: 'upper' },
  ],
};
