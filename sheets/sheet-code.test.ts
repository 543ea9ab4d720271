import { describe, expect, it } from 'vitest';
import { assess } from '#assessment';
import { openExample } from '../examples/open-example.ts';
import { answerCode, type SheetContext, sheetOf } from './index.ts';
import { canonicalText, fnv1a64, sameCode, sheetCode } from './sheet-code.ts';

describe('the hash under a code', () => {
  it('gives the published values of FNV-1a', () => {
    // Fowler, Noll, Vo: test vectors of the 64-bit FNV-1a (draft-eastlake-fnv), from memory.
    expect(fnv1a64('')).toBe(0xcbf29ce484222325n);
    expect(fnv1a64('a')).toBe(0xaf63dc4c8601ec8cn);
    expect(fnv1a64('foobar')).toBe(0x85944171f73967e8n);
  });

  it('does not care in which order keys were typed, and does care about everything else', () => {
    expect(canonicalText({ b: 1, a: [1, { d: 2, c: null }] })).toBe(
      '{"a":[1,{"c":null,"d":2}],"b":1}',
    );
    expect(canonicalText({ a: undefined, b: 'é' })).toBe('{"b":"é"}');
    expect(sheetCode({ a: 1, b: 2 })).toBe(sheetCode({ b: 2, a: 1 }));
    expect(sheetCode({ a: 1 })).not.toBe(sheetCode({ a: 2 }));
    expect(sheetCode(['é'])).not.toBe(sheetCode(['e']));
  });

  it('makes eight letters that nobody mistakes', () => {
    const codes = Array.from({ length: 2000 }, (_, index) => sheetCode({ index }));
    expect(new Set(codes).size).toBe(2000);
    for (const code of codes) expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
  });

  it('is known again however it is typed', () => {
    expect(sameCode('7f3k q2m0', '7F3K-Q2M0')).toBe(true);
    expect(sameCode('7F3KQ2MO', '7F3K-Q2M0')).toBe(true);
    expect(sameCode('7F3K-Q2M1', '7F3K-Q2M0')).toBe(false);
    expect(sameCode('', '7F3K-Q2M0')).toBe(false);
  });
});

describe('the code of a sheet', () => {
  const example = openExample('kestlemere');
  const stamp = { revision: '4', printedAt: '2026-11-25T18:55:00+01:00', printedBy: 'head' };
  const context: SheetContext = { ...example, findings: [], stamp };
  const codeOf = (id: string, from: SheetContext = context): string =>
    sheetOf(from, id)?.footer.code ?? 'none';

  const changed = (change: (show: SheetContext['show']) => SheetContext['show']): SheetContext => {
    const show = change(example.show);
    return { ...context, show, assessment: assess(example.house, show, example.state) };
  };

  const withHeavierTower = changed((show) => {
    if (show === null) return null;
    const hangs = show.hangs.map((hang) =>
      hang.set === '11' ? { ...hang, name: 'Clock tower flat, repainted' } : hang,
    );
    return { ...show, hangs };
  });

  it('stays the same when the same sheet is printed again by another hand', () => {
    const later = { revision: '4', printedAt: '2026-12-01T10:00:00+01:00', printedBy: 'deputy' };
    expect(codeOf('balance-card/11', { ...context, stamp: later })).toBe(codeOf('balance-card/11'));
  });

  it('changes with what the sheet shows, and not with another set', () => {
    expect(codeOf('balance-card/11', withHeavierTower)).not.toBe(codeOf('balance-card/11'));
    expect(codeOf('balance-card/9', withHeavierTower)).toBe(codeOf('balance-card/9'));
    expect(codeOf('schedule', withHeavierTower)).not.toBe(codeOf('schedule'));
  });

  it('changes with the record of the set', () => {
    const sets = Object.fromEntries(
      Object.entries(example.state.sets).map(([id, set]) => [
        id,
        id === '11' ? { ...set, lock: 'open' as const } : set,
      ]),
    );
    const state = { ...example.state, sets };
    const touched = {
      ...context,
      state,
      assessment: assess(example.house, example.show, state),
    };
    expect(codeOf('balance-card/11', touched)).not.toBe(codeOf('balance-card/11'));
    expect(codeOf('balance-card/9', touched)).toBe(codeOf('balance-card/9'));
  });

  it('is answered with current or superseded', () => {
    const code = codeOf('balance-card/11');
    expect(answerCode(context, 'balance-card/11', code.toLowerCase())).toBe('current');
    expect(answerCode(withHeavierTower, 'balance-card/11', code)).toBe('superseded');
    expect(answerCode(context, 'balance-card/99', code)).toBe('no such sheet');
    expect(answerCode(context, 'loading-sheet', code)).toBe('no such sheet');
  });
});
