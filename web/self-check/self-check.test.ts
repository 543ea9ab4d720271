import { describe, expect, it } from 'vitest';
import {
  type Calculation,
  type SelfCheckRecord,
  selfCheckSteps,
  type ValidationCase,
} from '#selfcheck';
import { errorWords } from './error-words.ts';
import { cellWords, failingOn, restsOn } from './screens.ts';
import { type Watch, type WatchParts, watchChecks } from './watch.ts';

const installation = { version: '1.2.3', build: 'abcdefabcdef', platform: 'a test' };

const caseOf = (calculation: Calculation, error: number): ValidationCase => ({
  id: 'VAL-BAL-99',
  title: 'A case of this test',
  calculation,
  unit: 'kg',
  tolerance: 0.5,
  run: () => [error],
});

const reportOf = (cases: readonly ValidationCase[]) => {
  const steps = selfCheckSteps(cases);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
};

const doneWith = (cases: readonly ValidationCase[]): SelfCheckRecord => ({
  installation,
  state: { is: 'done', at: '2026-11-25T12:00:00Z', report: reportOf(cases) },
});

const RUNNING: SelfCheckRecord = { installation, state: { is: 'running', done: 1, total: 9 } };

/** A page whose idle time and clock are turned by hand. */
const page = (cases: readonly ValidationCase[], changes: Partial<WatchParts> = {}) => {
  const idle: ((hasTime: () => boolean) => void)[] = [];
  const waits: { call: () => void; milliseconds: number }[] = [];
  const watch: Watch = watchChecks({
    installation,
    steps: async () => selfCheckSteps(cases),
    askServer: async () => doneWith([]),
    whenIdle: (call) => void idle.push(call),
    later: (call, milliseconds) => void waits.push({ call, milliseconds }),
    now: () => new Date('2026-11-25T12:00:00Z'),
    ...changes,
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  const idleOnce = (more = 0): void => {
    let left = more;
    idle.shift()?.(() => {
      left -= 1;
      return left >= 0;
    });
  };
  return { watch, waits, settle, idleOnce, stillToDo: () => idle.length };
};

const HOUSE = { kind: 'house', part: 'limits', at: null } as const;

describe('the self-check of a page', () => {
  it('goes on while there is time, and one case at least', async () => {
    const { watch, settle, idleOnce } = page(Array.from({ length: 5 }, () => caseOf('house', 0)));
    watch.start();
    await settle();
    idleOnce(2);
    expect(watch.checks().browser.state).toMatchObject({ done: 2 });
    idleOnce(9);
    expect(watch.checks().browser.state.is).toBe('done');
  });

  it('takes one case an idle moment at the least, and says how far it is', async () => {
    const { watch, settle, idleOnce } = page([caseOf('balance', 0), caseOf('balance', 0)]);
    expect(watch.checks().browser.state).toEqual({ is: 'notRun' });
    watch.start();
    await settle();
    idleOnce();
    idleOnce();
    expect(watch.checks().browser.state).toEqual({ is: 'running', done: 1, total: 2 });
    idleOnce();
    idleOnce();
    expect(watch.checks().browser.state.is).toBe('done');
  });

  it('begins once, however often it is started, and tells who listens', async () => {
    const { watch, settle, stillToDo } = page([caseOf('balance', 0)]);
    let heard = 0;
    const leave = watch.subscribe(() => {
      heard += 1;
    });
    watch.start();
    watch.start();
    await settle();
    expect(stillToDo()).toBe(1);
    expect(heard).toBe(1);
    leave();
  });

  it('asks the server soon again while that runs, and seldom when it is done', async () => {
    const answers = [RUNNING, doneWith([])];
    const askServer = async () => answers.shift() ?? doneWith([]);
    const { watch, waits, settle } = page([], { askServer });
    watch.start();
    await settle();
    expect(waits[0]?.milliseconds).toBe(1000);
    waits[0]?.call();
    await settle();
    expect(watch.checks().server?.state.is).toBe('done');
    expect(waits[1]?.milliseconds).toBe(60_000);
  });

  it('keeps what the server found while it is not reached', async () => {
    const answers = [doneWith([caseOf('balance', 9)])];
    const askServer = async () => answers.shift() ?? Promise.reject(new Error('not reached'));
    const { watch, waits, settle } = page([], { askServer });
    watch.start();
    await settle();
    waits[0]?.call();
    await settle();
    expect(failingOn({ kind: 'hangList' }, watch.checks())).toHaveLength(1);
  });

  it('is not run, and stops no screen, where its cases cannot be fetched', async () => {
    const { watch, settle } = page([], { steps: () => Promise.reject(new Error('offline')) });
    watch.start();
    await settle();
    expect(watch.checks().browser.state).toEqual({ is: 'notRun' });
    expect(cellWords(watch.checks())).toBe('not finished');
  });
});

describe('what a screen says of it', () => {
  const well = doneWith([caseOf('balance', 0)]);
  const ill = doneWith([caseOf('beam', 9)]);

  it('is a failed case of what it rests on, and by whom', () => {
    const checks = { browser: ill, server: well };
    expect(failingOn({ kind: 'set', set: '11' }, checks)).toMatchObject([{ who: 'browser' }]);
    expect(failingOn(HOUSE, checks)).toEqual([]);
    const onServer = { browser: well, server: doneWith([caseOf('takeoff', 9)]) };
    expect(failingOn(HOUSE, onServer)).toMatchObject([{ who: 'server' }]);
  });

  it.each([
    { kind: 'hangList' },
    { kind: 'set', set: '1' },
    { kind: 'order', set: '1', job: null, from: null },
    { kind: 'sheets', sheet: null },
    HOUSE,
    { kind: 'selfCheck' },
  ] as const)('rests on what the wall rests on: $kind', (place) => {
    const rests = restsOn(place);
    for (const one of ['house', 'takeoff', 'balance', 'bricks']) expect(rests).toContain(one);
  });

  it('is what an order would set free, on the screens that show one', () => {
    const checks = { browser: doneWith([caseOf('motion', 9)]), server: well };
    const order = { kind: 'order', set: '9', job: null, from: null } as const;
    expect(failingOn(order, checks)).toMatchObject([{ who: 'browser' }]);
    expect(failingOn({ kind: 'sheets', sheet: 'strike-sheet/9' }, checks)).toHaveLength(1);
    expect(failingOn({ kind: 'set', set: '9' }, checks)).toEqual([]);
  });

  it('says an error with the decimal mark and the words of the language', () => {
    const texts = { relative: 'relativ' };
    const tongue = { language: 'de', decimalMark: ',', months: [], date: '', texts } as const;
    const worst = { case: 'VAL-BAL-99', error: 0.0912, tolerance: 0.1, unit: 'relative' };
    expect(errorWords(worst, { words: 'US' })).toBe('0.091 relative');
    expect(errorWords(worst, { words: 'US', tongue })).toBe('0,091 relativ');
  });

  it('is in a few words what both found, the gravest first', () => {
    expect(cellWords({ browser: well, server: well })).toBe('within tolerance');
    expect(cellWords({ browser: well, server: null })).toBe('not finished');
    expect(cellWords({ browser: RUNNING, server: well })).toBe('not finished');
    expect(cellWords({ browser: RUNNING, server: ill })).toBe('FAILED');
  });
});
