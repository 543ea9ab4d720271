/** Fields, words, numbers and measures that are not what is read in their place. */
import { blankHouse, blankShow } from '../blank.ts';
import type { Provocations } from './spoil.ts';
import { instead, omit, put } from './spoil.ts';

const cloth = 'hangs[0].items[0]';
const many = (count: number, entry: unknown): readonly unknown[] => Array(count).fill(entry);
const eye = (id: string) => ({ id, name: 'Seat', x: '0 ft', y: '-12 ft', z: '1 ft' });

export const STRUCTURE_PROVOCATIONS: Provocations = {
  'DOC-030': [
    omit('house', 'stage'),
    omit('house', 'brickKinds[0].serves'),
    omit('show', 'hangs[0].items[0].takeoff.by'),
    omit('state', 'at'),
    omit('state', 'sets.1.pullTest.height'),
    omit('order', 'start.service'),
    omit('order', 'steps[0].act'),
    omit('order', 'steps[2].gallery'),
    omit('house', 'setTypes.electric.suspension', { at: 'lineSets[3].suspension' }),
    omit('balance', 'purchase'),
    omit('takeoff', 'units[0].each'),
  ],
  'DOC-031': [
    put('house', 'setTypes.single.lowStop.hieght', '3 ft'),
    put('show', `${cloth}.weight`, '200 lb'),
    put('state', 'sets.1.Lock', 'closed'),
    put('order', 'steps[3].speed', 'slow'),
    put('order', 'steps[7].gallery', 'upper'),
    put(
      'house',
      'rules.lockLimit',
      { value: '50 lbf', bassis: 'houseRule' },
      {
        at: 'rules.lockLimit.bassis',
      },
    ),
    put('balance', 'items[0].pick', 1),
    put('takeoff', 'units[0].each.unit', 'kg'),
  ],
  'DOC-032': [
    put('house', 'lineSets', {}),
    put('house', 'setTypes', []),
    put('house', 'name', 7),
    put('house', 'demo', 'yes'),
    put('house', 'lineSets[0].lock.failed', 'no'),
    put('house', 'stage', 'wide'),
    put('house', 'rules.peoplePerHandLine', '2'),
    put('house', 'rules.lockLimit', ['50 lbf']),
    put('house', 'rules.lineDesignFactor', '8:1'),
    put('house', 'setTypes.single.batten.splices', 'none'),
    put('house', 'keepOuts[0].y', '12 in'),
    put('show', `${cloth}.takeoff`, 'weighed'),
    put('show', 'cues[0].releases', 1),
    put('state', 'sets.1.stack[0].count', '4'),
    put('order', 'steps', {}),
    put('order', 'steps[5].lifted', 'no'),
    put('order', 'steps[4].restraint', 'sling'),
    put('balance', 'items', {}),
    put('balance', 'batten', '76 kg'),
    put('reach', 'purchase', true),
  ],
  'DOC-033': [
    put('house', 'units', 'imperial'),
    put('show', 'hangs[0].family', 'Soft'),
    put('house', 'setTypes.single.lift.cable.termination', 'clip'),
    put('house', 'setTypes.single.batten.pipe.wall', 'Nominal'),
    put('state', 'sets.1.lock', 'shut'),
    put('order', 'steps[0].act', 'hang'),
    put('order', 'steps[7].zone', 'stage'),
    put('show', `${cloth}.takeoff.by`, 'weight'),
    put('balance', 'purchase', 3),
    put('balance', 'items[0].kind', 'curtain'),
    put('takeoff', 'basis', 'guessed'),
  ],
  'DOC-034': [
    put('house', 'lineSets', many(501, { id: '9', type: 'single' })),
    put('show', 'hangs[1].items', many(201, {})),
    put('state', 'sets.1.stack', many(501, { kind: 'F', count: 1, tag: 'show' })),
    put('order', 'steps', many(1001, { act: 'hangOnSteel' })),
    put('show', 'keptEmpty', Object.fromEntries(many(501, '').map((_, at) => [`s${at}`, 'x']))),
    put('balance', 'heights', many(10_001, 1)),
  ],
  'DOC-035': [
    put('house', 'brickKinds[1].serves', []),
    put('house', 'brickKinds[2].sample.weights', ['22 lb', '21.9 lb']),
    put(
      'house',
      'brickKinds[0].sample',
      {
        told: 'summary',
        count: 2,
        mean: '25 lb',
        least: '24.9 lb',
        most: '25.1 lb',
        on: '2026-08-31',
      },
      { at: 'brickKinds[0].sample.count' },
    ),
    put('house', 'keepOuts[0].y', ['0 in']),
    put('show', 'hangs[1].items[0].takeoff.units', []),
    put('state', 'sets.2.height', []),
    put('bricks', 'bricks', []),
  ],
  'DOC-036': [
    put('house', 'lineSets[0].y', null),
    put('house', 'rules.clipsForbidden', null),
    put('house', 'rules.peoplePerHandLine', null),
    put('house', 'galleries', null),
    put('house', 'stage', null),
    put('show', 'name', null),
    put('show', 'hangs[0].family', null),
    put('state', 'sets.1.service', null),
    put('order', 'start.restraints', null),
    put('reach', 'stack', null),
  ],
  'DOC-040': [
    put('house', 'name', ''),
    put('show', 'hangs[0].name', '   '),
    put('state', 'by', ''),
    put('takeoff', 'name', ''),
  ],
  'DOC-041': [
    put('house', 'name', 'x'.repeat(121)),
    put('show', 'hangs[0].bricks.reason', 'x'.repeat(2001)),
    put('state', 'sets.2.tag.number', '7'.repeat(121)),
    put('bricks', 'bricks[0].id', 'x'.repeat(33)),
  ],
  'DOC-042': [
    put('house', 'name', 'Marl\u0000Street'),
    put('show', 'name', 'Fair\nDay'),
    put('state', 'by', 'fly\u202Eperson'),
    put('house', 'remarks', ['half a character: \uD800'], { at: 'remarks[0]' }),
  ],
  'DOC-043': [
    put('house', 'brickKinds[1].id', 'half brick'),
    put('show', 'hangs[0].items[0].id', '-cloth'),
    put('state', 'house', ''),
    put('order', 'steps[1].gallery', 'upper gallery'),
    put(
      'house',
      'setTypes',
      { 'a b': { suspension: 'motor' } },
      {
        at: 'setTypes["a b"]',
        with: ['DOC-070', 'DOC-070', 'DOC-070', 'DOC-070'],
      },
    ),
  ],
  'DOC-044': [
    put('house', 'given.on', '2026-02-30'),
    put('show', 'given.on', '4 May 2026'),
    put(
      'house',
      'rules.lockLimit',
      { value: '50 lbf', basis: 'houseRule', on: '2026-5-4' },
      {
        at: 'rules.lockLimit.on',
      },
    ),
  ],
  'DOC-045': [
    put('state', 'at', '2026-11-25T14:31:00'),
    put('state', 'sets.1.knowledge.at', 'yesterday'),
    put('state', 'galleries.upper.countedAt', '2026-11-25T25:00:00Z'),
    put('state', 'sets.1.pullTest.at', '2026-02-30T10:00:00Z'),
  ],
  'DOC-046': [
    put('house', 'brickKinds[1].id', 'F'),
    put('house', 'galleries[1].id', 'upper'),
    put('house', 'lineSets[1].id', '1', { with: ['DOC-101'] }),
    put('house', 'loftWells[2].id', 'W1'),
    put('house', 'eyes', [eye('a'), eye('b'), eye('a')], { at: 'eyes[2].id' }),
    put('show', 'hangs[1].items[1].id', 'heads'),
    put('show', 'hangs[0].trims[1].name', 'in'),
    put('bricks', 'bricks[1].id', 'F'),
    put('mix', 'bricks[1].id', 'F'),
  ],
};

