/** What hangs on one set, item by item, typed in like a sheet. */

import { memo } from 'react';
import type { Basis, House } from '#house';
import { sayMeasure } from '#sheets';
import { ITEM_KINDS, type ItemKind } from '#show';
import type { ItemTakeoff } from '#takeoff';
import type { Voice } from '#texts';
import { TYPED, withField, withItem, withoutItem, withWholeMass } from '../editing/show-edits.ts';
import { ChoiceCell } from '../grid/choice-cell.tsx';
import { EditCell } from '../grid/edit-cell.tsx';
import { at, isList, isObject, type JsonObject, type JsonPath } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing } from '../reckoning/use-work.ts';
import { kindWords } from './item-words.ts';
import { isByMass, type TakeoffField, takeoffFields } from './takeoff-fields.ts';
import { BasisCell, CountCell, type Figure, FigureCell, ToleranceCell } from './value-cells.tsx';

type ItemsProps = {
  readonly each: SetReckoning;
  readonly house: House;
  /** Basis that the whole document gives to bare values. */
  readonly given: Basis | null;
};

const kindOptions = (voice: Voice) =>
  ITEM_KINDS.map((value) => ({ value, words: kindWords(value, voice) }));

const basisGiven = (root: JsonObject, path: JsonPath, above: Basis | null): Basis | null =>
  path.reduce<Basis | null>((found, _, depth) => {
    const own = at(root, [...path.slice(0, depth), 'given', 'basis']);
    return typeof own === 'string' ? (own as Basis) : found;
  }, above);

type RowParts = {
  readonly set: string;
  readonly index: number;
  readonly item: JsonObject;
  readonly house: House;
  readonly given: Basis | null;
};

const figureAt = (
  { set, index, item, given }: RowParts,
  path: JsonPath,
  name: string,
  dimension: Figure['dimension'],
): Figure => ({
  set,
  path: ['items', index, ...path],
  name,
  written: at(item, path),
  givenBasis: basisGiven(item, path, given),
  dimension,
});

const massSaid = (value: number, house: House, round: 'up' | 'nearest'): string =>
  sayMeasure({ value, kind: 'mass' }, house, { round, style: 'fine' });

const Mass = ({ parts, takeoff }: { parts: RowParts; takeoff: ItemTakeoff | undefined }) => {
  const tell = useTell();
  const editing = useEditing();
  const { item, house, set, index } = parts;
  const name = String(item['name']);
  if (isByMass(item)) {
    const figure = figureAt(parts, ['takeoff', 'mass'], tell('mass of {name}', { name }), 'mass');
    return (
      <>
        <FigureCell figure={figure} house={house} />
        <ToleranceCell figure={figure} house={house} />
        <BasisCell figure={figure} house={house} />
      </>
    );
  }
  const total = takeoff?.total;
  return (
    <>
      <EditCell
        name={tell('mass of {name} as a whole, set {set}', { name, set })}
        text=""
        className="number"
        measure={{ dimension: 'mass', units: house.units }}
        take={(typed) =>
          typed.trim() === ''
            ? []
            : editing.change({
                write: (show) => withWholeMass(show, set, index, typed),
                what: `mass of ${name} on set ${set} as a whole: ${typed}`,
              })
        }
      >
        {total?.known ? (
          massSaid(total.value.massKg, house, 'nearest')
        ) : (
          <span className="unknown">{tell('unknown')}</span>
        )}
      </EditCell>
      <td className="number">
        {total?.known && total.value.uncertaintyKg !== null
          ? `± ${massSaid(total.value.uncertaintyKg, house, 'up')}`
          : tell('not given')}
      </td>
      <td>{tell('worked out below')}</td>
    </>
  );
};

type ItemProps = RowParts & { readonly takeoff: ItemTakeoff | undefined };

