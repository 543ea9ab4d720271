import { describe, expect, it } from 'vitest';
import { sayDifference } from '#differences';
import type { JsonObject } from '#documents';
import houseRaw from '../../examples/kestlemere/house.json' with { type: 'json' };
import stateRaw from '../../examples/kestlemere/state.json' with { type: 'json' };
import showRaw from '../../examples/kestlemere/winterferry.show.json' with { type: 'json' };
import skelderwickRaw from '../../examples/skelderwick/house.json' with { type: 'json' };
import { asSaved, type Kept, type Open } from '../keeping/kept.ts';
import { NO_HISTORY } from '../keeping/undo.ts';
import { compared, marksOf, momentAt, momentsOf, mostApart } from './compared.ts';
import { type Choices, contestOf, isContested } from './contest.ts';
import { against } from './judged.ts';
import { newId, shelvesOf, withoutHouse } from './shelf-of.ts';

const US = { words: 'US' } as const;
const kept = (id: string, document: JsonObject): Kept =>
  asSaved({
    id,
    kind: id.split(':')[0] as Kept['kind'],
    revision: 1,
    savedAt: '2026-11-25T14:00:00Z',
    savedBy: 'TD',
    why: 'test',
    remark: '',
    document,
  });

const database = (...documents: readonly Kept[]): Open => ({
  phase: 'open',
  asOf: null,
  databases: { inHand: 'house', hasHouse: true },
  documents: Object.fromEntries(documents.map((each) => [each.id, each])),
  history: NO_HISTORY,
  keptOnDevice: true,
});

const HOUSE = kept('house:kestlemere', houseRaw as JsonObject);
const SHOW = kept('show:winterferry', showRaw as JsonObject);
const RECORD = kept('state:kestlemere', stateRaw as JsonObject);
const ALL = database(HOUSE, SHOW, RECORD);

/** The mass of what hangs first on a set, typed anew. */
const withMass = (set: string, mass: string, show: JsonObject = SHOW.document): JsonObject => {
  const hangs = (show['hangs'] as readonly JsonObject[]).map((hang) => {
    if (hang['set'] !== set) return hang;
    const [first, ...rest] = hang['items'] as readonly JsonObject[];
    const takeoff = { ...(first?.['takeoff'] as JsonObject), mass };
    return { ...hang, items: [{ ...first, takeoff }, ...rest] };
  });
  return { ...show, hangs } as JsonObject;
};

describe('documents of a database', () => {
  it('stand by house, by name, with the record beside them', () => {
    const tour = kept('show:tour', { id: 'tour', name: 'A tour', house: 'kestlemere' });
    const stray = kept('show:stray', { id: 'stray', name: 'Stray', house: 'elsewhere' });
    const [shelf] = shelvesOf(database(RECORD, SHOW, tour, stray, HOUSE));
    expect(shelf?.house.id).toBe('house:kestlemere');
    expect(shelf?.shows.map(({ id }) => id)).toEqual(['show:tour', 'show:winterferry']);
    expect(shelf?.record?.id).toBe('state:kestlemere');
    expect(withoutHouse(database(HOUSE, stray)).map(({ id }) => id)).toEqual(['show:stray']);
  });

  it('get an id from their name, and a number where it is taken', () => {
    const taken = new Set(['the-long-drop', 'the-long-drop-2', 'show']);
    expect(newId('The Long Drop', 'show', taken)).toBe('the-long-drop-3');
    expect(newId('Été à l’opéra', 'show', taken)).toBe('ete-a-l-opera');
    expect(newId('<img src=x>', 'show', taken)).toBe('img-src-x');
    expect(newId('夏', 'show', taken)).toBe('show-2');
    expect(newId('x'.repeat(90), 'show', new Set(['x'.repeat(32)]))).toBe(`${'x'.repeat(30)}-2`);
  });
});

describe('whether a version may be saved', () => {
  it('asks a house whether its shows still fit', () => {
    expect(against(ALL, 'house', HOUSE.document)).toEqual([]);
    const without = { ...HOUSE.document, lineSets: [], bays: [] };
    const paths = against(ALL, 'house', without).map(({ path }) => path);
    expect(paths.some((path) => path.startsWith('show Winterferry: hangs'))).toBe(true);
  });

  it('asks a show whether its house has its sets', () => {
    expect(against(ALL, 'show', SHOW.document)).toEqual([]);
    const hangs = [{ ...(SHOW.document['hangs'] as readonly JsonObject[])[0], set: '999' }];
    expect(against(ALL, 'show', { ...SHOW.document, hangs } as JsonObject)).not.toEqual([]);
    expect(against(ALL, 'state', RECORD.document)).toEqual([]);
  });
});

