/** How the battens bend and what they may carry, by type of line set; unknown is said as such. */
import { tradeWord } from '#drawings';
import type { BattenPipe, House, Known, LineSet } from '#house';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords, type SayHow, UNKNOWN } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const said = (known: Known<number>, house: House, how: SayHow): string =>
  knownWords(known, house, how).value;

const WALL_WORDS: Readonly<Record<NonNullable<BattenPipe['wall']>, string>> = {
  nominal: 'nominal wall',
  design: 'design wall',
};

const splicesWords = ({ batten }: LineSet, house: House): string => {
  if (batten.splices === null) return UNKNOWN;
  if (batten.splices.length === 0) return 'none';
  return batten.splices
    .map(({ strength }) => said(strength, house, { kind: 'ratio', round: 'down' }))
    .join(', ');
};

const cellsOf = (type: string, sets: readonly LineSet[], house: House): readonly string[] => {
  const ofPipe = (say: (pipe: BattenPipe) => string): string =>
    shared(sets, ({ batten }) => say(batten.pipe));
  return [
    type,
    shared(sets, ({ batten }) => batten.description ?? ''),
    ofPipe(({ secondMoment }) => said(secondMoment, house, { kind: 'secondMoment' })),
    ofPipe(({ sectionModulus }) => said(sectionModulus, house, { kind: 'sectionModulus' })),
    ofPipe(({ plasticModulus }) => said(plasticModulus, house, { kind: 'sectionModulus' })),
    ofPipe(({ elasticModulus }) => said(elasticModulus, house, { kind: 'pressure' })),
    ofPipe(({ yieldStrength }) => said(yieldStrength, house, { kind: 'pressure', round: 'down' })),
    ofPipe(({ wall }) => (wall === null ? UNKNOWN : WALL_WORDS[wall])),
    shared(sets, (set) => splicesWords(set, house)),
    shared(sets, ({ pointLimit }) => said(pointLimit, house, { kind: 'mass', round: 'down' })),
    shared(sets, ({ perLengthLimit }) =>
      said(perLengthLimit, house, { kind: 'massPerLength', round: 'down' }),
    ),
  ];
};

export const Battens = () => {
  const { house } = useWork();
  const batten = tradeWord(house, 'batten');
  return (
    <RuledTable
      title={`${batten.charAt(0).toUpperCase()}${batten.slice(1)}s by type`}
      note="A joint is said by the share of the moment of the whole tube that it takes."
      columns={[
        { head: 'type' },
        { head: 'tube' },
        { head: 'second moment', isNumber: true },
        { head: 'section modulus', isNumber: true },
        { head: 'plastic modulus', isNumber: true },
        { head: 'modulus of elasticity', isNumber: true },
        { head: 'yields at', isNumber: true },
        { head: 'values of the' },
        { head: 'joints', isNumber: true },
        { head: 'at one place', isNumber: true },
        { head: 'on each length', isNumber: true },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty={`No ${batten} is described yet.`}
    />
  );
};
