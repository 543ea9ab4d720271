import { raise } from '../raise.ts';
import type { SetRule } from '../rule.ts';

/** PER-001: no item carries a person. Flying people is out of scope, and everything stops. */
export const carriesPerson: SetRule = ({ set: { hang, lineSet } }) =>
  (hang?.items ?? [])
    .filter((item) => item.carriesPerson)
    .map(({ id, name }) =>
      raise('PER-001', { at: { set: lineSet.id, item: id }, facts: { piece: name } }),
    );
