/**
 * Requests that nobody in good faith makes, from a seed: the same seed gives the same ones. For
 * the tests of hostile input alone.
 */
import type { InjectOptions } from 'fastify';
import { ROUTE_WORDS } from './openapi-words.ts';

/** Chance from 0 to 1 by a seed (mulberry32: 32 bits of state, enough for picking). */
export const chanceFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

type Chance = () => number;

const pick = <T>(chance: Chance, from: readonly T[]): T =>
  from[Math.floor(chance() * from.length)] as T;

const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'] as const;

const TEXTS: readonly string[] = [
  '',
  ' ',
  '0',
  '-1',
  '1e309',
  '99999999999999999999',
  'NaN',
  'null',
  'undefined',
  'true',
  '[object Object]',
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'house:house',
  'show:first-show',
  'state:house',
  'house',
  'first-show',
  '../../etc/passwd',
  '..%2f..%2fetc%2fpasswd',
  '%2e%2e/%2e%2e/lan/authority.key',
  '....//....//',
  '..\\..\\',
  '/etc/passwd',
  'file:///etc/passwd',
  'C:\\Windows\\win.ini',
  "' OR 1=1 --",
  '"; DROP TABLE document; --',
  '<script>alert(1)</script>',
  '${7*7}',
  '{{7*7}}',
  '%00',
  '\u0000',
  '\u202e',
  '\ud800',
  '\ufeff',
  '😀'.repeat(30),
  'a'.repeat(300),
  'ä'.repeat(200),
  '%',
  '%zz',
  '%c0%ae',
  '%u0041',
  ';',
  '?',
  '#',
  '//',
  '*',
  'balance-card/11',
  'letter',
  '1970-01-01T00:00:00Z',
];

const NUMBERS = [0, -0, 1, -1, 0.1, 2 ** 31, 2 ** 53, -(2 ** 63), 1e308, 5e-324];
const NAMES = [
  'kind',
  'document',
  'expectedRevision',
  'savedBy',
  'why',
  'remark',
  'database',
  'name',
  'units',
  'passphrase',
  'pin',
  'person',
  'token',
  'code',
  'role',
  'commandId',
  'device',
  'target',
  'payload',
  'seen',
  'clientMs',
  'aside',
  'by',
  'isMine',
  'task',
  'call',
  'post',
  'step',
  'leave',
  'standing',
  'answersFor',
  'words',
  'house',
  'show',
  'state',
  '__proto__',
  'constructor',
  'prototype',
  'toJSON',
  'length',
  '',
];

const WORDS = [
  ...['house', 'show', 'state', 'demo', 'own', 'view', 'note written', 'signed'],
  ...['call opened', 'leave asked', 'leave given', 'set found', 'stop called', 'rail', 'headFly'],
];

const anyValue = (chance: Chance, depth: number): unknown => {
  const kind = Math.floor(chance() * (depth > 0 ? 8 : 6));
  if (kind === 0) return pick(chance, NUMBERS);
  if (kind === 1) return pick(chance, [true, false, null]);
  if (kind === 2) return pick(chance, WORDS);
  if (kind < 6) return pick(chance, TEXTS);
  const count = Math.floor(chance() * 5);
  if (kind === 6) return Array.from({ length: count }, () => anyValue(chance, depth - 1));
  return Object.fromEntries(
    Array.from({ length: count }, () => [pick(chance, NAMES), anyValue(chance, depth - 1)]),
  );
};

/** Made as text, since a writer of JSON would leave `__proto__` and doubled names out. */
const objectText = (chance: Chance): string => {
  const count = Math.floor(chance() * 8);
  const fields = Array.from(
    { length: count },
    () => `${JSON.stringify(pick(chance, NAMES))}:${JSON.stringify(anyValue(chance, 3))}`,
  );
  return `{${fields.join(',')}}`;
};

const bodyOf = (chance: Chance): string | Buffer => {
  const kind = Math.floor(chance() * 14);
  if (kind === 0) return pick(chance, TEXTS);
  if (kind === 1) return '['.repeat(1 + Math.floor(chance() * 5000));
  if (kind === 2) return `${'{"a":'.repeat(1 + Math.floor(chance() * 2000))}1`;
  if (kind === 3) return `{"document":${'['.repeat(800)}${']'.repeat(800)}}`;
  if (kind === 4) return Buffer.from(Array.from({ length: 40 }, () => Math.floor(chance() * 256)));
  if (kind === 5) return `\ufeff${objectText(chance)}`;
  if (kind === 6) return Buffer.from(objectText(chance), 'utf16le');
  if (kind === 7) return `${objectText(chance)}${objectText(chance)}`;
  if (kind === 8) return '{"__proto__":{"isMine":true},"isMine":true}';
  if (kind === 9) return JSON.stringify(anyValue(chance, 4));
  return objectText(chance);
};

const CONTENT_TYPES = [
  'application/json',
  'application/json',
  'application/json',
  'application/json; charset=utf-16',
  'application/json;charset="',
  'application/x-www-form-urlencoded',
  'multipart/form-data; boundary=a',
  'text/plain',
  'text/xml',
  '*/*',
  'a/b/c',
  ';',
  '',
];

