/** Calculation reports of the example houses. */
import { describe, expect, it } from 'vitest';
import { reworked, type SetAssessment } from '#assessment';
import { metres } from '#quantities';
import { openExample } from '../examples/open-example.ts';
import { allWords, exampleContext, mustMake, rowsOf, tablesOf } from './example-sheets.ts';
import type { Sheet } from './index.ts';

const kestlemere = exampleContext(openExample('kestlemere'));
const skelderwick = exampleContext(openExample('skelderwick'));

describe('a calculation report', () => {
  const report = mustMake(kestlemere, 'calculation-report/5');
  const words = allWords(report);

  it('is for an engineer to review, certifies nothing and says its model', () => {
    expect(report.blocks[1]).toMatchObject({
      degree: 'caution',
      heading: 'FOR AN ENGINEER TO REVIEW',
    });
    expect(words).toMatch(/certifies nothing and approves nothing/);
    expect(words).toMatch(
      /Euler-Bernoulli .*Lines pull and never push.*Exact for point and spread/,
    );
    expect(words).toMatch(/stiff piece shares its mass equally among its picks/);
  });

  it('has every state, with the golden tensions of the plan of the demo', () => {
    const set = kestlemere.assessment.sets.find(({ lineSet }) => lineSet.id === '5');
    if (set?.structure.known !== true) throw new Error('set 5 has a structure');
    for (const { name } of set.structure.value.states) expect(words).toContain(name);
    const tensions = tablesOf(report)
      .filter(({ columns }) => columns.some(({ head }) => head === 'Elastic'))
      .map((table) =>
        rowsOf(table)
          .slice(1)
          .map((cells) => Number.parseFloat(cells[2] ?? '')),
      );
    const [bare, playing] = tensions;
    // the-job.md 3D, whole pounds, with level runs to the head block: half a pound and a tenth.
    const near = (found: readonly number[] | undefined, plan: readonly number[]): void => {
      plan.forEach((each, index) => {
        expect(Math.abs((found?.[index] ?? Number.NaN) - each)).toBeLessThanOrEqual(0.75);
      });
    };
    near(bare, [24, 31, 30, 30, 31, 24]);
    near(playing, [171, 183, 183, 187, 189, 87]);
  });

  it('puts the values into every formula, with result, limit and source', () => {
    expect(words).toMatch(
      /T_L = T \+ w \+ t = [\d.]+ lbf \+ [\d.]+ lbf \+ [\d.]+ lbf = [\d.]+ lbf; /,
    );
    expect(words).toMatch(/; limit 875\.0 lbf, \d+ % of it/);
    expect(words).toMatch(
      /Limit: demo plan: 7,000 lbf over 8\. Source: .*Left out: starts and stops/,
    );
    expect(words).toMatch(/Fleet angle at the head block \| not known \| not measured/);
  });

  it('names the plant by basis and source, and the masses by theirs', () => {
    expect(words).toContain('Breaking strength, F | 7000.0 lbf | published: FAA AC 43.13-1B');
    expect(words).toMatch(/Where the masses come from\n6 moving heads, 474 lb: published: maker/);
  });

  it('prints no letter that the face of the sheets has not', () => {
    for (const context of [kestlemere, skelderwick]) {
      for (const { lineSet } of context.assessment.sets) {
        const made = mustMake(context, `calculation-report/${lineSet.id}`);
        expect(allWords(made), lineSet.id).not.toMatch(
          /[\u0370-\u03ff\u2070-\u209f\u221a\u2211\u00b3]/,
        );
        expect(allWords(made), lineSet.id).not.toMatch(/undefined|NaN/);
      }
    }
  });

  it('lists what is missing, and makes nothing up', () => {
    const motor = allWords(mustMake(kestlemere, 'calculation-report/M1'));
    expect(motor).toMatch(/Nothing is reckoned[\s\S]*Missing\nlift lines\nmass of the batten/);
    expect(motor).not.toContain('State:');
    const steel = allWords(mustMake(kestlemere, 'calculation-report/D3'));
    expect(steel).toMatch(/Not reckoned as hung: missing\nhow the steel holds it/);
    expect(steel).toContain('State: bare');
  });

  const withSet5 = (change: (set: SetAssessment) => SetAssessment): Sheet =>
    mustMake(
      {
        ...kestlemere,
        assessment: {
          ...kestlemere.assessment,
          sets: kestlemere.assessment.sets.map((set) =>
            set.lineSet.id === '5' ? change(set) : set,
          ),
        },
      },
      'calculation-report/5',
    );

  /** Set 5 with one load alone at the end of its batten. */
  const endLoaded = (massKg: number): Sheet =>
    withSet5((set) => {
      if (!set.structure.known) throw new Error('set 5 has a structure');
      const structure = set.structure.value;
      const [bare] = structure.states;
      if (bare === undefined) throw new Error('set 5 has a bare state');
      const loads = [
        ...bare.loads,
        { of: 'a load', load: { x: metres(structure.right), mass: massKg }, uncertaintyKg: 0 },
      ];
      const states = [{ ...reworked(structure, bare, { loads }), name: 'end' }];
      return { ...set, structure: { known: true, value: { ...structure, states } } };
    });

  it('says a slack line as a word, in the summary and in its table', () => {
    // the-job.md 3D: 250 lb at the end leaves the fifth line slack.
    const sheet = endLoaded(113.4);
    const slack = tablesOf(sheet).flatMap((table) =>
      rowsOf(table).filter((row) => row[2] === 'SLACK'),
    );
    expect(slack.map(([line]) => line)).toEqual(['5']);
    expect(rowsOf(tablesOf(sheet)[0])[0]?.at(-1)).toBe('5');
  });

  it('gives no number for a batten that tips', () => {
    const sheet = endLoaded(5000);
    expect(allWords(sheet)).toMatch(/NOT STABLE: no number is given/);
    expect(allWords(sheet)).toContain('NOT STABLE');
    expect(allWords(sheet)).not.toMatch(/T_L =/);
  });
});
