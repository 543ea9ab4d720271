/** What holds the set besides its lock: that nothing does is known, that nobody looked is not. */
import { DeskContext } from '../house-entry/desk.ts';
import { ListEntries } from '../house-entry/list-entries.tsx';
import { at } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { recordList, useRecordDesk } from './record-desk.ts';
import { useRecord, useWho } from './use-record.ts';

export const Restraints = ({ id }: { readonly id: string }) => {
  const tell = useTell();
  const record = useRecord();
  const { by } = useWho();
  const desk = useRecordDesk(record, by.trim());
  if (desk === null || by.trim() === '') return null;
  const path = ['sets', id, 'restraints'];
  const value = at(desk.root, path);
  const isThere = at(desk.root, ['sets', id]) !== undefined;
  if (!isThere) return null;
  return (
    <DeskContext value={desk}>
      <details className="found-more">
        <summary>
          {tell('What holds it besides its rope lock: {count}', {
            count:
              value === undefined
                ? tell('nobody has looked')
                : Array.isArray(value)
                  ? value.length
                  : '',
          })}
        </summary>
        <p className="buttons">
          <button
            type="button"
            aria-pressed={Array.isArray(value) && value.length === 0}
            onClick={() => desk.put(path, [], 'nothing else holds it')}
          >
            {tell('Nothing else holds it')}
          </button>
          <button
            type="button"
            aria-pressed={value === undefined}
            onClick={() => desk.put(path, undefined, 'restraints unknown')}
          >
            {tell('Nobody has looked')}
          </button>
        </p>
        <ListEntries
          form={recordList('sets', 'restraints')}
          path={path}
          place="restraints"
          about={tell('Each with its rating, and the batten heights between which it holds.')}
        />
      </details>
    </DeskContext>
  );
};
