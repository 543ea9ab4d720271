/** The line sets by type: what they share, and where they differ from one another. */
import { tradeWord } from '#drawings';
import { type House, type Known, type LineSet, purchaseOf } from '#house';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const suspensionWords = (house: House): Readonly<Record<LineSet['suspension'], string>> => ({
  singlePurchase: 'single purchase',
  doublePurchase: 'double purchase',
  motor: 'motor',
  hemp: 'hemp',
  deadHung: tradeWord(house, 'deadHung'),
});

const lengthOf = (known: Known<number>, house: House): string =>
  knownWords(known, house, { kind: 'length' }).value;

const limitOf = (known: Known<number>, house: House, kind: 'mass' | 'force'): string =>
  knownWords(known, house, { kind, round: 'down' }).value;

const travelWords = ({ suspension, lowStop, highStop }: LineSet, house: House): string =>
  suspension === 'deadHung'
    ? 'does not travel'
    : `${lengthOf(lowStop.height, house)} to ${lengthOf(highStop.height, house)}`;

const arborWords = ({ suspension, arbor }: LineSet, house: House): string => {
  if (purchaseOf(suspension) === null) return `no ${tradeWord(house, 'arbor')}`;
  if (arbor === null) return 'unknown';
  const rod = lengthOf(arbor.usableRod, house);
  return `rod ${rod}, at most ${limitOf(arbor.massLimit, house, 'mass')}`;
};

/** Basis and source of the live limit, the one that a show meets first. */
const sourceOf = ({ liveLimit }: LineSet, house: House): string => {
  const { basis, source } = knownWords(liveLimit, house, { kind: 'mass' });
  return [basis, source].filter((part) => part !== '').join(': ');
};

const cellsOf = (type: string, sets: readonly LineSet[], house: House): readonly string[] => [
  type,
  sets.map(({ id }) => id).join(', '),
  shared(sets, ({ suspension }) => suspensionWords(house)[suspension]),
  shared(sets, ({ lineXs }) => (lineXs === null ? 'unknown' : String(lineXs.length))),
  shared(sets, (set) => travelWords(set, house)),
  shared(sets, ({ liveLimit }) => limitOf(liveLimit, house, 'mass')),
  shared(sets, ({ lineLimit }) => limitOf(lineLimit, house, 'force')),
  shared(sets, (set) => arborWords(set, house)),
  shared(sets, (set) => sourceOf(set, house)),
];

export const SetTypes = () => {
  const { house } = useWork();
  const set = tradeWord(house, 'lineSet');
  return (
    <RuledTable
      title={`${set.charAt(0).toUpperCase()}${set.slice(1)}s by type`}
      columns={[
        { head: 'type' },
        { head: 'sets' },
        { head: 'carried by' },
        { head: 'lines', isNumber: true },
        { head: `${tradeWord(house, 'batten')} travels`, isNumber: true },
        { head: 'live limit', isNumber: true },
        { head: 'each line', isNumber: true },
        { head: tradeWord(house, 'arbor') },
        { head: 'live limit known by' },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty={`No ${set} is described yet: nothing can be hung.`}
    />
  );
};
