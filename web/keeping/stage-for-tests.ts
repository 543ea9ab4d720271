/** A page before a server, for tests of keeping: the clock is turned by hand. */
import type { Copy } from './copies.ts';
import { draftBox } from './draft.ts';
import type { JsonObject } from './json.ts';
import { Keeper } from './keeper.ts';
import type { Kept } from './kept.ts';
import type { DatabaseName, DocumentKind, Server, Stored } from './server.ts';
import { ServerFault } from './server.ts';

export const SHOW = 'show:vell';
export const FIRST: JsonObject = { name: 'Vell', hangs: [{ set: '5', mass: '60 lb' }] };

type Waiting = { readonly call: () => void; readonly milliseconds: number };

type Net = Record<'isUp' | 'losesAnswers' | 'needsSignIn', boolean> &
  Record<'inHand', DatabaseName> &
  Record<'waiting', Waiting[]> &
  Record<'takesLong' | 'savesTakeLong', Promise<void> | null> &
  Record<'opened', Keeper | null>;

const AT_FIRST: Omit<Net, 'waiting'> = {
  isUp: true,
  losesAnswers: false,
  needsSignIn: false,
  inHand: 'demo',
  takesLong: null,
  savesTakeLong: null,
  opened: null,
};

/** A server with one document, and the network before it. */
const oneServer = (kind: DocumentKind) => {
  const net: Net = { ...AT_FIRST, waiting: [] };
  const sentBy: string[] = [];
  /** Whether the document is in use; set aside, it is not listed. */
  const listed: Record<'show', boolean> = { show: true };
  const holds: { stored: Stored } = {
    stored: {
      id: SHOW,
      kind,
      revision: 1,
      savedAt: '2026-11-25T14:00:00Z',
      savedBy: 'head flyperson',
      why: 'first loaded',
      remark: '',
      document: FIRST,
    },
  };
  const revisions: Stored[] = [holds.stored];
  const storeAs = (document: JsonObject, savedBy: string, why: string, remark = ''): void => {
    const { stored } = holds;
    holds.stored = { ...stored, document, savedBy, why, remark, revision: stored.revision + 1 };
    revisions.push(holds.stored);
  };
  const save: Server['save'] = async ({
    expectedRevision,
    document,
    savedBy,
    why,
    remark = '',
  }) => {
    await net.savesTakeLong;
    if (!net.isUp) return { outcome: 'unreached' };
    const { stored } = holds;
    if (expectedRevision !== stored.revision) return { outcome: 'stale', current: stored };
    storeAs(document, savedBy, why, remark);
    sentBy.push(why);
    if (net.losesAnswers) return { outcome: 'unreached' };
    return { outcome: 'saved', summary: holds.stored };
  };
  const reached = async <T>(answer: () => T): Promise<T> => {
    await net.takesLong;
    if (!net.isUp) throw new ServerFault(null, 'not reached');
    if (net.needsSignIn) throw new ServerFault(401, 'sign in');
    return answer();
  };
  const server: Server = {
    databases: () => reached(() => ({ inHand: net.inHand, hasHouse: false })),
    documents: () => reached(() => (listed.show ? [holds.stored] : [])),
    document: () => reached(() => holds.stored),
    save,
    take: () => reached(() => ({ inHand: 'demo' as const, hasHouse: false })),
  };
  return { net, server, storeAs, sentBy, listed, revisions, stored: () => holds.stored };
};

/** The same with a page before it, whose clock is turned by hand and whose storage outlives it. */
export const stage = (kind: DocumentKind = 'show') => {
  const { net, server, ...rest } = oneServer(kind);
  const box = new Map<string, string>();
  const storage = {
    getItem: (key: string) => box.get(key) ?? null,
    setItem: (key: string, text: string) => void box.set(key, text),
  };
  /** What the device has kept of the server, as long as it keeps anything. */
  const device: Record<'clockMs', number> & Record<'copy', Copy | null> = {
    clockMs: Date.parse('2026-11-25T15:00:00Z'),
    copy: null,
  };
  const open = async (): Promise<Keeper> => {
    // A page that is left has written its draft: it lived longer than that takes.
    for (const { call, milliseconds } of net.waiting) if (milliseconds < 100) call();
    net.waiting = [];
    const keeper = new Keeper({
      server,
      drafts: draftBox(storage),
      copies: {
        last: async () => device.copy,
        keep: (copy) => {
          device.copy = copy;
        },
      },
      moment: () => ({ serverMs: device.clockMs - 60_000, deviceMs: device.clockMs }),
      savedBy: () => 'deck rail 1',
      later: (call, milliseconds) => {
        const due = { call, milliseconds };
        net.waiting.push(due);
        return () => {
          net.waiting = net.waiting.filter((each) => each !== due);
        };
      },
    });
    net.opened = keeper;
    await keeper.open();
    return keeper;
  };
  const turn = async (): Promise<void> => {
    const due = net.waiting;
    net.waiting = [];
    for (const { call } of due) call();
    await new Promise((resolve) => setTimeout(resolve, 0));
  };
  return { net, open, turn, device, ...rest };
};

export const massIn = (document: JsonObject): unknown =>
  (document['hangs'] as readonly JsonObject[])[0]?.['mass'];

export const withMass = (mass: string): JsonObject => ({ ...FIRST, hangs: [{ set: '5', mass }] });

export const held = (keeper: Keeper): Kept => {
  const state = keeper.state();
  const kept = state.phase === 'open' ? state.documents[SHOW] : undefined;
  if (kept === undefined) throw new Error('the document is not open');
  return kept;
};
