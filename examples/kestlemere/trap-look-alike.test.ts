/**
 * Trap 10 of the demo's own plan (10.7): ten old cast bricks used as full ones on Electric 1 leave
 * it 30 lb short, found by tally or pull test and not by sum. Its figures are the plan's own.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess, type SetAssessment } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import type { Finding } from '#findings';
import { judge, verifyOrder } from '#rules';
import type { StackRun, Step } from '#state';
import { expectLb } from './plan-asked.ts';
import { asPounds, hungOn, hungSet, imbalanceLb } from './plan-sets.ts';

const textOf = (file: string): string =>
  readFileSync(new URL(`./${file}`, import.meta.url), 'utf8');

const taken = <T>(answer: { readonly ok: true; readonly value: T } | { readonly ok: false }): T => {
  if (!answer.ok) throw new Error('a file of the demo was refused');
  return answer.value;
};

const { house } = taken(readHouse(textOf('house.json')));
const { show } = taken(readShow(textOf('clockmaker.show.json'), house));

type RawState = { readonly sets: Readonly<Record<string, object>> };

/** The record of the demo with something else written of set 5. */
const recorded = (more: object) => {
  const raw = JSON.parse(textOf('state.json')) as RawState;
  const sets = { ...raw.sets, '5': { ...raw.sets['5'], ...more } };
  const { state } = taken(readState(JSON.stringify({ ...raw, sets }), house, show));
  const assessment = assess(house, show, state);
  const set = assessment.sets.find(({ lineSet }) => lineSet.id === '5');
  if (set === undefined) throw new Error('no set 5');
  const findings = judge(house, show, state, assessment, {});
  return { set, findings: findings.filter(({ at }) => at.set === '5') };
};

const codes = (findings: readonly Finding[]): readonly string[] => findings.map(({ code }) => code);

const PIPE: StackRun = { kind: 'O', count: 3, tag: 'pipe' };
const AS_CALLED: readonly StackRun[] = [PIPE, { kind: 'F', count: 33, tag: 'show' }];
const AS_IT_IS: readonly StackRun[] = [
  PIPE,
  { kind: 'F', count: 23, tag: 'show' },
  { kind: 'O', count: 10, tag: 'show' },
];
const plates = (stack: readonly StackRun[]): number =>
  stack.reduce((sum, { count }) => sum + count, 0);

const recordedLb = ({ recorded: { imbalance } }: SetAssessment): number =>
  imbalance.known ? asPounds(imbalance.value.low) : Number.NaN;

describe('[trap 10] ten old cast bricks among the full ones on Electric 1', () => {
  const set = hungSet('5');
  const on = hungOn(set, 36, []).items;
  // Lamps of 3 ft just touch the deck on the stop: the plan has them clear of it.
  const [called, real] = [AS_CALLED, AS_IT_IS].map(([, ...bricks]) => ({
    at3: imbalanceLb(set, 3, bricks, on).high,
    at36: imbalanceLb(set, 36, bricks, on).low,
  }));

  it('leave it 30 lb short: +19 lb on the stop and +40 lb at its trim, not −11 and +10', () => {
    expectLb(called?.at3, -11);
    expectLb(called?.at36, 10);
    expectLb(real?.at3, 19);
    expectLb(real?.at36, 40);
  });

  it('are not found by the sum: as many plates, and nothing said of them', () => {
    expect(plates(AS_IT_IS)).toBe(plates(AS_CALLED));
    expect(codes(recorded({ stack: AS_CALLED }).findings)).not.toContain('STA-001');
  });

  it('[STA-001] are found by the tally of kinds, with what the set then is', () => {
    const tallied = recorded({ stack: AS_IT_IS });
    const [finding] = tallied.findings.filter(({ code }) => code === 'STA-001');
    expect(finding).toMatchObject({
      level: 'caution',
      measured: { value: 33 },
      limit: { value: 33 },
      facts: { recorded: '23 F, 10 O', planned: '33 F' },
    });
    expectLb(recordedLb(tallied.set), 40);
    expectLb(recordedLb(recorded({ stack: AS_CALLED }).set), 10);
  });

  it('are found by a pull test: 90 lbf out and 10 lbf in is 40 lb where 10 was planned', () => {
    // The true set, pulled at 36 ft with 50 lbf of friction: U = (90 − 10)/2.
    const pullTest = { out: '90 lbf', in: '10 lbf', height: '36 ft' };
    const by = { at: '2026-11-25T13:20:00Z', by: 'rail operator' };
    const { pull } = recorded({ pullTest: { ...pullTest, ...by } }).set.recorded;
    const pulledLb = pull?.known ? asPounds(pull.value.imbalance) : Number.NaN;
    expectLb(pulledLb, 40);
    expectLb(pulledLb - (called?.at36 ?? 0), 30);
  });

  it('[ORD-051] are warned of where they are handled, in an order that is right on paper', () => {
    const steps: readonly Step[] = [
      { act: 'close', zone: { zone: 'run' } },
      { act: 'close', zone: { zone: 'drop', gallery: 'upper' } },
      { act: 'add', kind: 'F', count: 20, gallery: 'upper' },
      { act: 'add', kind: 'F', count: 13, gallery: 'upper' },
    ];
    const start = hungOn(set, 3, []);
    const verdict = verifyOrder(set.physics, start, steps, { doubt: 'none', faults: 'check' });
    expect(verdict).toMatchObject({ broken: null, refused: null });
    expectLb(asPounds(verdict.states.at(-1)?.imbalance.highN ?? 0), -11);
    expect(verdict.cautions).toMatchObject([
      { rule: 'ORD-051', step: 2, finding: { at: { gallery: 'upper' }, facts: { kind: 'F' } } },
    ]);
    const [caution] = verdict.cautions;
    expect(caution?.finding.facts['others']).toBe('O');
    expectLb((caution?.finding.measured?.value ?? 0) / 0.45359237, 3);
  });

  it('are not warned of at the mid gallery, where no old cast bricks lie', () => {
    const steps: readonly Step[] = [
      { act: 'close', zone: { zone: 'drop', gallery: 'mid' } },
      { act: 'remove', kind: 'F', count: 1, gallery: 'mid' },
    ];
    const start = hungOn(set, 24, [{ kind: 'F', count: 33, tag: 'show' }]);
    const verdict = verifyOrder(set.physics, start, steps, { doubt: 'none', faults: 'skip' });
    expect(verdict.refused).toBeNull();
    expect(verdict.cautions).toEqual([]);
  });
});
