import { describe, expect, it } from 'vitest';
import { GatherFault, gather } from './gather.ts';

const house = { format: 'counterpoise-house', id: 'h', name: 'House' };
const show = { format: 'counterpoise-show', id: 's', name: 'Show', house: 'h' };
const lost = { format: 'counterpoise-show', id: 'lost', name: 'Lost', house: 'gone' };

const stored = (id: string, kind: string, revision: number, document: object) => ({
  id,
  kind,
  revision,
  savedAt: 'then',
  savedBy: 'A',
  why: '',
  remark: '',
  document,
});

const REVISIONS = [
  stored('house:h', 'house', 1, house),
  stored('show:s', 'show', 1, { ...show, name: 'Old' }),
  stored('show:s', 'show', 2, show),
  stored('show:lost', 'show', 1, lost),
  { ...stored('show:old', 'show', 3, { ...show, id: 'old' }), remark: 'the tour' },
];

const ASIDE = ['show:old'];

/** A server of these revisions, with two sheets of which one cannot be made. */
const answer = (path: string): Response => {
  const url = new URL(path, 'http://x');
  const [, , , id = '', , revision] = url.pathname.split('/').map(decodeURIComponent);
  const mine = REVISIONS.filter((one) => one.id === id);
  if (url.pathname === '/api/documents') {
    const all = new Set(REVISIONS.map((one) => one.id));
    const ids = [...all].filter((each) => !ASIDE.includes(each));
    return Response.json({ documents: ids.map((each) => ({ id: each })) });
  }
  if (url.pathname === '/api/documents-aside') {
    return Response.json({ documents: ASIDE.map((each) => ({ id: each })) });
  }
  if (url.pathname === '/api/sheets') return Response.json({ sheets: ['card/1', 'card.1'] });
  if (url.pathname === '/api/sheet.pdf') {
    return url.searchParams.get('sheet') === 'card/1'
      ? new Response('%PDF')
      : new Response('', { status: 422 });
  }
  if (revision === undefined) return Response.json({ revisions: mine });
  return Response.json(mine.find((one) => one.revision === Number(revision)));
};

describe('what goes into an archive', () => {
  it('is every revision with its text, and the newest of each show with its house', async () => {
    const steps: string[] = [];
    const gathered = await gather(
      async (path) => answer(path),
      { withShows: true, paper: 'a4', by: 'A' },
      (words, done, of) => steps.push(`${words} ${done}/${of}`),
    );
    expect(gathered.documents.map(({ id, revision }) => [id, revision])).toEqual([
      ['house:h', 1],
      ['show:s', 1],
      ['show:s', 2],
      ['show:lost', 1],
      ['show:old', 3],
    ]);
    // Set aside, it is in the archive with what it was, and no tables are made of it.
    expect(gathered.documents.at(-1)).toMatchObject({ aside: true, remark: 'the tour' });
    expect(gathered.documents[0]).not.toHaveProperty('remark');
    expect(JSON.parse(gathered.documents[1]?.text ?? '')).toMatchObject({ name: 'Old' });
    // A show whose house is not there has no tables and no drawings.
    expect(gathered.shows).toMatchObject([{ show, house, state: null }]);
    expect(gathered.files.map(({ path }) => path)).toEqual(['shows/h/s/sheets/card-1.pdf']);
    expect(gathered.leftOut).toEqual([{ what: 'sheet card.1', why: 'the server answered 422' }]);
    expect(steps).toContain('Revisions of the documents 3/5');
    expect(steps).toContain('Sheets of Show 1/2');
  });

  it('says what was not asked for', async () => {
    const gathered = await gather(
      async (path) => answer(path),
      { withShows: false, paper: null, by: 'A' },
      () => {},
    );
    expect(gathered.shows).toEqual([]);
    expect(gathered.leftOut.map(({ what }) => what)).toEqual(['tables and drawings', 'sheets']);
  });

  it('is not made where the server refuses a document', async () => {
    const broken = async (path: string): Promise<Response> =>
      path.includes('revisions/2') ? new Response('', { status: 500 }) : answer(path);
    const made = gather(broken, { withShows: true, paper: null, by: 'A' }, () => {});
    await expect(made).rejects.toThrow(GatherFault);
  });
});
