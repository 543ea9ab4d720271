import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readHouse, readShow, readState } from '#documents';
import { readTable } from '#exchange';
import { assert } from '#outcome';
import { newestOf } from './archive.ts';
import { documentFiles, type StoredText } from './document-files.ts';
import type { ArchiveFile } from './manifest.ts';
import { readArchive, sizeFault } from './read-archive.ts';
import { showFiles } from './show-files.ts';
import { writeArchive } from './write-archive.ts';

const folder = join(import.meta.dirname, '..', 'examples', 'skelderwick');
const textOf = (name: string): string => readFileSync(join(folder, name), 'utf8');
const [HOUSE, SHOW, STATE] = ['house.json', 'regatta.show.json', 'state.json'].map(textOf);

const stored = (id: string, revision: number, text = ''): StoredText => ({
  id,
  kind: id.startsWith('house') ? 'house' : id.startsWith('show') ? 'show' : 'state',
  revision,
  savedAt: '2026-11-28T06:00:00.000Z',
  savedBy: 'A. Person',
  why: 'as found',
  text,
});

const documents = [
  stored('show:regatta', 2, SHOW),
  stored('show:regatta', 1, `${SHOW?.slice(0, -2)}\n}\n`),
  stored('state:skelderwick', 1, STATE),
  stored('house:skelderwick', 1, HOUSE),
];

const made = { at: '2026-11-28T06:01:00.000Z', by: 'A. Person', version: '0.1.0', build: 'abc' };
const files: readonly ArchiveFile[] = [
  ...documentFiles(documents),
  { path: 'shows/a/sheets/card.pdf', bytes: strToU8('%PDF-1.7') },
];
const leftOut = [{ what: 'sheet card/3', why: 'the server answered 422' }];
const whole = writeArchive({ made, files, leftOut });

/** The archive with some of its parts otherwise; null takes a part away. */
const altered = (parts: Readonly<Record<string, string | null>>): Uint8Array => {
  const texts = Object.entries(parts).flatMap(([path, text]) =>
    text === null ? [] : [[path, strToU8(text)] as const],
  );
  const kept = Object.entries(unzipSync(whole)).filter(([path]) => !(path in parts));
  return zipSync(Object.fromEntries([...kept, ...texts]));
};

const refusalsOf = (bytes: Uint8Array) => {
  const read = readArchive('our house.zip', bytes);
  return read.ok ? [] : read.error;
};

const partNamed = (name: string): Uint8Array => {
  const part = unzipSync(whole)[name];
  assert(part !== undefined, `${name} is in it`);
  return part;
};

describe('an archive', () => {
  it('gives every revision back, byte for byte, and says what was left out', () => {
    const read = readArchive('our house.zip', whole);
    assert(read.ok, 'the archive is read');
    expect(read.value.revisions.map(({ path: _path, ...rest }) => rest)).toEqual(documents);
    expect(read.value).toMatchObject({ made, leftOut });
    expect(read.value.paths).toContain('documents/show-regatta/revision-0002.json');
  });

  it('has of each document the newest revision, the house first', () => {
    const read = readArchive('our house.zip', whole);
    assert(read.ok, 'the archive is read');
    expect(newestOf(read.value).map(({ id, revision }) => [id, revision])).toEqual([
      ['house:skelderwick', 1],
      ['show:regatta', 2],
      ['state:skelderwick', 1],
    ]);
  });

  it('is the same bytes for the same files', () => {
    expect(writeArchive({ made, files, leftOut })).toEqual(whole);
  });

  it('tells how far it is as it looks through the files', () => {
    const heard: number[] = [];
    readArchive('our house.zip', whole, (done, of) => heard.push(done / of));
    expect(heard).toEqual([0.2, 0.4, 0.6, 0.8, 1]);
  });
});

describe('an archive that is not whole', () => {
  const path = 'documents/show-regatta/revision-0002.json';

  it('[ARC-008] is refused by the name of the file of which one letter is another', () => {
    const text = SHOW?.replace('Regatta', 'Regatte') ?? '';
    expect(text).not.toBe(SHOW);
    expect(refusalsOf(altered({ [path]: text }))).toMatchObject([{ code: 'ARC-008', path }]);
  });

  it('[ARC-008] is refused by the name of the part whose packing is broken', () => {
    const broken = whole.slice();
    // In the middle of the packed bytes that follow the name of the part in its own header.
    const at = strFromU8(whole, true).indexOf(path) + path.length;
    broken.fill(0xff, at + 20, at + 60);
    expect(refusalsOf(broken)).toMatchObject([{ code: 'ARC-008', path }]);
  });

  it('[ARC-007] [ARC-009] is refused where a file is gone, or one more is there', () => {
    expect(refusalsOf(altered({ [path]: null, 'more.json': '{}' }))).toMatchObject([
      { code: 'ARC-009', path: 'more.json' },
      { code: 'ARC-007', path },
    ]);
  });

  it('[ARC-004] is refused where it is cut off', () => {
    expect(refusalsOf(whole.slice(0, whole.length / 2))).toMatchObject([{ code: 'ARC-004' }]);
  });
});

