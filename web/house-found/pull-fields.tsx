/** A two-way pull test as it is typed: both pulls and the height, wherever it is written down. */
import type { House } from '#house';
import { message } from '#texts';
import { exampleIn } from '../house-entry/typed-figures.ts';
import { useTell } from '../language/use-tell.ts';
import { TextField } from './choice-field.tsx';

export type Pulls = { readonly out: string; readonly in: string; readonly height: string };

export const NO_PULLS: Pulls = { out: '', in: '', height: '' };

export const missingPulls = (pulls: Pulls): readonly string[] => [
  ...(pulls.out.trim() === '' ? [message('the pull out')] : []),
  ...(pulls.in.trim() === '' ? [message('the pull in')] : []),
  ...(pulls.height.trim() === '' ? [message('the height')] : []),
];

type PullFieldsProps = {
  readonly house: House;
  readonly pulls: Pulls;
  readonly onType: (part: Partial<Pulls>) => void;
};

export const PullFields = ({ house, pulls, onType }: PullFieldsProps) => {
  const tell = useTell();
  const force = tell('such as {example}', { example: exampleIn('force', house) });
  const length = tell('such as {example}', { example: exampleIn('length', house) });
  return (
    <>
      <TextField
        label={tell('Pull that takes it out')}
        value={pulls.out}
        hint={force}
        onType={(out) => onType({ out })}
      />
      <TextField
        label={tell('Pull that takes it in')}
        value={pulls.in}
        hint={force}
        onType={(inward) => onType({ in: inward })}
      />
      <TextField
        label={tell('With the batten at')}
        value={pulls.height}
        hint={length}
        onType={(height) => onType({ height })}
      />
    </>
  );
};
