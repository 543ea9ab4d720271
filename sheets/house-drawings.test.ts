/** Section and plan on paper: which moments there are; a plan never looks like a record. */
import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { sheetIds, sheetOf } from './all-sheets.ts';
import { exampleContext, mustMake } from './example-sheets.ts';

const kestlemere = exampleContext(openExample('kestlemere'));

const made = (id: string) => mustMake(kestlemere, id);

const tableOf = (id: string) => {
  const table = made(id).blocks.find((block) => block.kind === 'table');
  return table?.kind === 'table' ? table : null;
};

describe('section and plan as sheets', () => {
  it('are offered at the record and at each trim of the show', () => {
    const ids = sheetIds(kestlemere).filter((id) => /^(section|plan)\//.test(id));
    expect(ids).toContain('section/record');
    expect(ids).toContain('plan/trim:playing');
    expect(ids.every((id) => made(id).blocks.some(({ kind }) => kind === 'drawing'))).toBe(true);
  });

  it('say PLANNED in the frame of what nobody has recorded, and only there', () => {
    expect(made('section/record').frame).not.toMatch(/PLANNED/);
    expect(made('section/trim:playing').frame).toMatch(/DEMO and PLANNED/);
    const real = {
      ...kestlemere,
      house: { ...kestlemere.house, demo: false },
      show: kestlemere.show && { ...kestlemere.show, demo: false },
      state: kestlemere.state && { ...kestlemere.state, demo: false },
    };
    expect(sheetOf(real, 'plan/trim:playing')?.frame).toBe('PLANNED: nobody has recorded this');
    expect(sheetOf(real, 'plan/record')?.frame).toBeNull();
  });

  it('list every set with its heights, as they are at that moment', () => {
    const heights = (id: string) => tableOf(id)?.rows.find(({ cells }) => cells[0]?.[0] === '11');
    expect(tableOf('section/record')?.rows).toHaveLength(kestlemere.assessment.sets.length);
    const last = kestlemere.show?.cues.findLast(({ set }) => set === '11');
    const first = kestlemere.show?.cues.find(({ set }) => set === '11');
    expect(last).toBeDefined();
    expect(heights(`section/cue:${first?.number}`)).not.toEqual(
      heights(`section/cue:${last?.number}`),
    );
  });

  it('are not made at a moment that there is not', () => {
    for (const at of ['trim:nowhere', 'cue:999', 'step:1', '']) {
      expect(sheetOf(kestlemere, `section/${at}`)).toBeUndefined();
    }
  });
});
