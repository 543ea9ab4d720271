import { describe, expect, it } from 'vitest';
import { showOrders } from '#orders';
import type { PostId } from '#state';
import { openExample } from '../examples/open-example.ts';
import { type Drill, openDrill } from './drill.ts';
import { openRun } from './drill-run.ts';
import { type DrillStart, drillStart } from './drill-start.ts';
import { type DrillFault, faultsOf } from './drill-world.ts';

const AT = '2026-11-25T17:00:00Z';
const startMs = Date.parse(AT);
const documents = openExample('kestlemere');

const orders = showOrders(documents.house, documents.show, documents.state);

const startOf = (set: string, job: 'load' | 'strike'): DrillStart => {
  const worked = orders.of(set, job);
  const start = 'order' in worked ? drillStart(documents, worked, AT) : null;
  if (start === null) throw new Error(`the demo has an order for set ${set}`);
  return start;
};

const harbour = startOf('9', 'load');

const begin = (start: DrillStart, trainee: PostId, fault: DrillFault | null): Drill =>
  openDrill({ ...start, trainee, fault, startMs });

const MOST = 400;

/** As somebody who does all that is told and looks at nothing. */
const trusting = (drill: Drill) => {
  for (let turn = 0; turn < MOST && drill.view().end === null; turn++) {
    if (drill.view().isTrainee) drill.asTold();
    else drill.goOn();
  }
  return drill.view();
};

/** On until the one who learns is asked for a count. */
const toCount = (drill: Drill) => {
  for (let turn = 0; turn < MOST; turn++) {
    const view = drill.view();
    if (view.end !== null) throw new Error(`over before a count: ${JSON.stringify(view.end)}`);
    if (view.isTrainee && view.turn?.does === 'second' && view.turn.plates !== null) return view;
    if (view.isTrainee) drill.asTold();
    else drill.goOn();
  }
  throw new Error('nobody asks for a count');
};

const actAt = (step: number): string => harbour.steps[step]?.act ?? '';

const addAt = harbour.steps.findIndex(({ act }) => act === 'add');
const miscount = (by: number): DrillFault => ({ is: 'miscount', step: addAt, by });

