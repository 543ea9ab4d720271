import { describe, expect, it } from 'vitest';
import { asSaved, type Open } from '../keeping/kept.ts';
import type { DocumentKind } from '../keeping/server.ts';
import { housesOf, inView, showsOf } from './in-view.ts';

const stored = (kind: DocumentKind, id: string, house?: string) =>
  asSaved({
    id: `${kind}:${id}`,
    kind,
    revision: 1,
    savedAt: '2026-11-25T14:00:00Z',
    remark: '',
    savedBy: 'x',
    why: '',
    document: { id, name: `The ${id}`, ...(house === undefined ? {} : { house }) },
  });

const ALL = [
  stored('house', 'one'),
  stored('house', 'two'),
  stored('show', 'a', 'one'),
  stored('show', 'b', 'one'),
  stored('show', 'c', 'two'),
  stored('state', 'two', 'two'),
];

const OPEN: Open = {
  phase: 'open',
  asOf: null,
  databases: { inHand: 'demo', hasHouse: false },
  documents: Object.fromEntries(ALL.map((each) => [each.id, each])),
  history: { past: [], future: [] },
  keptOnDevice: true,
};

const ids = (house: string | null, show: string | null) => {
  const view = inView(OPEN, { place: { kind: 'hangList' }, house, show });
  return 'missing' in view ? view.missing : [view.house.id, view.show.id, view.state?.id ?? null];
};

describe('in view', () => {
  it('means the first house and its first show where the address names none', () => {
    expect(ids(null, null)).toEqual(['house:one', 'show:a', null]);
  });

  it('opens the house and show that the address names, with the record of that house', () => {
    expect(ids('one', 'b')).toEqual(['house:one', 'show:b', null]);
    expect(ids('two', null)).toEqual(['house:two', 'show:c', 'state:two']);
  });

  it('never shows another house or show for one that is not there', () => {
    expect(ids('three', null)).toBe('house three');
    expect(ids('two', 'a')).toBe('show a');
  });

  it('lists the houses, and the shows of one house', () => {
    expect(housesOf(OPEN).map(({ name }) => name)).toEqual(['The one', 'The two']);
    expect(showsOf(OPEN, 'one').map(({ id }) => id)).toEqual(['a', 'b']);
  });
});
