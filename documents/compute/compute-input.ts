/** Reads what a calculation is asked: form, bounds and sense, every fault at once. */

import { z } from 'zod';
import type { Refusal, Result } from '#outcome';
import { fail, ok } from '#outcome';
import { boundsInOrder, metresText } from '../bounds.ts';
import type { Faults } from '../faults.ts';
import { newFaults } from '../faults.ts';
import { pathTo } from '../json.ts';
import { checkJsonValue } from '../json-value.ts';
import { refuseDuplicates } from '../references.ts';
import type { JsonSchema } from '../shape/shape.ts';
import { batten } from './batten-schema.ts';
import type { ComputeInputs, ComputeName } from './inputs.ts';
import { COMPUTE_NAMES } from './inputs.ts';
import { refuseIssues } from './issues.ts';
import { checkLines, checkTotals } from './lines-checks.ts';
import { lines, totals } from './lines-schema.ts';
import * as motion from './motion-schema.ts';
import { checkPlan, checkVerify } from './order-checks.ts';
import * as order from './order-schema.ts';
import * as sets from './set-schemas.ts';
import { takeoff } from './takeoff-schema.ts';

type Schemas = { readonly [N in ComputeName]: z.ZodType<ComputeInputs[N]> };

const SCHEMAS: Schemas = {
  balance: sets.balance,
  bricks: sets.bricks,
  takeoff,
  pullTest: sets.pullTest,
  mix: sets.mix,
  reach: sets.reach,
  batten,
  lines,
  totals,
  releasable: motion.releasable,
  runaway: motion.runaway,
  dropped: motion.dropped,
  plan: order.plan,
  verify: order.verify,
};

type Travel = { readonly lowStop: number; readonly highStop: number };

const checkStops = ({ lowStop, highStop }: Travel, path: string, faults: Faults): boolean => {
  if (lowStop < highStop) return true;
  faults.refuse('stopsReversed', pathTo(path, 'lowStop'), {
    found: `${metresText(lowStop)}, with the high stop at ${metresText(highStop)}`,
    accepted: 'a low stop below the high stop',
  });
  return false;
};

/** A millimetre: heights are often typed in feet and rounded when they become metres. */
const ROUNDING = 1e-3;

const checkHeight = (
  height: number,
  { lowStop, highStop }: Travel,
  { path, faults }: { readonly path: string; readonly faults: Faults },
): void => {
  if (height >= lowStop - ROUNDING && height <= highStop + ROUNDING) return;
  faults.refuse('outsideTravel', path, {
    found: metresText(height),
    accepted: `a batten height from ${metresText(lowStop)} to ${metresText(highStop)}`,
  });
};

const checkStart = (input: Travel & { readonly height: number }, faults: Faults): void => {
  if (!checkStops(input, '', faults)) return;
  checkHeight(input.height, input, { path: 'height', faults });
};

const checkLevels = (
  from: number,
  levels: readonly { readonly height: number }[],
  faults: Faults,
): void => {
  if (levels.some(({ height }) => height < from)) return;
  faults.refuse('boundsReversed', 'from', {
    found: `${metresText(from)}, with no level below it`,
    accepted: 'a height above the lowest of the levels',
  });
};

/** What the numbers of an input say of one another, asked where each is right by itself. */
const CHECKS: { readonly [N in ComputeName]: (input: ComputeInputs[N], faults: Faults) => void } = {
  balance: (input, faults) => {
    if (!checkStops(input, '', faults)) return;
    for (const [index, height] of input.heights.entries()) {
      checkHeight(height, input, { path: pathTo('heights', index), faults });
    }
  },
  bricks: ({ bricks }, faults) => refuseDuplicates(bricks, 'bricks', faults),
  takeoff: (input, faults) => {
    const { placement } = input;
    if (placement && 'from' in placement) {
      boundsInOrder(placement.from, placement.to, { path: 'placement', given: null, faults });
    }
    if (input.kind === 'units') checkUnitPlaces(input.units, faults);
  },
  pullTest: ({ itemMass, expectedImbalance }, faults) => {
    if (itemMass === undefined || expectedImbalance !== undefined) return;
    faults.refuse('fieldMissing', 'expectedImbalance', {
      found: 'nothing, beside the mass of an item to correct',
      accepted: 'the imbalance that the take-off gives, in newtons',
    });
  },
  mix: (input, faults) => {
    refuseDuplicates(input.bricks, 'bricks', faults);
    if (!checkStops(input.balance, 'balance', faults)) return;
    if (input.from > input.to) {
      boundsInOrder(input.from, input.to, { path: 'from', given: null, faults });
    }
    for (const end of ['from', 'to'] as const) {
      checkHeight(input[end], input.balance, { path: end, faults });
    }
  },
  reach: ({ lowStop, highStop, reachLow, reachHigh }, faults) => {
    if (highStop !== undefined) checkStops({ lowStop, highStop }, '', faults);
    if (reachLow < reachHigh) return;
    faults.refuse('reachReversed', 'reachLow', {
      found: `${metresText(reachLow)}, with reachHigh ${metresText(reachHigh)}`,
      accepted: 'a lowest reach below the highest one',
    });
  },
  // What a batten's numbers say of one another is asked where they are worked out.
  batten: () => undefined,
  lines: checkLines,
  totals: checkTotals,
  // What a curve's nodes say of one another is asked where they are worked out.
  releasable: (input, faults) => checkStart(input, faults),
  runaway: (input, faults) => checkStart(input, faults),
  dropped: ({ from, levels }, faults) => checkLevels(from, levels, faults),
  plan: checkPlan,
  verify: checkVerify,
};

type Units = readonly { readonly count: number; readonly xs?: readonly number[] }[];

const checkUnitPlaces = (units: Units, faults: Faults): void => {
  for (const [index, { count, xs }] of units.entries()) {
    if (xs === undefined || xs.length === count) continue;
    faults.refuse('placesMiscounted', pathTo(pathTo('units', index), 'xs'), {
      found: `${xs.length} places for ${count} units`,
      accepted: 'a place for each unit, or no places',
    });
  }
};

export type ComputeInput<N extends ComputeName> = {
  /** JSON Schema 2020-12 of one input. */
  readonly schema: JsonSchema;
  readonly read: (value: unknown) => Result<ComputeInputs[N], readonly Refusal[]>;
};

/** The input of one calculation. Refusals carry `DOC` codes, every fault with its path. */
export const computeInput = <N extends ComputeName>(name: N): ComputeInput<N> => ({
  schema: { $id: `urn:counterpoise:compute:${name}:1`, ...z.toJSONSchema(SCHEMAS[name]) },
  read: (value) => {
    const faults = newFaults();
    if (!checkJsonValue(value, faults)) return fail(faults.list());
    const parsed = SCHEMAS[name].safeParse(value);
    if (!parsed.success) refuseIssues(parsed.error.issues, value, faults);
    else CHECKS[name](parsed.data, faults);
    return parsed.success && faults.count() === 0 ? ok(parsed.data) : fail(faults.list());
  },
});

export const isComputeName = (name: string): name is ComputeName =>
  COMPUTE_NAMES.some((known) => known === name);
