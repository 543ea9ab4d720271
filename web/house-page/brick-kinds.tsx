import { tradeWord } from '#drawings';
import type { BrickKind, House } from '#house';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const servesWords = ({ serves }: BrickKind, house: House): string =>
  [
    ...(serves.pipeWeight ? [tradeWord(house, 'pipeWeight')] : []),
    ...(serves.show ? [`show ${tradeWord(house, 'bricks')}`] : []),
  ].join(', ');

const cellsOf = (kind: BrickKind, house: House): readonly string[] => {
  const mass = knownWords(kind.mass, house, { kind: 'mass' });
  return [
    `${kind.id}, ${kind.name}`,
    mass.value,
    knownWords(kind.thickness, house, { kind: 'length' }).value,
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
