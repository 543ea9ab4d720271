/** Counting the plates on an arbor: one press a plate, from the bottom up, or a number typed. */
import { useId } from 'react';
import { tradeWord } from '#drawings';
import type { House } from '#house';
import type { StackRun } from '#state';
import { phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { kindWords, runWords } from './stand-words.ts';
import { withCount, withoutPlate, withPlate } from './tally.ts';

type Plate = Pick<StackRun, 'kind' | 'tag'> & { readonly words: string };

const platesOf = (house: House): readonly Plate[] => [
  ...house.brickKinds.flatMap(({ id, name, serves }): readonly Plate[] => [
    ...(serves.pipeWeight
      ? [{ kind: id, tag: 'pipe' as const, words: phrase(house, '{name}, pipe weight', { name }) }]
      : []),
    ...(serves.show
      ? [{ kind: id, tag: 'show' as const, words: phrase(house, '{name}, show', { name }) }]
      : []),
  ]),
  ...(house.spreader === null
    ? []
    : [{ kind: 'spreader', tag: 'spreader' as const, words: tradeWord(house, 'spreader') }]),
];

type CountProps = {
  readonly stack: readonly StackRun[] | null;
  readonly onCount: (stack: readonly StackRun[] | null) => void;
};

const countedWords = (stack: CountProps['stack'], house: House): string => {
  if (stack === null) return phrase(house, 'Not counted.');
  if (stack.length === 0) return phrase(house, 'Bare: nothing on it.');
  return phrase(house, 'Counted: {plates}.', {
    plates: stack.map((run) => runWords(run, house)).join('; '),
  });
};

export const StackCount = ({ stack, onCount }: CountProps) => {
  const tell = useTell();
  const { house } = useWork();
  const plates = platesOf(house);
  const counted = stack ?? [];
  return (
    <fieldset className="stack-count">
      <legend>{tell('On the arbor, from the bottom up')}</legend>
      {plates.length === 0 ? (
        <p className="quiet">{tell('No kind of brick is entered yet.')}</p>
      ) : null}
      <p className="buttons tally-buttons">
        {plates.map(({ kind, tag, words }) => (
          <button
            key={`${kind} ${tag}`}
            type="button"
            onClick={() => onCount(withPlate(counted, { kind, tag }))}
          >
            {tell('One {plate}', { plate: words })}
          </button>
        ))}
        <button
          type="button"
          disabled={counted.length === 0}
          onClick={() => onCount(withoutPlate(counted))}
        >
          {tell('Top one off again')}
        </button>
      </p>
      <p role="status" className="tally-words">
        {countedWords(stack, house)}
      </p>
      <Runs stack={counted} onCount={onCount} />
      <p className="buttons">
        <button type="button" aria-pressed={stack?.length === 0} onClick={() => onCount([])}>
          {tell('It is bare')}
        </button>
        <button type="button" aria-pressed={stack === null} onClick={() => onCount(null)}>
          {tell('Not counted')}
        </button>
      </p>
    </fieldset>
  );
};

type RunsProps = Pick<CountProps, 'onCount'> & { readonly stack: readonly StackRun[] };

/** Each run with its number, for whoever counts faster than they press. */
const Runs = ({ stack, onCount }: RunsProps) => {
  const tell = useTell();
  const { house } = useWork();
  const id = useId();
  return (
    <div className="found-fields">
      {stack.map((run, index) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: runs are told apart by their place
          key={index}
          className="found-field"
        >
          <label htmlFor={`${id}-${index}`}>
            {tell('{number}: {kind}, how many', {
              number: index + 1,
              kind: kindWords(run, house),
            })}
          </label>
          <input
            id={`${id}-${index}`}
            type="number"
            min={0}
            max={2000}
            value={run.count}
            onChange={({ target }) =>
              onCount(withCount(stack, index, Number.parseInt(target.value, 10) || 0))
            }
          />
        </div>
      ))}
    </div>
  );
};
