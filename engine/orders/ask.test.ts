/** Asking for an order of work on one set of the demo: what is refused, and how it stands. */
import { describe, expect, it } from 'vitest';
import type { Refusal, Result } from '#outcome';
import { FOOT, metres } from '#quantities';
import type { HouseState, SetState } from '#state';
import { openExample } from '../../examples/open-example.ts';
import {
  bareStart,
  loadGoal,
  type OrderJob,
  openJob,
  plannedStart,
  recordedStart,
  stateGoal,
  strikeGoal,
  WORK_REFUSALS,
  writtenStart,
} from './index.ts';

const { house, show, state } = openExample('kestlemere');

const must = <T>(answer: Result<T, readonly Refusal[]>): T => {
  if (answer.ok) return answer.value;
  throw new Error(JSON.stringify(answer.error));
};

const jobOf = (set: string, record: HouseState = state): OrderJob =>
  must(openJob({ house, show, state: record }, set));

const refusalsOf = (answer: Result<unknown, readonly Refusal[]>): readonly Refusal[] =>
  answer.ok ? [] : answer.error;

const recordOf = (set: string): SetState => {
  const record = state.sets[set];
  if (record === undefined) throw new Error(`set ${set} is recorded`);
  return record;
};

const withRecord = (set: string, change: Partial<SetState>): HouseState => ({
  ...state,
  sets: { ...state.sets, [set]: { ...recordOf(set), ...change } },
});

const feet = (n: number) => metres(n * FOOT);

describe('a job', () => {
  it('[WRK-001] is not opened without a record: that is unknown, never bare', () => {
    const [refusal] = refusalsOf(openJob({ house, show, state: null }, '9'));
    expect(refusal).toMatchObject({ code: 'WRK-001', found: 'no record of how things stand' });
  });

  it('[WRK-002] is one of a set of the house', () => {
    const [refusal] = refusalsOf(openJob({ house, show, state }, '99'));
    expect(refusal).toMatchObject({ code: 'WRK-002', found: '99' });
    expect(refusal?.accepted).toContain('D3');
  });

  it('[WRK-003] names everything that is not known of the set', () => {
    const lineSets = house.lineSets.map((each) =>
      each.id === '9'
        ? { ...each, workingHeight: { known: false, why: 'not surveyed' } as const }
        : each,
    );
    const refusals = refusalsOf(openJob({ house: { ...house, lineSets }, show, state }, '9'));
    expect(refusals).toHaveLength(1);
    expect(refusals[0]).toMatchObject({ code: 'WRK-003', path: 'set 9', found: 'unknown' });
    expect(refusals[0]?.accepted).toContain('working height');
  });

  it('[WRK-004] is not one of a set that never moves alone', () => {
    const [refusal] = refusalsOf(openJob({ house, show, state }, '23'));
    expect(refusal).toMatchObject({ code: 'WRK-004', found: 'set 23, coupled with 27' });
  });

  it('[WRK-005] is not one of a set that carries a person', () => {
    const hangs = show.hangs.map((hang) =>
      hang.set === '9'
        ? { ...hang, items: hang.items.map((item) => ({ ...item, carriesPerson: true })) }
        : hang,
    );
    const [refusal] = refusalsOf(openJob({ house, show: { ...show, hangs }, state }, '9'));
    expect(refusal).toMatchObject({ code: 'WRK-005', accepted: 'a set that carries none' });
    expect(refusal?.found).toMatch(/^set 9: .* carries a person$/);
  });

  it('is declared with a code for each refusal, in order', () => {
    expect(WORK_REFUSALS.map(({ code }) => code)).toEqual(
      [1, 2, 3, 4, 5].map((number) => `WRK-00${number}`),
    );
  });
});

