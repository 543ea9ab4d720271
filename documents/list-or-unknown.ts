/** A list that may be plainly unknown, which the engine keeps as null. */
import { isObject } from './json.ts';
import { needed, object } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { remark } from './shape/words.ts';

const unknownOnly = object({ unknown: needed(remark, 'Why it is not known.') });

export const listOrUnknown = <T>(shape: Shape<readonly T[]>): Shape<readonly T[] | null> => ({
  schema: { anyOf: [shape.schema, unknownOnly.schema] },
  standIn: null,
  read: (value, place) => {
    if (!isObject(value)) return shape.read(value, place);
    unknownOnly.read(value, place);
    return null;
  },
});