describe('a drill', () => {
  it('is worked to its end where nothing is planted, and says that it is a drill', () => {
    const view = trusting(begin(harbour, 'headFly', null));
    expect(view.end).toEqual({ is: 'done', step: harbour.steps.length - 1, isWrong: false });
    expect(view.now.call?.isDrill).toBe(true);
    expect(view.debrief).toBeNull();
  });

  it('a miscount ends in doubt when the second counts', () => {
    const drill = begin(harbour, 'headFly', miscount(-1));
    const { turn } = toCount(drill);
    const told = turn?.does === 'second' ? (turn.plates ?? 0) : 0;
    drill.act({ does: 'look' });
    const truly = (drill.view().seen?.stack ?? []).reduce((sum, { count }) => sum + count, 0);
    expect(truly).toBe(told - 1);
    drill.act({ does: 'second', plates: truly });
    const { end, now, debrief } = drill.view();
    expect(end).toMatchObject({ is: 'caught', by: 'headFly', how: 'count' });
    expect(now.sets['9']?.standing).toBeNull();
    expect(now.sets['9']?.doubt).toMatch(/^two counts differ/);
    expect(debrief?.plates).toEqual({ told, truly });
    expect(debrief?.count?.step).toBeGreaterThan(addAt);
  });

  it('a miscount that nobody counts lets the set go', () => {
    const { end, now, debrief } = trusting(begin(harbour, 'headFly', miscount(-2)));
    if (end?.is !== 'ranAway') throw new Error(`it ended otherwise: ${JSON.stringify(end)}`);
    expect(end.ran.energyJ).toBeGreaterThan(0);
    expect(end.ran.rule).toMatch(/^ORD-0/);
    expect(now.sets['9']?.doubt).toMatch(/^RUNAWAY/);
    expect(debrief?.ran).toMatchObject({ step: end.step, rule: end.ran.rule });
    expect(debrief?.rule?.rule).toMatch(/^ORD-/);
  });

  it('a STOP after the fault catches it, and before it is lifted and goes on', () => {
    const drill = begin(harbour, 'rail', miscount(-1));
    drill.act({ does: 'stop' });
    expect(drill.view()).toMatchObject({ end: null, stoppedForNothing: true });
    expect(drill.view().now.stops).toEqual([]);
    for (let turn = 0; turn < MOST && drill.view().step <= addAt; turn++) {
      if (drill.view().isTrainee) drill.asTold();
      else drill.goOn();
    }
    drill.act({ does: 'stop' });
    expect(drill.view().end).toMatchObject({ is: 'caught', by: 'rail', how: 'stop' });
  });

  it('what was found puts the record right again', () => {
    const drill = begin(harbour, 'headFly', miscount(-1));
    toCount(drill);
    drill.act({ does: 'found' });
    const { end, now, debrief } = drill.view();
    expect(end).toMatchObject({ is: 'caught', how: 'found' });
    expect(debrief?.plates.told).toBe(debrief?.plates.truly);
    expect(now.sets['9']?.plan).toBeNull();
  });

  it('a piece that is not tied on lets the arbor go when the bricks are on', () => {
    const step = harbour.steps.findIndex(({ act }) => act === 'attach');
    const { end, debrief } = trusting(begin(harbour, 'headFly', { is: 'unclipped', step }));
    if (end?.is !== 'ranAway') throw new Error(`it ended otherwise: ${JSON.stringify(end)}`);
    expect(end.ran.way).toBe('out');
    expect(debrief?.mostJ).toBeGreaterThanOrEqual(end.ran.energyJ);
  });

  it('flown before its bricks are off, the arbor goes, and the rule of the way names it', () => {
    const strike = startOf('9', 'strike');
    const step = strike.steps.findIndex(
      ({ act }, at) => act === 'remove' && strike.steps[at + 1]?.act === 'fly',
    );
    const drill = begin(strike, 'headFly', { is: 'wrongOrder', step });
    const { end, debrief } = trusting(drill);
    expect(end).toMatchObject({ is: 'ranAway', step, ran: { rule: 'ORD-008', way: 'out' } });
    expect(debrief?.rule).toMatchObject({ step, rule: 'ORD-008' });
    expect(debrief?.count).toBeNull();
  });

  it('a line that nobody rigged is missed when its bricks go on', () => {
    const bridge = startOf('36', 'load');
    const step = bridge.steps.findIndex(({ act }) => act === 'rig');
    const { end } = trusting(begin(bridge, 'rail', { is: 'forgotten', step }));
    if (end?.is !== 'ranAway') throw new Error(`it ended otherwise: ${JSON.stringify(end)}`);
    expect(bridge.steps[end.step]?.act).toBe('add');
  });

  it('hands that cannot do what they are told say so, and the set is in doubt', () => {
    const step = harbour.steps.findIndex(({ act }) => act === 'rig');
    const { end, now } = trusting(begin(harbour, 'headFly', { is: 'forgotten', step }));
    expect(end).toMatchObject({ is: 'impossible', by: 'bullLine' });
    expect(now.sets['9']?.standing).toBeNull();
  });

  it('sets free what the curve of the true arbor says, from where it stands to the stop', () => {
    const { end } = trusting(begin(harbour, 'rail', miscount(1)));
    if (end?.is !== 'ranAway') throw new Error(`it ended otherwise: ${JSON.stringify(end)}`);
    const run = openRun({ documents: harbour.documents, posts: [], startMs, isDrill: true });
    const physics = run.desk.physicsOf(run.now(), '9');
    const pipe = run.now().sets['9']?.standing?.stack ?? [];
    const stack = [...pipe, { kind: 'F', count: 5, tag: 'show' as const }];
    // Four are asked for, five are on; the cloth is tied on and hangs as far as the deck lets it.
    expect(harbour.steps[addAt]).toMatchObject({ act: 'add', kind: 'F', count: 4 });
    const curve = physics?.curve({ stack, items: { cloth: 'flying' } }) ?? [];
    // A straight line from U at the low stop up to the height at which the foot of the cloth leaves
    // the deck; it crosses zero on the way, so that the energy is the triangle U² / (2 · slope).
    const [low, foot] = curve;
    if (low === undefined || foot === undefined) throw new Error('the curve has two nodes');
    expect(low.heightM).toBeCloseTo(end.ran.fromM, 6);
    const slope = (foot.belowN - low.aboveN) / (foot.heightM - low.heightM);
    const mostJ = low.aboveN ** 2 / (2 * slope);
    expect(end.ran.energyJ).toBeCloseTo(mostJ, 6);
  });

  it('offers a fault for every brick, piece, line and pair of steps', () => {
    const faults = faultsOf(harbour.steps);
    const at = (is: DrillFault['is']) =>
      new Set(faults.filter((each) => each.is === is).map(({ step }) => step));
    const acts = (...wanted: readonly string[]) =>
      new Set([...harbour.steps.keys()].filter((step) => wanted.includes(actAt(step))));
    expect(at('miscount')).toEqual(acts('add', 'remove'));
    expect(at('unclipped')).toEqual(acts('attach'));
    expect(at('forgotten')).toEqual(acts('rig', 'unrig'));
    expect(at('wrongOrder').size).toBeGreaterThan(0);
    for (const step of at('wrongOrder')) expect(actAt(step)).not.toBe(actAt(step + 1));
  });
});
