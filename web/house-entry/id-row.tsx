/** The id of an entry: it may change until a show or the record names it, and says what does. */
import { useDesk } from './desk.ts';
import { fieldId } from './entry-path.ts';
import { RowFrame } from './row-frame.tsx';
import { useRow } from './use-row.ts';

type IdProps = { readonly list: string; readonly id: string; readonly label: string };

export const namedWords = (by: readonly string[]): string => `Named by ${by.join('; ')}.`;

export const IdRow = ({ list, id, label }: IdProps) => {
  const { naming } = useDesk();
  const by = naming?.namedBy(list, id) ?? [];
  const { text, type, missing, refusals, row } = useRow({
    shown: id,
    before: id,
    toWrite: (draft) =>
      draft.trim() === '' ? { missing: `the ${label}` } : { json: draft.trim() },
    put: (json) => naming?.rename(list, id, String(json)) ?? [],
  });
  return (
    <RowFrame
      label={label}
      about={
        by.length === 0
          ? 'As cards and cues name it. It may change until a show or the record names it.'
          : `${namedWords(by)} It stays while they do.`
      }
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <input
        id={fieldId([list, id, 'id'])}
        aria-label={`Value of ${label}`}
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
