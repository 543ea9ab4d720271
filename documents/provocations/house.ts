/** Houses whose parts contradict one another. */
import type { Provocations } from './spoil.ts';
import { omit, put, puts } from './spoil.ts';

const type = 'setTypes.single';

const summary = (mean: string) => ({
  told: 'summary',
  count: 12,
  mean,
  least: '12 lb',
  most: '12.9 lb',
  on: '2026-08-31',
});

export const HOUSE_PROVOCATIONS: Provocations = {
  'DOC-070': [
    put('house', 'lineSets[0].type', 'singel'),
    put('house', 'lineSets[3].type', 'winch'),
    put('house', 'setTypes.long.extends', 'singles'),
  ],
  'DOC-071': [
    put('house', `${type}.extends`, 'single', { with: ['DOC-072'] }),
    puts('house', { [`${type}.extends`]: 'long' }, `${type}.extends`, ['DOC-071']),
    puts(
      'house',
      { [`${type}.extends`]: 'electric', 'setTypes.electric.extends': 'long' },
      'setTypes.long.extends',
      ['DOC-071', 'DOC-071'],
    ),
  ],
  'DOC-072': [
    put('house', 'setTypes.extra', { extends: 'long' }, { at: 'setTypes.extra.extends' }),
    put('house', `${type}.extends`, 'electric', { at: 'setTypes.long.extends' }),
    put('house', 'setTypes.electric.extends', 'long'),
  ],
  'DOC-073': [
    put('house', `${type}.rail`, 'dekc'),
    put('house', 'lineSets[2].rail', 'upper'),
    omit('house', 'rails', { at: `${type}.rail` }),
  ],
  'DOC-074': [
    put('house', `${type}.arbor.pipeWeight[0].kind`, 'G'),
    put('house', 'brickKinds[2].looksLike', ['F', 'X'], { at: 'brickKinds[2].looksLike[1]' }),
    put('show', 'hangs[0].bricks.counts.G', 2),
    put('state', 'sets.1.stack[0].kind', 'f'),
    put('state', 'galleries.upper.stock.G', 2),
    put('state', 'galleries.upper.reserved[0].kind', 'G'),
  ],
  'DOC-075': [
    put('house', 'bays[1].sets', ['3', '1'], { at: 'bays[1].sets[1]' }),
    put('house', 'bays[0].sets', ['1', '2', '2'], { at: 'bays[0].sets[2]' }),
    put('house', 'bays[1].sets[0]', '2'),
  ],
  'DOC-076': [
    put('state', 'galleries.lower', {}),
    put('state', 'galleries.Upper', { stock: {} }),
    put('state', 'galleries.fly', { reserved: [] }),
  ],
  'DOC-078': [
    put('house', `${type}.lowStop.height`, '60 ft'),
    put('house', 'lineSets[1].highStop', { height: '2 ft' }, { at: `${type}.lowStop.height` }),
    put('house', 'lineSets[0].lowStop', { height: '61 ft' }, { at: 'lineSets[0].lowStop.height' }),
    put('balance', 'lowStop', 20),
    put('mix', 'balance.lowStop', 20),
    put('reach', 'highStop', 0.5, { at: 'lowStop' }),
  ],
  'DOC-079': [
    put('house', `${type}.workingHeight`, '2 ft'),
    put('house', 'lineSets[0].workingHeight', '60.5 ft'),
    puts(
      'house',
      { [`${type}.highStop`]: {}, [`${type}.workingHeight`]: '1 ft' },
      `${type}.workingHeight`,
    ),
  ],
  'DOC-080': [
    put('house', `${type}.lines`, ['-20 ft', '20 ft', '0 ft'], { at: `${type}.lines[2]` }),
    put('house', 'lineSets[0].lines', ['0 ft', '0 ft'], { at: 'lineSets[0].lines[1]' }),
    put('house', 'setTypes.electric.lines', ['20 ft', '-20 ft'], {
      at: 'setTypes.electric.lines[1]',
    }),
  ],
  'DOC-081': [
    put('house', `${type}.lines[2]`, '22.5 ft'),
    put('house', 'lineSets[1].lines', ['-23 ft', '0 ft'], { at: 'lineSets[1].lines[0]' }),
    put('house', 'setTypes.electric.lines', ['40 ft'], { at: 'setTypes.electric.lines[0]' }),
  ],
  'DOC-082': [
    put('house', `${type}.batten.left`, '23 ft'),
    put('house', 'lineSets[0].batten', { right: '-22 ft' }, { at: `${type}.batten.left` }),
    put('house', 'setTypes.long.batten.left', '29 ft'),
  ],
  'DOC-083': [
    omit('house', `${type}.arbor`, { at: 'lineSets[0].arbor', with: ['DOC-083', 'DOC-083'] }),
    put('house', 'lineSets[3].suspension', 'doublePurchase', { at: 'lineSets[3].arbor' }),
    put('house', 'setTypes.electric.suspension', 'singlePurchase', { at: 'lineSets[3].arbor' }),
  ],
  'DOC-084': [
    put('house', 'lineSets[3].arbor', { length: '7 ft' }),
    put('house', 'lineSets[1].suspension', 'hemp', { at: `${type}.arbor` }),
    put('house', `${type}.suspension`, 'deadHung', { at: `${type}.arbor`, with: ['DOC-097'] }),
  ],
  'DOC-085': [
    put('house', `${type}.arbor.pipeWeight[0].kind`, 'H'),
    put(
      'house',
      'lineSets[2].arbor',
      { pipeWeight: [{ kind: 'H', count: 2 }] },
      {
        at: 'lineSets[2].arbor.pipeWeight[0].kind',
      },
    ),
    put('house', 'brickKinds[0].serves', ['show'], { at: `${type}.arbor.pipeWeight[0].kind` }),
  ],
  'DOC-086': [
    put('house', 'galleries[0].reachLow', '6 ft'),
    put('house', 'galleries[1].reachHigh', '3 in', { at: 'galleries[1].reachLow' }),
    put('reach', 'reachLow', 2),
  ],
  'DOC-087': [
    put('house', 'keepOuts[1].x', ['6 ft', '-6 ft']),
    put('house', 'keepOuts[1].z', ['67 ft', '66 ft']),
    put('house', 'openings[0].y', ['248 in', '248 in']),
    put('show', 'hangs[0].items[0].placement', { from: '20 ft', to: '-20 ft' }),
    put('state', 'sets.1.restraints[0].from', '12 ft'),
    put('takeoff', 'placement', { from: 1, to: -1 }),
    put('mix', 'from', 18.2),
  ],
  'DOC-088': [
    put('house', 'brickKinds[0].looksLike', ['F'], { at: 'brickKinds[0].looksLike[0]' }),
    put('house', 'brickKinds[1].looksLike', ['F', 'H'], { at: 'brickKinds[1].looksLike[1]' }),
    put('house', 'brickKinds[2].looksLike', ['O'], { at: 'brickKinds[2].looksLike[0]' }),
  ],
  'DOC-089': [
    put('house', 'stage.operatingX', '30 ft'),
    put('house', 'stage.operatingSide', 'stageLeft', { at: 'stage.operatingX' }),
    put('house', 'stage.operatingX', '0 m'),
  ],
  'DOC-090': [
    put('house', 'lineSets[1].y', '18 in'),
    put('house', 'lineSets[3].y', '0.9144 m'),
    put('house', 'lineSets[0].y', '27.01 in', { at: 'lineSets[0].y' }),
  ],
  'DOC-091': [
    put('house', `${type}.arbor.usableRod`, '8 ft'),
    put('house', 'lineSets[0].arbor', { length: '5 ft' }, { at: `${type}.arbor.usableRod` }),
    put(
      'house',
      'lineSets[2].arbor',
      { usableRod: '7.5 ft' },
      {
        at: 'lineSets[2].arbor.usableRod',
      },
    ),
  ],
  'DOC-092': [
    put('house', `${type}.lift.lineTrims`, ['0 in', '0 in']),
    put('house', 'lineSets[0].lift', { lineTrims: ['0 in'] }, { at: 'lineSets[0].lift.lineTrims' }),
    put('house', 'lineSets[1].lines', ['-20 ft', '-7 ft', '7 ft', '20 ft'], {
      at: `${type}.lift.lineTrims`,
    }),
  ],
  'DOC-093': [
    put('house', `${type}.batten.splices[0].x`, '22 ft'),
    put(
      'house',
      'lineSets[0].batten',
      { left: '-21 ft', splices: [{ x: '-21.5 ft' }] },
      {
        at: 'lineSets[0].batten.splices[0].x',
      },
    ),
    put(
      'house',
      'lineSets[1].batten',
      { splices: [{ x: '0 ft' }, { x: '9 m' }] },
      {
        at: 'lineSets[1].batten.splices[1].x',
      },
    ),
  ],
  'DOC-094': [
    put('house', `${type}.lift.muleBlocks[0].line`, 4),
    put(
      'house',
      'lineSets[2].lift',
      { muleBlocks: [{ line: 7, x: '0 ft', z: '66 ft' }] },
      {
        at: 'lineSets[2].lift.muleBlocks[0].line',
      },
    ),
    puts(
      'house',
      {
        'lineSets[0].lines': ['-20 ft', '20 ft'],
        'lineSets[0].lift': { lineTrims: ['0 m', '0 m'] },
      },
      `${type}.lift.muleBlocks[0].line`,
    ),
  ],
  'DOC-095': [
    put('house', 'loftWells[1].x', '-19 ft'),
    put('house', 'loftWells[2].width', '19 m', { at: 'loftWells[2].x' }),
    put('house', 'loftWells[2].x', '1.49 ft'),
  ],
  'DOC-096': [
    put('house', `${type}.batten.pipe.plasticModulus`, '0.326 in³'),
    put('house', `${type}.batten.pipe.sectionModulus`, '5.4 in³', {
      at: `${type}.batten.pipe.plasticModulus`,
    }),
    put(
      'house',
      'lineSets[3].batten',
      { pipe: { sectionModulus: '5.70 cm³', plasticModulus: '5.70 cm³' } },
      { at: 'lineSets[3].batten.pipe.plasticModulus' },
    ),
  ],
  'DOC-097': [
    put('house', 'lineSets[3].lock', {}),
    put('house', 'lineSets[3].lock', { grip: '60 lbf' }),
    put('house', 'lineSets[0].suspension', 'hemp', {
      at: 'lineSets[0].lock',
      with: ['DOC-084'],
    }),
  ],
  'DOC-098': [
    put('house', 'brickKinds[2].mass', { value: '23 lb', tolerance: '0.5 lb', basis: 'weighed' }),
    put('house', 'brickKinds[2].mass', { value: '22 kg', basis: 'published' }),
    put('house', 'brickKinds[2].mass', { value: '21.5 lb', tolerance: '0.5 lb', basis: 'weighed' }),
    put(
      'house',
      'brickKinds[0].sample',
      {
        told: 'summary',
        count: 24,
        mean: '24.4 lb',
        least: '24 lb',
        most: '25 lb',
        on: '2026-08-31',
      },
      { at: 'brickKinds[0].mass' },
    ),
  ],
  'DOC-099': [
    put('house', 'brickKinds[1].sample', summary('13 lb'), { at: 'brickKinds[1].sample.mean' }),
    put('house', 'brickKinds[1].sample', summary('11.9 lb'), { at: 'brickKinds[1].sample.mean' }),
    put('house', 'brickKinds[0].sample', summary('12.5 kg'), { at: 'brickKinds[0].sample.mean' }),
  ],
};
