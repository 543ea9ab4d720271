/** Which turnbuckles to turn, and by how much: to level the batten, or to even out its lines. */
import { useState } from 'react';
import type { SetStructure, StructureState } from '#assessment';
import { turnsToEven, turnsToLevel } from '#beam';
import type { House } from '#house';
import { inHouseWords } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import { stepWords, turnWords } from './line-words.ts';
import { caseAfter, onStep, type WhatIf, withTurns } from './what-if.ts';

type Props = {
  readonly structure: SetStructure;
  readonly state: StructureState;
  readonly whatIf: WhatIf;
  readonly house: House;
  readonly stepM: number;
  readonly onChange: (next: WhatIf) => void;
};

/** Half a step rounds to none: such a line stays as it is. */
const isTurned = (turnM: number, stepM: number): boolean => onStep(turnM, stepM) !== 0;

export const Turning = (props: Props) => {
  const tell = useTell();
  const { structure, state, whatIf, house, stepM, onChange } = props;
  const [refused, setRefused] = useState<string | null>(null);
  const ask = (search: typeof turnsToLevel): void => {
    const found = search(caseAfter(structure, state, whatIf));
    if (!found.ok) throw new Error('defect: a batten that is drawn was refused');
    if ('unstable' in found.value) {
      setRefused(found.value.unstable.reason);
      return;
    }
    setRefused(null);
    onChange(withTurns(whatIf, found.value.turns, stepM));
  };
  return (
    <section className="turning" aria-label={tell('Turns of the turnbuckles')}>
      <div className="buttons">
        <button type="button" onClick={() => ask(turnsToLevel)}>
          {tell('Level the batten')}
        </button>
        <button type="button" onClick={() => ask(turnsToEven)}>
          {tell('Even the lines')}
        </button>
      </div>
      {refused === null ? null : (
        <p role="alert" className="caution-word">
          {inHouseWords(refused, house)}
        </p>
      )}
      <TurnList turns={whatIf.turns} house={house} stepM={stepM} />
      <p className="quiet">
        {tell(
          "The screen turns nothing. A competent person turns them by the house's own procedure, " +
            'a little at a time, and looks at every line after each.',
        )}
      </p>
    </section>
  );
};

type ListProps = {
  readonly turns: readonly number[];
  readonly house: House;
  readonly stepM: number;
};

const TurnList = ({ turns, house, stepM }: ListProps) => {
  const tell = useTell();
  const turned = turns.flatMap((turnM, index) =>
    isTurned(turnM, stepM) ? [{ line: index + 1, turnM }] : [],
  );
  if (turned.length === 0) return null;
  return (
    <div role="status">
      <ul className="turn-list" aria-label={tell('What to turn')}>
        {turned.map(({ line, turnM }) => (
          <li key={line}>
            {tell('line {line}', { line })} <b>{turnWords(house, turnM)}</b>
          </li>
        ))}
      </ul>
      <p className="quiet">
        {turned.length === turns.length ? '' : `${tell('The other lines stay.')} `}
        {tell(
          'To the nearest {step}. How many turns that is depends on the thread, which nobody ' +
            'has given.',
          { step: stepWords(house, stepM) },
        )}
      </p>
    </div>
  );
};
