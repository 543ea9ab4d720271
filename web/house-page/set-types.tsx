/** The line sets by type: what they share, and where they differ from one another. */
import { tradeWord } from '#drawings';
import { type House, type Known, type LineSet, purchaseOf } from '#house';
import { phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const suspensionWords = (house: House): Readonly<Record<LineSet['suspension'], string>> => ({
  singlePurchase: phrase(house, 'single purchase'),
  doublePurchase: phrase(house, 'double purchase'),
  motor: phrase(house, 'motor'),
  hemp: phrase(house, 'hemp'),
  deadHung: tradeWord(house, 'deadHung'),
});

const lengthOf = (known: Known<number>, house: House): string =>
  knownWords(known, house, { kind: 'length' }).value;

const limitOf = (known: Known<number>, house: House, kind: 'mass' | 'force'): string =>
  knownWords(known, house, { kind, round: 'down' }).value;

const travelWords = ({ suspension, lowStop, highStop }: LineSet, house: House): string =>
  suspension === 'deadHung'
    ? phrase(house, 'does not travel')
    : phrase(house, '{low} to {high}', {
        low: lengthOf(lowStop.height, house),
        high: lengthOf(highStop.height, house),
      });

const arborWords = ({ suspension, arbor }: LineSet, house: House): string => {
  if (purchaseOf(suspension) === null) return phrase(house, 'no arbor');
  if (arbor === null) return phrase(house, 'unknown');
  const rod = lengthOf(arbor.usableRod, house);
  const mass = limitOf(arbor.massLimit, house, 'mass');
  return phrase(house, 'rod {rod}, at most {mass}', { rod, mass });
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
  shared(sets, ({ lineXs }) =>
    lineXs === null ? phrase(house, 'unknown') : String(lineXs.length),
  ),
  shared(sets, (set) => travelWords(set, house)),
  shared(sets, ({ liveLimit }) => limitOf(liveLimit, house, 'mass')),
  shared(sets, ({ lineLimit }) => limitOf(lineLimit, house, 'force')),
  shared(sets, (set) => arborWords(set, house)),
  shared(sets, (set) => sourceOf(set, house)),
];

export const SetTypes = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Line sets by type')}
      columns={[
        { head: tell('type') },
        { head: tell('sets') },
        { head: tell('carried by') },
        { head: tell('lines'), isNumber: true },
        { head: tell('batten travels'), isNumber: true },
        { head: tell('live limit'), isNumber: true },
        { head: tell('each line'), isNumber: true },
        { head: tradeWord(house, 'arbor') },
        { head: tell('live limit known by') },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty={tell('No line set is described yet: nothing can be hung.')}
    />
  );
};
