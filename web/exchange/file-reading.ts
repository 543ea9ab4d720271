/** What a file is and what is in it, told by its content. Nothing in it is run. */
import { type Archive, newestOf, readArchive } from '#archive';
import { readHouse, readJson, readOrder, readShow, readState } from '#documents';
import { decodeUtf8, readTable, type Sheet } from '#exchange';
import type { House } from '#house';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { isObject, type JsonObject } from '../keeping/json.ts';
import type { DocumentKind } from '../keeping/server.ts';

/** A document that was read without a refusal. */
export type ReadDocument = {
  /** As the database would have it: `show:clockmaker`. */
  readonly id: string;
  readonly kind: DocumentKind;
  readonly name: string;
  readonly raw: JsonObject;
  /** False where its house is not at hand, so that nothing was checked against it. */
  readonly isChecked: boolean;
  /** Of an archive; null for a file of its own. */
  readonly revision: number | null;
};

/** An order of work is read and told, and kept nowhere. */
export type ReadOrder = { readonly set: string; readonly steps: number; readonly show: string };

export type Found =
  | { readonly is: 'table'; readonly file: string; readonly sheets: readonly Sheet[] }
  | { readonly is: 'documents'; readonly file: string; readonly documents: readonly ReadDocument[] }
  | {
      readonly is: 'archive';
      readonly file: string;
      readonly documents: readonly ReadDocument[];
      readonly made: Archive['made'];
      readonly leftOut: Archive['leftOut'];
      readonly files: number;
      readonly revisions: number;
    }
  | { readonly is: 'order'; readonly file: string; readonly order: ReadOrder }
  | { readonly is: 'refused'; readonly file: string; readonly refusals: readonly Refusal[] };

type Refused<T> = Result<T, readonly Refusal[]>;
type Houses = ReadonlyMap<string, House>;

const KINDS = ['house', 'show', 'state'] as const;

const kindOf = (value: unknown): DocumentKind | 'order' | null => {
  const format = isObject(value as JsonObject) ? (value as JsonObject)['format'] : undefined;
  if (format === 'counterpoise-order') return 'order';
  return KINDS.find((kind) => format === `counterpoise-${kind}`) ?? null;
};

const textAt = (raw: JsonObject, key: string): string => String(raw[key] ?? '');

const readAs = (
  kind: DocumentKind,
  text: string,
  house: House | undefined,
): Refused<JsonObject> => {
  const read = { house: readHouse, show: readShow, state: readState }[kind](text, house);
  return read.ok ? ok(read.value.raw) : read;
};

const houseIdIn = (text: string): string => {
  const json = readJson(text);
  return json.ok && isObject(json.value as JsonObject)
    ? textAt(json.value as JsonObject, 'house')
    : '';
};

const documentOf = (
  kind: DocumentKind,
  text: string,
  houses: Houses,
  revision: number | null,
): Refused<ReadDocument> => {
  const house = kind === 'house' ? undefined : houses.get(houseIdIn(text));
  const read = readAs(kind, text, house);
  if (!read.ok) return read;
  const raw = read.value;
  const id = textAt(raw, kind === 'state' ? 'house' : 'id');
  const name = kind === 'state' ? `How the sets of ${id} stand` : textAt(raw, 'name') || id;
  const isChecked = kind === 'house' || house !== undefined;
  return ok({ id: `${kind}:${id}`, kind, name, raw, isChecked, revision });
};

/** Houses at hand by their id; what does not read is no house. */
const housesIn = (documents: readonly JsonObject[]): Map<string, House> =>
  new Map(
    documents.flatMap((raw) => {
      const read = readHouse(JSON.stringify(raw));
      return read.ok ? [[read.value.house.id, read.value.house] as const] : [];
    }),
  );

const refused = (file: string, refusals: readonly Refusal[]): Found => ({
  is: 'refused',
  file,
  refusals,
});

const fromJson = (file: string, text: string, here: readonly JsonObject[]): Found => {
  const json = readJson(text);
  if (!json.ok) return refused(file, json.error);
  const kind = kindOf(json.value);
  const houses = housesIn(here);
  if (kind === 'order') {
    const read = readOrder(text);
    if (!read.ok) return refused(file, read.error);
    const { order } = read.value;
    const told = { set: order.set, steps: order.steps.length, show: order.showId };
    return { is: 'order', file, order: told };
  }
  // One that does not say what it is gets the words of the reader of houses.
  const read = documentOf(kind ?? 'house', text, houses, null);
  return read.ok ? { is: 'documents', file, documents: [read.value] } : refused(file, read.error);
};

export type OnPart = (done: number, of: number) => void;

const documentsIn = (
  archive: Archive,
  here: readonly JsonObject[],
): Refused<readonly ReadDocument[]> => {
  const houses = housesIn(here);
  const documents: ReadDocument[] = [];
  const refusals: Refusal[] = [];
  for (const { kind, text, path, revision } of newestOf(archive)) {
    const read = documentOf(kind, text, houses, revision);
    if (!read.ok) {
      refusals.push(...read.error.map((one) => ({ ...one, path: `${path}: ${one.path}` })));
      continue;
    }
    documents.push(read.value);
    const house = kind === 'house' ? readHouse(text) : null;
    if (house?.ok) houses.set(house.value.house.id, house.value.house);
  }
  return refusals.length === 0 ? ok(documents) : fail(refusals);
};

const fromArchive = (
  file: string,
  bytes: Uint8Array,
  here: readonly JsonObject[],
  onPart: OnPart,
): Found => {
  const read = readArchive(file, bytes, onPart);
  if (!read.ok) return refused(file, read.error);
  const documents = documentsIn(read.value, here);
  if (!documents.ok) return refused(file, documents.error);
  const { made, leftOut, paths, revisions } = read.value;
  return {
    is: 'archive',
    file,
    documents: documents.value,
    made,
    leftOut,
    files: paths.length,
    revisions: revisions.length,
  };
};

const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** Whether the first sign that is no blank opens an object or a list. */
const isJsonLike = (bytes: Uint8Array): boolean => {
  const first = bytes.find((byte) => ![0x20, 0x09, 0x0a, 0x0d, 0xef, 0xbb, 0xbf].includes(byte));
  return first === 0x7b || first === 0x5b;
};

/** `here` are the houses of the database, against which shows and records are checked. */
export const readFile = (
  file: string,
  bytes: Uint8Array,
  here: readonly JsonObject[],
  onPart: OnPart = () => {},
): Found => {
  const isTable = /\.(?:csv|xlsx)$/i.test(file);
  if (isZip(bytes) && !isTable) return fromArchive(file, bytes, here, onPart);
  if (/\.json$/i.test(file) || (!isTable && isJsonLike(bytes))) {
    const decoded = decodeUtf8(bytes);
    if (decoded.ok) return fromJson(file, decoded.text, here);
    const found = `a byte that is no UTF-8, at ${decoded.at}`;
    const accepted = 'a document as JSON in UTF-8';
    return refused(file, [{ code: 'EXC-005', path: file, found, accepted }]);
  }
  const read = readTable(file, bytes);
  return read.ok ? { is: 'table', file, sheets: read.value } : refused(file, read.error);
};