/** Drawn again only where its own item changed: one with a mass of its own needs no take-off. */
const ItemRow = memo(({ takeoff, ...parts }: ItemProps) => {
  const tell = useTell();
  const voice = useVoice();
  const editing = useEditing();
  const { set, index, item, house } = parts;
  const name = String(item['name']);
  const set1 = (path: JsonPath, what: string) => (typed: string) =>
    editing.change({
      write: (show) => withField(show, set, ['items', index, ...path], typed),
      what: `${what} of ${name} on set ${set}: ${typed}`,
    });
  return (
    <tr data-row="">
      <EditCell
        name={tell('name of item, set {set}', { set })}
        text={name}
        take={set1(['name'], 'name')}
        isHead
      >
        {name}
      </EditCell>
      <ChoiceCell
        name={tell('what {name} does as it flies', { name })}
        chosen={String(item['kind'])}
        options={kindOptions(voice)}
        take={set1(['kind'], 'kind')}
      >
        {kindWords(item['kind'] as ItemKind, voice)}
      </ChoiceCell>
      <Mass parts={parts} takeoff={takeoff} />
      <FigureCell
        figure={figureAt(parts, ['drop'], tell('height of {name}', { name }), 'length')}
        house={house}
      />
      <FigureCell
        figure={figureAt(parts, ['pick'], tell('pick of {name}', { name }), 'length')}
        house={house}
      />
      <td className="action">
        <button
          type="button"
          className="as-words"
          data-cell=""
          tabIndex={-1}
          onClick={() =>
            editing.change({
              write: (show) => withoutItem(show, set, index),
              what: `${name} taken off set ${set}`,
            })
          }
        >
          {tell('Take off')}
          <span className="only-said"> {name}</span>
        </button>
      </td>
    </tr>
  );
});
ItemRow.displayName = 'ItemRow';

const PartRow = ({ parts, field }: { parts: RowParts; field: TakeoffField }) => {
  const { house } = parts;
  const figure = figureAt(parts, field.path, field.words, field.dimension);
  return (
    <tr data-row="" className="part">
      <th scope="row" colSpan={2}>
        {field.words}
      </th>
      {field.isCount ? (
        <>
          <CountCell figure={figure} house={house} />
          <td colSpan={2} />
        </>
      ) : (
        <>
          <FigureCell figure={figure} house={house} />
          <ToleranceCell figure={figure} house={house} />
          <BasisCell figure={figure} house={house} />
        </>
      )}
      <td colSpan={3} />
    </tr>
  );
};

/** The parts of one item, drawn again only where it changed. */
const PartRows = memo((parts: RowParts) => {
  const voice = useVoice();
  return takeoffFields(parts.item, voice).map((field) => (
    <PartRow key={field.path.join('.')} parts={parts} field={field} />
  ));
});
PartRows.displayName = 'PartRows';

/** A new item is there with its name; its mass is unknown until somebody types one. */
const AddItem = ({ set }: { readonly set: string }) => {
  const tell = useTell();
  const editing = useEditing();
  return (
    <tr data-row="" className="add">
      <EditCell
        name={tell('name of a new item on set {set}', { set })}
        text=""
        take={(typed) =>
          typed.trim() === ''
            ? []
            : editing.change({
                write: (show) => withItem(show, set, { name: typed, kind: 'clear' }),
                what: `${typed} added to set ${set}`,
              })
        }
      >
        <span className="prompt">{tell('type a new item here')}</span>
      </EditCell>
      <td colSpan={7} />
    </tr>
  );
};

const ItemHeads = () => {
  const tell = useTell();
  return (
    <thead>
      <tr>
        <th scope="col">{tell('item')}</th>
        <th scope="col">{tell('as it flies')}</th>
        <th scope="col" className="number">
          {tell('mass')}
        </th>
        <th scope="col" className="number">
          {tell('tolerance')}
        </th>
        <th scope="col">{tell('basis')}</th>
        <th scope="col" className="number">
          {tell('height')}
        </th>
        <th scope="col" className="number">
          {tell('pick')}
        </th>
        <th scope="col">
          <span className="only-said">{tell('take off')}</span>
        </th>
      </tr>
    </thead>
  );
};

export const ItemsTable = ({ each, house, given }: ItemsProps) => {
  const tell = useTell();
  const items = isList(each.written?.['items']) ? each.written['items'] : [];
  const hangGiven = at(each.written ?? undefined, ['given', 'basis']);
  const basis = typeof hangGiven === 'string' ? (hangGiven as Basis) : given;
  return (
    <div className="wide">
      <table className="items">
        <caption className="only-said">
          {tell(
            'What hangs on set {id}. New figures count as estimated ({TYPED}) until a ' +
              'basis is chosen.',
            { id: each.id, TYPED },
          )}
        </caption>
        <ItemHeads />
        <tbody>
          {items.filter(isObject).map((item, index) => {
            const parts: RowParts = { set: each.id, index, item, house, given: basis };
            return [
              <ItemRow
                key={`item ${String(item['id'])}`}
                {...parts}
                takeoff={isByMass(item) ? undefined : each.set.takeoffs[index]}
              />,
              <PartRows key={`parts ${String(item['id'])}`} {...parts} />,
            ];
          })}
          <AddItem set={each.id} />
        </tbody>
      </table>
    </div>
  );
};
