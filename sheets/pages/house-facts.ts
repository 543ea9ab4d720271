/** What a visiting production asks of the stage, its rails, galleries and bricks. */

import { fromCentre, tradeWord } from '#drawings';
import type { House, KeepOut, Known } from '#house';
import { formatLength, metres } from '#quantities';
import { phrase } from '#texts';
import { strong, type Words } from '../sheet.ts';
import { steelForce } from '../words/say-force.ts';
import { notKnown } from '../words/say-known.ts';
import { brickMass, height } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import type { Said } from './set-facts.ts';

export type HouseFact = { readonly head: string; readonly said: Said };

const from = <T>(known: Known<T>, house: House, say: (value: T) => string): Said =>
  known.known
    ? { words: say(known.value), unknown: [] }
    : { words: notKnown(house), unknown: [known.why ?? ''] };

const both = (one: Said, other: Said, by: string): Said => ({
  words: `${one.words}${by}${other.words}`,
  unknown: [...one.unknown, ...other.unknown],
});

const stageFacts = (house: House): readonly HouseFact[] => {
  const { stage } = house;
  const say = (value: number): string => height(value, house);
  return [
    {
      head: phrase(house, 'Opening'),
      said: both(
        from(stage.openingWidth, house, say),
        from(stage.openingHeight, house, say),
        phrase(house, ' wide, high '),
      ),
    },
    {
      head: phrase(house, 'Back wall'),
      said: from(stage.backWall, house, (value) =>
        inHouseWords(`${say(value)} from the plaster line`, house),
      ),
    },
    { head: phrase(house, 'Grid'), said: from(stage.gridHeight, house, say) },
    { head: phrase(house, 'Loft blocks'), said: from(stage.loftBlockHeight, house, say) },
    { head: phrase(house, 'Head blocks'), said: from(stage.headBlockHeight, house, say) },
    {
      head: phrase(house, 'Operated from'),
      said: from(stage.operatingX, house, (xM) => {
        const side =
          stage.operatingSide === 'stageRight'
            ? phrase(house, 'stage right')
            : phrase(house, 'stage left');
        return phrase(house, '{side}, {fromCentre} from the centre line', {
          side,
          fromCentre: fromCentre(xM, house),
        });
      }),
    },
  ];
};

const railFacts = (house: House): readonly HouseFact[] => [
  ...house.rails.map(
    ({ name, floor }): HouseFact => ({
      head: name,
      said: from(floor, house, (value) =>
        phrase(house, 'floor {height}', { height: height(value, house) }),
      ),
    }),
  ),
  ...house.galleries.map(
    ({ name, floor, length, width }): HouseFact => ({
      head: name,
      said: both(
        from(floor, house, (value) =>
          phrase(house, 'floor {height}', { height: height(value, house) }),
        ),
        both(
          from(length, house, (value) => height(value, house)),
          from(width, house, (value) => height(value, house)),
          phrase(house, ' by '),
        ),
        ', ',
      ),
    }),
  ),
];

const ruleFacts = (house: House): readonly HouseFact[] => {
  const { rules } = house;
  const force = (forceN: number): string => steelForce(forceN, house, 'down');
  const handLine = tradeWord(house, 'handLine');
  return [
    {
      head: phrase(house, 'Rope lock'),
      said: from(rules.lockLimit, house, (forceN) =>
        phrase(house, 'at most {force}', { force: force(forceN) }),
      ),
    },
    {
      head: `${handLine.charAt(0).toUpperCase()}${handLine.slice(1)}`,
      said: from(rules.handLineLimit, house, (forceN) =>
        phrase(house, 'at most {force}', { force: force(forceN) }),
      ),
    },
  ];
};

const brickFacts = (house: House): readonly HouseFact[] =>
  house.brickKinds.map(({ name, mass, thickness, owned, serves }): HouseFact => {
    const uses = [
      ...(serves.show ? [phrase(house, 'show')] : []),
      ...(serves.pipeWeight ? [tradeWord(house, 'pipeWeight')] : []),
    ];
    const sizes = both(
      from(mass, house, (massKg) => brickMass(massKg, house)),
      from(thickness, house, (lengthM) =>
        formatLength(metres(lengthM), house, {
          customaryLength: 'inches',
          style: house.units === 'customary' ? 'fine' : 'sheet',
        }),
      ),
      ', ',
    );
    const count = from(owned, house, (number) => phrase(house, '{number} owned', { number }));
    const told = both(sizes, count, ', ');
    const brick = tradeWord(house, 'brick');
    return {
      head: `${brick.charAt(0).toUpperCase()}${brick.slice(1)} ${name}`,
      said: { ...told, words: `${told.words}; ${uses.join(', ')}` },
    };
  });

/** Along the stage by side of the plaster line: a sign would be read as a dash. */
const alongWords = ([oneM, otherM]: readonly [number, number], house: House): string => {
  const say = (yM: number): string => formatLength(metres(Math.abs(yM)), house);
  const [nearM, farM] = oneM <= otherM ? [oneM, otherM] : [otherM, oneM];
  if (nearM >= 0)
    return phrase(house, '{nearM} to {farM} upstage', { nearM: say(nearM), farM: say(farM) });
  if (farM <= 0)
    return phrase(house, '{farM} to {nearM} downstage', { farM: say(farM), nearM: say(nearM) });
  return phrase(house, '{nearM} downstage to {farM} upstage', {
    nearM: say(nearM),
    farM: say(farM),
  });
};

const heightsWords = ([lowM, highM]: readonly [number | null, number | null], house: House) => {
  if (lowM === null)
    return highM === null
      ? phrase(house, 'at any height')
      : phrase(house, 'below {highM}', { highM: height(highM, house) });
  if (highM === null) return phrase(house, 'above {lowM}', { lowM: height(lowM, house) });
  return phrase(house, '{lowM} to {highM} high', {
    lowM: height(lowM, house),
    highM: height(highM, house),
  });
};

const sentence = (parts: readonly string[], remark: string | undefined): string => {
  const place = parts.length === 0 ? [] : [parts.join(', ')];
  return [...place, ...(remark === undefined ? [] : [remark.replace(/\.$/, '')])].join('. ');
};

const keepOutWords = ({ y, z, remark }: KeepOut, house: House): string =>
  sentence(
    [
      ...(y === undefined ? [] : [alongWords(y, house)]),
      ...(z === undefined ? [] : [heightsWords(z, house)]),
    ],
    remark,
  );

/** What nothing may enter, and where the deck opens; distances from the plaster line. */
export const keepClear = (house: House): readonly Words[] => [
  ...house.keepOuts.map((each): Words => [strong(`${each.name}: `), keepOutWords(each, house)]),
  ...house.openings.map(
    ({ name, y, remark }): Words => [strong(`${name}: `), sentence([alongWords(y, house)], remark)],
  ),
];

export const houseFacts = (house: House): readonly HouseFact[] => [
  ...stageFacts(house),
  ...railFacts(house),
  ...ruleFacts(house),
  ...brickFacts(house),
];
