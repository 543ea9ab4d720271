import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import clockmaker from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import kestlemere from '../../examples/kestlemere/house.json' with { type: 'json' };
import record from '../../examples/kestlemere/state.json' with { type: 'json' };
import { withMass, withoutHang, writtenHang } from '../editing/show-edits.ts';
import type { Json, JsonObject } from '../keeping/json.ts';
import { type Documents, type Reckoning, reckon, reckonAhead, reckonInSteps } from './reckon.ts';

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

/** The same, a step at a time; `turns` is how often the page could breathe. */
const inSteps = (documents: Documents, before: Reckoning | null) => {
  const steps = reckonInSteps(documents, CLOCK_MS, before);
  let turns = 0;
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) turns += 1;
  if (!step.value.ok) throw new Error(JSON.stringify(step.value.error));
  return { turns, reckoning: step.value.value };
};

const SEED = 20_262;

type Step = { readonly set: string; readonly what: string; readonly pounds: number };

/** One edit of one of the documents; it may be one that changes much, as a rule of the house. */
const edited = (documents: Documents, { set, what, pounds }: Step): Documents => {
  const { house, show, state } = documents;
  if (what === 'mass') {
    const items = (writtenHang(show, set)?.['items'] ?? []) as readonly JsonObject[];
    const index = items.findIndex(({ takeoff }) => Object.hasOwn(takeoff as JsonObject, 'mass'));
    const path = ['items', index, 'takeoff', 'mass'];
    return index < 0
      ? documents
      : { ...documents, show: withMass(show, set, path, `${pounds} lb`) };
  }
  if (what === 'hang') return { ...documents, show: withoutHang(show, set) };
  if (what === 'cue') {
    return { ...documents, show: { ...show, cues: (show['cues'] as readonly Json[]).slice(1) } };
  }
  if (what === 'record') return { ...documents, state: state && { ...state, sets: {} } };
  const rules = { ...(house['rules'] as JsonObject), lockLimit: `${pounds} lbf` };
  return { ...documents, house: { ...house, rules } };
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

  it(`says after any edits what it would say from nothing (seed ${SEED})`, () => {
    const edits = fc.array(
      fc.record({
        set: fc.constantFrom('5', '9', '11', '16', 'M1'),
        what: fc.constantFrom('mass', 'hang', 'cue', 'house', 'record'),
        pounds: fc.integer({ min: 1, max: 900 }),
      }),
      { minLength: 2, maxLength: 5 },
    );
    fc.assert(
      fc.property(edits, (steps) => {
        let documents = DOCUMENTS;
        let last = reckoned(documents);
        for (const step of steps) {
          documents = edited(documents, step);
          last = reckoned(documents, last);
        }
        const fresh = reckoned(structuredClone(documents));
        expect(last.findings).toEqual(fresh.findings);
        expect(last.sets.map(({ id, findings }) => [id, findings])).toEqual(
          fresh.sets.map(({ id, findings }) => [id, findings]),
        );
        expect(last.assessment.totals).toEqual(fresh.assessment.totals);
      }),
      { seed: SEED, numRuns: 12 },
    );
  });

  it('answers a changed set ahead of the rest, as the whole does then', () => {
    const before = reckoned(DOCUMENTS);
    const documents = edited(DOCUMENTS, { set: '5', what: 'mass', pounds: 190 });
    const ahead = reckonAhead(documents, before);
    const whole = reckoned(documents, before);
    expect(ahead?.map(({ id }) => id)).toEqual(['5']);
    const [row] = ahead ?? [];
    const fresh = setIn(reckoned(structuredClone(documents)), '5');
    expect([row?.set.plan, row?.set.hung]).toEqual([fresh?.set.plan, fresh?.set.hung]);
    expect(row?.findings).toEqual(fresh?.findings);
    expect(row?.findings).not.toEqual(setIn(before, '5')?.findings);
    // It is not worked out twice.
    expect(setIn(whole, '5')?.set).toBe(row?.set);
  });

  it.each(['cue', 'house', 'record'])('answers nothing ahead where the %s changes', (what) => {
    const documents = edited(DOCUMENTS, { set: '5', what, pounds: 190 });
    expect(reckonAhead(documents, reckoned(DOCUMENTS))).toBeNull();
  });

  it('answers nothing ahead where nothing hangs otherwise, or too much does', () => {
    const before = reckoned(DOCUMENTS);
    expect(reckonAhead(DOCUMENTS, before)).toBeNull();
    const many = ['5', '9', '11', '16'].reduce(
      (documents, set) => edited(documents, { set, what: 'hang', pounds: 1 }),
      DOCUMENTS,
    );
    expect(reckonAhead(many, before)).toBeNull();
  });

  it('says the same in steps, of which there is one for each set and one more', () => {
    const before = reckoned(DOCUMENTS);
    const changed = edited(DOCUMENTS, { set: '5', what: 'house', pounds: 90 });
    const { turns, reckoning } = inSteps(changed, before);
    const fresh = reckoned(structuredClone(changed));
    expect(turns).toBe(46);
    expect(reckoning.findings).toEqual(fresh.findings);
    expect(reckoning.findings).not.toEqual(before.findings);
    expect(reckoning.assessment.totals).toEqual(fresh.assessment.totals);
    expect(reckoning.sets.map(({ findings }) => findings)).toEqual(
      fresh.sets.map(({ findings }) => findings),
    );
  });

  it('refuses in steps what it refuses at once', () => {
    const wrong = { ...DOCUMENTS, house: { ...DOCUMENTS.house, lineSets: 3 } };
    expect(reckonInSteps(wrong, CLOCK_MS).next()).toMatchObject({
      done: true,
      value: { ok: false, error: { document: 'house' } },
    });
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
