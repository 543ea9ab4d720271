/** Shows and records that contradict themselves, their house or one another. */

import { show } from './specimens.ts';
import type { Provocations } from './spoil.ts';
import { omit, put, puts } from './spoil.ts';

const cloth = 'hangs[0].items[0]';
const tower = 'hangs[2].items[0]';
const [first] = show.hangs;

const cue = (fields: Readonly<Record<string, string>>) => ({
  number: '1',
  set: '1',
  from: '58 ft',
  to: '24 ft',
  ...fields,
});

export const SHOW_PROVOCATIONS: Provocations = {
  'DOC-100': [
    put('show', 'house', 'kestle'),
    put('state', 'house', 'marl2'),
    put('state', 'house', 'Marl'),
  ],
  'DOC-101': [
    put('show', 'hangs[2].set', '33'),
    put('show', 'keptEmpty.44', 'depth'),
    put('show', 'cues[0].set', '11'),
    put('state', 'sets.77', {}),
    put('house', 'bays[1].sets[0]', '30'),
  ],
  'DOC-102': [
    put('show', 'hangs', [...show.hangs, { ...first, coupledWith: [] }], { at: 'hangs[3].set' }),
    puts('show', { 'hangs[2].set': '2' }, 'hangs[2].set'),
    puts('show', { 'hangs[2].set': '1' }, 'hangs[2].set'),
  ],
  'DOC-103': [
    put('show', 'keptEmpty.1', 'depth of 2'),
    put('show', 'keptEmpty.2', 'depth of 1'),
    put('show', 'keptEmpty', { M1: 'spare', 3: 'spare' }, { at: 'keptEmpty.3' }),
  ],
  'DOC-104': [
    put('show', `${tower}.centre`, 46),
    put('show', `${tower}.centre`, -0.1),
    put(
      'show',
      `${tower}.centre`,
      { value: 1.01, basis: 'measured' },
      {
        at: `${tower}.centre.value`,
      },
    ),
  ],
  'DOC-105': [
    put('show', 'hangs[1].items[1].kind', 'clear', { at: 'hangs[1].items[1].takeoff.by' }),
    put('show', `${tower}.kind`, 'loom', { at: `${tower}.takeoff.by` }),
    put('show', 'hangs[1].items[0].kind', 'deckLoom', { at: 'hangs[1].items[0].takeoff.by' }),
  ],
  'DOC-106': [
    put('show', `${tower}.takeoff.hem`, '20 lb'),
    put('show', `${cloth}.kind`, 'standing', { at: `${cloth}.takeoff.hem` }),
    put('show', `${cloth}.kind`, 'clear', { at: `${cloth}.takeoff.hem` }),
  ],
  'DOC-107': [
    put('show', 'hangs[0].coupledWith', ['2', '1'], { at: 'hangs[0].coupledWith[1]' }),
    put('show', 'hangs[2].coupledWith', ['3'], { at: 'hangs[2].coupledWith[0]' }),
    put('show', 'hangs[1].coupledWith', ['1', '2'], { at: 'hangs[1].coupledWith[1]' }),
  ],
  'DOC-108': [
    put('show', 'hangs[1].coupledWith', [], { at: 'hangs[0].coupledWith[0]' }),
    put('show', 'hangs[2].coupledWith', ['1'], { at: 'hangs[2].coupledWith[0]' }),
    put('show', 'hangs[2].coupledWith', ['M1'], { at: 'hangs[2].coupledWith[0]' }),
  ],
  'DOC-109': [
    put('show', 'cues[0].to', '61 ft'),
    put('show', 'cues[0].from', '2.9 ft'),
    put('show', 'hangs[2].trims[1].height', '60.1 ft'),
    put('show', 'hangs[2].deadHungAt', '70 ft'),
    put('state', 'sets.1.height', '2 ft'),
    put('state', 'sets.2.height', ['58 ft', '62 ft']),
    put('state', 'sets.2.height', ['2 ft', '31 ft']),
    put('state', 'sets.1.pullTest.height', '1 ft'),
    put('balance', 'heights', [0.9144, 19], { at: 'heights[1]' }),
    put('mix', 'to', 19),
    put('mix', 'from', 0.5),
  ],
  'DOC-110': [
    put('show', 'cues[1]', cue({}), { at: 'cues[1].number', with: ['DOC-112'] }),
    put('show', 'cues', [...show.cues, cue({ to: '30 ft' })], { at: 'cues[2].number' }),
    put('show', 'cues', [...show.cues, cue({ number: '2', set: '3' })], { at: 'cues[2].number' }),
  ],
  'DOC-111': [
    omit('show', 'cues[1].releases', { at: 'cues[1].to' }),
    put('show', 'cues[0].to', '24 ft'),
    put('show', 'cues[0].from', '58 ft', { at: 'cues[0].to' }),
  ],
  'DOC-112': [
    put('show', `${tower}.releases[0].cue`, '3'),
    put('show', 'cues[1].number', '2A', { at: `${tower}.releases[0].cue` }),
    put('show', `${cloth}.releases`, [{ how: 'drops away', cue: '9' }], {
      at: `${cloth}.releases[0].cue`,
    }),
  ],
  'DOC-113': [
    put('show', 'hangs[0].bricks.counts.O', 2),
    put(
      'show',
      'hangs[1].bricks',
      { counts: { O: 1 }, reason: 'spare' },
      {
        at: 'hangs[1].bricks.counts.O',
      },
    ),
    put(
      'show',
      'hangs[2].bricks',
      { counts: { F: 3, O: 0 }, reason: 'spare' },
      {
        at: 'hangs[2].bricks.counts.O',
      },
    ),
  ],
  'DOC-114': [
    put('show', 'hangs[2]', { ...first, set: 'M1', coupledWith: [] }, { at: 'hangs[2].bricks' }),
    put(
      'state',
      'sets.M1',
      { stack: [{ kind: 'F', count: 1, tag: 'show' }] },
      {
        at: 'sets.M1.stack',
      },
    ),
    put(
      'state',
      'sets.M1',
      { stack: [{ kind: 'plate', count: 1, tag: 'spreader' }] },
      {
        at: 'sets.M1.stack',
      },
    ),
  ],
  'DOC-115': [
    put('show', `${tower}.releases[0].mass`, '301 lb'),
    put('show', `${tower}.takeoff.mass`, '19 lb', { at: `${tower}.releases[0].mass` }),
    put('show', `${cloth}.releases`, [{ mass: '100 kg', how: 'drops away' }], {
      at: `${cloth}.releases[0].mass`,
    }),
  ],
  'DOC-116': [
    put('show', 'hangs[1].items[0].takeoff.units[0].xs', ['0 ft'], {}),
    put('show', 'hangs[1].items[0].takeoff.units[0].count', 3, {
      at: 'hangs[1].items[0].takeoff.units[0].xs',
    }),
    put('takeoff', 'units[0].xs', [0, 1, 2]),
    put('takeoff', 'units[0].count', 1, { at: 'units[0].xs' }),
  ],
  'DOC-117': [
    put('show', `${cloth}.placement.from`, '-30 ft'),
    put('show', `${tower}.placement.points[1]`, '1000 in'),
    put('show', 'hangs[1].items[0].takeoff.units[0].xs[0]', '-20 m'),
  ],
};

