/** Everything of a hang that a what-if may change; the edits go into the question, not the plan. */

import { tradeWord } from '#drawings';
import type { Basis } from '#house';
import { decimalMarkOf } from '#quantities';
import { message } from '#texts';
import { withField, withLength } from '../editing/show-edits.ts';
import { writtenText } from '../editing/written.ts';
import { EditCell } from '../grid/edit-cell.tsx';
import { GridArea } from '../grid/grid-area.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { ItemsTable } from '../items/items-table.tsx';
import { at, isList, isObject } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';
import { BricksChoice } from '../set/bricks-choice.tsx';
import { placesFrom, placesText, readPlaces, shownPlaces } from './places-text.ts';

type Props = { readonly each: SetReckoning };

export const ChangeHere = ({ each }: Props) => {
  const tell = useTell();
  const { house, documents } = useWork();
  const given = at(documents.show, ['given', 'basis']);
  return (
    <section className="change-here" aria-labelledby="change-here">
      <h3 id="change-here">{tell('Change it here')}</h3>
      <GridArea>
        <ItemsTable
          each={each}
          house={house}
          given={typeof given === 'string' ? (given as Basis) : null}
        />
      </GridArea>
      <div className="change-columns">
        <Heights each={each} />
        <PlacesOf each={each} />
        <BricksChoice each={each} />
      </div>
    </section>
  );
};

const REFERENCES: Readonly<Record<string, string>> = {
  batten: '',
  lowestPoint: message(' (lowest point)'),
  lens: message(' (lens)'),
};

const Heights = ({ each }: Props) => {
  const tell = useTell();
  const editing = useEditing();
  const { house } = useWork();
  const trims = each.written?.['trims'];
  const written = (isList(trims) ? trims : []).filter(isObject);
  const word = tradeWord(house, 'trim');
  return (
    <GridArea>
      <table className="plain change-table">
        <caption>{tell('Heights')}</caption>
        <thead>
          <tr>
            <th scope="col">{word}</th>
            <th scope="col" className="number">
              {tell('height')}
            </th>
          </tr>
        </thead>
        <tbody>
          {written.map((trim, index) => {
            const name = String(trim['name']);
            const text = writtenText(trim['height']);
            return (
              <tr key={name} data-row="">
                <th scope="row">
                  {name}
                  {tell(REFERENCES[String(trim['reference'])] ?? '')}
                </th>
                <EditCell
                  name={tell('height of {word} {name}, set {id}', { word, name, id: each.id })}
                  text={text}
                  className="number"
                  measure={{ dimension: 'length', units: house.units }}
                  take={(typed) =>
                    editing.change({
                      write: (show) => withLength(show, each.id, ['trims', index, 'height'], typed),
                      what: `${word} ${name} of set ${each.id}: ${typed}`,
                    })
                  }
                >
                  {text === '' ? (
                    <span className="unknown">{tell('unknown')}</span>
                  ) : (
                    shownText(text, decimalMarkOf(house))
                  )}
                </EditCell>
              </tr>
            );
          })}
        </tbody>
      </table>
    </GridArea>
  );
};

const PlacesOf = ({ each }: Props) => {
  const tell = useTell();
  const editing = useEditing();
  const { house } = useWork();
  const items = each.written?.['items'];
  const written = (isList(items) ? items : []).filter(isObject);
  return (
    <GridArea>
      <table className="plain change-table">
        <caption>{tell('Places along the batten')}</caption>
        <thead>
          <tr>
            <th scope="col">{tell('item')}</th>
            <th scope="col">{tell('from the centre, minus is stage right')}</th>
          </tr>
        </thead>
        <tbody>
          {written.map((item, index) => {
            const name = String(item['name']);
            const text = shownPlaces(placesText(item['placement']), house);
            return (
              <tr key={String(item['id'])} data-row="">
                <th scope="row">{name}</th>
                <EditCell
                  name={tell('place of {name}, set {id}: points, or one end to the other', {
                    name,
                    id: each.id,
                  })}
                  text={text}
                  take={(typed) => {
                    const read = readPlaces(typed, house);
                    if (!read.ok) return [{ ...read.error, path: '' }];
                    const places = placesFrom(read.value);
                    return editing.change({
                      write: (show) =>
                        withField(show, each.id, ['items', index, 'placement'], places),
                      what: `place of ${name} on set ${each.id}: ${read.value}`,
                    });
                  }}
                >
                  {text === '' ? <span className="unknown">{tell('not given')}</span> : text}
                </EditCell>
              </tr>
            );
          })}
        </tbody>
      </table>
    </GridArea>
  );
};
