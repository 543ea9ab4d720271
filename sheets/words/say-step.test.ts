/** The words of a step: every kind of step has all its parts, and none of them only a sign. */
import { describe, expect, it } from 'vitest';
import type { House } from '#house';
import { stepsBetween } from '#orders';
import { newtons, POUND_FORCE } from '#quantities';
import type { OrderState } from '#rules';
import type { Restraint, Step } from '#state';
import { openExample } from '../../examples/open-example.ts';
import {
  CLOTH,
  dropOut,
  dropPhysics,
  feet,
  inUkWords,
  MID,
  RIGHT,
  RUN,
  strikeOf,
} from '../example-orders.ts';
import { exampleContext } from '../example-sheets.ts';
import { energyWords } from './say-energy.ts';
import { balanceWords, heldWords, platesWords, restraintWords } from './say-standing.ts';
import { type SaidStep, sayStep } from './say-step.ts';
import { stepTitle } from './step-title.ts';

const context = exampleContext(openExample('kestlemere'));
const physics = dropPhysics(context);
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

const wordsIn = (house: House) => ({
  house,
  physics,
  nameOf: () => 'Harbour drop',
  isDoubtTried: true,
  areFaultsTried: true,
});
const us = wordsIn(context.house);

const BULL: Restraint = {
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(55 * POUND_FORCE),
  from: feet(22),
  to: feet(26),
  owner: null,
  tag: null,
};

const KINDS = [
  'bullLine',
  'arborSling',
  'stands',
  'winch',
  'choke',
  'deadHangSteel',
  'pinnedPiece',
] as const;

const STEPS: readonly Step[] = [
  ...(['attachedSlack', 'attachedResting', 'flying'] as const).map(
    (as): Step => ({
      act: 'attach',
      item: CLOTH,
      as,
    }),
  ),
  { act: 'takeUp', item: CLOTH },
  { act: 'rest', item: CLOTH },
  { act: 'release', item: CLOTH },
  { act: 'add', kind: 'F', count: 2, gallery: 'mid' },
  { act: 'remove', kind: 'O', count: 1, gallery: 'upper' },
  { act: 'fly', to: feet(24) },
  { act: 'fly', to: physics.highStop.heightM as ReturnType<typeof feet> },
  ...KINDS.flatMap((kind): readonly Step[] => [
    { act: 'rig', restraint: { ...BULL, kind } },
    { act: 'unrig', restraint: { ...BULL, kind, rating: null, from: null } },
  ]),
  { act: 'hangOnSteel' },
  { act: 'takeOffSteel' },
  { act: 'close', zone: RUN },
  { act: 'reopen', zone: MID },
  { act: 'ease', pull: newtons(20 * POUND_FORCE), lifted: true },
  { act: 'ease', pull: newtons(20 * POUND_FORCE), lifted: false },
];

const stateWith = (lowLb: number, highLb: number, more: Partial<OrderState> = {}): OrderState => ({
  standing: { ...dropOut(context), closed: [MID] },
  imbalance: {
    lowN: lowLb * POUND_FORCE,
    highN: highLb * POUND_FORCE,
    doubtN: 3.2 * POUND_FORCE,
  },
  holdInN: 0,
  holdOutN: 0,
  heldBy: 'against going out: the rope lock',
  limit: 'planning',
  releasableJ: null,
  ...more,
});

const textsOf = (said: SaidStep): readonly string[] =>
  [
    said.who,
    said.where,
    said.does,
    said.stopIf,
    said.call.by,
    said.call.says,
    said.answer.by,
    said.answer.says,
    said.done,
    said.abandon,
    ...said.expect,
    said.pause.words,
    said.zone,
    ...(said.clear === null ? [] : [said.clear]),
    ...said.proofs,
  ].map(plain);

const state = stateWith(-14.8, -14.8);
const between = (step: Step, number = 1) => ({
  step,
  number,
  before: state,
  after: state,
  proofs: ['count the plates aloud'],
});

