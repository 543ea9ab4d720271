/** What prints while a call is open: the note for the next head flyman is made of the call. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type SheetContext, sheetContext, sheetOf } from '#sheets';
import { openExample } from '../../examples/open-example.ts';
import { roomOf } from './call-parts.ts';
import { type CallStage, type Headers, openCallStage } from './call-stage.ts';

let stage: CallStage;
let lead: Headers;

beforeEach(async () => {
  stage = await openCallStage();
  lead = await stage.owner(['lead']);
});
afterEach(() => stage.close());

const { house, show, state, selfCheck } = openExample('kestlemere');
const stamp = { revision: 'x', printedAt: '2026-11-28T10:00:00Z', printedBy: 'x' };
const context = sheetContext(house, show, state, { stamp, selfCheck, clockMs: 0 });

const codeWith = (sheet: string, now: SheetContext['now'] = null): string => {
  const made = sheetOf({ ...context, now }, sheet);
  if (made === undefined) throw new Error(`no sheet ${sheet}`);
  return made.footer.code;
};

const answerTo = async (sheet: string, code: string): Promise<string> => {
  const asked = new URLSearchParams({ house: 'kestlemere', show: 'vell', sheet, code });
  return (await stage.ask(lead, { url: `/api/sheet-code?${asked}` })).body.answer;
};

const SHEETS = ['handover', 'preset-check'] as const;

/** What is said of both, one after the other: a call is opened once, which judges every set. */
const answers = (codes: readonly string[]): Promise<readonly string[]> =>
  Promise.all(SHEETS.map((sheet, index) => answerTo(sheet, codes[index] ?? '')));

describe('handover and preset check', () => {
  it('are of the call while one is open, and superseded by what is told in it', async () => {
    const codesNow = (): readonly string[] =>
      SHEETS.map((sheet) => codeWith(sheet, roomOf(stage.databases()).now()));
    const ofRecord = SHEETS.map((sheet) => codeWith(sheet));
    expect(await answers(ofRecord)).toEqual(['current', 'current']);
    const call = await stage.opened(lead, 'rail-tablet');
    expect(await answers(ofRecord)).toEqual(['superseded', 'superseded']);
    const asOpened = codesNow();
    expect(await answers(asOpened)).toEqual(['current', 'current']);
    await stage.give(lead, 'set doubted', { device: 'rail-tablet', call });
    expect(await answers(asOpened)).toEqual(['superseded', 'superseded']);
    expect(await answers(codesNow())).toEqual(['current', 'current']);
  });
});
