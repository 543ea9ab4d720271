import { tradeWord } from '#drawings';
import type { BrickKind, House } from '#house';
import { phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { knownWords, smallLengthWords } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const servesWords = ({ serves }: BrickKind, house: House): string =>
  [
    ...(serves.pipeWeight ? [tradeWord(house, 'pipeWeight')] : []),
    ...(serves.show ? [phrase(house, 'show bricks')] : []),
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
    kind.looksLike.join(', ') || phrase(house, 'no other'),
    [mass.basis, mass.source].filter((part) => part !== '').join(': '),
    kind.remark ?? '',
  ];
};

export const BrickKinds = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Kinds of bricks')}
      note={tell("The mass of each kind is this house's own, from a weighed sample.")}
      columns={[
        { head: tell('kind') },
        { head: tell('mass'), isNumber: true },
        { head: tell('thickness'), isNumber: true },
        { head: tell('takes of a floor'), isNumber: true },
        { head: tell('owned'), isNumber: true },
        { head: tell('serves as') },
        { head: tell('mistaken for') },
        { head: tell('mass known by') },
        { head: tell('remark') },
      ]}
      rows={house.brickKinds.map((kind) => ({ key: kind.id, cells: cellsOf(kind, house) }))}
      empty={tell('No kind of bricks is described yet: nothing can be balanced.')}
    />
  );
};
