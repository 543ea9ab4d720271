import { describe, expect, it } from 'vitest';
import type { Copy } from './copies.ts';
import type { Keeper } from './keeper.ts';
import { FIRST, held, massIn, SHOW, stage, withMass } from './stage-for-tests.ts';

const asOf = (keeper: Keeper) => {
  const state = keeper.state();
  return state.phase === 'open' ? state.asOf : state.phase;
};

/** What waits until it is let through. */
const gate = (): { readonly opened: Promise<void>; readonly open: () => void } => {
  let open = (): void => undefined;
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { opened, open: () => open() };
};

/** A page that has read everything once, on a device that has kept it; then the server is gone. */
const alone = async () => {
  const all = stage();
  await all.open();
  all.net.isUp = false;
  all.device.clockMs += 3 * 3_600_000;
  return all;
};

describe('a page that opens without its server', () => {
  it('shows what this device read last, and when that was by both clocks', async () => {
    const { open, device } = await alone();
    const read = device.copy?.read;
    const keeper = await open();
    expect(massIn(held(keeper).document)).toBe('60 lb');
    expect(asOf(keeper)).toEqual(read);
    expect(read?.deviceMs).toBe(device.clockMs - 3 * 3_600_000);
    expect(read?.serverMs).toBe((read?.deviceMs ?? 0) - 60_000);
  });

  it('shows nothing, and says so, where this device has kept nothing', async () => {
    const { open, device } = await alone();
    device.copy = null;
    expect((await open()).state()).toMatchObject({ phase: 'failed', unreached: true });
  });

  it('keeps an edit of the plan as a draft, and saves it when the server answers', async () => {
    const { net, open, turn, stored } = await alone();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    expect(held(keeper).save.is).toBe('unreached');
    // Over a reload too: the page starts from its copy and its draft.
    const again = await open();
    expect(massIn(held(again).document)).toBe('70 lb');
    expect(asOf(again)).not.toBeNull();
    net.isUp = true;
    await turn();
    await turn();
    expect(asOf(again)).toBeNull();
    expect(held(again).save.is).toBe('saved');
    expect(massIn(stored().document)).toBe('70 lb');
    expect(stored().revision).toBe(2);
  });

  it('asks a person where somebody else saved while it was alone', async () => {
    const { net, open, turn, storeAs, revisions } = await alone();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    net.isUp = true;
    await turn();
    await turn();
    expect(held(keeper).save).toMatchObject({ is: 'conflict', began: 1, theirs: { revision: 2 } });
    expect(massIn(held(keeper).document)).toBe('70 lb');
    expect(revisions).toHaveLength(2);
    keeper.keepMine(SHOW);
    await turn();
    expect(revisions.map(({ document }) => massIn(document))).toEqual(['60 lb', '99 lb', '70 lb']);
  });

  it('takes what others saved where it has no edits of its own', async () => {
    const { net, open, storeAs, device } = await alone();
    const keeper = await open();
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    net.isUp = true;
    // The page comes to the front, or a person asks.
    await keeper.refresh();
    expect(asOf(keeper)).toBeNull();
    expect(massIn(held(keeper).document)).toBe('99 lb');
    expect(device.copy?.read.deviceMs).toBe(device.clockMs);
  });

  it('goes on asking until the server answers, and never all at once', async () => {
    const { net, open, turn } = await alone();
    const keeper = await open();
    for (const round of [1, 2, 3]) {
      const asking = net.waiting.filter(({ milliseconds }) => milliseconds >= 1000);
      expect(asking, `round ${round}`).toHaveLength(1);
      await turn();
      expect(asOf(keeper)).not.toBeNull();
    }
    net.isUp = true;
    await turn();
    expect(asOf(keeper)).toBeNull();
  });

  it('shows its copy where the server takes long, and what is new once it comes', async () => {
    const { net, open, storeAs, turn } = await alone();
    net.isUp = true;
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    const answer = gate();
    net.takesLong = answer.opened;
    const opening = open();
    await turn();
    const slow = net.opened;
    expect(slow && asOf(slow)).not.toBeNull();
    expect(slow && massIn(held(slow).document)).toBe('60 lb');
    answer.open();
    const keeper = await opening;
    expect(asOf(keeper)).toBeNull();
    expect(massIn(held(keeper).document)).toBe('99 lb');
  });
});

describe('a save that is answered after all was read anew', () => {
  it.each(['stale', 'unreached'] as const)('leaves the choice to a person: %s', async (late) => {
    const { net, open, turn, storeAs, revisions } = await alone();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    const answer = gate();
    net.savesTakeLong = answer.opened;
    net.isUp = true;
    await turn();
    expect(held(keeper).save).toMatchObject({ is: 'conflict', began: 1 });
    net.isUp = late === 'stale';
    answer.open();
    await turn();
    await turn();
    expect(held(keeper).save).toMatchObject({ is: 'conflict', began: 1, theirs: { revision: 2 } });
    net.isUp = true;
    await turn();
    expect(revisions).toHaveLength(2);
    expect(held(keeper).why).toBe('mass');
  });
});

describe('how things stand', () => {
  it('is not written down on a copy: it would be another thing when it is taken', async () => {
    const { open, device, turn } = await alone();
    const copy = device.copy as Copy;
    device.copy = {
      ...copy,
      documents: copy.documents.map((each) => ({ ...each, kind: 'state' })),
    };
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'counted');
    keeper.remark(SHOW, 'counted');
    await turn();
    expect(held(keeper)).toMatchObject({ save: { is: 'saved' }, remark: '', document: FIRST });
  });
});

describe('the copy of a device', () => {
  it('has what this page saved, and the age of what it read as a whole', async () => {
    const { open, device, turn } = stage();
    const keeper = await open();
    const { read } = device.copy as Copy;
    device.clockMs += 60_000;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    expect(device.copy?.documents).toEqual([held(keeper).server]);
    expect(massIn(device.copy?.documents[0]?.document ?? {})).toBe('70 lb');
    expect(device.copy?.read).toEqual(read);
  });

  it('holds nothing that the server has not taken', async () => {
    const { open, device, net, turn } = stage();
    const keeper = await open();
    net.isUp = false;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    expect(device.copy?.documents.map(({ document }) => massIn(document))).toEqual(['60 lb']);
  });

  it('grows no older while the server says that nothing newer is there', async () => {
    const { open, device, net, storeAs } = stage();
    const keeper = await open();
    const first = device.copy?.read.deviceMs;
    device.clockMs += 59_000;
    keeper.confirm();
    expect(device.copy?.read.deviceMs).toBe(first);
    device.clockMs += 1000;
    keeper.confirm();
    expect(device.copy?.read.deviceMs).toBe(device.clockMs);
    // Something newer may be there and was not read: what is here is as old as it was.
    storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
    net.isUp = false;
    await keeper.refresh();
    device.clockMs += 600_000;
    keeper.confirm();
    expect(device.copy?.read.deviceMs).toBe(device.clockMs - 600_000);
    net.isUp = true;
    await keeper.refresh();
    expect(device.copy?.read.deviceMs).toBe(device.clockMs);
  });

  it('is left for the sign-in where the server answers, and asks for one', async () => {
    const { open, net, turn } = await alone();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    net.isUp = true;
    net.needsSignIn = true;
    await keeper.refresh();
    expect(keeper.state()).toMatchObject({ phase: 'failed', needsSignIn: true });
    net.needsSignIn = false;
    await keeper.open();
    expect(massIn(held(keeper).document)).toBe('70 lb');
    await turn();
    expect(held(keeper).save.is).toBe('saved');
  });
});
