/** What a visiting production asks of the stage, its rails, galleries and bricks. */
import { fromCentre, tradeWord } from '#drawings';
import type { House, KeepOut, Known } from '#house';
import { formatLength, metres } from '#quantities';
import { strong, type Words } from '../sheet.ts';
import { steelForce } from '../words/say-force.ts';
import { NOT_KNOWN } from '../words/say-known.ts';
import { brickMass, height } from '../words/say-set.ts';
import { inHouseWords } from '../words/trade-translation.ts';
import type { Said } from './set-facts.ts';

export type HouseFact = { readonly head: string; readonly said: Said };

const from = <T>(known: Known<T>, say: (value: T) => string): Said =>
  known.known
    ? { words: say(known.value), unknown: [] }
    : { words: NOT_KNOWN, unknown: [known.why ?? ''] };

const both = (one: Said, other: Said, by: string): Said => ({
  words: `${one.words}${by}${other.words}`,
  unknown: [...one.unknown, ...other.unknown],
});

const stageFacts = (house: House): readonly HouseFact[] => {
  const { stage } = house;
  const say = (value: number): string => height(value, house);
  return [
    {
      head: 'Opening',
      said: both(from(stage.openingWidth, say), from(stage.openingHeight, say), ' wide, high '),
    },
    {
      head: 'Back wall',
      said: from(stage.backWall, (value) =>
        inHouseWords(`${say(value)} from the plaster line`, house),
      ),
    },
    { head: 'Grid', said: from(stage.gridHeight, say) },
    { head: 'Loft blocks', said: from(stage.loftBlockHeight, say) },
    { head: 'Head blocks', said: from(stage.headBlockHeight, say) },
    {
      head: 'Operated from',
      said: from(stage.operatingX, (xM) => {
        const side = stage.operatingSide === 'stageRight' ? 'stage right' : 'stage left';
        return `${side}, ${fromCentre(xM, house)} from the centre line`;
      }),
    },
  ];
};

const railFacts = (house: House): readonly HouseFact[] => [
  ...house.rails.map(
    ({ name, floor }): HouseFact => ({
      head: name,
      said: from(floor, (value) => `floor ${height(value, house)}`),
    }),
  ),
  ...house.galleries.map(
    ({ name, floor, length, width }): HouseFact => ({
      head: name,
      said: both(
        from(floor, (value) => `floor ${height(value, house)}`),
        both(
          from(length, (value) => height(value, house)),
          from(width, (value) => height(value, house)),
          ' by ',
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
    { head: 'Rope lock', said: from(rules.lockLimit, (forceN) => `at most ${force(forceN)}`) },
    {
      head: `${handLine.charAt(0).toUpperCase()}${handLine.slice(1)}`,
      said: from(rules.handLineLimit, (forceN) => `at most ${force(forceN)}`),
    },
  ];
};

const brickFacts = (house: House): readonly HouseFact[] =>
  house.brickKinds.map(({ name, mass, thickness, owned, serves }): HouseFact => {
    const uses = [
      ...(serves.show ? ['show'] : []),
      ...(serves.pipeWeight ? [tradeWord(house, 'pipeWeight')] : []),
    ];
    const sizes = both(
      from(mass, (massKg) => brickMass(massKg, house)),
      from(thickness, (lengthM) =>
        formatLength(metres(lengthM), house.units, {
          customaryLength: 'inches',
          style: house.units === 'customary' ? 'fine' : 'sheet',
        }),
      ),
      ', ',
    );
    const count = from(owned, (number) => `${number} owned`);
    const told = both(sizes, count, ', ');
    const brick = tradeWord(house, 'brick');
    return {
      head: `${brick.charAt(0).toUpperCase()}${brick.slice(1)} ${name}`,
      said: { ...told, words: `${told.words}; ${uses.join(', ')}` },
    };
  });

/** Along the stage by side of the plaster line: a sign would be read as a dash. */
const alongWords = ([oneM, otherM]: readonly [number, number], house: House): string => {
  const say = (yM: number): string => formatLength(metres(Math.abs(yM)), house.units);
  const [nearM, farM] = oneM <= otherM ? [oneM, otherM] : [otherM, oneM];
  if (nearM >= 0) return `${say(nearM)} to ${say(farM)} upstage`;
  if (farM <= 0) return `${say(farM)} to ${say(nearM)} downstage`;
  return `${say(nearM)} downstage to ${say(farM)} upstage`;
};

const heightsWords = ([lowM, highM]: readonly [number | null, number | null], house: House) => {
  if (lowM === null) return highM === null ? 'at any height' : `below ${height(highM, house)}`;
  if (highM === null) return `above ${height(lowM, house)}`;
  return `${height(lowM, house)} to ${height(highM, house)} high`;
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
