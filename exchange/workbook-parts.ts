/** The parts of a workbook, unpacked within limits, as trees. */
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { unzipSync } from 'fflate';
import { fail, ok, type Refusal, type Result } from '#outcome';
import { OPENED_BYTES_MAX, WORKBOOK_PARTS_MAX } from './limits.ts';
import { refuse } from './sheet.ts';
import { decodeUtf8 } from './utf8.ts';

export type Xml = { readonly [name: string]: unknown };

const LISTS = new Set(['sheet', 'Relationship', 'si', 'r', 'row', 'c', 'xf', 'numFmt']);

/** Only these are opened: no pictures, no macros, no links to elsewhere. */
const OPENED =
  /^xl\/(?:workbook|sharedStrings|styles|_rels\/workbook\.xml\.rels|worksheets\/[\w-]+)(?:\.xml)?$/;

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  removeNSPrefix: true,
  parseTagValue: false,
  parseAttributeValue: false,
  processEntities: false,
  trimValues: false,
  isArray: (name) => LISTS.has(name),
});

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

const entity = (whole: string, word: string): string => {
  const point = word.startsWith('#x') ? Number.parseInt(word.slice(2), 16) : Number(word.slice(1));
  if (!word.startsWith('#')) return ENTITIES[word] ?? whole;
  return Number.isInteger(point) && point <= 0x10ffff ? String.fromCodePoint(point) : whole;
};

/** The five entities of XML and numbered ones; there are no others without a DOCTYPE. */
export const plain = (text: string): string =>
  text.replace(/&(#x[0-9a-fA-F]{1,6}|#\d{1,7}|[a-z]{2,4});/g, entity);

export type Parts = ReadonlyMap<string, Xml>;

type Packed = Result<Readonly<Record<string, Uint8Array>>, Refusal>;

const tooLarge = (file: string, found: string): Refusal =>
  refuse('opensTooLarge', file, {
    found,
    accepted: `at most ${WORKBOOK_PARTS_MAX} parts and ${OPENED_BYTES_MAX} bytes opened`,
  });

const damaged = (where: string, found: string): Refusal =>
  refuse('damaged', where, { found, accepted: 'a workbook as a spreadsheet program saves it' });

/** The sizes are those that the file claims; no more than claimed is ever unpacked. */
const unpacked = (file: string, bytes: Uint8Array): Packed => {
  let parts = 0;
  let size = 0;
  let fault: Refusal | undefined;
  try {
    const opened = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        parts += 1;
        if (parts > WORKBOOK_PARTS_MAX) fault ??= tooLarge(file, `more than ${parts - 1} parts`);
        if (!OPENED.test(name)) return false;
        size += originalSize;
        if (size > OPENED_BYTES_MAX) fault ??= tooLarge(file, `${size} bytes opened`);
        return fault === undefined;
      },
    });
    return fault === undefined ? ok(opened) : fail(fault);
  } catch {
    return fail(fault ?? damaged(file, 'a file that cannot be unpacked'));
  }
};

const tree = (where: string, bytes: Uint8Array): Result<Xml, Refusal> => {
  const decoded = decodeUtf8(bytes);
  if (!decoded.ok) return fail(damaged(where, `a byte that is no UTF-8, at ${decoded.at}`));
  if (/<!(?:DOCTYPE|ENTITY)/i.test(decoded.text)) {
    const accepted = 'a workbook without declarations';
    return fail(refuse('declares', where, { found: 'a DOCTYPE', accepted }));
  }
  try {
    if (XMLValidator.validate(decoded.text) !== true) return fail(damaged(where, 'broken XML'));
    const parsed: unknown = parser.parse(decoded.text);
    return isXml(parsed) ? ok(parsed) : fail(damaged(where, 'no element'));
  } catch {
    return fail(damaged(where, 'XML that is not taken'));
  }
};

export const isXml = (value: unknown): value is Xml =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const workbookParts = (file: string, bytes: Uint8Array): Result<Parts, Refusal> => {
  const opened = unpacked(file, bytes);
  if (!opened.ok) return opened;
  const parts = new Map<string, Xml>();
  for (const [path, part] of Object.entries(opened.value)) {
    const read = tree(`${file}: ${path}`, part);
    if (!read.ok) return read;
    parts.set(path, read.value);
  }
  return ok(parts);
};

/** The element of this name below another; an empty one where there is none. */
export const below = (xml: unknown, ...names: readonly string[]): Xml => {
  let at: unknown = xml;
  for (const name of names) at = isXml(at) ? at[name] : undefined;
  return isXml(at) ? at : {};
};

export const listBelow = (xml: unknown, name: string): readonly Xml[] => {
  const found = isXml(xml) ? xml[name] : undefined;
  return Array.isArray(found) ? found.map((one) => (isXml(one) ? one : { '#text': one })) : [];
};

export const attribute = (xml: Xml, name: string): string => {
  const value = xml[`@${name}`];
  return typeof value === 'string' ? plain(value) : '';
};

/** The text of an element, with or without attributes. */
export const textOf = (value: unknown): string => {
  const text = isXml(value) ? value['#text'] : value;
  return typeof text === 'string' ? plain(text) : '';
};
