/** The line set schedule as a sheet that is typed into: every set of the house, empty ones too. */

import { useState } from 'react';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';
import { Link } from '../address/link.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { HangListKey } from './hang-list-key.tsx';
import { HangSheet, type SheetProps } from './hang-sheet.tsx';
import { KeyList } from './key-list.tsx';
import { countsWords, spokenResult } from './row-words.ts';

const totalsWords = ({ assessment, house }: Work): string => {
  if (assessment.sets.length === 0) return phrase(house, 'No sets yet.');
  const hung = assessment.sets.filter(({ hang }) => hang !== null).length;
  const planned = assessment.bricks.map(({ kind, planned: count }) => ({ kind, count }));
  const bricks = phrase(house, 'show bricks {counts}', { counts: countsWords(planned) });
  return phrase(house, '{hung} hung, {length} empty; {bricks}.', {
    hung,
    length: assessment.sets.length - hung,
    bricks,
  });
};

type SpokenProps = { readonly sets: readonly SetReckoning[]; readonly house: House };

const changedWords = (before: readonly SetReckoning[], { sets, house }: SpokenProps): string => {
  const old = new Map(before.map(({ id, set }) => [id, set]));
  const changed = sets.filter(({ id, set }) => old.get(id) !== set);
  if (changed.length === 0 || changed.length > 3) return '';
  return changed.map(({ set }) => spokenResult(set, house)).join('. ');
};

/** What the last edit came to, for those who hear it; what it says draws nothing else again. */
const SpokenResult = ({ sets, house }: SpokenProps) => {
  const [said, say] = useState({ of: sets, words: '' });
  if (said.of !== sets) {
    // In the same drawing as the edit: said afterwards, the page would be drawn twice.
    const words = changedWords(said.of, { sets, house });
    say({ of: sets, words: words === '' ? said.words : words });
  }
  return (
    <p className="only-said" role="status">
      {said.words}
    </p>
  );
};

export const HangListPage = (props: SheetProps) => {
  const tell = useTell();
  const work = useWork();
  const { sets, house } = work;
  const title = capital(tradeWord(house, 'schedule'));
  return (
    <>
      <div className="page-head">
        <h1>{title}</h1>
        <p className="quiet">
          {totalsWords(work)}{' '}
          <Link to={{ kind: 'anotherHouse', to: null, moved: null }}>
            {tell('Fit it to another house')}
          </Link>
        </p>
      </div>
      <SpokenResult sets={sets} house={house} />
      {sets.length === 0 ? (
        <NoSets />
      ) : (
        <>
          <HangSheet {...props} />
          <KeyList />
          <HangListKey house={house} />
        </>
      )}
      <TitleBlock drawing={title} scale={tell('slices as in the key')} />
    </>
  );
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const NoSets = () => {
  const tell = useTell();
  return (
    <p className="empty-words">
      {tell(
        'This house has no line sets yet. Its document lists them: types of set with their ' +
          'battens, arbors and stops, and where each set stands. Until it does, nothing can be ' +
          'hung here.',
      )}{' '}
      <Link to={{ kind: 'house', part: 'limits', at: null }}>{tell('Open the house')}</Link>
    </p>
  );
};
