import { describe, expect, it } from 'vitest';
import type { JsonObject } from './json.ts';
import { FIRST, held, massIn, SHOW, stage, withMass } from './stage-for-tests.ts';

/** A page with an edit of its own, and a save of somebody else before it was sent. */
const contested = async () => {
  const all = stage();
  const keeper = await all.open();
  all.storeAs(withMass('99 lb'), 'mid loader lead', 'their mass');
  keeper.edit(SHOW, withMass('70 lb'), 'our mass');
  await all.turn();
  return { ...all, keeper };
};

const masses = (revisions: readonly { readonly document: JsonObject }[]): readonly unknown[] =>
  revisions.map(({ document }) => massIn(document));

describe('when somebody else has saved since', () => {
  it('merges nothing and shows both, and from where both began', async () => {
    const { keeper, stored } = await contested();
    expect(held(keeper).save).toMatchObject({
      is: 'conflict',
      theirs: { revision: 2 },
      began: 1,
    });
    expect(massIn(held(keeper).document)).toBe('70 lb');
    expect(massIn(stored().document)).toBe('99 lb');
  });

  it('saves ours as a further revision when that is chosen; theirs stays in history', async () => {
    const { keeper, turn, revisions } = await contested();
    keeper.keepMine(SHOW);
    await turn();
    expect(masses(revisions)).toEqual(['60 lb', '99 lb', '70 lb']);
    expect(revisions.at(-1)?.why).toBe('our mass');
  });

  it('takes theirs when that is chosen, and undo brings ours back', async () => {
    const { keeper, turn, revisions } = await contested();
    keeper.takeTheirs(SHOW);
    expect(massIn(held(keeper).document)).toBe('99 lb');
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('70 lb');
    await turn();
    expect(masses(revisions)).toEqual(['60 lb', '99 lb', '70 lb']);
  });

  it('brings ours back after theirs was taken and a third has saved', async () => {
    const { keeper, storeAs } = await contested();
    keeper.takeTheirs(SHOW);
    storeAs(withMass('120 lb'), 'head flyperson', 'a third');
    await keeper.refresh();
    expect(massIn(held(keeper).document)).toBe('120 lb');
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('70 lb');
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('60 lb');
  });

  it('saves what was put together as the next revision; undo brings ours back', async () => {
    const { keeper, turn, revisions } = await contested();
    expect(keeper.settle(SHOW, withMass('85 lb'), 2)).toBe(true);
    await turn();
    expect(masses(revisions)).toEqual(['60 lb', '99 lb', '85 lb']);
    expect(revisions.at(-1)?.why).toBe('our mass; put together with revision 2 by mid loader lead');
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('70 lb');
  });

  it('saves nothing anew where what was put together is theirs', async () => {
    const { keeper, turn, revisions } = await contested();
    expect(keeper.settle(SHOW, withMass('99 lb'), 2)).toBe(true);
    await turn();
    expect(held(keeper).save.is).toBe('saved');
    expect(revisions).toHaveLength(2);
    keeper.undo([SHOW]);
    expect(massIn(held(keeper).document)).toBe('70 lb');
  });

  it('shows a third save that comes while a person chooses, and drops the choice', async () => {
    const { keeper, storeAs, revisions } = await contested();
    storeAs(withMass('120 lb'), 'head flyperson', 'a third');
    await keeper.refresh();
    expect(held(keeper).save).toMatchObject({ is: 'conflict', theirs: { revision: 3 }, began: 1 });
    expect(massIn(held(keeper).document)).toBe('70 lb');
    expect(keeper.settle(SHOW, withMass('85 lb'), 2)).toBe(false);
    expect(revisions).toHaveLength(3);
    expect(keeper.settle(SHOW, withMass('85 lb'), 3)).toBe(true);
  });

  it.each(['keepMine', 'settle'] as const)(
    'asks again where a third save was not seen before the choice: %s',
    async (way) => {
      const { keeper, turn, storeAs, revisions } = await contested();
      storeAs(withMass('120 lb'), 'head flyperson', 'a third');
      if (way === 'keepMine') keeper.keepMine(SHOW);
      else keeper.settle(SHOW, withMass('85 lb'), 2);
      await turn();
      const ours = way === 'keepMine' ? '70 lb' : '85 lb';
      expect(held(keeper).save).toMatchObject({
        is: 'conflict',
        theirs: { revision: 3 },
        began: 2,
      });
      expect(massIn(held(keeper).document)).toBe(ours);
      expect(masses(revisions)).toEqual(['60 lb', '99 lb', '120 lb']);
      keeper.keepMine(SHOW);
      await turn();
      expect(masses(revisions)).toEqual(['60 lb', '99 lb', '120 lb', ours]);
    },
  );

  it.each(['keepMine', 'settle'] as const)(
    'does not save twice when the answer to a choice is lost: %s',
    async (way) => {
      const { net, keeper, turn, revisions } = await contested();
      net.losesAnswers = true;
      if (way === 'keepMine') keeper.keepMine(SHOW);
      else keeper.settle(SHOW, withMass('85 lb'), 2);
      await turn();
      expect(held(keeper).save.is).toBe('unreached');
      net.losesAnswers = false;
      await turn();
      expect(held(keeper).save.is).toBe('saved');
      expect(revisions).toHaveLength(3);
    },
  );

  it('keeps everything where the server goes away in the middle of a choice', async () => {
    const { net, keeper, turn, revisions, open } = await contested();
    net.isUp = false;
    keeper.settle(SHOW, withMass('85 lb'), 2);
    await turn();
    expect(held(keeper).save.is).toBe('unreached');
    net.isUp = true;
    const again = await open();
    expect(massIn(held(again).document)).toBe('85 lb');
    await turn();
    expect(masses(revisions)).toEqual(['60 lb', '99 lb', '85 lb']);
  });

  it('is still a conflict after a reload, and after another', async () => {
    const { open, turn, revisions } = await contested();
    for (const round of [1, 2]) {
      const again = await open();
      await turn();
      expect(held(again).save, `round ${round}`).toMatchObject({ is: 'conflict', began: 1 });
      expect(massIn(held(again).document)).toBe('70 lb');
    }
    expect(revisions).toHaveLength(2);
  });

  it('takes edits while a choice waits, and saves none of them unasked', async () => {
    const { keeper, turn, revisions } = await contested();
    keeper.edit(SHOW, withMass('71 lb'), 'our mass again');
    await turn();
    expect(held(keeper).save.is).toBe('conflict');
    expect(revisions).toHaveLength(2);
    keeper.keepMine(SHOW);
    await turn();
    expect(massIn(revisions.at(-1)?.document ?? {})).toBe('71 lb');
  });

  it('knows its own save again when the answer was lost and more was typed', async () => {
    const { net, open, turn, revisions } = stage();
    const keeper = await open();
    net.losesAnswers = true;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    net.losesAnswers = false;
    keeper.edit(SHOW, withMass('75 lb'), 'mass again');
    await turn();
    await turn();
    expect(held(keeper).save.is).toBe('saved');
    expect(masses(revisions)).toEqual(['60 lb', '70 lb', '75 lb']);
  });

  it.each([false, true])(
    'knows a save that was still on its way when the page was left (edited after: %s)',
    async (isEdited) => {
      const { net, open, turn, revisions } = stage();
      const keeper = await open();
      net.losesAnswers = true;
      keeper.edit(SHOW, withMass('70 lb'), 'mass');
      await turn();
      if (isEdited) keeper.edit(SHOW, withMass('75 lb'), 'mass again');
      net.losesAnswers = false;
      const again = await open();
      again.edit(SHOW, withMass('85 lb'), 'mass once more');
      await turn();
      await turn();
      expect(held(again).save.is).toBe('saved');
      expect(masses(revisions)).toEqual(['60 lb', '70 lb', '85 lb']);
    },
  );

  it('knows a save that reaches the server after the page was opened again', async () => {
    const { net, open, turn, storeAs, revisions } = stage();
    const keeper = await open();
    net.isUp = false;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    net.isUp = true;
    const again = await open();
    storeAs(withMass('70 lb'), 'deck rail 1', 'mass');
    again.edit(SHOW, withMass('85 lb'), 'mass once more');
    await turn();
    await turn();
    expect(held(again).save.is).toBe('saved');
    expect(masses(revisions)).toEqual(['60 lb', '70 lb', '85 lb']);
  });

  it('still tells a save of somebody else with the same name from its own', async () => {
    const { net, open, turn, storeAs } = stage();
    const keeper = await open();
    net.isUp = false;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    keeper.edit(SHOW, withMass('75 lb'), 'mass again');
    net.isUp = true;
    storeAs(withMass('99 lb'), 'deck rail 1', 'on another page');
    expect(held(await open()).save.is).toBe('conflict');
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

describe('a remark on a revision', () => {
  it('goes with the edits that wait', async () => {
    const { open, turn, revisions } = stage();
    const keeper = await open();
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    keeper.remark(SHOW, ' as hung on Tuesday ');
    await turn();
    expect(revisions.at(-1)).toMatchObject({ why: 'mass', remark: 'as hung on Tuesday' });
    expect(held(keeper)).toMatchObject({ save: { is: 'saved' }, remark: '' });
  });

  it('on what is saved already makes a revision with the same content', async () => {
    const { open, turn, revisions } = stage();
    const keeper = await open();
    keeper.remark(SHOW, 'as hung on Tuesday');
    await turn();
    expect(revisions).toHaveLength(2);
    expect(revisions.at(-1)).toMatchObject({
      document: FIRST,
      why: 'remark on what was there',
      remark: 'as hung on Tuesday',
    });
    keeper.remark(SHOW, '  ');
    await turn();
    expect(revisions).toHaveLength(2);
  });

  it('is not lost with an answer, a reload or a same save of somebody else', async () => {
    const { net, open, turn, storeAs, revisions } = stage();
    const keeper = await open();
    net.isUp = false;
    keeper.remark(SHOW, 'as hung');
    await turn();
    net.isUp = true;
    storeAs(FIRST, 'mid loader lead', 'nothing new');
    const again = await open();
    await turn();
    await turn();
    expect(held(again).save.is).toBe('saved');
    expect(revisions.map(({ remark }) => remark)).toEqual(['', '', 'as hung']);
  });

  it('is written once when its answer is lost', async () => {
    const { net, open, turn, revisions } = stage();
    const keeper = await open();
    net.losesAnswers = true;
    keeper.remark(SHOW, 'as hung');
    await turn();
    net.losesAnswers = false;
    await turn();
    await turn();
    expect(held(keeper)).toMatchObject({ save: { is: 'saved' }, remark: '' });
    expect(revisions.map(({ remark }) => remark)).toEqual(['', 'as hung']);
  });
});

describe('documents that come and go', () => {
  it('takes a new document up as the server has it', async () => {
    const { open, stored } = stage();
    const keeper = await open();
    // The server of this stage knows one document; a first save of it again is refused.
    const answer = await keeper.add(SHOW, 'show', FIRST, 'copied');
    expect(answer).toEqual({ outcome: 'stale', current: stored() });
    expect(held(keeper).server.revision).toBe(1);
  });

  it('lets go of a document that was set aside, but never of unsaved edits', async () => {
    const { net, open, turn, listed } = stage();
    const keeper = await open();
    listed.show = false;
    net.isUp = false;
    keeper.edit(SHOW, withMass('70 lb'), 'mass');
    await turn();
    net.isUp = true;
    await keeper.refresh();
    expect(massIn(held(keeper).document)).toBe('70 lb');
    keeper.undo([SHOW]);
    await turn();
    await turn();
    await keeper.refresh();
    expect(keeper.state()).toMatchObject({ phase: 'open', documents: {} });
  });
});
