/** The line set schedule as a sheet that is typed into: every set in rail order, empty ones too. */
import { type FocusEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { tradeWord } from '#drawings';
import type { Basis, House } from '#house';
import { Link } from '../address/link.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { GridArea } from '../grid/grid-area.tsx';
import { at } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { HangListHead, HEAD_COLUMNS } from './hang-list-head.tsx';
import { HangListKey } from './hang-list-key.tsx';
import { OpenedRow } from './opened-row.tsx';
import { countsWords, spokenResult } from './row-words.ts';
import { SetRow } from './set-row.tsx';

/** The slices reach three times the lock, so that what is held takes the middle third. */
const edgeOf = ({ rules }: House): number =>
  rules.lockLimit.known ? 3 * rules.lockLimit.value : 667;

const totalsWords = ({ assessment, house }: Work): string => {
  if (assessment.sets.length === 0) return 'No sets yet.';
  const hung = assessment.sets.filter(({ hang }) => hang !== null).length;
  const planned = assessment.bricks.map(({ kind, planned: count }) => ({ kind, count }));
  const bricks = `show ${tradeWord(house, 'bricks')} ${countsWords(planned)}`;
  return `${hung} hung, ${assessment.sets.length - hung} empty; ${bricks}. Rail order.`;
};

/** What the last edit came to, for those who hear it. */
const useSpokenResult = (sets: readonly SetReckoning[], house: House): string => {
  const before = useRef(sets);
  const [words, setWords] = useState('');
  useEffect(() => {
    const old = new Map(before.current.map(({ id, set }) => [id, set]));
    before.current = sets;
    const changed = sets.filter(({ id, set }) => old.get(id) !== set);
    if (changed.length > 0 && changed.length < 4) {
      setWords(changed.map(({ set }) => spokenResult(set, house)).join('. '));
    }
  }, [sets, house]);
  return words;
};

type PageProps = {
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
};

const setAt = ({ target }: FocusEvent): string | null =>
  target.closest<HTMLElement>('[data-set]')?.dataset['set'] ?? null;

/** The order of the sets, the same list as long as the house is the same. */
const useRailOrder = (sets: readonly SetReckoning[]): readonly string[] => {
  const key = sets.map(({ id }) => id).join('\n');
  return useMemo(() => key.split('\n'), [key]);
};

const useOpened = () => {
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const toggle = useCallback((set: string) => {
    setOpened((before) => {
      const after = new Set(before);
      if (!after.delete(set)) after.add(set);
      return after;
    });
  }, []);
  return [opened, toggle] as const;
};

const HangGrid = ({ setInHand, onTake }: PageProps) => {
  const { sets, house, nowMs, documents } = useWork();
  const [opened, toggle] = useOpened();
  const railOrder = useRailOrder(sets);
  const given = at(documents.show, ['given', 'basis']);
  const row = { house, nowMs, railOrder, edgeN: edgeOf(house), onOpen: toggle };
  return (
    <table
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: it is typed into
      role="grid"
      aria-label={tradeWord(house, 'schedule')}
      onFocus={(event) => {
        const set = setAt(event);
        if (set !== null && set !== setInHand) onTake(set);
      }}
    >
      <HangListHead house={house} />
      <tbody>
        {sets.map((each) => {
          const isOpen = opened.has(each.id) && each.set.hang !== null;
          const isInHand = each.id === setInHand;
          return [
            <SetRow key={each.id} each={each} {...row} isOpen={isOpen} isInHand={isInHand} />,
            isOpen ? (
              <OpenedRow
                key={`${each.id} items`}
                each={each}
                house={house}
                given={typeof given === 'string' ? (given as Basis) : null}
                columns={HEAD_COLUMNS}
              />
            ) : null,
          ];
        })}
      </tbody>
    </table>
  );
};

export const HangListPage = (props: PageProps) => {
  const work = useWork();
  const { sets, house } = work;
  const title = capital(tradeWord(house, 'schedule'));
  return (
    <>
      <div className="page-head">
        <h1>{title}</h1>
        <p className="quiet">{totalsWords(work)}</p>
      </div>
      <p className="only-said" role="status">
        {useSpokenResult(sets, house)}
      </p>
      {sets.length === 0 ? (
        <NoSets house={house} />
      ) : (
        <>
          <GridArea>
            <div className="wide hang-list">
              <HangGrid {...props} />
            </div>
          </GridArea>
          <HangListKey house={house} />
        </>
      )}
      <TitleBlock drawing={title} scale="slices as in the key" />
    </>
  );
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const NoSets = ({ house }: { readonly house: House }) => (
  <p className="empty-words">
    This house has no line sets yet. Its document lists them: types of set with their{' '}
    {tradeWord(house, 'batten')}s, {tradeWord(house, 'arbor')}s and stops, and where each set
    stands. Until it does, nothing can be hung here.{' '}
    <Link to={{ kind: 'house', part: 'limits', at: null }}>Open the house</Link>
  </p>
);