describe('what is no archive of ours', () => {
  const manifest = JSON.parse(strFromU8(partNamed('manifest.json')));
  const withManifest = (json: unknown): Uint8Array =>
    altered({ 'manifest.json': JSON.stringify(json) });

  it.each([
    ['ARC-001', altered({ 'manifest.json': null })],
    ['ARC-004', strToU8('PK, or so it says')],
    ['ARC-005', withManifest({ ...manifest, files: 'all' })],
    ['ARC-005', withManifest({ ...manifest, format: 'another' })],
    ['ARC-006', withManifest({ ...manifest, version: 2 })],
    ['ARC-010', altered({ '../above.json': '{}' })],
    ['ARC-010', altered({ '/above.json': '{}' })],
  ])('[%s] is refused', (code, bytes) => {
    expect(refusalsOf(bytes).map((each) => each.code)).toEqual([code]);
  });

  it('[DOC-005] is refused where its manifest has a key that is hostile', () => {
    const text = `{"__proto__": {"format": "x"}, ${JSON.stringify(manifest).slice(1)}`;
    const [refusal] = refusalsOf(altered({ 'manifest.json': text }));
    expect(refusal?.code).toMatch(/^DOC-0/);
  });

  it('[ARC-003] is refused before it is opened where it claims to fill the memory', () => {
    const bomb = whole.slice();
    // Claimed size of the first file in the directory at the end: offset 24 of its header.
    const head = strFromU8(bomb, true).indexOf('PK\u0001\u0002');
    new DataView(bomb.buffer).setUint32(head + 24, 0x4000_0000, true);
    expect(refusalsOf(bomb)).toMatchObject([{ code: 'ARC-003' }]);
  });

  it('[ARC-002] is refused by its size alone, before its bytes are read', () => {
    const most = 128 * 1024 * 1024;
    expect(sizeFault('a.zip', most)).toBe(null);
    expect(sizeFault('a.zip', most + 1)).toMatchObject({ code: 'ARC-002' });
  });

  it('[ARC-011] is refused where a document is not UTF-8', () => {
    const bytes = Uint8Array.of(0x7b, 0xff, 0x7d);
    const { text: _text, ...document } = stored('show:regatta', 1);
    const odd = writeArchive({ made, leftOut, files: [{ path: 'a.json', bytes, document }] });
    expect(refusalsOf(odd)).toMatchObject([{ code: 'ARC-011', path: 'a.json' }]);
  });
});

describe('the files of a show', () => {
  const house = readHouse(HOUSE ?? '');
  assert(house.ok, 'the house is read');
  const show = readShow(SHOW ?? '', house.value.house);
  const state = readState(STATE ?? '', house.value.house);
  assert(show.ok && state.ok, 'show and record are read');
  const made = showFiles({
    house: house.value.house,
    show: show.value,
    state: state.value.state,
    line: 'house 1, show 2',
  });

  it('are its tables in both forms, and section and plan at every moment', () => {
    const names = made.map(({ path }) => path.replace('shows/skelderwick/regatta/', ''));
    expect(names).toEqual(
      expect.arrayContaining([
        'schedule.csv',
        'schedule.xlsx',
        'take-off.csv',
        'take-off.xlsx',
        'section-as-recorded.svg',
        'plan-as-recorded-mm.dxf',
        'section-trim-in.svg',
      ]),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  it('are read back as the tables that they are', () => {
    for (const name of ['schedule.csv', 'schedule.xlsx']) {
      const file = made.find(({ path }) => path.endsWith(name));
      const read = readTable(name, file?.bytes ?? new Uint8Array());
      assert(read.ok, 'our own table is read');
      expect(read.value[0]?.rows).toHaveLength(house.value.house.lineSets.length + 1);
    }
  });

  it('frame what is planned with its word, and never what was recorded', () => {
    const svgOf = (part: string): string =>
      strFromU8(made.find(({ path }) => path.includes(part))?.bytes ?? new Uint8Array());
    expect(svgOf('section-trim-in.svg')).toMatch(/PLANNED/);
    expect(svgOf('section-as-recorded.svg')).not.toMatch(/PLANNED/);
  });
});
