import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Json, JsonObject } from '#documents';
import { combine } from './combine.ts';
import { isSame } from './json.ts';
import { sayDifference } from './say-difference.ts';

const SEED = 52_811;
const US = { words: 'US' } as const;
const examples = join(import.meta.dirname, '..', 'examples');
const open = (file: string): JsonObject =>
  JSON.parse(readFileSync(join(examples, file), 'utf8')) as JsonObject;

const DOCUMENTS = [
  open('kestlemere/winterferry.show.json'),
  open('kestlemere/house.json'),
  open('kestlemere/state.json'),
  open('skelderwick/house.json'),
] as const;

type Path = readonly (string | number)[];

/** Every scalar of a document, by a walk of its own that knows nothing of names. */
const leavesOf = (value: Json, path: Path = []): readonly Path[] => {
  if (Array.isArray(value)) {
    return value.flatMap((each: Json, index) => leavesOf(each, [...path, index]));
  }
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([name, each]) => leavesOf(each as Json, [...path, name]));
};

const at = (root: Json, path: Path): Json | undefined =>
  path.reduce<Json | undefined>(
    (value, step) => (value as Record<string | number, Json>)[step],
    root,
  );

type Edit = { readonly leaf: number; readonly how: 'put' | 'drop' | 'addBeside' };

const edit = fc.record<Edit>({
  leaf: fc.nat(),
  how: fc.constantFrom('put', 'drop', 'addBeside'),
});

/** What an edit must leave to be read in the difference. */
type Trace = { readonly old: Json | undefined; readonly fresh: string | undefined };

const edited = (document: JsonObject, edits: readonly Edit[]) => {
  const after = structuredClone(document) as Record<string, Json>;
  const traces: Trace[] = [];
  const leaves = leavesOf(document).filter((path) => path.length > 0);
  const taken = new Set<string>();
  for (const [number, { leaf, how }] of edits.entries()) {
    const path = leaves[leaf % leaves.length] ?? [];
    const last = path.at(-1);
    const holder = at(after, path.slice(0, -1)) as Record<string | number, Json>;
    if (last === undefined || taken.has(String(path))) continue;
    // A list that loses an entry moves all that follow, and a second edit there would miss.
    if (typeof last === 'number' && how !== 'put') continue;
    taken.add(String(path));
    const fresh = `zq${number} lb`;
    if (how === 'addBeside') holder[`added${number}`] = fresh;
    else if (how === 'drop') delete holder[last];
    else holder[last] = fresh;
    traces.push({
      old: how === 'addBeside' ? undefined : at(document, path),
      fresh: how === 'drop' ? undefined : fresh,
    });
  }
  return { after: after as JsonObject, traces };
};

/** Choices of ours are said in two words, so blanks and capitals do not count. */
const plain = (text: string): string => text.replaceAll(/\s/g, '').toLowerCase();

const textOf = (value: Json): string =>
  typeof value === 'boolean' ? (value ? 'yes' : 'no') : value === null ? 'nothing' : String(value);

const documentAndEdits = fc.record({
  document: fc.constantFrom(...DOCUMENTS),
  edits: fc.array(edit, { minLength: 1, maxLength: 6 }),
});

describe('laws of the difference', () => {
  it(`says the old and the new of every changed leaf in some line (seed ${SEED})`, () => {
    fc.assert(
      fc.property(documentAndEdits, ({ document, edits }) => {
        const { after, traces } = edited(document, edits);
        const lines = sayDifference(document, after, US).flatMap((group) =>
          group.lines.flatMap(({ words, details }) => [group.heading, words, ...details]),
        );
        const all = plain(lines.join('\n'));
        for (const { old, fresh } of traces) {
          if (old !== undefined) expect(all).toContain(plain(textOf(old)));
          if (fresh !== undefined) expect(all).toContain(plain(fresh));
        }
        expect(lines.length === 0).toBe(isSame(document, after));
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe('laws of putting two versions together', () => {
  const three = fc.record({
    document: fc.constantFrom(...DOCUMENTS),
    mine: fc.array(edit, { maxLength: 4 }),
    theirs: fc.array(edit, { maxLength: 4 }),
  });

  it(`takes what one alone changed, and the same of both, unasked (seed ${SEED})`, () => {
    fc.assert(
      fc.property(documentAndEdits, ({ document: began, edits }) => {
        const { after } = edited(began, edits);
        for (const [mine, theirs] of [
          [after, began],
          [began, after],
          [after, structuredClone(after)],
        ] as const) {
          const put = combine({ began, mine, theirs });
          expect(put.contested).toEqual([]);
          expect(put.document).toEqual(after);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it(`is the same whoever is called mine (seed ${SEED})`, () => {
    fc.assert(
      fc.property(three, ({ document: began, mine, theirs }) => {
        const [one, other] = [edited(began, mine).after, edited(began, theirs).after];
        const ours = combine({ began, mine: one, theirs: other });
        const keys = ours.contested.map(({ key }) => [key, 'theirs'] as const);
        const swapped = combine({ began, mine: other, theirs: one }, new Map(keys));
        expect(swapped.contested.map(({ key }) => key).toSorted()).toEqual(
          ours.contested.map(({ key }) => key).toSorted(),
        );
        const leaves = (document: JsonObject) =>
          leavesOf(document)
            .map((path) => String(at(document, path)))
            .toSorted();
        expect(leaves(swapped.document)).toEqual(leaves(ours.document));
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it(`gives the whole of one when all is chosen and nothing else differs (seed ${SEED})`, () => {
    fc.assert(
      fc.property(three, ({ document: began, mine, theirs }) => {
        const [one, other] = [edited(began, mine).after, edited(began, theirs).after];
        const { contested, document } = combine({ began, mine: one, theirs: other });
        const all = JSON.stringify(document);
        // What mine wrote anew and nobody else touched is in the result, or was asked about.
        for (const text of JSON.stringify(one).match(/zq\d lb/g) ?? []) expect(all).toContain(text);
        for (const place of contested) expect(isSame(place.mine, place.theirs)).toBe(false);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
