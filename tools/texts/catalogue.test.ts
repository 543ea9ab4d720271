import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faultsOfCatalogue, nextCatalogue } from './catalogue.ts';
import { messagesIn } from './gather.ts';

const source = (text: string, path = 'sheets/pages/a.ts') => ({
  path,
  text: `import { phrase } from '#texts';\n${text}`,
});

const textsOf = (text: string): readonly string[] =>
  messagesIn([source(text)])
    .filter(({ file }) => file === 'sheets/pages/a.ts')
    .map((each) => each.text);

describe('gathering', () => {
  it('finds what is said, in sums, choices and pairs, and what is marked', () => {
    expect(
      textsOf(`
        phrase(house, 'one {n}', { n });
        phrase(house, 'a ' + 'long one');
        phrase(house, is ? 'this' : 'that');
        phraseCount(house, n, ['{count} row', '{count} rows']);
        message('marked');
        tell('on a screen');
        deedOf({ who: 'Lead', call: ['Deck', 'Set {set}: ' + 'on.'] }, words, {});
      `),
    ).toStrictEqual([
      'one {n}',
      'a long one',
      'this',
      'that',
      '{count, plural, one {{count} row} other {{count} rows}}',
      'marked',
      'on a screen',
      'Lead',
      'Deck',
      'Set {set}: on.',
    ]);
  });

  it('leaves what is worked out, what has no letters, and functions of other rooms', () => {
    expect(textsOf("phrase(house, TABLE[key]); phrase(house, '{a}, {b}', { a, b });")).toEqual([]);
    const other = { path: 'engine/beam/a.ts', text: "message('spliceStrength');" };
    expect(messagesIn([other]).some(({ text }) => text === 'spliceStrength')).toBe(false);
  });
});

const said = (text: string) => ({ text, file: 'a.ts', line: 1 });
const PLURAL = '{count, plural, one {{count} row} other {{count} rows}}';

describe('a catalogue', () => {
  const faults = (text: string, translation: string): readonly string[] =>
    faultsOfCatalogue([said(text)], { [text]: translation }, 'de').map(({ what }) => what);

  it('is right with the same holes, the same ends, and every form of a plural', () => {
    expect(faults('set {id}', 'Zug {id}')).toEqual([]);
    expect(faults(PLURAL, '{count, plural, one {{count} Zeile} other {{count} Zeilen}}')).toEqual(
      [],
    );
  });

  it.each([
    ['set {id}', '', 'is not translated'],
    ['set {id}', 'Zug', 'has the holes "" and not "id"'],
    ['set {id}', 'Zug {nr}', 'has the holes "nr" and not "id"'],
    [' at ', 'um', 'begins or ends with other spaces'],
    [PLURAL, '{count} Zeilen', 'is a plural on one side only'],
    [PLURAL, '{count, plural, other {{count} Zeilen}}', 'the plural has no form "one"'],
  ])('of "%s" as "%s" is red', (text, translation, what) => {
    expect(faults(text, translation)).toEqual([what]);
  });

  it('is red where a message cannot be read, and where nobody says it any more', () => {
    expect(faults('a {b}', 'ein {b')[0]).toMatch(/^is no ICU message/);
    expect(faultsOfCatalogue([], { gone: 'weg' }, 'de')).toEqual([
      { text: 'gone', what: 'is said nowhere any more' },
    ]);
  });

  it('is brought up to the code: new texts empty, old ones gone', () => {
    const next = nextCatalogue([said('new'), said('old')], { old: 'alt', gone: 'weg' });
    expect(next).toStrictEqual({ new: '', old: 'alt' });
  });

  it('of German has no text twice with another dash or quote of English', () => {
    const german = readFileSync('languages/german.json', 'utf8');
    expect(german).not.toMatch(/: "[^"]*\u201D[^"]*\u201D/);
  });
});
