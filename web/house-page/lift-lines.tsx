/** Lift lines and their blocks by type of line set, and the loft wells on which blocks stand. */
import { tradeWord } from '#drawings';
import type { Block, House, Known, Lift, LineSet, LoftWell, Termination } from '#house';
import { formatLength, metres } from '#quantities';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords, smallLengthWords, UNKNOWN } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const END_WORDS: Readonly<Record<Termination, string>> = {
  spelterSocket: 'poured sockets',
  swagedSocket: 'swaged sockets',
  mechanicalSplice: 'mechanical splices',
  handTuckedSplice: 'hand-tucked splices',
  wedgeSocket: 'wedge sockets',
  compressionSleeve: 'compression sleeves',
  clips: 'wire rope clips',
};

const forceWords = (known: Known<number>, house: House): string =>
  knownWords(known, house, { kind: 'force', round: 'down' }).value;

const blockWords = (block: Block, house: House): string => {
  const { sheaveDiameter, rated, bearing, fleetAngle } = block;
  const isBlank = bearing === null && ![sheaveDiameter, rated, fleetAngle].some((one) => one.known);
  if (isBlank) return UNKNOWN;
  return [
    `sheave ${smallLengthWords(sheaveDiameter, house)}`,
    `rated ${forceWords(rated, house)}`,
    `bearing ${bearing ?? UNKNOWN}`,
    `fleet angle ${knownWords(fleetAngle, house, { kind: 'angle', round: 'up' }).value}`,
  ].join(', ');
};

/** How far a line is short or long of true, in words and not by sign. */
const trimWords = ({ lineTrims }: Lift, { units }: House): string => {
  if (lineTrims === null) return UNKNOWN;
  const told = lineTrims.flatMap((trim, index) => {
    if (trim === 0) return [];
    const size = formatLength(metres(Math.abs(trim)), units, {
      style: units === 'customary' ? 'fine' : 'sheet',
      customaryLength: 'inches',
    });
    return [`line ${index + 1} ${size} ${trim > 0 ? 'short' : 'long'}`];
  });
  return told.length === 0 ? 'all true' : told.join(', ');
};

const mulesWords = ({ muleBlocks }: Lift, house: House): string =>
  muleBlocks.length === 0
    ? 'none'
    : muleBlocks.map(({ line, rated }) => `line ${line} ${forceWords(rated, house)}`).join(', ');

const cellsOf = (type: string, sets: readonly LineSet[], house: House): readonly string[] => {
  const ofLift = (say: (lift: Lift) => string): string => shared(sets, ({ lift }) => say(lift));
  return [
    type,
    ofLift(({ cable }) => cable.description ?? smallLengthWords(cable.diameter, house)),
    ofLift(({ cable }) => forceWords(cable.breakingStrength, house)),
    ofLift(({ cable }) => knownWords(cable.axialStiffness, house, { kind: 'force' }).value),
    ofLift(({ cable }) => (cable.termination === null ? UNKNOWN : END_WORDS[cable.termination])),
    ofLift((lift) => trimWords(lift, house)),
    ofLift(({ loftBlock }) => blockWords(loftBlock, house)),
    ofLift((lift) => mulesWords(lift, house)),
    ofLift(({ headBlock }) => blockWords(headBlock, house)),
    ofLift(({ handLineMass }) => knownWords(handLineMass, house, { kind: 'mass' }).value),
  ];
};

export const LiftLines = () => {
  const { house } = useWork();
  return (
    <RuledTable
      title="Lift lines and blocks by type"
      columns={[
        { head: 'type' },
        { head: 'lift line' },
        { head: 'breaks at', isNumber: true },
        { head: 'stiffness EA', isNumber: true },
        { head: 'ends' },
        { head: 'trims of the lines' },
        { head: 'loft blocks' },
        { head: 'mule blocks' },
        { head: 'head block' },
        { head: tradeWord(house, 'handLine'), isNumber: true },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty="No lift line is described yet."
    />
  );
};

/** Across the stage a number has no sign on screen, but a side. */
const placeWords = ({ x }: LoftWell, { units }: House): string => {
  if (x === 0) return 'centre line';
  return `${formatLength(metres(Math.abs(x)), units)} stage ${x < 0 ? 'right' : 'left'}`;
};

export const LoftWells = () => {
  const { house } = useWork();
  return (
    <RuledTable
      title="Loft wells"
      columns={[
        { head: 'well' },
        { head: 'middle', isNumber: true },
        { head: 'width', isNumber: true },
        { head: 'carries', isNumber: true },
        { head: 'limit known by' },
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
      empty="No loft well is described yet: what the lines put on the grid is not added up."
    />
  );
};
