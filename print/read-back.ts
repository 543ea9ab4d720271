/**
 * The words on the pages of a PDF that this room made, for its tests. It reads what the maker of
 * the PDF writes and no more.
 *
 * Source  ISO 32000-1, 7.3 (objects), 9.4.3 (text showing) and 9.10.3 (ToUnicode), from memory
 */
import { inflateSync } from 'node:zlib';

const OBJECT = /(\d+) 0 obj\n([\s\S]*?)\nendobj/g;

type Objects = ReadonlyMap<string, string>;

const objectsOf = (bytes: Uint8Array): Objects => {
  const file = Buffer.from(bytes).toString('latin1');
  return new Map([...file.matchAll(OBJECT)].map(([, number = '', body = '']) => [number, body]));
};

const streamOf = (body: string): string => {
  const start = body.indexOf('stream\n') + 'stream\n'.length;
  const packed = Buffer.from(body.slice(start, body.lastIndexOf('\nendstream')), 'latin1');
  const isPacked = body.slice(0, start).includes('FlateDecode');
  return (isPacked ? inflateSync(packed) : packed).toString('latin1');
};

const reference = (body: string, key: string): string =>
  new RegExp(`/${key} (\\d+) 0 R`).exec(body)?.[1] ?? '';

const fromHex = (hex: string): string =>
  hex
    .split(' ')
    .map((unit) => String.fromCharCode(Number.parseInt(unit, 16)))
    .join('');

/** Text by glyph of one font; a glyph may stand for two letters. */
const lettersOf = (objects: Objects, font: string): readonly string[] => {
  const map = streamOf(objects.get(reference(objects.get(font) ?? '', 'ToUnicode')) ?? '');
  const lists = [...map.matchAll(/\[((?:<[^>]*> ?)+)\]/g)].map(([, list = '']) => list);
  return lists.flatMap((list) =>
    [...list.matchAll(/<([^>]*)>/g)].map(([, hex = '']) => fromHex(hex)),
  );
};

/** A code is printed so that no line ends within it. */
const CODE = /([0-9A-Z]{4})\u2011([0-9A-Z]{4})/g;

const FONT = /\/(F\d+) (\d+) 0 R/g;
const SHOWN = /\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g;

export type PageBack = {
  readonly text: string;
  readonly width: number;
  readonly height: number;
};

/** The pages in order, each as text without any white space, and its size in points. */
export const readBack = (bytes: Uint8Array): readonly PageBack[] => {
  const objects = objectsOf(bytes);
  const pages = [...objects.values()].filter((body) => /\/Type \/Page\n/.test(body));
  const fonts = new Map<string, readonly string[]>();
  for (const body of objects.values()) {
    for (const [, name = '', number = ''] of body.matchAll(FONT)) {
      if (!fonts.has(name)) fonts.set(name, lettersOf(objects, number));
    }
  }
  return pages.map((page) => {
    const content = streamOf(objects.get(reference(page, 'Contents')) ?? '');
    const [, width = '', height = ''] = /MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
    let letters: readonly string[] = [];
    let text = '';
    for (const [, font, shown] of content.matchAll(SHOWN)) {
      if (font !== undefined) letters = fonts.get(font) ?? [];
      for (const [, hex = ''] of (shown ?? '').matchAll(/<([0-9a-f]*)>/g)) {
        text += (hex.match(/.{4}/g) ?? [])
          .map((unit) => letters[Number.parseInt(unit, 16)])
          .join('');
      }
    }
    const plain = text.replace(/\s/g, '').replace(CODE, '$1-$2');
    return { text: plain, width: Number(width), height: Number(height) };
  });
};
