/** Sheets of the work: permits, briefings, pages that refuse, and the cards that name an order. */
import { describe, expect, it } from 'vitest';
import { showOrders } from '#orders';
import { openExample } from '../examples/open-example.ts';
import { inUkWords, ordersOf, RIGHT, strikeOf, WRONG, withOrders } from './example-orders.ts';
import { allWords, exampleContext, mustMake, rowsOf, tablesOf, textOf } from './example-sheets.ts';
import { type Sheet, type SheetContext, sheetIds, sheetOf } from './index.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const skelderwick = exampleContext(openExample('skelderwick'));

const few = (context: SheetContext, sets: readonly string[]): SheetContext => ({
  ...context,
  orders: ordersOf(context, sets),
});

const isOfWork = (id: string): boolean => /^(strike-|loading-|unloading-|permit|brief)/.test(id);

const made = (context: SheetContext): readonly Sheet[] =>
  sheetIds(context)
    .filter(isOfWork)
    .map((id) => mustMake(context, id));

const us = few(kestlemere, ['9', '17', '34', 'D3']);
const uk = few(skelderwick, ['1', '5', '12']);
const turned = few({ ...kestlemere, house: inUkWords(kestlemere.house) }, ['9', '17', '34']);
const houses = [
  { name: 'Kestlemere', context: us, sheets: made(us) },
  { name: 'Skelderwick', context: uk, sheets: made(uk) },
  { name: 'Kestlemere in UK words', context: turned, sheets: made(turned) },
] as const;

