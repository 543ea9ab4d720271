import { describe, expect, it } from 'vitest';
import { GRAVITY } from '#quantities';
import { answerTotals, type TotalsAsked } from './answer-totals.ts';

const SET: TotalsAsked['states'][number]['sets'][number] = {
  set: '1',
  bay: 'A',
  purchase: 1,
  arborMass: 100,
  handLineMass: 10,
  lines: [{ x: 0, tension: 500 }],
};
const ASKED: TotalsAsked = {
  bays: ['A'],
  wells: [{ id: 'W', x: 0, width: 1 }],
  movingShare: 0.25,
  states: [
    { name: 'at rest', sets: [SET] },
    { name: 'moving', sets: [{ ...SET, moving: true }] },
    { name: 'bare', sets: [{ ...SET, arborMass: 50, lines: [{ x: 3, tension: 200 }] }] },
  ],
};

describe('what compute totals answers', () => {
  it('totals every state, and takes what is left out as none', () => {
    const { states, floors } = answerTotals(ASKED);
    expect(states.map(({ name }) => name)).toEqual(['at rest', 'moving', 'bare']);
    const verticalKg = states.map(({ bays }) => (bays[0]?.vertical.value ?? 0) / GRAVITY);
    [110, 137.5, 60].forEach((kg, index) => {
      expect(verticalKg[index]).toBeCloseTo(kg, 9);
    });
    expect(states.map(({ wells }) => wells[0]?.value)).toEqual([500, 625, 0]);
    expect(states[2]?.linesOnNoWell).toEqual([{ set: '1', x: 3 }]);
    expect(floors).toEqual([]);
  });

  it('adds wire where it is given, and nothing for movement without a share', () => {
    const { movingShare, ...rest } = ASKED;
    const sets = [{ ...SET, arborWireMass: 7, moving: true }];
    const [state] = answerTotals({ ...rest, states: [{ name: 'one', sets }] }).states;
    expect((state?.bays[0]?.vertical.value ?? 0) / GRAVITY).toBeCloseTo(117, 9);
    expect((state?.bays[0]?.horizontal.value ?? 0) / GRAVITY).toBeCloseTo(107, 9);
  });

  it('names the state in which each is worst', () => {
    const { worst } = answerTotals(ASKED);
    expect(worst.vertical.map(({ state }) => state)).toEqual(['moving']);
    expect(worst.horizontal.map(({ state }) => state)).toEqual(['moving']);
    expect(worst.wells.map(({ state, total }) => [state, total.value])).toEqual([['moving', 625]]);
    const still = answerTotals({ ...ASKED, movingShare: 0 });
    expect(still.worst.vertical.map(({ state }) => state)).toEqual(['at rest']);
  });

  it('leaves a set without a bay to its own steel', () => {
    const { bay, ...own } = SET;
    const { states } = answerTotals({ ...ASKED, states: [{ name: 'one', sets: [own] }] });
    expect(states[0]?.bays[0]?.vertical.value).toBe(0);
    expect(states[0]?.wells[0]?.value).toBe(500);
  });

  it('loads the gallery floors', () => {
    const bricks = [{ count: 40, mass: 10, floorLength: 0.2 }];
    const floor = { id: 'upper', length: 4, width: 1, peopleAndTools: 200, bricks };
    const { floors } = answerTotals({ ...ASKED, floors: [floor] });
    expect(floors).toHaveLength(1);
    expect(floors[0]?.pressure).toBeCloseTo(150 * GRAVITY, 9);
    expect(floors[0]?.courses).toBe(2);
    expect(floors[0]?.lineLoad).toBeCloseTo(100 * GRAVITY, 9);
  });
});
