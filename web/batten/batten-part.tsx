/** The batten and its lines: one state after another, as the show plans them. */
import { useState } from 'react';
import type { SetAssessment, SetStructure, StructureState } from '#assessment';
import type { House } from '#house';
import { inHouseWords, sayMeasure } from '#sheets';
import { message, phrase } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import { BattenWorkings } from './batten-workings.tsx';
import { OneState } from './one-state.tsx';

type PartProps = { readonly set: SetAssessment; readonly house: House };

export const BattenPart = ({ set, house }: PartProps) => {
  const { structure } = set;
  const tell = useTell();
  return (
    <section className="set-part batten-part" aria-labelledby="batten-head">
      <h2 id="batten-head">{tell('Batten and its lines')}</h2>
      {structure.known ? (
        <States key={set.lineSet.id} set={set} structure={structure.value} house={house} />
      ) : (
        <Missing needs={structure.needs} what={tell('the pull of each line')} house={house} />
      )}
    </section>
  );
};

type MissingProps = {
  readonly needs: readonly string[];
  readonly what: string;
  readonly house: House;
};

const Missing = ({ needs, what, house }: MissingProps) => {
  const tell = useTell();
  return (
    <Notice degree="note" title={tell('Not worked out: {what}. It needs:', { what })}>
      <ul className="plain-list">
        {needs.map((need) => (
          <li key={need}>{inHouseWords(need, house)}</li>
        ))}
      </ul>
    </Notice>
  );
};

type StatesProps = PartProps & { readonly structure: SetStructure };

/** First what hangs, as the show plans it; else the bare batten. */
const firstOf = ({ states }: SetStructure): number =>
  Math.max(
    0,
    states.findIndex(({ kind }) => kind === 'hung'),
  );

/** Names that the engine gives beside those of the trims. */
const OUR_NAMES: ReadonlySet<string> = new Set([message('working height'), message('high stop')]);

const AFTER = 'after ';

const nameWords = (name: string, house: House): string => {
  if (OUR_NAMES.has(name)) return phrase(house, name);
  return name.startsWith(AFTER)
    ? phrase(house, 'after {how}', { how: name.slice(AFTER.length) })
    : name;
};

/** States that are alike share one button; their heights differ then. */
const stateWords = ({ name, kind, height }: StructureState, house: House): string =>
  kind === 'bare'
    ? phrase(house, 'bare batten')
    : name.includes(', ')
      ? name
          .split(', ')
          .map((each) => nameWords(each, house))
          .join(', ')
      : `${nameWords(name, house)}, ${sayMeasure({ value: height, kind: 'length' }, house)}`;

const States = ({ set, structure, house }: StatesProps) => {
  const tell = useTell();
  const [index, setIndex] = useState(() => firstOf(structure));
  const state = structure.states[index] ?? structure.states[0];
  if (state === undefined) return null;
  return (
    <>
      <fieldset className="state-choice">
        <legend className="label">{tell('shown')}</legend>
        {structure.states.map((each, at) => (
          <button
            key={each.name}
            type="button"
            aria-pressed={each === state}
            onClick={() => setIndex(at)}
          >
            {stateWords(each, house)}
          </button>
        ))}
      </fieldset>
      {structure.hungNeeds.length === 0 ? null : (
        <Missing
          needs={structure.hungNeeds}
          what={tell('the lines with all that hangs')}
          house={house}
        />
      )}
      <OneState key={state.name} {...{ set, structure, house, state }} />
      <BattenWorkings {...{ set, house, state }} />
    </>
  );
};
