/** What `compute plan` and `compute verify` answer, as JSON Schema 2020-12. */
import type { BrokenRule, SmallestChange } from '#sequence';
import { listOf, number, object, type Schema } from './schema-parts.ts';

const about = (description: string): Schema => ({ ...number, description });
const orNull = (schema: Schema): Schema => ({ oneOf: [schema, { type: 'null' }] });
const text: Schema = { type: 'string' };
const whole: Schema = { type: 'integer' };

/** Standings and steps are answered as they are asked, so that an answer can be asked again. */
const standing: Schema = {
  type: 'object',
  description: 'As `start` of the input',
  additionalProperties: true,
};
const steps: Schema = {
  type: 'array',
  description: 'As `steps` of the input of verify, which takes them as they are',
  items: { type: 'object', additionalProperties: true },
};

const free = object(
  {
    energy: about('J that it would set free, if all that holds it gave way at once'),
    way: { enum: ['in', 'out', null], description: 'In is down; null in balance' },
    end: about('m where it would come to rest'),
  },
  ['energy', 'way', 'end'],
);

const state = object(
  {
    standing,
    imbalance: object(
      {
        low: about('N at the batten, positive batten heavy; low and high differ where it rests'),
        high: about('N'),
        doubt: {
          ...orNull(about('N')),
          description: 'Half width of what it may be off by; null with masses as written',
        },
      },
      ['low', 'high', 'doubt'],
    ),
    holds: object({ in: about('N, the largest against coming in'), out: about('N, going out') }, [
      'in',
      'out',
    ]),
    heldBy: text,
    limit: { enum: ['planning', 'nominal', null], description: 'Of the lock; null: not leant on' },
    free,
  },
  ['standing', 'imbalance', 'holds', 'heldBy', 'limit', 'free'],
);

const measured = orNull(object({ value: number, kind: text }, ['value', 'kind']));
const finding = object(
  {
    code: text,
    level: { enum: ['stop', 'caution', 'note'] },
    at: { type: 'object', additionalProperties: true },
    measured,
    limit: measured,
    limitSource: orNull(text),
    facts: { type: 'object', additionalProperties: true },
    working: {},
  },
  ['code', 'level', 'at'],
);

const breachDefinition = object(
  {
    rule: text,
    cites: orNull(text),
    says: text,
    step: { ...whole, description: 'Counted from 0; -1 is before the first' },
    height: about('m of the batten where it breaks'),
    by: { ...orNull(about('N')), description: 'How far past its limit' },
    energy: { ...orNull(about('J')), description: 'What it would set free there' },
    finding,
  },
  ['rule', 'says', 'step', 'height', 'by', 'energy', 'finding'],
);

/** Said once, since a verdict has it in three places. */
const breach: Schema = { $ref: '#/$defs/breach' };
const $defs: Readonly<Record<string, Schema>> = { breach: breachDefinition };

const verdict = object(
  {
    accepted: { type: 'boolean' },
    broken: { ...orNull(breach), description: 'The first rule that is broken' },
    alsoBroken: listOf(breach),
    cautions: listOf(breach),
    assumed: listOf(text),
    proofsDue: listOf(object({ step: whole, proof: text }, ['step', 'proof'])),
  },
  ['accepted', 'broken', 'alsoBroken', 'cautions', 'assumed', 'proofsDue'],
);

const states = { ...listOf(state), description: 'At first, then one after each step' };

const needed = {
  resists: { enum: ['in', 'out'] },
  rated: about('N, the least'),
  from: about('m'),
  to: about('m'),
};

const searched = { ...whole, description: 'States that were searched' };

const found = object(
  {
    searched,
    optimal: { type: 'boolean', description: 'False where the bound on states came first' },
    restraint: orNull(
      object({ ...needed, refutedStates: whole }, ['resists', 'rated', 'from', 'to']),
    ),
    exposed: {
      ...orNull(about('J')),
      description:
        'At most free to go while riggers are at the batten; null where nobody ever is in the way',
    },
    steps,
    states,
    verdict,
  },
  ['searched', 'optimal', 'restraint', 'exposed', 'steps', 'states', 'verdict'],
);

const RULES: Readonly<Record<BrokenRule, true>> = {
  HOLD: true,
  REACH: true,
  STOCK: true,
  ROD: true,
  MASS: true,
  TRAVEL: true,
  SERVICE: true,
  GOAL: true,
};
const CHANGES: Readonly<Record<SmallestChange['change'], true>> = {
  restraint: true,
  tolerances: true,
  higher: true,
  lower: true,
  stock: true,
  gallery: true,
  rod: true,
  arbor: true,
};

const none = object(
  {
    searched,
    exhaustive: { const: true },
    rule: { enum: Object.keys(RULES) },
    height: orNull(about('m')),
    by: orNull(about('N that is lacking')),
    smallestChange: orNull(
      object(
        {
          change: { enum: Object.keys(CHANGES) },
          ...needed,
          share: about('Of the tolerances'),
          by: about('m of rod, or kg on the arbor'),
        },
        ['change'],
      ),
    ),
  },
  ['searched', 'exhaustive', 'rule', 'height', 'by', 'smallestChange'],
);

export const planOutput: Schema = {
  $defs,
  oneOf: [
    object({ found }, ['found']),
    { ...object({ none }, ['none']), description: 'None exists' },
    {
      ...object({ stopped: object({ searched }, ['searched']) }, ['stopped']),
      description: 'None found in so many states: stop and ask',
    },
  ],
};

export const verifyOutput: Schema = {
  $defs,
  ...object({ states, verdict }, ['states', 'verdict']),
};
