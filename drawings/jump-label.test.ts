import { describe, expect, it } from 'vitest';
import { openExample } from '../examples/open-example.ts';
import { balanceFrame } from './balance-frame.ts';
import { curveBoxes, jumpLabel } from './balance-labels.ts';
import { balanceSubject } from './balance-subject.ts';
import { isFree } from './boxes.ts';
import { jumpWords } from './jump-words.ts';

const kestlemere = openExample('kestlemere');
const skelderwick = openExample('skelderwick');

const subjectOf = (example: typeof kestlemere, id: string) => {
  const set = example.assessment.sets.find(({ lineSet }) => lineSet.id === id);
  if (set === undefined) throw new Error(`no set ${id}`);
  const subject = balanceSubject(set, example.house);
  if ('needs' in subject) throw new Error(`set ${id} has no curve`);
  const jump = subject.curve.jumps[0];
  if (jump === undefined) throw new Error(`set ${id} has no jump`);
  return { subject, jump, house: example.house };
};

/** About what a card on paper gives the drawing, in points. */
const CARD = { width: 255, height: 255, letter: 12 };

describe('the label of a jump', () => {
  it('speaks in the units of the house', () => {
    const feet = subjectOf(kestlemere, '36');
    const metric = subjectOf(skelderwick, '10');
    expect(jumpWords(feet.jump, feet.subject, feet.house)[0]?.[0]?.text).toMatch(/an inch$/);
    expect(jumpWords(metric.jump, metric.subject, metric.house)[0]?.[0]?.text).toMatch(/25 mm$/);
  });

  it.each(['1', '3', '7', '11', '22', '36', 'D2'])('lies clear of the curve of set %s', (id) => {
    const { subject, jump, house } = subjectOf(kestlemere, id);
    const frame = balanceFrame(subject, house, CARD);
    const taken = curveBoxes(frame, subject);
    const after = jumpLabel({ shapes: [], taken }, jump, { frame, subject, house });
    const box = after.taken.at(-1);
    expect(after.taken).toHaveLength(taken.length + 1);
    expect(box !== undefined && isFree(box, taken, frame.field)).toBe(true);
  });
});
