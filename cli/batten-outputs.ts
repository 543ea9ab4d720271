/** What `compute batten` answers, as JSON Schema 2020-12. */
import { listOf, number, numbers, object, type Schema } from './schema-parts.ts';

const about = (description: string): Schema => ({ ...number, description });
const lists = (description: string): Schema => ({ ...numbers, description });
const text: Schema = { type: 'string' };
const orNull = (schema: Schema): Schema => ({ oneOf: [schema, { type: 'null' }] });

const at = object({ x: about('m'), value: number }, ['x', 'value']);
const extremes = (description: string, more: Readonly<Record<string, Schema>> = {}): Schema => ({
  ...object({ max: at, min: at, ...more }, ['max', 'min', ...Object.keys(more)]),
  description,
});
const shared = {
  tensions: lists('N, of each line in the order asked'),
  slack: listOf({ type: 'boolean', description: 'Carries nothing' }),
};

const station = object(
  {
    x: about('m'),
    shear: about('N, just right of x where it jumps'),
    moment: about('N·m, sagging positive'),
    slope: about('Down positive to the right'),
    deflection: about('m, down positive'),
  },
  ['x', 'shear', 'moment', 'slope', 'deflection'],
);

const answer = object(
  {
    ...shared,
    moment: extremes('N·m, sagging positive'),
    shear: extremes('N, positive where what is left of the cut pushes up'),
    deflection: extremes('m, down positive, from the level of unstretched true lines', {
      atLines: lists('m, at each line'),
    }),
    sag: {
      ...orNull(
        object({ x: about('m'), value: about('m'), span: about('m') }, ['x', 'value', 'span']),
      ),
      description: 'Largest below the straight line between two neighbouring tight lines',
    },
    stress: about('Pa, largest moment over the elastic section modulus'),
    allowable: {
      ...object(
        {
          method: { type: 'string', enum: ['plastic', 'firstYield'] },
          moment: about('N·m that the pipe is allowed'),
          factor: about('Safety factor in it'),
        },
        ['method', 'moment', 'factor'],
      ),
      description: 'plastic: Fy·Z over the factor; firstYield: Fy·S over it',
    },
    utilisation: about('Largest share of the allowable moment, 1 for all of it'),
    utilisationAt: object(
      { x: about('m'), allowed: about('N·m allowed there'), atSplice: { type: 'boolean' } },
      ['x', 'allowed', 'atSplice'],
    ),
    supports: lists('N, of each support in the order asked'),
    picks: listOf(lists('N, of each pick of a piece')),
    rigid: {
      ...orNull(object(shared, ['tensions', 'slack'])),
      description: 'The same with lines that do not stretch; null where that is no one answer',
    },
    sensitivity: listOf(lists('N/m, change of each tension for each metre this line is shorter')),
    stations: listOf(station),
  },
  ['tensions', 'slack', 'moment', 'shear', 'deflection', 'sag', 'rigid', 'sensitivity', 'stations'],
);

export const battenOutput: Schema = {
  oneOf: [
    answer,
    object(
      {
        unstable: object({ code: text, reason: text }, ['code', 'reason']),
      },
      ['unstable'],
    ),
  ],
};
