/** What `compute releasable`, `runaway` and `dropped` answer, as JSON Schema 2020-12. */
import { listOf, number, object, type Schema } from './schema-parts.ts';

const about = (description: string): Schema => ({ ...number, description });
const text: Schema = { type: 'string' };
const oneOf = (values: readonly (string | null)[], description: string): Schema => ({
  enum: values,
  description,
});
const yes = (description: string): Schema => ({ type: 'boolean', description });

const way = oneOf(['in', 'out', null], 'In is down; null in balance');
const energyAt: Record<string, Schema> = { height: about('m'), energy: about('J') };
const released: Record<string, Schema> = {
  way,
  most: object(energyAt, ['height', 'energy']),
  contacts: listOf(object(energyAt, ['height', 'energy'])),
  end: object(
    { ...energyAt, at: oneOf(['stop', 'onTheWay'], 'Where it has nothing left, or its stop') },
    ['height', 'energy', 'at'],
  ),
};
const RELEASED = ['way', 'most', 'contacts', 'end'];

export const releasableOutput: Schema = object(
  {
    imbalance: object({ low: about('N'), high: about('N') }, ['low', 'high']),
    starts: listOf(
      object(
        {
          side: oneOf(['here', 'justBelow', 'justAbove'], 'Of the height, where it is a contact'),
          imbalance: about('N at the batten, positive batten heavy'),
          free: object(released, RELEASED),
          againstHold: object({ ...released, holds: yes('The hold is not overcome') }, [
            ...RELEASED,
            'holds',
          ]),
        },
        ['side', 'imbalance', 'free'],
      ),
    ),
    energy: about('J, the largest over the way that it can go, of all starts'),
    energyAgainstHold: about('J, the same with the hold dragging'),
  },
  ['imbalance', 'starts', 'energy'],
);

/** Known with its value, or what was not told. */
const reckoned = (value: Schema): Schema => ({
  oneOf: [
    object({ known: { const: true }, value }, ['known', 'value']),
    object({ known: { const: false }, needs: listOf(text) }, ['known', 'needs']),
  ],
});

const time: Schema = {
  type: ['number', 'null'],
  description: 's; null where it creeps to a balance without end',
};
const speed = about('m/s of the batten');
const passing: Record<string, Schema> = { height: about('m'), time, speed };

const still = object(
  {
    moves: { const: false },
    why: oneOf(['atStop', 'held', 'inBalance'], 'On the stop it leans on; held; or in balance'),
    way,
  },
  ['moves', 'why', 'way'],
);

const snatch = object(
  {
    runsOn: oneOf(['arbor', 'batten'], 'The heavy side, with the light side stopped dead'),
    allLines: about('N at the batten, peak of all lines together'),
    oneLine: reckoned(about('N in the most loaded line')),
    overBreaking: reckoned(about('Of its breaking strength; 1 or more breaks it')),
  },
  ['runsOn', 'allLines', 'oneLine', 'overBreaking'],
);
const impact = object(
  {
    meets: oneOf(['arbor', 'batten'], 'The heavy side on its stop'),
    force: about('N on the stop: peak of a spring, mean over a distance'),
    stopping: about('N of it that stop the motion'),
    distance: about('m that the stop gives'),
    lightSideRises: about('m that the light side would go on by itself, lines slack'),
  },
  ['meets', 'force', 'stopping', 'distance', 'lightSideRises'],
);

const runs = object(
  {
    moves: { const: true },
    ...passing,
    way: oneOf(['in', 'out'], 'In is down'),
    end: oneOf(['stop', 'rest'], 'At its stop, or at rest on the way'),
    goesBack: yes('At rest on the way, it then goes back by itself'),
    speedAtMost: about('m/s, if nothing were lost where pieces land or are picked up'),
    arborSpeed: about('m/s'),
    energy: object(
      {
        kinetic: about('J of the motion at the end'),
        released: about('J that the imbalance gave'),
        friction: about('J'),
        hold: about('J in a hold that drags'),
        landed: about('J lost where pieces land or are picked up'),
      },
      ['kinetic', 'released', 'friction', 'hold', 'landed'],
    ),
    acceleration: object({ start: about('m/s²'), end: about('m/s²') }, ['start', 'end']),
    pull: object({ batten: about('N'), arbor: about('N') }, ['batten', 'arbor']),
    mass: object(
      { moving: about('kg at the batten, at the end'), hanging: about('kg on the batten') },
      ['moving', 'hanging'],
    ),
    contacts: listOf(
      object(
        {
          height: about('m'),
          is: oneOf(['landing', 'pickingUp'], 'A piece leaves the batten, or joins it'),
          mass: about('kg'),
          speedBefore: speed,
          speedAfter: speed,
        },
        ['height', 'is', 'mass', 'speedBefore', 'speedAfter'],
      ),
    ),
    passings: listOf(object(passing, ['height', 'time', 'speed'])),
    snatch: reckoned(snatch),
    impact: reckoned(impact),
  },
  ['moves', 'height', 'time', 'speed', 'way', 'end', 'goesBack', 'speedAtMost', 'energy'],
);

export const runawayOutput: Schema = { oneOf: [runs, still] };

const fall = object(
  {
    time: about('s'),
    speed: about('m/s'),
    energy: about('J'),
    reach: about('m across, from where it leaves'),
  },
  ['time', 'speed', 'energy', 'reach'],
);

export const droppedOutput: Schema = object(
  {
    levels: listOf(
      object(
        {
          name: text,
          height: about('m'),
          fall: about('m'),
          free: fall,
          inAir: fall,
          zone: object(
            {
              reach: about('m, the larger of the two'),
              allowance: object({ distance: about('m'), basis: { const: 'houseRule' } }, [
                'distance',
                'basis',
              ]),
              distance: about('m to keep clear beyond the edge that it falls from'),
            },
            ['reach', 'allowance', 'distance'],
          ),
        },
        ['name', 'height', 'fall', 'free', 'zone'],
      ),
    ),
  },
  ['levels'],
);
