import type { ReactNode } from 'react';
import type { Refusal } from '#outcome';
import { cellOf } from './cell-of.ts';
import { focusFirst, useCell } from './use-cell.ts';

export type Option = { readonly value: string; readonly words: string };

type ChoiceCellProps = {
  readonly name: string;
  readonly children: ReactNode;
  readonly chosen: string;
  readonly options: readonly Option[];
  readonly take: (value: string) => readonly Refusal[];
  readonly className?: string;
  /** Name of its column, where cells are chosen several at a time. */
  readonly column?: string;
};

/** A cell whose text is one of a few words. */
export const ChoiceCell = ({
  name,
  children,
  chosen,
  options,
  take,
  className = '',
  column,
}: ChoiceCellProps) => {
  const { ref, edit, begin, end, commit, pressIdle, pressEditing } = useCell({
    text: chosen,
    take,
  });
  return (
    <td
      ref={ref}
      data-cell=""
      {...cellOf(column)}
      tabIndex={-1}
      className={`can-edit ${className}${edit.draft === null ? '' : ' editing'}`}
      onKeyDown={pressIdle}
      onClick={() => {
        if (edit.draft === null) begin(chosen);
      }}
    >
      {children}
      {edit.draft === null ? null : (
        <select
          aria-label={name}
          value={chosen}
          ref={focusFirst}
          onChange={({ target }) => commit(target.value, 'stay')}
          onKeyDown={pressEditing}
          onBlur={() => end(null)}
        >
          {options.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      )}
    </td>
  );
};
