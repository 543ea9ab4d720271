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
import { useTell, useVoice } from '../language/use-tell.ts';
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

type NameProps = CellProps & { readonly house: House; readonly railOrder: readonly string[] };

/** What hangs there by its name. On an empty set a name hangs something. */
const useNaming = ({ each, railOrder }: NameProps) => {
  const { change } = useEditing();
  const { id } = each;
  if (each.set.hang !== null) {
    return (typed: string) =>
      change({
        write: (show) => withField(show, id, ['name'], typed),
        what: `name of set ${id}: ${typed}`,
      });
  }
  return (typed: string) =>
    typed.trim() === ''
      ? []
      : change({
          write: (show) => withHang(show, { set: id, name: typed, family: 'other', railOrder }),
          what: `${typed} hung on set ${id}`,
        });
};

/** One cell for both, so that the keys stay in it when an empty set is named. */
export const NameCell = (props: NameProps) => {
  const { each, house } = props;
  const tell = useTell();
  const take = useNaming(props);
  const { id, keptEmpty } = each;
  const name = each.set.hang?.name ?? null;
  return (
    <EditCell
      name={
        name === null
          ? tell('name of what to hang on set {id}', { id })
          : tell('what hangs on set {id}', { id })
      }
      text={name ?? ''}
      className="name"
      column="item"
      take={take}
    >
      {name ?? tell('empty')}
      {name !== null || keptEmpty === null ? '' : `, ${keptEmpty}`}
      <Blocked each={each} house={house} />
    </EditCell>
  );
};

export const FamilyCell = ({ each }: CellProps) => {
  const voice = useVoice();
  const tell = useTell();
  const editing = useEditing();
  const family = each.set.hang?.family ?? 'other';
  return (
    <ChoiceCell
      name={tell('kind of what hangs on set {id}', { id: each.id })}
      chosen={family}
      column="kind"
      options={HANG_FAMILIES.map((value) => ({ value, words: familyWords(value, voice) }))}
      take={(value) =>
        editing.change({
          write: (show) => withField(show, each.id, ['family'], value),
          what: `kind of set ${each.id}: ${value}`,
        })
      }
    >
      {familyWords(family, voice)}
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
  const tell = useTell();
  const editing = useEditing();
  const word = tradeWord(house, 'trim');
  const written =
    placed === null ? undefined : at(each.written ?? undefined, ['trims', placed.index, 'height']);
  const isOnly = which === 'in' && placed !== null && each.set.hang?.trims.length === 1;
  return (
    <EditCell
      name={tell('{name} {word} of set {id}', {
        name: placed?.trim.name ?? which,
        word,
        id: each.id,
      })}
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
          {lengthWords(placed.trim.height, house) ?? (
            <span className="unknown">{tell('unknown')}</span>
          )}
          {isOnly || placed.trim.name === which ? null : <small> {placed.trim.name}</small>}
        </>
      )}
    </EditCell>
  );
};

export const DepthCell = ({ each, house }: CellProps & { readonly house: House }) => {
  const tell = useTell();
  const editing = useEditing();
  const depth = each.set.hang?.halfDepth;
  return (
    <EditCell
      name={tell('depth each way of set {id}', { id: each.id })}
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
      {(depth && lengthWords(depth, house, true)) ?? (
        <span className="unknown">{tell('unknown')}</span>
      )}
    </EditCell>
  );
};
