/** Heights are those of the demo's own plan and record (the-job.md 10.4 to 10.6), in feet. */
import { describe, expect, it } from 'vitest';
import { FOOT } from '#quantities';
import { openExample } from '../../examples/open-example.ts';
import type { HouseMoment } from './moments.ts';
import { cueMoment, recordedMoment, stepMoment, trimMoment, trimNames } from './moments.ts';

const { assessment, show, state } = openExample('kestlemere');
const { sets } = assessment;

const feet = (moment: HouseMoment, set: string): number | null => {
  const heightM = moment.sets.get(set)?.heightM ?? null;
  return heightM === null ? null : Math.round((heightM / FOOT) * 1000) / 1000;
};

describe('a moment of the house', () => {
  it('as recorded is where the record has each set, and says that it is recorded', () => {
    const moment = recordedMoment(sets);
    expect(moment.is).toBe('recorded');
    for (const [set, { height }] of Object.entries(state.sets)) {
      const one = height !== null && height.low === height.high ? height.low : null;
      expect(moment.sets.get(set)?.heightM ?? null).toBe(one);
    }
  });

  it('as recorded is unknown where only two heights are known, between which it is', () => {
    const [first] = sets;
    if (first === undefined) throw new Error('the demo has sets');
    const height = { low: 1, high: 2 };
    const between = { ...first.recorded.state, height } as typeof first.recorded.state;
    const moment = recordedMoment([{ ...first, recorded: { ...first.recorded, state: between } }]);
    expect(moment.sets.get(first.lineSet.id)?.heightM).toBeNull();
    const unread = { ...between, items: null };
    const unknown = recordedMoment([{ ...first, recorded: { ...first.recorded, state: unread } }]);
    expect(unknown.sets.get(first.lineSet.id)?.items).toBeNull();
  });

  it('at a trim has every set that has it there, the others at their highest', () => {
    expect(trimNames(sets)[0]).toBe('playing');
    const low = trimMoment(sets, 'in');
    expect(low.is).toBe('planned');
    // The house curtain plays from 30.5 ft in to 60.5 ft out.
    expect(feet(low, '1')).toBe(30.5);
    expect(feet(trimMoment(sets, 'out'), '1')).toBe(60.5);
    // Legs 1 have one trim, playing, at 30.25 ft.
    expect(feet(low, '8')).toBe(30.25);
  });

  it('leaves a set that the show does not use on its low stop, with nothing on it', () => {
    const moment = trimMoment(sets, 'playing');
    expect(feet(moment, '4')).toBe(3);
    expect(moment.sets.get('4')?.items).toEqual([]);
  });

  it('after cues is where the last of them left it, and before its first where that begins', () => {
    // Cue 1 takes the curtain from 30.5 to 60.5 ft; cues 3 and 4 bring the sign in and out again.
    expect(feet(cueMoment(sets, show.cues, 0), '1')).toBe(30.5);
    expect(feet(cueMoment(sets, show.cues, 1), '1')).toBe(60.5);
    expect(feet(cueMoment(sets, show.cues, 2), '17')).toBe(58);
    expect(feet(cueMoment(sets, show.cues, 3), '17')).toBe(28);
    expect(feet(cueMoment(sets, show.cues, 4), '17')).toBe(58);
    expect(feet(cueMoment(sets, show.cues, 4), '8')).toBe(30.25);
  });

  it('after a step of an order is planned, all of it', () => {
    const items = { cloth: 'away', pipe: 'flying', loom: 'attachedSlack', far: 'beside' } as const;
    const moment = stepMoment(recordedMoment(sets), '9', { height: 2 as never, items });
    expect(moment.is).toBe('planned');
    expect(moment.sets.get('9')).toEqual({ heightM: 2, items: ['pipe', 'loom'] });
    expect(moment.sets.get('11')).toEqual(recordedMoment(sets).sets.get('11'));
  });
});
