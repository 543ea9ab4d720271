/** The desk of the record, for what it holds as lists: restraints, and bricks kept for somebody. */
import { useMemo } from 'react';
import { schemaOf } from '#documents';
import type { Looked } from '../editing/state-edits.ts';
import type { Desk } from '../house-entry/desk.ts';
import { FieldsView } from '../house-entry/field-view.tsx';
import { type Form, formOf } from '../house-entry/form.ts';
import type { Json, JsonObject } from '../keeping/json.ts';
import { at, type JsonPath, withAt } from '../keeping/json.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { HouseRecord } from './use-record.ts';

type ListForm = Extract<Form, { readonly kind: 'list' }>;

/** `sets` and `restraints`, `galleries` and `reserved`: the form of a list in each entry. */
export const recordList = (of: 'sets' | 'galleries', list: string): ListForm => {
  const path = ['properties', of, 'additionalProperties', 'properties', list];
  const schema = at(schemaOf('state') as Json, path);
  const form = formOf(schema as JsonObject);
  if (form.kind !== 'list') throw new Error(`defect: ${of} have no list ${list}`);
  return form;
};

/** Null where there is no record yet. */
export const useRecordDesk = (record: HouseRecord, by: string): Desk | null => {
  const { house } = useWork();
  const { document, now, edit } = record;
  return useMemo(() => {
    if (document === null) return null;
    return {
      root: document,
      house,
      Fields: FieldsView,
      keysOf: (path: JsonPath) => path.map(String),
      put: (path: JsonPath, value: Json | undefined, what: string) => {
        const who: Looked = { at: now(), by };
        return edit({
          write: (state) => ({ ...(withAt(state, path, value) as JsonObject), ...who }),
          what: `${what}: ${path.slice(0, 2).join(' ')}`,
        });
      },
      givenAt: () => undefined,
      inheritedAt: () => null,
      named: (list: string) => (list === 'brickKinds' ? house.brickKinds : []),
    };
  }, [document, house, now, edit, by]);
};
