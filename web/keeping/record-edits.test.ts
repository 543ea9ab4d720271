/** Nothing that changes how things stand waits on a device: without an answer a person decides. */
import { describe, expect, it } from 'vitest';
import { FIRST, held, massIn, SHOW, stage, withMass } from './stage-for-tests.ts';

/** A page that was live, and lost the server with the first entry. */
const lost = async () => {
  const on = stage('state');
  const keeper = await on.open();
  on.net.isUp = false;
  keeper.edit(SHOW, withMass('70 lb'), 'counted');
  await on.turn();
  return { ...on, keeper };
};

describe('an entry of the record that the server did not answer', () => {
  it('is not sent by itself, not when the server is back, not after a reload', async () => {
    const { net, keeper, open, turn, stored } = await lost();
    expect(held(keeper).save).toEqual({ is: 'held' });
    net.isUp = true;
    await turn();
    keeper.flush(true);
    await keeper.refresh();
    await turn();
    expect(stored().revision).toBe(1);
    const again = await open();
    await turn();
    again.flush(false);
    await turn();
    expect(held(again)).toMatchObject({ save: { is: 'held' }, why: 'counted' });
    expect(massIn(held(again).document)).toBe('70 lb');
    expect(stored().revision).toBe(1);
  });

  it('is joined by no other before a person has decided, and not taken back by undo', async () => {
    const { net, keeper, turn } = await lost();
    net.isUp = true;
    keeper.edit(SHOW, withMass('80 lb'), 'counted again');
    keeper.undo([SHOW]);
    keeper.remark(SHOW, 'after the show');
    await turn();
    expect(massIn(held(keeper).document)).toBe('70 lb');
    expect(held(keeper)).toMatchObject({ save: { is: 'held' }, remark: '' });
  });

  it('is sent at the word of a person, and held again where that is not answered', async () => {
    const { net, keeper, turn, stored } = await lost();
    keeper.sendHeld(SHOW);
    await turn();
    expect(held(keeper).save.is).toBe('held');
    net.isUp = true;
    keeper.sendHeld(SHOW);
    await turn();
    expect(held(keeper).save.is).toBe('saved');
    expect(stored()).toMatchObject({ revision: 2, why: 'counted' });
    keeper.edit(SHOW, withMass('80 lb'), 'counted again');
    await turn();
    expect(stored().revision).toBe(3);
  });

  it('is put before a person against what somebody else recorded since', async () => {
    const { net, keeper, turn, storeAs, stored } = await lost();
    storeAs(withMass('99 lb'), 'mid loader lead', 'counted by two');
    net.isUp = true;
    keeper.sendHeld(SHOW);
    await turn();
    expect(held(keeper).save.is).toBe('conflict');
    expect(stored().revision).toBe(2);
  });

  it('is dropped for what the server has', async () => {
    const { net, keeper, turn, stored } = await lost();
    net.isUp = true;
    await keeper.dropHeld(SHOW);
    await turn();
    expect(held(keeper)).toMatchObject({ save: { is: 'saved' }, document: FIRST });
    keeper.redo([SHOW]);
    keeper.undo([SHOW]);
    await turn();
    expect(stored().revision).toBe(1);
  });

  it('shows what came there after all, where only the answer was lost', async () => {
    const on = stage('state');
    const keeper = await on.open();
    on.net.losesAnswers = true;
    keeper.edit(SHOW, withMass('70 lb'), 'counted');
    await on.turn();
    expect(held(keeper).save.is).toBe('held');
    on.net.losesAnswers = false;
    await keeper.dropHeld(SHOW);
    expect(held(keeper)).toMatchObject({ save: { is: 'saved' }, server: { revision: 2 } });
    expect(massIn(held(keeper).document)).toBe('70 lb');
  });
});
