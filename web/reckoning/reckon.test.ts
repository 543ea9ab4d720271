import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { withMass } from '../editing/show-edits.ts';
import type { JsonObject } from '../keeping/json.ts';
import { type Documents, type Reckoning, reckon } from './reckon.ts';

const DOCUMENTS: Documents = {
  house: kestlemere as JsonObject,
  show: clockmaker as JsonObject,
  state: record as JsonObject,
};
const CLOCK_MS = Date.parse('2031-01-01T00:00:00Z');

const reckoned = (documents: Documents, before: Reckoning | null = null): Reckoning => {
  const answer = reckon(documents, CLOCK_MS, before);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return answer.value;
};

const setIn = ({ sets }: Reckoning, id: string) => sets.find((each) => each.id === id);

describe('reckon', () => {
  it('gives all 45 sets of the demo in rail order, each with its own findings', () => {
    const { sets } = reckoned(DOCUMENTS);
    expect(sets).toHaveLength(45);
    expect(sets.slice(9, 15).map(({ id }) => id)).toEqual(['10', '11', '12', '13', 'M1', '14']);
    expect(sets.flatMap(({ id, findings }) => findings.filter(({ at }) => at.set !== id))).toEqual(
      [],
    );
  });

  it('stands the clock of the demo at the hour of its record, whatever the device says', () => {
    expect(reckoned(DOCUMENTS).nowMs).toBe(Date.parse(String(DOCUMENTS.state?.['at'])));
  });

  it('draws only the changed set again, and changes its bricks', () => {
    const before = reckoned(DOCUMENTS);
    const path = ['items', 2, 'takeoff', 'mass'];
    const after = reckoned(
      { ...DOCUMENTS, show: withMass(DOCUMENTS.show, '5', path, '160 lb') },
      before,
    );
    const changed = after.sets.filter((each) => each !== setIn(before, each.id));
    expect(changed.map(({ id }) => id)).toEqual(['5']);
    expect(setIn(after, '5')?.set.plan).not.toEqual(setIn(before, '5')?.set.plan);
  });

  it('says that nothing is recorded where there is no record', () => {
    const { state, sets } = reckoned({ ...DOCUMENTS, state: null });
    expect(state).toBeNull();
    expect(sets[0]?.set.recorded.state.height).toBeNull();
  });

  it('names the document that it does not understand, with every refusal', () => {
    const answer = reckon(
      { ...DOCUMENTS, show: { ...DOCUMENTS.show, hangs: 3, cues: 4 } },
      CLOCK_MS,
    );
    expect(answer).toMatchObject({ ok: false, error: { document: 'show' } });
    expect(answer.ok ? [] : answer.error.refusals.map(({ path }) => path)).toEqual([
      'hangs',
      'cues',
    ]);
  });
});
