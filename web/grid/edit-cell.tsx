import { type ReactNode, useId } from 'react';
import type { Refusal } from '#outcome';
import { type Dimension, decimalMarkOf, type UnitSystem } from '#quantities';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { cellOf } from './cell-of.ts';
import { Echo } from './echo.tsx';
import { readTyped, shownText } from './typed-marks.ts';
import { type Cell, type CellParts, focusFirst, useCell } from './use-cell.ts';

type Typed = {
  /** What is typed here, for those who do not see the column: "in trim of set 5". */
  readonly name: string;
  readonly measure?: { readonly dimension: Dimension; readonly units: UnitSystem };
};

type EditCellProps = CellParts &
  Typed & {
    /** As it reads. */
    readonly children: ReactNode;
    readonly className?: string;
    readonly isHead?: boolean;
    /** Name of its column, where cells are chosen several at a time. */
    readonly column?: string;
  };

/** A cell of a sheet: select, type, Enter. What is not understood stays, with what is accepted. */
export const EditCell = ({
  text: written,
  take: takeWritten,
  children,
  className = '',
  isHead = false,
  column,
  ...typed
}: EditCellProps) => {
  const { measure } = typed;
  const voice = useVoice();
  const mark = decimalMarkOf({ units: 'metric', ...voice });
  const text = measure === undefined ? written : shownText(written, mark);
  const take = (draft: string): readonly Refusal[] => {
    if (measure === undefined) return takeWritten(draft);
    const read = readTyped(measure.dimension, draft, mark);
    return read.ok ? takeWritten(read.value) : [{ ...read.error, path: '' }];
  };
  const cell = useCell({ text, take });
  const { ref, edit, begin, pressIdle } = cell;
  const Tag = isHead ? 'th' : 'td';
  return (
    <Tag
      ref={ref}
      scope={isHead ? 'row' : undefined}
      data-cell=""
      {...cellOf(column)}
      tabIndex={-1}
      className={`can-edit ${className}${edit.draft === null ? '' : ' editing'}`}
      onKeyDown={pressIdle}
      onClick={({ nativeEvent }) => {
        const isTouch = nativeEvent instanceof PointerEvent && nativeEvent.pointerType === 'touch';
        const wasHere = ref.current?.dataset['chosen'] === '';
        if (edit.draft === null && (isTouch || wasHere)) begin(text);
        if (ref.current !== null) ref.current.dataset['chosen'] = '';
      }}
      onBlur={({ relatedTarget }) => {
        if (!ref.current?.contains(relatedTarget)) delete ref.current?.dataset['chosen'];
      }}
    >
      {children}
      {edit.draft === null ? null : <Field cell={cell} text={text} {...typed} />}
    </Tag>
  );
};

type FieldProps = Typed & { readonly cell: Cell; readonly text: string };

/** While it is typed into: the text, and beneath it what it means or why it was not taken. */
const Field = ({ cell, text, name, measure }: FieldProps) => {
  const tell = useTell();
  const { edit, begin, commit, pressEditing } = cell;
  const noteId = useId();
  const draft = edit.draft ?? '';
  const isRefused = edit.refusals.length > 0;
  return (
    <span className="edit">
      <input
        aria-label={name}
        aria-invalid={isRefused}
        aria-describedby={noteId}
        value={draft}
        ref={focusFirst}
        onFocus={({ target }) => {
          if (target.value === text) target.select();
        }}
        onChange={({ target }) => begin(target.value)}
        onKeyDown={pressEditing}
        onBlur={({ target }) => commit(target.value, null)}
        autoComplete="off"
        spellCheck={false}
      />
      <span className="edit-note" id={noteId}>
        {isRefused ? (
          <Notice degree="caution" title={tell('not taken, nothing changed')} isNews>
            <Refusals refusals={edit.refusals} />
            <p>{tell('Escape leaves it as it was.')}</p>
          </Notice>
        ) : measure === undefined ? null : (
          <Echo text={draft} {...measure} />
        )}
      </span>
    </span>
  );
};
