/** Whether a version may be saved: `#documents` reads it with everything that refers to it. */
import { readHouseValue, readShowValue, readStateValue } from '#documents';
import { type Refusal, unreachable } from '#outcome';
import type { JsonObject } from '../keeping/json.ts';
import type { Kept, Open } from '../keeping/kept.ts';
import { nameOf } from './shelf-of.ts';

const within = (document: Kept, refusals: readonly Refusal[]): readonly Refusal[] =>
  refusals.map((each) => ({ ...each, path: `${document.kind} ${nameOf(document)}: ${each.path}` }));

const houseWithin = ({ documents }: Open, id: unknown): Kept | undefined =>
  Object.values(documents).find(({ kind, document }) => kind === 'house' && document['id'] === id);

/** A house that its own shows no longer fit would shut their screens: they are asked as well. */
const againstHouse = (open: Open, document: JsonObject): readonly Refusal[] => {
  const read = readHouseValue(document);
  if (!read.ok) return read.error;
  const { house } = read.value;
  return Object.values(open.documents)
    .filter((each) => each.kind !== 'house' && each.document['house'] === document['id'])
    .flatMap((each) => {
      const answer = (each.kind === 'show' ? readShowValue : readStateValue)(each.document, house);
      return answer.ok ? [] : within(each, answer.error);
    });
};

/** What stands against a version of a document; nothing where it may be saved. */
export const against = (
  open: Open,
  kind: Kept['kind'],
  document: JsonObject,
): readonly Refusal[] => {
  switch (kind) {
    case 'house':
      return againstHouse(open, document);
    case 'show':
    case 'state': {
      const kept = houseWithin(open, document['house']);
      const plant = kept === undefined ? undefined : readHouseValue(kept.document);
      if (plant !== undefined && !plant.ok) return plant.error;
      const house = plant?.value.house;
      const read =
        kind === 'show' ? readShowValue(document, house) : readStateValue(document, house);
      return read.ok ? [] : read.error;
    }
    default:
      return unreachable(kind);
  }
};
