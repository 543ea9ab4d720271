import { describe, expect, it } from 'vitest';
import { held, massIn, SHOW, stage, withMass } from './stage-for-tests.ts';

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

  it('keeps an edit on the device where another database is taken in the same moment', async () => {
    const { net, open } = stage();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    net.inHand = 'house';
    await keeper.refresh();
    net.inHand = 'demo';
    expect(massIn(held(await open()).document)).toBe('70 lb');
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
