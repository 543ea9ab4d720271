/** The sheets in another language: nothing of ours stays English, and one card word for word. */
import { describe, expect, it } from 'vitest';
import type { House } from '#house';
import { fetchTongue } from '#languages';
import { judge } from '#rules';
import { type Sheet, type SheetContext, sheetOf } from '#sheets';
import type { Plural, Tongue } from '#texts';
import { openExample } from '../../examples/open-example.ts';

const german = await fetchTongue('de');
if (german === undefined) throw new Error('German is there');

/** What the words of a block stand under; all else is about its form. */
const WORDS = new Set(['words', 'heading', 'text', 'head', 'cells', 'items', 'strong', 'rows']);

const stringsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(stringsIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) =>
    WORDS.has(name) || typeof each === 'object' ? stringsIn(each) : [],
  );
};

const allWords = ({ blocks }: Sheet): string =>
  stringsIn(blocks.filter(({ kind }) => kind !== 'drawing')).join('\n');

const mustMake = (context: SheetContext, id: string): Sheet => {
  const sheet = sheetOf(context, id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheet;
};

const asked = (name: 'kestlemere' | 'skelderwick', tongue: Tongue): SheetContext => {
  const example = openExample(name);
  const house: House = { ...example.house, tongue };
  const { show, state, assessment } = example;
  const nowMs = Date.parse('2026-11-25T18:55:00Z');
  return {
    ...example,
    house,
    findings: judge(house, show, state, assessment, { nowMs }),
    stamp: { revision: '4', printedAt: '2026-11-25T18:55:00+01:00', printedBy: 'TD' },
  };
};

/** Every letter of ours with an accent, so half as long again; holes stay what they are. */
const bracketed = (text: string): string =>
  `⟦${text.replace(/(\{\w+\})|[A-Za-z]/g, (letter, hole) => hole ?? `${letter}\u0301`)}⟧`;

const pseudo: Tongue = {
  ...german,
  texts: new Proxy({} as Record<string, string | Plural>, {
    get: (_, text: string) =>
      text.startsWith('{count, plural,')
        ? { by: 'count', forms: { other: '⟦{count}⟧' } }
        : bracketed(text),
    getOwnPropertyDescriptor: (_, text) => ({
      value: bracketed(String(text)),
      configurable: true,
      enumerable: true,
    }),
  }),
};

const valuesIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(valuesIn) : [];
};

/** Our words without their accents. What people wrote in the documents is theirs. */
const bareWords = (text: string, { house, show, state }: SheetContext): readonly string[] => {
  const written = valuesIn({ house: { ...house, tongue: null }, show, state });
  const theirs = new Set(written.join(' ').match(/[A-Za-z]{3,}/g));
  const bare = text.match(/(?<![\u0301A-Za-z])[A-Za-z]{3,}(?![\u0301A-Za-z])/g) ?? [];
  return [...new Set(bare)].filter((word) => !theirs.has(word) && !OTHERS.has(word));
};

/** Units, codes of rules, months of the tongue, who printed; and what the engine says itself. */
const OTHERS = new Set(['lbf', 'psf', 'min', 'Nov', 'UTC']);

describe('in a made-up language of brackets', () => {
  it.each([
    ['kestlemere', 'balance-card/5'],
    ['kestlemere', 'hanging-card/5'],
    ['kestlemere', 'take-off'],
    ['kestlemere', 'beam-and-floor'],
    ['kestlemere', 'gallery-stock'],
    ['skelderwick', 'balance-card/5'],
    ['skelderwick', 'house-sheet'],
  ] as const)('no word of ours stands bare: %s, %s', (name, id) => {
    const context = asked(name, pseudo);
    const sheet = mustMake(context, id);
    const words = [sheet.title, allWords(sheet), sheet.footer.voidIf, ...sheet.footer.cautions];
    expect(bareWords(words.join('\n'), context)).toEqual([]);
    expect(words.join('')).toContain('⟦');
  });
});

describe('a balance card in German', () => {
  it('says the same as the English one, under the same code', async () => {
    const context = asked('skelderwick', german);
    const sheet = mustMake(context, 'balance-card/5');
    const { tongue, ...house } = context.house;
    const english = mustMake({ ...context, house }, 'balance-card/5');
    expect(tongue).toBe(german);
    expect(sheet.footer.code).toBe(english.footer.code);
    const text = [
      sheet.title,
      sheet.beside,
      ...sheet.facts.map(({ term, value }) => `${term}: ${value}`),
      allWords(sheet),
      sheet.footer.voidIf,
      ...sheet.footer.cautions,
      '',
    ].join('\n');
    await expect(text).toMatchFileSnapshot('./german-card.txt');
    expect(text.replaceAll('\u00A0', ' ')).toMatch(/13,1 kg SCHLITTENLASTIG/);
    expect(text).not.toMatch(/\d\.\d{2}/);
  });
});
