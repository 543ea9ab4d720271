/** What `compute lines` and `compute totals` answer, as JSON Schema 2020-12. */
import { listOf, number, object, type Schema } from './schema-parts.ts';

const about = (description: string): Schema => ({ ...number, description });
const text: Schema = { type: 'string' };

const efficiency = object({ value: number, source: text }, ['value', 'source']);
const blockForce = object(
  {
    resultant: about('N'),
    horizontal: about('N, of a loft block towards the head block, of a head block away from it'),
    vertical: about('N, down positive'),
    turn: about('degrees through which the line turns'),
  },
  ['resultant', 'horizontal', 'vertical', 'turn'],
);
const tension = object(
  {
    batten: about('N'),
    loft: about('N at the loft block, on the batten side of it'),
    head: about('N at the head block, on the batten side of it'),
    arbor: about('N where the line meets the arbor'),
    most: about('N, the largest along the line'),
    blocks: listOf(
      object(
        {
          block: { type: 'string', enum: ['loft', 'mule', 'head', 'arbor'] },
          before: number,
          after: number,
        },
        ['block', 'before', 'after'],
      ),
    ),
  },
  ['batten', 'loft', 'head', 'arbor', 'most', 'blocks'],
);
const leg = object(
  { tension: about('N'), vertical: about('N'), angle: about('degrees above the horizontal') },
  ['tension', 'vertical', 'angle'],
);
const line = object(
  {
    x: number,
    freeLength: about('m, batten to arbor'),
    tension,
    loftBlock: blockForce,
    muleBlocks: listOf(blockForce),
    stiffness: about('N/m'),
    stretch: about('m'),
    factor: {
      type: ['number', 'null'],
      description: 'Breaking strength after end and bend over the largest tension',
    },
    fleet: object(
      {
        angle: about('degrees'),
        keepsRule: { type: 'boolean', description: 'At most one out for forty along' },
      },
      ['angle', 'keepsRule'],
    ),
  },
  ['x', 'freeLength', 'tension', 'loftBlock', 'muleBlocks'],
);

export const linesOutput: Schema = object(
  {
    lines: listOf(line),
    headBlock: object({ block: blockForce, steel: blockForce }, ['block', 'steel']),
    strength: object({ termination: efficiency, bending: efficiency, sheaveRatio: number }, [
      'termination',
      'bending',
      'sheaveRatio',
    ]),
    held: object(
      {
        battenSide: about('N of all lines at the head block with the arbor held'),
        arborSide: about('N of all lines at the head block with the batten held'),
        force: about('N, the larger'),
      },
      ['battenSide', 'arborSide', 'force'],
    ),
    moves: listOf(
      object({ force: about('N'), factor: about('Over the weight at rest') }, ['force', 'factor']),
    ),
    bridles: listOf(
      object({ left: leg, right: leg, thrust: about('N') }, ['left', 'right', 'thrust']),
    ),
    turningBlocks: listOf(about('N on the anchor')),
  },
  ['lines', 'headBlock'],
);

const total = object(
  {
    id: text,
    sets: listOf(object({ set: text, value: about('N') }, ['set', 'value'])),
    value: about('N, the part for movement in it'),
    dynamic: about('N of that for movement'),
  },
  ['id', 'sets', 'value', 'dynamic'],
);
const worst = listOf(object({ state: text, total }, ['state', 'total']));

export const totalsOutput: Schema = object(
  {
    states: listOf(
      object(
        {
          name: text,
          bays: listOf(
            object({ bay: text, vertical: total, horizontal: total }, [
              'bay',
              'vertical',
              'horizontal',
            ]),
          ),
          wells: listOf(total),
          linesOnNoWell: listOf(object({ set: text, x: number }, ['set', 'x'])),
        },
        ['name', 'bays', 'wells', 'linesOnNoWell'],
      ),
    ),
    worst: object({ vertical: worst, horizontal: worst, wells: worst }, [
      'vertical',
      'horizontal',
      'wells',
    ]),
    floors: listOf(
      object(
        {
          id: text,
          pressure: about('Pa over the whole floor'),
          courses: { type: 'integer', description: 'Of bricks in one row along the gallery' },
          lineLoad: about('N/m along that row'),
        },
        ['id', 'pressure', 'courses', 'lineLoad'],
      ),
    ),
  },
  ['states', 'worst', 'floors'],
);
