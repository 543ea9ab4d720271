/** How the battens bend and what they may carry, by type of line set; unknown is said as such. */
import type { BattenPipe, House, Known, LineSet } from '#house';
import { message, phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { byType, shared } from './by-type.ts';
import { knownWords, type SayHow, unknownWord } from './known-words.ts';
import { RuledTable } from './ruled-table.tsx';

const said = (known: Known<number>, house: House, how: SayHow): string =>
  knownWords(known, house, how).value;

const WALL_WORDS: Readonly<Record<NonNullable<BattenPipe['wall']>, string>> = {
  nominal: message('nominal wall'),
  design: message('design wall'),
};

const splicesWords = ({ batten }: LineSet, house: House): string => {
  if (batten.splices === null) return unknownWord(house);
  if (batten.splices.length === 0) return phrase(house, 'none');
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
    ofPipe(({ wall }) => (wall === null ? unknownWord(house) : phrase(house, WALL_WORDS[wall]))),
    shared(sets, (set) => splicesWords(set, house)),
    shared(sets, ({ pointLimit }) => said(pointLimit, house, { kind: 'mass', round: 'down' })),
    shared(sets, ({ perLengthLimit }) =>
      said(perLengthLimit, house, { kind: 'massPerLength', round: 'down' }),
    ),
  ];
};

export const Battens = () => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <RuledTable
      title={tell('Battens by type')}
      note={tell('A joint is said by the share of the moment of the whole tube that it takes.')}
      columns={[
        { head: tell('type') },
        { head: tell('tube') },
        { head: tell('second moment'), isNumber: true },
        { head: tell('section modulus'), isNumber: true },
        { head: tell('plastic modulus'), isNumber: true },
        { head: tell('modulus of elasticity'), isNumber: true },
        { head: tell('yields at'), isNumber: true },
        { head: tell('values of the') },
        { head: tell('joints'), isNumber: true },
        { head: tell('at one place'), isNumber: true },
        { head: tell('on each length'), isNumber: true },
      ]}
      rows={[...byType(house.lineSets)].map(([type, sets]) => ({
        key: type,
        cells: cellsOf(type, sets, house),
      }))}
      empty={tell('No batten is described yet.')}
    />
  );
};
