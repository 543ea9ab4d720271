import { describe, expect, it } from 'vitest';
import { ENGLISH } from '#texts';
import house from '../../examples/skelderwick/house.json' with { type: 'json' };
import show from '../../examples/skelderwick/regatta.show.json' with { type: 'json' };
import type { JsonObject } from '../keeping/json.ts';
import { asSaved, type Kept } from '../keeping/kept.ts';
import type { DocumentKind } from '../keeping/server.ts';
import { behindWords, inPlaceOf, leftBehind, mayReplace, standingOf } from './document-standing.ts';
import type { ReadDocument } from './file-reading.ts';

const HOUSE: JsonObject = house;
const SHOW: JsonObject = show;

const keptAs = (id: string, kind: DocumentKind, document: JsonObject): Kept =>
  asSaved({ id, kind, document, revision: 1, savedAt: '', savedBy: '', why: '', remark: '' });

const here = {
  'house:skelderwick': keptAs('house:skelderwick', 'house', HOUSE),
  'show:regatta': keptAs('show:regatta', 'show', SHOW),
};

const brought = (id: string, kind: DocumentKind, raw: JsonObject): ReadDocument => ({
  id,
  kind,
  raw,
  name: id,
  isChecked: true,
  revision: null,
});

describe('a document beside those that are here', () => {
  it('is the same, another revision with what differs, or new', () => {
    const same = brought('show:regatta', 'show', structuredClone(SHOW));
    expect(standingOf(same, here)).toEqual({ is: 'same' });
    const other = brought('show:regatta', 'show', { ...SHOW, name: 'Regatta 2' });
    expect(standingOf(other, here)).toMatchObject({
      is: 'differs',
      changes: [{ path: 'name', after: 'Regatta 2' }],
    });
    expect(standingOf(brought('show:other', 'show', SHOW), here)).toEqual({ is: 'new' });
  });

  it('may be meant as a show of the same house that has another id', () => {
    const copy = brought('show:copy', 'show', { ...SHOW, id: 'copy', name: 'Copy' });
    const show = here['show:regatta'];
    expect(mayReplace(copy, show, here)).toBe(true);
    expect(mayReplace(brought('show:regatta', 'show', SHOW), show, here)).toBe(false);
    expect(mayReplace(brought('show:x', 'show', { ...SHOW, house: 'y' }), show, here)).toBe(false);
    const placed = inPlaceOf(copy, show);
    expect([placed.id, placed.raw['id']]).toEqual(['show:regatta', 'regatta']);
    expect(standingOf(placed, here)).toMatchObject({ changes: [{ path: 'name' }] });
  });

  it('is told of what would no longer be understood beside it', () => {
    // Every set of it renamed, so that the show hangs on sets that are not there.
    const text = JSON.stringify(HOUSE);
    const ids = ((HOUSE['lineSets'] ?? []) as readonly { readonly id: string }[]).map(
      ({ id }) => id,
    );
    const renamed = ids.reduce((all, id) => all.replaceAll(`"${id}"`, `"N${id}"`), text);
    const fewer = brought('house:skelderwick', 'house', JSON.parse(renamed) as JsonObject);
    const names = leftBehind([fewer], here).map((one) => behindWords(one, ENGLISH));
    expect(names).toEqual([`the show ${String(SHOW['name'])}`]);
    const both = [fewer, brought('show:regatta', 'show', SHOW)];
    expect(leftBehind(both, here)).toEqual([]);
    expect(leftBehind([brought('house:skelderwick', 'house', HOUSE)], here)).toEqual([]);
  });
});
