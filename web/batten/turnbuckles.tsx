/** A turnbuckle over each line: shorter or longer by one step a press. */
import { useState } from 'react';
import type { LineState, SetStructure } from '#assessment';
import type { House } from '#house';
import { useTell } from '../language/use-tell.ts';
import { pullWords, stepWords, turnWords } from './line-words.ts';

type Props = {
  readonly structure: SetStructure;
  /** Empty where nothing holds the batten. */
  readonly lines: readonly LineState[];
  readonly turns: readonly number[];
  readonly house: House;
  readonly stepM: number;
  readonly xOf: (acrossM: number) => number;
  readonly onTurn: (line: number, byM: number) => void;
};

/** Two presses side by side; nearer lines have them stacked, the nearest one line at a time. */
const SIDE_BY_SIDE_PX = 168;
const STACKED_PX = 54;

const apartOf = ({ structure, xOf }: Props): number => {
  const xs = structure.lines.map(({ x }) => xOf(x));
  return Math.min(Infinity, ...xs.slice(1).map((x, index) => x - (xs[index] ?? 0)));
};

export const Turnbuckles = (props: Props) => {
  const tell = useTell();
  const { structure, xOf } = props;
  const apart = apartOf(props);
  if (apart < STACKED_PX) return <OneTurnbuckle {...props} />;
  const isStacked = apart < SIDE_BY_SIDE_PX;
  return (
    <ol
      className={isStacked ? 'turnbuckles stacked' : 'turnbuckles'}
      aria-label={tell('Turnbuckles')}
    >
      {structure.lines.map(({ x }, line) => (
        <li key={x} style={{ left: xOf(x), ...(isStacked ? { width: apart - 4 } : {}) }}>
          <Turnbuckle {...props} line={line} />
        </li>
      ))}
    </ol>
  );
};

const Turnbuckle = ({ line, lines, turns, house, stepM, onTurn }: Props & { line: number }) => {
  const step = stepWords(house, stepM);
  const state = lines[line];
  const tell = useTell();
  const number = line + 1;
  return (
    <>
      <div className="presses">
        <button
          type="button"
          aria-label={tell('Line {number} shorter by {step}', { number, step })}
          onClick={() => onTurn(line, stepM)}
        >
          {tell('shorter')}
        </button>
        <button
          type="button"
          aria-label={tell('Line {number} longer by {step}', { number, step })}
          onClick={() => onTurn(line, -stepM)}
        >
          {tell('longer')}
        </button>
      </div>
      <p className="turned">
        <span className="only-said">
          {state === undefined
            ? tell('Line {number}: ', { number })
            : tell('Line {number}, {pull}: ', { number, pull: pullWords(house, state) })}
        </span>
        {turnWords(house, turns[line] ?? 0)}
      </p>
    </>
  );
};

const OneTurnbuckle = (props: Props) => {
  const tell = useTell();
  const [line, setLine] = useState(0);
  return (
    <div className="one-turnbuckle">
      <label>
        <span className="label">{tell('turnbuckle of')}</span>
        <select value={line} onChange={({ target }) => setLine(Number(target.value))}>
          {props.structure.lines.map(({ x }, index) => (
            <option key={x} value={index}>
              {tell('line {line}', { line: index + 1 })}
            </option>
          ))}
        </select>
      </label>
      <Turnbuckle {...props} line={line} />
    </div>
  );
};
