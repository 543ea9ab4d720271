/** Lines, ties and steel on a move, one kind at a time; and a low stop as high as the deck. */
import { describe, expect, it } from 'vitest';
import { metres, newtons } from '#quantities';
import type { OrderNode, OrderPhysics, Restraint, Standing } from '#state';
import {
  bullLine,
  DROPS,
  fly,
  hungAt,
  RUN,
  rulesOf,
  standingAt,
  type Trial,
  tried,
} from './example-order.ts';

const closed = [RUN, ...DROPS];
const span = (from: number, to: number, changes: Partial<Restraint> = {}): Restraint =>
  bullLine({ from: metres(from), to: metres(to), ...changes });

describe('what counts under way', () => {
  it('[ORD-007] is a bull line, and no winch that hauls', () => {
    const opened = (kind: Restraint['kind']) =>
      rulesOf({ start: hungAt(3, 8, { restraints: [bullLine({ kind })] }), steps: [fly(2)] });
    expect(opened('bullLine')).toEqual([]);
    expect(opened('winch')).toEqual(expect.arrayContaining(['ORD-007', 'ORD-008']));
  });

  it('[ORD-009] hauls nothing with what is tied', () => {
    // 70 N arbor heavy at 2 m, and 130 N at 8 m, against hands for 100.
    const hauled = (kind: Restraint['kind']) =>
      rulesOf({
        plant: { more: { handsBriefN: 100 } },
        start: hungAt(2, 4, { restraints: [span(1, 19, { kind })] }),
        steps: [fly(8)],
      });
    expect(hauled('winch')).toEqual([]);
    expect(hauled('arborSling')).toEqual(['ORD-011', 'ORD-009']);
    expect(hauled('pinnedPiece')).toEqual(['ORD-011', 'ORD-009']);
  });

  it('[ORD-018] stops the order in place of a tie that nobody rated', () => {
    const restraints = [span(3, 3, { kind: 'arborSling', rating: null })];
    expect(rulesOf({ start: hungAt(3, 3, { restraints }), steps: [fly(4)] })).toEqual(['ORD-018']);
  });

  it('[ORD-008] is read in the order of the heights, whatever the register says first', () => {
    // Three bricks: −280 N at 3 m with the tower on the deck, 190 N where it flies at 6 m.
    const restraints = [span(4.5, 19), span(1, 4.5)];
    const start = standingAt(3, 3, { items: { tower: 'flying' }, closed, restraints });
    expect(rulesOf({ start, steps: [fly(8)] })).toEqual([]);
  });

  it('[ORD-008] takes the height where two lines meet for no stretch of the way', () => {
    const doubtful = (standing: Standing) => ({
      lowN: 0,
      highN: 0,
      doubtN: standing.height === 6 ? 250 : 10,
    });
    const through = (...restraints: readonly Restraint[]) =>
      rulesOf({
        plant: { more: { at: doubtful } },
        start: standingAt(5, 0, { closed: [RUN], restraints }),
        steps: [fly(7)],
        options: { doubt: 'worst' },
      });
    expect(through(span(1, 6), span(6, 19))).toEqual([]);
    expect(through(span(1, 5.5), span(5.5, 6), span(6, 19))).toEqual([]);
  });
});

describe('steel on a set in use', () => {
  const steel = (rating: Restraint['rating']) =>
    span(3, 3, { kind: 'deadHangSteel', resists: 'both', rating });

  it('[ORD-001] holds a batten that would come in, and no arbor', () => {
    // 320 N, and −480 N with five bricks and nothing on the batten.
    const restraints = [steel(newtons(1000))];
    expect(tried({ start: hungAt(3, 0, { restraints }) })).toMatchObject({
      broken: null,
      states: [{ holdInN: 1000, holdOutN: 200, heldBy: 'against going in: the dead-hang steel' }],
    });
    expect(rulesOf({ start: standingAt(3, 5, { restraints }) })).toEqual(['ORD-001']);
  });

  it('carries nothing that it is not rated for', () => {
    const start = standingAt(3, 3, {
      items: { frame: 'heldElsewhere' },
      service: 'deadHung',
      restraints: [steel(null)],
    });
    expect(tried({ start }).states[0]?.imbalance).toEqual({ lowN: 20, highN: 20, doubtN: 6 });
  });
});

describe('what rides along', () => {
  const phasesAfter = (items: Standing['items'], fromM: number, toM: number) =>
    tried({ start: standingAt(fromM, 0, { items, closed: [RUN] }), steps: [fly(toM)] }).states.at(
      -1,
    )?.standing.items;

  it('leaves alone what something else holds', () => {
    expect(phasesAfter({ frame: 'heldElsewhere' }, 1, 2)).toEqual({ frame: 'heldElsewhere' });
    expect(phasesAfter({ frame: 'heldElsewhere' }, 2, 1)).toEqual({ frame: 'heldElsewhere' });
  });

  it('leaves a piece on its horses, whose picks go slack', () => {
    expect(phasesAfter({ tower: 'attachedResting' }, 1.2, 1)).toEqual({ tower: 'attachedSlack' });
    expect(phasesAfter({ tower: 'attachedResting' }, 6, 5)).toEqual({ tower: 'flying' });
  });
});

describe('a batten that comes in to the deck', () => {
  const node = (heightM: number): OrderNode => ({
    heightM,
    belowN: 0,
    aboveN: 0,
    contact: { lowN: 0, highN: 0 },
    doubtN: 0,
  });
  const level: Partial<OrderPhysics> = {
    lowStop: { heightM: -1, ratedN: 6000 },
    at: () => ({ lowN: 0, highN: 0, doubtN: 0 }),
    curve: () => [node(-1), node(19)],
  };
  const moved = (phase: 'flying' | 'attachedResting', fromM: number, toM: number): Trial => ({
    plant: { more: level },
    start: standingAt(fromM, 0, { items: { lamp: phase }, closed: [RUN] }),
    steps: [fly(toM)],
  });

  it('lands no item that has no height of contact', () => {
    expect(tried(moved('flying', 2, 0)).proofsDue.map(({ proof }) => proof)).toEqual([
      'inch test before it is flown: an inch out, an inch in, then lock and look',
    ]);
  });

  it('takes none along that rests there on horses', () => {
    const { states } = tried(moved('attachedResting', 0, -1));
    expect(states.at(-1)?.standing.items).toEqual({ lamp: 'attachedSlack' });
  });
});
