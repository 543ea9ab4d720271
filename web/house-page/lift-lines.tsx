/** Lift lines and their blocks by type of line set, and the loft wells on which blocks stand. */
import { tradeWord } from '#drawings';
import type { Block, House, Known, Lift, LineSet, LoftWell, Termination } from '#house';
import { formatLength, metres } from '#quantities';
import { message, phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords, smallLengthWords, unknownWord } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const END_WORDS: Readonly<Record<Termination, string>> = {
  spelterSocket: message('poured sockets'),
  swagedSocket: message('swaged sockets'),
  mechanicalSplice: message('mechanical splices'),
  handTuckedSplice: message('hand-tucked splices'),
  wedgeSocket: message('wedge sockets'),
  compressionSleeve: message('compression sleeves'),
  clips: message('wire rope clips'),
};

const BEARING_WORDS: Readonly<Record<NonNullable<Block['bearing']>, string>> = {
  plain: message('bearing plain'),
  rolling: message('bearing rolling'),
};

const forceWords = (known: Known<number>, house: House): string =>
  knownWords(known, house, { kind: 'force', round: 'down' }).value;

const blockWords = (block: Block, house: House): string => {
  const { sheaveDiameter, rated, bearing, fleetAngle } = block;
  const isBlank = bearing === null && ![sheaveDiameter, rated, fleetAngle].some((one) => one.known);
  if (isBlank) return unknownWord(house);
  return [
    phrase(house, 'sheave {size}', { size: smallLengthWords(sheaveDiameter, house) }),
    phrase(house, 'rated {force}', { force: forceWords(rated, house) }),
    phrase(house, bearing === null ? 'bearing unknown' : BEARING_WORDS[bearing]),
    phrase(house, 'fleet angle {angle}', {
      angle: knownWords(fleetAngle, house, { kind: 'angle', round: 'up' }).value,
    }),
  ].join(', ');
};

/** How far a line is short or long of true, in words and not by sign. */
const trimWords = ({ lineTrims }: Lift, house: House): string => {
  if (lineTrims === null) return unknownWord(house);
  const told = lineTrims.flatMap((trim, index) => {
    if (trim === 0) return [];
    const size = formatLength(metres(Math.abs(trim)), house, {
      style: house.units === 'customary' ? 'fine' : 'sheet',
      customaryLength: 'inches',
    });
    const names = { line: index + 1, size };
    return [
      trim > 0
        ? phrase(house, 'line {line} {size} short', names)
        : phrase(house, 'line {line} {size} long', names),
    ];
  });
  return told.length === 0 ? phrase(house, 'all true') : told.join(', ');
};

const mulesWords = ({ muleBlocks }: Lift, house: House): string =>
  muleBlocks.length === 0
    ? phrase(house, 'none')
    : muleBlocks
        .map(({ line, rated }) =>
          phrase(house, 'line {line} {force}', { line, force: forceWords(rated, house) }),
        )
        .join(', ');

const cellsOf = (type: string, sets: readonly LineSet[], house: House): readonly string[] => {
  const ofLift = (say: (lift: Lift) => string): string => shared(sets, ({ lift }) => say(lift));
  return [
    type,
    ofLift(({ cable }) => cable.description ?? smallLengthWords(cable.diameter, house)),
    ofLift(({ cable }) => forceWords(cable.breakingStrength, house)),
    ofLift(({ cable }) => knownWords(cable.axialStiffness, house, { kind: 'force' }).value),
    ofLift(({ cable: { termination } }) =>
      termination === null ? unknownWord(house) : phrase(house, END_WORDS[termination]),
    ),
    ofLift((lift) => trimWords(lift, house)),
    ofLift(({ loftBlock }) => blockWords(loftBlock, house)),
    ofLift((lift) => mulesWords(lift, house)),
    ofLift(({ headBlock }) => blockWords(headBlock, house)),
    ofLift(({ handLineMass }) => knownWords(handLineMass, house, { kind: 'mass' }).value),
  ];
};

export const LiftLines = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Lift lines and blocks by type')}
      columns={[
        { head: tell('type') },
        { head: tell('lift line') },
        { head: tell('breaks at'), isNumber: true },
        { head: tell('stiffness EA'), isNumber: true },
        { head: tell('ends') },
        { head: tell('trims of the lines') },
        { head: tell('loft blocks') },
        { head: tell('mule blocks') },
        { head: tell('head block') },
        { head: tradeWord(house, 'handLine'), isNumber: true },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty={tell('No lift line is described yet.')}
    />
  );
};

/** Across the stage a number has no sign on screen, but a side. */
const placeWords = ({ x }: LoftWell, house: House): string => {
  if (x === 0) return phrase(house, 'centre line');
  const length = formatLength(metres(Math.abs(x)), house);
  return x < 0
    ? phrase(house, '{length} stage right', { length })
    : phrase(house, '{length} stage left', { length });
};

export const LoftWells = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Loft wells')}
      columns={[
        { head: tell('well') },
        { head: tell('middle'), isNumber: true },
        { head: tell('width'), isNumber: true },
        { head: tell('carries'), isNumber: true },
        { head: tell('limit known by') },
      ]}
      rows={house.loftWells.map((well) => {
        const { value, basis, source } = knownWords(well.limit, house, {
          kind: 'force',
          round: 'down',
        });
        const by = [basis, source].filter((part) => part !== '').join(': ');
        const width = formatLength(well.width, house);
        return { key: well.id, cells: [well.id, placeWords(well, house), width, value, by] };
      })}
      empty={tell('No loft well is described yet: what the lines put on the grid is not added up.')}
    />
  );
};
