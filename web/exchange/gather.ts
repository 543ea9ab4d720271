/** Everything for an archive, asked of the server piece by piece, told and ended as one likes. */
import { type ArchiveFile, type LeftOut, type StoredText, showFolder, slug } from '#archive';
import { writeDocument } from '#documents';
import { message } from '#texts';
import type { JsonObject } from '../keeping/json.ts';
import type { Stored, Summary } from '../keeping/server.ts';
import type { ShowAsked } from './archive-request.ts';

export type Paper = 'letter' | 'a4';

export type GatherOptions = {
  readonly withShows: boolean;
  /** Null: no sheets. */
  readonly paper: Paper | null;
  readonly by: string;
};

export type OnStep = (words: string, done: number, of: number) => void;

export type Gathered = {
  readonly documents: readonly StoredText[];
  readonly shows: readonly ShowAsked[];
  readonly files: readonly ArchiveFile[];
  readonly leftOut: readonly LeftOut[];
};

/** Asks by GET; ended by the signal. */
type Ask = (path: string) => Promise<Response>;

export class GatherFault extends Error {}

const jsonOf = async <T>(ask: Ask, path: string): Promise<T> => {
  const response = await ask(path);
  if (!response.ok) throw new GatherFault(`the server answered ${response.status} to ${path}`);
  return (await response.json()) as T;
};

const at = (id: string): string => `/api/documents/${encodeURIComponent(id)}`;

const listOf = async (ask: Ask, path: string): Promise<readonly Summary[]> =>
  (await jsonOf<{ documents: readonly Summary[] }>(ask, path)).documents;

type All = { readonly stored: readonly Stored[]; readonly aside: ReadonlySet<string> };

const revisionsOf = async (ask: Ask, onStep: OnStep): Promise<All> => {
  const documents = await listOf(ask, '/api/documents');
  const aside = await listOf(ask, '/api/documents-aside');
  const lists = await Promise.all(
    [...documents, ...aside].map(({ id }) =>
      jsonOf<{ revisions: readonly Summary[] }>(ask, `${at(id)}/revisions`),
    ),
  );
  const all = lists.flatMap(({ revisions }) => revisions);
  const stored: Stored[] = [];
  for (const { id, revision } of all) {
    onStep(message('Revisions of the documents'), stored.length, all.length);
    stored.push(await jsonOf<Stored>(ask, `${at(id)}/revisions/${revision}`));
  }
  return { stored, aside: new Set(aside.map(({ id }) => id)) };
};

const newest = (stored: readonly Stored[]): readonly Stored[] => {
  const last = new Map<string, Stored>();
  for (const one of stored) {
    if (one.revision > (last.get(one.id)?.revision ?? 0)) last.set(one.id, one);
  }
  return [...last.values()];
};

const showsAsked = (current: readonly Stored[]): readonly ShowAsked[] =>
  current.flatMap(({ kind, document, revision }): readonly ShowAsked[] => {
    if (kind !== 'show') return [];
    const house = current.find(({ id }) => id === `house:${String(document['house'])}`);
    if (house === undefined) return [];
    const state = current.find(({ id }) => id === `state:${String(document['house'])}`);
    const of = state === undefined ? '' : `, record ${state.revision}`;
    return [
      {
        house: house.document,
        show: document,
        state: state?.document ?? null,
        line: `From revisions: house ${house.revision}, show ${revision}${of}.`,
      },
    ];
  });

const asked = (path: string, query: Readonly<Record<string, string>>): string =>
  `${path}?${new URLSearchParams(query).toString()}`;

type Sheets = Pick<Gathered, 'files' | 'leftOut'>;

const sheetsOf = async (
  ask: Ask,
  { house, show }: { readonly house: JsonObject; readonly show: JsonObject },
  { by, paper, onStep }: { readonly by: string; readonly paper: Paper; readonly onStep: OnStep },
): Promise<Sheets> => {
  const [houseId, showId] = [String(house['id']), String(show['id'])];
  const job = { house: houseId, show: showId, by };
  const files: ArchiveFile[] = [];
  const leftOut: LeftOut[] = [];
  const list = await ask(asked('/api/sheets', job));
  if (!list.ok) {
    const what = `sheets of ${String(show['name'] ?? showId)}`;
    return { files, leftOut: [{ what, why: `the server answered ${list.status}` }] };
  }
  const { sheets } = (await list.json()) as { readonly sheets: readonly string[] };
  const taken = new Set<string>();
  for (const [index, sheet] of sheets.entries()) {
    onStep(`Sheets of ${String(show['name'] ?? showId)}`, index, sheets.length);
    const answer = await ask(asked('/api/sheet.pdf', { ...job, sheet, paper }));
    if (!answer.ok) {
      leftOut.push({ what: `sheet ${sheet}`, why: `the server answered ${answer.status}` });
      continue;
    }
    const name = slug(sheet, taken);
    taken.add(name);
    files.push({
      path: `${showFolder(houseId, showId)}/sheets/${name}.pdf`,
      bytes: new Uint8Array(await answer.arrayBuffer()),
    });
  }
  return { files, leftOut };
};

const textOf = ({ document, ...summary }: Stored, isAside: boolean): StoredText => ({
  id: summary.id,
  kind: summary.kind,
  revision: summary.revision,
  savedAt: summary.savedAt,
  savedBy: summary.savedBy,
  why: summary.why,
  ...(summary.remark === '' ? {} : { remark: summary.remark }),
  ...(isAside ? { aside: true } : {}),
  text: writeDocument(document),
});

export const gather = async (
  ask: Ask,
  { withShows, paper, by }: GatherOptions,
  onStep: OnStep,
): Promise<Gathered> => {
  const { stored, aside } = await revisionsOf(ask, onStep);
  const shows = showsAsked(newest(stored.filter(({ id }) => !aside.has(id))));
  const files: ArchiveFile[] = [];
  const leftOut: LeftOut[] = withShows
    ? []
    : [{ what: message('tables and drawings'), why: message('not asked for') }];
  if (paper === null) leftOut.push({ what: message('sheets'), why: message('not asked for') });
  else {
    for (const show of shows) {
      const sheets = await sheetsOf(ask, show, { by, paper, onStep });
      files.push(...sheets.files);
      leftOut.push(...sheets.leftOut);
    }
  }
  const documents = stored.map((one) => textOf(one, aside.has(one.id)));
  return { documents, shows: withShows ? shows : [], files, leftOut };
};
