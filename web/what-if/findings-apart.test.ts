import { describe, expect, it } from 'vitest';
import { type Finding, measure } from '#findings';
import { findingsApart, unknownApart } from './findings-apart.ts';

const finding = (more: Partial<Finding>): Finding => ({
  code: 'LOD-001',
  level: 'caution',
  at: { set: '11' },
  measured: measure(110, 'mass'),
  limit: measure(100, 'mass'),
  limitSource: 'the house',
  facts: {},
  working: null,
  ...more,
});

const isOf = (before: readonly Finding[], after: readonly Finding[]) =>
  findingsApart(before, after).map(({ is }) => is);

describe('findings side by side', () => {
  it('says nothing of what is the same, whatever the last binary place', () => {
    expect(isOf([finding({})], [finding({ measured: measure(110.000_000_01, 'mass') })])).toEqual(
      [],
    );
  });

  it('tells new from gone, by rule, place and item', () => {
    const other = finding({ at: { set: '11', item: 'flat' } });
    expect(isOf([finding({})], [finding({}), other])).toEqual(['new']);
    expect(isOf([finding({}), other], [finding({})])).toEqual(['gone']);
  });

  it('calls it worse the further it is past its limit, and better the less', () => {
    const far = finding({ measured: measure(130, 'mass') });
    expect(isOf([finding({})], [far])).toEqual(['worse']);
    expect(isOf([far], [finding({})])).toEqual(['better']);
  });

  it('takes a limit that must be reached the other way round', () => {
    const least = { limit: measure(10, 'ratio') };
    const [near, low] = [
      finding({ ...least, measured: measure(9, 'ratio') }),
      finding({ ...least, measured: measure(6, 'ratio') }),
    ];
    expect(isOf([near], [low])).toEqual(['worse']);
  });

  it('lets the level count before the figure', () => {
    const stop = finding({ level: 'stop', measured: measure(101, 'mass') });
    expect(isOf([finding({})], [stop])).toEqual(['worse']);
    expect(isOf([stop], [finding({})])).toEqual(['better']);
  });

  it('puts what is new and grave first', () => {
    const changes = findingsApart(
      [finding({ code: 'A' })],
      [finding({ code: 'B', level: 'note' }), finding({ code: 'C', level: 'stop' })],
    );
    expect(changes.map(({ finding: { code } }) => code)).toEqual(['C', 'B', 'A']);
  });

  it('keeps what nobody knows apart from what a rule says', () => {
    const unknown = (what: string) => finding({ code: 'UNK-001', facts: { what } });
    expect(isOf([], [unknown('a mass')])).toEqual([]);
    expect(unknownApart([unknown('a mass; a drop')], [unknown('a drop; a place')])).toEqual({
      fresh: ['a place'],
      gone: ['a mass'],
    });
  });
});