describe('where it begins', () => {
  it('is what the record has, said with its moment and its writer', () => {
    const { standing, assumed } = must(recordedStart(jobOf('9')));
    expect(standing.height).toBeCloseTo(feet(28.25), 9);
    expect(assumed).toEqual([{ is: 'recorded', set: '9', at: state.at, by: state.by }]);
  });

  it('[WRK-003] is not a record that leaves something out', () => {
    const refusals = refusalsOf(recordedStart(jobOf('9', withRecord('9', { stack: null }))));
    expect(refusals.map(({ accepted }) => accepted)).toContain('what is on the arbor');
    const strange = withRecord('9', { items: [{ item: 'moon', phase: 'flying' }] });
    const [refusal] = refusalsOf(recordedStart(jobOf('9', strange)));
    expect(refusal).toMatchObject({ code: 'WRK-003', path: 'sets.9.items' });
    expect(refusal?.accepted).toContain('moon');
  });

  it.each([
    ['a hand below its low stop', 2.8, 3],
    ['a hand above its high stop', 61.3, 61],
  ])('%s is on the stop, and that is said', (_, recordedFt, standsFt) => {
    const height = { low: feet(recordedFt), high: feet(recordedFt) };
    const { standing, assumed } = must(recordedStart(jobOf('9', withRecord('9', { height }))));
    expect(standing.height).toBeCloseTo(feet(standsFt), 9);
    expect(assumed).toContainEqual({ is: 'onStop' });
  });

  it('is no stop for what is recorded a foot below it', () => {
    const height = { low: feet(2), high: feet(2) };
    const { standing, assumed } = must(recordedStart(jobOf('9', withRecord('9', { height }))));
    expect(standing.height).toBeCloseTo(feet(2), 9);
    expect(assumed).not.toContainEqual({ is: 'onStop' });
  });

  it('is bare because somebody says so, with its recorded bricks to be brought', () => {
    const { standing, assumed } = must(bareStart(jobOf('9')));
    expect(standing.stack.every(({ tag }) => tag === 'pipe')).toBe(true);
    expect(standing.height).toBeCloseTo(feet(3), 9);
    expect(assumed).toEqual([
      { is: 'saidBare', set: '9' },
      {
        is: 'bricksBack',
        set: '9',
        bricks: [
          { kind: 'F', count: 6 },
          { kind: 'H', count: 1 },
        ],
      },
    ]);
  });

  it('brings nothing where the record is bare too, or there is none', () => {
    const pipe = recordOf('9').stack?.filter(({ tag }) => tag === 'pipe') ?? [];
    for (const record of [withRecord('9', { stack: pipe }), withRecord('9', { stack: null })]) {
      expect(must(bareStart(jobOf('9', record))).assumed).toEqual([{ is: 'saidBare', set: '9' }]);
    }
  });

  it('is as an order writes it, with what is missing of the recorded bricks', () => {
    const job = jobOf('9');
    const { standing } = must(recordedStart(job));
    expect(writtenStart(job, standing).assumed).toEqual([{ is: 'asTheOrderWrites', set: '9' }]);
    const fewer = standing.stack.map((run) => (run.kind === 'F' ? { ...run, count: 4 } : run));
    expect(writtenStart(job, { ...standing, stack: fewer }).assumed[1]).toEqual({
      is: 'bricksBack',
      set: '9',
      bricks: [{ kind: 'F', count: 2 }],
    });
  });

  it('is as the show plans it: all hung, all bricks on, at the highest trim', () => {
    const { standing, assumed } = must(plannedStart(jobOf('9')));
    expect(assumed).toEqual([{ is: 'asPlanned', set: '9' }]);
    expect(standing.height).toBeCloseTo(feet(60.5), 6);
    expect(standing.items).toEqual({ cloth: 'flying' });
    const planned = standing.stack.filter(({ tag }) => tag === 'show');
    expect(planned.map(({ kind, count }) => [kind, count])).toEqual([
      ['F', 6],
      ['H', 1],
    ]);
  });

  it('is on its steel where the show dead-hangs it, rated as recorded or not at all', () => {
    const { standing } = must(plannedStart(jobOf('D3')));
    expect(standing).toMatchObject({ service: 'deadHung', items: { frame: 'heldElsewhere' } });
    expect(standing.restraints[0]?.rating).toBeCloseTo(1000 * 4.4482216152605, 6);
    const bare = must(plannedStart(jobOf('D3', withRecord('D3', { restraints: [] }))));
    expect(bare.standing.restraints).toMatchObject([{ kind: 'deadHangSteel', rating: null }]);
  });

  it('[WRK-003] is not planned where nothing hangs', () => {
    const [refusal] = refusalsOf(plannedStart(jobOf('4')));
    expect(refusal?.accepted).toBe('what the show hangs on it');
    expect(refusalsOf(loadGoal(jobOf('4'), null))[0]?.accepted).toBe('what the show hangs on it');
  });
});

describe('what is wanted', () => {
  it('of a load is all of it, at its highest trim where no height is said', () => {
    const goal = must(loadGoal(jobOf('9'), null));
    expect(goal).toMatchObject({ items: { cloth: 'on' }, bricks: { F: 6, H: 1 }, service: 'in' });
    expect(goal.height).toBeCloseTo(feet(60.5), 6);
    expect(must(loadGoal(jobOf('9'), feet(40))).height).toBe(feet(40));
  });

  it('of a strike is everything away, with what only the start names', () => {
    const job = jobOf('9');
    const { standing } = must(recordedStart(job));
    const more = { ...standing, items: { ...standing.items, lamp: 'flying' as const } };
    expect(must(strikeGoal(job, more, null))).toEqual({
      items: { cloth: 'away', lamp: 'away' },
      bricks: {},
      height: null,
      service: 'in',
    });
  });

  it('of another record is what that record has', () => {
    const wanted = withRecord('9', {
      items: [{ item: 'cloth', phase: 'beside' }],
      stack: [
        { kind: 'O', count: 3, tag: 'pipe' },
        { kind: 'F', count: 2, tag: 'show' },
        { kind: 'F', count: 1, tag: 'show' },
      ],
    });
    const goal = must(stateGoal(jobOf('9'), wanted, null));
    expect(goal).toMatchObject({ items: { cloth: 'away' }, bricks: { F: 3 }, service: 'in' });
    const [refusal] = refusalsOf(stateGoal(jobOf('9'), { ...wanted, sets: {} }, null));
    expect(refusal?.code).toBe('WRK-003');
  });
});
