/** A set like this one, under another number at another place. A lock test is not copied. */
import { useId, useState } from 'react';
import type { Refusal } from '#outcome';
import { withEntry } from '../editing/house-edits.ts';
import { hasGiven, lengthAnew } from '../editing/show-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { JsonObject } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { markOf, useDesk } from './desk.ts';
import type { HouseEntry } from './entry-list.tsx';
import { useHouseEditing } from './house-desk.ts';
import { exampleIn, readFigure } from './typed-figures.ts';

type CopyProps = { readonly set: HouseEntry };

const copied = (root: JsonObject, set: HouseEntry, id: string, place: string): JsonObject => {
  const { id: _other, y, lock: _ofOneSet, ...own } = set.written;
  const isBare = hasGiven(root, ['lineSets', set.key, 'y']);
  return { id, ...own, ...(place.trim() === '' ? {} : { y: lengthAnew(y, place, isBare) }) };
};

export const CopySet = ({ set }: CopyProps) => {
  const tell = useTell();
  const desk = useDesk();
  const { root, change } = useHouseEditing();
  const id = useId();
  const [typed, setTyped] = useState({ id: '', place: '' });
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const copy = (): void => {
    const place = readFigure('length', typed.place, markOf(desk), 'y');
    if (!place.ok) {
      setRefusals([place.error]);
      return;
    }
    const refused = change({
      write: (house) =>
        withEntry(house, ['lineSets'], copied(root, set, typed.id.trim(), place.value)),
      what: `set ${typed.id.trim()} copied from set ${set.id}`,
    });
    setRefusals(refused);
    if (refused.length === 0) setTyped({ id: '', place: '' });
  };
  return (
    <div className="entry-add-sets">
      <div className="entry-add-fields">
        <div>
          <label htmlFor={`${id}-id`}>{tell('Copy set {id} as number', { id: set.id })}</label>
          <input
            className="entry-add-field"
            id={`${id}-id`}
            value={typed.id}
            autoComplete="off"
            onChange={({ target }) => setTyped({ ...typed, id: target.value })}
          />
        </div>
        <div>
          <label htmlFor={`${id}-place`}>{tell('at the place')}</label>
          <input
            className="entry-add-field wide-add"
            id={`${id}-place`}
            value={typed.place}
            placeholder={tell('such as {example}; or unknown', {
              example: exampleIn('length', desk.house),
            })}
            autoComplete="off"
            onChange={({ target }) => setTyped({ ...typed, place: target.value })}
          />
        </div>
        <button type="button" disabled={typed.id.trim() === ''} onClick={copy}>
          {tell('Copy the set')}
        </button>
      </div>
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('the set was not copied')} isNews>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
    </div>
  );
};
