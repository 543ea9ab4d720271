/** The heights that the show gives a set, corrected to the marks found on its hand line. */
import { decimalMarkOf } from '#quantities';
import { withLength } from '../editing/show-edits.ts';
import { writtenText } from '../editing/written.ts';
import { Echo } from '../grid/echo.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { RowFrame } from '../house-entry/row-frame.tsx';
import { readFigure } from '../house-entry/typed-figures.ts';
import { useRow } from '../house-entry/use-row.ts';
import { at, isList } from '../keeping/json.ts';
import { useTell, useTellCount } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';

export const HeightNotes = ({ each }: { readonly each: SetReckoning }) => {
  const tellCount = useTellCount();
  const { show } = useWork();
  const trims = each.set.hang?.trims ?? [];
  if (trims.length === 0) return null;
  return (
    <details className="found-more">
      <summary>
        {tellCount(
          trims.length,
          [
            'Heights by the marks, {count} trims of {show}',
            'Heights by the marks, {count} trims of {show}',
          ],
          { show: show.name },
        )}
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
  const tell = useTell();
  const { house } = useWork();
  const mark = decimalMarkOf(house);
  const editing = useEditing();
  const trims = at(each.written ?? undefined, ['trims']);
  const before = isList(trims) ? at(trims, [index, 'height']) : undefined;
  const { text, type, missing, refusals, row } = useRow({
    shown: shownText(writtenText(before), mark),
    before: writtenText(before),
    toWrite: (draft) => {
      const read = readFigure('length', draft, mark, `${each.id}.${name}`);
      return read.ok ? { json: read.value.trim() } : { refusals: [read.error] };
    },
    put: (json) =>
      editing.change({
        write: (show) => withLength(show, each.id, ['trims', index, 'height'], String(json ?? '')),
        what: `${name} of set ${each.id}, by its mark`,
      }),
  });
  return (
    <RowFrame
      label={tell('trim: {name}', { name })}
      about={tell('As the mark on the line says, measured to where the show measures it.')}
      missing={missing}
      refusals={refusals}
      row={row}
    >
      <input
        aria-label={tell('Height of {name}', { name })}
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
