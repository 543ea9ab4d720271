/** Orders of work that speak of what house, show and set do not have. */
import { order } from './specimens.ts';
import type { Provocations } from './spoil.ts';
import { put, puts } from './spoil.ts';

const [bullLine] = order.start.restraints;

export const ORDER_PROVOCATIONS: Provocations = {
  'DOC-074': [
    put('order', 'steps[1].kind', 'X'),
    put('order', 'steps[8].kind', 'X'),
    put('order', 'start.stack[0].kind', 'X'),
  ],
  'DOC-076': [
    put('order', 'steps[1].gallery', 'lower'),
    put('order', 'steps[2].gallery', 'lower'),
    put('order', 'start.closed[1].gallery', 'lower'),
  ],
  'DOC-087': [
    put('order', 'start.restraints[0].from', '12 ft'),
    put('order', 'start.restraints', [bullLine, { ...bullLine, to: '1 ft' }], {
      at: 'start.restraints[1].from',
    }),
    puts(
      'order',
      { 'steps[4].restraint.from': '12 ft', 'steps[4].restraint.to': '10 ft' },
      'steps[4].restraint.from',
    ),
  ],
  'DOC-100': [put('order', 'house', 'kestle')],
  'DOC-101': [put('order', 'set', '77')],
  'DOC-109': [
    put('order', 'start.height', '2 ft'),
    put('order', 'steps[3].to', '61 ft'),
    put('order', 'steps[3].to', '2.9 ft'),
  ],
  'DOC-113': [put('order', 'steps[1].kind', 'O')],
  'DOC-130': [
    put('order', 'steps[0].item', 'clotg'),
    put('order', 'start.items', { tower: 'away' }, { at: 'start.items.tower' }),
    put('order', 'steps[8]', { act: 'release', item: 'tower' }, { at: 'steps[8].item' }),
  ],
  'DOC-140': [
    put('order', 'show', 'market'),
    put('order', 'show', 'Fair'),
    puts('order', { show: 'fair2', 'steps[0].item': 'x' }, 'show'),
  ],
  'DOC-141': [
    put('order', 'set', 'M1'),
    puts('order', { set: 'M1', 'steps[3].to': '70 ft' }, 'set'),
    puts('order', { set: 'M1', 'start.items': {} }, 'set'),
  ],
};
