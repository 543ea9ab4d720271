/** UTF-8 (RFC 3629) to text, strictly: a byte that does not fit refuses the whole. */

/** Lead byte from, length, least code point; overlong forms and surrogates are no UTF-8. */
const FORMS = [
  { from: 0xf0, below: 0xf5, more: 3, least: 0x10000 },
  { from: 0xe0, below: 0xf0, more: 2, least: 0x800 },
  { from: 0xc2, below: 0xe0, more: 1, least: 0x80 },
] as const;

const isSurrogate = (point: number): boolean => point >= 0xd800 && point <= 0xdfff;

type Read = { readonly point: number; readonly length: number };

const longPoint = (bytes: Uint8Array, at: number): Read | undefined => {
  const lead = bytes[at] ?? 0;
  const form = FORMS.find(({ from, below }) => lead >= from && lead < below);
  if (form === undefined) return undefined;
  let point = lead - form.from + (form.more === 1 ? 2 : 0);
  for (let step = 1; step <= form.more; step += 1) {
    const byte = bytes[at + step] ?? 0;
    if (byte >> 6 !== 0b10) return undefined;
    point = point * 64 + (byte & 0b11_1111);
  }
  if (point < form.least || point > 0x10ffff || isSurrogate(point)) return undefined;
  return { point, length: form.more + 1 };
};

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly at: number };

/** A byte order mark at the start is dropped. */
export const decodeUtf8 = (bytes: Uint8Array): Decoded => {
  const pieces: string[] = [];
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  while (at < bytes.length) {
    const lead = bytes[at] ?? 0;
    const read = lead < 0x80 ? { point: lead, length: 1 } : longPoint(bytes, at);
    if (read === undefined) return { ok: false, at };
    pieces.push(String.fromCodePoint(read.point));
    at += read.length;
  }
  return { ok: true, text: pieces.join('') };
};
