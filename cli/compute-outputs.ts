import type { ComputeName } from '#documents';
import { battenOutput } from './batten-outputs.ts';
import { linesOutput, totalsOutput } from './lines-outputs.ts';
import { droppedOutput, releasableOutput, runawayOutput } from './motion-outputs.ts';
import { planOutput, verifyOutput } from './order-outputs.ts';
import { listOf, number, numbers, object, type Schema } from './schema-parts.ts';

const newtonsAt = object({ height: number, imbalance: number }, ['height', 'imbalance']);
const counts: Schema = { type: 'object', additionalProperties: { type: 'integer', minimum: 0 } };
const infeasible = object(
  {
    infeasible: object(
      { code: { type: 'string' }, reason: { type: 'string' }, smallestChange: {} },
      ['code', 'reason', 'smallestChange'],
    ),
  },
  ['infeasible'],
);
const stack: Record<string, Schema> = {
  counts,
  bricks: { type: 'integer' },
  plates: { type: 'integer' },
  stackHeight: number,
  total: number,
  error: number,
  optimal: { type: 'boolean' },
};
const ranked = object(stack, ['counts', 'plates', 'total', 'error', 'stackHeight']);
const mix = object(
  { counts, worstN: number, arborMass: number, stackHeight: number, plates: number },
  ['counts', 'worstN', 'arborMass', 'stackHeight', 'plates'],
);

/** What each calculation answers, as JSON Schema 2020-12. N, kg, m throughout. */
export const OUTPUTS: Readonly<Record<ComputeName, Schema>> = {
  balance: object(
    {
      imbalance: { ...numbers, description: 'N at the batten, positive batten heavy' },
      jumps: listOf(
        object({ height: number, below: number, above: number }, ['height', 'below', 'above']),
      ),
      contact: listOf(object({ low: number, high: number }, ['low', 'high'])),
      uncertainty: numbers,
      parts: listOf({ type: 'object' }),
      slope: listOf({ type: ['number', 'null'] }),
      equilibria: listOf(object({ height: number, settles: { type: 'boolean' } }, ['height'])),
      least: newtonsAt,
      most: newtonsAt,
      pulls: listOf(object({ out: number, in: number }, ['out', 'in'])),
      loomTooShort: numbers,
    },
    ['imbalance', 'jumps', 'contact', 'slope', 'equilibria', 'least', 'most'],
  ),
  bricks: {
    oneOf: [
      object({ ...stack, alternatives: listOf(ranked), fewestWithinTolerance: ranked }, [
        'counts',
        'plates',
        'total',
        'error',
        'stackHeight',
        'optimal',
        'alternatives',
      ]),
      infeasible,
    ],
  },
  takeoff: object(
    {
      mass: { type: ['object', 'null'] },
      hem: { type: ['object', 'null'] },
      total: { type: ['object', 'null'] },
      lines: listOf({ type: 'object' }),
      needs: { type: 'object' },
    },
    ['mass', 'total', 'lines', 'needs'],
  ),
  pullTest: object(
    { imbalance: number, friction: number, difference: number, correctedMass: number },
    ['imbalance', 'friction'],
  ),
  mix: {
    oneOf: [
      object({ chosen: mix, next: listOf(mix), optimal: { type: 'boolean' } }, [
        'chosen',
        'next',
        'optimal',
      ]),
      infeasible,
    ],
  },
  reach: object(
    {
      window: {
        oneOf: [object({ from: number, to: number }, ['from', 'to']), { type: 'null' }],
      },
    },
    ['window'],
  ),
  batten: battenOutput,
  lines: linesOutput,
  totals: totalsOutput,
  releasable: releasableOutput,
  runaway: runawayOutput,
  dropped: droppedOutput,
  plan: planOutput,
  verify: verifyOutput,
};
