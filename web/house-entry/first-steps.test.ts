import { describe, expect, it } from 'vitest';
import { blankHouse, blankShow } from '#documents';
import show from '../../examples/kestlemere/clockmaker.show.json' with { type: 'json' };
import house from '../../examples/kestlemere/house.json' with { type: 'json' };
import type { JsonObject } from '../keeping/json.ts';
import { reckon } from '../reckoning/reckon.ts';
import { firstSteps } from './first-steps.ts';

const NOW_MS = Date.parse('2026-11-25T15:00:00Z');

const stepsOf = (documents: { house: JsonObject; show: JsonObject }) => {
  const answer = reckon({ ...documents, state: null }, NOW_MS);
  if (!answer.ok) throw new Error(JSON.stringify(answer.error));
  return firstSteps(answer.value);
};

const blank = blankHouse({
  id: 'hall',
  name: 'Lower Yard Hall',
  units: 'metric',
  words: 'UK',
  operatingSide: 'stageLeft',
});
const first = blankShow({ id: 'first', name: 'First show', house: 'hall' });

describe('the first steps of a blank house', () => {
  it('are none of them done, and each leads somewhere', () => {
    const steps = stepsOf({ house: blank, show: first });
    expect(steps.map(({ isDone }) => isDone)).toEqual(Array.from({ length: 9 }, () => false));
    expect(steps[0]?.to).toMatchObject({ inside: 'rules', field: 'rules.lockLimit' });
    expect(steps.at(-1)?.to.kind).toBe('sheets');
  });

  it('say what the engine still asks of the kind of set, and of what hangs', () => {
    const given = { basis: 'measured' };
    const begun = {
      ...blank,
      setTypes: {
        SP: {
          suspension: 'singlePurchase',
          arbor: {},
          lowStop: { height: { value: '1 m', ...given } },
        },
      },
      lineSets: [{ id: '1', type: 'SP', y: { value: '1 m', ...given } }],
    };
    const hung = { ...first, hangs: [{ set: '1', name: 'Drape', family: 'soft' }] };
    const steps = stepsOf({ house: begun, show: hung });
    const ofKind = steps.find(({ words }) => words.startsWith('Of the kind'));
    expect(ofKind).toMatchObject({ isDone: false, to: { field: 'setTypes.SP' } });
    expect(ofKind?.needs).toContain('lift lines');
    expect(steps.find(({ words }) => words.startsWith('Line sets'))?.isDone).toBe(true);
    expect(steps.find(({ words }) => words.startsWith('Its bricks'))?.needs.length).toBeGreaterThan(
      0,
    );
  });

  it('are all done in a house that prints balance cards', () => {
    const steps = stepsOf({ house, show: show as unknown as JsonObject });
    expect(steps.filter(({ isDone }) => !isDone)).toEqual([]);
    expect(steps.flatMap(({ needs }) => needs)).toEqual([]);
  });
});