describe.each(houses)('the sheets of the work of $name', ({ context, sheets }) => {
  it('are listed before any is made, and are the same when they are made again', () => {
    expect(sheets.map(({ id }) => id)).toEqual(sheetIds(context).filter(isOfWork));
    for (const sheet of sheets) expect(sheetOf(context, sheet.id)).toEqual(sheet);
  });

  it('bear a code and a moment after which they are void', () => {
    for (const { footer, facts } of sheets) {
      expect(footer.code).toMatch(/^\w{4}-\w{4}$/);
      expect(footer.voidIf).toMatch(/^Void if .+ is touched after \d+ \w{3} \d{4}, \d\d:\d\d/);
      expect(facts.map(({ term }) => term)).toContain('units');
    }
  });

  it('sign no imbalance, say of nothing that it is safe, and keep to one system of units', () => {
    const isCustomary = context.house.units === 'customary';
    const foreign = isCustomary ? /\d\s(kg|N|kN|m)\b/ : /\d\s(lb|lbf|ft|in)\b|\d'-\d/;
    for (const sheet of sheets) {
      const words = allWords(sheet);
      expect(words, sheet.id).not.toMatch(/(^|[\s(])[-\u2212+]\s?\d/m);
      expect(words, sheet.id).not.toMatch(/\bsafe(ly|ty)?\b|undefined|NaN|\[object/i);
      expect(words, sheet.id).not.toMatch(foreign);
    }
  });

  it('speak the words of the house', () => {
    if (context.house.words === 'US') return;
    for (const sheet of sheets) {
      // The name of a rail is somebody's own.
      const words = `${sheet.title} ${sheet.name} ${allWords(sheet).replaceAll('Deck rail', '')}`;
      expect(words, sheet.id).not.toMatch(/\b(battens?|arbors?|bricks?|deck|strike)\b/i);
    }
  });

  it('are worked by their order alone, or say on top that they are none', () => {
    for (const { id, title, blocks, kind } of sheets) {
      const [first] = blocks;
      const isNone = first?.kind === 'notice' && first.heading.startsWith('NOT AN ORDER');
      if (kind === 'strike-sheet' && !isNone) expect(title, id).toMatch(/order \w{4}-\w{4}$/);
      expect(title, id).not.toContain('NOT');
    }
  });
});

describe('a page in place of a sheet', () => {
  it('gives the reason of the search, and what was asked', () => {
    const { house, show, state } = kestlemere;
    if (show === null || state === null) throw new Error('the example is whole');
    const record = { ...state, sets: {}, galleries: {} };
    const source = showOrders(house, show, record);
    const sheet = mustMake({ ...kestlemere, orders: source }, 'strike-sheet/D3');
    const words = allWords(sheet);
    expect(words).toMatch(/^NOT AN ORDER: DO NOT WORK BY THIS No order: what is asked for cannot/);
    expect(words).toMatch(/What was asked.*\nSet D3 is taken to hang as the show plans it/s);
    expect(words).toContain('Upper loading gallery: no loose bricks are counted there');
  });

  it('says what nobody has written down', () => {
    const { house, show } = kestlemere;
    if (show === null) throw new Error('the example has a show');
    const orders = showOrders(house, show, null);
    const words = allWords(mustMake({ ...kestlemere, orders }, 'strike-sheet/9'));
    expect(words).toMatch(/no record of how things stand; wanted is a state document/);
    const gallery = allWords(mustMake({ ...kestlemere, orders }, 'loading-sheet/upper'));
    expect(gallery).toMatch(/^NOT AN ORDER: .*\nNOT ON THIS SHEET: SETS 1, 2, /);
    expect(allWords(mustMake({ ...kestlemere, orders }, 'briefing/load'))).toMatch(
      /^NOT AN ORDER: DO NOT WORK BY THIS No set has an order to brief a crew for/,
    );
    expect(allWords(mustMake({ ...kestlemere, orders }, 'permit/9'))).toMatch(/^NOT AN ORDER/);
  });

  it('refuses a set with a person on it', () => {
    const { house, show, state } = kestlemere;
    if (show === null) throw new Error('the example has a show');
    const hangs = show.hangs.map((hang) =>
      hang.set === '9'
        ? { ...hang, items: hang.items.map((item) => ({ ...item, carriesPerson: true })) }
        : hang,
    );
    const orders = showOrders(house, { ...show, hangs }, state);
    for (const id of ['strike-sheet/9', 'permit/9']) {
      const words = allWords(mustMake({ ...kestlemere, orders }, id));
      expect(words, id).toMatch(/^NOT AN ORDER: .*carries a person; wanted is a set that carries/);
    }
  });
});

describe('an out-of-balance permit', () => {
  const right = withOrders(kestlemere, [strikeOf(kestlemere, RIGHT)]);
  const sheet = mustMake(right, 'permit/9');
  const words = allWords(sheet);
  const [moves] = tablesOf(sheet);

  it('has each step past the planning limit with its path and its peaks, side in words', () => {
    const rows = rowsOf(moves);
    // 41 lb arbor heavy at 24 ft (the-job.md 4.7, S4).
    expect(rows.map(([number]) => number)).toEqual(['1', '3', '4', '5', '8']);
    expect(rows[0]?.slice(1, 3)).toEqual(['In to 24\'-0".', '60\'-6" to 24\'-0"']);
    expect(rows[0]?.[4]).toBe('41 lb arbor heavy');
    for (const [, , , battenHeavy, arborHeavy] of rows) {
      expect(battenHeavy).toMatch(/^(none|\d+ lb batten heavy)$/);
      expect(arborHeavy).toMatch(/^(none|\d+ lb arbor heavy)$/);
    }
  });

  it('says that the lock is trusted past its planning limit, where nothing is rigged', () => {
    expect(words).toContain('Restraint: none. The lock is trusted past its planning limit');
    expect(words).toMatch(/To give it up\nStep.* 1: Lock closed, ring on, where it is/);
    expect(words).toMatch(/Nobody else is under the batten, at the rail/);
    expect(words).toMatch(/Leave to begin, after the briefing\nLeader/);
    expect(words).toMatch(/Closed out\n Restraint off, by owner and leader/);
  });

  it('draws the heights of the jumps', () => {
    const [drawing] = sheet.blocks.filter(({ kind }) => kind === 'drawing');
    expect(drawing?.kind === 'drawing' ? JSON.stringify(drawing.drawing) : '').toContain(
      'hem meets or leaves the deck',
    );
  });

  it('names a restraint with its direction and rating, and leaves its anchor to a person', () => {
    const set = mustMake(us, 'permit/9');
    const restraint = set.blocks.find(
      (block) => block.kind === 'list' && block.heading.startsWith('Restraint, rating'),
    );
    const [first = []] = restraint?.kind === 'list' ? restraint.items : [];
    expect(textOf(first)).toMatch(/bull line against going out, rated \d+ lbf or more, \w+ /);
    expect(first.filter((each) => typeof each !== 'string' && 'blank' in each)).toHaveLength(5);
    expect(allWords(set)).toMatch(
      /Reckoned: batten, lift lines and blocks bear it, tied to the batten at .+ each side\. Arbor/,
    );
  });

  it('is not asked for where the lock within its planning limit does it all', () => {
    expect(allWords(mustMake(us, 'permit/34'))).toMatch(
      /^NO PERMIT IS ASKED FOR Orders load \w{4}-\w{4}, strike \w{4}-\w{4} need no restraint/,
    );
  });

  it('counts every mass at its worst where that was tried', () => {
    const doubted = strikeOf(kestlemere, RIGHT, { doubt: 'worst', faults: 'skip' });
    const plain = strikeOf(kestlemere, RIGHT, { doubt: 'none', faults: 'skip' });
    const peak = (order: typeof plain): number => {
      const unbroken = { ...order, verdict: { ...order.verdict, broken: null } };
      const permit = mustMake(withOrders(kestlemere, [unbroken]), 'permit/9');
      return Number.parseInt(rowsOf(tablesOf(permit)[0])[0]?.[4] ?? '', 10);
    };
    expect(peak(doubted)).toBeGreaterThan(peak(plain) + 10);
  });
});

describe('a briefing of zones', () => {
  const right = withOrders(kestlemere, [strikeOf(kestlemere, RIGHT)]);
  const words = allWords(mustMake(right, 'briefing/strike'));

  it('says which set closes which zone from which step to which, and what lies below', () => {
    expect(words).toMatch(
      /Drop zone of the Upper loading gallery: .*Mid loading gallery.*the deck/,
    );
    expect(words).toMatch(/Upper loading gallery: .*\nSet 9: 7 to 9\./);
    expect(words).toMatch(/Drop zone of the Mid loading gallery: .*\nSet 9: 2 to 6\./);
    expect(words).not.toMatch(/Drop zone of the Mid loading gallery: [^\n]*Upper loading gallery/);
    // Closed before the first step.
    expect(words).toMatch(/Run of the set: .*\nSet 9: 0 to 10\./);
  });

  it('tells who may stand where for the work that is in it, and for no other', () => {
    expect(words).toMatch(/Bricks in hand: Nobody under the gallery edge/);
    expect(words).toMatch(/Out-of-balance move: Nobody under the whole batten/);
    expect(words).toMatch(/Runaway: Everybody away from batten/);
    expect(words).not.toContain('A piece rests, tilts or lands');
    expect(words).not.toContain('A set is left on a restraint');
    expect(words).toMatch(/STOP: Anybody says it/);
    expect(words).toContain('at the steps and with the people of its permit: set 9.');
  });

  it('names the sets on which nobody works', () => {
    const [strike, wrong] = [strikeOf(kestlemere, RIGHT), strikeOf(kestlemere, WRONG)];
    const context = withOrders(kestlemere, [strike, { ...wrong, set: '8' }]);
    expect(allWords(mustMake(context, 'briefing/strike'))).toContain(
      'No order, so nobody works on: set 8.',
    );
  });

  it('has places to sign', () => {
    const [signed] = tablesOf(mustMake(right, 'briefing/strike'));
    expect(signed?.columns.every(({ isWritten }) => isWritten === true)).toBe(true);
    expect(signed?.rows).toHaveLength(6);
  });
});

describe('a card of a set whose strike is found', () => {
  const right = withOrders(kestlemere, [strikeOf(kestlemere, RIGHT)]);

  it.each(['balance-card/9', 'hanging-card/9'])('%s names the order to work by', (id) => {
    const [first] = mustMake(right, id).blocks;
    const code = /order (\w{4}-\w{4})$/.exec(mustMake(right, 'strike-sheet/9').title)?.[1];
    expect(first).toMatchObject({
      heading: `STRIKE SHEET: ORDER ${code}. DO NOT LOAD BY THIS`,
    });
    expect(mustMake(right, id).footer.code).not.toBe(mustMake(kestlemere, id).footer.code);
  });

  it('says where the restraint is told', () => {
    expect(allWords(mustMake(right, 'balance-card/9'))).toContain(
      'Restraint: by the permit of this set.',
    );
    const out = allWords(mustMake(us, 'balance-card/34'));
    expect(out).toContain('Restraint: none in the order named above.');
  });

  it('is none where the strike is refused, or the set is another', () => {
    const wrong = withOrders(kestlemere, [strikeOf(kestlemere, WRONG)]);
    for (const [context, id] of [
      [wrong, 'balance-card/9'],
      [right, 'balance-card/8'],
    ] as const) {
      const [first] = mustMake(context, id).blocks;
      expect(first).toMatchObject({ heading: 'NOT AN ORDER OF WORK: DO NOT LOAD BY THIS' });
    }
  });

  it('speaks UK to a UK house', () => {
    const [first] = mustMake({ ...right, house: inUkWords(right.house) }, 'balance-card/9').blocks;
    expect(first?.kind === 'notice' ? first.heading : '').toMatch(/^GET-OUT SHEET: ORDER/);
  });
});