const given = { basis: 'weighed' };

const blank = blankHouse({
  id: 'a',
  name: 'A',
  units: 'metric',
  words: 'UK',
  operatingSide: 'stageLeft',
});

const bareHang = {
  set: '1',
  name: 'Flat',
  family: 'hard',
  items: [{ id: 'f', name: 'Flat', kind: 'clear', centre: 0.5, takeoff: { by: 'mass' } }],
};

export const VALUE_PROVOCATIONS: Provocations = {
  'DOC-050': [
    put('house', 'lineSets[0].y', 18),
    put('house', 'lineSets[0].lock.grip.value', 62),
    put('show', 'cues[0].from', 30.5),
    put('state', 'sets.1.height', 24),
    put('order', 'steps[3].to', 24),
    put('house', 'rules.lockLimit', { value: 50, ...given }, { at: 'rules.lockLimit.value' }),
  ],
  'DOC-051': [
    put('house', 'brickKinds[0].thickness', '-1.2 in'),
    put('house', 'lineSets[0].lock.grip.value', '-62 lbf'),
    put('show', `${cloth}.takeoff.mass`, '-200 lb'),
    put('state', 'galleries.upper.stock.F', -1),
    put('order', 'steps[5].pull', '-40 lbf'),
    put('house', 'rules.peoplePerHandLine', -2),
    put('house', 'setTypes.single.batten.pipe.secondMoment', '-0.31 in⁴'),
    put('house', 'setTypes.single.lift.loftBlock.fleetAngle', '-1 deg'),
    put('house', 'brickKinds[0].mass.tolerance', '-1 %'),
    put(
      'house',
      'brickKinds[0].owned',
      { value: 60, tolerance: -1 },
      { at: 'brickKinds[0].owned.tolerance' },
    ),
    put(
      'show',
      'hangs[2].items[0].centre',
      { value: 0.4, tolerance: -0.1, ...given },
      {
        at: 'hangs[2].items[0].centre.tolerance',
      },
    ),
    put('balance', 'carriage', -43),
    put('bricks', 'bricks[0].stock', -1),
  ],
  'DOC-052': [
    put('house', 'brickKinds[0].thickness', '0 in'),
    put('house', 'setTypes.single.lift.cable.breakingStrength', '0 lbf'),
    put('house', 'loftWells[0].width', '0 ft'),
    put('house', 'setTypes.single.lift.muleBlocks[0].line', 0),
    put('show', 'cues[0].duration', '0 s'),
    put('show', 'hangs[1].items[0].takeoff.units[0].count', 0),
    put('state', 'sets.1.stack[0].count', 0),
    put('order', 'steps[1].count', 0),
    put('balance', 'lines', 0),
    put('bricks', 'bricks[0].mass', 0),
  ],
  'DOC-053': [
    put('house', 'setTypes.single.highStop.height', '101 m'),
    put('house', 'setTypes.single.arbor.carriageMass', '51 t'),
    put('show', `${cloth}.drop`, '700 ft'),
    put('state', 'sets.1.pullTest.out', '-200 kN'),
    put('house', 'rules.frictionShare', '101 %'),
    put('house', 'rules.lockTestEvery', '4000 days'),
    put('house', 'setTypes.single.handLinePerBatten', 40),
    put('house', 'setTypes.single.batten.pipe.secondMoment', '0.31 m⁴'),
    put('house', 'setTypes.single.batten.pipe.elasticModulus', '600 GPa'),
    put('house', 'setTypes.single.lift.cable.axialStiffness', '300000 kip'),
    put('house', 'setTypes.single.lift.cable.diameter', '1/4 m'),
    put('house', 'setTypes.single.lift.lineTrims[1]', '-3 m'),
    put('house', 'rules.lineDesignFactor', 0.8),
    put('house', 'rules.sheaveRatio', 600),
    put('balance', 'batten', 1e6),
    put('balance', 'lines', 41),
    put('pullTest', 'out', -1e6),
    put('bricks', 'stackHeight', 1e4),
  ],
  'DOC-054': [
    put('house', 'brickKinds[0].owned', 12.5),
    put('house', 'equipment[0].count', 1.5),
    put('show', 'hangs[0].bricks.counts.F', 6.5),
    put('state', 'sets.1.stack[0].count', 0.5),
    put('order', 'steps[1].count', 1.5),
    put('balance', 'lines', 5.5),
  ],
  'DOC-055': [
    put('house', 'equipment[0].count', 5000),
    put('show', 'hangs[0].bricks.counts.F', 1e9),
    put('state', 'galleries.upper.stock.F', 1e6),
    put('order', 'steps[1].count', 501),
  ],
  'DOC-060': [
    instead(
      'house',
      'a bare width and no "given"',
      { ...blank, stage: { operatingSide: 'stageLeft', openingWidth: '40 ft' } },
      'stage.openingWidth',
    ),
    instead(
      'house',
      'a value without basis and no "given"',
      { ...blank, rules: { lockLimit: { value: '50 lbf', source: 'rule book' } } },
      'rules.lockLimit',
    ),
    instead(
      'show',
      'a bare centre and no "given"',
      { ...blankShow({ id: 'a', name: 'A', house: 'marl' }), hangs: [bareHang] },
      'hangs[0].items[0].centre',
    ),
  ],
  'DOC-061': [
    put('house', 'lineSets[0].y', { value: '18 in', unknown: 'not sure', ...given }),
    put('show', 'hangs[0].halfDepth', { basis: 'weighed', unknown: 'not sure' }),
    put('house', 'rules.lockLimit', { tolerance: '5 %', unknown: 'not sure' }),
  ],
  'DOC-062': [
    put('house', 'lineSets[0].y', { ...given }),
    put('show', 'hangs[0].halfDepth', {}),
    put('house', 'rules.clipsForbidden', { source: 'rule book', ...given }),
  ],
  'DOC-063': [
    put('house', 'brickKinds[0].mass.tolerance', '1 in'),
    put(
      'house',
      'lineSets[0].y',
      { value: '18 in', tolerance: '1 lb' },
      {
        at: 'lineSets[0].y.tolerance',
      },
    ),
    put(
      'show',
      `${cloth}.takeoff.mass`,
      { value: '200 lb', tolerance: '5 lbf' },
      {
        at: `${cloth}.takeoff.mass.tolerance`,
      },
    ),
    put(
      'house',
      'rules.clipsForbidden',
      { value: true, tolerance: '5 %' },
      {
        at: 'rules.clipsForbidden.tolerance',
      },
    ),
  ],
  'DOC-064': [
    put('house', 'brickKinds[0].mass.tolerance', '150 %'),
    put('house', 'brickKinds[1].mass.tolerance', '13 lb'),
    put(
      'show',
      'hangs[0].halfDepth',
      { value: '6 in', tolerance: '7 in' },
      {
        at: 'hangs[0].halfDepth.tolerance',
      },
    ),
    put(
      'show',
      'hangs[2].items[0].centre',
      { value: 0.4, tolerance: 0.7 },
      {
        at: 'hangs[2].items[0].centre.tolerance',
      },
    ),
    put(
      'house',
      'brickKinds[0].owned',
      { value: 60, tolerance: 61 },
      {
        at: 'brickKinds[0].owned.tolerance',
      },
    ),
    put(
      'house',
      'brickKinds[0].owned',
      { value: 60, tolerance: '101 %' },
      {
        at: 'brickKinds[0].owned.tolerance',
      },
    ),
  ],
  'DOC-065': [
    put('house', 'lineSets[0].y', { value: '18 in', by: 'the head flyperson' }),
    put('show', 'hangs[0].halfDepth', { value: '6 in', source: 'drawing 4' }),
    put('house', 'rules.lockLimit', { value: '50 lbf', on: '2026-05-04' }),
  ],
  'QTY-005': [
    put('house', 'brickKinds[0].mass.value', '25'),
    put('house', 'brickKinds[2].sample.weights[1]', '22.1'),
    put('show', 'cues[0].to', '58'),
    put('state', 'sets.1.height', '24'),
  ],
  'QTY-007': [
    put('house', 'lineSets[0].y', '18 lb'),
    put('house', 'setTypes.single.batten.pipe.sectionModulus', '0.326 in⁴'),
    put('house', 'setTypes.single.batten.pipe.yieldStrength', '35 kip'),
    put('show', `${cloth}.drop`, '22 kg'),
    put('state', 'sets.1.pullTest.out', '4 ft'),
  ],
  'QTY-008': [
    put('house', 'rules.lockLimit', '50 lb'),
    put('house', 'setTypes.single.lift.cable.breakingStrength', '7000 lb'),
    put('house', 'bays[0].verticalLimit', '3600 kg'),
    put('state', 'sets.1.restraints[0].rating', '450 lb'),
  ],
};
