import { tradeWord } from '#drawings';
import type { BrickKind, House } from '#house';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords, smallLengthWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const servesWords = ({ serves }: BrickKind, house: House): string =>
  [
    ...(serves.pipeWeight ? [tradeWord(house, 'pipeWeight')] : []),
    ...(serves.show ? [`show ${tradeWord(house, 'bricks')}`] : []),
  ].join(', ');

const cellsOf = (kind: BrickKind, house: House): readonly string[] => {
  // Fine, because a half brick may weigh half a pound more than a whole number.
  const mass = knownWords(kind.mass, house, { kind: 'mass', style: 'fine' });
  return [
    `${kind.id}, ${kind.name}`,
    mass.value,
    smallLengthWords(kind.thickness, house),
    smallLengthWords(kind.floorLength, house),
    knownWords(kind.owned, house, { kind: 'count' }).value,
    servesWords(kind, house),
    kind.looksLike.join(', ') || 'no other',
    [mass.basis, mass.source].filter((part) => part !== '').join(': '),
    kind.remark ?? '',
  ];
};

export const BrickKinds = () => {
  const { house } = useWork();
  const bricks = tradeWord(house, 'bricks');
  return (
    <RuledTable
      title={`Kinds of ${bricks}`}
      note={`The mass of each kind is this house's own, from a weighed sample.`}
      columns={[
        { head: 'kind' },
        { head: 'mass', isNumber: true },
        { head: 'thickness', isNumber: true },
        { head: 'takes of a floor', isNumber: true },
        { head: 'owned', isNumber: true },
        { head: 'serves as' },
        { head: 'mistaken for' },
        { head: 'mass known by' },
        { head: 'remark' },
      ]}
      rows={house.brickKinds.map((kind) => ({ key: kind.id, cells: cellsOf(kind, house) }))}
      empty={`No kind of ${bricks} is described yet: nothing can be balanced.`}
    />
  );
};
