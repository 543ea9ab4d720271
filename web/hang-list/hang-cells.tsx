/** The cells of a row that are typed into. */
import { tradeWord } from '#drawings';
import type { House } from '#house';
import { HANG_FAMILIES } from '#show';
import { withField, withHang, withLength } from '../editing/show-edits.ts';
import { type PlacedTrim, twoTrims, withTrims } from '../editing/trims.ts';
import { writtenText } from '../editing/written.ts';
import { ChoiceCell } from '../grid/choice-cell.tsx';
import { EditCell } from '../grid/edit-cell.tsx';
import { at } from '../keeping/json.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing } from '../reckoning/use-work.ts';
import { familyWords, lengthWords } from './row-words.ts';
import { blockedWords } from './standing-words.ts';

type CellProps = { readonly each: SetReckoning };

/** What keeps a set from being flown by hand as the others are. */
const Blocked = ({ each, house }: CellProps & { readonly house: House }) => {
  const words = blockedWords(each, house);
  return words.length === 0 ? null : <small className="blocked"> {words.join('; ')}</small>;
};

export const NameCell = ({ each, house }: CellProps & { readonly house: House }) => {
  const editing = useEditing();
  const name = each.set.hang?.name ?? '';
  return (
    <EditCell
      name={`what hangs on set ${each.id}`}
      text={name}
      className="name"
      column="item"
      take={(typed) =>
        editing.change({
          write: (show) => withField(show, each.id, ['name'], typed),
          what: `name of set ${each.id}: ${typed}`,
        })
      }
    >
      {name}
      <Blocked each={each} house={house} />
    </EditCell>
  );
};

type NewNameProps = CellProps & { readonly house: House; readonly railOrder: readonly string[] };

/** On an empty set a name hangs something there. */
export const NewNameCell = ({ each, house, railOrder }: NewNameProps) => {
  const editing = useEditing();
  return (
    <EditCell
      name={`name of what to hang on set ${each.id}`}
      text=""
      className="name"
      column="item"
      take={(typed) =>
        typed.trim() === ''
          ? []
          : editing.change({
              write: (show) =>
                withHang(show, { set: each.id, name: typed, family: 'other', railOrder }),
              what: `${typed} hung on set ${each.id}`,
            })
      }
    >
      empty{each.keptEmpty === null ? '' : `, ${each.keptEmpty}`}
      <Blocked each={each} house={house} />
    </EditCell>
  );
};

export const FamilyCell = ({ each }: CellProps) => {
  const editing = useEditing();
  const family = each.set.hang?.family ?? 'other';
  return (
    <ChoiceCell
      name={`kind of what hangs on set ${each.id}`}
      chosen={family}
      column="kind"
      options={HANG_FAMILIES.map((value) => ({ value, words: familyWords(value) }))}
      take={(value) =>
        editing.change({
          write: (show) => withField(show, each.id, ['family'], value),
          what: `kind of set ${each.id}: ${value}`,
        })
      }
    >
      {familyWords(family)}
    </ChoiceCell>
  );
};

type TrimCellProps = CellProps & {
  readonly house: House;
  readonly placed: PlacedTrim | null;
  readonly which: 'in' | 'out';
};

const NO_TRIMS = { low: null, high: null };

export const TrimCell = ({ each, house, placed, which }: TrimCellProps) => {
  const editing = useEditing();
  const word = tradeWord(house, 'trim');
  const written =
    placed === null ? undefined : at(each.written ?? undefined, ['trims', placed.index, 'height']);
  const isOnly = which === 'in' && placed !== null && each.set.hang?.trims.length === 1;
  return (
    <EditCell
      name={`${placed?.trim.name ?? which} ${word} of set ${each.id}`}
      text={writtenText(written)}
      className="number"
      column={which}
      measure={{ dimension: 'length', units: house.units }}
      take={(text) =>
        editing.change({
          write: (show) =>
            withTrims(
              show,
              each.id,
              { [which]: text },
              each.set.hang === null ? NO_TRIMS : twoTrims(each.set.hang),
            ),
          what: `${placed?.trim.name ?? which} ${word} of set ${each.id}: ${text || 'none'}`,
        })
      }
    >
      {placed === null ? (
        <span className="quiet">–</span>
      ) : (
        <>
          {lengthWords(placed.trim.height, house) ?? <span className="unknown">unknown</span>}
          {isOnly || placed.trim.name === which ? null : <small> {placed.trim.name}</small>}
        </>
      )}
    </EditCell>
  );
};

export const DepthCell = ({ each, house }: CellProps & { readonly house: House }) => {
  const editing = useEditing();
  const depth = each.set.hang?.halfDepth;
  return (
    <EditCell
      name={`depth each way of set ${each.id}`}
      text={writtenText(at(each.written ?? undefined, ['halfDepth']))}
      className="number"
      column="depth"
      measure={{ dimension: 'length', units: house.units }}
      take={(text) =>
        editing.change({
          write: (show) => withLength(show, each.id, ['halfDepth'], text),
          what: `depth of set ${each.id}: ${text}`,
        })
      }
    >
      {(depth && lengthWords(depth, house, true)) ?? <span className="unknown">unknown</span>}
    </EditCell>
  );
};
