/**
 * Orders of work that the planner finds on Kestlemere, bricks handled on the way, against the
 * scenarios of the demo's plan (4.7; its own computed figures, in whole pounds, so no outside
 * check). The plan works at the nominal limit of the lock, zone clear, masses as written; so do
 * these, unless they say not.
 */
import { describe, expect, it } from 'vitest';
import {
  allOn,
  ask,
  count,
  deeds,
  expectHeld,
  expectLb,
  highsLb,
  must,
  NOMINAL,
  title,
} from './plan-asked.ts';
import {
  asFeet,
  asPounds,
  bareOn,
  feet,
  hungOn,
  hungSet,
  imbalanceLb,
  showRuns,
} from './plan-sets.ts';

describe('S3 and S4 Harbour drop', () => {
  const set = hungSet('9');
  const load = ask(set, bareOn(set, 3), { all: 'on', bricks: { F: 6, H: 1 }, height: feet(60.5) });
  const strike = ask(set, hungOn(set, 60.5, showRuns(6, 1)), { all: 'away' });

  it(`hangs in two parcels (${title(load)})`, () => {
    const found = must(load);
    expectHeld(found);
    // The plan: up to 24 ft, then to trim; one parcel at each gallery but for the half brick.
    expect(count(found, ['fly'])).toBeLessThanOrEqual(3);
    expect(count(found, ['add', 'remove'])).toBeLessThanOrEqual(3);
    expectLb(highsLb(found).at(-1), -15);
  });

  it(`stops for bricks on the way in (${title(strike)})`, () => {
    const found = must(strike);
    expectHeld(found);
    expect(count(found, ['fly'])).toBeLessThanOrEqual(3);
    expect(count(found, ['remove'])).toBeLessThanOrEqual(3);
    const words = deeds(found);
    expect(words[0]).toBe('fly');
    expect(words[1]).toMatch(/^remove .* mid$/);
    expectLb(highsLb(found).at(-1), 49);
  });

  it('weighs what the plan says on the way', () => {
    const at = (heightFt: number, full: number, half: number): number =>
      imbalanceLb(set, heightFt, showRuns(full, half), allOn(set)).high;
    expectLb(at(4, 0, 0), 63);
    expectLb(at(4, 4, 0), -37);
    expectLb(at(24, 4, 0), 22);
    expectLb(at(24, 6, 1), -41);
    expectLb(at(4, 6, 1), -99);
    expectLb(at(3, 4, 0), -40);
    expectLb(at(3, 0, 0), 60);
    expectLb(at(60.5, 6, 1), -15);
    const touch = imbalanceLb(set, 28.25, showRuns(6, 1), allOn(set));
    expectLb(touch.low, -28);
    expectLb(touch.high, 28);
  });

  it('[trap 7] cannot put seven full bricks on for every mass in doubt', () => {
    const seven = { all: 'on', bricks: { F: 7 }, height: feet(60.5) } as const;
    const plan = ask(set, bareOn(set, 3), seven, { lock: 'nominal', restraint: 'none' });
    expect(plan).toMatchObject({ none: { exhaustive: true, rule: 'HOLD' } });
    // At 24 ft the last brick needs 53 lb, as the plan says; at 25.4 ft, which is still in reach
    // of the mid gallery, it needs 49: there the plan's "not loadable" does not hold.
    const at24 = imbalanceLb(set, 24, showRuns(7, 0), allOn(set)).high;
    expectLb(at24, -53);
    const found = must(ask(set, bareOn(set, 3), seven));
    const least = Math.min(...highsLb(found));
    expect(least).toBeLessThan(-48);
    expect(least).toBeGreaterThanOrEqual(-50);
  });
});

describe('S5 House curtain, strike', () => {
  const set = hungSet('1');
  // The half brick lies lower in the stack.
  const start = hungOn(set, 60.5, [...showRuns(0, 1), ...showRuns(21, 0)]);
  const quarter = feet(0.25);
  const options = { ...NOMINAL, restraint: 'out', restraintStepN: 5 * 4.4482216152605 } as const;
  const exact = ask(set, start, { all: 'away' }, options);
  const grid = ask(set, start, { all: 'away' }, { ...options, heightStepM: quarter });

  it(`needs 195 lb against going out (${title(exact)})`, () => {
    const found = must(exact);
    expectHeld(found);
    expectLb(asPounds(found.restraint?.rated ?? 0), 195);
    expect(found.restraint?.resists).toBe('out');
    expect(found.restraint?.refutedStates).toBeGreaterThan(0);
    // Mid gallery takes 4, 3 and 1, upper the rest in two visits, the plan says.
    expect(count(found, ['fly'])).toBeLessThanOrEqual(6);
  });

  it(`needs 200 lb at heights of a quarter foot, as the table has it (${title(grid)})`, () => {
    expectLb(asPounds(must(grid).restraint?.rated ?? 0), 200);
  });

  it('has none without, and says what would do', () => {
    const plan = ask(set, start, { all: 'away' });
    expect(plan).toMatchObject({
      none: { exhaustive: true, rule: 'HOLD', smallestChange: { change: 'restraint' } },
    });
  });
});

describe('S6 and S7 Clock tower flat', () => {
  const set = hungSet('11');
  const load = ask(set, bareOn(set, 3), { all: 'on', bricks: { F: 25, H: 1 }, height: feet(60) });
  const strike = ask(set, hungOn(set, 60, showRuns(25, 1)), { all: 'away' });

  it(`loads against its rest, and the other half at contact (${title(load)})`, () => {
    const found = must(load);
    expectHeld(found);
    expect(count(found, ['fly'])).toBeLessThanOrEqual(3);
    const atContact = found.states.filter(
      ({ standing }) => Math.abs(asFeet(standing.height) - 23) < 1e-6,
    );
    expect(atContact.length).toBeGreaterThan(1);
    const last = atContact.at(-1);
    expectLb(asPounds(last?.imbalance.lowN ?? 0), -321);
    expectLb(asPounds(last?.imbalance.highN ?? 0), 25);
    expectLb(highsLb(found).at(-1), -24);
  });

  it(`takes bricks off at contact and lets the head down first (${title(strike)})`, () => {
    const found = must(strike);
    expectHeld(found);
    const words = deeds(found);
    expect(words[0]).toBe('fly');
    expect(words[1]).toMatch(/^remove/);
    expect(words.indexOf('rest flat')).toBeGreaterThan(1);
    expect(words.indexOf('release flat')).toBeGreaterThan(words.indexOf('rest flat'));
    expect(count(found, ['fly'])).toBeLessThanOrEqual(3);
  });

  it('weighs what the plan says', () => {
    const resting = imbalanceLb(set, 4, showRuns(12, 0), { flat: 'attachedResting' });
    expectLb(resting.low, -253);
    expectLb(resting.high, 42);
    expectLb(imbalanceLb(set, 22.9, showRuns(12, 0), { flat: 'flying' }).high, 17);
    expectLb(imbalanceLb(set, 23, showRuns(12, 0), { flat: 'flying' }).high, 363);
    expectLb(imbalanceLb(set, 4, showRuns(25, 1), { flat: 'flying' }).high, -296);
  });
});

describe('S14 Iron bridge at contact', () => {
  it('may be anywhere between 482 arbor heavy and 38 batten heavy', () => {
    const set = hungSet('36');
    const touch = imbalanceLb(set, 15, showRuns(20, 1), { bridge: 'flying' });
    expectLb(touch.low, -482);
    expectLb(touch.high, 38);
  });
});
