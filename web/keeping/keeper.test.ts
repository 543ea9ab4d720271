import { describe, expect, it } from 'vitest';
import { draftBox } from './draft.ts';
import type { JsonObject } from './json.ts';
import { Keeper } from './keeper.ts';
import type { Kept } from './kept.ts';
import type { Server, Stored } from './server.ts';
import { ServerFault } from './server.ts';

const SHOW = 'show:vell';
const FIRST: JsonObject = { name: 'Vell', hangs: [{ set: '5', mass: '60 lb' }] };

type Net = { isUp: boolean; losesAnswers: boolean; waiting: (() => void)[] };

/** A server with one document, and the network before it. */
const oneServer = () => {
  const net: Net = { isUp: true, losesAnswers: false, waiting: [] };
  const sentBy: string[] = [];
  const holds: { stored: Stored } = {
    stored: {
      id: SHOW,
      kind: 'show',
      revision: 1,
      savedAt: '2026-11-25T14:00:00Z',
      savedBy: 'head flyperson',
      why: 'first loaded',
      document: FIRST,
    },
  };
  const storeAs = (document: JsonObject, savedBy: string, why: string): void => {
    const { stored } = holds;
    holds.stored = { ...stored, document, savedBy, why, revision: stored.revision + 1 };
  };
  const save: Server['save'] = async ({ expectedRevision, document, savedBy, why }) => {
    if (!net.isUp) return { outcome: 'unreached' };
    const { stored } = holds;
    if (expectedRevision !== stored.revision) return { outcome: 'stale', current: stored };
    storeAs(document, savedBy, why);
    sentBy.push(why);
    if (net.losesAnswers) return { outcome: 'unreached' };
    return { outcome: 'saved', summary: holds.stored };
  };
  const reached = async <T>(answer: () => T): Promise<T> => {
    if (!net.isUp) throw new ServerFault(null, 'not reached');
    return answer();
  };
  const server: Server = {
    databases: () => reached(() => ({ inHand: 'demo' as const, hasHouse: false })),
    documents: () => reached(() => [holds.stored]),
    document: () => reached(() => holds.stored),
    save,
    take: () => reached(() => ({ inHand: 'demo' as const, hasHouse: false })),
  };
  return { net, server, storeAs, sentBy, stored: () => holds.stored };
};

/** The same with a page before it, whose clock is turned by hand and whose storage outlives it. */
const stage = () => {
  const { net, server, ...rest } = oneServer();
  const box = new Map<string, string>();
  const storage = {
    getItem: (key: string) => box.get(key) ?? null,
    setItem: (key: string, text: string) => void box.set(key, text),
  };
  const open = async (): Promise<Keeper> => {
    net.waiting = [];
    const keeper = new Keeper({
      server,
      drafts: draftBox(storage),
      savedBy: () => 'deck rail 1',
      later: (call) => {
        net.waiting.push(call);
        return () => {
          net.waiting = net.waiting.filter((each) => each !== call);
        };
      },
    });
    await keeper.open();
    return keeper;
  };
  const turn = async (): Promise<void> => {
    const due = net.waiting;
    net.waiting = [];
    for (const call of due) call();
    await new Promise((resolve) => setTimeout(resolve, 0));
  };
  return { net, open, turn, ...rest };
};

const massIn = (document: JsonObject): unknown =>
  (document['hangs'] as readonly JsonObject[])[0]?.['mass'];

const withMass = (mass: string): JsonObject => ({ ...FIRST, hangs: [{ set: '5', mass }] });

const held = (keeper: Keeper): Kept => {
  const state = keeper.state();
  const kept = state.phase === 'open' ? state.documents[SHOW] : undefined;
  if (kept === undefined) throw new Error('the document is not open');
  return kept;
};

describe('keeper', () => {
  it('sends an edit when the hand rests, with what it was and who made it', async () => {
    const { open, turn, stored } = stage();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass of set 5');
    expect(held(keeper).save.is).toBe('waiting');
    await turn();
    expect(held(keeper).save.is).toBe('saved');
    expect(stored()).toMatchObject({ revision: 2, why: 'mass of set 5', savedBy: 'deck rail 1' });
  });

  it('makes one save of several edits, and names them all', async () => {
    const { open, turn, sentBy } = stage();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'one');
    keeper.edit(SHOW, withMass('80 lb'), 'two');
    await turn();
    expect(sentBy).toEqual(['one; two']);
  });

  it('keeps edits on the device while the server is not reached, over a reload too', async () => {
    const { net, open, turn, stored } = stage();
    const keeper = await open();
    net.isUp = false;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    expect(held(keeper).save.is).toBe('unreached');
    net.isUp = true;
    const again = await open();
    expect(massIn(held(again).document)).toBe('70 lb');
    await turn();
    expect(held(again).save.is).toBe('saved');
    expect(massIn(stored().document)).toBe('70 lb');
  });

  it('does not save twice when only the answer was lost', async () => {
    const { net, open, turn, stored } = stage();
    const keeper = await open();
    net.losesAnswers = true;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    net.losesAnswers = false;
    await turn();
    expect(held(keeper).save.is).toBe('saved');
    expect(stored().revision).toBe(2);
  });

  it('says plainly when the documents cannot be fetched at all', async () => {
    const { net, open } = stage();
    net.isUp = false;
    expect((await open()).state()).toMatchObject({ phase: 'failed', unreached: true });
  });

  it('takes back and does again, also after a reload', async () => {
    const { open, turn } = stage();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    const again = await open();
    again.undo([SHOW]);
    expect(massIn(held(again).document)).toBe('60 lb');
    again.redo([SHOW]);
    expect(massIn(held(again).document)).toBe('70 lb');
    again.undo(['show:another']);
    expect(massIn(held(again).document)).toBe('70 lb');
  });
});

describe('when somebody else has saved since', () => {
  const contested = async () => {
    const all = stage();
    const keeper = await all.open();
    all.storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    keeper.edit(SHOW, withMass('70 lb'), 'our mass');
    await all.turn();
    return { ...all, keeper };
  };

  it('merges nothing and shows both', async () => {
    const { keeper, stored } = await contested();
    expect(held(keeper).save).toMatchObject({ is: 'conflict', theirs: { revision: 2 } });
    expect(massIn(held(keeper).document)).toBe('70 lb');
    expect(massIn(stored().document)).toBe('99 lb');
  });

  it('saves ours as a further revision when that is chosen', async () => {
    const { keeper, turn, stored } = await contested();
    keeper.keepMine(SHOW);
    await turn();
    expect(stored().revision).toBe(3);
    expect(massIn(stored().document)).toBe('70 lb');
  });

  it('takes theirs when that is chosen, and undo brings ours back', async () => {
    const { keeper } = await contested();
    keeper.takeTheirs(SHOW);
    expect(massIn(held(keeper).document)).toBe('99 lb');
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('70 lb');
  });

  it('shows their version to a page that has no edits of its own', async () => {
    const { open, storeAs } = stage();
    const keeper = await open();
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    await keeper.refresh();
    expect(massIn(held(keeper).document)).toBe('99 lb');
    expect(held(keeper).save.is).toBe('saved');
  });
});
