import { measure } from '#findings';
import { purchaseOf } from '#house';
import { byKnown } from '../known-values.ts';
import { isBelow } from '../limits.ts';
import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';
import { fact, knownTerm, term, workedOut } from '../show-working.ts';

/**
 * TRV-002: with the batten out, the bottom of the arbor stays above its lowest place. A double
 * purchase set that is listed as single shows here: its arbor would go through the deck. The
 * other mix-up does not show: a single purchase set listed as double only seems to have room.
 */
export const roomBelowArbor: SetRule = ({ set }) => {
  const { room, lineSet } = set;
  const { arbor } = lineSet;
  const purchase = purchaseOf(lineSet.suspension);
  if (!room.known || arbor === null || purchase === null) return [];
  const belowM = room.value.below;
  return byKnown(arbor.bottomClearance, 'clearance below the arbor', TITLE, (wantedM, source) => {
    if (!isBelow(belowM, Math.max(wantedM, 0))) return [];
    const limit = measure(wantedM, 'length');
    const working = workedOut(
      TITLE,
      'z_p0 − ( h_hi − h_lo ) / r',
      [
        knownTerm('z_p0', 'bottom of the arbor, batten in', arbor.panAtLow, 'length'),
        knownTerm('h_hi', 'high stop', lineSet.highStop.height, 'length'),
        knownTerm('h_lo', 'low stop', lineSet.lowStop.height, 'length'),
        term('r', 'batten travel over arbor travel', purchase, 'count'),
      ],
      term('room', TITLE, belowM, 'length'),
      { source: 'trade formula C1, C2', limit: { value: limit, source } },
    );
    return [
      raise('TRV-002', {
        at: { set: lineSet.id },
        level: isBelow(belowM, 0) ? 'stop' : 'caution',
        measured: measure(belowM, 'length'),
        limit,
        limitSource: source,
        facts: {
          highStop: fact(lineSet.highStop.height, 'length'),
          purchase: purchase === 1 ? 'single' : 'double',
        },
        working,
      }),
    ];
  });
};

const TITLE = 'room below the arbor';