const OTHER_HEADERS: readonly (readonly [string, readonly string[]])[] = [
  ['accept', ['*/*', 'application/json', 'a'.repeat(2000), '']],
  ['accept-encoding', ['gzip', 'br;q=1.0', '*', 'identity;q=0', '\u0001']],
  ['accept-language', ['de', 'xx-YY', ','.repeat(500), '../']],
  ['range', ['bytes=0-0', 'bytes=-1', 'bytes=0-99999999999999999999', 'bytes=a', 'lines=1']],
  ['if-none-match', ['*', '"', 'W/"1"']],
  ['if-modified-since', ['Thu, 01 Jan 1970 00:00:00 GMT', 'yesterday']],
  ['cookie', ['a', '=', 'counterpoise-session=', `counterpoise-session=${'a'.repeat(43)}`, ';;;']],
  [
    'cookie',
    [`counterpoise-device=${'%'.repeat(60)}`, '__Host-counterpoise-session=x; '.repeat(80)],
  ],
  ['authorization', ['Bearer', 'Bearer ', `Bearer ${'A'.repeat(43)}`, 'Basic YTpi', 'bearer ../']],
  ['origin', ['null', 'http://other.example', 'http://127.0.0.1:4747', 'http://127.0.0.1:4747/']],
  ['sec-fetch-site', ['cross-site', 'same-origin', 'none', 'x']],
  ['x-forwarded-for', ['127.0.0.1', '::1', '127.0.0.1, 127.0.0.1']],
  ['x-forwarded-host', ['127.0.0.1:4747', 'other.example']],
  ['forwarded', ['for=127.0.0.1;host=localhost']],
  ['x-http-method-override', ['PUT', 'DELETE']],
  ['x-real-ip', ['127.0.0.1']],
  ['counterpoise-build', ['', 'abc', '__proto__', 'a'.repeat(400)]],
  ['content-length', ['0', '5', '99999999', '-1', 'a']],
  ['transfer-encoding', ['chunked', 'gzip, chunked']],
  ['expect', ['100-continue']],
  ['upgrade', ['websocket', 'h2c']],
  ['te', ['trailers']],
];

const HOSTS = [
  'localhost',
  '127.0.0.1:4747',
  '127.0.0.1:4747',
  '127.0.0.1:4747',
  '127.0.0.1:4747',
  '[::1]:4747',
  'other.example',
  '127.0.0.1.other.example',
  '127.0.0.1:4747@other.example',
  '',
];

const headersOf = (chance: Chance): Record<string, string> => {
  const headers: Record<string, string> = { host: pick(chance, HOSTS) };
  const count = Math.floor(chance() * 4);
  for (let index = 0; index < count; index += 1) {
    const [name, values] = pick(chance, OTHER_HEADERS);
    headers[name] = pick(chance, values);
  }
  return headers;
};

const PATHS = Object.keys(ROUTE_WORDS).map((key) => key.split(' ')[1] ?? '');
const OTHER_PATHS = [
  '/',
  '/index.html',
  '/assets/',
  '/sw.js',
  '/trust',
  '/trust/check.js',
  '/trust/counterpoise-authority.crt',
  '/api',
  '/api/',
  '/api//documents',
  '/API/documents',
  '/api/documents/',
  '/lan/authority.key',
  '/.data/house.sqlite',
  '/.git/config',
  '/package.json',
  '/..%2f..%2fpackage.json',
  '/%2e%2e/%2e%2e/house.sqlite',
  '/\\..\\..',
];

/** Half a character cannot be written in an address. */
const wellFormed = (text: string): string => text.replace(/[\ud800-\udfff]/gu, '~');

const urlOf = (chance: Chance): string => {
  const path = chance() < 0.85 ? pick(chance, PATHS) : pick(chance, OTHER_PATHS);
  const filled = path.replace(/:\w+/g, () => {
    const text = pick(chance, TEXTS);
    return chance() < 0.7 ? encodeURIComponent(wellFormed(text)) : rawPart(text);
  });
  if (chance() < 0.5) return filled;
  const count = Math.floor(chance() * 4);
  const names = ['house', 'show', 'sheet', 'paper', 'by', 'language', 'after', 'limit', 'target'];
  const query = Array.from({ length: count }, () => {
    const name = pick(chance, [...names, ...names, ...NAMES]);
    return `${encodeURIComponent(name)}=${encodeURIComponent(wellFormed(pick(chance, TEXTS)))}`;
  });
  return `${filled}?${query.join('&')}${chance() < 0.1 ? '&%zz' : ''}`;
};

/** As it is, but for what no address can hold at all. */
const rawPart = (text: string): string => wellFormed(text).replace(/[^!-~]/g, '~');

/** What would be taken from who may, asked by who may not. */
const SOUND_SHARE = 0.05;

export const hostileRequest = (
  chance: Chance,
  sound: readonly InjectOptions[] = [],
): InjectOptions => {
  if (sound.length > 0 && chance() < SOUND_SHARE) {
    const { host: _host, ...headers } = headersOf(chance);
    const own = { host: '127.0.0.1:4747', 'content-type': 'application/json' };
    return { ...pick(chance, sound), headers: { ...headers, ...own } };
  }
  const method = pick(chance, METHODS);
  const headers = headersOf(chance);
  const url = urlOf(chance);
  if (method === 'GET' || method === 'HEAD' || chance() < 0.1) return { method, url, headers };
  headers['content-type'] = pick(chance, CONTENT_TYPES);
  return { method, url, headers, payload: bodyOf(chance) };
};
