/** Cells of a load against its limit, as bays, wells and floors all have them. */

import type { House, Known } from '#house';
import { phrase } from '#texts';
import type { Column } from '../sheet.ts';
import { steelForce } from '../words/say-force.ts';
import { notKnown } from '../words/say-known.ts';
import { sayMeasure } from '../words/say-measure.ts';

/** Nothing stands there, since a limit or the load is not known or has no meaning. */
export const NONE = '–';

export const share = (valueN: number | null, limit: Known<number>, house: House): string =>
  limit.known && valueN !== null
    ? sayMeasure({ value: valueN / limit.value, kind: 'ratio' }, house, {
        round: 'up',
        style: 'fine',
      })
    : NONE;

/** What is left of a limit; past it, how far. */
export const spare = (valueN: number | null, limit: Known<number>, house: House): string => {
  if (!limit.known || valueN === null) return NONE;
  const left = limit.value - valueN;
  return left >= 0
    ? steelForce(left, house, 'down')
    : phrase(house, '{steelForce} OVER', { steelForce: steelForce(-left, house) });
};

export const isPast = (valueN: number | null, limit: Known<number>): boolean =>
  limit.known && valueN !== null && valueN > limit.value;

export const forceOr = (valueN: number | null, house: House): string =>
  valueN === null ? notKnown(house) : steelForce(valueN, house);

export const limitCell = (limit: Known<number>, house: House): string =>
  limit.known ? steelForce(limit.value, house, 'down') : notKnown(house);

export const right = (head: string, unit?: string): Column => ({
  head,
  align: 'right',
  share: 0,
  ...(unit === undefined ? {} : { unit }),
});

export const left = (head: string): Column => ({ head, align: 'left', share: 0 });
