import { measure } from '#findings';
import { byKnown } from '../known-values.ts';
import { isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { fact, knownTerm, term, workedOut } from '../show-working.ts';

/**
 * TRV-001: with the batten in, the arbor stays below its head block by the wanted clearance.
 * Without any room the set as listed cannot come in: stop. With less than wanted: caution.
 */
export const roomAboveArbor: SetRule = ({ set, house }) => {
  const { room, lineSet } = set;
  const { arbor } = lineSet;
  if (!room.known || arbor === null) return [];
  const aboveM = room.value.above;
  return byKnown(arbor.topClearance, 'clearance above the arbor', TITLE, (wantedM, source) => {
    if (!isBelow(aboveM, Math.max(wantedM, 0))) return [];
    const limit = measure(wantedM, 'length');
    const working = workedOut(
      TITLE,
      'z_H − z_p0 − L',
      [
        knownTerm('z_H', 'head block', house.stage.headBlockHeight, 'length'),
        knownTerm('z_p0', 'bottom of the arbor, batten in', arbor.panAtLow, 'length'),
        knownTerm('L', 'length of the arbor', arbor.length, 'length'),
      ],
      term('room', TITLE, aboveM, 'length'),
      { source: 'trade formula C2', limit: { value: limit, source } },
    );
    return [
      raise('TRV-001', {
        at: { set: lineSet.id },
        level: isBelow(aboveM, 0) ? 'stop' : 'caution',
        measured: measure(aboveM, 'length'),
        limit,
        limitSource: source,
        facts: { lowStop: fact(lineSet.lowStop.height, 'length') },
        working,
      }),
    ];
  });
};

const TITLE = 'room above the arbor';