describe.each([
  ['US', context.house],
  ['UK', inUkWords(context.house)],
] as const)('every kind of step in %s words', (country, house) => {
  it.each(STEPS.map((step, index) => [step.act, index, step] as const))('%s %i', (_, __, step) => {
    const texts = textsOf(sayStep(between(step), wordsIn(house)));
    const title = plain(stepTitle(between(step), wordsIn(house)));
    for (const text of [...texts, title]) {
      expect(text.trim()).not.toBe('');
      expect(text).not.toMatch(/[{}]|undefined|NaN|\[object/);
      expect(text).not.toMatch(/\bsafe(ly|ty|ties)?\b|\bOK\b/i);
      expect(text).not.toMatch(/(^|[\s(])[-\u2212+\u00B1]\s?\d/);
      if (country === 'UK') {
        expect(text).not.toMatch(/\b(battens?|arbors?|bricks?|deck|lb|lbf|ft)\b/i);
      }
    }
  });

  it('calls set and action, and has both read back', () => {
    for (const step of STEPS) {
      const { call, answer, done } = sayStep(between(step), wordsIn(house));
      for (const said of [call.says, answer.says, done]) expect(said).toMatch(/^Set 9: /);
      const [action = ''] = call.says.replace('ring off, ', '').split(/[.?](?: |$)/);
      expect(answer.says).toContain(action);
    }
  });
});

describe('what to expect after a step', () => {
  it('is a size rounded up with its side in words, and the doubt where one was tried', () => {
    expect(plain(balanceWords(state, us))).toBe('15 lb arbor heavy, give or take 4 lb');
    const listed = { ...us, isDoubtTried: false };
    expect(plain(balanceWords(stateWith(20.1, 20.1), listed))).toBe('21 lb batten heavy');
  });

  it('is both ends of the range where a piece rests, which is then no hold point', () => {
    const resting = stateWith(-320.9, 24.7);
    expect(plain(balanceWords(resting, { ...us, isDoubtTried: false }))).toBe(
      'between 321 lb arbor heavy and 25 lb batten heavy, as the piece rests',
    );
    const said = sayStep({ ...between({ act: 'rest', item: CLOTH }), after: resting }, us);
    expect(said.pause).toEqual({
      isHoldPoint: false,
      words: 'No hold point: its rest stays manned.',
    });
  });

  it('is no hold point without faults tried, past the planning limit, or led', () => {
    const step = { act: 'release', item: CLOTH } as const;
    const pauseOf = (after: OrderState, words = us) =>
      sayStep({ ...between(step), after }, words).pause.isHoldPoint;
    expect(pauseOf(state)).toBe(true);
    expect(pauseOf(state, { ...us, areFaultsTried: false })).toBe(false);
    expect(pauseOf({ ...state, limit: 'nominal' })).toBe(false);
    const led = { ...state, standing: { ...state.standing, restraints: [BULL] } };
    expect(pauseOf(led)).toBe(false);
  });

  it('counts plates with the pipe weight apart', () => {
    const { house } = context;
    expect(platesWords(state.standing, house)).toBe(
      '10 plates: 3 old cast of pipe weight; 6 full, 1 half',
    );
    expect(platesWords({ stack: [] }, house)).toBe('no plate on the arbor');
    const spreader = { kind: 'S', count: 2, tag: 'spreader' } as const;
    const one = { kind: 'F', count: 1, tag: 'show' } as const;
    expect(platesWords({ stack: [spreader, one] }, house)).toBe('1 plate on the arbor: 1 full');
  });

  it('says what holds it, each way once, and when nobody may be in its path', () => {
    const both = stateWith(0, 0, {
      heldBy: 'against going in: the low stop; against going out: the rope lock',
      limit: 'nominal',
    });
    expect(heldWords(both, context.house)).toBe(
      'Held against going in by the low stop; against going out by the rope lock. ' +
        'Past the planning limit of the lock: close the run before anything is done.',
    );
    const shut = { ...both, standing: { ...both.standing, closed: [{ zone: 'run' } as const] } };
    expect(heldWords(shut, context.house)).toMatch(/lock: nobody in its path\.$/);
    const balanced = stateWith(0, 0, { heldBy: 'its balance', limit: null });
    expect(heldWords(balanced, context.house)).toBe('Held by its balance.');
  });

  it('tells of more on the way than at either end', () => {
    // The pipe in the hem lands at 28'-3": 28 lb batten heavy just above it (the-job.md 4.7, S3).
    const [first] = stepsBetween(strikeOf(context, RIGHT));
    if (first === undefined) throw new Error('the order has a first step');
    const said = sayStep(first, us).expect.map(plain);
    expect(said.at(-1)).toBe('On the way up to 28 lb batten heavy.');
  });
});

describe('a step of bricks', () => {
  it('warns of a kind that looks like the one in hand, and of nothing where none does', () => {
    const said = (kind: string) =>
      sayStep(between({ act: 'add', kind, count: 1, gallery: 'mid' }), us).does;
    expect(said('F')).toContain('Look at each one: old cast looks like it.');
    expect(said('H')).toBe('Put on 1 half, one at a time, each counted aloud.');
  });

  it('names the closed zones, and keeps everybody from below', () => {
    const said = sayStep(between({ act: 'add', kind: 'H', count: 1, gallery: 'mid' }), us);
    expect(said.zone).toBe('Closed and kept: drop zone of the Mid loading gallery.');
    expect(said.clear).toContain('nobody is at the rail, in the arbor well or on a level below');
  });
});

describe('a restraint', () => {
  it('is named with its direction, rating and heights, or says what is not given', () => {
    expect(plain(restraintWords(BULL, context.house))).toBe(
      'bull line against going out, rated 55 lbf or more, from 22\'-0" to 26\'-0"',
    );
    const bare = { ...BULL, kind: 'stands', resists: 'both', rating: null, to: null } as const;
    expect(restraintWords(bare, context.house)).toBe(
      'stands under the batten both ways, rating not given, heights not given',
    );
  });
});

describe('energy as bricks let fall', () => {
  // E = m·g·h: a full brick is 25 lb, so one of them from 10 ft is 250 ft·lbf, or 338.95 J.
  const GIVEN_J = 250 * 1.355_817_948_331_4;

  it('gives back the fall that made it', () => {
    expect(plain(energyWords(GIVEN_J, physics, context.house))).toBe(
      '339 J, as 1 full let fall 10\'-0"',
    );
  });

  it('takes more bricks before a fall higher than a grid', () => {
    expect(plain(energyWords(GIVEN_J * 20, physics, context.house))).toMatch(
      /^6\.78 kJ, as 4 full let fall 50'-0"$/,
    );
  });

  it('says no bricks where nothing is set free', () => {
    expect(plain(energyWords(0, physics, context.house))).toBe('0 J');
  });
});
