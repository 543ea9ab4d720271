import type { Basis, House } from '#house';
import { withoutHang } from '../editing/show-edits.ts';
import { ItemsTable } from '../items/items-table.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing } from '../reckoning/use-work.ts';
import { GRID, overRows } from './grid-layout.ts';

type OpenedProps = {
  readonly each: SetReckoning;
  readonly house: House;
  readonly given: Basis | null;
  readonly columns: number;
  readonly over: number;
};

/** The items of a set, beneath its row and in the flow. */
export const OpenedRow = ({ each, house, given, columns, over }: OpenedProps) => {
  const tell = useTell();
  const editing = useEditing();
  const name = each.set.hang?.name ?? '';
  return (
    <tr {...GRID.row} className="opened" style={overRows(over)}>
      <td {...GRID.cell} colSpan={columns}>
        <ItemsTable each={each} house={house} given={given} />
        <p className="buttons">
          <button
            type="button"
            onClick={() =>
              editing.change({
                write: (show) => withoutHang(show, each.id),
                what: `${name} taken off the plan of set ${each.id}`,
              })
            }
          >
            {tell('Leave set {id} empty in this show', { id: each.id })}
          </button>
          <span className="quiet">
            {tell(
              'This changes the plan, not what hangs there: the wall shows the record. ' +
                'Undo brings it back.',
            )}
          </span>
        </p>
      </td>
    </tr>
  );
};
