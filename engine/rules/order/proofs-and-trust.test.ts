/** What a verdict says beside its rules: what is still to be seen, and what it takes on trust. */
import { describe, expect, it } from 'vitest';
import { metres } from '#quantities';
import type { Standing, Step } from '#state';
import { BARE, breachOf, bullLine, fly, RUN, release, standingAt, tried } from './example-order.ts';

const proofsOf = (start: Standing, step: Step): readonly string[] =>
  tried({ start, steps: [step] }).proofsDue.map(({ step: at, proof }) => {
    expect(at).toBe(0);
    return proof;
  });

const with_ = (items: Standing['items'], changes: Partial<Standing> = {}): Standing =>
  standingAt(1, 0, { items, closed: [RUN], ...changes });

const INCH = 'inch test before it is flown: an inch out, an inch in, then lock and look';

describe('proofs that are still due', () => {
  it('asks to see picks, rests and hands', () => {
    expect(proofsOf(with_({ tower: 'attachedSlack' }), { act: 'takeUp', item: 'tower' })).toEqual([
      'see every pick tight while the piece still rests',
    ]);
    expect(proofsOf(with_({ tower: 'flying' }), { act: 'rest', item: 'tower' })).toEqual([
      'see that what it rests on is rated, stands firm and is manned',
    ]);
    expect(proofsOf(with_({ lamp: 'flying' }), release('lamp'))).toEqual([
      'see the item held before it is unclipped',
    ]);
    expect(proofsOf(with_({}), { act: 'attach', item: 'lamp', as: 'flying' })).toEqual([]);
  });

  it('asks for an inch test before a move, and for a watcher where a piece lands', () => {
    expect(proofsOf(with_({ lamp: 'flying' }), fly(2))).toEqual([INCH]);
    const high = standingAt(9, 5, { items: { tower: 'flying', lamp: 'away' }, closed: [RUN] });
    expect(proofsOf(high, fly(6))).toEqual([
      INCH,
      'watch the landing from its own level, and stop on the mark, no lower',
    ]);
    expect(proofsOf(high, fly(7))).toEqual([INCH]);
    const away = standingAt(9, 0, { items: { tower: 'away' }, closed: [RUN] });
    expect(proofsOf(away, fly(6))).toEqual([INCH]);
  });

  it('asks to see restraints and steel, and to hear the marshal', () => {
    expect(proofsOf(BARE, { act: 'rig', restraint: bullLine() })).toEqual([
      'see the bull line taut and tagged at the rail',
    ]);
    const steel = bullLine({ kind: 'deadHangSteel', resists: 'in' });
    const hung = with_({ lamp: 'flying' }, { restraints: [steel] });
    expect(proofsOf(hung, { act: 'hangOnSteel' })).toEqual([
      'see every steel tight and its shackle moused',
    ]);
    const onSteel = with_({ lamp: 'heldElsewhere' }, { restraints: [steel], service: 'deadHung' });
    expect(proofsOf(onSteel, { act: 'takeOffSteel' })).toEqual([
      'see the steel easing and not slack before the first shackle is opened',
    ]);
    expect(proofsOf(BARE, { act: 'close', zone: RUN })).toEqual(['the marshal says: clear']);
    expect(proofsOf(BARE, { act: 'reopen', zone: RUN })).toEqual([]);
    expect(
      proofsOf(with_({}, { restraints: [steel] }), { act: 'unrig', restraint: steel }),
    ).toEqual([]);
  });
});

describe('what is taken on trust', () => {
  const LOCK = 'the lock grips what its limit says, and its rope is dry';
  const REST = 'what a piece rests on is rated, stands firm and is manned';
  const LINE = 'the bull line runs through a device that holds by itself, and hauls';

  it('names the lock, the rest and the bull line where they are leaned on', () => {
    expect(tried({}).assumed).toEqual([]);
    expect(tried({ start: standingAt(5, 1) }).assumed).toEqual([LOCK]);
    const resting = with_({ tower: 'attachedResting' });
    expect(tried({ start: resting }).assumed).toEqual([REST]);
    expect(tried({ start: { ...BARE, restraints: [bullLine()] } }).assumed).toEqual([LINE]);
    const winch = bullLine({ kind: 'winch' });
    expect(tried({ start: { ...BARE, restraints: [winch] } }).assumed).toEqual([]);
  });

  it('says each of them once', () => {
    const steps = [{ act: 'close', zone: RUN } as const, { act: 'reopen', zone: RUN } as const];
    expect(tried({ start: standingAt(5, 1), steps }).assumed).toEqual([LOCK]);
  });

  it('names what holds', () => {
    const heldBy = (start: Standing) => tried({ start }).states[0]?.heldBy;
    expect(heldBy(standingAt(5, 0))).toBe('its balance');
    expect(heldBy(with_({ tower: 'attachedResting' }))).toBe('against going in: the low stop');
    const balanced = standingAt(1, 2, { items: { tower: 'attachedResting' } });
    expect(heldBy(balanced)).toBe('the rest that carries a share of it');
    expect(heldBy(standingAt(3, 1))).toBe('against going out: the rope lock');
  });
});