describe('two versions of one show', () => {
  const three = {
    began: SHOW.document,
    mine: withMass('11', '310 lb'),
    theirs: withMass('1', '500 lb', withMass('11', '320 lb')),
  };

  it('asks about the place that both changed, and takes no choice for granted', () => {
    const contest = contestOf(three, new Map(), US);
    expect(contest.places).toHaveLength(1);
    expect(contest.places[0]).toMatchObject({ chosen: null });
    expect(contest.places[0]?.heading).toMatch(/^Set 11/);
    expect(contest.places[0]?.mine.join()).toContain('310 lb');
    expect(contest.places[0]?.theirs.join()).toContain('320 lb');
    expect(contest.result).toBeNull();
    const marked = contest.theirs.flatMap(({ lines }) =>
      lines.map((line) => isContested(line, contest.places)),
    );
    expect(marked.toSorted()).toEqual([false, true]);
  });

  it('shows what each choice would save, against theirs', () => {
    const [said] = contestOf(three, new Map(), US).places;
    if (said === undefined) throw new Error('nothing is contested');
    const choose = (side: 'mine' | 'theirs'): Choices =>
      new Map([[said.place.key, { side, place: said.place }]]);
    const ours = contestOf(three, choose('mine'), US);
    expect(ours.result).toEqual(withMass('1', '500 lb', withMass('11', '310 lb')));
    expect(ours.change.flatMap(({ lines }) => lines)).toHaveLength(1);
    expect(against(ALL, 'show', ours.result ?? {})).toEqual([]);
    const others = contestOf(three, choose('theirs'), US);
    expect(others.result).toEqual(three.theirs);
    expect(others.change).toEqual([]);
  });

  it('says why two versions do not go together that each might be saved', () => {
    const house = kept('house:skelderwick', skelderwickRaw as JsonObject);
    const alone = database(house);
    const began = house.document;
    const kinds = began['brickKinds'] as readonly JsonObject[];
    const mine = { ...began, brickKinds: kinds.filter(({ id }) => id !== 'H') };
    const theirs = {
      ...began,
      brickKinds: kinds.map((each) => (each['id'] === 'F' ? { ...each, looksLike: ['H'] } : each)),
    } as JsonObject;
    for (const each of [mine, theirs]) expect(against(alone, 'house', each)).toEqual([]);
    const { places, result } = contestOf({ began, mine, theirs }, new Map(), US);
    expect(places).toEqual([]);
    expect(against(alone, 'house', result ?? {})).not.toEqual([]);
  });

  it('lets a choice fall when theirs has changed since it was made', () => {
    const [said] = contestOf(three, new Map(), US).places;
    if (said === undefined) throw new Error('nothing is contested');
    const choices: Choices = new Map([[said.place.key, { side: 'mine', place: said.place }]]);
    const third = { ...three, theirs: withMass('11', '333 lb') };
    expect(contestOf(third, choices, US).places[0]?.chosen).toBeNull();
  });
});

describe('two revisions on the drawing', () => {
  it('works both out, and has a letter for each set that differs', () => {
    const after = withMass('1', '500 lb', withMass('11', '310 lb'));
    const both = compared(ALL, 'show', { before: SHOW.document, after }, null);
    if (!both.ok) throw new Error('not worked out');
    expect(momentsOf('show', both.value)).toContain('playing');
    expect(momentAt('show', both.value.after, 'playing').is).toBe('planned');
    const groups = sayDifference(SHOW.document, after, US);
    expect(marksOf(groups).map(({ letter, set }) => [letter, set])).toEqual([
      ['A', '1'],
      ['B', '11'],
    ]);
  });

  it('shows first the trim at which most sets stand elsewhere', () => {
    const hangs = (SHOW.document['hangs'] as readonly JsonObject[]).map((hang) =>
      hang['set'] === '1'
        ? { ...hang, trims: [{ name: 'in', height: '33 ft', reference: 'batten' }] }
        : hang,
    );
    const after = { ...SHOW.document, hangs } as JsonObject;
    const both = compared(ALL, 'show', { before: SHOW.document, after }, null);
    if (!both.ok) throw new Error('not worked out');
    expect(mostApart(['playing', 'in', 'out'], both.value)).toBe('playing');
    expect(mostApart(['in'], both.value)).toBe('in');
    expect(mostApart([], both.value)).toBeUndefined();
  });

  it('draws a record as it was recorded, and a house with a show in it', () => {
    const pair = { before: RECORD.document, after: RECORD.document };
    const record = compared(ALL, 'state', pair, 'winterferry');
    if (!record.ok) throw new Error('not worked out');
    expect(momentsOf('state', record.value)).toEqual([]);
    expect(momentAt('state', record.value.after, undefined).is).toBe('recorded');
    const house = compared(ALL, 'house', { before: HOUSE.document, after: HOUSE.document }, null);
    expect(house.ok && house.value.after.sets.some(({ hang }) => hang !== null)).toBe(true);
  });

  it('says which of the two no longer fits', () => {
    const hangs = [{ ...(SHOW.document['hangs'] as readonly JsonObject[])[0], set: '999' }];
    const before = { ...SHOW.document, hangs } as JsonObject;
    const both = compared(ALL, 'show', { before, after: SHOW.document }, null);
    expect(both).toMatchObject({ ok: false, error: { which: 'older' } });
  });
});
