/** A count typed with gloves on: ten figures and a way back. It begins empty, without a guess. */
import { useTell } from '../language/use-tell.ts';

type PadProps = {
  /** What was typed; empty before any. */
  readonly typed: string;
  readonly label: string;
  readonly onType: (typed: string) => void;
};

const FIGURES = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'] as const;
/** No arbor has a thousand plates. */
const FIGURES_MAX = 3;

export const countOf = (typed: string): number | null =>
  /^\d{1,3}$/.test(typed) ? Number(typed) : null;

export const CountPad = ({ typed, label, onType }: PadProps) => {
  const tell = useTell();
  const add = (figure: string): void => {
    if (typed.length < FIGURES_MAX) onType(`${typed}${figure}`.replace(/^0(?=\d)/, ''));
  };
  const key = (figure: string) => (
    <button key={figure} type="button" onClick={() => add(figure)}>
      {figure}
    </button>
  );
  return (
    <fieldset className="count-pad">
      <legend>{label}</legend>
      <output aria-label={label}>{typed === '' ? tell('not counted') : typed}</output>
      <div className="count-keys">
        {FIGURES.map(key)}
        <button type="button" onClick={() => onType(typed.slice(0, -1))}>
          {tell('back')}
        </button>
      </div>
    </fieldset>
  );
};
