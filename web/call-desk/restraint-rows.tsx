/** What holds a set besides its rope lock; that nothing does is said, and not left open. */
import { RESTRAINT_KINDS, type Restraint } from '#state';
import { message } from '#texts';
import { exampleIn } from '../house-entry/typed-figures.ts';
import { ChoiceField, TextField } from '../house-found/choice-field.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { BLANK_RESTRAINT, type FindDraft, type RestraintDraft } from './find-draft.ts';

const KINDS: Readonly<Record<Restraint['kind'], string>> = {
  bullLine: message('bull line'),
  arborSling: message('sling on the arbor'),
  stands: message('stands under the batten'),
  winch: message('winch on the hand line'),
  choke: message('choke on the hand line'),
  deadHangSteel: message('steel to hang the set on'),
  pinnedPiece: message('pin that ties the piece down'),
};

const WAYS: readonly (readonly [Restraint['resists'], string])[] = [
  ['in', message('against coming in')],
  ['out', message('against going out')],
  ['both', message('both ways')],
];

type RowsProps = {
  readonly restraints: FindDraft['restraints'];
  readonly onType: (restraints: FindDraft['restraints']) => void;
};

export const RestraintRows = ({ restraints, onType }: RowsProps) => {
  const tell = useTell();
  const rows = restraints ?? [];
  const change = (at: number, part: Partial<RestraintDraft>): void =>
    onType(rows.map((row, index) => (index === at ? { ...row, ...part } : row)));
  return (
    <fieldset className="call-part">
      <legend>{tell('What else holds it')}</legend>
      <p role="status" className="quiet">
        {restraints === null
          ? tell('Nobody has looked.')
          : rows.length === 0
            ? tell('Nothing else holds it.')
            : ''}
      </p>
      {rows.map((row, index) => (
        <RestraintRow
          // biome-ignore lint/suspicious/noArrayIndexKey: rows are told apart by their place
          key={index}
          row={row}
          number={index + 1}
          onType={(part) => change(index, part)}
          onDrop={() => onType(rows.filter((_, each) => each !== index))}
        />
      ))}
      <p className="buttons">
        <button
          type="button"
          aria-pressed={restraints?.length === 0}
          onClick={() => onType(restraints?.length === 0 ? null : [])}
        >
          {tell('Nothing else holds it')}
        </button>
        <button type="button" onClick={() => onType([...rows, BLANK_RESTRAINT])}>
          {tell('Add a restraint')}
        </button>
      </p>
    </fieldset>
  );
};

type RowProps = {
  readonly row: RestraintDraft;
  readonly number: number;
  readonly onType: (part: Partial<RestraintDraft>) => void;
  readonly onDrop: () => void;
};

const RestraintRow = ({ row, number, onType, onDrop }: RowProps) => {
  const tell = useTell();
  const { house } = useWork();
  const force = tell('such as {example}', { example: exampleIn('force', house) });
  const length = tell('such as {example}', { example: exampleIn('length', house) });
  return (
    <fieldset className="found-fields" aria-label={tell('Restraint {number}', { number })}>
      <ChoiceField
        label={tell('kind')}
        value={row.kind}
        none={tell('not said')}
        choices={RESTRAINT_KINDS.map((kind) => [kind, tell(KINDS[kind])] as const)}
        onChoose={(kind) => onType({ kind: RESTRAINT_KINDS.find((each) => each === kind) ?? '' })}
      />
      <ChoiceField
        label={tell('which way')}
        value={row.resists}
        none={tell('not said')}
        choices={WAYS.map(([way, words]) => [way, tell(words)] as const)}
        onChoose={(chosen) => onType({ resists: WAYS.find(([way]) => way === chosen)?.[0] ?? '' })}
      />
      <TextField
        label={tell('rating')}
        value={row.rating}
        hint={force}
        onType={(rating) => onType({ rating })}
      />
      <TextField
        label={tell('holds from')}
        value={row.from}
        hint={length}
        onType={(from) => onType({ from })}
      />
      <TextField
        label={tell('holds to')}
        value={row.to}
        hint={length}
        onType={(to) => onType({ to })}
      />
      <TextField label={tell('owner')} value={row.owner} onType={(owner) => onType({ owner })} />
      <TextField
        label={tell('number of its tag')}
        value={row.tag}
        onType={(tag) => onType({ tag })}
      />
      <button type="button" onClick={onDrop}>
        {tell('Take restraint {number} out', { number })}
      </button>
    </fieldset>
  );
};
