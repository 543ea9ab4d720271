/** One state of a batten, and the question that a person asks of it. */
import { useMemo, useState } from 'react';
import type { SetAssessment, SetStructure, StructureState } from '#assessment';
import { hangingItems, placeOfLoad } from '#drawings';
import type { House } from '#house';
import { phrase } from '#texts';
import { matches } from '../drawing/use-width.ts';
import { useTell } from '../language/use-tell.ts';
import { BattenFigure } from './batten-figure.tsx';
import { HeaviestHere } from './heaviest.tsx';
import { stepWords } from './line-words.ts';
import { LinesTable } from './lines-table.tsx';
import { LoadChoice, TryLoad } from './load-choice.tsx';
import type { Movable } from './load-strip.tsx';
import { Turning } from './turning.tsx';
import {
  isChanged,
  type loadsAfter,
  NOTHING_CHANGED,
  reachOf,
  stateAfter,
  stepsIn,
  TRIED_NAME,
  type WhatIf,
} from './what-if.ts';

const namesOf = (set: SetAssessment, triedName: string): readonly string[] => [
  ...hangingItems(set).map(({ item }) => item.name),
  triedName,
];

/** What can be taken in hand: loads of what hangs, each with its number among its like. */
const movablesOf = (
  structure: SetStructure,
  loads: ReturnType<typeof loadsAfter>,
  items: readonly string[],
  house: House,
): readonly Movable[] => {
  const kin = (of: string) => loads.filter((each) => each.of === of);
  return loads.flatMap((placed, index) => {
    if (!items.includes(placed.of)) return [];
    const all = kin(placed.of);
    const name = placed.of;
    const number = all.indexOf(placed) + 1;
    const total = all.length;
    return [
      {
        index,
        name:
          total === 1 ? name : phrase(house, '{name} {number} of {total}', { name, number, total }),
        x: placeOfLoad(placed.load),
        ...reachOf(structure, placed),
      },
    ];
  });
};

type OneProps = {
  readonly set: SetAssessment;
  readonly structure: SetStructure;
  readonly house: House;
  readonly state: StructureState;
};

type Question = {
  readonly whatIf: WhatIf;
  readonly setWhatIf: (change: WhatIf | ((now: WhatIf) => WhatIf)) => void;
  /** Which load a person has taken in hand, if any. */
  readonly inHand: number | null;
  readonly setInHand: (index: number | null) => void;
  readonly reset: () => void;
  readonly tryMass: (massKg: number | null) => void;
};

/** Kept while this state stands as it is; an edit of the show ends it. */
const useQuestion = (before: StructureState): Question => {
  const [whatIf, setWhatIf] = useState<WhatIf>(NOTHING_CHANGED);
  const [inHand, setInHand] = useState<number | null>(null);
  const [asked, setAsked] = useState(before);
  const reset = (): void => {
    setWhatIf(NOTHING_CHANGED);
    setInHand(null);
  };
  if (asked !== before) {
    // A question about other loads is no question any more.
    setAsked(before);
    reset();
  }
  const tryMass = (massKg: number | null): void => {
    setWhatIf((now) => ({
      ...now,
      tried: massKg === null ? null : { x: now.tried?.x ?? 0, massKg },
    }));
    setInHand(massKg === null ? null : before.loads.length);
  };
  return { whatIf, setWhatIf, inHand, setInHand, reset, tryMass };
};

export const OneState = ({ set, structure, house, state: before }: OneProps) => {
  const { whatIf, setWhatIf, inHand, setInHand, reset, tryMass } = useQuestion(before);
  const { lineSet } = set;
  const triedName = useTell()(TRIED_NAME);
  const items = useMemo(() => namesOf(set, triedName), [set, triedName]);
  const state = useMemo(
    () => stateAfter(structure, before, whatIf, triedName),
    [structure, before, whatIf, triedName],
  );
  const loads = movablesOf(structure, state.loads, items, house);
  const chosen = loads.find(({ index }) => index === inHand) ?? loads[0];
  const isWhatIf = isChanged(whatIf);
  const { turnM } = stepsIn(house.units);
  const work = { structure, house, whatIf, lineSet, items };
  return (
    <div className={isWhatIf ? 'what-if asked' : 'what-if'}>
      <WhatIfHead isWhatIf={isWhatIf} step={stepWords(house, turnM)} onReset={reset} />
      <BattenFigure
        {...work}
        {...{ before, state, isWhatIf, loads, chosen, inHand }}
        onChoose={setInHand}
        onChange={setWhatIf}
      />
      <div className="hands">
        <div className="load-hands">
          {chosen === undefined ? null : (
            <LoadChoice loads={loads} chosen={chosen.index} house={house} onChoose={setInHand} />
          )}
          <TryLoad house={house} isTried={whatIf.tried !== null} onTry={tryMass} />
          {chosen === undefined || 'unstable' in state.beam ? null : (
            <HeaviestHere {...work} state={before} at={chosen} />
          )}
        </div>
        {'unstable' in state.beam ? null : (
          <Turning
            {...{ structure, whatIf, house }}
            state={before}
            stepM={turnM}
            onChange={setWhatIf}
          />
        )}
      </div>
      <LinesTable
        {...{ structure, state, lineSet, house }}
        stepM={turnM}
        isNarrow={matches('(max-width: 700px)')}
      />
    </div>
  );
};

type HeadProps = {
  readonly isWhatIf: boolean;
  readonly step: string;
  readonly onReset: () => void;
};

/** Drag, keys or a turn: nothing of it is kept, and one press goes back. */
const WhatIfHead = ({ isWhatIf, step, onReset }: HeadProps) => {
  const tell = useTell();
  return (
    <div className="what-if-head">
      {isWhatIf ? (
        <>
          <p>
            <strong>{tell('WHAT IF')}</strong>{' '}
            {tell('A question, not a record: nothing of it is kept.')}
          </p>
          <button type="button" onClick={onReset}>
            {tell('Back to how it is')}
          </button>
        </>
      ) : (
        <p className="quiet">
          {tell(
            'Ask what would happen: drag a load, or move it with the arrow keys; make a line ' +
              '{step} shorter or longer.',
            { step },
          )}
        </p>
      )}
    </div>
  );
};