export const STATE_PROVOCATIONS: Provocations = {
  'DOC-130': [
    put('state', 'sets.1.items', { clotg: 'flying' }, { at: 'sets.1.items.clotg' }),
    put('state', 'sets.2.items', { cloth: 'away' }, { at: 'sets.2.items.cloth' }),
    put('state', 'sets.M1', { items: { dial: 'away' } }, { at: 'sets.M1.items.dial' }),
  ],
  'DOC-131': [
    put('state', 'sets.2.height', ['31 ft', '29 ft']),
    put('state', 'sets.1.height', ['10 m', '30 ft']),
    put('state', 'sets.3.height', ['10.01 ft', '10 ft']),
  ],
  'DOC-132': [
    omit('state', 'sets.2.tag'),
    put('state', 'sets.1.service', 'lockedOut', { at: 'sets.1.tag' }),
    put('state', 'sets.3.service', 'lockedOut', { at: 'sets.3.tag' }),
  ],
  'DOC-133': [
    put('state', 'sets.1.knowledge.second', 'head flyperson'),
    put('state', 'sets.1.knowledge.by', 'loader lead', { at: 'sets.1.knowledge.second' }),
    put(
      'state',
      'sets.2.knowledge',
      { basis: 'counted', by: 'A', second: 'A' },
      {
        at: 'sets.2.knowledge.second',
      },
    ),
  ],
  'DOC-134': [
    put('state', 'sets.1.knowledge.at', '2026-11-25T14:31:01Z'),
    put('state', 'sets.1.pullTest.at', '2027-01-01T00:00:00Z'),
    put('state', 'galleries.upper.countedAt', '2026-11-25T14:30:00-01:00'),
  ],
};
