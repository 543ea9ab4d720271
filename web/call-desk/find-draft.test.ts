import { describe, expect, it } from 'vitest';
import { UNKNOWN_SET } from '#call';
import {
  type FindDraft,
  foundOf,
  missingOf,
  NOTHING_FOUND,
  type RestraintDraft,
} from './find-draft.ts';

const ASKED = { items: ['tower'], set: UNKNOWN_SET, mark: '.' } as const;
const WHOLE: FindDraft = {
  height: `4'-0"`,
  stack: [{ kind: 'full', count: 3, tag: 'show' }],
  items: { tower: 'flying' },
  lock: 'closed',
  ring: 'on',
  collar: 'secured',
  service: 'in',
  restraints: [],
  basis: 'counted',
  second: ' Bo ',
  settles: [7],
};

describe('a set found again', () => {
  it('asks by name for all that nobody has entered, and takes nothing for granted', () => {
    expect(missingOf(NOTHING_FOUND, ASKED)).toEqual([
      'the height of the batten',
      'what is on the arbor, counted',
      'what hangs',
      'the rope lock',
      'the ring of the lock',
      'the collar',
      'what carries it',
      'what else holds it',
      'how it is known',
    ]);
    expect(missingOf(WHOLE, ASKED)).toEqual([]);
  });

  it.each(Object.keys(WHOLE).filter((key) => key !== 'second' && key !== 'settles'))(
    'is not sent without %s',
    (key) => {
      const draft = { ...WHOLE, [key]: NOTHING_FOUND[key as keyof FindDraft] };
      expect(missingOf(draft, ASKED).length).toBe(1);
      expect(() => foundOf(draft, ASKED, [])).toThrow('defect');
    },
  );

  it('is sent in metres, with what was entered and nothing else', () => {
    const found = foundOf(WHOLE, ASKED, [{ zone: 'run' }]);
    expect(found.ok && found.value).toEqual({
      standing: {
        // Four feet, by definition of the foot.
        height: 1.2192,
        stack: [{ kind: 'full', count: 3, tag: 'show' }],
        items: { tower: 'flying' },
        restraints: [],
        service: 'in',
        closed: [{ zone: 'run' }],
      },
      lock: 'closed',
      ring: 'on',
      collar: 'secured',
      basis: 'counted',
      second: 'Bo',
      settles: [7],
    });
  });

  it('reads a comma where the language has one, and refuses what is no height', () => {
    const comma = foundOf({ ...WHOLE, height: '7,48 m' }, { ...ASKED, mark: ',' }, []);
    expect(comma.ok && comma.value.standing.height).toBeCloseTo(7.48, 12);
    const bare = foundOf({ ...WHOLE, height: '12' }, ASKED, []);
    expect(!bare.ok && bare.error.map(({ path }) => path)).toEqual(['height']);
  });

  it('says nothing of a piece that is away, which is what away means', () => {
    const found = foundOf({ ...WHOLE, items: { tower: 'away' } }, ASKED, []);
    expect(found.ok && found.value.standing.items).toEqual({});
  });

  it('takes no tag away: a tagged set stays out of use, whatever is entered', () => {
    const set = { ...UNKNOWN_SET, tag: { number: '7', reason: 'lock slips' } };
    const tagged = { ...ASKED, set };
    expect(missingOf({ ...WHOLE, service: '' }, tagged)).toEqual([]);
    const found = foundOf(WHOLE, tagged, []);
    expect(found.ok && found.value.standing.service).toBe('lockedOut');
  });

  it('keeps of a restraint that its rating is not known, and asks which way it holds', () => {
    const row: RestraintDraft = {
      ...{ kind: 'bullLine', resists: 'out', rating: '', from: '1 m', to: '' },
      ...{ owner: '', tag: '4' },
    };
    const found = foundOf({ ...WHOLE, restraints: [row] }, ASKED, []);
    expect(found.ok && found.value.standing.restraints).toEqual([
      {
        ...{ kind: 'bullLine', resists: 'out', rating: null, from: 1, to: null },
        ...{ owner: null, tag: '4' },
      },
    ]);
    const open: FindDraft = { ...WHOLE, restraints: [{ ...row, resists: '' }] };
    expect(missingOf(open, ASKED)).toEqual(['what each restraint is, and which way it holds']);
  });
});
