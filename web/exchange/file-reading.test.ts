import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { documentFiles, writeArchive } from '#archive';
import { writeXlsx } from '#exchange';
import order from '../../examples/kestlemere/orders/harbour-drop-load.order.json' with {
  type: 'json',
};
import house from '../../examples/skelderwick/house.json' with { type: 'json' };
import show from '../../examples/skelderwick/regatta.show.json' with { type: 'json' };
import state from '../../examples/skelderwick/state.json' with { type: 'json' };
import { readFile } from './file-reading.ts';

const HOUSE = JSON.stringify(house);
const SHOW = JSON.stringify(show);
const STATE = JSON.stringify(state);
const here = [house];

const codesOf = (file: string, bytes: Uint8Array): readonly string[] => {
  const found = readFile(file, bytes, here);
  return found.is === 'refused' ? found.refusals.map(({ code }) => code) : [found.is];
};

describe('a file is told by its content', () => {
  it('a table, by whichever of the two forms', () => {
    expect(codesOf('a.csv', strToU8('Set,Name\n1,Tabs'))).toEqual(['table']);
    expect(codesOf('A.XLSX', writeXlsx({ name: 'S', rows: [['Set'], ['1']] }))).toEqual(['table']);
  });

  it('a document, with its name and id, checked against a house that is here', () => {
    const found = readFile('x.json', strToU8(SHOW), here);
    expect(found).toMatchObject({
      is: 'documents',
      documents: [{ id: 'show:regatta', kind: 'show', isChecked: true, revision: null }],
    });
    const alone = readFile('no ending', strToU8(`\uFEFF\n${STATE}`), []);
    expect(alone).toMatchObject({
      documents: [{ id: 'state:skelderwick', kind: 'state', isChecked: false }],
    });
  });

  it('an order of work, which is told and kept nowhere', () => {
    expect(readFile('o.json', strToU8(JSON.stringify(order)), [])).toMatchObject({ is: 'order' });
  });

  it('[DOC-001] a document refused in the words of its reader, with places', () => {
    expect(codesOf('x.json', strToU8('{ "format": "counterpoise-show" '))[0]).toMatch(/^DOC-/);
    expect(codesOf('x.json', strToU8('{"hangs": []}'))[0]).toMatch(/^DOC-02/);
    expect(codesOf('x.json', strToU8('[1, 2]'))[0]).toMatch(/^DOC-02/);
  });

  it('[EXC-005] [EXC-002] a picture by whatever name is refused', () => {
    const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0);
    expect(codesOf('x.json', png)).toEqual(['EXC-005']);
    expect(codesOf('x.csv', png)).toEqual(['EXC-002']);
  });

  it('[ARC-001] an archive without our manifest is refused', () => {
    expect(codesOf('a.zip', zipSync({ 'a.txt': strToU8('a') }))).toEqual(['ARC-001']);
  });
});

describe('an archive', () => {
  const about = { savedAt: '', savedBy: 'A', why: '' };
  const made = { at: '2026-11-28T06:00:00Z', by: 'A', version: '0', build: '0' };
  const archiveOf = (show: string): Uint8Array =>
    writeArchive({
      made,
      leftOut: [],
      files: documentFiles([
        { id: 'show:regatta', kind: 'show', revision: 1, text: '{}', ...about },
        { id: 'show:regatta', kind: 'show', revision: 4, text: show, ...about },
        { id: 'house:skelderwick', kind: 'house', revision: 1, text: HOUSE, ...about },
      ]),
    });

  it('has its shows checked against the house that comes with them', () => {
    const found = readFile('a.zip', archiveOf(SHOW), []);
    expect(found).toMatchObject({
      is: 'archive',
      files: 3,
      revisions: 3,
      documents: [
        { id: 'house:skelderwick', isChecked: true },
        { id: 'show:regatta', isChecked: true, revision: 4 },
      ],
    });
  });

  it('is refused by the file of which the newest revision is not understood', () => {
    const found = readFile('a.zip', archiveOf('{}'), []);
    expect(found.is === 'refused' ? found.refusals[0]?.path : '').toMatch(
      /^documents\/show-regatta\/revision-0004\.json: /,
    );
  });
});
