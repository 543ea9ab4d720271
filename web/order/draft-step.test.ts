import { describe, expect, it } from 'vitest';
import { FOOT, metres, newtons, POUND_FORCE } from '#quantities';
import type { Restraint } from '#state';
import { DRAFT_ACTS, type Draft, firstDraft, readDraft } from './draft-step.ts';

const first = firstDraft({ galleries: ['upper', 'mid'], kinds: ['F', 'H'], items: ['cloth'] });
const BULL: Restraint = {
  kind: 'bullLine',
  resists: 'out',
  rating: newtons(300),
  from: metres(3),
  to: metres(9),
  owner: null,
  tag: null,
};

const read = (change: Partial<Draft>, restraints: readonly Restraint[] = []) =>
  readDraft({ ...first, ...change }, { restraints });

describe('a step filled in by hand', () => {
  it.each([
    [
      { act: 'close', zone: 'run' },
      { act: 'close', zone: { zone: 'run' } },
    ],
    [
      { act: 'reopen', zone: 'mid' },
      { act: 'reopen', zone: { zone: 'drop', gallery: 'mid' } },
    ],
    [
      { act: 'remove', count: ' 4 ', kind: 'H', gallery: 'mid' },
      { act: 'remove', count: 4, kind: 'H', gallery: 'mid' },
    ],
    [{ act: 'add' }, { act: 'add', count: 1, kind: 'F', gallery: 'upper' }],
    [
      { act: 'attach', as: 'attachedResting' },
      { act: 'attach', item: 'cloth', as: 'attachedResting' },
    ],
    [{ act: 'release' }, { act: 'release', item: 'cloth' }],
    [{ act: 'rest' }, { act: 'rest', item: 'cloth' }],
    [{ act: 'takeUp' }, { act: 'takeUp', item: 'cloth' }],
  ] as const)('%j is %j', (change, step) => {
    expect(read(change)).toEqual({ ok: true, value: step });
  });

  it('takes a height in any unit of length, and says what it takes instead of a guess', () => {
    for (const to of ['24 ft', `24'-0"`, '7.3152 m', '7315.2 mm']) {
      const step = read({ act: 'fly', to });
      expect(step.ok && step.value.act === 'fly' ? step.value.to : 0).toBeCloseTo(24 * FOOT, 9);
    }
    for (const to of ['', '24', '24 lb', 'low']) {
      expect(read({ act: 'fly', to })).toMatchObject({ ok: false, error: { field: 'to' } });
    }
  });

  it('reads a decimal comma where the language writes one, and refuses what reads two ways', () => {
    const tongue = { language: 'de', decimalMark: ',', months: [], date: '', texts: {} } as const;
    const german = { words: 'US', tongue } as const;
    const typed = (to: string) =>
      readDraft({ ...first, act: 'fly', to }, { restraints: [] }, german);
    expect(typed('7,3152 m')).toEqual({ ok: true, value: { act: 'fly', to: 7.3152 } });
    expect(typed('7.315 m')).toMatchObject({ ok: false, error: { field: 'to' } });
  });

  it.each(['', '0', '-2', '1.5', 'two', '2 full', '201'])('takes no count of %j', (count) => {
    expect(read({ act: 'add', count })).toMatchObject({ ok: false, error: { field: 'count' } });
  });

  it('rigs a restraint with its rating and heights, lower first, and nobody as its owner', () => {
    const filled = { act: 'rig', rating: '70 lbf', rigFrom: '26 ft', rigTo: '25 ft' } as const;
    const step = read(filled);
    expect(step).toMatchObject({ ok: true, value: { act: 'rig', restraint: { owner: null } } });
    const restraint = step.ok && step.value.act === 'rig' ? step.value.restraint : null;
    expect(restraint?.rating).toBeCloseTo(70 * POUND_FORCE, 9);
    expect([restraint?.from, restraint?.to]).toEqual([metres(25 * FOOT), metres(26 * FOOT)]);
    for (const field of ['rating', 'rigFrom', 'rigTo'] as const) {
      expect(read({ ...filled, [field]: '' })).toMatchObject({ ok: false, error: { field } });
    }
  });

  it('takes off what is rigged there, and nothing where nothing is', () => {
    expect(read({ act: 'unrig', rigged: '0' }, [BULL])).toEqual({
      ok: true,
      value: { act: 'unrig', restraint: BULL },
    });
    expect(read({ act: 'unrig' })).toMatchObject({ ok: false, error: { field: 'rigged' } });
  });

  it('begins with something in every choice, so that each act but those typed is whole', () => {
    const whole = DRAFT_ACTS.filter((act) => read({ act }, [BULL]).ok);
    expect(whole).toEqual(DRAFT_ACTS.filter((act) => act !== 'fly' && act !== 'rig'));
  });
});
