import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Json, JsonObject } from '#documents';
import type { Voice } from '#texts';
import { hasWords } from './field-words.ts';
import { sayDifference } from './say-difference.ts';

const US = { words: 'US' } as const;
const examples = join(import.meta.dirname, '..', 'examples', 'kestlemere');
const open = (file: string): JsonObject =>
  JSON.parse(readFileSync(join(examples, file), 'utf8')) as JsonObject;

/** `Heading: words`, as the command line prints them. */
const said = (before: JsonObject, after: JsonObject, house: Voice = US) =>
  sayDifference(before, after, house).flatMap(({ heading, lines }) =>
    lines.map(({ words }) => `${heading}: ${words}`),
  );

const flat = (mass: Json, more: JsonObject = {}): JsonObject => ({
  format: 'counterpoise-show',
  hangs: [
    {
      set: '11',
      name: 'Dining room',
      items: [{ id: 'flat', name: 'Dining room flat', takeoff: { by: 'mass', mass } }],
      trims: [{ name: 'in', height: '24 ft', reference: 'batten' }],
    },
  ],
  cues: [{ number: '13', set: '9', from: '24 ft', to: '58 ft' }],
  ...more,
});

describe('the difference in words', () => {
  it('is nothing between a document and its copy', () => {
    const show = open('winterferry.show.json');
    expect(sayDifference(show, structuredClone(show), US)).toEqual([]);
  });

  it('says a figure with its grounds, exactly as typed', () => {
    const before = flat({ value: '300 lb', basis: 'estimated' });
    expect(said(before, flat({ value: '310 lb', basis: 'weighed' }))).toEqual([
      'Set 11, Dining room: mass of Dining room flat 310 lb, was 300 lb; ' +
        'basis weighed, was estimated',
    ]);
    expect(said(flat('300 lb'), before)).toEqual([
      'Set 11, Dining room: mass of Dining room flat 300 lb as before; ' +
        'basis estimated, was not written',
    ]);
  });

  it('says what became unknown, and what it was', () => {
    const kind = (mass: Json): JsonObject => ({
      format: 'counterpoise-house',
      brickKinds: [{ id: 'F', name: '20 lb', mass }],
    });
    expect(said(kind('19.6 lb'), kind({ unknown: 'weighed wrong' }))).toEqual([
      'Brick kind 20 lb: mass unknown (weighed wrong), was 19.6 lb',
    ]);
    expect(
      said(kind({ value: '19.6 lb', basis: 'weighed', source: 'scale' }), kind('9 kg')),
    ).toEqual([
      'Brick kind 20 lb: mass 9 kg, was 19.6 lb; basis not written, was weighed; ' +
        'source not written, was scale',
    ]);
  });

  it('says a cue that came and one that went, with its set and its values', () => {
    const cue = { number: '14', set: '9', from: '24 ft', to: '50 ft' };
    const first = flat('300 lb');
    const [old] = first['cues'] as readonly Json[];
    const [group] = sayDifference(first, flat('300 lb', { cues: [old ?? null, cue] }), US);
    expect(group?.heading).toBe('Cue 14 on set 9');
    expect(group?.lines[0]?.words).toBe('added');
    expect(group?.lines[0]?.details).toContain('height after 50 ft');
    expect(said(first, flat('300 lb', { cues: [] }))).toEqual(['Cue 13 on set 9: taken away']);
  });

  it('says what hangs on a set that was empty, and a set that became empty', () => {
    const full = flat('300 lb');
    const empty = { ...full, hangs: [] };
    expect(said(empty, full)).toEqual([
      'Set 11, Dining room: Dining room hangs here; nothing hung here before',
    ]);
    expect(said(full, empty)).toEqual([
      'Set 11, Dining room: nothing hangs here; Dining room hung here before',
    ]);
    const [group] = sayDifference(empty, full, US);
    expect(group?.lines[0]?.details).toContain('mass of flat 300 lb');
  });

  it('speaks the words of the house, and never translates a name', () => {
    const named = (name: string, height: string): JsonObject => ({
      format: 'counterpoise-show',
      hangs: [{ set: '1', name, trims: [{ name: 'trim', height, reference: 'batten' }] }],
    });
    expect(said(named('Brick wall', '1 m'), named('Brick wall', '2 m'), { words: 'UK' })).toEqual([
      'Set 1, Brick wall: height of dead trim 2 m, was 1 m',
    ]);
    expect(said(named('Brick wall', '1 m'), named('Brick arch', '1 m'), { words: 'UK' })).toEqual([
      'Set 1, Brick arch: name “Brick arch”, was “Brick wall”',
    ]);
  });

  it('says a stack, a phase and how a set is known', () => {
    const before = open('state.json');
    const sets = before['sets'] as Readonly<Record<string, JsonObject>>;
    const set = {
      ...sets['1'],
      lock: 'open',
      stack: [{ kind: 'F', count: 20, tag: 'show' }],
      items: { cloth: 'resting' },
    };
    const after = { ...before, sets: { ...sets, '1': set } } as JsonObject;
    expect(said(before, after)).toEqual([
      'Set 1: rope lock open, was closed',
      'Set 1: stack from the bottom up 20 F (show); was 3 O (pipe), 1 H (show), 21 F (show)',
      'Set 1: item cloth resting, was flying',
    ]);
  });

  it('gives the path beside a field that has no words', () => {
    const of = (value: string): JsonObject => ({
      format: 'counterpoise-show',
      ownField: { value },
    });
    const [group] = sayDifference(of('a'), of('b'), US);
    expect(group?.heading).toBe('The show');
    expect(group?.lines[0]).toMatchObject({ words: 'own field b, was a', path: 'ownField' });
  });

  it('says a new order of sets as an order', () => {
    const hangs = ['1', '2'].map((set) => ({ set, name: set }));
    const of = (list: Json): JsonObject => ({ format: 'counterpoise-show', hangs: list });
    expect(said(of(hangs), of(hangs.toReversed()))).toEqual([
      'The show: order of hangs 2, 1; was 1, 2',
    ]);
  });

  it('says of a list of sentences only those that came and went', () => {
    const of = (...remarks: readonly string[]): JsonObject => ({
      format: 'counterpoise-show',
      remarks,
    });
    expect(said(of('a', 'b'), of('a', 'c', 'd'))).toEqual([
      'The show: remarks “c” added; “d” added; “b” taken away',
    ]);
    // None stayed, or those that stayed changed places: both lists are said whole.
    expect(said(of('a'), of('b'))).toEqual(['The show: remarks “b”; was “a”']);
    expect(said(of('a', 'b'), of('b', 'a', 'c'))).toEqual([
      'The show: remarks “b”, “a”, “c”; was “a”, “b”',
    ]);
    expect(said(of('a', 'a'), of('a'))).toEqual(['The show: remarks “a”; was “a”, “a”']);
  });

  it('speaks another language whole, with its decimal mark, and leaves names alone', () => {
    const texts = {
      mass: 'Masse',
      basis: 'Grundlage',
      weighed: 'gewogen',
      estimated: 'geschätzt',
      '{what} of {whole}': '{what} von {whole}',
      '{now}, was {old}': '{now}, war {old}',
      'Set {id}, {name}': 'Zug {id}, {name}',
      '{number} on set {set}': '{number} an Zug {set}',
      Cue: 'Stichwort',
      'taken away': 'weggenommen',
    };
    const tongue = { language: 'de', decimalMark: ',', months: [], date: '', texts } as const;
    const before = flat({ value: '300 lb', basis: 'estimated' });
    const after = flat({ value: '310.5 lb', basis: 'weighed' }, { cues: [] });
    expect(said(before, after, { words: 'US', tongue })).toEqual([
      'Zug 11, Dining room: Masse von Dining room flat 310,5 lb, war 300 lb; ' +
        'Grundlage gewogen, war geschätzt',
      'Stichwort 13 an Zug 9: weggenommen',
    ]);
  });

  it.each(['house', 'show', 'state'])('has words for every field of a %s', (kind) => {
    const file = join(import.meta.dirname, '..', 'documents', 'schema', `${kind}.schema.json`);
    const schema = JSON.parse(readFileSync(file, 'utf8')) as Json;
    const bases = ['assumption', 'calculated', 'commonPractice', 'estimated', 'houseRule'];
    const named = [...bases, 'invented', 'measured', 'published', 'weighed', 'basis', 'unknown'];
    const without = fieldsOf(schema).filter((name) => !hasWords(name) && !named.includes(name));
    expect([...new Set(without)]).toEqual([]);
  });
});

const fieldsOf = (schema: Json): readonly string[] => {
  if (typeof schema !== 'object' || schema === null) return [];
  if (Array.isArray(schema)) return schema.flatMap((each: Json) => fieldsOf(each));
  const { properties } = schema as JsonObject;
  const own = typeof properties === 'object' && properties !== null ? Object.keys(properties) : [];
  return [...own, ...Object.values(schema).flatMap((each) => fieldsOf(each as Json))];
};