describe('zones', () => {
  const drop = (gallery: string) => ({ zone: 'drop', gallery }) as const;
  const closedAfter = (closed: Standing['closed'], ...steps: readonly Step[]) =>
    tried({ start: { ...BARE, closed }, steps }).states.at(-1)?.standing.closed;

  it('keeps each closed once, and opens the one that is named', () => {
    const close = (zone: Standing['closed'][number]): Step => ({ act: 'close', zone });
    const all = [RUN, drop('upper'), drop('mid')];
    expect(closedAfter([], ...all.map(close))).toEqual(all);
    expect(closedAfter([RUN], close(RUN))).toEqual([RUN]);
    expect(closedAfter(all, close(drop('upper')))).toEqual([RUN, drop('mid'), drop('upper')]);
    expect(closedAfter(all, { act: 'reopen', zone: RUN })).toEqual([drop('upper'), drop('mid')]);
    expect(closedAfter(all, { act: 'reopen', zone: drop('mid') })).toEqual([RUN, drop('upper')]);
  });
});

describe('the way and where it breaks', () => {
  it('gives the size on the side that is not held', () => {
    const heavy = standingAt(9, 4, { items: { tower: 'flying', lamp: 'flying' }, closed: [RUN] });
    const steps = [fly(7)];
    const breach = breachOf('ORD-007', { start: { ...heavy, stack: BARE.stack }, steps });
    expect(breach.finding.measured?.value).toBeCloseTo(560, 9);
    const way = breachOf('ORD-008', { start: { ...heavy, stack: BARE.stack }, steps });
    expect(way.finding.measured?.value).toBeCloseTo(580, 9);
    expect(way.where).toBe(7);
  });

  it('counts the doubt batten heavy on the way in', () => {
    const plant = { pieces: { frame: { weightN: 300, doubtN: 50 } } };
    const start = standingAt(9, 1, { items: { frame: 'flying' }, closed: [RUN] });
    const trial = { plant, start, options: { doubt: 'worst' } as const };
    expect(tried({ ...trial, steps: [fly(9)] }).broken?.rule).toBe('ORD-001');
    const held = standingAt(12, 1, { items: { frame: 'flying' }, closed: [RUN] });
    expect(tried({ ...trial, start: held, steps: [fly(10)] }).broken).toBeNull();
    const breach = breachOf('ORD-008', { ...trial, start: held, steps: [fly(9)] });
    expect(breach.byN).toBeCloseTo(10, 9);
  });

  it('judges the arrival too, where more is in doubt than on the way', () => {
    const at = (standing: Standing) => ({
      lowN: 0,
      highN: 0,
      doubtN: standing.height === 6 ? 201 : 10,
    });
    const trial = {
      plant: { more: { at } },
      start: standingAt(5, 0, { closed: [RUN] }),
      options: { doubt: 'worst' } as const,
    };
    expect(tried({ ...trial, steps: [fly(7)] }).broken).toBeNull();
    const breach = breachOf('ORD-008', { ...trial, steps: [fly(6)] });
    expect(breach.byN).toBeCloseTo(1, 9);
    expect(breach.where).toBe(6);
  });

  it('carries what rests and what lies slack along, out and in', () => {
    const phaseAfter = (start: Standing, toM: number) =>
      tried({ start, steps: [fly(toM)] }).states[1]?.standing.items;
    const laid = with_({ tower: 'attachedSlack', frame: 'attachedResting', lamp: 'beside' });
    expect(phaseAfter(laid, 2)).toEqual({ tower: 'flying', frame: 'flying', lamp: 'beside' });
    const low = { ...laid, height: metres(1.2) };
    expect(phaseAfter(low, 1)).toEqual({
      tower: 'attachedSlack',
      frame: 'attachedSlack',
      lamp: 'beside',
    });
    const standing = standingAt(6, 2, { items: { tower: 'attachedResting' }, closed: [RUN] });
    expect(phaseAfter(standing, 5)).toEqual({ tower: 'flying' });
  });
});
