/** The heights that the show gives a set, corrected to the marks found on its hand line. */
import { tradeWord } from '#drawings';
import { withLength } from '../editing/show-edits.ts';
import { writtenText } from '../editing/written.ts';
import { Echo } from '../grid/echo.tsx';
import { RowFrame } from '../house-entry/row-frame.tsx';
import { useRow } from '../house-entry/use-row.ts';
import { at, isList } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';

export const HeightNotes = ({ each }: { readonly each: SetReckoning }) => {
  const { house, show } = useWork();
  const trims = each.set.hang?.trims ?? [];
  if (trims.length === 0) return null;
  return (
    <details className="found-more">
      <summary>
        Heights by the marks, {trims.length} {tradeWord(house, 'trim')}s of {show.name}
      </summary>
      {trims.map(({ name }, index) => (
        <TrimRow key={name} each={each} name={name} index={index} />
      ))}
    </details>
  );
};

type TrimProps = {
  readonly each: SetReckoning;
  readonly name: string;
  readonly index: number;
};

const TrimRow = ({ each, name, index }: TrimProps) => {
  const { house } = useWork();
  const editing = useEditing();
  const trims = at(each.written ?? undefined, ['trims']);
  const before = isList(trims) ? at(trims, [index, 'height']) : undefined;
  const { text, type, missing, refusals, row } = useRow({
    shown: writtenText(before),
    before: writtenText(before),
    toWrite: (draft) => ({ json: draft.trim() }),
    put: (json) =>
      editing.change({
        write: (show) => withLength(show, each.id, ['trims', index, 'height'], String(json ?? '')),
        what: `${name} of set ${each.id}, by its mark`,
      }),
  });
  return (
    <RowFrame
      label={`${tradeWord(house, 'trim')}: ${name}`}
      about="As the mark on the line says, measured to where the show measures it."
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <input
        aria-label={`Height of ${name}`}
        className="entry-value"
        value={text}
        autoComplete="off"
        onChange={({ target }) => type(target.value)}
      />
      <span className="entry-echo">
        <Echo text={text} dimension="length" units={house.units} />
      </span>
    </RowFrame>
  );
};
