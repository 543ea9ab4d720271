/** The id of an entry: it may change until a show or the record names it, and says what does. */
import { phrase, type Voice } from '#texts';
import { RECORD } from '../editing/house-edits.ts';
import { useTell } from '../language/use-tell.ts';
import { useDesk } from './desk.ts';
import { fieldId } from './entry-path.ts';
import { RowFrame } from './row-frame.tsx';
import { useRow } from './use-row.ts';

type IdProps = { readonly list: string; readonly id: string; readonly label: string };

/** The record is named by a sentence of ours; the others have names that people gave. */
export const namedWords = (by: readonly string[], voice: Voice): string =>
  phrase(voice, 'Named by {by}. It stays while they do.', {
    by: by.map((each) => (each === RECORD ? phrase(voice, RECORD) : each)).join('; '),
  });

export const IdRow = ({ list, id, label }: IdProps) => {
  const tell = useTell();
  const { naming, house } = useDesk();
  const by = naming?.namedBy(list, id) ?? [];
  const { text, type, missing, refusals, row } = useRow({
    shown: id,
    before: id,
    toWrite: (draft) =>
      draft.trim() === '' ? { missing: tell('the {label}', { label }) } : { json: draft.trim() },
    put: (json) => naming?.rename(list, id, String(json)) ?? [],
  });
  return (
    <RowFrame
      label={label}
      about={
        by.length === 0
          ? tell('As cards and cues name it. It may change until a show or the record names it.')
          : namedWords(by, house)
      }
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <input
        id={fieldId([list, id, 'id'])}
        aria-label={tell('Value of {label}', { label })}
        aria-invalid={refusals.length > 0}
        className="entry-value"
        value={text}
        readOnly={by.length > 0}
        autoComplete="off"
        spellCheck={false}
        onChange={({ target }) => type(target.value)}
      />
    </RowFrame>
  );
};
